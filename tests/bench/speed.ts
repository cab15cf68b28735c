/**
 * How fast the solver is, as multiples of a floor measured in the same run: one pass that sums the cells of
 * the chart. Solver and floor take turns many times over, charts of all sizes too, and every figure is a
 * median, so that a busy machine slows all alike.
 */
import * as solver from '../../src/solver/index.ts';
import { bundleSizes, type Chart, cutList, fitPiece, inspect, planRows } from '../../src/solver/index.ts';

const AVERAGE_RUN = 4;
const MAX_FLATNESS = 1.5;
const MAX_MULTIPLE = 40;
/** ms of work on each chart before the clock starts, so that small and large ones are timed on settled code. */
const WARM_UP = 400;
const REPEATS = 61;
/** ms that one turn should fill, with as many calls as that takes. */
const TURN = 2;

/** A small seeded generator, so that every run times the same charts. */
function numbersFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** A chart whose runs average four cells: at every cell the colour changes with a chance of one in four. */
function chartOf(width: number, height: number, colours: number, seed: number): Chart {
  const next = numbersFrom(seed);
  const cells = new Uint8Array(width * height);
  let colour = 0;
  for (let cell = 0; cell < cells.length; cell += 1) {
    if (next() < 1 / AVERAGE_RUN) colour = (colour + 1 + Math.floor(next() * (colours - 1))) % colours;
    cells[cell] = colour;
  }
  const shade = (index: number) => `#${(0x202020 + index * 0x050709).toString(16)}`;
  const palette = Array.from({ length: colours }, (_, index) => ({
    name: `colour ${index + 1}`,
    colour: shade(index),
  }));
  return { width, height, palette, cells };
}

/** What every timed call gave, added up, so that no call can be left out as unused. */
let kept = 0;

/** Milliseconds of one call. */
function timed(work: () => number, calls: number): number {
  const started = performance.now();
  for (let call = 0; call < calls; call += 1) kept += work();
  return (performance.now() - started) / calls;
}

/**
 * The floor: one pass that sums the cells, in ms. The pass is written out here, since called as a function it
 * is at times compiled several times slower, which would flatter the solver.
 */
function timedFloor(cells: Uint8Array, calls: number): number {
  const started = performance.now();
  for (let call = 0; call < calls; call += 1) {
    let sum = 0;
    for (let cell = 0; cell < cells.length; cell += 1) sum = (sum + (cells[cell] ?? 0)) | 0;
    kept += sum;
  }
  return (performance.now() - started) / calls;
}

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
const callsFor = (once: number): number => Math.max(1, Math.min(2000, Math.round(TURN / Math.max(once, 0.001))));

/** Work to be timed beside the floor of a chart's cells, and what each turn took, in ms for one call. */
class Race {
  readonly work: () => number;
  readonly cells: Uint8Array;
  readonly works: number[] = [];
  readonly floors: number[] = [];
  #workCalls = 1;
  #floorCalls = 1;

  constructor(work: () => number, cells: Uint8Array) {
    this.work = work;
    this.cells = cells;
  }

  warmUp(): void {
    const until = performance.now() + WARM_UP;
    do {
      this.#workCalls = callsFor(timed(this.work, 1));
      this.#floorCalls = callsFor(timedFloor(this.cells, 1));
    } while (performance.now() < until);
  }

  turn(): void {
    this.floors.push(timedFloor(this.cells, this.#floorCalls));
    this.works.push(timed(this.work, this.#workCalls));
  }

  /** Median of the multiples of the floor, each of one turn. */
  multiple(): number {
    return median(this.works.map((work, turn) => work / (this.floors[turn] ?? work)));
  }
}

function run(races: readonly Race[], repeats = REPEATS): void {
  for (const race of races) race.warmUp();
  for (let repeat = 0; repeat < repeats; repeat += 1) for (const race of races) race.turn();
}

const THREAD = { diameter: 1, kind: 'soft' } as const;

/** ms spent in each part of a full plan. */
class Stages {
  rows = 0;
  inspection = 0;
  cutList = 0;
  plans = 0;
}

/** Fit, outline, rows, inspection and cut list of one chart; gives the number of knots, so that nothing is idle. */
function fullPlan(chart: Chart, stages: Stages): number {
  const started = performance.now();
  const fitted = fitPiece({ width: chart.width, capacity: chart.width - 12 });
  if (!fitted.ok) throw new RangeError(fitted.problem.code);
  const { fit } = fitted;
  const bundles = bundleSizes({ fit, height: chart.height });
  const rows = planRows({ fit, bundles, chart });
  if (!Array.isArray(rows)) throw new RangeError('the rows could not be planned');
  const planned = performance.now();
  const warnings = inspect({ chart, fit, bundles, rows });
  const inspected = performance.now();
  const list = cutList({ fit, bundles, rows, chart, thread: THREAD });
  if (!list.ok) throw new RangeError(list.problem.code);
  stages.rows += planned - started;
  stages.inspection += inspected - planned;
  stages.cutList += performance.now() - inspected;
  stages.plans += 1;
  return list.totals.knots + warnings.length;
}

const column = (value: number, digits = 2): string => value.toFixed(digits).padStart(9);

const SIZES = [
  [100, 100],
  [200, 200],
  [400, 400],
  [400, 1000],
] as const;

function benchPlans(colours: number): void {
  const stages = SIZES.map(() => new Stages());
  const races = SIZES.map(([width, height], size) => {
    const chart = chartOf(width, height, colours, 7);
    const spent = stages[size] ?? new Stages();
    return new Race(() => fullPlan(chart, spent), chart.cells);
  });
  run(races);
  console.log(
    `Full plan: fit, outline, rows, inspection, cut list. ${colours} colours, runs of ${AVERAGE_RUN} cells on average.`,
  );
  console.log('Nanoseconds a cell; the parts are means, their sum can lie above the median.');
  console.log('    cells     plan    floor  × floor  | fit, rows  inspect cut list');
  races.forEach((race, size) => {
    const cells = race.cells.length;
    const nanoseconds = (ms: number) => (ms * 1e6) / cells;
    const { rows, inspection, cutList: list, plans } = stages[size] ?? new Stages();
    const parts = [rows, inspection, list].map((ms) => column(nanoseconds(ms / plans)));
    const figures = [nanoseconds(median(race.works)), nanoseconds(median(race.floors))].map((value) => column(value));
    console.log(`${String(cells).padStart(9)}${figures.join('')}${column(race.multiple(), 1)}  | ${parts.join('')}`);
  });
  const perCell = races.map((race) => median(race.works) / race.cells.length);
  const flatness = Math.max(...perCell) / Math.min(...perCell);
  const greatest = Math.max(...races.map((race) => race.multiple()));
  console.log(`  dearest cell ÷ cheapest cell: ${flatness.toFixed(2)} (at most ${MAX_FLATNESS})`);
  console.log(`  greatest multiple of the floor: ${greatest.toFixed(1)} (at most ${MAX_MULTIPLE})\n`);
}

function benchSmall(): void {
  const chart = chartOf(30, 40, 4, 11);
  const race = new Race(() => fullPlan(chart, new Stages()), chart.cells);
  run([race]);
  console.log(
    `30 × 40 full plan: ${median(race.works).toFixed(3)} ms (about 0.5), ${race.multiple().toFixed(0)} × its floor`,
  );
}

const isFunction = (value: unknown): value is (input: unknown) => unknown => typeof value === 'function';

/** Times a solver function by its name, if there is one. */
function benchOne(name: string, size: string, about: number, input: unknown, cells: Uint8Array): void {
  const found: unknown = Reflect.get(solver, name);
  if (!isFunction(found)) {
    console.log(`${name}, ${size}: not built yet`);
    return;
  }
  const given = found(input);
  if (typeof given !== 'object' || given === null || ('ok' in given && given.ok === false))
    throw new RangeError(`${name} refused its input`);
  const race = new Race(() => (found(input) ? 1 : 0), cells);
  run([race], 21);
  const sum = `the sum of ${cells.length} cells`;
  console.log(
    `${name}, ${size}: ${median(race.works).toFixed(2)} ms (about ${about}), ${race.multiple().toFixed(0)} × ${sum}`,
  );
}

function benchAdvice(): void {
  const chart = chartOf(120, 160, 4, 13);
  benchOne('adviseOutline', '120 × 160 at 8 strands', 50, { chart, capacity: 110, maxBundle: 8 }, chart.cells);
}

function benchSilhouette(): void {
  const [width, height] = [60, 400];
  const next = numbersFrom(17);
  const first = Array.from({ length: height }, () => 1 + Math.floor(next() * 12));
  const last = Array.from({ length: height }, () => width - Math.floor(next() * 12));
  const fitted = fitPiece({ width, capacity: 48 });
  if (!fitted.ok) throw new RangeError(fitted.problem.code);
  const input = { wanted: { first, last }, fit: fitted.fit, maxBundle: 8 };
  benchOne('silhouette', '400 rows', 10, input, new Uint8Array(width * height));
}

for (const colours of [4, 8]) benchPlans(colours);
benchSmall();
benchAdvice();
benchSilhouette();
if (!Number.isFinite(kept)) throw new RangeError('a timed call gave no number');
