import { type Box, lookBox, type PiecePart } from '../../figures/piece/index.ts';
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
 * further knot costs little in a piece of any size. They lie on one ground, which is enlarged and moved as a whole: to
 * look elsewhere, nothing is drawn anew.
 */
export class Sheets {
  private readonly ground: HTMLElement;
  private readonly sheets = new Map<string, Sheet>();
  private box = '';

  constructor(place: Element) {
    this.ground = document.createElement('div');
    this.ground.className = 'viewer-ground';
    place.replaceChildren(this.ground);
  }

  /** Takes everything away, because the next picture has nothing in common with this one. */
  clear(): void {
    this.sheets.clear();
    this.ground.replaceChildren();
  }

  /** Shows these parts; only what differs is drawn anew. */
  show(parts: readonly PiecePart[]): void {
    const wanted = sheetsOf(parts);
    for (const [name, { svg }] of this.sheets)
      if (!wanted.has(name)) {
        svg.remove();
        this.sheets.delete(name);
      }
    let next = this.ground.firstElementChild;
    for (const [name, own] of wanted) {
      const sheet = this.sheets.get(name) ?? this.fresh(name);
      keepParts(sheet.parts, own, sheet.kept);
      if (sheet.svg === next) next = next.nextElementSibling;
      else this.ground.insertBefore(sheet.svg, next);
    }
  }

  /** Looks at a part of the piece; `room` is all that there is to see. */
  look(room: Box, part: Box): void {
    const { style } = this.ground;
    style.inlineSize = style.blockSize = `${(100 * room.width) / part.width}%`;
    const moved = [(room.left - part.left) / room.width, (room.top - part.top) / room.height];
    style.transform = `translate(${moved.map((way) => `${100 * way}%`).join()})`;
    const box = lookBox(room);
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
