import { createSignal, createUniqueId, type JSX, onCleanup, onMount, Show } from 'solid-js';
import { pageShelf } from '../store/shelf.ts';
import type { OwnSwitch } from './own-switch.tsx';

interface Props {
  /** How the page calls its worked example. */
  name: string;
  example: { readonly capacity: number; readonly width: number; readonly height: number };
  /** How the page calls figures that are entered; “my figures” where it is left out. */
  own?: string;
}

/** What the part that knows the learner's figures tells the switch. */
export interface OwnState {
  readonly mine: boolean;
  /** Their figures in short, where any were entered. */
  readonly short: string;
  /** What has to be said of them: that they can't be made or kept. */
  readonly say: string;
}

/** Whether anything was ever entered on this device; reading it in full is left to the part that is fetched then. */
function isAnythingKept(): boolean {
  try {
    return (pageShelf()?.getItem('evenfold.own-figures') ?? null) !== null;
  } catch {
    return false;
  }
}

/**
 * The switch at the head of a lesson: read it with the worked example, or with one's own ring and chart. Whoever reads
 * the example fetches only this; the rest comes when it is asked for, or when figures were entered before.
 */
export function FiguresSwitch(props: Props): JSX.Element {
  const id = createUniqueId();
  const own = props.own ?? 'my figures';
  const [state, setState] = createSignal<OwnState>({ mine: false, short: '', say: '' });
  const [open, setOpen] = createSignal(false);
  const [wanted, setWanted] = createSignal<boolean | null>(null);
  const [part, setPart] = createSignal<{ readonly Form: typeof OwnSwitch } | null>(null);

  const load = async () => {
    if (part()) return;
    const { OwnSwitch: Form } = await import('./own-switch.tsx');
    setPart({ Form });
  };
  onMount(() => {
    if (isAnythingKept()) void load();
    // Another tab may be where figures are entered.
    const heard = () => isAnythingKept() && void load();
    addEventListener('storage', heard);
    onCleanup(() => removeEventListener('storage', heard));
  });
  const choose = (mine: boolean) => {
    setState({ ...state(), mine });
    setWanted(mine);
    if (mine && state().short === '') setOpen(true);
    if (mine) void load();
  };

  return (
    <div class="figures-switch" data-needs-script>
      <fieldset class="choice">
        <legend>Read with</legend>
        <label>
          <input type="radio" name={`${id}-with`} checked={!state().mine} onChange={() => choose(false)} />
          <span>
            {props.name}: {props.example.width} × {props.example.height} on a bar of {props.example.capacity}
          </span>
        </label>
        <label>
          <input type="radio" name={`${id}-with`} checked={state().mine} onChange={() => choose(true)} />
          <span>
            {own}
            {state().short}
          </span>
        </label>
      </fieldset>
      <details
        open={open()}
        onToggle={(event) => {
          setOpen(event.currentTarget.open);
          if (event.currentTarget.open) void load();
        }}
      >
        <summary>{state().short === '' ? `Enter ${own}` : `Change ${own}`}</summary>
        <Show when={part()}>
          {(loaded) => {
            const { Form } = loaded();
            return <Form name={props.name} wanted={wanted()} onState={setState} />;
          }}
        </Show>
      </details>
      <div aria-live="polite">
        <Show when={state().say}>
          <p class="field-problem">{state().say}</p>
        </Show>
      </div>
    </div>
  );
}
