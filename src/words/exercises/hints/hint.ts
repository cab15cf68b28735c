import type { KindName } from '../../../solver/exercises/contract.ts';
import type { HintKeyOf } from '../../../solver/exercises/steps.ts';
import type { Values } from '../../numbers.ts';

/** Where to look (`look-…`), then what to do (`do-…`), for all that one kind of exercise can ask. */
export type Hints<K extends KindName> = Readonly<Record<HintKeyOf<K>, (values: Values) => string>>;

/** The same for some of what is asked. */
export type HintsOn<Ask extends string> = Readonly<Record<`look-${Ask}` | `do-${Ask}`, (values: Values) => string>>;

/** How the first closing row is found, whether it is counted or marked. */
export const COUNT_BACK =
  'Count how many strings have to be taken in on each side, one less than the bundle. Count that many steps back from the last row. The last row is one of those you count.';

/** Before the third hint, a case worked with other figures. */
export const WORKED_CASE = 'Here is one like it, worked with other figures.';

/** The same where something is explained: the case asks for another thing, for its own would be the answer. */
export const ANOTHER_QUESTION = 'Here is another one.';
