import {
  type KnotName,
  knots,
  mirrorId,
  type Stop,
  type StrandModel,
  tell,
} from '../../../src/figures/strand/index.ts';

/**
 * What each cord of each knot goes over and under, in order along it, written down from the craft: `+` over, `-` under,
 * `own` itself. Only knots that are tied stand here; a mirror image has the same course with left and right exchanged.
 * `base` is the base, or every string of the bundle in one unbroken pass. By then the string is brought through, or drawn
 * up where the two differ.
 */
export type Course = Readonly<Record<string, string>>;

interface Courses {
  /** Brought through for the last time, or where a move has been made. */
  readonly loose: Course;
  /** Drawn up round a single base; left out where it is the same. */
  readonly drawn?: Course;
}

const hitch = '-own +base -base +own';
const forward = `${hitch} ${hitch} +base`;
const ordinary = '-own +neighbour -neighbour +own -own +neighbour -neighbour +own +neighbour';
const squareLeft = '-right-cord +base +right-cord -right-cord';
const squareRight = '+left-cord -left-cord -base +left-cord';

export const COURSES: Partial<Record<KnotName, Courses>> = {
  'forward-half-hitch': { loose: { leading: hitch } },
  forward: { loose: { leading: forward } },
  'forward-backward': {
    loose: { leading: `${hitch} +base -own +base -base +own +base` },
    // Drawn up, the second hitch has come over to the near side, under the upright stroke.
    drawn: { leading: `${hitch} +own -base +base -own` },
  },
  'larks-head': { loose: { fold: '-own +bar -bar +own +own -bar +bar -own' } },
  'lone-string': { loose: { lone: '-own +bar -bar +own -own +bar -bar +own' } },
  'side-fold': { loose: { fold: '+ring -ring' } },
  'gathering-right': { loose: { single: forward } },
  'carry-behind': { loose: { leading: '-base' } },
  'let-out': { loose: { freed: '-leading', leading: '+freed' } },
  'take-in': { loose: { joining: '-leading', leading: '+joining' } },
  float: { loose: { resting: '-base' } },
  'caught-float': {
    loose: {
      leading: '-own +base +resting -base -resting +own -own +base -base +own +base',
      resting: '+leading -base -leading',
    },
    drawn: {
      leading: '-own +resting +base -base -resting +own -own +base -base +own +base',
      resting: '+leading -leading -base',
    },
  },
  join: {
    loose: {
      new: '-own +own -base -old -own +base +old +own -own -base -old +own -own +base -base +own +base',
      old: '+new +new -base -new',
    },
    drawn: {
      new: '-old -own -base +own -own +own +own +base +own +old -old -base -own -own -own +own -own +base -base +own +base',
      old: '-base +new -new +new',
    },
  },
  'row-end-right': {
    loose: { leading: `${ordinary} ${hitch} +base -own +base -base +own +base +neighbour` },
    drawn: { leading: `${ordinary} ${hitch} +own -base +base -own +neighbour` },
  },
  'square-first-half': {
    loose: { 'left-cord': squareLeft, 'right-cord': squareRight },
    drawn: {
      'left-cord': '-right-cord +right-cord +base -right-cord',
      'right-cord': '+left-cord -base -left-cord +left-cord',
    },
  },
  'square-knot': {
    // The second half is the first in the mirror: the same cord lies over the core, and it comes from the other side.
    loose: { 'left-cord': `${squareLeft} ${squareLeft}`, 'right-cord': `${squareRight} ${squareRight}` },
    drawn: {
      'left-cord': '-right-cord +base +right-cord +own -own -right-cord -right-cord +right-cord +base -right-cord',
      'right-cord': '+left-cord -left-cord -base +left-cord +left-cord -base -left-cord +left-cord',
    },
  },
  'square-spiral': {
    loose: {
      'left-cord': '-right-cord +base +right-cord -right-cord +right-cord -right-cord -base +right-cord',
      'right-cord': '+left-cord -left-cord -base +left-cord -left-cord +base +left-cord -left-cord',
    },
    drawn: {
      'left-cord': '-right-cord +right-cord +base -right-cord +right-cord -base -right-cord +right-cord',
      'right-cord': '+left-cord -base -left-cord +left-cord -left-cord +left-cord +base -left-cord',
    },
  },
};

/** The courses that a knot has to have at its last stop but one, or at its last; null for a moment that none is written for. */
export function courseOf(knot: KnotName, stop: Stop, strands: number): Course | null {
  const pattern = knots[knot];
  const original = 'mirrorOf' in pattern ? pattern.mirrorOf : knot;
  const courses = COURSES[original];
  const drawnUp = stop === 'drawn-up';
  if (!courses || (drawnUp && strands > 1)) return null;
  const course = drawnUp ? (courses.drawn ?? courses.loose) : courses.loose;
  return original === knot ? course : mirroredCourse(course);
}

export const mirroredCourse = (course: Course): Course =>
  Object.fromEntries(
    Object.entries(course).map(([id, along]) => [
      mirrorId(id, 1),
      along
        .split(' ')
        .map((word) => `${word.charAt(0)}${mirrorId(word.slice(1), 1)}`)
        .join(' '),
    ]),
  );

/**
 * What the cords of a model go over and under, from its crossings, in the same form. A pass that takes only a part of
 * the strings of a bundle is told as `base×2`, so that it is taken for none that is whole.
 */
export function coursesIn(model: StrandModel): Course {
  const bases = model.strands.filter(({ id }) => /^base(-\d+)?$/.test(id)).length;
  const course: Record<string, string[]> = {};
  for (const { key, values } of tell(model)) {
    const strand = String(values['strand']);
    const along = course[strand] ?? [];
    course[strand] = along;
    if (key === 'starts' || key === 'ends') continue;
    const side = key.startsWith('passes-over') ? '+' : '-';
    const count = values['count'];
    const met = key.endsWith('itself')
      ? 'own'
      : count === undefined
        ? String(values['meets']).replace(/^base-\d+$/, bases === 1 ? 'base' : '$&')
        : count === bases
          ? 'base'
          : `base×${count}`;
    along.push(side + met);
  }
  return Object.fromEntries(Object.entries(course).map(([id, along]) => [id, along.join(' ')]));
}
