import type { Sequence } from '../../solver/exercises/order/problem.ts';

/** Why a step of a sequence comes before another, by `first then`. */
export const ORDER_REASONS: { readonly [S in Sequence]: Readonly<Record<string, string>> } = {
  mounting: {
    'cut hang-folds': 'A fold has to be cut before it can hang.',
    'cut fix-lone': 'The lone string has to be cut before it can hang.',
    'hang-folds pin-ring': 'While you fix the folds the ring has to move freely. Pin it when the bar is full.',
    'fix-lone pin-ring': 'While you fix the lone string the ring has to move freely. Pin it when the bar is full.',
    'pin-ring loop-first': 'The bundle is not knotted to the ring. If the ring can turn, it slips out again.',
    'loop-first pin-leading':
      'The leading string belongs on the inner side of the bundle, so the bundle has to hang there first.',
  },
  'first-row': {
    'loop-first pin-leading':
      'The leading string belongs on the inner side of the bundle, so the bundle has to hang there first.',
    'pin-leading turn-first': 'The leading string makes the knot, so it has to be pinned first.',
    'turn-first ordinary': 'The row begins at the edge, with the knot round the bundle.',
    'ordinary turn-second': 'The leading string comes to the far bundle last, over all strings between.',
    'loop-second turn-second': 'The far bundle has to hang there before it can be tied.',
  },
  'let-out': {
    'free turn': 'Once the turning knot is tied, it holds all strings of the bundle, and none can get out.',
    'turn freed-knot': 'The edge is tied first. From there the row goes on inwards.',
    'freed-knot go-on': 'The string that came out hangs next to the bundle, so the row meets it first.',
  },
  'take-in': {
    'carry turn': 'A turning knot begins on the inner side, so the leading string has to be there first.',
    'join turn': 'The knot has to hold the new string too, so it joins first.',
    'turn go-on': 'The row begins at the edge, with the knot round the bundle.',
    'go-on turn-end': 'The leading string comes to the far edge last.',
  },
  row: {
    'free turn': 'Once the turning knot is tied, it holds all strings of the bundle, and none can get out.',
    'turn freed-knot': 'The edge is tied first. From there the row goes on inwards.',
    'freed-knot go-on': 'The string that came out hangs next to the bundle, so the row meets it first.',
    'go-on end-freed': 'The row goes from string to string. The far edge comes after those between.',
    'end-freed turn-end': 'At the end of a row the freed string comes first. The bundle lies further out.',
  },
  sum: {
    'match spare': 'If a place stays idle, one string more is spare. So that has to be settled first.',
    'spare halve': 'Nothing can be halved before you know how many are spare.',
    'halve even-or-odd': 'Even or odd is asked of the half, not of all the spare strings.',
    'even-or-odd borrow': 'Only an odd half needs anything from the bar.',
    'borrow on-bar': 'What is borrowed comes off the bar, so the bar can’t be counted before.',
    'borrow bundle': 'What is borrowed goes to the sides, so they can’t be counted before.',
    'on-bar folds': 'Folds are counted from the strings that are on the bar in the end.',
    'bundle folds': 'Folds are counted from the strings that each side has in the end.',
  },
  gathering: {
    'lay-leading gather-left':
      'The last turning knot is held by nothing else. Its end has to lie in the bundle before strings are tied round it.',
    'lay-leading gather-right':
      'The last turning knot is held by nothing else. Its end has to lie in the bundle before strings are tied round it.',
    'lay-leading lay-middle': 'The leading strings go into the bundles first. They hold the last turning knots.',
    'lay-leading pass-left': 'The leading strings go into the bundles first. They hold the last turning knots.',
    'lay-leading pass-right': 'The leading strings go into the bundles first. They hold the last turning knots.',
    'gather-left lay-middle':
      'Only when both sides have gathered are three strings left, and one of them in the middle.',
    'gather-right lay-middle':
      'Only when both sides have gathered are three strings left, and one of them in the middle.',
    'gather-left pass-left':
      'Strings that are still single would be locked out. The last two are known only when both sides have gathered.',
    'gather-right pass-left': 'The last two are known only when both sides have gathered.',
    'gather-left pass-right': 'The last two are known only when both sides have gathered.',
    'gather-right pass-right':
      'Strings that are still single would be locked out. The last two are known only when both sides have gathered.',
    'lay-middle pass-left': 'The middle string has to lie against its bundle before the last two go round.',
    'lay-middle pass-right': 'The middle string has to lie against its bundle before the last two go round.',
    'pass-left square-first': 'Both strings have to be on the outside to tie round both bundles.',
    'pass-right square-first': 'Both strings have to be on the outside to tie round both bundles.',
    'square-first square-second': 'The mirror image needs a first half to mirror.',
    'square-second square-again': 'One whole square knot comes before another.',
    'square-again trim': 'A knot needs ends that a hand can pull. What is cut can’t be drawn tight.',
  },
  'square-knot': {
    'first-over first-up':
      'The right string comes up through the loop that the left string makes, so the loop has to be there.',
    'first-up draw-first': 'A half is drawn up when both strings have gone their way.',
    'draw-first second-over': 'A loose first half slips while the second is laid.',
    'second-over second-up': 'The other string comes up through the loop on the right, so the loop has to be there.',
    'second-up draw-second': 'A half is drawn up when both strings have gone their way.',
  },
  'new-string': {
    'turn lay-both': 'A join never falls on a turning knot: it would slip out. Get past the bundle first.',
    'lay-both three-knots': 'Three knots hold both ends, so both have to lie behind the base.',
    'three-knots go-on': 'Until three knots hold it, the new string can be pulled out.',
    'go-on trim-tails': 'Ends that are cut too soon slip out. The work has to sit firmly first.',
  },
  evening: {
    'measure try-sums': 'Which rings will do is reckoned from their width and from the cord.',
    'try-sums cut-list': 'A cut list is for a piece that can be made. Settle first who makes which.',
    'cut-list cut': 'The list says how many pieces, and how long.',
    'cut bag': 'A bag can only be packed with string that is cut.',
  },
};
