import { between, type Path } from '../strand/point.ts';
import { cellLevel } from './cell-level.ts';
import { rowAt, topOf } from './courses.ts';
import { turnRound } from './model.ts';
import {
  type Course,
  type Part,
  type PieceModel,
  type PieceShape,
  type PieceString,
  type Place,
  TOLD,
} from './model-types.ts';
import { COLUMN, ROW } from './packed.ts';
import {
  curved,
  type Fineness,
  headStretches,
  nearest,
  PAINT_STYLE,
  PAINTS,
  PEN_STYLE,
  sideBySide,
  straight,
  stretch,
  stretchesOf,
  thinned,
  unit,
  windsBefore,
  windsBehind,
  wound,
} from './pen.ts';
import { BAR_RADIUS, WIRE_RADIUS } from './ring.ts';
import { inRuns } from './runs.ts';

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

/** What the whole picture says of itself, before its parts. */
const opening = (
  frame: PieceModel['frame'],
  level: Level,
  { id, title, description, labelledBy }: Pick<DrawPieceOptions, 'id' | 'title' | 'description' | 'labelledBy'>,
): string => {
  const named = labelledBy
    ? ` role="img" aria-labelledby="${labelledBy}">`
    : title
      ? ` role="img" aria-labelledby="${id}-title${description ? ` ${id}-text` : ''}"><title id="${id}-title">${escaped(title)}</title>${description ? `<desc id="${id}-text">${escaped(description)}</desc>` : ''}`
      : ' aria-hidden="true">';
  return `<svg xmlns="http://www.w3.org/2000/svg" class="fig fig-piece" viewBox="${frameBox(frame)}" fill="none" stroke-linejoin="round" style="${pieceStyle(level)}"${named}`;
};

/** The frame of a piece as the viewBox of its drawing. */
const frameBox = ({ left, right, top, bottom }: PieceModel['frame']): string =>
  [left, top, right - left, bottom - top].map(unit).join(' ');

/** What the element round a piece's parts has to carry: the house's colours by their short names. */
export const pieceStyle = (level: Level): string =>
  `${PAINT_STYLE}${level === 'stitch' ? FAINT_EDGES : ''};forced-color-adjust:none;print-color-adjust:exact`;

const facing = (model: PieceModel, view: PieceModel['view'] = 'front'): PieceModel =>
  model.view === view ? model : turnRound(model);
const levelOf = (model: PieceModel, level: Level = 'cord'): Level => (model.coarse ? 'cell' : level);

/** A piece as one compact SVG: shapes once, knots as uses of them, in the colours of the palette and of the page. */
export function drawPiece(model: PieceModel, options: DrawPieceOptions): string {
  const seen = facing(model, options.view);
  const level = levelOf(model, options.level);
  const body = new PiecePainter(options.id, level).parts(seen).map(({ svg }) => svg);
  return `${opening(seen.frame, level, options)}${body.join('')}</svg>`;
}

/**
 * The same piece at several moments, each as an SVG of its own, all to stand in one page: rows that look alike in two
 * that follow each other are drawn once, and the later one refers to the earlier.
 *
 * @param titles a name for each, in the order of the models; without one a picture is hidden from those who hear the page
 */
export function drawMoments(
  models: readonly PieceModel[],
  options: Omit<DrawPieceOptions, 'title' | 'description' | 'labelledBy'>,
  titles: readonly string[] = [],
): string[] {
  const level = models.some(({ coarse }) => coarse) ? 'cell' : (options.level ?? 'cord');
  const painter = new PiecePainter(options.id, level);
  const shown = models.map((model) => facing(model, options.view));
  // Shapes are told once, in the first picture, so all of them have to be known before it is put together.
  const painted = shown.map((model) => painter.parts(model));
  const defs = painter.defs();
  const isRow = ({ key }: PiecePart): boolean => /^(out|row|free)-/.test(key);
  let shared = 0;
  return painted.map((parts, order) => {
    const before = painted[order - 1]?.filter(isRow) ?? [];
    const after = painted[order + 1]?.filter(isRow) ?? [];
    const rows = parts.filter(isRow);
    const alike = (other: readonly PiecePart[]): number => {
      const differs = rows.findIndex((part, i) => part.svg !== other[i]?.svg);
      return differs < 0 ? rows.length : differs;
    };
    const taken = alike(before) >= shared ? shared : 0;
    const next = alike(after);
    const given = next >= taken ? next : 0;
    const name = (picture: number): string => `${options.id}-rows${picture}`;
    const body: string[] = [];
    for (const [i, part] of rows.entries()) {
      if (i === 0 && given > 0) body.push(`<g id="${name(order)}">`);
      if (i === 0 && taken > 0) body.push(`<use href="#${name(order - 1)}"/>`);
      if (i >= taken) body.push(part.svg);
      if (i === given - 1) body.push('</g>');
    }
    shared = given;
    const first = parts.findIndex(isRow);
    const others = (from: number, to: number): string =>
      parts
        .slice(from, to)
        .filter((part) => !isRow(part) && !part.key.startsWith('shape') && (order === 0 || part.key !== 'style'))
        .map(({ svg }) => svg)
        .join('');
    const title = titles[order];
    const head = opening((shown[order] as PieceModel).frame, level, {
      id: `${options.id}-${order + 1}`,
      ...(title ? { title } : {}),
    });
    return first < 0
      ? `${head}${order === 0 ? defs : ''}${others(0, parts.length)}</svg>`
      : `${head}${order === 0 ? defs : ''}${others(0, first)}${body.join('')}${others(first, parts.length)}</svg>`;
  });
}

/** Shapes that were painted before, by their leading cord, their name and their fineness: the same ones come again and again. */
const painted = new WeakMap<Path, Map<string, string>>();

const halved = ([x, y, z]: Path[number]): Path[number] => [Math.round(2 * x) / 2, Math.round(2 * y) / 2, z];

/** A line of a string, and what it is for. */
interface DrawnLine {
  readonly string: PieceString;
  readonly what: Course;
  readonly path: Path;
}

const deepest = (path: Path): number => path.reduce((low, [, , z]) => Math.min(low, z), 0);

/** At the end of a shape's name: what of it lies behind the base strings, and what before them. */
const UNDER = ' under';
const OVER = ' over';
const turns = ({ shape }: Place): boolean => /^(forward-backward|backward-forward) /.test(shape);

/**
 * The long lines of a large piece are drawn with so few points that they lie this far off at most, in d: finer from the
 * back, where floats cross. Those of a piece of no more knots than `MANY` are drawn as they are.
 */
const COARSE = { front: 0.23, back: 0.12 } as const;
const MANY = 300;

/** The tied knots of each row. */
function tiedIn(model: PieceModel): Map<number, Place[]> {
  const byRow = new Map<number, Place[]>();
  for (const place of model.places) {
    if (!place.knot) continue;
    const row = byRow.get(place.knot.row);
    if (row) row.push(place);
    else byRow.set(place.knot.row, [place]);
  }
  return byRow;
}

/** Depth from which a string on its way from knot to knot hangs free of both, in d. */
const FREE = 0.85;

/** Uses of one shape side by side are doubled up to this many: fewer names to write. */
const DOUBLED = [16, 8, 4, 2];

/** A part of a picture that can be drawn afresh by itself. Parts stand in the order in which they are painted. */
export interface PiecePart {
  /** The same for the same part of the same piece at another moment. */
  readonly key: string;
  readonly svg: string;
}

/**
 * Paints one piece at any of its moments, from one side and at one level. Names of shapes stay the same from one moment
 * to the next, so that whoever keeps the parts of before needs to put in only those that differ.
 */
export class PiecePainter {
  private model!: PieceModel;
  /** The tied knots of the model, by their rows. */
  private tied: ReadonlyMap<number, readonly Place[]> = new Map();
  private readonly id: string;
  private readonly level: Level;
  private readonly fineness: Fineness;
  /** Short names of shapes, in the order in which they are first used. */
  private readonly names = new Map<string, string>();
  /** Shapes as they are drawn, by their names. */
  private readonly drawn = new Map<string, string>();
  private readonly groups = new Map<string, string>();

  constructor(id: string, level: Level) {
    this.id = id;
    this.level = level;
    this.fineness = level === 'cord' ? 'cord' : 'stitch';
  }

  /** The parts of the piece as the model has it, seen from the model's side. */
  parts(model: PieceModel): PiecePart[] {
    this.model = model;
    this.tied = tiedIn(model);
    const rows = this.level === 'cell' ? [{ key: 'cells', svg: cellLevel(model) }] : this.knots();
    const under = this.level === 'cell' ? [] : this.windings();
    const [behind, passing] = this.level === 'cell' ? [[], []] : [this.behind(), this.passing()];
    const layers =
      model.view === 'front'
        ? [...behind, ...under, ...passing, ...this.hung(), ...rows]
        : [...under, ...passing, ...this.hung(), ...rows, ...behind];
    const body = [{ key: 'ring', svg: this.ring() }, ...layers, ...this.finishing()];
    for (const [shape, name] of this.names)
      if (!this.drawn.has(name)) {
        const own = model.shapes[shape.replace(/ (under|over)$/, '')];
        this.drawn.set(name, own ? `<g id="${this.id}-${name}">${this.shape(shape, own)}</g>` : '');
      }
    return [
      { key: 'style', svg: `<style>${PEN_STYLE}</style>` },
      ...[...this.drawn, ...this.groups].map(([name, svg]) => ({ key: `shape-${name}`, svg: `<defs>${svg}</defs>` })),
      ...body,
    ].filter(({ svg }) => svg !== '');
  }

  /** All shapes met so far, and rows of two, four, eight and sixteen of them. */
  defs(): string {
    return `<defs>${[...this.drawn.values(), ...this.groups.values()].join('')}</defs>`;
  }

  private get coarse(): number {
    return this.model.knots > MANY ? COARSE[this.model.view] : 0;
  }

  private get pulled(): boolean {
    return this.model.laid.pitch > ROW;
  }

  private ring(): string {
    if (this.model.laid.fromRow > 1) return '';
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
    const heading = heads.map(({ shape, x, y }) =>
      headStretches(shape, this.model.shapes[shape]?.leads[0] ?? [], 0.45).behind.map((path) => ({
        path: path.map((point) => [point[0] + x, point[1] + y, point[2]] as const),
      })),
    );
    const { low, high } = inRuns(heading.flat());
    const behind = [low, high].map((runs) => runs.map(({ path }) => path));
    return [
      split,
      sideBySide(
        cut.flatMap((one) => one.behind).map((path) => thinned(path)),
        PAINTS.base,
      ),
      behind
        .map((paths) =>
          sideBySide(
            paths.map((path) => thinned(path)),
            PAINTS.base,
          ),
        )
        .join(''),
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

  private lines(what: readonly string[], role?: PieceString['role']): DrawnLine[] {
    return this.model.strings
      .filter((string) => !role || string.role === role)
      .flatMap((string) =>
        string.parts.flatMap((part: Part) =>
          part.is === 'line' && what.includes(part.what) ? [{ string, what: part.what, path: part.path }] : [],
        ),
      );
  }

  private paintOf({ role, colour }: Pick<PieceString, 'role' | 'colour'>): string {
    if (role === 'base') return PAINTS.base;
    const own = colour === null ? undefined : this.model.chart?.palette[colour]?.colour;
    return own && own !== 'none' ? own : PAINTS.lead;
  }

  /** Floats and tails at the back, and ends that rest there: one path for each string, the deepest first. */
  private behind(): PiecePart[] {
    const back = this.model.view === 'back';
    const byString = new Map<PieceString, Path[]>();
    for (const { string, path } of [...this.lines(['float', 'tail']), ...this.workingEnds(back)])
      byString.set(string, [...(byString.get(string) ?? []), path]);
    const depth = (paths: readonly Path[]): number =>
      back ? Math.max(...paths.map(nearest)) : Math.min(...paths.map(deepest));
    const sorted = [...byString].sort(([, a], [, b]) => depth(a) - depth(b));
    return sorted.map(([string, paths]) => {
      const key = `behind-${string.id}`;
      const paint = this.paintOf(string);
      if (this.pulled) return { key, svg: paths.map((path) => stretch(path, paint, this.fineness)).join('') };
      // From the front they only show through gaps, if at all: from end to end is enough, to half a cord.
      const d = paths
        .map((path) =>
          back
            ? this.level === 'cord'
              ? curved(thinned(path, this.coarse))
              : straight(thinned(path))
            : straight([path[0], path.at(-1)].flatMap((end) => (end ? [halved(end)] : []))),
        )
        .join('');
      const body = `<path d="${d}" class="pc-b" color="${paint}"/>`;
      return { key, svg: back ? `<path d="${d}" class="pc-e"/>${body}` : body };
    });
  }

  /** Ends of leading strings that hang on: those that are nearer to the viewer than the knots, or the others. */
  private workingEnds(near: boolean): DrawnLine[] {
    if (this.model.ending !== 'hanging') return [];
    const ends = this.lines(['end'], 'leading').filter(({ path }) => near === nearest(path) > 0.5);
    // Where rows lie close, what hangs behind a piece does not show.
    return near || this.pulled ? ends : [];
  }

  /** Base strings from ring to finish, the deepest first. */
  private hung(): PiecePart[] {
    const lines = this.lines(['hang']).sort((a, b) => (a.path[0]?.[2] ?? 0) - (b.path[0]?.[2] ?? 0));
    return lines.map(({ string, path }) => ({
      key: `hang-${string.id}`,
      svg: sideBySide([path], PAINTS.base) + sideBySide(this.movedOf(string, path), PAINTS.moved),
    }));
  }

  /** The stretches of a base string in which it is told from the others. */
  private movedOf({ id }: PieceString, path: Path): Path[] {
    const { moved, laid } = this.model;
    return moved
      .filter(({ column }) => id === `base-${column}`)
      .map(({ row, on }) =>
        stretchDown(
          path,
          row > laid.fromRow ? topOf(laid, row - 1) + ROW * 0.8 : Number.NEGATIVE_INFINITY,
          on ? Number.POSITIVE_INFINITY : topOf(laid, row) + ROW,
        ),
      )
      .filter(({ length }) => length > 1);
  }

  /** Leading strings on their way behind the bases, and laid behind them at last. */
  private passing(): PiecePart[] {
    const { laid, view, ending } = this.model;
    const ends = view === 'back' ? this.workingEnds(false) : ending === 'hanging' ? [] : this.lines(['end'], 'leading');
    return [...(this.pulled ? this.lines(['link']) : []), ...ends].flatMap(({ string, path }) =>
      stretchesOf(path, 0.4).behind.map((part) => ({
        key: `passing-${string.id}-${rowAt(laid, part[0]?.[1] ?? 0)}`,
        svg: this.pulled
          ? stretch(part, this.paintOf(string), this.fineness)
          : stretch(thinned(part, this.coarse), this.paintOf(string), 'stitch'),
      })),
    );
  }

  private nameOf(shape: string): string {
    const known = this.names.get(shape);
    if (known) return known;
    const fresh = `${this.names.size.toString(36)}${shape.endsWith(UNDER) ? 'u' : ''}`;
    this.names.set(shape, fresh);
    return fresh;
  }

  private use(name: string, x: number, y: number, rest = ''): string {
    return `<use href="#${this.id}-${name}"${x === 0 ? '' : ` x="${x}"`}${y === 0 ? '' : ` y="${y}"`}${rest}/>`;
  }

  /** All knots of the rows, row by row, in tying order from the front; links before the knots of the row they lead to. */
  private knots(): PiecePart[] {
    const { model } = this;
    const back = model.view === 'back';
    const byRow = this.tied;
    // On its way a string comes out from under one knot, hangs free of all, and goes in under the next.
    const [low, free] = [new Map<number, string>(), new Map<number, string>()];
    const note = (where: Map<number, string>, string: PieceString, path: Path, y: number | undefined): void => {
      const row = rowAt(model.laid, y ?? 0);
      const svg = this.pulled
        ? stretch(path, this.paintOf(string), this.fineness)
        : stretch(thinned(path, this.coarse), this.paintOf(string), 'stitch');
      where.set(row, (where.get(row) ?? '') + svg);
    };
    for (const { string, path } of this.lines(['link'])) {
      const [from, to] = [path[0]?.[1], path.at(-1)?.[1]];
      // Where rows lie close it goes from one to the next at once; carried behind the strings it does not show.
      const close = deepest(path) < -1 && !back ? [] : [path];
      for (const part of this.pulled ? stretchesOf(path, 0.25).before : close) {
        const { behind, before } = stretchesOf(part, 0.25, FREE);
        for (const one of behind) note(low, string, one, one[0]?.[1] === part[0]?.[1] ? from : to);
        for (const one of before) note(free, string, one, to);
      }
    }
    const ends = back ? [] : this.workingEnds(true).map((end) => ({ ...end, ...stretchesOf(end.path, 0.25, FREE) }));
    for (const { string, behind, path } of ends) for (const one of behind) note(low, string, one, path[0]?.[1]);
    const rows = [...new Set([...byRow.keys(), ...low.keys(), ...free.keys()])].sort((a, b) => a - b);
    return [
      // The way out of a row is there only with the next one; were it of one part with its knots, they would be drawn anew.
      ...rows.flatMap((row) => [
        { key: `out-${row}`, svg: low.get(row) ?? '' },
        { key: `row-${row}`, svg: this.rowOf(row, byRow.get(row) ?? [], '') },
        { key: `free-${row}`, svg: free.get(row) ?? '' },
      ]),
      ...ends.map(({ string, before }) => ({
        key: `end-${string.id}`,
        svg: before.map((path) => stretch(path, this.paintOf(string), this.fineness)).join(''),
      })),
    ];
  }

  /**
   * Whether a knot is painted in two parts: what lies behind its bases before these, and all else after them. In a piece
   * whose rows lie close only turning knots are, which reach into others, and their neighbours if it is seen from the
   * back; the rest are whole, since twice as many would be too much to load.
   */
  private parted(place: Place, row: readonly Place[]): boolean {
    const order = row.indexOf(place);
    const near = this.model.view === 'back' ? [order - 1, order, order + 1] : [order];
    return this.pulled || near.some((i) => row[i] && turns(row[i]));
  }

  /** What of the knots lies behind the base strings, row by row. */
  private windings(): PiecePart[] {
    return [
      ...[...this.tied].map(([row, all]) => {
        const parted = all.filter((place) => this.parted(place, all));
        return { key: `under-${row}`, svg: parted.length > 0 ? this.rowOf(row, parted, UNDER) : '' };
      }),
      { key: 'under-finishing', svg: this.finishingKnots(UNDER).join('') },
    ];
  }

  /** The knots of a row, in tying order from the front: what of them lies before the base strings, or what lies behind. */
  private rowOf(row: number, all: readonly Place[], layer: '' | typeof UNDER): string {
    const whole = this.tied.get(row) ?? [];
    const nameOf = (place: Place): string => place.shape + (layer || (this.parted(place, whole) ? OVER : ''));
    const places = this.model.view === 'back' ? [...inOrder(all)].reverse() : inOrder(all);
    const uses: string[][] = [];
    for (let i = 0; i < places.length; ) {
      const place = places[i] as Place;
      let run = 1;
      while (
        i + run < places.length &&
        this.follows(places[i + run - 1] as Place, places[i + run] as Place) &&
        nameOf(places[i + run] as Place) === nameOf(place)
      )
        run += 1;
      const step = run > 1 ? Math.sign((places[i + 1] as Place).x - place.x) : 1;
      const same: string[] = [];
      for (let left = run, at = i; left > 0; ) {
        const many = DOUBLED.find((count) => count <= left) ?? 1;
        same.push(this.use(this.grouped(nameOf(place), many, step), unit((places[at] as Place).x), 0));
        left -= many;
        at += many;
      }
      const paint = this.paintOf({ role: 'leading', colour: place.colour });
      if (uses.at(-1)?.[0] === paint) uses.at(-1)?.push(...same);
      else uses.push([paint, ...same]);
      i += run;
    }
    const inside = uses.map(([paint, ...same]) => `<g color="${paint}">${same.join('')}</g>`).join('');
    return `<g transform="translate(0 ${unit(topOf(this.model.laid, row))})">${inside}</g>`;
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
    const full = `${name}${step < 0 ? 'l' : 'r'}${many}`;
    if (!this.groups.has(full)) {
      const half = this.grouped(shape, many / 2, step);
      const two = this.use(half, 0, 0) + this.use(half, step * (many / 2) * unit(COLUMN), 0);
      this.groups.set(full, `<g id="${this.id}-${full}">${two}</g>`);
    }
    return full;
  }

  private finishing(): PiecePart[] {
    const { model } = this;
    if (model.ending === 'hanging') return [];
    // Strings that are told from the others are so down to their ends.
    const paintOf = ({ id }: PieceString): string =>
      model.moved.some(({ column, on }) => on && id === `base-${column}`) ? PAINTS.moved : PAINTS.base;
    const { low, high } = inRuns(this.lines(['end', 'tassel', 'core', 'way'], 'base'));
    const cords = [...low, ...high].map(({ string, path, what }) => {
      const fineness = what === 'way' ? this.fineness : what === 'tassel' && this.level === 'cord' ? 'lit' : 'stitch';
      return stretch(thinned(path, this.coarse), paintOf(string), fineness);
    });
    // Leading strings are laid behind what they are gathered with.
    const laid = model.view === 'back' ? this.lines(['end'], 'leading') : [];
    const ends = laid.map(({ string, path }) => stretch(thinned(path, this.coarse), this.paintOf(string), 'stitch'));
    return [{ key: 'finishing', svg: [...cords, ...ends, ...this.finishingKnots('')].join('') }];
  }

  /** The knots of the finishing: what of them lies before their cores, or what lies behind. */
  private finishingKnots(layer: '' | typeof UNDER): string[] {
    if (this.model.ending === 'hanging') return [];
    return this.model.places
      .filter(({ shape }) => /^(gathering|square)/.test(shape))
      .map((place) => {
        const [cosine, sine] = place.turn ?? [1, 0];
        const shape = this.nameOf(place.shape + layer);
        const [x, y] = [unit(place.x), unit(place.y)];
        if (!place.turn) return this.use(shape, x, y);
        const turn = [cosine, sine, -sine, cosine].map((part) => part.toFixed(3)).join(' ');
        return this.use(shape, 0, 0, ` transform="matrix(${turn} ${x} ${y})"`);
      });
  }

  private shape(name: string, shape: PieceShape): string {
    const key = `${name} ${this.fineness}`;
    const [lead = []] = shape.leads;
    const known = painted.get(lead)?.get(key);
    if (known !== undefined) return known;
    const svg = this.paintedShape(name, shape);
    painted.set(lead, (painted.get(lead) ?? new Map()).set(key, svg));
    return svg;
  }

  private paintedShape(name: string, shape: PieceShape): string {
    const { leads } = shape;
    if (/^(larks|lone)/.test(name))
      return leads
        .flatMap((lead) =>
          headStretches(name, lead, 0.45).before.map((path) => stretch(path, PAINTS.base, this.fineness)),
        )
        .join('');
    const bare = name.replace(/ (under|over)$/, '');
    const finishes = /^(gathering|square)/.test(bare);
    const own = !finishes ? 'currentColor' : bare.endsWith(TOLD) ? PAINTS.moved : PAINTS.base;
    // What a knot is tied round is painted as it hangs, between what lies behind it and what before.
    if (name.endsWith(UNDER)) return windsBehind(shape, own, this.fineness);
    return (name === bare && !finishes ? wound : windsBefore)(shape, own, this.fineness);
  }
}

/**
 * The knots of a row as they have to be painted from the front. Each lies over the string that it takes over from its
 * neighbour, so they go the way they lean. The upright stroke of a turning knot lies over where its string goes on to the
 * next: a row's first knot comes last if it is one.
 */
function inOrder(row: readonly Place[]): readonly Place[] {
  const [first, ...rest] = row;
  const last = row.at(-1);
  if (!first || !last) return row;
  const ordinary = row.find((place) => !turns(place)) ?? first;
  if (ordinary.shape.startsWith('forward') !== first.x <= last.x) return [...row].reverse();
  return turns(first) ? [...rest, first] : row;
}

/** What of a line that goes down lies between two heights. */
function stretchDown(path: Path, from: number, to: number): Path {
  const part: Path[number][] = [];
  for (const [i, point] of path.entries()) {
    const before = path[i - 1];
    if (before)
      for (const y of [from, to])
        if (before[1] < y && point[1] > y) part.push(between(before, point, (y - before[1]) / (point[1] - before[1])));
    if (point[1] >= from && point[1] <= to) part.push(point);
  }
  return part;
}
