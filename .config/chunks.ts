/** Modules that a page with any widget loads: Solid, and the small parts that widgets share. */
const SHARED =
  /node_modules\/solid-js|\.config\/islands\/|src\/widgets\/(figures-switch|choice|whole-number|live-part|working-list|reading|problem-words)\.|src\/store\/(reading|shelf|safe-storage|progress\/(notes|page-name|standing|told))\.|src\/solver\/(problem|ranges)\.|src\/words\/(choices|numbers)\./;

/** What a page with exercises loads to show them, whatever their kinds. */
const EXERCISES =
  /src\/widgets\/(storage-say|exercise\/(frame|question|late-judge|later|number-entry|drawn|sum|number|mark|row|spot))\.|src\/store\/(answers|concern)\.|src\/words\/(thread-names|exercises\/(labels|act-names))\.|src\/solver\/exercises\/row\/problem\./;

/** What checks a figure, a sum or marked cells; it comes with the first check. */
const JUDGING =
  /src\/solver\/exercises\/(conclude|family|figures|outline|read|(sum|number|mark)\/(judge|solve|problem|cut|measures|read-cells))\.|src\/solver\/(row-bundles|thread\/row-floats)\./;

/** What finds the help that is asked for; one file of it is smaller than five. */
const HELP =
  /src\/widgets\/exercise\/(slips|hints|working|help-board)\.|src\/solver\/missteps\/(parting|explain)\.|src\/solver\/exercises\/pointing\.|src\/words\/(slips\/telling|exercises\/hints\/hint)\./;

/** How a step is put into words: for the help, and for the model answer of what was explained. */
const SAYING = /src\/words\/exercises\/steps\/saying\./;

/** How a row is tied, and what can be amiss on a sheet. */
const TYING = /src\/solver\/exercises\/(row\/(tie|habits|solve)|spot\/(in-\w+|solve|places|problem))\./;

/** What makes problems with other figures than the page was built with. */
const SHEETS = /src\/solver\/exercises\/(level|draw-[\w-]+|\w+\/(make|fade|draw-thread))\./;

/** What chance decides, for exercises and for the crossings of a knot: the one needs nothing of the other. */
const CHANCE = /src\/solver\/exercises\/seed\.|node_modules\/pure-rand/;

/** What marks the kinds without a figure, and what speaks of their piece: none of it wants the makers. */
const PIECE = /src\/solver\/(exercises\/whole-piece|row-start)\./;
const MARKING = ['order', 'choose', 'say'].map((kind) => ({
  name: `marking-${kind}`,
  test: new RegExp(
    `src/solver/exercises/${kind}/(problem|solve|judge|picks|facts|sequence|groups|missteps|solution|clues)\\.`,
  ),
  priority: 4,
}));

/** What all groups of choices share of their words. */
const CHOICE_PARTS =
  /src\/widgets\/exercise\/choice-parts\.|src\/words\/(exercises\/(choices\/saying|steps\/chosen)|slips\/tell-choices)\./;

/** How the browser's script is put into files: by what is loaded together. */
export const chunkGroups = [
  { name: 'shared', test: SHARED, priority: 7 },
  { name: 'exercises', test: EXERCISES, priority: 6 },
  { name: 'judging', test: JUDGING, priority: 6 },
  { name: 'saying', test: SAYING, priority: 6 },
  { name: 'help', test: HELP, priority: 5 },
  { name: 'piece-facts', test: PIECE, priority: 5 },
  ...MARKING,
  { name: 'choice-parts', test: CHOICE_PARTS, priority: 4 },
  { name: 'tying', test: TYING, priority: 3 },
  { name: 'chance', test: CHANCE, priority: 2 },
  { name: 'sheets', test: SHEETS, priority: 2 },
];
