import type { Stroke } from './show.ts';

const SVG = 'http://www.w3.org/2000/svg';
/** Of the sheet that is drawn on; a window shows it larger or smaller. */
const [WIDTH, HEIGHT] = [1280, 720];
/** Places closer than this, as a part of the width, are one place. */
const NEAR = 0.002;

const inkOf = (frame: HTMLElement): SVGSVGElement | null => frame.querySelector<SVGSVGElement>('[data-ink]');

/** A stroke as a path; a stroke of one place is a dot. */
function pathOf(stroke: Stroke): string {
  const places: string[] = [];
  for (let at = 0; at + 1 < stroke.length; at += 2)
    places.push(`${((stroke[at] ?? 0) * WIDTH).toFixed(1)} ${((stroke[at + 1] ?? 0) * HEIGHT).toFixed(1)}`);
  return places.length === 1 ? `M${places[0]}h0.1` : `M${places.join('L')}`;
}

function draw(ink: SVGSVGElement, stroke: Stroke): SVGPathElement {
  const path = document.createElementNS(SVG, 'path');
  path.setAttribute('d', pathOf(stroke));
  ink.append(path);
  return path;
}

/** Shows what was drawn on a frame, and a line that is being drawn. */
export function showInk(frame: HTMLElement, strokes: readonly Stroke[], line?: Stroke): void {
  const ink = inkOf(frame);
  if (!ink) return;
  ink.replaceChildren();
  for (const stroke of strokes) draw(ink, stroke);
  if (line && line.length > 1) draw(ink, line);
}

/** Where a pointer is on a frame, as parts of its width and height; null beside it. */
export function placeOn(frame: HTMLElement, { clientX, clientY }: PointerEvent): readonly [number, number] | null {
  const paper = frame.querySelector('.frame-paper')?.getBoundingClientRect();
  if (!paper || paper.width === 0) return null;
  const [x, y] = [(clientX - paper.left) / paper.width, (clientY - paper.top) / paper.height];
  return x >= 0 && x <= 1 && y >= 0 && y <= 1 ? [x, y] : null;
}

/** A stroke with one more place, unless the pointer has hardly moved. */
export function longer(stroke: Stroke, [x, y]: readonly [number, number]): Stroke {
  const [lastX, lastY] = stroke.slice(-2);
  if (lastX !== undefined && lastY !== undefined && Math.abs(x - lastX) + Math.abs(y - lastY) < NEAR) return stroke;
  return [...stroke, x, y];
}
