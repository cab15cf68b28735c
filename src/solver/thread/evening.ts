import type { Plan } from '../plan.ts';
import { type MakingTime, makingTime } from './time.ts';

/** How practised the hands are: the ends and the middle of every estimate of time. */
export const HANDS = ['practised', 'steady', 'first-time'] as const;
export type Hands = (typeof HANDS)[number];
const BOUNDS = { practised: 'low', steady: 'likely', 'first-time': 'high' } as const;

/** The parts of an evening, in order. */
export const EVENING_PARTS = [
  'welcome',
  'showing',
  'mounting',
  'opening',
  'straight',
  'break',
  'straight-on',
  'closing',
  'finishing',
  'clearing',
] as const;
export type EveningPart = (typeof EVENING_PARTS)[number];

/** Minutes that an evening takes beside the work. Our own timing, an estimate. */
const BESIDE: Readonly<Partial<Record<EveningPart, number>>> = { welcome: 10, showing: 15, break: 10, clearing: 10 };

export interface EveningStretch {
  readonly part: EveningPart;
  /** Whole minutes after the doors open. */
  readonly from: number;
  readonly to: number;
}

/** Seconds for the whole piece with no swatch measured, as a range from practised to first-time hands. */
const timeOf = ({ fit, rows }: Pick<Plan, 'fit' | 'rows'>): MakingTime =>
  makingTime(
    rows.reduce((sum, row) => sum + row.knots, 0),
    fit,
    { measured: {} },
  );

/** Whole minutes, from seconds; a part that is there takes one at least. */
const minutes = (seconds: number): number => (seconds > 0 ? Math.max(1, Math.round(seconds / 60)) : 0);

/** Minutes that the piece takes these hands, from the first lark’s head to the last cut. */
export const makingMinutes = (plan: Pick<Plan, 'fit' | 'rows'>, hands: Hands): number =>
  minutes(timeOf(plan)[BOUNDS[hands]]);

/**
 * The timetable of an evening in which everybody makes this piece: what is shown and said, the break, and the work by
 * the estimates of craft, section 9. Parts that a piece has not got (no closing, no row of full width) are left out.
 *
 * @returns the parts in order, in whole minutes from the beginning; each begins where the one before it ends
 */
export function eveningOf(plan: Pick<Plan, 'fit' | 'rows' | 'outline'>, hands: Hands = 'first-time'): EveningStretch[] {
  const { rows, outline } = plan;
  const bound = BOUNDS[hands];
  const { parts } = timeOf(plan);
  const knots = rows.reduce((sum, row) => sum + row.knots, 0);
  const perKnot = parts.knotting[bound] / Math.max(1, knots);
  const closes = outline.firstClosingRow ?? rows.length + 1;
  const opens = Math.min(outline.firstFullRow ?? closes, closes);
  // The break comes half way down the straight part, where a piece is safest to put down.
  const middle = Math.ceil((opens + closes) / 2);
  const ofRows = (from: number, to: number): number =>
    minutes(perKnot * rows.slice(from - 1, to - 1).reduce((sum, row) => sum + row.knots, 0));
  const work: Readonly<Partial<Record<EveningPart, number>>> = {
    mounting: minutes(parts.mounting[bound]),
    opening: ofRows(1, opens),
    straight: ofRows(opens, middle),
    'straight-on': ofRows(middle, closes),
    closing: ofRows(closes, rows.length + 1),
    finishing: minutes(parts.finishing[bound]),
  };
  let at = 0;
  return EVENING_PARTS.flatMap((part): EveningStretch[] => {
    const from = at;
    at += work[part] ?? BESIDE[part] ?? 0;
    return at > from ? [{ part, from, to: at }] : [];
  });
}
