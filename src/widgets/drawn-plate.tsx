import { createMemo, type JSX, Show } from 'solid-js';
import type { DrawnFigure } from '../figures/index.ts';

interface Props {
  drawn: DrawnFigure;
  caption: JSX.Element;
  wide?: boolean;
}

/** A plate that is drawn in the browser, with its text equivalent from the same data. */
export function DrawnPlate(props: Props): JSX.Element {
  const svg = createMemo(() => props.drawn.svg);
  return (
    <figure class="drawn-plate" classList={{ wide: props.wide ?? false }}>
      <div class="plate-ground" innerHTML={svg()} />
      <figcaption>
        <p>{props.caption}</p>
        <details>
          <summary>In words</summary>
          <Show when={props.drawn.inInches} fallback={<p>{props.drawn.description}</p>}>
            {(inInches) => (
              <p>
                <span data-units="metric">{props.drawn.description}</span>
                <span data-units="inches">{inInches()}</span>
              </p>
            )}
          </Show>
        </details>
      </figcaption>
    </figure>
  );
}
