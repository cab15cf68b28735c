/** Plain names for the threads of a row that is told in words alone. */
const NAMES = ['chalk', 'tar', 'rust'] as const;

/** The name of a thread, by its number from 0. */
export const threadName = (colour: number): string => NAMES[colour] ?? `colour ${colour + 1}`;
