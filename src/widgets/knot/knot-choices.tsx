import { createUniqueId, For, type JSX, Show } from 'solid-js';
import { basesFor, type KnotName, STRING_COLOURS, type StringColour } from '../../figures/strand/index.ts';
import type { Hand } from '../../store/hand.ts';
import { bundleName, knotTitle } from '../../words/knot-stages.ts';
import { capital } from '../../words/numbers.ts';
import { allOfBundle, cordName } from '../../words/strand-words.ts';
import { Choice } from '../choice.tsx';
import { WholeNumber } from '../whole-number.tsx';
import type { ColouredPart, KnotState } from './knot-state.ts';

const HANDS: readonly Hand[] = ['right', 'left'];
const HAND_WORDS: Readonly<Record<Hand, string>> = { right: 'right-handed', left: 'left-handed, as in a mirror' };

interface Props {
  state: KnotState;
  /** The knots to choose from. */
  knots: readonly KnotName[];
}

/** What a learner may choose about a knot: which, which hand, how many strings, which colours. */
export function KnotChoices(props: Props): JSX.Element {
  const id = createUniqueId();
  const figure = () => ({ ...props.state.model(), knot: props.state.knot() });
  const range = () => {
    const [low, high] = basesFor(props.state.knot());
    return { low, high };
  };
  const partWords = (part: ColouredPart): string =>
    capital(
      part === 'base' && figure().strands.some(({ id: one }) => one === 'base-2')
        ? allOfBundle(figure())
        : cordName(part, figure()),
    );
  return (
    <div class="knot-choices">
      <Show when={props.knots.length > 1}>
        <Choice
          legend="Knot"
          choices={props.knots}
          value={props.state.knot()}
          words={(knot) => knotTitle(knot)}
          onValue={props.state.setKnot}
        />
      </Show>
      <Choice
        legend="Tied"
        choices={HANDS}
        value={props.state.hand()}
        words={(hand) => HAND_WORDS[hand]}
        onValue={props.state.setHand}
      />
      <Show when={range().high > range().low}>
        <WholeNumber
          label={`Strings in the ${range().low > 1 || bundleName(props.state.knot()) === 'core' ? bundleName(props.state.knot()) : 'base'}`}
          value={props.state.strands()}
          range={range()}
          onValue={(value) => {
            if (typeof value === 'number' && value >= range().low && value <= range().high)
              props.state.setStrands(value);
          }}
        />
      </Show>
      <div class="fields">
        <For each={props.state.parts()}>
          {(part, i) => (
            <div>
              <label for={`${id}-${i()}`}>Colour of {partWords(part).replace(/^T/, 't')}</label>
              <select
                id={`${id}-${i()}`}
                onChange={({ currentTarget }) =>
                  props.state.paint(part, STRING_COLOURS.find((name) => name === currentTarget.value) ?? null)
                }
              >
                <option value="">as on the plate</option>
                <For each={STRING_COLOURS}>
                  {(name: StringColour) => (
                    <option value={name} selected={props.state.colourOf(part) === name}>
                      {name}
                    </option>
                  )}
                </For>
              </select>
            </div>
          )}
        </For>
      </div>
    </div>
  );
}
