import { type DrawnFigure, drawFigure, type FigureName as FigurePlate } from '../figures/index.ts';
import { isOfColours, plateOptions } from '../figures/plate-options.ts';
import { type Condition, holds } from '../solver/conditions.ts';
import { type CutFigure, cutFigure } from '../solver/cut-figures.ts';
import { type FigureName, namedFigure, namedRow } from '../solver/named-figures.ts';
import type { Plan } from '../solver/plan.ts';
import { type RingFigure, ringFigure } from '../solver/ring-figures.ts';
import type { Thread } from '../solver/thread/thread.ts';
import { showHand } from '../store/hand.ts';
import { loadOwnFigures } from '../store/own-figures.ts';
import { ownThread } from '../store/own-reading.ts';
import { ownReading } from '../store/reading.ts';
import { type FigureForm, figureText } from '../words/figure-text.ts';
import { figureWords } from '../words/figure-words.ts';
import { lengthRange, measuredLengths, type UnitSystem } from '../words/units.ts';
import { breath } from './breath.ts';
import { ownPlan } from './own-plan.ts';

type PlateName = FigurePlate | 'piece';

/** What stood in an element when the page was built, so that the example comes back as it was. */
const built = new WeakMap<Element, string>();

function put(element: Element, text: string, as: 'textContent' | 'innerHTML'): void {
  if (!built.has(element)) built.set(element, element[as] ?? '');
  if (element[as] !== text) element[as] = text;
}

function putBack(element: Element, as: 'textContent' | 'innerHTML'): void {
  const before = built.get(element);
  if (before !== undefined) element[as] = before;
}

/** A figure that this piece has not got is shown as a dash; the passage round it is hidden by its condition. */
function figureFor(plan: Plan, { figure, row, after, as, unit }: DOMStringMap): string {
  const start = row === undefined || Number.isNaN(Number(row)) ? (row as FigureName | undefined) : Number(row);
  const value = namedFigure(plan, figure as FigureName, namedRow(plan, start, Number(after ?? 0)));
  return value === null ? '–' : figureText(value, as as FigureForm, unit);
}

/** A length of the cut list, in the two systems of units that the page holds side by side. */
function putLength(element: HTMLElement, plan: Plan | null, thread: Thread): void {
  const length = plan && cutFigure(plan, thread, element.dataset['length'] as CutFigure);
  for (const span of element.querySelectorAll<HTMLElement>('[data-units]'))
    if (length) put(span, lengthRange(length, span.dataset['units'] as UnitSystem, true), 'textContent');
    else putBack(span, 'textContent');
}

/** What is measured of the learner's ring: a count, or a length in the two systems of units. */
function putRing(element: HTMLElement, plan: Plan | null, thread: Thread, barWidth: number | null): void {
  const { ring, unit } = element.dataset;
  const value = plan && ringFigure(plan, thread, barWidth, ring as RingFigure);
  const spans = element.querySelectorAll<HTMLElement>('[data-units]');
  for (const span of spans)
    if (value === null) putBack(span, 'textContent');
    else put(span, measuredLengths(value)[span.dataset['units'] as UnitSystem], 'textContent');
  if (spans.length > 0) return;
  if (value === null) putBack(element, 'textContent');
  else put(element, figureText(value, 'digits', unit), 'textContent');
}

const inInches = (element: Element): boolean => element.getAttribute('data-units') === 'inches';

/** A plate of the page for the learner's plan; what draws the whole piece is fetched with the first plate of it. */
async function drawnFor(
  name: PlateName,
  plan: Plan,
  options: Readonly<Record<string, unknown>>,
  { thread, barWidth }: { readonly thread: Thread; readonly barWidth: number | null },
  id: string,
): Promise<DrawnFigure> {
  const given = plateOptions(name, plan, options, thread, barWidth);
  if (name !== 'piece') return drawFigure(name, plan, given, { id, words: figureWords });
  const { drawOwnPiece } = await import('./own-piece-plate.ts');
  return drawOwnPiece(plan, given, id);
}

let runs = 0;
/** Whether the motions of the page stand, or stood, for the left hand. */
let turned = false;

/** The page's figures, passages and plates, made again from the learner's own plan; or put back as they were built. */
export async function applyReading(mine: boolean): Promise<void> {
  runs += 1;
  const run = runs;
  const input = mine ? ownReading() : null;
  const plan = input && (await ownPlan(input));
  // Figures may have changed again while a chart was fetched.
  if (run !== runs) return;
  const thread = ownThread();
  const { barWidth } = loadOwnFigures().value.ring;
  for (const element of document.querySelectorAll<HTMLElement>('[data-figure]'))
    if (plan) put(element, figureFor(plan, element.dataset), 'textContent');
    else putBack(element, 'textContent');
  for (const element of document.querySelectorAll<HTMLElement>('[data-length]')) putLength(element, plan, thread);
  for (const element of document.querySelectorAll<HTMLElement>('[data-ring]')) putRing(element, plan, thread, barWidth);
  for (const element of document.querySelectorAll<HTMLElement>('[data-when]')) {
    element.dataset['whenBuilt'] ??= String(element.hidden);
    element.hidden = plan
      ? !holds(plan, element.dataset['when'] as Condition)
      : element.dataset['whenBuilt'] === 'true';
  }
  const hand = plan ? loadOwnFigures().value.handedness : 'right';
  showHand(hand);
  const coloured = plan !== null && holds(plan, 'coloured');
  for (const figure of document.querySelectorAll<HTMLElement>('[data-plate]')) {
    const ground = figure.querySelector('[data-plate-ground]');
    const words = figure.querySelector('[data-plate-words]');
    if (!ground || !words) continue;
    const { plate = '', options = '{}' } = figure.dataset;
    const given: Record<string, unknown> = JSON.parse(options);
    // A piece without a picture leaves the example's colours where they are; the caption says so.
    const own = isOfColours(plate as PlateName, given) && !coloured ? null : plan;
    if (own) await breath();
    if (run !== runs) return;
    const drawn = own && (await drawnFor(plate as PlateName, own, given, { thread, barWidth }, figure.id));
    if (run !== runs) return;
    if (drawn) put(ground, drawn.svg, 'innerHTML');
    else putBack(ground, 'innerHTML');
    const spans = words.querySelectorAll<HTMLElement>('[data-units]');
    for (const place of spans.length > 0 ? spans : [words])
      if (!drawn) putBack(place, 'textContent');
      else put(place, (inInches(place) && drawn.inInches) || drawn.description, 'textContent');
  }
  turned ||= hand === 'left';
  if (turned) {
    const { applyHand } = await import('./own-motion.ts');
    await applyHand(hand, () => run === runs);
  }
}
