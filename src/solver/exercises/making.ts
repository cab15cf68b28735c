import { fade as fadeChoose } from './choose/fade.ts';
import { make as makeChoose } from './choose/make.ts';
import type { Asking, KindName } from './contract.ts';
import { fade as fadeMark } from './mark/fade.ts';
import { make as makeMark } from './mark/make.ts';
import { fade as fadeNumber } from './number/fade.ts';
import { make as makeNumber } from './number/make.ts';
import { fade as fadeOrder } from './order/fade.ts';
import { make as makeOrder } from './order/make.ts';
import { fade as fadeRow } from './row/fade.ts';
import { make as makeRow } from './row/make.ts';
import { fade as fadeSay } from './say/fade.ts';
import { make as makeSay } from './say/make.ts';
import { fade as fadeSpot } from './spot/fade.ts';
import { make as makeSpot } from './spot/make.ts';
import { fade as fadeSum } from './sum/fade.ts';
import { make as makeSum } from './sum/make.ts';

/** All that a page needs to make a problem with other figures than it was built with. */
export const making: { readonly [K in KindName]: Pick<Asking<K>, 'make' | 'fade'> } = {
  sum: { make: makeSum, fade: fadeSum },
  number: { make: makeNumber, fade: fadeNumber },
  mark: { make: makeMark, fade: fadeMark },
  row: { make: makeRow, fade: fadeRow },
  spot: { make: makeSpot, fade: fadeSpot },
  order: { make: makeOrder, fade: fadeOrder },
  choose: { make: makeChoose, fade: fadeChoose },
  say: { make: makeSay, fade: fadeSay },
};
