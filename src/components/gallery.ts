import { exampleOf } from '../entries/examples.ts';
import type { DrawnUnits } from '../figures/drawing.ts';
import { ROW_FAULTS, type RowFault } from '../figures/fault.ts';
import { figures } from '../figures/index.ts';
import { MOMENTS, type MomentPlan, standingAt } from '../figures/piece/index.ts';
import { type KnotName, knots } from '../figures/strand/index.ts';
import { type KnotStage, knotStage, stageDrawing, stopsOf } from '../widgets/knot/knot-plate.ts';
import { pieceFigureWords } from '../words/figures/piece.ts';
import { knotTitle } from '../words/knot-stages.ts';
import { capital } from '../words/numbers.ts';
import { type PlateName, plateFigure } from './plate-figure.ts';

/** A drawing that can be had as a file, by the file's name without its ending. */
export interface GalleryPlate {
  readonly file: string;
  readonly title: string;
  /** The same content in words. */
  readonly told: string;
  readonly svg: () => string;
  /** Where the same drawing is there in other units: which these are. */
  readonly units?: DrawnUnits;
}

export interface KnotPlates {
  readonly knot: KnotName;
  readonly title: string;
  /** Strings in its base here. */
  readonly strands: number;
  readonly stages: readonly (GalleryPlate & { readonly stage: KnotStage })[];
}

/** Strings in the base of the knots that are tied round a bundle, in this gallery. */
const BUNDLE = 4;
const ON_ONE: readonly string[] = ['forward', 'backward', 'forward-half-hitch', 'backward-half-hitch'];
const SMALL: readonly string[] = ['square-knot', 'square-spiral'];

const strandsOf = (knot: KnotName): number =>
  !knots[knot].bundled || ON_ONE.includes(knot) ? 1 : SMALL.includes(knot) ? 2 : BUNDLE;

/** The knots in the order of the work: mounting, the row, its edges, colours, the end. */
const ORDER = [
  'larks-head',
  'lone-string',
  'side-fold',
  'forward-half-hitch',
  'backward-half-hitch',
  'forward',
  'backward',
  'forward-backward',
  'backward-forward',
  'row-end-right',
  'row-end-left',
  'let-out',
  'let-out-right',
  'carry-behind',
  'carry-behind-right',
  'take-in',
  'take-in-right',
  'float',
  'caught-float',
  'join',
  'gathering-left',
  'gathering-right',
  'square-first-half',
  'square-second-half',
  'square-knot',
  'square-spiral',
] as const satisfies readonly KnotName[];

/** Every knot with all its stopping points. */
export const knotPlates = (): KnotPlates[] =>
  ORDER.map((knot) => ({
    knot,
    title: capital(knotTitle(knot)),
    strands: strandsOf(knot),
    stages: stopsOf(knot).map((stop) => {
      const stage = knotStage(knot, stop, strandsOf(knot));
      return {
        file: `${knot}-${stop}`,
        title: `${stage.title}: ${stage.sentence}`,
        told: stage.told,
        stage,
        svg: () => stageDrawing(stage),
      };
    }),
  }));

/** Faults are easiest to see on few strings; a colour needs a chart. */
const ofFault = (fault: RowFault) => (fault === 'colour-off' ? {} : { example: 'practice' });

/** The figures of a plan, in the order of the work, with what each shows. */
const FIGURES: readonly {
  readonly name: PlateName;
  readonly options?: Readonly<Record<string, unknown>>;
  /** Another example than the lantern. */
  readonly example?: string;
  /** What tells it from a figure of the same title. */
  readonly apart?: string;
}[] = [
  { name: 'chart' },
  { name: 'row-read', options: { row: 16 } },
  { name: 'ten-turns' },
  { name: 'swatch' },
  { name: 'capacity-range' },
  { name: 'trial-row' },
  { name: 'trial-row', options: { crowded: true } },
  { name: 'folds-why' },
  { name: 'bar', options: { stage: 'capacity' }, apart: 'Every place of the bar is taken.' },
  { name: 'bar', options: { stage: 'shared' }, apart: 'The spare strings are shared out.' },
  { name: 'bar', options: { stage: 'fitted' }, apart: 'This is the answer.' },
  { name: 'ways-to-hang' },
  { name: 'placing' },
  { name: 'cut-strings' },
  { name: 'level-ends' },
  { name: 'level-ends', options: { slipped: true } },
  { name: 'steady-ring' },
  { name: 'steady-ring', options: { turned: true } },
  { name: 'outline' },
  { name: 'outline', options: { show: 'bundles' }, apart: 'It shows the bundle of each row.' },
  { name: 'opening' },
  { name: 'row', options: { row: 1 } },
  { name: 'row', options: { row: 'full-width-row' } },
  { name: 'row', options: { row: 'first-closing-row' } },
  { name: 'closing' },
  { name: 'gathering' },
  ...MOMENTS.map((moment) => ({ name: 'piece' as const, options: { moment } })),
  { name: 'piece', options: { side: 'back' } },
  { name: 'back' },
  { name: 'silhouette', options: { wish: 'waist' } },
  ...ROW_FAULTS.flatMap((fault) => [
    { name: 'fault' as const, options: { fault }, ...ofFault(fault) },
    { name: 'fault' as const, options: { fault, mended: true }, ...ofFault(fault) },
  ]),
  { name: 'tight-float' },
  { name: 'tight-float', options: { tight: true } },
  { name: 'gathering', example: 'evening' },
  { name: 'gathering', options: { unequal: true }, example: 'evening' },
  { name: 'evening', example: 'evening' },
  { name: 'bar', options: { stage: 'fitted' }, example: 'kettle-idle' },
  { name: 'bar', options: { stage: 'fitted' }, example: 'paper-boat-carried' },
  { name: 'silhouette', example: 'mussel' },
];

/** Of a whole piece the moment that it is shown at, before what it is. */
function momentOf(plan: MomentPlan, { moment }: Readonly<Record<string, unknown>>): string {
  const known = MOMENTS.find((one) => one === moment);
  return known ? `${pieceFigureWords['piece-moment']({ moment: known, row: standingAt(plan, known).upToRow })}. ` : '';
}

/** Every figure of a plan, drawn for the lantern, or for another example where it shows more. */
export function figurePlates(): GalleryPlate[] {
  const missing = Object.keys(figures).filter((figure) => !FIGURES.some(({ name }) => name === figure));
  if (missing.length > 0) throw new Error(`The gallery has no place for the figure '${missing[0]}' yet.`);
  return FIGURES.flatMap(({ name, options = {}, example = 'lantern', apart }): GalleryPlate[] => {
    const { plan } = exampleOf(example);
    const said = Object.entries(options).map(([option, value]) => (value === true ? option : value));
    const file = [example, name, ...said].join('-');
    const plate = (also: object, rest: object, named = file): GalleryPlate => {
      const drawn = plateFigure(name, plan, { ...options, ...also }, named);
      return {
        file: named,
        title: [momentOf(plan, options) + drawn.title, ...(apart ? [apart] : [])].join(' '),
        told: drawn.description,
        svg: () => drawn.svg,
        ...rest,
      };
    };
    if (name === 'piece' || !('measures' in figures[name])) return [plate({}, {})];
    return [
      plate({ units: 'metric' }, { units: 'metric' }),
      plate({ units: 'inches' }, { units: 'inches' }, `${file}-inches`),
    ];
  });
}

/** Every drawing that is a file. */
export const galleryFiles = (): GalleryPlate[] => [...knotPlates().flatMap(({ stages }) => stages), ...figurePlates()];
