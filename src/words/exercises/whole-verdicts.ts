import type { Outcome } from '../../solver/exercises/contract.ts';

type Outcomes = Readonly<Record<Outcome, string>>;

/** What is said of a whole order, a choice or an explanation. */
export const ORDER_OUTCOMES: Outcomes = {
  unreadable: 'Move the steps first, then check. This is no try yet.',
  right: 'That is right. Each step has what it needs before it.',
  'not-right': 'Look at the steps that stand too early. What each of them waits for is written beside it.',
};
export const CHOICE_OUTCOMES: Outcomes = {
  unreadable: 'Choose one first, then check. This is no try yet.',
  right: 'That is right.',
  'not-right': 'Another choice fits.',
};
export const SAY_OUTCOMES: Outcomes = {
  unreadable: 'Write your sentence and compare it first. This is no try yet.',
  right: 'That is right. You have said all of it.',
  'not-right': 'Something is not said yet. Look at what is not ticked.',
};
