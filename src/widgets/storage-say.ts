import { type Accessor, createEffect, createSignal } from 'solid-js';
import type { Keeping, storageWords } from '../words/storage-words.ts';

/** What there is to say of figures that could not be kept; the words are fetched when there is something to say. */
export function createStorageWords(keeping: Accessor<Keeping>): Accessor<string> {
  const [say, setSay] = createSignal<typeof storageWords | null>(null);
  createEffect(() => {
    if (!keeping().kept && !say())
      void import('../words/storage-words.ts').then((words) => setSay(() => words.storageWords));
  });
  return () => (keeping().kept ? '' : (say()?.(keeping()) ?? ''));
}
