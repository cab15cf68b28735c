import { createEffect, createMemo, createSignal, type JSX, on, onCleanup, onMount, Show } from 'solid-js';
import {
  boxOf,
  columnPixels,
  following,
  type Level,
  levelFor,
  moved,
  NEARER,
  nearer,
  type PieceModel,
  PiecePainter,
  pieceStyle,
  turnedLook,
  wholeLook,
} from '../../figures/piece/index.ts';
import { listenToHands } from './gestures.ts';
import { Sheets } from './sheets.ts';

interface Props {
  id: string;
  model: PieceModel;
  /** Changes when the piece is another one: then it is seen whole again. */
  piece: unknown;
  /** What the picture shows, in one sentence, and the id of what says more. */
  title: string;
  describedBy: string;
  /** A key that the picture itself has no use for; gives whether it was used. */
  onKey: (key: string) => boolean;
}

/** How far one press of a key or button moves the picture, as a part of what is seen. */
const STEP = 0.25;
/** What is assumed of a place before it has been measured. */
const UNSEEN = { width: 600, height: 600 };

/** The picture of a piece: as fine as its size asks for, to be looked at from near and far. */
export function Stage(props: Props): JSX.Element {
  let stage: HTMLDivElement | undefined;
  let picture: HTMLDivElement | undefined;
  let sheets: Sheets | undefined;
  const [size, setSize] = createSignal(UNSEEN);
  const frame = () => props.model.frame;
  const view = createMemo(() => props.model.view);
  const [look, setLook] = createSignal(wholeLook(props.model.frame));
  const aspect = () => size().width / size().height;
  const box = createMemo(() => boxOf(look(), frame(), aspect()));
  const level = createMemo((): Level => (props.model.coarse ? 'cell' : levelFor(columnPixels(box(), size().width))));
  const near = () => look().times > 1;
  const whole = () => setLook(wholeLook(frame()));
  const closer = (factor: number, at?: readonly [number, number]) =>
    setLook(nearer(look(), frame(), aspect(), factor, at));
  const move = (across: number, down: number) => setLook(moved(look(), frame(), aspect(), across, down));

  createEffect(on(() => props.piece, whole, { defer: true }));
  createEffect(on(view, () => setLook(turnedLook(look(), props.model)), { defer: true }));
  createEffect(
    on(
      () => props.model,
      (model) => setLook(following(look(), model, aspect())),
      { defer: true },
    ),
  );

  const painter = createMemo(on([level, () => props.piece, view], () => new PiecePainter(props.id, level())));
  createEffect((before: PiecePainter | undefined) => {
    const paints = painter();
    const parts = paints.parts(props.model);
    if (!picture) return paints;
    sheets ??= new Sheets(picture);
    if (before !== paints) sheets.clear();
    sheets.show(parts);
    return paints;
  }, undefined);
  const room = createMemo(() => boxOf(wholeLook(frame()), frame(), aspect()));
  createEffect(() => sheets?.look(room(), box()));

  onMount(() => {
    if (!stage) return;
    listenToHands(stage, { nearer: closer, move, holds: near });
    const watch = new ResizeObserver(([entry]) => {
      const { width = 0, height = 0 } = entry?.contentRect ?? {};
      if (width > 0 && height > 0) setSize({ width, height });
    });
    watch.observe(stage);
    onCleanup(() => watch.disconnect());
  });

  const keys: Readonly<Record<string, () => void>> = {
    '+': () => closer(NEARER),
    '=': () => closer(NEARER),
    '-': () => closer(1 / NEARER),
    '0': whole,
  };
  const ways: Readonly<Record<string, readonly [number, number]>> = {
    ArrowLeft: [-STEP, 0],
    ArrowRight: [STEP, 0],
    ArrowUp: [0, -STEP],
    ArrowDown: [0, STEP],
  };
  const press = (event: KeyboardEvent) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const way = event.shiftKey ? ways[event.key] : undefined;
    if (way) move(...way);
    else if (keys[event.key]) keys[event.key]?.();
    else if (!props.onKey(event.key.length === 1 ? event.key.toLowerCase() : event.key)) return;
    event.preventDefault();
  };
  return (
    <>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset is for fields, and this is a picture. */}
      <div
        ref={stage}
        class="viewer-stage"
        role="group"
        aria-label="The piece, to look at with keys"
        aria-describedby={`${props.id}-keys`}
        tabindex="0"
        data-near={near() ? '' : undefined}
        onKeyDown={press}
      >
        <div
          ref={picture}
          class="viewer-picture"
          role="img"
          aria-label={props.title}
          aria-describedby={props.describedBy}
          style={pieceStyle(level())}
          data-level={level()}
        />
      </div>
      <div class="viewer-look" data-needs-script>
        <button type="button" onClick={() => closer(NEARER)}>
          Nearer
        </button>
        <button type="button" onClick={() => closer(1 / NEARER)} aria-disabled={!near()}>
          Farther
        </button>
        <button type="button" onClick={whole} aria-disabled={!near()}>
          Whole piece
        </button>
        <Show when={near()}>
          <button type="button" onClick={() => move(-STEP, 0)}>
            Look left
          </button>
          <button type="button" onClick={() => move(STEP, 0)}>
            Look right
          </button>
          <button type="button" onClick={() => move(0, -STEP)}>
            Look up
          </button>
          <button type="button" onClick={() => move(0, STEP)}>
            Look down
          </button>
        </Show>
      </div>
    </>
  );
}
