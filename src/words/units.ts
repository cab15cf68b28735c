import { INCH } from '../solver/inch.ts';
import type { Figure, FigureSource } from '../solver/thread/figure.ts';
import { count, figure } from './numbers.ts';

/** The learner's choice of units. */
export type UnitSystem = 'metric' | 'inches';

/** A text in both units, for the switch that shows one of them. */
export interface BothUnits {
  readonly metric: string;
  readonly inches: string;
}

/** Keeps a figure and its unit on one line. */
const NBSP = '\u00a0';

interface Scale {
  readonly unit: string;
  /** mm in one unit. */
  readonly mm: number;
  /** Smallest part of a unit that is shown. */
  readonly step: number;
  /** Up to here, in mm and less than it, this scale is used. */
  readonly below: number;
}

const SCALES: Readonly<Record<UnitSystem, readonly Scale[]>> = {
  metric: [
    { unit: 'mm', mm: 1, step: 0.1, below: 10 },
    { unit: 'mm', mm: 1, step: 0.5, below: 30 },
    { unit: 'cm', mm: 10, step: 0.1, below: 100 },
    { unit: 'cm', mm: 10, step: 0.5, below: 3000 },
    { unit: 'm', mm: 1000, step: 0.1, below: 100_000 },
    { unit: 'm', mm: 1000, step: 1, below: Number.POSITIVE_INFINITY },
  ],
  inches: [
    { unit: 'in', mm: INCH, step: 0.01, below: INCH / 4 },
    { unit: 'in', mm: INCH, step: 1 / 8, below: 3 * INCH },
    { unit: 'in', mm: INCH, step: 1 / 4, below: 36 * INCH },
    { unit: 'in', mm: INCH, step: 1 / 2, below: 120 * INCH },
    { unit: 'yd', mm: 36 * INCH, step: 0.1, below: 3600 * INCH },
    { unit: 'yd', mm: 36 * INCH, step: 1, below: Number.POSITIVE_INFINITY },
  ],
};

/** Slack for lengths that lie on a step but for the machine's rounding. */
const SLACK = 1e-6;

const scaleOf = (mm: number, units: UnitSystem): Scale => {
  const size = Math.abs(mm);
  const scales = SCALES[units];
  return scales.find(({ below }) => size < below - SLACK) ?? (scales[0] as Scale);
};

const EIGHTHS = ['', ' 1/8', '¼', ' 3/8', '½', ' 5/8', '¾', ' 7/8'];

/** Whole inches and eighths, as a ruler has them. */
function inEighths(inches: number): string {
  const whole = Math.floor(inches);
  const part = EIGHTHS[Math.round((inches - whole) * 8)] ?? '';
  return part === '' ? figure(whole) : whole === 0 ? part.trim() : `${figure(whole)}${part}`;
}

/** How many of the scale's steps, and what they come to; fractions of an inch as a ruler has them. */
function onScale(mm: number, { unit, mm: per, step }: Scale, up: boolean): string {
  const steps = mm / per / step;
  const value = (up ? Math.ceil(steps - SLACK) : Math.round(steps + SLACK)) * step;
  return unit !== 'in' || step < 1 / 8 || value < 0 ? figure(value) : inEighths(value);
}

/**
 * A length given in mm. Metric: mm below 30 mm, cm below 3 m, then m. Inches: hundredths below a quarter,
 * eighths to 3 in, quarters to 36 in, halves to 120 in, then yards.
 *
 * @param up rounds up to the next step that is shown, for a string that must not be cut short
 */
export function length(mm: number, units: UnitSystem, up = false): string {
  const scale = scaleOf(mm, units);
  return onScale(mm, scale, up) + NBSP + scale.unit;
}

/** A length that is read off a ruler in mm, which stays in mm however long it is; in inches as every length. */
export const measuredLengths = (mm: number): BothUnits => ({
  metric: `${figure(mm)}${NBSP}mm`,
  inches: length(mm, 'inches'),
});

/** A number that stands beside a mark of a ruler, in the ruler's own unit: mm, or inches to an eighth. */
export const rulerMark = (at: number, units: UnitSystem): string => (units === 'inches' ? inEighths(at) : figure(at));

/** A length given in mm, in both units. */
export const lengths = (mm: number, up = false): BothUnits => ({
  metric: length(mm, 'metric', up),
  inches: length(mm, 'inches', up),
});

/**
 * A length with its range: 'about 62 cm (56–68)' for an estimate, '62 cm' for a measured figure, with its
 * range where it still has one. All three in the unit of the likely one.
 */
export function lengthRange({ low, likely, high, source }: Figure, units: UnitSystem, up = false): string {
  const scale = scaleOf(likely, units);
  const [from, middle, to] = [low, likely, high].map((mm) => onScale(mm, scale, up));
  const about = source === 'estimate' ? 'about ' : '';
  return `${about}${middle}${NBSP}${scale.unit}${from === to ? '' : ` (${from}–${to})`}`;
}

/** `lengthRange` in both units. */
export const lengthRanges = (figures: Figure, up = false): BothUnits => ({
  metric: lengthRange(figures, 'metric', up),
  inches: lengthRange(figures, 'inches', up),
});

/** A count with its range: 'about 3 cards (2–4)', '3 cards' where both ends are the same. */
export const countRange = ({ low, likely, high, source }: Figure, one: string, many?: string): string =>
  low === high
    ? count(likely, one, many)
    : `${source === 'estimate' ? 'about ' : ''}${count(likely, one, many)} (${figure(low)}–${figure(high)})`;

/** The strings a bar takes, as a range: '16', or '14 to 17'. */
export const span = (low: number, high: number): string =>
  low === high ? figure(low) : `${figure(low)} to ${figure(high)}`;

const MINUTE = 60;
const HOUR = 60 * MINUTE;

/** Time given in seconds: seconds below 90, minutes below an hour, then to the next five minutes, whole hours from ten. */
export function duration(seconds: number): string {
  if (!Number.isFinite(seconds)) return figure(seconds);
  if (seconds < 90) return count(Math.round(seconds), 'second');
  const minutes = Math.round(seconds / MINUTE);
  if (minutes < 60) return count(minutes, 'minute');
  if (seconds >= 10 * HOUR) return count(Math.round(seconds / HOUR), 'hour');
  const fives = Math.round(seconds / MINUTE / 5) * 5;
  const [hours, rest] = [Math.floor(fives / 60), fives % 60];
  return rest === 0 ? count(hours, 'hour') : `${count(hours, 'hour')} ${count(rest, 'minute')}`;
}

/** A time with its range: 'about 55 minutes (40 minutes to 1 hour 20 minutes)'. */
export function durationRange({ low, likely, high, source }: Figure): string {
  const [from, to] = [duration(low), duration(high)];
  return `${source === 'estimate' ? 'about ' : ''}${duration(likely)}${from === to ? '' : ` (${from} to ${to})`}`;
}

const SOURCES: Readonly<Record<FigureSource, string>> = { estimate: 'estimate', measured: 'measured' };

/** What kind of figure stands there; the interface always says which. */
export const sourceWord = (source: FigureSource): string => SOURCES[source];
