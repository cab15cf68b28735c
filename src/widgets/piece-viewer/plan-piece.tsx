import { createMemo, createSignal, type JSX, Show } from 'solid-js';
import { piecePlate } from '../../figures/piece/index.ts';
import type { Plan } from '../../solver/plan.ts';
import { pieceFigureWords } from '../../words/figures/piece.ts';
import { DrawnPlate } from '../drawn-plate.tsx';
import { PieceViewer } from './piece-viewer.tsx';

interface Props {
  plan: Plan;
  /** Told when the viewer is opened or closed, since it needs more room. */
  onOpen: (open: boolean) => void;
}

/** The finished piece of a plan, as a plate, or to walk through. */
export function PlanPiece(props: Props): JSX.Element {
  const [open, setOpen] = createSignal(false);
  const [asked, setAsked] = createSignal(false);
  const drawn = createMemo(() => piecePlate(props.plan, {}, { id: 'plan-piece', words: pieceFigureWords }));
  let button: HTMLButtonElement | undefined;
  const toggle = () => {
    setAsked(true);
    setOpen(!open());
    props.onOpen(open());
    if (!open()) button?.focus();
  };
  return (
    <>
      <p data-needs-script>
        <button ref={button} type="button" aria-expanded={open()} onClick={toggle}>
          {open() ? 'Back to the finished piece' : 'Walk through the piece'}
        </button>
      </p>
      <Show
        when={open()}
        fallback={<DrawnPlate drawn={drawn()} caption="The finished piece, with its knots as they will lie." />}
      >
        <PieceViewer id="plan-viewer" plan={props.plan} from="mounted" focus={asked()} />
      </Show>
    </>
  );
}
