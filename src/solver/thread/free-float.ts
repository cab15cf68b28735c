/** Columns a float may skip before it should be caught under a knot (craft, section 7). */
export const LONGEST_FREE_FLOAT = 5;
