import type {
  ExerciseProblem,
  FieldOf,
  FieldResult,
  Judged,
  KindName,
  ProblemOf,
  Verdict,
} from '../../solver/exercises/contract.ts';
import type { MarkResult } from '../../solver/exercises/mark/problem.ts';
import type { Reason } from '../../solver/exercises/read.ts';
import { capital, count, figure, noun, type Value } from '../numbers.ts';
import { fieldLabel } from './labels.ts';

const REASONS: Readonly<Record<Reason, (entered: string) => string>> = {
  'not-a-whole-number': (entered) =>
    `${capital(entered)} can’t be read as a whole number. Enter one in digits, like 14.`,
  'too-long': () => 'This number is too long to be read. Enter a shorter one.',
  'not-even-or-odd': () => 'Choose even or odd.',
  'not-cells': () => 'No cells of the chart can be read here. Mark them on the chart.',
  'not-on-the-list': () => 'This is not what the list has. Begin again with what stands there.',
  'outside-the-chart': () => 'A marked cell lies outside the chart. Mark only cells of the chart.',
};

const shown = (entered: Value): string =>
  entered === undefined || entered === null || entered === '' ? 'this' : `“${figure(entered).trim().slice(0, 24)}”`;

/** What was marked rightly, what is still to be marked, what should not be: how many cells, never which. */
function markedWords({ right, missing, extra }: MarkResult): string {
  const parts = [
    missing.length > 0 && `${count(missing.length, 'cell')} ${noun(missing.length, 'is', 'are')} still to be marked`,
    extra.length > 0 && `${count(extra.length, 'cell')} should not be marked`,
    right.length > 0 && `${count(right.length, 'cell')} ${noun(right.length, 'is', 'are')} right`,
  ].filter((part) => part !== false);
  return `In this row ${parts.join(', and ')}.`;
}

/** Exercises in which something is counted or marked; the others say beside each part why it is not right. */
type FigureProblem = ProblemOf<'sum' | 'number' | 'mark'>;

interface Judgement {
  readonly problem: FigureProblem;
  readonly field: FieldOf<'sum' | 'number' | 'mark'>;
  readonly result: FieldResult | MarkResult;
  readonly entered: Value;
}

const isFirstField = ({ problem, field }: Judgement): boolean => problem.kind !== 'sum' || problem.fields[0] === field;

const VERDICTS: Readonly<Record<Verdict, (judgement: Judgement) => string>> = {
  right: () => 'This is right.',
  follows: () => 'This follows from what you entered above. It will change when the figure above is put right.',
  wrong: (judgement) => {
    const { result, entered } = judgement;
    if ('extra' in result) return markedWords(result);
    return `${capital(shown(entered))} does not follow from the figures ${isFirstField(judgement) ? 'in the question' : 'above it'}.`;
  },
  missing: ({ problem }) => (problem.kind === 'mark' ? 'Nothing is marked yet.' : 'Nothing is entered here yet.'),
  unreadable: ({ result, entered }) => REASONS[result.reason ?? 'not-a-whole-number'](shown(entered)),
};

/** What a judge says of one field, in words to stand beside it. */
export const verdictWords = (
  problem: FigureProblem,
  field: FieldOf<'sum' | 'number' | 'mark'>,
  result: FieldResult | MarkResult,
  entered?: Value,
): string => VERDICTS[result.verdict]({ problem, field, result, entered });

/** What a judge says of the whole answer, to be announced: whether it is a try, and where to look first. */
export function outcomeWords(problem: ExerciseProblem, { outcome, first, fields }: Judged<FieldOf<KindName>>): string {
  if (outcome === 'right') return 'That is right.';
  const at = first === null ? '' : `“${fieldLabel(problem, first)}”`;
  if (outcome === 'unreadable') {
    if (problem.kind === 'row')
      return 'The row is not tied to its end yet. Nothing in it is amiss so far. Carry on, then check again.';
    if (problem.kind === 'mark' || at === '') return 'This can’t be checked yet. Nothing is lost, and it is no try.';
    const verdict = first === null ? undefined : (fields as Readonly<Record<string, FieldResult>>)[first]?.verdict;
    return verdict === 'missing'
      ? `${at} is still empty. Fill it in, then check again.`
      : `${at} can’t be read yet. Put it right, then check again.`;
  }
  // Where only one thing is asked for, there is nothing else to look at first.
  if (problem.kind === 'number') return 'This figure does not come out yet.';
  return at === '' ? 'Not everything is right yet.' : `Look at ${at} first: it is the first that does not come out.`;
}
