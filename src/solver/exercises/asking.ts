import type { Asking, KindName } from './contract.ts';
import { fade as fadeMark } from './mark/fade.ts';
import { judge as judgeMark } from './mark/judge.ts';
import { make as makeMark } from './mark/make.ts';
import { solve as solveMark } from './mark/solve.ts';
import { fade as fadeNumber } from './number/fade.ts';
import { judge as judgeNumber } from './number/judge.ts';
import { make as makeNumber } from './number/make.ts';
import { solve as solveNumber } from './number/solve.ts';
import { fade as fadeSum } from './sum/fade.ts';
import { judge as judgeSum } from './sum/judge.ts';
import { make as makeSum } from './sum/make.ts';
import { solve as solveSum } from './sum/solve.ts';

/**
 * All that a page needs to ask an exercise and to mark it, by kind. No slips and no worked steps are in here:
 * a page fetches those (`helping.ts`) when the first wrong answer or the first hint asks for them.
 */
export const asking: { readonly [K in KindName]: Asking<K> } = {
  sum: { make: makeSum, solve: solveSum, judge: judgeSum, fade: fadeSum },
  number: { make: makeNumber, solve: solveNumber, judge: judgeNumber, fade: fadeNumber },
  mark: { make: makeMark, solve: solveMark, judge: judgeMark, fade: fadeMark },
};
