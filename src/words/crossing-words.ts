/** Words for the question which string is over at a crossing: where the crossing is, and what an answer comes to. */
import { capital, ordinal } from './numbers.ts';
import { cordName, oneOfBundle, type ToldFigure } from './strand-words.ts';

/** Where along a string the crossing is. */
export interface PlaceAlong {
  readonly strand: string;
  readonly along: 'told' | 'hanging' | 'lying';
  readonly pass: number;
  readonly of: number;
  readonly from?: 'top' | 'bottom' | 'left' | 'right' | 'inside';
  readonly end?: 'upper' | 'lower' | 'left' | 'right' | null;
}

export interface AskedCrossing {
  readonly where: readonly [PlaceAlong, PlaceAlong];
  /** Another pass lies on top of both. */
  readonly covered: boolean;
}

/** What may be named as an answer. */
export type NamedString =
  | { readonly strand: string }
  | { readonly bundle: readonly string[] }
  | { readonly strand: string; readonly part: 'earlier' | 'later' };

export interface CrossingFound {
  readonly outcome: 'right' | 'under' | 'elsewhere';
  readonly over: PlaceAlong;
  readonly under: PlaceAlong;
  /** 1 where the string goes over the other for the first time along it. */
  readonly time: number;
}

const itself = ({ where: [one, other] }: AskedCrossing): boolean => one.strand === other.strand;

/** What is asked about the crossing in the circle. */
export const crossingAsk = (asked: AskedCrossing, figure: ToldFigure): string =>
  itself(asked)
    ? `In the circle ${cordName(asked.where[0].strand, figure)} crosses itself. Which part of it is over?`
    : 'Which string is over in the circle?';

/** Said beside the question where the crossing can't be seen for a pass on top of it; empty where it can. */
export const crossingHidden = ({ covered, where: [one, other] }: AskedCrossing, figure: ToldFigure): string =>
  !covered
    ? ''
    : one.strand === other.strand
      ? 'Another pass lies on top here and hides the place. Follow the string from both sides.'
      : `Another pass lies on top here and hides the place where ${cordName(one.strand, figure)} meets ${cordName(other.strand, figure)}. Follow both from the side.`;

const STARTS: Readonly<Record<string, string>> = {
  top: 'where it comes from above',
  bottom: 'where it comes from below',
  left: 'where it comes from the left',
  right: 'where it comes from the right',
  inside: 'its cut end',
};
const ENDS: Readonly<Record<string, string>> = {
  upper: 'its upper end',
  lower: 'its lower end',
  left: 'its end on the left',
  right: 'its end on the right',
};

function countedFrom({ along, from, end }: PlaceAlong): string {
  if (along === 'hanging') return 'the top';
  if (along === 'lying') return 'the left';
  return (end ? ENDS[end] : STARTS[from ?? 'inside']) ?? '?';
}

/** Where the circle is, along each string that meets in it: enough for someone who hears the figure only. */
export function crossingWhere({ where: [one, other] }: AskedCrossing, figure: ToldFigure): string {
  const name = (place: PlaceAlong): string => cordName(place.strand, figure);
  if (one.strand === other.strand)
    return `Along ${name(one)} the circle marks passes ${one.pass} and ${other.pass} of ${one.of}, counted from ${countedFrom(one)}.`;
  return [one, other]
    .map((place, i) => {
      const pass = `${place.along === 'told' ? 'pass' : 'place'} ${place.pass} of ${place.of}`;
      return i === 0
        ? `Along ${name(place)} the circle marks ${pass}, counted from ${countedFrom(place)}.`
        : `Along ${name(place)} it is ${pass}, counted from ${countedFrom(place)}.`;
    })
    .join(' ');
}

/** A choice as it stands on its button, without a capital. */
export function choiceWords(named: NamedString, figure: ToldFigure): string {
  if ('bundle' in named) return oneOfBundle(figure);
  if ('part' in named) return named.part === 'earlier' ? 'the earlier part' : 'the later part';
  return cordName(named.strand, figure);
}

/** Why this string is over, from the passes along it and their order down the other. */
function why({ over, under, time }: CrossingFound, figure: ToldFigure): string {
  const [upper, lower] = [cordName(over.strand, figure), cordName(under.strand, figure)];
  if (over.strand === under.strand)
    return `Count along ${upper} from ${countedFrom(over)}: pass ${over.pass} lies over pass ${under.pass} of the same string.`;
  const [told, other] = over.along === 'told' ? [over, under] : [under, over];
  const kind = told === over ? `over ${lower}${time > 1 ? `, for the ${ordinal(time)} time` : ''}` : `under ${upper}`;
  const along = `Count along ${cordName(told.strand, figure)} from ${countedFrom(told)}: pass ${told.pass} of ${told.of} goes ${kind}.`;
  if (other.along === 'told') return along;
  return `${along} Of the ${other.of === 1 ? 'one place' : `${other.of} places`} along ${cordName(other.strand, figure)} it is the ${ordinal(other.pass)} from ${countedFrom(other)}.`;
}

/** What the answer comes to, and why. Where another string was named, the answer stays open. */
export function crossingVerdict(
  found: CrossingFound,
  named: NamedString,
  asked: AskedCrossing,
  figure: ToldFigure,
): string {
  const said = choiceWords(named, figure);
  if (found.outcome === 'right') return `Right: ${said} is over here. ${why(found, figure)}`;
  if (found.outcome === 'under')
    return `${capital(said)} is in the circle, but it lies under: over and under have changed places. ${why(found, figure)}`;
  const [one, other] = asked.where.map(({ strand }) => cordName(strand, figure));
  return `${capital(said)} is not at this crossing. In the circle ${one} meets ${other}. Which of them is over?`;
}
