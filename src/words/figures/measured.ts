import type { Values } from '../numbers.ts';
import { measuredLengths, type UnitSystem } from '../units.ts';

/** The units that a sentence or label of a figure is in. */
export const unitsOf = ({ units }: Values): UnitSystem => (units === 'inches' ? 'inches' : 'metric');

/** What was measured, as a ruler in these units has it. */
export const measured = (values: Values): string => measuredLengths(Number(values['mm']))[unitsOf(values)];
