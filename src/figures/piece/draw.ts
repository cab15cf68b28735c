import type { Path } from '../strand/point.ts';
import { cellLevel } from './cell-level.ts';
import { turnRound } from './model.ts';
import type { Part, PieceModel, PieceShape, PieceString, Place } from './model-types.ts';
import { COLUMN, ROW } from './packed.ts';
import {
  curved,
  type Fineness,
  PAINT_STYLE,
  PAINTS,
  PEN_STYLE,
  packedFigures,
  sideBySide,
  straight,
  stretch,
  stretchesOf,
  thinned,
  unit,
  wound,
} from './pen.ts';
import { BAR_RADIUS, WIRE_RADIUS } from './ring.ts';

export type Level = 'cord' | 'stitch' | 'cell';

/** The sizes of a column, in pixels of the screen, from which knots are drawn as whole cord and as plain stitches. */
export const LEVEL_SIZES = { cord: 8, stitch: 1.3 } as const;

/** The level of detail for columns of so many pixels. */
export const levelFor = (pixels: number): Level =>
  pixels >= LEVEL_SIZES.cord ? 'cord' : pixels >= LEVEL_SIZES.stitch ? 'stitch' : 'cell';

export interface DrawPieceOptions {
  /** Unique in the page: every id of the drawing begins with it. */
  readonly id: string;
  /** How fine; a coarse piece is always drawn in cells. Default `cord`. */
  readonly level?: Level | undefined;
  /** From which side. Default `front`. */
  readonly view?: 'front' | 'back' | undefined;
  /** A name and a text for those who hear the picture; without a name it is hidden from them. */
  readonly title?: string | undefined;
  readonly description?: string | undefined;
  /** Ids of a title and description that the page has itself; the drawing then holds none of its own. */
  readonly labelledBy?: string | undefined;
}

/** In small stitches full edges would turn every colour dark. */
const FAINT_EDGES = ';--o:color-mix(in srgb,var(--cord-outline,#463619) 45%,transparent)';

const escaped = (raw: string): string => raw.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);

/** A piece as one compact SVG: shapes once, knots as uses of them, in the colours of the palette and of the page. */
export function drawPiece(model: PieceModel, options: DrawPieceOptions): string {
  const { id, title, description, labelledBy, view = 'front' } = options;
  const seen = model.view === view ? model : turnRound(model);
  const level = model.coarse ? 'cell' : (options.level ?? 'cord');
  const { left, right, top, bottom } = seen.frame;
  const named = labelledBy
    ? ` role="img" aria-labelledby="${labelledBy}">`
    : title
      ? ` role="img" aria-labelledby="${id}-title${description ? ` ${id}-text` : ''}"><title id="${id}-title">${escaped(title)}</title>${description ? `<desc id="${id}-text">${escaped(description)}</desc>` : ''}`
      : ' aria-hidden="true">';
  return `<svg xmlns="http://www.w3.org/2000/svg" class="fig fig-piece" viewBox="${packedFigures([left, top, right - left, bottom - top].map(unit))}" fill="none" stroke-linejoin="round" style="${PAINT_STYLE}${level === 'stitch' ? FAINT_EDGES : ''};forced-color-adjust:none;print-color-adjust:exact"${named}${new Drawing(seen, id, level).drawn()}</svg>`;
}

/** Uses of one shape side by side are doubled up to this many: fewer names to write. */
const DOUBLED = [16, 8, 4, 2];

/** One picture while it is put together. */
class Drawing {
  private readonly model: PieceModel;
  private readonly id: string;
  private readonly level: Level;
  private readonly fineness: Fineness;
  /** Short names of shapes, in the order in which they are first used. */
  private readonly names = new Map<string, string>();
  private readonly groups = new Set<string>();

  constructor(model: PieceModel, id: string, level: Level) {
    this.model = model;
    this.id = id;
    this.level = level;
    this.fineness = level === 'cord' ? 'cord' : 'stitch';
  }

  drawn(): string {
    const { model } = this;
    const layers =
      this.level === 'cell'
        ? [this.hung(), cellLevel(model), this.finishing()]
        : model.view === 'front'
          ? [this.behind(), this.hung(), this.knots(), this.finishing()]
          : [this.hung(), this.knots(), this.behind(), this.finishing()];
    const body = [this.ring(), ...layers].join('');
    return `<style>${PEN_STYLE}</style>${this.defs()}${body}`;
  }

  private ring(): string {
    const { arch, bar, key } = this.model.ring;
    const fine = this.level === 'cord';
    const round = `<circle cx="${unit(key.x)}" cy="${unit(key.y)}" r="${unit(key.r)}" stroke="`;
    const split = `${round}${PAINTS.metalLine}" stroke-width="${unit(1.3)}"/>${round}${PAINTS.metal}" stroke-width="${unit(1.1)}"/>${round}${PAINTS.metalLine}" stroke-width="2"/>`;
    const wire = stretch(arch, PAINTS.metal, fine ? 'cord' : 'stitch', WIRE_RADIUS, true);
    const loops = this.model.strings.flatMap(({ parts }) =>
      parts.flatMap((part) => (part.is === 'line' && part.what === 'fold' ? [part.path] : [])),
    );
    const heads = this.model.places.filter(({ knot, shape }) => !knot && /^(larks|lone)/.test(shape));
    const cut = loops.map((path) => stretchesOf(path, 0.45));
    const behind = heads.flatMap(({ shape, x, y }) =>
      stretchesOf(this.model.shapes[shape]?.leads[0] ?? [], 0.45).behind.map((path) =>
        path.map((point) => [point[0] + x, point[1] + y, point[2]] as const),
      ),
    );
    return [
      split,
      sideBySide([...cut.flatMap((one) => one.behind), ...behind].map(thinned), PAINTS.base),
      wire,
      stretch(bar, PAINTS.metal, fine ? 'cord' : 'stitch', BAR_RADIUS, true),
      fine ? this.shine(bar) : '',
      cut.flatMap(({ before }) => before.map((path) => stretch(path, PAINTS.base, this.fineness))).join(''),
      heads.map(({ shape, x, y }) => this.use(this.nameOf(shape), unit(x), unit(y))).join(''),
    ].join('');
  }

  private shine(bar: Path): string {
    const line = bar.map(([x, y, z]) => [x, y - BAR_RADIUS * 0.4, z] as const);
    return `<path d="${straight(line)}" stroke="${PAINTS.metalLight}" stroke-opacity=".85" stroke-width="${unit(0.34)}"/>`;
  }

  private lines(what: readonly string[], role?: PieceString['role']): { string: PieceString; path: Path }[] {
    return this.model.strings
      .filter((string) => !role || string.role === role)
      .flatMap((string) =>
        string.parts.flatMap((part: Part) =>
          part.is === 'line' && what.includes(part.what) ? [{ string, path: part.path }] : [],
        ),
      );
  }

  private paintOf({ role, colour }: Pick<PieceString, 'role' | 'colour'>): string {
    if (role === 'base') return PAINTS.base;
    const own = colour === null ? undefined : this.model.chart?.palette[colour]?.colour;
    return own && own !== 'none' ? own : PAINTS.lead;
  }

  /** Floats and tails at the back, one path for each string. */
  private behind(): string {
    const byString = new Map<PieceString, Path[]>();
    for (const { string, path } of this.lines(['float', 'tail']))
      byString.set(string, [...(byString.get(string) ?? []), path]);
    const back = this.model.view === 'back';
    return [...byString]
      .map(([string, paths]) => {
        // From the front they only show through gaps, if at all: from end to end is enough.
        const d = paths
          .map((path) =>
            back
              ? this.level === 'cord'
                ? curved(path)
                : straight(thinned(path))
              : straight(path.filter((_, i) => i === 0 || i === path.length - 1)),
          )
          .join('');
        const body = `<path d="${d}" class="pc-b" color="${this.paintOf(string)}"/>`;
        return back ? `<path d="${d}" class="pc-e"/>${body}` : body;
      })
      .join('');
  }

  /** Base strings from ring to finish, the deepest first. */
  private hung(): string {
    const lines = this.lines(['hang']).sort((a, b) => (a.path[0]?.[2] ?? 0) - (b.path[0]?.[2] ?? 0));
    return lines.map(({ path }) => sideBySide([path], PAINTS.base)).join('');
  }

  private nameOf(shape: string): string {
    const known = this.names.get(shape);
    if (known) return known;
    const fresh = this.names.size.toString(36);
    this.names.set(shape, fresh);
    return fresh;
  }

  private use(name: string, x: number, y: number, rest = ''): string {
    return `<use href="#${this.id}-${name}"${x === 0 ? '' : ` x="${x}"`}${y === 0 ? '' : ` y="${y}"`}${rest}/>`;
  }

  /** All knots of the rows, row by row, in tying order from the front; links before the knots of the row they lead to. */
  private knots(): string {
    const { model } = this;
    const back = model.view === 'back';
    const byRow = new Map<number, Place[]>();
    for (const place of model.places)
      if (place.knot) byRow.set(place.knot.row, [...(byRow.get(place.knot.row) ?? []), place]);
    const links = new Map<number, string>();
    for (const { string, path } of this.lines(['link'])) {
      const row = Math.floor((path.at(-1)?.[1] ?? 0) / ROW) + 1;
      const behind = path.some(([, , z]) => z < -1);
      if (behind && !back) continue;
      links.set(row, (links.get(row) ?? '') + stretch(path, this.paintOf(string), 'stitch'));
    }
    const ends = this.lines(['end'], 'leading').filter(
      ({ path }) => !model.finished && path.some(([, , z]) => z > 0.5),
    );
    return [...byRow]
      .map(([row, all]) => {
        const places = back ? [...all].reverse() : all;
        const uses: string[][] = [];
        for (let i = 0; i < places.length; ) {
          const place = places[i] as Place;
          let run = 1;
          while (i + run < places.length && this.follows(places[i + run - 1] as Place, places[i + run] as Place))
            run += 1;
          const step = run > 1 ? Math.sign((places[i + 1] as Place).x - place.x) : 1;
          const same: string[] = [];
          for (let left = run, at = i; left > 0; ) {
            const many = DOUBLED.find((count) => count <= left) ?? 1;
            same.push(this.use(this.grouped(place.shape, many, step), unit((places[at] as Place).x), 0));
            left -= many;
            at += many;
          }
          const paint = this.paintOf({ role: 'leading', colour: place.colour });
          if (uses.at(-1)?.[0] === paint) uses.at(-1)?.push(...same);
          else uses.push([paint, ...same]);
          i += run;
        }
        const own = links.get(row) ?? '';
        return `${back ? '' : own}<g transform="translate(0 ${unit((row - 1) * ROW)})">${uses.map(([paint, ...all]) => `<g color="${paint}">${all.join('')}</g>`).join('')}</g>${back ? own : ''}`;
      })
      .concat(ends.map(({ string, path }) => stretch(path, this.paintOf(string), this.fineness)))
      .join('');
  }

  private follows(one: Place, other: Place): boolean {
    return (
      one.shape === other.shape && one.colour === other.colour && Math.abs(Math.abs(one.x - other.x) - COLUMN) < 1e-6
    );
  }

  /** The name of so many of a shape side by side. */
  private grouped(shape: string, many: number, step: number): string {
    const name = this.nameOf(shape);
    if (many === 1) return name;
    this.grouped(shape, many / 2, step);
    const full = `${name}${step < 0 ? 'l' : 'r'}${many}`;
    this.groups.add(
      `${full} ${many > 2 ? `${name}${step < 0 ? 'l' : 'r'}${many / 2}` : name} ${step * (many / 2) * unit(COLUMN)}`,
    );
    return full;
  }

  private finishing(): string {
    const { model } = this;
    if (!model.finished) return '';
    const ends = this.lines(['end']).map(({ string, path }) => stretch(path, this.paintOf(string), 'stitch'));
    const tassel = this.lines(['tassel']).map(({ path }) =>
      stretch(path, PAINTS.base, this.level === 'cord' ? 'lit' : 'stitch'),
    );
    const core = this.lines(['core']).sort((a, b) => (a.path[0]?.[2] ?? 0) - (b.path[0]?.[2] ?? 0));
    const knots = model.places
      .filter(({ shape }) => /^(gathering|square)/.test(shape))
      .map((place) => {
        const [cosine, sine] = place.turn ?? [1, 0];
        const shape = this.nameOf(place.shape);
        const [x, y] = [unit(place.x), unit(place.y)];
        const turn = place.turn
          ? ` transform="matrix(${[cosine, sine, -sine, cosine].map((part) => part.toFixed(3)).join(' ')} ${x} ${y})"`
          : '';
        return place.turn ? this.use(shape, 0, 0, turn) : this.use(shape, x, y);
      });
    return [...ends, ...tassel, ...core.map(({ path }) => sideBySide([thinned(path)], PAINTS.base)), ...knots].join('');
  }

  /** Shapes once, and rows of two, four, eight and sixteen of them. */
  private defs(): string {
    const shapes = [...this.names].map(([shape, name]) => {
      const own = this.model.shapes[shape];
      return own ? `<g id="${this.id}-${name}">${this.shape(shape, own)}</g>` : '';
    });
    const groups = [...this.groups].map((line) => {
      const [full = '', half = '', x = '0'] = line.split(' ');
      return `<g id="${this.id}-${full}">${this.use(half, 0, 0)}${this.use(half, Number(x), 0)}</g>`;
    });
    return `<defs>${shapes.join('')}${groups.join('')}</defs>`;
  }

  private shape(name: string, { leads, bases }: PieceShape): string {
    if (/^(larks|lone)/.test(name))
      return leads
        .flatMap((lead) => stretchesOf(lead, 0.45).before.map((path) => stretch(path, PAINTS.base, this.fineness)))
        .join('');
    const paint = /^(gathering|square)/.test(name) ? PAINTS.base : 'currentColor';
    return wound(leads, bases, paint, this.fineness);
  }
}
