import { createSignal, type JSX, Show } from 'solid-js';
import { largestClosing, ROW_STEPS } from '../../solver/outline.ts';
import type { Fit } from '../../solver/piece.ts';
import { ODD_METHODS, SIDES } from '../../solver/ranges.ts';
import { choiceWord } from '../../words/choices.ts';
import { Choice } from '../choice.tsx';
import { WholeNumber } from '../whole-number.tsx';
import type { Own } from './use-own.ts';

type Closing = 'as-mounted' | 'full-width' | 'other';
const CLOSINGS: Readonly<Record<Closing, string>> = {
  'as-mounted': 'as it began',
  'full-width': 'at full width',
  other: 'with bundles of another size',
};

/** Start side, hands, what is done with an odd string, and how the piece opens and closes. */
export function WaysForm(props: { own: Own; fit: Fit | null }): JSX.Element {
  const { own } = props;
  const [draft, setDraft] = createSignal<Readonly<Record<string, number | string>>>({});
  const [other, setOther] = createSignal(false);
  const enter = (field: 'openingStep' | 'closingStep' | 'closingBundle', value: number | string) => {
    setDraft({ ...draft(), [field]: value });
    if (!own.problemOf({ [field]: value })) own.change({ [field]: value });
  };
  const problem = (field: 'openingStep' | 'closingStep' | 'closingBundle') => {
    const value = draft()[field];
    return value === undefined ? undefined : own.problemOf({ [field]: value });
  };
  const closing = (): Closing => {
    const bundle = own.figures().closingBundle;
    return other() || (bundle !== null && bundle > 1) ? 'other' : bundle === null ? 'as-mounted' : 'full-width';
  };
  return (
    <>
      <Choice
        legend="You lead with the"
        choices={['right', 'left'] as const}
        value={own.figures().handedness}
        words={(hand) => `${hand} hand`}
        onValue={(handedness) => own.change({ handedness })}
      />
      <Choice
        legend="Row 1 begins on the"
        choices={SIDES}
        value={own.figures().startSide}
        words={(side) => side}
        onValue={(startSide) => own.change({ startSide })}
      />
      <Show when={own.figures().width % 2 === 1}>
        <Choice
          legend="The odd string is"
          choices={ODD_METHODS}
          value={own.figures().oddMethod}
          words={choiceWord}
          onValue={(oddMethod) => own.change({ oddMethod })}
        />
      </Show>
      <Choice
        legend="The piece ends"
        choices={['as-mounted', 'full-width', 'other'] as const}
        value={closing()}
        words={(each) => CLOSINGS[each]}
        onValue={(each) => {
          setOther(each === 'other');
          if (each !== 'other') own.change({ closingBundle: each === 'full-width' ? 1 : null });
          else
            own.change({ closingBundle: own.figures().closingBundle ?? (props.fit ? largestClosing(props.fit) : 2) });
        }}
      />
      <div class="fields">
        <Show when={closing() === 'other'}>
          <WholeNumber
            label="Bundles in the last row"
            unit="strings"
            value={draft()['closingBundle'] ?? own.figures().closingBundle ?? 2}
            range={{ low: 1, high: props.fit ? largestClosing(props.fit) : 8 }}
            problem={problem('closingBundle')}
            onValue={(value) => enter('closingBundle', value)}
          />
        </Show>
        <WholeNumber
          label="One string out every"
          unit="rows"
          value={draft()['openingStep'] ?? own.figures().openingStep}
          range={ROW_STEPS}
          problem={problem('openingStep')}
          onValue={(value) => enter('openingStep', value)}
        />
        <WholeNumber
          label="One string in every"
          unit="rows"
          value={draft()['closingStep'] ?? own.figures().closingStep}
          range={ROW_STEPS}
          problem={problem('closingStep')}
          onValue={(value) => enter('closingStep', value)}
        />
      </div>
    </>
  );
}
