/** Modules that a page with any widget loads: Solid, and the small parts that widgets share. */
const SHARED =
  /node_modules\/solid-js|\.config\/islands\/|src\/widgets\/(figures-switch|choice|whole-number|live-part|working-list|reading|problem-words)\.|src\/store\/(reading|shelf)\.|src\/solver\/(problem|ranges)\.|src\/words\/(choices|numbers)\./;

/**
 * What a page with exercises loads to show and check them, whatever their kinds. The views of the other kinds come
 * with the pages that have them, and what marks them with the first check.
 */
const EXERCISES =
  /src\/widgets\/(storage-say|exercise\/(frame|question|number-entry|sum|number|mark|later))\.|src\/store\/(answers|concern|safe-storage)\.|src\/words\/exercises\/labels\.|src\/solver\/exercises\/(conclude|family|figures|outline|read|(sum|number)\/(judge|solve|problem|cut)|mark\/read-cells)\.|src\/solver\/row-bundles\./;

/** What makes problems with other figures than the page was built with. */
const SHEETS = /src\/solver\/exercises\/(level|draw-[\w-]+|\w+\/(make|fade|draw-thread))\./;

/** What chance decides, for exercises and for the crossings of a knot: the one needs nothing of the other. */
const CHANCE = /src\/solver\/exercises\/seed\.|node_modules\/pure-rand/;

/** What marks the kinds whose judge is fetched, and what speaks of their piece: none of it wants the makers. */
const PIECE = /src\/solver\/(exercises\/whole-piece|row-start)\./;
const MARKING = ['mark', 'order', 'choose', 'say'].map((kind) => ({
  name: `marking-${kind}`,
  test: new RegExp(
    `src/solver/exercises/${kind}/(problem|solve|judge|picks|facts|sequence|groups${kind === 'mark' ? '' : '|missteps|solution|clues'})\\.`,
  ),
  priority: 3,
}));

/** What a page fetches with the first help, whatever its kind; in one file it is smaller than in ten. */
const HELP =
  /src\/widgets\/exercise\/(slips|hints|working|help-board)\.|src\/solver\/missteps\/(explain|parting)\.|src\/words\/exercises\/(verdict-words|steps\/saying|hints\/hint|questions\/figures)\.|src\/words\/slips\/telling\.|src\/solver\/exercises\/sum\/clues\./;

/** What all groups of choices share of their words. */
const CHOICE_PARTS =
  /src\/widgets\/exercise\/choice-parts\.|src\/words\/(exercises\/(choices\/saying|steps\/chosen)|slips\/tell-choices)\./;

/** How the browser's script is put into files: by what is loaded together. */
export const chunkGroups = [
  { name: 'shared', test: SHARED, priority: 6 },
  { name: 'exercises', test: EXERCISES, priority: 5 },
  ...MARKING,
  { name: 'piece-facts', test: PIECE, priority: 4 },
  { name: 'help', test: HELP, priority: 3 },
  { name: 'choice-parts', test: CHOICE_PARTS, priority: 3 },
  { name: 'chance', test: CHANCE, priority: 2 },
  { name: 'sheets', test: SHEETS, priority: 2 },
];
