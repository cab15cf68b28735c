import type { Slips } from '../../missteps/contract.ts';

/** Nothing is worked out here, so no slip is made in it; a wrong pick gets an answer of its own. */
export const slips: Slips<'spot'> = {
  missteps: {},
  every: () => [],
  singles: () => [],
  pairs: () => [],
  like: () => () => false,
  figuresIn: () => 0,
  followUps: () => [],
};
