import type { Step } from '../../solver/problem.ts';
import type { PieceModel } from './model-types.ts';

export type PieceKey =
  | 'piece'
  | 'piece-back'
  | 'piece-so-far'
  | 'piece-moment'
  | 'piece-mounted'
  | 'piece-opens'
  | 'piece-full'
  | 'piece-closes'
  | 'piece-knots'
  | 'piece-colours'
  | 'piece-floats'
  | 'piece-finished'
  | 'piece-gathered'
  | 'piece-hanging';

/** The piece as it is drawn, as steps that `src/words/` puts into sentences; the first is the title. */
export function describePiece(model: PieceModel): Step<PieceKey>[] {
  const { fit, width, height, upToRow, upToKnot, ending, chart, view, strings, knots } = model;
  const rows = model.rows.slice(0, upToRow);
  const steps: Step<PieceKey>[] = [
    { key: view === 'back' ? 'piece-back' : 'piece', values: { title: chart?.title ?? '', width, height } },
  ];
  const say = (key: PieceKey, values: Step<PieceKey>['values'] = {}): void => {
    steps.push({ key, values });
  };
  const last = rows.at(-1);
  if (upToRow < height || (last && upToKnot < last.knots))
    say('piece-so-far', { row: upToRow, rows: height, knot: upToKnot, of: last?.knots ?? 0 });
  say('piece-mounted', { folds: fit.folds, lone: fit.loneStrings, left: fit.left.folds, right: fit.right.folds });
  const full = rows.find((row) => row.knots === width);
  if (rows[0] && rows[0].knots < width) say('piece-opens', { knots: rows[0].knots, row: full?.row ?? 0, width });
  else if (full) say('piece-full', { width });
  const closing = rows.find((row, i) => i > 0 && row.knots < (rows[i - 1]?.knots ?? 0));
  if (closing && last) say('piece-closes', { row: closing.row, knots: last.knots });
  say('piece-knots', { knots });
  if (chart) {
    const used = new Set(rows.flatMap(({ runs }) => runs.map(({ colour }) => colour ?? 0)));
    const names = chart.palette.filter((entry, i) => used.has(i) && !entry.blank).map(({ name }) => name);
    if (names.length > 0) say('piece-colours', { colours: names.join(', ') });
  }
  if (view === 'back') {
    const count = (what: string): number =>
      strings.reduce(
        (sum, { parts }) => sum + parts.filter((part) => part.is === 'line' && part.what === what).length,
        0,
      );
    say('piece-floats', { floats: count('float'), tails: count('tail') });
  }
  say(`piece-${ending}`);
  return steps;
}

/** How far the piece is worked, and what becomes of its strings: a part of `describePiece`. */
export const tellStanding = (model: PieceModel): Step<PieceKey>[] =>
  describePiece(model).filter(({ key }) => /-(so-far|knots|hanging|gathered|finished)$/.test(key));
