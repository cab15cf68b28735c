import { createMemo, createSignal, type JSX, Show } from 'solid-js';
import { CAPACITIES, MAX_BUNDLES } from '../../solver/ranges.ts';
import { bundleLimit } from '../../solver/thread/bundle-limit.ts';
import { capacityRange } from '../../solver/thread/capacity.ts';
import { pitches } from '../../solver/thread/pitch.ts';
import { safeFit } from '../../solver/thread/safe-fit.ts';
import { fitWords } from '../../words/fit-words.ts';
import { count } from '../../words/numbers.ts';
import { problemWords } from '../../words/problems.ts';
import { span } from '../../words/units.ts';
import { Choice } from '../choice.tsx';
import { Measure } from '../measure.tsx';
import { useUnits } from '../units.ts';
import { WholeNumber } from '../whole-number.tsx';
import type { Own } from './use-own.ts';

type Way = 'trial' | 'measure';
const WAYS: Readonly<Record<Way, string>> = {
  trial: 'I tied a trial row and counted',
  measure: 'I measured the bar and the cord',
};

/** How many columns the bar takes: by the trial row, which decides, or from bar width and cord, as a range. */
export function RingForm(props: { own: Own }): JSX.Element {
  const { own } = props;
  const units = useUnits();
  const [way, setWay] = createSignal<Way>('trial');
  const [capacity, setCapacity] = createSignal<number | string | null>(null);
  const [most, setMost] = createSignal<number | string | null>(null);
  const [gap, setGap] = createSignal<number | null>(null);

  const range = createMemo(() => {
    const { ring, cord } = own.figures();
    if (ring.barWidth === null) return null;
    const pitch = pitches({ diameter: cord.diameter, kind: cord.kind, measured: cord.measured ?? undefined });
    return pitch.ok ? capacityRange({ barWidth: ring.barWidth, columnPitch: pitch.column }) : pitch;
  });
  const safe = createMemo(() => {
    const found = range();
    const { width, maxBundle, oddMethod, startSide } = own.figures();
    return found?.ok ? safeFit({ capacity: found, width, maxBundle, oddMethod, startSide }) : null;
  });
  const passes = createMemo(() => {
    const millimetres = gap();
    if (millimetres === null) return null;
    const limit = bundleLimit({ gap: millimetres, diameter: own.figures().cord.diameter });
    return limit.ok ? limit : null;
  });

  /** Takes a figure that the page found; what stood half typed in the field goes. */
  const planWith = (found: number) => {
    setCapacity(null);
    own.change({ capacity: found });
  };
  const allow = (strands: number) => {
    setMost(null);
    own.change({ maxBundle: strands });
  };

  return (
    <>
      <Choice
        legend="How do you know?"
        choices={['trial', 'measure']}
        value={way()}
        words={(each) => WAYS[each]}
        onValue={setWay}
      />
      <Show when={way() === 'measure'}>
        <div class="fields">
          <Measure
            label="Bar, from end to end"
            value={own.figures().ring.barWidth}
            hint="Measure inside, where knots can lie."
            problemOf={(value) => own.problemOf({ ring: { barWidth: value as number } })}
            onValue={(barWidth) => own.change({ ring: { barWidth } })}
          />
        </div>
        <Show when={range()}>
          {(found) => {
            const good = () => {
              const value = found();
              return value.ok ? value : null;
            };
            const bad = () => {
              const value = found();
              return value.ok ? null : value.problem;
            };
            return (
              <div class="found">
                <Show
                  when={good()}
                  fallback={
                    <p class="field-problem">
                      {problemWords(bad() ?? { code: 'no-fit', values: {} }, { units: units() })}
                    </p>
                  }
                >
                  {(spread) => (
                    <>
                      <p>
                        An estimate: the bar takes {span(spread().low, spread().high)} columns, most likely{' '}
                        {spread().likely}. Before you cut, tie a trial row and count.
                      </p>
                      <Show when={spread().likely >= CAPACITIES.low}>
                        <button type="button" onClick={() => planWith(spread().likely)}>
                          Plan with {spread().likely}
                        </button>
                      </Show>
                      <Show when={safe()}>
                        {(plans) => {
                          const made = () => {
                            const value = plans();
                            return value.ok && !value.safe && value.low?.ok ? value.low.fit : null;
                          };
                          return (
                            <Show when={made()}>
                              {(low) => (
                                <div>
                                  <p>
                                    On the shortest bar of that range the plan for {spread().likely} would not lie flat.
                                    This one is safe on all of them: {fitWords(low())}.
                                  </p>
                                  <button type="button" onClick={() => planWith(spread().low)}>
                                    Plan safely, with {spread().low}
                                  </button>
                                </div>
                              )}
                            </Show>
                          );
                        }}
                      </Show>
                    </>
                  )}
                </Show>
              </div>
            );
          }}
        </Show>
      </Show>
      <div class="fields">
        <WholeNumber
          label="The bar takes"
          unit="columns"
          value={capacity() ?? own.figures().capacity}
          range={CAPACITIES}
          problem={capacity() === null ? undefined : own.problemOf({ capacity: capacity() as number })}
          onValue={(value) => {
            setCapacity(value);
            if (!own.problemOf({ capacity: value as number })) own.change({ capacity: value as number });
          }}
        />
        <WholeNumber
          label="A side bundle may have"
          unit="strands"
          value={most() ?? own.figures().maxBundle}
          range={MAX_BUNDLES}
          problem={most() === null ? undefined : own.problemOf({ maxBundle: most() as number })}
          onValue={(value) => {
            setMost(value);
            if (!own.problemOf({ maxBundle: value as number })) own.change({ maxBundle: value as number });
          }}
        />
      </div>
      <details>
        <summary>How many strands pass the ring?</summary>
        <Measure
          label="Gap between the end of the bar and the ring"
          value={gap()}
          hint="The narrowest place that the bundle has to pass."
          problemOf={(value) => {
            const limit = bundleLimit({ gap: value as number, diameter: own.figures().cord.diameter });
            return limit.ok ? undefined : problemWords(limit.problem, { units: units() });
          }}
          onValue={setGap}
        />
        <Show when={passes()}>
          {(limit) => (
            <p>
              With your cord, {count(limit().limit, 'strand')} pass.{' '}
              <Show when={limit().limit >= MAX_BUNDLES.low}>
                <button type="button" onClick={() => allow(limit().limit)}>
                  Use {limit().limit}
                </button>
              </Show>
            </p>
          )}
        </Show>
      </details>
    </>
  );
}
