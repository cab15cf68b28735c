import { createSignal, For, type JSX, Show } from 'solid-js';
import { calibrate, type Swatch } from '../../solver/thread/calibrate.ts';
import { THREAD_KINDS, type ThreadKind } from '../../solver/thread/thread.ts';
import { swatchPartName } from '../../words/fields.ts';
import { problemWords } from '../../words/problems.ts';
import { Choice } from '../choice.tsx';
import { Measure } from '../measure.tsx';
import { useUnits } from '../units.ts';
import type { Own } from './use-own.ts';

const KINDS: Readonly<Record<ThreadKind, string>> = { soft: 'soft floss', firm: 'firm or waxed cord' };

const SWATCH: readonly { readonly part: keyof Swatch; readonly label: string; readonly unit?: string }[] = [
  { part: 'columns', label: 'Columns of the swatch', unit: 'columns' },
  { part: 'width', label: 'Their width' },
  { part: 'rows', label: 'Rows of the swatch', unit: 'rows' },
  { part: 'height', label: 'Their height' },
  { part: 'knots', label: 'Knots you timed', unit: 'knots' },
  { part: 'used', label: 'Leading string they used' },
  { part: 'seconds', label: 'Time they took', unit: 'seconds' },
];

/** The cord, and the swatch whose figures take the place of estimates. */
export function CordForm(props: { own: Own }): JSX.Element {
  const { own } = props;
  const units = useUnits();
  const [swatch, setSwatch] = createSignal<Swatch>({});
  const measured = () => calibrate(swatch());
  const enter = (part: keyof Swatch, value: number | null) => {
    setSwatch({ ...swatch(), [part]: value });
    const found = measured();
    if (!found.ok) return;
    const { ok: _, ...figures } = found;
    own.change({
      cord: {
        measured:
          Object.keys(figures).length > 0
            ? { ...own.figures().cord.measured, ...figures }
            : own.figures().cord.measured,
      },
    });
  };
  const backToEstimates = () => {
    setSwatch({});
    own.change({ cord: { measured: null } });
  };
  const refused = () => {
    const found = measured();
    return found.ok ? undefined : problemWords(found.problem, { units: units() });
  };
  return (
    <>
      <Choice
        legend="The cord is"
        choices={THREAD_KINDS}
        value={own.figures().cord.kind}
        words={(kind) => KINDS[kind]}
        onValue={(kind) => own.change({ cord: { kind } })}
      />
      <div class="fields">
        <Measure
          label="Cord diameter"
          value={own.figures().cord.diameter}
          hint="Wind ten turns round a pencil, side by side, and divide their width by ten."
          problemOf={(value) => own.problemOf({ cord: { diameter: value as number } })}
          onValue={(diameter) => diameter !== null && own.change({ cord: { diameter } })}
        />
        <Measure
          label="The bar is thick"
          value={own.figures().ring.barThickness}
          problemOf={(value) => own.problemOf({ ring: { barThickness: value as number } })}
          onValue={(barThickness) => barThickness !== null && own.change({ ring: { barThickness } })}
        />
        <Measure
          label="One length of leading string"
          value={own.figures().cord.workingLength}
          hint="As long as you like to work with, or as it comes on the card."
          problemOf={(value) => own.problemOf({ cord: { workingLength: value as number } })}
          onValue={(workingLength) => workingLength !== null && own.change({ cord: { workingLength } })}
        />
      </div>
      <details>
        <summary>I have tied a swatch</summary>
        <p>
          A swatch is a small strip tied with your own cord and your own hand. Enter what you measured. Leave the rest
          empty.
        </p>
        <div class="fields">
          <For each={SWATCH}>
            {({ part, label, unit }) => (
              <Measure
                label={label}
                unit={unit}
                value={swatch()[part] ?? null}
                problemOf={(value) => {
                  const found = calibrate({ [part]: value });
                  return found.ok
                    ? undefined
                    : problemWords(found.problem, {
                        name: swatchPartName(part),
                        units: units(),
                        isLength: unit === undefined,
                      });
                }}
                onValue={(value) => enter(part, value)}
              />
            )}
          </For>
        </div>
        <Show when={refused()}>
          <p class="field-problem">{refused()}</p>
        </Show>
        <Show when={own.figures().cord.measured}>
          <p>
            Your swatch is used in this plan.{' '}
            <button type="button" onClick={backToEstimates}>
              Go back to estimates
            </button>
          </p>
        </Show>
      </details>
    </>
  );
}
