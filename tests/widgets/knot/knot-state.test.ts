import { createRoot } from 'solid-js';
import { afterEach, describe, expect, it } from 'vitest';
import { showHand, shownHand, subscribeHand } from '../../../src/store/hand.ts';
import { createKnotState } from '../../../src/widgets/knot/knot-state.ts';

const forward = () => createRoot(() => createKnotState({ knot: 'forward', strands: 1, moment: 1 }));

afterEach(() => showHand('right'));

describe('the hand of a stepper', () => {
  it('is the right one on a page that shows its motions as it was built', () => {
    expect(forward().hand()).toBe('right');
    expect(forward().modelAt(1).knot).toBe('forward');
  });

  it('is the page’s own when it opens, and goes with the page from then on', () => {
    showHand('left');
    const state = forward();
    expect(state.hand()).toBe('left');
    expect(state.modelAt(1).knot).toBe('backward');
    showHand('right');
    expect(state.hand()).toBe('right');
    showHand('left');
    expect(state.hand()).toBe('left');
  });

  it('is what the learner chose in it, whatever the page does then', () => {
    showHand('left');
    const state = forward();
    state.setHand('right');
    expect(state.hand()).toBe('right');
    showHand('right');
    showHand('left');
    expect(state.hand()).toBe('right');
    expect(forward().hand()).toBe('left');
  });
});

describe('the hand of a page', () => {
  it('tells those who asked when it changes, and nobody when it stays', () => {
    const heard: string[] = [];
    const end = subscribeHand(() => heard.push(shownHand()));
    for (const hand of ['right', 'left', 'left', 'right'] as const) showHand(hand);
    end();
    showHand('left');
    expect(heard).toEqual(['left', 'right']);
  });
});
