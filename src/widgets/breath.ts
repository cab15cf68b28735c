/** Time for the page to answer to the hand between two drawings: each takes a good part of a frame's time, or more. */
export const breath = (): Promise<void> => new Promise((soon) => setTimeout(soon));
