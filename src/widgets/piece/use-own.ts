import { type Accessor, createSignal, onCleanup, onMount } from 'solid-js';
import {
  loadOwnFigures,
  type OwnFigures,
  type OwnFiguresChange,
  ownFiguresProblems,
  STARTING_FIGURES,
  saveOwnFigures,
  subscribeOwnFigures,
} from '../../store/own-figures.ts';
import { loadPreferences } from '../../store/preferences.ts';
import { problemWords } from '../../words/problems.ts';
import type { Keeping } from '../../words/storage-words.ts';

export interface Own {
  readonly figures: Accessor<OwnFigures>;
  /** Whether the learner ever entered anything. */
  readonly entered: Accessor<boolean>;
  readonly keeping: Accessor<Keeping>;
  readonly change: (change: OwnFiguresChange) => void;
  /** What is wrong with a change, in words, or undefined; nothing is kept by asking. */
  readonly problemOf: (change: OwnFiguresChange, name?: string) => string | undefined;
}

/** The learner's own figures as signals: what another tab enters arrives here too. */
export function useOwn(): Own {
  const [figures, setFigures] = createSignal<OwnFigures>(STARTING_FIGURES);
  const [entered, setEntered] = createSignal(false);
  const [keeping, setKeeping] = createSignal<Keeping>({ kept: true });
  const take = (loaded: ReturnType<typeof loadOwnFigures>) => {
    setFigures(loaded.value);
    setEntered(loaded.entered);
    setKeeping(loaded.keeping);
  };
  onMount(() => {
    take(loadOwnFigures());
    onCleanup(subscribeOwnFigures(take));
  });
  return {
    figures,
    entered,
    keeping,
    change: (change) => setKeeping(saveOwnFigures(change)),
    problemOf: (change, name) => {
      const problem = ownFiguresProblems(change)[0];
      return problem && problemWords(problem, { name, units: loadPreferences().value.units });
    },
  };
}
