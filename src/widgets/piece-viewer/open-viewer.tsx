import { createEffect, createSignal, type JSX, Show } from 'solid-js';
import type { Moment } from '../../figures/piece/index.ts';
import type { PlanInput } from '../../solver/plan.ts';
import { createLivePart } from '../live-part.ts';
import { useReading } from '../reading.ts';

interface Props {
  /** The page holds the piece as it was built in an element of this id, with `-built` behind it. */
  id: string;
  example: PlanInput;
  /** Id of the example's chart. */
  chart: string | null;
  from?: Moment | undefined;
}

/** Opens the viewer of a whole piece. What plans and draws the piece is fetched when somebody asks for it. */
export function OpenViewer(props: Props): JSX.Element {
  const reading = useReading(props.example);
  const [asked, setAsked] = createSignal(false);
  const viewer = createLivePart(`${props.id}-built`, () =>
    import('./page-viewer.tsx').then(({ PageViewer }) => PageViewer),
  );
  createEffect(() => {
    if (asked() || reading() !== props.example) viewer.wake();
  });
  return (
    <Show
      when={viewer.part()}
      fallback={
        <button type="button" data-needs-script onClick={() => setAsked(true)}>
          Walk through the piece
        </button>
      }
    >
      {(part) => {
        const Viewer = part();
        return <Viewer id={props.id} input={reading()} chart={props.chart} from={props.from} focus={asked()} />;
      }}
    </Show>
  );
}
