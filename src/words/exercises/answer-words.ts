import { chooseFacts } from '../../solver/exercises/choose/facts.ts';
import type { KindName, ProblemOf, SolutionOf } from '../../solver/exercises/contract.ts';
import type { Cell } from '../../solver/exercises/mark/problem.ts';
import { orderFacts } from '../../solver/exercises/order/facts.ts';
import { solution as sayPoints } from '../../solver/exercises/say/solution.ts';
import { capital, figure, list } from '../numbers.ts';
import { ACT_NAMES } from './act-names.ts';
import { choiceWords } from './choose.ts';
import { fieldLabel, fieldUnit } from './labels.ts';
import { orderStepWords } from './order.ts';
import { FAULT_NAMES, placeWords } from './spot-sheet.ts';
import { SAY_CLAUSES } from './steps/say.ts';

/** One line of a key: what was asked, and what is right. */
export interface AnswerLine {
  readonly label: string;
  readonly value: string;
}

type Tell = { readonly [K in KindName]: (problem: ProblemOf<K>, solution: SolutionOf<K>) => readonly AnswerLine[] };

/** Neighbouring columns as they are read from a chart: `1 to 3 and 9`. */
function columns(cells: readonly number[]): string {
  const runs: [from: number, to: number][] = [];
  for (const column of cells.toSorted((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last && last[1] === column - 1) last[1] = column;
    else runs.push([column, column]);
  }
  return list(runs.map(([from, to]) => (from === to ? figure(from) : `${figure(from)} to ${figure(to)}`)));
}

function rows(cells: readonly Cell[]): readonly AnswerLine[] {
  const numbers = [...new Set(cells.map(([row]) => row))].sort((a, b) => a - b);
  return numbers.map((row) => {
    const inRow = cells.filter(([at]) => at === row).map(([, column]) => column);
    return { label: `Row ${row}`, value: `${inRow.length === 1 ? 'column' : 'columns'} ${columns(inRow)}` };
  });
}

const TELL: Tell = {
  sum: (problem, solution) =>
    problem.fields.map((field) => ({ label: fieldLabel(problem, field), value: figure(solution[field]) })),
  number: (problem, solution) => [
    {
      label: fieldLabel(problem, 'figure'),
      value: `${problem.ask === 'cut-length' ? 'about ' : ''}${[figure(solution.figure), fieldUnit(problem)].join(' ').trim()}`,
    },
  ],
  mark: (problem, { cells }) =>
    problem.target === 'first-closing-row'
      ? [{ label: 'Closing begins', value: `in row ${figure(cells[0]?.[0])}` }]
      : rows(cells),
  row: (_, { acts }) => acts.map((act, index) => ({ label: figure(index + 1), value: ACT_NAMES[act] })),
  spot: (problem, { place, fault }) => [
    { label: fieldLabel(problem, 'place'), value: placeWords(problem, place) },
    { label: fieldLabel(problem, 'fault'), value: FAULT_NAMES[fault] },
  ],
  order: (problem, { order }) => [
    {
      label: 'An order that is right',
      value: order
        .map((step, index) => `${index + 1}. ${orderStepWords(problem.of, step, orderFacts(problem))}`)
        .join(' '),
    },
  ],
  choose: (problem, { choice }) => [
    { label: 'The right choice', value: choiceWords(problem.ask, choice, chooseFacts(problem)) },
  ],
  say: (problem) => [
    {
      label: 'What a maker might say',
      value: sayPoints(problem)
        .map((step) => `${capital(SAY_CLAUSES[step.key](step.values))}.`)
        .join(' '),
    },
  ],
};

/** What is right, as it stands on a teacher's key; a line for each figure that was asked. */
export function answerWords<K extends KindName>(
  kind: K,
  problem: ProblemOf<K>,
  solution: SolutionOf<K>,
): readonly AnswerLine[] {
  return TELL[kind](problem, solution);
}
