import { createEffect, createMemo, createSignal, createUniqueId, For, type JSX, on, onMount, Show } from 'solid-js';
import { leadAt } from '../../figures/lead-at.ts';
import {
  type At,
  atStanding,
  atStep,
  describePiece,
  knotBack,
  knotOn,
  type Moment,
  type MomentPlan,
  pieceModel,
  piecesOf,
  rowBack,
  rowOn,
  sameIn,
  standingAt,
  stepOf,
  stepsIn,
  tellStanding,
  turnRound,
} from '../../figures/piece/index.ts';
import { pieceFigureWords, standingName } from '../../words/figures/piece.ts';
import { rowFigureWords } from '../../words/figures/row.ts';
import { Choice } from '../choice.tsx';
import { BeforeAfter } from './before-after.tsx';
import { Stage } from './stage.tsx';

interface Props {
  id: string;
  plan: MomentPlan;
  /** The moment it begins with; the finished piece when left out. */
  from?: Moment | undefined;
  /** Whether it takes the focus as it appears, because somebody has just asked for it. */
  focus?: boolean;
}

const SHOWN = ['piece', 'steps'] as const;
const SIDES = ['front', 'back'] as const;
const SHOWN_NAMES = { piece: 'each knot', steps: 'before and after' } as const;

/** A whole piece: at any row and knot, from the front and from the back, near and far, before and after each step. */
export function PieceViewer(props: Props): JSX.Element {
  const id = createUniqueId();
  const start = () => atStanding(props.plan, standingAt(props.plan, props.from ?? 'finished'));
  const [at, setAt] = createSignal<At>(start());
  const [side, setSide] = createSignal<(typeof SIDES)[number]>('front');
  const [shown, setShown] = createSignal<(typeof SHOWN)[number]>('piece');
  let walked = false;
  let root: HTMLDivElement | undefined;
  let rows: HTMLInputElement | undefined;
  let knots: HTMLInputElement | undefined;

  createEffect(
    on(
      () => props.plan,
      (plan) => setAt(walked ? sameIn(plan, at()) : start()),
      { defer: true },
    ),
  );
  onMount(() => {
    if (props.focus) root?.querySelector<HTMLElement>('.viewer-stage')?.focus();
  });

  const model = createMemo(() => {
    const front = pieceModel(piecesOf(props.plan, sameIn(props.plan, at())));
    return side() === 'back' ? turnRound(front) : front;
  });
  const told = createMemo(() => describePiece(model()).map(({ key, values }) => pieceFigureWords[key](values)));
  const knotsInRow = () => props.plan.rows[at().upToRow - 1]?.knots ?? 0;
  const name = () => standingName({ row: at().upToRow, knot: at().upToKnot, of: knotsInRow(), ending: model().ending });
  /** How far the piece is worked, and where the leading string is as long as it works. */
  const now = createMemo(() => {
    const { upToRow, upToKnot } = at();
    const works = upToRow > 0 && model().ending === 'hanging';
    const standing = tellStanding(model())
      .filter(({ key }) => !works || key !== 'piece-hanging')
      .map(({ key, values }) => pieceFigureWords[key](values));
    if (!works) return standing.join(' ');
    const lead = leadAt(props.plan.rows, upToRow, upToKnot);
    return [...standing, rowFigureWords['row-leading']({ ...lead, width: props.plan.fit.width })].join(' ');
  });

  const go = (to: At) => {
    walked = true;
    setAt(to);
  };
  const toKnot = (upToKnot: number) =>
    go(atStanding(props.plan, { upToRow: at().upToRow, upToKnot, ending: 'hanging' }));
  const first = () => at().upToRow === 0;
  const last = () => stepOf(props.plan, at()) === stepsIn(props.plan);
  const keys: Readonly<Record<string, () => void>> = {
    ArrowRight: () => go(knotOn(props.plan, at())),
    ArrowLeft: () => go(knotBack(props.plan, at())),
    ArrowDown: () => go(rowOn(props.plan, at())),
    ArrowUp: () => go(rowBack(props.plan, at())),
    Home: () => go(atStep(props.plan, 0)),
    End: () => go(atStep(props.plan, stepsIn(props.plan))),
    t: () => setSide(side() === 'front' ? 'back' : 'front'),
  };
  // The browser holds a slider's value to its end of before; the value is set again when the end has moved.
  createEffect(() => {
    const [step, , knot] = [stepOf(props.plan, at()), stepsIn(props.plan), at().upToKnot, knotsInRow()];
    if (rows) rows.value = String(step);
    if (knots) knots.value = String(knot);
  });

  return (
    <div class="piece-viewer" ref={root}>
      <div class="viewer-sheet">
        <div class="viewer-ways" data-needs-script>
          <Choice
            legend="Look at"
            choices={SHOWN}
            value={shown()}
            words={(each) => SHOWN_NAMES[each]}
            onValue={setShown}
          />
          <Choice legend="From the" choices={SIDES} value={side()} words={(each) => each} onValue={setSide} />
        </div>
        <Show
          when={shown() === 'piece'}
          fallback={<BeforeAfter id={`${props.id}-steps`} plan={props.plan} side={side()} />}
        >
          <Stage
            id={`${props.id}-piece`}
            model={model()}
            piece={props.plan}
            title={told()[0] ?? ''}
            describedBy={`${id}-now`}
            onKey={(key) => {
              keys[key]?.();
              return key in keys;
            }}
          />
          <div class="viewer-work">
            <p class="row-head">{name()}</p>
            <div class="viewer-steps" data-needs-script>
              <button type="button" onClick={keys['ArrowUp']} aria-disabled={first()}>
                Row before
              </button>
              <button type="button" onClick={keys['ArrowLeft']} aria-disabled={first()}>
                Knot back
              </button>
              <button type="button" onClick={keys['ArrowRight']} aria-disabled={last()}>
                Next knot
              </button>
              <button type="button" onClick={keys['ArrowDown']} aria-disabled={last()}>
                Next row
              </button>
            </div>
            <p id={`${id}-now`} aria-live="polite">
              {now()}
            </p>
            <div class="walk" data-needs-script>
              <label for={`${id}-row`}>Row</label>
              <input
                ref={rows}
                id={`${id}-row`}
                type="range"
                min="0"
                max={stepsIn(props.plan)}
                value={stepOf(props.plan, at())}
                aria-valuetext={name()}
                onInput={(event) => go(atStep(props.plan, Number(event.currentTarget.value)))}
              />
              <label for={`${id}-knot`}>Knots tied in the row</label>
              <input
                ref={knots}
                id={`${id}-knot`}
                type="range"
                min="0"
                max={knotsInRow()}
                value={at().upToKnot}
                disabled={first()}
                onInput={(event) => toKnot(Number(event.currentTarget.value))}
              />
            </div>
            <details>
              <summary>In words</summary>
              <For each={told()}>{(sentence) => <p>{sentence}</p>}</For>
            </details>
            <details class="only-screen">
              <summary>Keys</summary>
              <p id={`${props.id}-piece-keys`}>
                While the picture has the focus: left and right for a knot, up and down for a row, Home and End for the
                mounted strings and the finished piece. Plus and minus bring it nearer and farther, nought shows it
                whole, and Shift with an arrow key moves it. The key T turns it round.
              </p>
            </details>
          </div>
        </Show>
      </div>
    </div>
  );
}
