/** How far the learner is, which decides how hard the figures are. */
export const LEVELS = ['worked', 'half-worked', 'alone', 'mixed'] as const;

/**
 * - `worked`, `half-worked`: even widths on even capacities, nothing idle, nothing to borrow
 * - `alone`: even widths on any capacity, so an idle place and borrowing two come in
 * - `mixed`: odd widths too, with a lone string or a carried end, and now and then a chart no wider than the bar
 */
export type Level = (typeof LEVELS)[number];

/** The level asked for; anything else, as a mistyped address may hold, counts as `mixed`. */
export const knownLevel = (level: unknown): Level => LEVELS.find((known) => known === level) ?? 'mixed';
