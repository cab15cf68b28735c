/** What marks a choice. A page fetches it with the first check. */
export { judge } from '../../solver/exercises/choose/judge.ts';
export { CHOICE_OUTCOMES as outcomes } from '../../words/exercises/whole-verdicts.ts';
