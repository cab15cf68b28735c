import type { Thread } from '../solver/thread/index.ts';
import { STARTING_FIGURES } from '../store/own-figures.ts';
import { threadOf } from '../store/own-reading.ts';

/** The cord of the worked examples: the one that a learner's own figures begin with. */
export const EXAMPLE_THREAD: Thread = threadOf(STARTING_FIGURES);
