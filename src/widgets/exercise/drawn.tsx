import { createEffect, createSignal, type JSX } from 'solid-js';
import * as drawing from './tied-drawing.ts';

type Drawing = typeof drawing;

interface Props {
  id: string;
  /** Draws what is to be seen now. */
  draw: (drawing: Drawing) => string;
  /** A text that changes with what is drawn, so that it is known when the drawing of the page is not the one any more. */
  shows: string;
  onClick?: ((event: MouseEvent) => void) | undefined;
}

/**
 * A drawing that stands in the page from the beginning and is drawn anew when something changes. What draws is in the
 * page’s build; in the browser it is fetched with the first change.
 */
export function Drawn(props: Props): JSX.Element {
  let host: HTMLDivElement | undefined;
  const built = props.shows;
  const [part, setPart] = createSignal<Drawing | null>(import.meta.env.SSR ? drawing : null);
  createEffect(() => {
    // What is asked in passing was not built: its drawing is fetched at once.
    if (part() || (props.shows === built && host?.firstChild)) return;
    import('./tied-drawing.ts').then(
      (fetched) => setPart(() => fetched),
      // Without a network the words under the drawing still say all of it.
      () => {},
    );
  });
  const html = () => {
    const draws = part();
    return draws ? props.draw(draws) : (host?.innerHTML ?? '');
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: a shortcut for the pointer; the list beside it has the same places
    // biome-ignore lint/a11y/useKeyWithClickEvents: the list beside it is walked with keys
    <div class="tied-drawing" id={props.id} ref={host} onClick={(event) => props.onClick?.(event)} innerHTML={html()} />
  );
}
