import { backFigureWords } from './figures/back.ts';
import { barWords } from './figures/bar.ts';
import { capacityRangeFigureWords } from './figures/capacity-range.ts';
import { chartFigureWords } from './figures/chart.ts';
import { closingFigureWords } from './figures/closing.ts';
import { cutStringsFigureWords } from './figures/cut-strings.ts';
import { eveningFigureWords } from './figures/evening.ts';
import { faultFigureWords } from './figures/fault.ts';
import { foldsWhyFigureWords } from './figures/folds-why.ts';
import { gatheringFigureWords } from './figures/gathering.ts';
import { levelEndsFigureWords } from './figures/level-ends.ts';
import { openingFigureWords } from './figures/opening.ts';
import { outlineFigureWords } from './figures/outline.ts';
import { placingFigureWords } from './figures/placing.ts';
import { rowFigureWords } from './figures/row.ts';
import { rowReadFigureWords } from './figures/row-read.ts';
import { silhouetteFigureWords } from './figures/silhouette.ts';
import { steadyRingFigureWords } from './figures/steady-ring.ts';
import { swatchFigureWords } from './figures/swatch.ts';
import { tenTurnsFigureWords } from './figures/ten-turns.ts';
import { tightFloatFigureWords } from './figures/tight-float.ts';
import { trialRowFigureWords } from './figures/trial-row.ts';
import { waysToHangFigureWords } from './figures/ways-to-hang.ts';

/** Every sentence and label of every figure; a widget that draws one figure takes only its own. */
export const figureWords = {
  ...backFigureWords,
  ...barWords,
  ...outlineFigureWords,
  ...chartFigureWords,
  ...rowFigureWords,
  ...openingFigureWords,
  ...closingFigureWords,
  ...cutStringsFigureWords,
  ...gatheringFigureWords,
  ...foldsWhyFigureWords,
  ...capacityRangeFigureWords,
  ...placingFigureWords,
  ...rowReadFigureWords,
  ...tenTurnsFigureWords,
  ...waysToHangFigureWords,
  ...eveningFigureWords,
  ...faultFigureWords,
  ...silhouetteFigureWords,
  ...levelEndsFigureWords,
  ...steadyRingFigureWords,
  ...swatchFigureWords,
  ...tightFloatFigureWords,
  ...trialRowFigureWords,
};
