import { type Accessor, createEffect, createSignal, type JSX } from 'solid-js';

export type Drawing = typeof import('./tied-drawing.ts');

// A page is built with its drawing; a plain import would bring what draws into every reader’s script.
const whileBuilding: Drawing | null = import.meta.env.SSR ? await import('./tied-drawing.ts') : null;

/**
 * What draws: there while the page is built, and fetched in the browser when something else is to be seen than was built.
 *
 * @param id of an element that the page was built with; one that is empty was asked in passing, and is drawn at once
 * @param shows a text that changes with what is to be seen; 'null' where nothing is drawn
 */
export function createDrawing(id: string, shows: Accessor<string>): Accessor<Drawing | null> {
  const built = shows();
  const [drawing, setDrawing] = createSignal(whileBuilding);
  createEffect(() => {
    if (drawing() || shows() === 'null' || (shows() === built && document.getElementById(id)?.firstChild)) return;
    import('./tied-drawing.ts').then(
      (fetched) => setDrawing(() => fetched),
      // Without a network the page keeps what it has; the next change tries again.
      () => {},
    );
  });
  return drawing;
}

interface Props {
  id?: string | undefined;
  class: string;
  drawing: Drawing | null;
  html: (drawing: Drawing) => string;
  /** Whether changes are read out. */
  live?: boolean | undefined;
  onClick?: ((event: MouseEvent) => void) | undefined;
}

/** A part of the page that stays as it was built until what draws it is there. */
export function Drawn(props: Props): JSX.Element {
  let host: HTMLDivElement | undefined;
  const html = () => (props.drawing ? props.html(props.drawing) : (host?.innerHTML ?? ''));
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: a shortcut for the pointer; the list beside it has the same places
    // biome-ignore lint/a11y/useKeyWithClickEvents: the list beside it is walked with keys
    <div
      id={props.id}
      class={props.class}
      ref={host}
      aria-live={props.live ? 'polite' : undefined}
      onClick={(event) => props.onClick?.(event)}
      innerHTML={html()}
    />
  );
}
