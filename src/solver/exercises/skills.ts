import type { KindName, ProblemOf } from './contract.ts';

/** What can be practised, in the order of the work. Ids are for ever: kept progress goes by them. */
export const SKILLS = [
  'reading-chart',
  'measuring',
  'fitting-sum',
  'odd-numbers',
  'outline',
  'cutting',
  'mounting',
  'first-row',
  'row-knots',
  'widening',
  'colours',
  'closing',
  'finishing',
  'thread',
  'faults',
] as const;
export type Skill = (typeof SKILLS)[number];

export const isSkill = (value: unknown): value is Skill => SKILLS.includes(value as Skill);

/** A row of the half at the ring is reached by widening, one of the other half leads to the closing. */
const ofRow = (row: number, height: number): Skill =>
  row === 1 ? 'first-row' : 2 * row <= height ? 'widening' : 'closing';

const ofFitting = ({ width, capacity }: { readonly width: number; readonly capacity: number }): Skill =>
  width % 2 === 1 || capacity % 2 === 1 ? 'odd-numbers' : 'fitting-sum';

function ofNumber(problem: ProblemOf<'number'>): Skill {
  switch (problem.ask) {
    case 'spare':
    case 'each-side':
    case 'on-bar':
      return ofFitting(problem);
    case 'knots-in-row':
    case 'bundle-in-row':
      return ofRow(problem.row, problem.height);
    case 'corner-cells-in-row':
    case 'corner-cells':
    case 'plain-rows-above':
      return 'outline';
    case 'column-of-knot':
    case 'knots-of-colour':
      return 'reading-chart';
    case 'capacity-low':
    case 'capacity-by-swatch':
      return 'measuring';
    case 'longest-float':
      return 'colours';
    case 'full-width-row':
      return 'widening';
    case 'first-closing-row':
      return 'closing';
    case 'folds-to-cut':
    case 'cut-length':
      return 'cutting';
    case 'base-string-in-all':
    case 'folds-for-class':
    case 'making-minutes':
      return 'thread';
  }
}

function ofMark({ target, from, height }: ProblemOf<'mark'>): Skill {
  switch (target) {
    case 'corner-cells':
    case 'picture-cut':
      return 'outline';
    case 'first-knot':
    case 'colour-in-row':
      return 'reading-chart';
    case 'bundle-knot':
      return ofRow(from, height);
    case 'first-closing-row':
      return 'closing';
  }
}

function ofTiedRow({ row, change }: ProblemOf<'row'>): Skill {
  if (change === 'none') return row === 1 ? 'first-row' : 'row-knots';
  return change === 'let-out' ? 'widening' : 'closing';
}

function ofOrder(problem: ProblemOf<'order'>): Skill | null {
  switch (problem.of) {
    case 'mounting':
      return 'mounting';
    case 'first-row':
      return 'first-row';
    case 'let-out':
    case 'row':
      return 'widening';
    case 'take-in':
      return 'closing';
    case 'sum':
      return ofFitting(problem);
    case 'gathering':
    case 'square-knot':
      return 'finishing';
    case 'new-string':
      return 'colours';
    case 'evening':
      return null;
  }
}

function ofChoice(problem: ProblemOf<'choose'>): Skill {
  switch (problem.ask) {
    case 'knot-direction':
    case 'edge-knot':
    case 'turning-knot':
    case 'leading-string':
      return 'row-knots';
    case 'first-move':
      return ofRow(problem.row, problem.height);
    case 'let-out':
      return 'widening';
    case 'corner-cells':
      return 'outline';
    case 'closing-end':
      return 'closing';
    case 'bundle-knot':
      return 'first-row';
    case 'borrow':
    case 'odd-half':
      return ofFitting(problem);
    case 'fold-or-string':
    case 'rows-length':
      return 'cutting';
    case 'safe-sheet':
      return 'measuring';
    case 'float':
    case 'colour-change':
      return 'colours';
    case 'trim':
    case 'spiral':
      return 'finishing';
  }
}

function ofSaying(problem: ProblemOf<'say'>): Skill {
  switch (problem.topic) {
    case 'two-borrowed':
    case 'sides-even':
      return ofFitting(problem);
    case 'bundle-one-knot':
      return 'first-row';
    case 'leading-inside':
      return 'row-knots';
    case 'closing-from-the-end':
      return 'closing';
    case 'rows-short':
      return 'reading-chart';
    case 'trim-last':
      return 'finishing';
  }
}

/** The skill that a problem of each kind asks for; null where the lesson it stands in says so. */
const OF_KIND: { readonly [K in KindName]: (problem: ProblemOf<K>) => Skill | null } = {
  sum: ofFitting,
  number: ofNumber,
  mark: ofMark,
  row: ofTiedRow,
  // A sum is a sum, whoever wrote it; in a row and in a plan the fault is what one learns to see.
  spot: (problem) => (problem.in === 'sum' ? ofFitting(problem) : 'faults'),
  order: ofOrder,
  choose: ofChoice,
  say: ofSaying,
};

/**
 * The skills that a problem practises, the foremost first: the one its figures ask for, or those of its lesson.
 *
 * @example skillsOf('sum', { width: 21, capacity: 15 }, []) // ['odd-numbers']
 */
export function skillsOf<K extends KindName>(
  kind: K,
  problem: ProblemOf<K>,
  ofLesson: readonly Skill[],
): readonly Skill[] {
  const own = OF_KIND[kind](problem);
  return own === null ? ofLesson.slice(0, 1) : [own];
}
