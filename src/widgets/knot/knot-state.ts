import { type Accessor, createMemo, createSignal, onCleanup } from 'solid-js';
import {
  basesFor,
  type KnotName,
  type NamedMoment,
  type StrandModel,
  type StringColour,
  strandModel,
  stringPaint,
} from '../../figures/strand/index.ts';
import { type Hand, shownHand, subscribeHand } from '../../store/hand.ts';

/** Whose colour can be chosen: a string by its id, or all strings of the base as one, `base`. */
export type ColouredPart = string;

export interface KnotState {
  readonly knot: Accessor<KnotName>;
  readonly setKnot: (knot: KnotName) => void;
  /** 0 to 1. */
  readonly moment: Accessor<number>;
  readonly setMoment: (moment: number) => void;
  readonly strands: Accessor<number>;
  readonly setStrands: (strands: number) => void;
  readonly hand: Accessor<Hand>;
  readonly setHand: (hand: Hand) => void;
  readonly colourOf: (part: ColouredPart) => StringColour | null;
  readonly paint: (part: ColouredPart, colour: StringColour | null) => void;
  readonly parts: Accessor<readonly ColouredPart[]>;
  readonly stops: Accessor<readonly NamedMoment[]>;
  readonly model: Accessor<StrandModel>;
  /** The knot at another moment, drawn the same way. */
  readonly modelAt: (moment: number) => StrandModel;
}

const partOf = ({ id, role }: { readonly id: string; readonly role: string }): ColouredPart | null =>
  role === 'bar' ? null : /^base(-\d+)?$/.test(id) ? 'base' : id;

/** What a learner has chosen to see of a knot, and the model that comes of it. */
export function createKnotState(first: {
  readonly knot: KnotName;
  readonly strands: number;
  readonly moment: number;
}): KnotState {
  const [knot, setKnot] = createSignal(first.knot);
  const [moment, setMoment] = createSignal(first.moment);
  const [wanted, setStrands] = createSignal(first.strands);
  // The page's hand, until the learner chooses one here.
  const [ofPage, setOfPage] = createSignal(shownHand());
  onCleanup(subscribeHand(() => setOfPage(shownHand())));
  const [chosen, setHand] = createSignal<Hand | null>(null);
  const hand = () => chosen() ?? ofPage();
  const [colours, setColours] = createSignal<Readonly<Record<ColouredPart, StringColour | null>>>({});
  const strands = () => {
    const [least, most] = basesFor(knot());
    return Math.min(most, Math.max(least, wanted()));
  };
  const colourOf = (part: ColouredPart) => colours()[part] ?? null;
  const modelAt = (at: number): StrandModel => {
    const plain = strandModel(knot(), { strands: strands(), moment: at, handedness: hand() });
    return {
      ...plain,
      strands: plain.strands.map((strand) => {
        const part = partOf(strand);
        const colour = part && colourOf(part);
        return colour ? { ...strand, colour: stringPaint(colour) } : strand;
      }),
    };
  };
  const model = createMemo(() => modelAt(moment()));
  const parts = createMemo(() => [...new Set(model().strands.map(partOf))].filter((part) => part !== null), [], {
    equals: (one, other) => one.join() === other.join(),
  });
  const stops = createMemo(() => model().stops, [], {
    equals: (one, other) => one.length === other.length && one.every(({ t }, i) => t === other[i]?.t),
  });
  return {
    knot,
    setKnot,
    moment,
    setMoment: (t) => setMoment(Math.min(1, Math.max(0, t))),
    strands,
    setStrands,
    hand,
    setHand,
    colourOf,
    paint: (part, colour) => setColours((before) => ({ ...before, [part]: colour })),
    parts,
    stops,
    model,
    modelAt,
  };
}
