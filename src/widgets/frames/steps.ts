import { type RowBand, rowBandsOf, showRows } from './marking.ts';
import { bandsOf, CHARTS, showBand } from './near.ts';
import { showPlace } from './place.ts';

/** What a frame brings one after the other. */
export interface Steps {
  /** From 1. */
  readonly count: number;
  readonly show: (step: number) => void;
  /**
   * Steps that take the place of one another, in groups of one size; left out, each step only adds to the one before,
   * so the last has everything.
   */
  readonly turns?: readonly (readonly number[])[];
  /** The step that stands there when the showing has gone on to other frames; left out, the last. */
  readonly done?: number;
  /** Shows all of what is else shown in parts, as it is seen among all frames and on paper. */
  readonly whole?: () => void;
}

const all = (within: Element, wanted: string): HTMLElement[] => [...within.querySelectorAll<HTMLElement>(wanted)];
const isHidden = (part: Element): boolean => part.closest('[hidden]') !== null;

/** Each part comes at its step and stays. What is still to come keeps its place, so that nothing moves. */
function oneByOne(parts: readonly (readonly HTMLElement[])[]): Steps {
  return {
    count: Math.max(1, parts.length),
    show: (step) => {
      for (const [at, elements] of parts.entries())
        for (const element of elements) element.toggleAttribute('data-later', at > step);
    },
  };
}

/** Stages of a knot, each large and alone; at the end all of them side by side. */
function stages(row: HTMLElement): Steps {
  const shown = all(row, ':scope > li');
  return {
    count: shown.length + 1,
    turns: [Array.from({ length: shown.length + 1 }, (_, step) => step)],
    show: (step) => {
      row.toggleAttribute('data-together', step >= shown.length);
      for (const [at, stage] of shown.entries()) stage.toggleAttribute('data-away', at !== step && step < shown.length);
    },
  };
}

/**
 * A case worked through, line by line; then the exercise takes its place. A fault is first found, and then named; a high
 * chart to mark comes in bands.
 */
function exerciseSteps(frame: HTMLElement, exercise: HTMLElement): Steps {
  const lines = exercise.dataset['level'] === 'worked' ? all(exercise, '.worked-case .working > li') : [];
  const reveal = oneByOne(lines.map((line) => [line]));
  const before = exercise.dataset['level'] === 'worked' ? reveal.count : 0;
  const bands = exercise.dataset['kind'] === 'mark' ? rowBandsOf(exercise) : [];
  const asked = bands.length > 0 ? bands.map(() => 'asked') : ['asked'];
  const phases = exercise.dataset['kind'] === 'spot' ? ['where', 'what'] : asked;
  const ask = (phase: string | undefined, band: RowBand | null) => {
    exercise.dataset['phase'] = phase;
    if (exercise.dataset['kind'] === 'mark') showRows(frame, band);
  };
  return {
    count: before + phases.length,
    // The last line of the working has all the others above it; what is asked then has the frame to itself.
    turns: [...(before > 0 ? [[before - 1]] : []), phases.map((_, phase) => before + phase)],
    ...(bands.length > 0 ? { done: before, whole: () => ask('asked', null) } : {}),
    show: (step) => {
      ask(step < before ? 'worked' : phases[step - before], bands[step - before] ?? null);
      reveal.show(step);
    },
  };
}

/** A high chart: the whole of it, and then its parts, large enough for their cells to be counted. */
function chartParts(frame: HTMLElement, chart: SVGSVGElement): Steps | null {
  const bands = bandsOf(chart);
  if (bands.length === 0) return null;
  return {
    count: bands.length + 1,
    done: 0,
    turns: [[0]],
    show: (step) => {
      const band = bands[step - 1];
      frame.toggleAttribute('data-near', band !== undefined);
      showBand(chart, band ?? null);
      showPlace(frame, band?.place ?? null);
    },
  };
}

/** Pages of a text that is too long for its frame even at the smallest size. */
function pages(body: HTMLElement, count: number): Steps {
  return { count, show: (step) => body.style.setProperty('--page', String(step)) };
}

/** The steps of a frame, as it stands with these figures. */
export function stepsOf(frame: HTMLElement): Steps {
  const body = frame.querySelector<HTMLElement>('[data-frame-body]');
  if (!body || frame.hidden) return { count: 0, show: () => {} };
  const paged = Number(frame.dataset['pages'] ?? 0);
  if (paged > 1) return pages(body, paged);
  const knot = body.querySelector<HTMLElement>('.stages');
  if (knot && frame.dataset['kind'] === 'knot' && knot.children.length > 1) return stages(knot);
  const exercise = body.querySelector<HTMLElement>(
    '.exercise:is([data-level="worked"], [data-kind="spot"], [data-kind="mark"])',
  );
  if (exercise) return exerciseSteps(frame, exercise);
  const chart = frame.dataset['kind'] === 'plate' ? body.querySelector<SVGSVGElement>(CHARTS) : null;
  const parts = chart && chartParts(frame, chart);
  if (parts) return parts;
  const slip = body.querySelector('.slip dl');
  if (slip) {
    const said = all(slip, 'dt').map((word) => [
      word,
      ...all(slip, 'dt + dd').filter((dd) => dd.previousElementSibling === word),
    ]);
    return oneByOne([[], ...said]);
  }
  if (frame.dataset['kind'] !== 'prose' && frame.dataset['kind'] !== 'list') return oneByOne([]);
  const points = all(body, ':is(ul, ol):not([data-at-once], li *) > li').filter((point) => !isHidden(point));
  return oneByOne(points.map((point) => [point]));
}
