import { type Component, createMemo, For, type JSX, Show } from 'solid-js';
import { qrSvg } from '../../figures/qr.ts';
import { type SheetCode, sheetText } from '../../solver/exercises/sheet-code.ts';
import { ACT_NAMES } from '../../words/exercises/act-names.ts';
import { SOME_MARKED } from '../../words/exercises/some-marked.ts';
import { Question } from '../exercise/question.tsx';
import type { EntryProps } from '../exercise/view.ts';
import { Working } from '../working-list.tsx';
import { type Asked, makeSheet, type Sheet } from './make-sheets.ts';
import { PAPER } from './paper-views.ts';
import type { SheetExercise, SheetsShow } from './sheets-form.tsx';

interface Props {
  lesson: string;
  title: string;
  order: number;
  exercises: readonly SheetExercise[];
  code: string;
  /** 0: one sheet for the room. */
  learners: number;
  show: SheetsShow;
}

const sheetName = ({ code, learner }: SheetCode): string =>
  learner === null ? `Class ${code}, for the whole room` : `Class ${code}, sheet ${learner}`;

/** Sheets to print, or the key to all of them. */
export function SheetsView(props: Props): JSX.Element {
  const codes = (): readonly SheetCode[] =>
    props.learners === 0
      ? [{ code: props.code, learner: null }]
      : Array.from({ length: props.learners }, (_, index) => ({ code: props.code, learner: index + 1 }));
  const sheets = createMemo(() => codes().map((code) => makeSheet(code, props.exercises)));
  const address = (code: SheetCode): string => {
    const to = new URL(props.lesson, location.href);
    to.searchParams.set('sheet', sheetText(code));
    return to.href;
  };
  const heading = () => `Lesson ${props.order}: ${props.title}`;
  return (
    <Show when={props.show === 'sheets'} fallback={<Key heading={heading()} code={props.code} sheets={sheets()} />}>
      <For each={sheets()}>{(sheet) => <Paper heading={heading()} address={address(sheet.sheet)} sheet={sheet} />}</For>
    </Show>
  );
}

/** One learner's sheet. */
function Paper(props: { heading: string; address: string; sheet: Sheet }): JSX.Element {
  const place = () => String(props.sheet.sheet.learner ?? 0);
  return (
    <article class="paper" aria-label={sheetName(props.sheet.sheet)} style={{ page: `sheet-${place()}` }}>
      {/* A sheet is several pages, and a pile of them may fall: each says whose it is. */}
      <style>{`@page sheet-${place()}{@top-right{content:"${sheetName(props.sheet.sheet)}"}}`}</style>
      <header class="paper-head">
        <div>
          <h2>{props.heading}</h2>
          <p>{sheetName(props.sheet.sheet)}</p>
          <p class="paper-name">Name</p>
          <p class="note">
            This sheet may be copied. The code opens the same exercises on a phone, where answers are checked.
          </p>
        </div>
        <div class="paper-code">
          <div innerHTML={qrSvg(props.address, 'QR code that opens these exercises')} />
          <p>
            {/* An address breaks between its parts, and not within a word. */}
            <For each={props.address.split(/(?<=\/)(?!\/)/)}>
              {(part) => (
                <>
                  {part}
                  <wbr />
                </>
              )}
            </For>
          </p>
        </div>
      </header>
      <For each={props.sheet.asked}>
        {(asked) => (
          <section class="paper-exercise">
            <h3>Exercise {asked.number}</h3>
            <Question words={asked.question} />
            <Show when={asked.kind === 'row'}>
              <p>Choose from: {Object.values(ACT_NAMES).join(', ')}.</p>
            </Show>
            <Show when={asked.kind === 'mark' && 'cells' in asked.given}>
              <p>{SOME_MARKED}</p>
            </Show>
            {/* Nothing here answers to the hand, and all of it can be heard. */}
            <fieldset disabled>
              <Entry asked={asked} id={`${asked.id}-${place()}`} />
            </fieldset>
          </section>
        )}
      </For>
      <div class="paper-cases">
        <For each={props.sheet.worked}>
          {(worked) => (
            <section class="paper-worked">
              <h3>A case like these, worked through</h3>
              <Question words={worked.question} />
              <Show when={worked.svg}>{(svg) => <div class="paper-plate" innerHTML={svg()} />}</Show>
              <Working steps={worked.steps} />
            </section>
          )}
        </For>
      </div>
    </article>
  );
}

const nothing = (): void => {};

function Entry(props: { asked: Asked; id: string }): JSX.Element {
  // One exercise is of one kind, so its view never changes.
  const OfKind = PAPER[props.asked.kind].Entry as Component<EntryProps<'sum'>>;
  return (
    <OfKind
      id={props.id}
      problem={props.asked.problem as EntryProps<'sum'>['problem']}
      question={props.asked.question}
      entered={{}}
      given={props.asked.given}
      judged={null}
      onEnter={nothing}
      onCheckField={nothing}
    />
  );
}

/** What is right on every sheet, exercise by exercise. */
function Key(props: { heading: string; code: string; sheets: readonly Sheet[] }): JSX.Element {
  const first = () => props.sheets[0]?.asked ?? [];
  const labelsOf = (asked: Asked | undefined) => asked?.answers.map(({ label }) => label) ?? [];
  /** Columns of a table, where every sheet asks for the same figures. */
  const columns = (at: number): readonly string[] | null => {
    const labels = labelsOf(first()[at]);
    const all = props.sheets.every(({ asked }) => labelsOf(asked[at]).join() === labels.join());
    return all ? labels : null;
  };
  const sameAsk = (at: number): boolean =>
    props.sheets.every(({ asked }) => asked[at]?.question.ask === first()[at]?.question.ask);
  return (
    <article class="paper key" aria-label={`Key to class ${props.code}`}>
      <header class="paper-head">
        <div>
          <h2>Key: {props.heading}</h2>
          <p>Class {props.code}</p>
        </div>
      </header>
      <For each={first()}>
        {(asked, at) => (
          <section class="paper-exercise">
            <h3>Exercise {asked.number}</h3>
            <Show when={sameAsk(at())}>
              <p>{asked.question.ask}</p>
            </Show>
            <section class="key-scroll" tabindex="0" aria-label={`Answers to exercise ${asked.number}`}>
              <table>
                <thead>
                  <tr>
                    <th scope="col">Sheet</th>
                    <Show when={!sameAsk(at())}>
                      <th scope="col">What is asked</th>
                    </Show>
                    <For each={columns(at()) ?? ['What is right']}>{(label) => <th scope="col">{label}</th>}</For>
                  </tr>
                </thead>
                <tbody>
                  <For each={props.sheets}>
                    {({ sheet, asked }) => (
                      <tr>
                        <th scope="row">{sheet.learner ?? 'room'}</th>
                        <Show when={!sameAsk(at())}>
                          <td>{asked[at()]?.question.ask}</td>
                        </Show>
                        <Show
                          when={columns(at())}
                          fallback={
                            <td>{asked[at()]?.answers.map(({ label, value }) => `${label}: ${value}`).join('; ')}</td>
                          }
                        >
                          <For each={asked[at()]?.answers}>{({ value }) => <td>{value}</td>}</For>
                        </Show>
                      </tr>
                    )}
                  </For>
                </tbody>
              </table>
            </section>
          </section>
        )}
      </For>
    </article>
  );
}
