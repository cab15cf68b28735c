import { HEIGHTS, ROW_STEPS } from '../solver/outline.ts';
import type { Fit, OddMethod, SideName } from '../solver/piece.ts';
import { choiceProblem, measureProblem, type Problem, type Range, wholeNumberProblem } from '../solver/problem.ts';
import { CAPACITIES, MAX_BUNDLES, ODD_METHODS, SIDES, WIDTHS } from '../solver/ranges.ts';
import { BAR_WIDTHS } from '../solver/thread/capacity.ts';
import {
  BAR_THICKNESSES,
  DIAMETERS,
  type Measured,
  measuredProblem,
  THREAD_KINDS,
  type ThreadKind,
  WORKING_LENGTHS,
} from '../solver/thread/thread.ts';
import { type Concern, concern } from './concern.ts';
import type { Device } from './safe-storage.ts';

/** A chart of the workbook by its id, or one of the learner's own as its text. */
export type OwnChart =
  | { readonly from: 'index'; readonly id: string }
  | { readonly from: 'text'; readonly text: string };

export interface OwnRing {
  /** mm, 1 to 1000; null where it was not measured. */
  readonly barWidth: number | null;
  /** mm, 0.5 to 20. */
  readonly barThickness: number;
}

export interface OwnCord {
  /** mm, 0.2 to 10. */
  readonly diameter: number;
  readonly kind: ThreadKind;
  /** mm, 300 to 20 000. */
  readonly workingLength: number;
  /** What a swatch gave; null before one was measured. */
  readonly measured: Measured | null;
}

/** What the outline follows where the chart has blank cells, and so a shape of its own. */
export const FOLLOWS = ['chart', 'steps'] as const;
export type Follows = (typeof FOLLOWS)[number];

/** The learner's own ring, cord, chart and ways of working, as entered once for every lesson. */
export interface OwnFigures {
  readonly version: 1;
  readonly capacity: number;
  readonly width: number;
  readonly height: number;
  readonly maxBundle: number;
  readonly oddMethod: OddMethod;
  readonly startSide: SideName;
  readonly handedness: SideName;
  readonly openingStep: number;
  readonly closingStep: number;
  /** null: each side closes to what was mounted. */
  readonly closingBundle: number | null;
  readonly chart: OwnChart | null;
  /** Another split than the answer, by its name (`splitName`); null for the answer. */
  readonly split: string | null;
  /** Its steps are passed over where it follows the shape of a chart. */
  readonly follows: Follows;
  readonly ring: OwnRing;
  readonly cord: OwnCord;
}

/** Fields to change; of ring and cord, too, only those that are there. */
export type OwnFiguresChange = Partial<Omit<OwnFigures, 'version' | 'ring' | 'cord'>> & {
  readonly ring?: Partial<OwnRing>;
  readonly cord?: Partial<OwnCord>;
};

/** Before anything is entered: the evening's piece. */
export const STARTING_FIGURES: OwnFigures = {
  version: 1,
  capacity: 8,
  width: 12,
  height: 14,
  maxBundle: 8,
  oddMethod: 'lone-string',
  startSide: 'left',
  handedness: 'right',
  openingStep: 1,
  closingStep: 1,
  closingBundle: null,
  chart: null,
  split: null,
  follows: 'chart',
  ring: { barWidth: null, barThickness: 2 },
  cord: { diameter: 1.2, kind: 'soft', workingLength: 2000, measured: null },
};

/** The side on which row 1 begins unless the learner chose one (craft, section 5). */
const startSideFor = (handedness: SideName): SideName => (handedness === 'right' ? 'left' : 'right');

type Raw = Readonly<Record<string, unknown>>;
type Check = (field: string, value: unknown) => Problem | null;
type Checks<Field extends string> = Readonly<Record<Field, Check>>;

const whole =
  (range: Range): Check =>
  (field, value) =>
    wholeNumberProblem(field, value, range);
const measure =
  (range: Range): Check =>
  (field, value) =>
    measureProblem(field, value, range);
const choice =
  (choices: readonly string[]): Check =>
  (field, value) =>
    choiceProblem(field, value, choices);
const orNull =
  (check: Check): Check =>
  (field, value) =>
    value === null ? null : check(field, value);

const isRaw = (value: unknown): value is Raw => typeof value === 'object' && value !== null;

/** Room for the largest chart. Its text is only measured here: the solver reads it where it is used. */
const LONGEST_TEXT = 450_000;

const chartProblem: Check = (field, value) => {
  const { from, id, text } = isRaw(value) ? value : {};
  const good =
    from === 'index'
      ? typeof id === 'string' && /^[\w-]{1,99}$/.test(id)
      : from === 'text' && typeof text === 'string' && text.length <= LONGEST_TEXT;
  return good ? null : { code: 'no-chart', field, values: {} };
};

/** Strings on the bar and strands of both sides, and how an odd string is placed. */
const SPLIT = /^\d{1,3} \d{1,3} \d{1,3} [a-z-]{1,20}$/;

/** The name by which a split is kept. */
export const splitName = ({ onBar, left, right, oddMethod }: Fit): string =>
  `${onBar} ${left.strands} ${right.strands} ${oddMethod ?? 'even'}`;

const swatchProblem: Check = (field, value) =>
  isRaw(value) ? measuredProblem(value) : { code: 'not-a-number', field, values: {} };

const FIGURES: Checks<Exclude<keyof OwnFigures, 'version' | 'ring' | 'cord'>> = {
  capacity: whole(CAPACITIES),
  width: whole(WIDTHS),
  height: whole(HEIGHTS),
  maxBundle: whole(MAX_BUNDLES),
  oddMethod: choice(ODD_METHODS),
  startSide: choice(SIDES),
  handedness: choice(SIDES),
  openingStep: whole(ROW_STEPS),
  closingStep: whole(ROW_STEPS),
  closingBundle: orNull(whole({ low: 1, high: WIDTHS.high })),
  chart: orNull(chartProblem),
  split: orNull((field, value) =>
    typeof value === 'string' && SPLIT.test(value) ? null : { code: 'no-fit', field, values: {} },
  ),
  follows: choice(FOLLOWS),
};
const RING: Checks<keyof OwnRing> = { barWidth: orNull(measure(BAR_WIDTHS)), barThickness: measure(BAR_THICKNESSES) };
const CORD: Checks<keyof OwnCord> = {
  diameter: measure(DIAMETERS),
  kind: choice(THREAD_KINDS),
  workingLength: measure(WORKING_LENGTHS),
  measured: orNull(swatchProblem),
};

/** The fields that pass, and the problems of those that don't; what is not in the checks is left out. */
function sift(raw: Raw, checks: Readonly<Record<string, Check>>, problems: Problem[]): Record<string, unknown> {
  const good: Record<string, unknown> = {};
  for (const [field, check] of Object.entries(checks)) {
    const value = raw[field];
    if (value === undefined) continue;
    const problem = check(field, value);
    if (problem) problems.push(problem);
    else good[field] = value;
  }
  return good;
}

/** As `sift`, for the figures with their ring and cord. Every field has passed its check, which the compiler can't see. */
function siftFigures(raw: Raw, problems: Problem[] = []): OwnFiguresChange {
  const good = sift(raw, FIGURES, problems);
  for (const [part, checks] of Object.entries({ ring: RING, cord: CORD })) {
    const fields = raw[part];
    if (isRaw(fields)) good[part] = sift(fields, checks, problems);
  }
  return good as OwnFiguresChange;
}

/** What is wrong with the fields of a change, in the order of `OwnFigures`; empty where all can be kept. */
export function ownFiguresProblems(change: OwnFiguresChange): Problem[] {
  const problems: Problem[] = [];
  siftFigures(change, problems);
  return problems;
}

/** A change of hand takes the start side with it, unless the learner chose the other side. */
function merge(value: OwnFigures, change: OwnFiguresChange): OwnFigures {
  const { handedness, startSide } = change;
  const follows = handedness && !startSide && value.startSide === startSideFor(value.handedness);
  return {
    ...value,
    ...change,
    ...(follows ? { startSide: startSideFor(handedness) } : {}),
    ring: { ...value.ring, ...change.ring },
    cord: { ...value.cord, ...change.cord },
  };
}

/** The learner's figures on a device; the functions below are those of this browser. */
export const ownFiguresOn = (device?: Device): Concern<OwnFigures, OwnFiguresChange> =>
  concern(
    {
      name: 'own-figures',
      version: 1,
      start: STARTING_FIGURES,
      read: siftFigures,
      merge,
      goodPart: (change) => (ownFiguresProblems(change).length > 0 ? siftFigures(change) : null),
    },
    device,
  );

const here = ownFiguresOn();
export const loadOwnFigures = here.load;
export const saveOwnFigures = here.save;
export const subscribeOwnFigures = here.subscribe;
