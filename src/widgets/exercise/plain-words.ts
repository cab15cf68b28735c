import type { FieldOf, JudgedOf, KindName, ProblemOf } from '../../solver/exercises/contract.ts';
import type { RowResult } from '../../solver/exercises/row/problem.ts';
import { noSlipWords } from '../../words/slips/telling.ts';

/** Where no slip explains an answer: what is the matter with a row or a pick can still be said. */
export async function plainWords<K extends KindName>(
  problem: ProblemOf<K>,
  first: FieldOf<K> | null,
  { fields }: JudgedOf<K>,
): Promise<string> {
  const plain = noSlipWords(problem, first);
  if (problem.kind === 'spot') return (await import('../../words/exercises/spot-picks.ts')).picksWords(problem, fields);
  if (problem.kind !== 'row') return plain;
  const { rowFaultWords } = await import('../../words/exercises/row-faults.ts');
  const [amiss] = (Object.values(fields) as RowResult[]).filter(({ fault }) => fault !== undefined);
  return amiss ? `${rowFaultWords(problem, amiss)} ${plain}` : plain;
}
