/**
 * A reader who hears a page and sees none of it. Nothing here knows a problem or its solution: it takes sentences and
 * names of controls, reads figures out of them, and knows the craft as a maker does.
 */

const figureIn = (text: string, pattern: RegExp): number | null => {
  const found = pattern.exec(text)?.[1];
  return found === undefined ? null : Number(found);
};

const heard = (text: string, pattern: RegExp): number => {
  const figure = figureIn(text, pattern);
  if (figure === null) throw new Error(`${pattern} is not said in: ${text}`);
  return figure;
};

const OTHER = { forward: 'backward', backward: 'forward' } as const;

interface HeardRow {
  readonly columns: number;
  readonly ordinary: 'forward' | 'backward';
  /** Strings at the edge where the row begins, and where it ends, before its first move. */
  readonly edges: readonly [start: number, end: number];
  readonly change: 'none' | 'out' | 'in';
}

/** How a row lies before it is tied, from the sentences of its question. */
function hearRow(said: string): HeardRow {
  const rightward = /goes from left to right/.test(said);
  const each = /Both edges are single strings/.test(said) ? 1 : figureIn(said, /Each side bundle holds (\d+)/);
  const left = each ?? heard(said, /left edge holds (\d+)/);
  const right = each ?? heard(said, /right edge (\d+)/);
  return {
    columns: heard(said, /has (\d+) columns/),
    ordinary: rightward ? 'forward' : 'backward',
    edges: rightward ? [left, right] : [right, left],
    change: /lets one string out/.test(said) ? 'out' : /takes one string in/.test(said) ? 'in' : 'none',
  };
}

/** Strings at an edge once it has let one out or taken one in. */
const edgeAfter = (before: number, change: HeardRow['change']): number =>
  change === 'out' ? Math.max(1, before - 1) : change === 'in' ? before + 1 : before;

/** The turning knots leave the leading string on the side where they took it up: outside in, and back. */
const turningAt = ({ ordinary }: HeardRow, edge: 'start' | 'end'): string => {
  const first = edge === 'start' ? OTHER[ordinary] : ordinary;
  return `${first}-${OTHER[first]}`;
};

/** A row from its question: each move and knot, by the name that it has among what can be chosen. */
export function rowByEar(said: string): string[] {
  const row = hearRow(said);
  const { columns, ordinary, change } = row;
  const [start, end] = row.edges;
  const [first, last] = [edgeAfter(start, change), edgeAfter(end, change)];
  const knot = `${ordinary} knot`;
  const moves = {
    none: [],
    out: start > 1 ? ['let one string out'] : [],
    in: [start > 1 ? 'take one string in' : 'carry the leading string behind'],
  }[change];
  // The leading string is inside where a bundle was, and where it was carried: there the edge turns it.
  const turns = start > 1 || first > 1;
  const freed = (before: number): string[] => (change === 'out' && before > 1 ? [knot] : []);
  const between = columns - Math.max(start, first) - Math.max(end, last);
  return [
    ...moves,
    turns ? `${turningAt(row, 'start')} knot` : knot,
    ...freed(start),
    ...Array.from({ length: between }, () => knot),
    ...(change === 'out' && end > 1 ? ['let one string out'] : change === 'in' ? ['take one string in'] : []),
    ...freed(end),
    last > 1 ? `${turningAt(row, 'end')} knot` : knot,
  ];
}

/**
 * The one fault of a row that somebody tied.
 *
 * @param said the question
 * @param places what is told of each place, one by one
 * @returns the place by its words, and a sign by which the fault is known among those that can be chosen
 */
export function faultByEar(said: string, places: readonly string[]): { place: string; fault: RegExp } | null {
  const row = hearRow(said);
  for (const place of places) {
    const edge = /begins/.test(place) ? 'start' : /ends/.test(place) ? 'end' : null;
    if (edge) {
      const before = row.edges[edge === 'start' ? 0 : 1];
      const strings = /a single string, with/.test(place) ? 1 : heard(place, /a bundle of (\d+)/);
      if (/\d+ strings are let out/.test(place)) return { place, fault: /two strings of one side/i };
      if (/outer side/.test(place)) return { place, fault: /outside its bundle/ };
      const turns = strings > 1 || (edge === 'start' && before > 1);
      const turning = turningAt(row, edge);
      if (turns && !place.includes(`with a ${turning} knot`))
        return { place, fault: / (forward|backward)-/.test(place) ? /of the other side/ : /ordinary knot/i };
    } else if (/leading string rests/.test(place)) {
      const bundle = edgeAfter(row.edges[1], row.change) > 1;
      if (bundle === /outside/.test(place)) return { place, fault: /leading string rests/ };
    } else if (!place.endsWith(`a ${row.ordinary} knot.`)) return { place, fault: /leans against/ };
  }
  return null;
}

/** Which cells the question wants marked, by the names of the cells: "row 3, column 1, kelp". */
export function cellsByEar(said: string, cells: readonly string[]): string[] {
  const all = cells.map((name) => {
    const [row = '', column = '', colour = ''] = name.split(', ');
    return { name, row: heard(row, /(\d+)/), column: heard(column, /(\d+)/), colour };
  });
  const string = /in which the (.+) string ties/.exec(said)?.[1];
  if (string !== undefined) {
    const row = heard(said, /cell of row (\d+)/);
    return all.filter((cell) => cell.row === row && cell.colour === string).map(({ name }) => name);
  }
  const columns = heard(said, /(\d+) columns wide/);
  const rows = heard(said, /(\d+) rows high/);
  const each = heard(said, /side bundles hold (\d+) on each side/);
  const end = heard(said, /closes to bundles of (\d+) on each side/);
  const [from, to] = [heard(said, /rows (\d+) to \d+/), heard(said, /rows \d+ to (\d+)/)];
  const ground = /ground is (\w+(?: \w+)?),/.exec(said)?.[1];
  const bundleIn = (row: number): number => Math.max(1, each - (row - 1), end - (rows - row));
  return all
    .filter(({ row, column }) => row >= from && row <= to && Math.min(column, columns + 1 - column) < bundleIn(row))
    .filter(({ colour }) => !/coloured cell/.test(said) || colour !== ground)
    .map(({ name }) => name);
}
