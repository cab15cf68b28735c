import { type Accessor, createSignal } from 'solid-js';

export interface LivePart<Part> {
  /** The part once it is there; null until then. */
  readonly part: Accessor<Part | null>;
  /** Fetches it, and takes what the page was built with out of its way. */
  readonly wake: () => void;
}

/** What a reader had opened under the drawing that goes is open under the one that comes. */
function keepOpen(built: HTMLElement): void {
  if (!built.querySelector('details[open]')) return;
  for (const details of built.closest('section')?.querySelectorAll('details') ?? [])
    if (!built.contains(details)) details.open = true;
}

/**
 * The part of a widget that is fetched when it is first used. Until then the page shows what it was built with, in the
 * element of this id; the two never stand side by side.
 */
export function createLivePart<Part>(builtId: string, fetch: () => Promise<Part>): LivePart<Part> {
  const [part, setPart] = createSignal<Part | null>(null);
  let asked = false;
  const wake = () => {
    if (asked) return;
    asked = true;
    fetch().then(
      (loaded) => {
        setPart(() => loaded);
        const built = document.getElementById(builtId);
        if (!built) return;
        keepOpen(built);
        built.hidden = true;
      },
      () => {
        // Without a network the page keeps what it has; the next change tries again.
        asked = false;
      },
    );
  };
  return { part, wake };
}
