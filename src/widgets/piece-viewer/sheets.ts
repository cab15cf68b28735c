import type { PiecePart } from '../../figures/piece/index.ts';
import { type KeptParts, keepParts } from './keep-parts.ts';

/** Rows on one sheet: a browser paints a sheet as a whole, and looks at every line of it. */
const ROWS = 8;
const SVG = 'http://www.w3.org/2000/svg';

interface Sheet {
  readonly svg: SVGSVGElement;
  readonly parts: Element;
  readonly kept: KeptParts;
}

/** The parts of a picture in the order in which they lie on each other, each with the sheet it belongs to. */
function sheetsOf(parts: readonly PiecePart[]): Map<string, PiecePart[]> {
  const sheets = new Map<string, PiecePart[]>();
  let rows = false;
  for (const part of parts) {
    const row = /^row-(\d+)/.exec(part.key)?.[1];
    rows ||= row !== undefined;
    const name = row === undefined ? (rows ? 'over' : 'under') : `rows-${Math.floor((Number(row) - 1) / ROWS)}`;
    sheets.set(name, [...(sheets.get(name) ?? []), part]);
  }
  return sheets;
}

/**
 * A picture of a piece on several sheets that lie on each other. What is done to one leaves the others as they are, so a
 * further knot costs little in a piece of any size.
 */
export class Sheets {
  private readonly place: Element;
  private readonly sheets = new Map<string, Sheet>();
  private box = '';

  constructor(place: Element) {
    this.place = place;
  }

  /** Takes everything away, because the next picture has nothing in common with this one. */
  clear(): void {
    this.sheets.clear();
    this.place.replaceChildren();
  }

  /** Shows these parts; only what differs is drawn anew. */
  show(parts: readonly PiecePart[]): void {
    const wanted = sheetsOf(parts);
    for (const [name, { svg }] of this.sheets)
      if (!wanted.has(name)) {
        svg.remove();
        this.sheets.delete(name);
      }
    let next = this.place.firstElementChild;
    for (const [name, own] of wanted) {
      const sheet = this.sheets.get(name) ?? this.fresh(name);
      keepParts(sheet.parts, own, sheet.kept);
      if (sheet.svg === next) next = next.nextElementSibling;
      else this.place.insertBefore(sheet.svg, next);
    }
  }

  /** Looks at another part of the piece. */
  look(box: string): void {
    if (box === this.box) return;
    this.box = box;
    for (const { svg } of this.sheets.values()) svg.setAttribute('viewBox', box);
  }

  private fresh(name: string): Sheet {
    const svg = document.createElementNS(SVG, 'svg');
    svg.setAttribute('class', 'fig');
    svg.setAttribute('aria-hidden', 'true');
    svg.setAttribute('fill', 'none');
    svg.setAttribute('stroke-linejoin', 'round');
    if (this.box !== '') svg.setAttribute('viewBox', this.box);
    const parts = svg.appendChild(document.createElementNS(SVG, 'g'));
    const sheet: Sheet = { svg, parts, kept: new Map() };
    this.sheets.set(name, sheet);
    return sheet;
  }
}
