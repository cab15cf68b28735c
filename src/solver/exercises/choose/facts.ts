import { type Facts, factsOf, sumIn } from '../whole-piece.ts';
import type { Question } from './picks.ts';

/** The figures that sentences about a choice speak in: those of the piece and the row, of the edge, and of the range. */
export function chooseFacts(question: Question): Facts {
  const { side, span, capacity, ask } = question;
  const facts = factsOf(question);
  const bundle = Number(facts[side]);
  const onBarAt = (places: number): number => sumIn({ ...question, capacity: places }).onBar;
  const range = ask === 'safe-sheet';
  return {
    ...facts,
    ask,
    side,
    span,
    bundle,
    outside: bundle - 1,
    low: range ? capacity - span : 0,
    high: range ? capacity + span : 0,
    onBarLow: range ? onBarAt(capacity - span) : 0,
    onBarLikely: range ? onBarAt(capacity) : 0,
    onBarHigh: range ? onBarAt(capacity + span) : 0,
    folds: Number(facts['foldsEachSide']),
    core: question.width - 2,
  };
}
