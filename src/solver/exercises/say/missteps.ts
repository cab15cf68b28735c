import type { Slips } from '../../missteps/contract.ts';

/** What a learner leaves out of an explanation is theirs to see; nothing is named as a slip. */
export const slips: Slips<'say'> = {
  missteps: {},
  every: () => [],
  singles: () => [],
  pairs: () => [],
  like: () => () => false,
  figuresIn: () => 0,
  followUps: () => [],
};
