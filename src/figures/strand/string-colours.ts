/** Colours that a maker may give the strings of a drawn knot, by their plain names; the values are in `figures.css`. */
export const STRING_COLOURS = ['rust', 'estuary blue', 'samphire', 'straw', 'sea lavender', 'chalk'] as const;

export type StringColour = (typeof STRING_COLOURS)[number];

/** The colour as a drawing takes it. */
export const stringPaint = (colour: StringColour): string => `var(--string-${colour.replaceAll(' ', '-')})`;
