import { fitCells, sharesOf, smallerCells, takeShare } from './marking.ts';
import { type Steps, stepsOf } from './steps.ts';

/** The frame that everything is measured in. A window shows the same, larger or smaller. */
const WIDTH = 1280;
/** Nothing below 28 units is read from eight metres; a little more, for figures that are rounded. */
const SAFE = 28.4;
/** Labels that stand side by side are this far apart. */
const APART = 8;
/** From the size for very few words to a tight one; `src/styles/frames.css` says what each means. */
const LARGEST = -1;
const TIGHTEST = 7;
/** Lists and what has parts begin here: they are looked over, and not read in one go. */
const LISTED = 0;
/**
 * The size of a drawing’s caption, of what is entered beside one, and of steps, whose heading stands beside the buttons:
 * larger, words would take the room of the drawing or of the buttons.
 */
const PLAIN = 2;
/** An exercise is asked smaller than words that stand alone, so that there is room for what is said of it. */
const ASKED = 1;

const bodyOf = (frame: HTMLElement): HTMLElement | null => frame.querySelector('[data-frame-body]');

/** The words of a stage stand beside its drawing, in the middle of its height, so they can be too much for that alone. */
const isTooMuch = (body: HTMLElement): boolean =>
  [body, ...body.querySelectorAll('.stages')].some(
    (box) => box.scrollHeight > box.clientHeight + 1 || box.scrollWidth > box.clientWidth + 1,
  );

/** The steps of a frame in groups of one size, each as the steps in which it can be at its fullest. */
const turnsOf = ({ turns, count }: Steps): readonly (readonly number[])[] => turns ?? [[count - 1]];

function overflows(frame: HTMLElement, steps: Steps, turn: readonly number[]): boolean {
  const body = bodyOf(frame);
  return (
    body !== null &&
    turn.some((step) => {
      steps.show(step);
      return isTooMuch(body);
    })
  );
}

/** The largest size that a frame is begun with. */
function largestOf(frame: HTMLElement): number {
  const { kind = '' } = frame.dataset;
  if (['plate', 'knot', 'try-it', 'opening'].includes(kind)) return PLAIN;
  if (['prose', 'caution', 'aside'].includes(kind)) return LARGEST;
  const asked = frame.querySelector<HTMLElement>('.exercise')?.dataset['kind'];
  if (asked === undefined) return LISTED;
  return ['mark', 'row', 'spot', 'order'].includes(asked) ? PLAIN : ASKED;
}

/** A case that is worked stands in one column or in two, whichever lets it be larger; a chart to mark may give way a little. */
function* waysOf(frame: HTMLElement, turn: number): Generator<void> {
  const isCase = turn === 0 && frame.querySelector('[data-level="worked"] .worked-case .working > :nth-child(3)');
  if (isCase)
    for (const columns of ['1', '2']) {
      frame.dataset['columns'] = columns;
      yield;
    }
  else if (frame.querySelector('.mark-grid'))
    for (const share of sharesOf(frame)) {
      takeShare(frame, share);
      yield;
    }
  else yield;
}

/** The size of each turn of a frame, as it was fitted, and the size that it needs with what has been said of an answer. */
const sizes = new WeakMap<HTMLElement, readonly number[]>();
const grown = new WeakMap<HTMLElement, number>();

/** Steps of a frame that has been fitted: each in the size of its turn. */
export function fittedSteps(frame: HTMLElement): Steps {
  const steps = stepsOf(frame);
  const { whole } = steps;
  const take = (step: number) => {
    const fitted = sizes.get(frame);
    if (!fitted) return;
    const turn = turnsOf(steps).findIndex((each) => step <= (each.at(-1) ?? 0));
    const size = String(Math.max(fitted[turn] ?? fitted.at(-1) ?? PLAIN, grown.get(frame) ?? LARGEST));
    if (frame.dataset['fit'] !== size) frame.dataset['fit'] = size;
  };
  return {
    ...steps,
    show: (step) => {
      steps.show(step);
      take(step);
    },
    ...(whole && {
      whole: () => {
        whole();
        take(steps.count - 1);
      },
    }),
  };
}

/** The chart gives way; says whether that is enough. */
function giveWay(frame: HTMLElement, body: HTMLElement): boolean {
  while (isTooMuch(body)) if (!smallerCells(frame)) return false;
  return true;
}

/**
 * Makes room for what has come to stand under an exercise, or gives back the room when it is gone. What has no room even
 * at the smallest size is scrolled to, under what is asked.
 *
 * @param said what has just been said of an answer, if anything
 */
export function refit(frame: HTMLElement, said: Element | null): void {
  const body = bodyOf(frame);
  const fitted = sizes.get(frame);
  grown.delete(frame);
  frame.removeAttribute('data-full');
  // A case that is worked through has the figures it was built with.
  if (!body || !fitted || frame.querySelector('[data-phase="worked"]')) return;
  fitCells(frame);
  // Where smaller words are not enough, the heading goes, and all but the first word on the answer.
  for (const full of [false, true]) {
    frame.toggleAttribute('data-full', full);
    for (let size = fitted.at(-1) ?? PLAIN; size <= TIGHTEST; size += 1) {
      frame.dataset['fit'] = String(size);
      grown.set(frame, size);
      if (!isTooMuch(body)) return;
    }
  }
  if (!giveWay(frame, body)) said?.scrollIntoView({ block: 'nearest' });
}

const box = (svg: SVGSVGElement): DOMRect | undefined => svg.viewBox.baseVal ?? undefined;

/** A drawing stands over its caption or beside it, whichever makes it larger. */
function shape(frame: HTMLElement): void {
  const svg = frame.querySelector<SVGSVGElement>('.plate-ground > svg');
  const size = svg && box(svg);
  if (!svg || !size || size.width === 0) return;
  if (frame.dataset['kind'] !== 'plate') {
    frame.dataset['shape'] = 'wide';
    return;
  }
  const drawnAs = (shape: string): number => {
    frame.dataset['shape'] = shape;
    const { width, height } = svg.getBoundingClientRect();
    return Math.min(width / size.width, height / size.height);
  };
  frame.dataset['fit'] = String(PLAIN);
  const beside = drawnAs('tall');
  if (drawnAs('wide') < beside) frame.dataset['shape'] = 'tall';
}

const touches = (one: DOMRect, other: DOMRect, apart: number): boolean =>
  one.left < other.right + apart && other.left < one.right + apart && one.top < other.bottom && other.top < one.bottom;

/** The lines of one label. */
type Label = readonly SVGTextElement[];
/** Lines of a label are at most this far apart, in units of the drawing. */
const LINE = 20;

/** The labels of a drawing: lines of words that stand under one another are one label; numbers stand alone. */
function labelsOf(svg: SVGSVGElement): Label[] {
  const labels: SVGTextElement[][] = [];
  for (const text of svg.querySelectorAll('text')) {
    const before = labels.at(-1)?.at(-1);
    const down = Number(text.getAttribute('y')) - Number(before?.getAttribute('y'));
    const goesOn =
      before !== undefined &&
      text.getAttribute('x') === before.getAttribute('x') &&
      down > 0 &&
      down < LINE &&
      ![text, before].some((line) => /^\d+$/.test(line.textContent ?? ''));
    if (goesOn) labels.at(-1)?.push(text);
    else labels.push([text]);
  }
  return labels;
}

/**
 * Makes the labels of a drawing large enough for the room, and leaves out those that then lie on another: first the
 * plain ones, such as the numbers of rows between others.
 *
 * @param unit one unit of the frame, in pixels of this window
 */
function labels(svg: SVGSVGElement, paper: DOMRect, unit: number): void {
  const size = box(svg);
  const drawn = svg.getBoundingClientRect();
  if (!size || size.width === 0 || drawn.width === 0) return;
  svg.style.removeProperty('font-size');
  const scale = Math.min(drawn.width / size.width, drawn.height / size.height);
  const now = Number.parseFloat(getComputedStyle(svg).fontSize) * scale;
  if (now < SAFE * unit) svg.style.fontSize = `${(SAFE * unit) / scale}px`;
  for (const text of svg.querySelectorAll('text')) text.removeAttribute('data-hushed');
  const weight = ([text]: Label) => Number(text?.matches('.f-strong, .f-must')) * 2 - Number(text?.matches('.f-quiet'));
  const kept: DOMRect[] = [];
  for (const label of labelsOf(svg).sort((one, other) => weight(other) - weight(one))) {
    const places = label.map((line) => line.getBoundingClientRect()).filter(({ width }) => width > 0);
    const stays = places.every(
      (place) =>
        place.left >= paper.left &&
        place.right <= paper.right &&
        place.top >= paper.top &&
        place.bottom <= paper.bottom &&
        !kept.some((other) => touches(place, other, APART * unit)),
    );
    if (stays) kept.push(...places);
    for (const line of label) line.toggleAttribute('data-hushed', !stays);
  }
}

/** The labels of every drawing of a frame that is being shown. */
export function fitLabels(frame: HTMLElement): void {
  const paper = frame.querySelector('.frame-paper')?.getBoundingClientRect();
  if (!paper || paper.width === 0) return;
  for (const svg of frame.querySelectorAll<SVGSVGElement>('svg.fig')) labels(svg, paper, paper.width / WIDTH);
}

/**
 * Fits frames: each turn of a frame gets the largest of nine sizes at which nothing is cut. Prose that is too long at
 * the smallest is shown in pages. Both windows measure in a frame of one size, so they come to the same.
 *
 * @param deck holds the frames
 */
export function fitFrames(deck: HTMLElement, frames: readonly HTMLElement[]): void {
  deck.setAttribute('data-measuring', '');
  for (const frame of frames) {
    delete frame.dataset['pages'];
    frame.removeAttribute('data-full');
    bodyOf(frame)?.style.removeProperty('--page');
    grown.delete(frame);
    sizes.delete(frame);
    stepsOf(frame).show(0);
    shape(frame);
    fitCells(frame);
  }
  for (const frame of frames) {
    if (frame.hidden) continue;
    const steps = stepsOf(frame);
    const body = bodyOf(frame);
    let fits = true;
    const fitted = turnsOf(steps).map((turn, at) => {
      for (let size = largestOf(frame); size <= TIGHTEST; size += 1) {
        frame.dataset['fit'] = String(size);
        for (const _ of waysOf(frame, at)) if (!overflows(frame, steps, turn)) return size;
      }
      fits = false;
      return TIGHTEST;
    });
    sizes.set(frame, fitted);
    if (fits || !body || !['prose', 'list', 'caution', 'aside', 'slip'].includes(frame.dataset['kind'] ?? '')) continue;
    frame.dataset['pages'] = '2';
    const gap = Number.parseFloat(getComputedStyle(body).columnGap) || 0;
    frame.dataset['pages'] = String(Math.max(1, Math.round((body.scrollWidth + gap) / (body.clientWidth + gap))));
  }
  for (const frame of frames) fitLabels(frame);
  deck.removeAttribute('data-measuring');
}
