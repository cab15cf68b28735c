const SVG = 'http://www.w3.org/2000/svg';
/** How wide the small sheet is, in units of its own drawing. */
const WIDTH = 100;

/** A chart, and which of its rows are shown: from the first up to the one that is not, counted from 0. */
export interface PlaceInChart {
  readonly columns: number;
  readonly rows: number;
  readonly from: number;
  readonly to: number;
}

/** Says in the margin of a frame which part of a chart it shows, as a band on a small sheet; or takes that away. */
export function showPlace(frame: HTMLElement, place: PlaceInChart | null): void {
  const shown = place ? `${place.columns} ${place.rows} ${place.from} ${place.to}` : '';
  const now = frame.querySelector<SVGSVGElement>('.frame-place');
  if ((now?.dataset['shown'] ?? '') === shown) return;
  now?.remove();
  if (!place) return;
  const high = (WIDTH / place.columns) * place.rows;
  const row = high / place.rows;
  const sheet = document.createElementNS(SVG, 'svg');
  sheet.setAttribute('class', 'frame-place');
  sheet.setAttribute('viewBox', `0 0 ${WIDTH} ${high.toFixed(1)}`);
  // Which rows are shown is said by the numbers beside them.
  sheet.setAttribute('aria-hidden', 'true');
  sheet.dataset['shown'] = shown;
  for (const [y, height] of [
    [0, high],
    [place.from * row, (place.to - place.from) * row],
  ] as const) {
    const part = document.createElementNS(SVG, 'rect');
    for (const [name, value] of Object.entries({ x: 0, y, width: WIDTH, height }))
      part.setAttribute(name, value.toFixed(1));
    sheet.append(part);
  }
  frame.querySelector('.frame-sheet')?.append(sheet);
}
