import { barWords } from './figures/bar.ts';
import { chartFigureWords } from './figures/chart.ts';
import { closingFigureWords } from './figures/closing.ts';
import { cutStringsFigureWords } from './figures/cut-strings.ts';
import { foldsWhyFigureWords } from './figures/folds-why.ts';
import { gatheringFigureWords } from './figures/gathering.ts';
import { openingFigureWords } from './figures/opening.ts';
import { outlineFigureWords } from './figures/outline.ts';
import { rowFigureWords } from './figures/row.ts';

/** Every sentence and label of every figure; a widget that draws one figure takes only its own. */
export const figureWords = {
  ...barWords,
  ...outlineFigureWords,
  ...chartFigureWords,
  ...rowFigureWords,
  ...openingFigureWords,
  ...closingFigureWords,
  ...cutStringsFigureWords,
  ...gatheringFigureWords,
  ...foldsWhyFigureWords,
};
