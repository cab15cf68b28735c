import { createEffect, createMemo, createSignal, type JSX, on, onCleanup, onMount } from 'solid-js';
import { HEIGHTS } from '../solver/outline.ts';
import { planPiece } from '../solver/plan.ts';
import { CAPACITIES, ODD_METHODS, SIDES, WIDTHS } from '../solver/ranges.ts';
import { ownPlanInput } from '../store/own-reading.ts';
import { loadPreferences, savePreferences, subscribePreferences } from '../store/preferences.ts';
import { readWith } from '../store/reading.ts';
import { choiceWord } from '../words/choices.ts';
import { problemWords } from '../words/problems.ts';
import { type Keeping, storageWords } from '../words/storage-words.ts';
import type { UnitSystem } from '../words/units.ts';
import { Choice } from './choice.tsx';
import type { OwnState } from './figures-switch.tsx';
import { useOwn } from './piece/use-own.ts';
import { WholeNumber } from './whole-number.tsx';

interface Props {
  /** How the page calls its worked example. */
  name: string;
  /** What the learner last chose on this page; null before they chose. */
  wanted: boolean | null;
  onState: (state: OwnState) => void;
}

type Size = 'capacity' | 'width' | 'height';

/** Puts the learner's figures into the page's prose and plates, or the example's back. */
async function applyToPage(mine: boolean): Promise<void> {
  const { applyReading } = await import('./apply-reading.ts');
  await applyReading(mine);
}

/** The learner's figures: the form in which they are entered, and the page that follows them. */
export function OwnSwitch(props: Props): JSX.Element {
  const own = useOwn();
  const [mine, setMine] = createSignal(false);
  const [units, setUnits] = createSignal<UnitSystem>('metric');
  const [choosing, setChoosing] = createSignal<Keeping>({ kept: true });
  const [draft, setDraft] = createSignal<Partial<Record<Size, number | string>>>({});
  const plan = createMemo(() => (own.entered() ? planPiece(ownPlanInput(own.figures())) : null));
  const keeping = () => (own.keeping().kept ? choosing() : own.keeping());
  const say = () => {
    const made = plan();
    const refused = made && !made.ok ? problemWords(made.problem) : '';
    const meanwhile = refused !== '' && mine() ? ` Until then the page shows ${props.name}.` : '';
    return refused + meanwhile + (keeping().kept ? '' : ` ${storageWords(keeping())}`);
  };

  onMount(() => {
    const follow = () => {
      const { value } = loadPreferences();
      setMine(value.figures === 'mine');
      setUnits(value.units);
      document.documentElement.dataset['units'] = value.units;
    };
    follow();
    onCleanup(subscribePreferences(follow));
  });
  createEffect(
    on(
      () => props.wanted,
      (wanted) => {
        if (wanted !== null) setChoosing(savePreferences({ figures: wanted ? 'mine' : 'example' }));
      },
    ),
  );
  createEffect(() => {
    const { capacity, width, height } = own.figures();
    props.onState({
      mine: mine(),
      short: own.entered() ? `: ${width} × ${height} on a bar of ${capacity}` : '',
      say: say(),
    });
  });
  createEffect((applied: boolean) => {
    const apply = mine() && plan()?.ok === true;
    readWith(apply ? ownPlanInput(own.figures()) : null);
    if (apply || applied) void applyToPage(apply);
    return apply;
  }, false);

  const shown = (field: Size) => draft()[field] ?? own.figures()[field];
  const problemOf = (field: Size) => {
    const value = draft()[field];
    return value === undefined ? undefined : own.problemOf({ [field]: value });
  };
  const enter = (field: Size, value: number | string) => {
    setDraft({ ...draft(), [field]: value });
    if (own.problemOf({ [field]: value })) return;
    // A chart drawn for another size is no longer this piece's chart.
    own.change(field === 'capacity' ? { capacity: value as number } : { [field]: value, chart: null });
  };
  return (
    <div class="own-figures">
      <div class="fields">
        <WholeNumber
          label="Your bar takes"
          unit="columns"
          value={shown('capacity')}
          range={CAPACITIES}
          problem={problemOf('capacity')}
          onValue={(value) => enter('capacity', value)}
        />
        <WholeNumber
          label="Your chart is wide"
          unit="columns"
          value={shown('width')}
          range={WIDTHS}
          problem={problemOf('width')}
          onValue={(value) => enter('width', value)}
        />
        <WholeNumber
          label="Your chart is high"
          unit="rows"
          value={shown('height')}
          range={HEIGHTS}
          problem={problemOf('height')}
          onValue={(value) => enter('height', value)}
        />
      </div>
      <Choice
        legend="Row 1 begins on the"
        choices={SIDES}
        value={own.figures().startSide}
        words={(side) => side}
        onValue={(startSide) => own.change({ startSide })}
      />
      <Choice
        legend="An odd string is"
        choices={ODD_METHODS}
        value={own.figures().oddMethod}
        words={choiceWord}
        onValue={(oddMethod) => own.change({ oddMethod })}
      />
      <Choice
        legend="Lengths in"
        choices={['metric', 'inches'] as const}
        value={units()}
        words={choiceWord}
        onValue={(each) => setChoosing(savePreferences({ units: each }))}
      />
      <p class="note">These figures stay on this device.</p>
    </div>
  );
}
