import { createMemo, createSignal, createUniqueId, type JSX, onCleanup, onMount, Show } from 'solid-js';
import { CAPACITIES, ODD_METHODS, SIDES, WIDTHS } from '../solver/fit.ts';
import { HEIGHTS } from '../solver/outline.ts';
import { planPiece } from '../solver/plan.ts';
import { loadOwnFigures, ownFiguresProblems, type OwnFiguresChange, saveOwnFigures } from '../store/own-figures.ts';
import { loadPreferences, savePreferences } from '../store/preferences.ts';
import { ownPlanInput, subscribeReading } from '../store/reading.ts';
import { choiceWord } from '../words/fields.ts';
import { problemWords } from '../words/problems.ts';
import { type Keeping, storageWords } from '../words/storage-words.ts';
import type { UnitSystem } from '../words/units.ts';
import { Choice } from './choice.tsx';
import { WholeNumber } from './whole-number.tsx';

interface Props {
  /** How the page calls its worked example. */
  name: string;
  example: { readonly capacity: number; readonly width: number; readonly height: number };
}

const KEPT: Keeping = { kept: true };

/** Puts the learner's figures into the page's prose and plates, or the example's back. */
async function applyToPage(mine: boolean): Promise<void> {
  const { applyReading } = await import('./apply-reading.ts');
  applyReading(mine);
}

/** The switch at the head of a lesson: read it with the worked example, or with one's own ring and chart. */
export function FiguresSwitch(props: Props): JSX.Element {
  const id = createUniqueId();
  const [mine, setMine] = createSignal(false);
  const [own, setOwn] = createSignal<ReturnType<typeof loadOwnFigures> | null>(null);
  const [open, setOpen] = createSignal(false);
  const [units, setUnits] = createSignal<UnitSystem>('metric');
  const [draft, setDraft] = createSignal<Record<string, number | string>>({});
  const [keeping, setKeeping] = createSignal<Keeping>(KEPT);

  const plan = createMemo(() => {
    const loaded = own();
    return loaded?.entered ? planPiece(ownPlanInput(loaded.value)) : null;
  });
  const shown = (field: 'capacity' | 'width' | 'height') => draft()[field] ?? own()?.value[field] ?? '';
  const problemOf = (field: 'capacity' | 'width' | 'height') => {
    const value = draft()[field];
    if (value === undefined) return undefined;
    const problem = ownFiguresProblems({ [field]: value } as OwnFiguresChange)[0];
    return problem && problemWords(problem);
  };

  onMount(() => {
    const follow = () => {
      setOwn(loadOwnFigures());
      const { figures, units: inUnits } = loadPreferences().value;
      const wanted = figures === 'mine';
      setUnits(inUnits);
      document.documentElement.dataset['units'] = inUnits;
      const can = plan()?.ok === true;
      const before = mine();
      setMine(wanted);
      if (wanted && can) void applyToPage(true);
      else if (before) void applyToPage(false);
    };
    follow();
    onCleanup(subscribeReading(follow));
  });

  const choose = (wanted: boolean) => {
    setKeeping(savePreferences({ figures: wanted ? 'mine' : 'example' }));
    if (wanted && !own()?.entered) setOpen(true);
  };
  const change = (part: OwnFiguresChange) => setKeeping(saveOwnFigures(part));
  const number = (field: 'capacity' | 'width' | 'height', value: number | string) => {
    setDraft({ ...draft(), [field]: value });
    const part = { [field]: value } as OwnFiguresChange;
    // A chart drawn for another size no longer is this piece's chart.
    if (ownFiguresProblems(part).length === 0) change(field === 'capacity' ? part : { ...part, chart: null });
  };
  const refused = () => {
    const made = plan();
    return made && !made.ok ? problemWords(made.problem) : '';
  };

  return (
    <div class="figures-switch" data-needs-script>
      <fieldset class="choice">
        <legend>Read with</legend>
        <label>
          <input type="radio" name={`${id}-with`} checked={!mine()} onChange={() => choose(false)} />
          <span>
            {props.name}: {props.example.width} × {props.example.height} on a bar of {props.example.capacity}
          </span>
        </label>
        <label>
          <input type="radio" name={`${id}-with`} checked={mine()} onChange={() => choose(true)} />
          <span>
            my figures
            <Show when={own()?.entered && own()}>
              {(loaded) => (
                <>
                  : {loaded().value.width} × {loaded().value.height} on a bar of {loaded().value.capacity}
                </>
              )}
            </Show>
          </span>
        </label>
      </fieldset>
      <details open={open()} onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>{own()?.entered ? 'Change my figures' : 'Enter my figures'}</summary>
        <div class="own-figures">
          <WholeNumber
            label="Your bar takes"
            unit="columns"
            value={shown('capacity')}
            {...CAPACITIES}
            problem={problemOf('capacity')}
            onValue={(value) => number('capacity', value)}
          />
          <WholeNumber
            label="Your chart is wide"
            unit="columns"
            value={shown('width')}
            {...WIDTHS}
            problem={problemOf('width')}
            onValue={(value) => number('width', value)}
          />
          <WholeNumber
            label="Your chart is high"
            unit="rows"
            value={shown('height')}
            {...HEIGHTS}
            problem={problemOf('height')}
            onValue={(value) => number('height', value)}
          />
          <Choice
            legend="Row 1 begins on the"
            choices={SIDES}
            value={own()?.value.startSide ?? 'left'}
            words={(side) => side}
            onValue={(startSide) => change({ startSide })}
          />
          <Choice
            legend="An odd string is"
            choices={ODD_METHODS}
            value={own()?.value.oddMethod ?? 'lone-string'}
            words={choiceWord}
            onValue={(oddMethod) => change({ oddMethod })}
          />
          <Choice
            legend="Lengths in"
            choices={['metric', 'inches'] as const}
            value={units()}
            words={choiceWord}
            onValue={(each) => setKeeping(savePreferences({ units: each }))}
          />
          <p class="note">These figures stay on this device.</p>
        </div>
      </details>
      <output class="figures-say" aria-live="polite">
        <Show when={refused()}>
          <p class="field-problem">
            {refused()}
            <Show when={mine()}> Until then the page shows {props.name}.</Show>
          </p>
        </Show>
        <Show when={!keeping().kept}>
          <p class="field-problem">{storageWords(keeping())}</p>
        </Show>
      </output>
    </div>
  );
}
