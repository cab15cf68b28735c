import {
  type ChartQuestion,
  type InRowAsk,
  isChartQuestion,
  isInRowQuestion,
  type PieceAsk,
  type RowsQuestion,
  type Stretch,
} from '../../solver/exercises/number/problem.ts';
import { bundlesIn, OUTLINE_RULES } from '../../solver/exercises/outline.ts';
import type { SideName } from '../../solver/piece.ts';
import { count, figure, list, ordinal } from '../numbers.ts';
import type { QuestionWords } from './question-words.ts';
import { bundles, often, shapedPiece } from './shaped-piece.ts';

const IN_ROW_ASKED: Readonly<Record<InRowAsk, (row: number, side: SideName | null) => string>> = {
  'knots-in-row': (row) => `How many knots does row ${row} have?`,
  'bundle-in-row': (row, side) =>
    `How many strings are tied as one ${side === null ? 'at each edge' : `at the ${side} edge`} in row ${row}?`,
  'corner-cells-in-row': (row) => `How many corner cells does row ${row} have, both sides together?`,
};

const PIECE_ASKED: Readonly<Record<PieceAsk, string>> = {
  'full-width-row': 'Which row is the first of full width?',
  'first-closing-row': 'In which row does closing begin?',
  'corner-cells': 'How many corner cells are there from row 1 to full width, both sides together?',
};

const stretchWords = ({ colour, cells }: Stretch, first: boolean): string =>
  first ? `${count(cells, `${colour} cell`)}` : `${figure(cells)} ${colour}`;

function chartAsked(problem: ChartQuestion): QuestionWords {
  switch (problem.ask) {
    case 'column-of-knot': {
      const { width, row, knot, startSide } = problem;
      const [left, right] = bundlesIn(OUTLINE_RULES, problem, row);
      const begins = `Row 1 begins on the ${startSide}.`;
      return {
        given:
          left === 1 && right === 1
            ? `The chart is ${count(width, 'column')} wide. ${begins} Row ${row} has full width.`
            : `${shapedPiece(problem)} ${begins}`,
        ask: `Count the knots of row ${row} as you tie them. In which column does the ${ordinal(knot)} one stand, if you count columns from the left?`,
      };
    }
    case 'knots-of-colour':
      return {
        given: `Read from left to right, row ${problem.row} of a chart has ${list(problem.stretches.map((stretch, at) => stretchWords(stretch, at === 0)))}.`,
        ask: `How many knots does the ${problem.colour} string tie in this row?`,
      };
    case 'plain-rows-above': {
      const { width, bundles: mounted, openingStep, pictureRow, inset } = problem;
      return {
        given: `The chart is ${count(width, 'column')} wide. The side bundles hold ${bundles(mounted, '')} in row 1. After that, one string is let out on each side ${often(openingStep)}. The picture begins in row ${pictureRow}. There it reaches from column ${inset} to column ${width + 1 - inset}.`,
        ask: 'How many plain rows must you add above, so that none of this row falls into a corner?',
      };
    }
  }
}

/** A single figure of the rows. */
export function rowsAsked(problem: RowsQuestion): QuestionWords {
  if (isChartQuestion(problem)) return chartAsked(problem);
  return {
    given: shapedPiece(problem),
    ask: isInRowQuestion(problem) ? IN_ROW_ASKED[problem.ask](problem.row, problem.side) : PIECE_ASKED[problem.ask],
  };
}
