import { createSignal, createUniqueId, For, type JSX, Show } from 'solid-js';
import { formatChart, parseChart } from '../../solver/chart-text.ts';
import { HEIGHTS } from '../../solver/outline.ts';
import { WIDTHS } from '../../solver/ranges.ts';
import { chartWords } from '../../words/chart-words.ts';
import { Choice } from '../choice.tsx';
import { WholeNumber } from '../whole-number.tsx';
import type { ChosenChart } from './use-chart.ts';
import type { Own } from './use-own.ts';

type From = 'index' | 'text' | 'size';
const FROM: Readonly<Record<From, string>> = {
  index: 'one from the workbook',
  text: 'my own, as text',
  size: 'no picture yet, only its size',
};

export interface ChartChoice {
  readonly id: string;
  readonly title: string;
  readonly width: number;
  readonly height: number;
}

interface Props {
  own: Own;
  charts: readonly ChartChoice[];
  chosen: ChosenChart;
}

/** Which picture: a chart of the workbook, pasted text, or only a width and a height. */
export function ChartForm(props: Props): JSX.Element {
  const { own } = props;
  const id = createUniqueId();
  const [from, setFrom] = createSignal<From | null>(null);
  const [text, setText] = createSignal<string | null>(null);
  const [width, setWidth] = createSignal<number | string | null>(null);
  const [height, setHeight] = createSignal<number | string | null>(null);

  const way = (): From => from() ?? own.figures().chart?.from ?? 'size';
  const pasted = () => {
    const kept = own.figures().chart;
    return text() ?? (kept?.from === 'text' ? kept.text : '');
  };
  const read = () => (pasted().trim() === '' ? null : parseChart(pasted()));
  const mistake = () => {
    const found = read();
    return found && !found.ok ? chartWords(found.problem) : undefined;
  };

  const choose = (chart: ChartChoice) =>
    own.change({ chart: { from: 'index', id: chart.id }, width: chart.width, height: chart.height });
  const paste = (entered: string) => {
    setText(entered);
    const found = read();
    if (found?.ok)
      own.change({ chart: { from: 'text', text: entered }, width: found.chart.width, height: found.chart.height });
  };
  const size = (field: 'width' | 'height', value: number | string) => {
    (field === 'width' ? setWidth : setHeight)(value);
    if (!own.problemOf({ [field]: value })) own.change({ [field]: value, chart: null });
  };
  const change = (next: From) => {
    setFrom(next);
    if (next === 'size' && own.figures().chart) own.change({ chart: null });
  };

  return (
    <>
      <Choice
        legend="The picture is"
        choices={['index', 'text', 'size']}
        value={way()}
        words={(each) => FROM[each]}
        onValue={change}
      />
      <Show when={way() === 'index'}>
        <label for={`${id}-index`}>Chart</label>
        <select
          id={`${id}-index`}
          onChange={(event) => {
            const chart = props.charts.find((each) => each.id === event.currentTarget.value);
            if (chart) choose(chart);
          }}
        >
          <option value="" disabled selected={own.figures().chart?.from !== 'index'}>
            Choose a chart
          </option>
          <For each={props.charts}>
            {(chart) => {
              const chosen = () => {
                const kept = own.figures().chart;
                return kept?.from === 'index' && kept.id === chart.id;
              };
              return (
                <option value={chart.id} selected={chosen()}>
                  {chart.title}, {chart.width} × {chart.height}
                </option>
              );
            }}
          </For>
        </select>
      </Show>
      <Show when={way() === 'text'}>
        <label for={`${id}-text`}>Chart as text</label>
        <textarea
          id={`${id}-text`}
          rows="12"
          spellcheck={false}
          class="chart-text"
          value={pasted()}
          aria-invalid={mistake() ? 'true' : undefined}
          aria-describedby={`${id}-text-say`}
          onInput={(event) => paste(event.currentTarget.value)}
        />
        <p
          id={`${id}-text-say`}
          classList={{ 'field-problem': Boolean(mistake()), note: !mistake() }}
          aria-live="polite"
        >
          <Show
            when={mistake()}
            fallback={
              read()?.ok
                ? 'This text is a chart, and the plan below uses it.'
                : 'One line for the title, one for each colour, an empty line, and then the rows, the one at the ring first. Each chart of the index can be copied as text.'
            }
          >
            {mistake()} The plan below still shows the last chart that could be read.
          </Show>
        </p>
        <Show when={pasted().trim() === '' && props.chosen.chart()}>
          {(chart) => (
            <button type="button" onClick={() => paste(formatChart(chart()))}>
              Begin with the chart shown below
            </button>
          )}
        </Show>
      </Show>
      <Show when={way() === 'size'}>
        <div class="fields">
          <WholeNumber
            label="Wide"
            unit="columns"
            value={width() ?? own.figures().width}
            range={WIDTHS}
            problem={width() === null ? undefined : own.problemOf({ width: width() as number })}
            onValue={(value) => size('width', value)}
          />
          <WholeNumber
            label="High"
            unit="rows"
            value={height() ?? own.figures().height}
            range={HEIGHTS}
            problem={height() === null ? undefined : own.problemOf({ height: height() as number })}
            onValue={(value) => size('height', value)}
          />
        </div>
      </Show>
      <Show when={props.chosen.problem()}>
        <p class="field-problem">{props.chosen.problem()}</p>
      </Show>
    </>
  );
}
