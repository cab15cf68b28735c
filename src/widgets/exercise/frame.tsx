import { createMemo, createSignal, createUniqueId, For, type JSX, onCleanup, onMount, Show } from 'solid-js';
import type { FieldOf, JudgedOf, JudgeOptions, KindName, Level, OptionsOf, ProblemOf } from '../../solver/exercises/contract.ts';
import type { PlanInput } from '../../solver/plan.ts';
import { type Entry, loadAnswer, saveAnswer } from '../../store/answers.ts';
import { ownReading, subscribeReading } from '../../store/reading.ts';
import { outcomeWords } from '../../words/exercises/verdict-words.ts';
import { type Keeping, storageWords } from '../../words/storage-words.ts';
import type { Explained, HelpBoard, HelpFor } from './help.ts';
import { Question, Working } from './question.tsx';
import type { Entered, KindView } from './view.ts';

export interface ExerciseProps<K extends KindName> {
  /** Stable id in the workbook: progress and addresses go by it. */
  id: string;
  level: Level;
  options: OptionsOf<K>;
  /** Figures the page was built with. */
  seed: string;
}

/** The learner's own figures, as far as an exercise takes them. */
const ownOptions = (own: PlanInput): object => ({
  width: own.width,
  capacity: own.capacity,
  maxBundle: own.maxBundle,
  oddMethod: own.oddMethod,
  startSide: own.startSide,
  height: own.height,
  openingStep: own.openingStep,
  closingStep: own.closingStep,
  closingBundle: own.closingBundle,
});

/** The frame that every kind of exercise stands in: question, entry, check, hints, worked solution, another like it. */
export function ExerciseFrame<K extends KindName>(props: ExerciseProps<K> & { view: KindView<K> }): JSX.Element {
  const { view, id } = props;
  const { Entry } = view;
  const said = createUniqueId();
  const [seed, setSeed] = createSignal(props.seed);
  const [own, setOwn] = createSignal<PlanInput | null>(null);
  const [entered, setEntered] = createSignal<Entered>({});
  const [judged, setJudged] = createSignal<JudgedOf<K> | null>(null);
  const [solved, setSolved] = createSignal(false);
  const [keeping, setKeeping] = createSignal<Keeping>({ kept: true });
  const [help, setHelp] = createSignal<HelpBoard | null>(null);

  const made = createMemo((): { problem: ProblemOf<K>; own: boolean } => {
    const mine = own();
    if (mine) {
      const tried = view.asking.make(seed(), props.level, { ...props.options, ...ownOptions(mine) } as OptionsOf<K>);
      if (!('ok' in tried)) return { problem: tried, own: true };
    }
    const drawn = view.asking.make(seed(), props.level, props.options);
    if ('ok' in drawn) throw new Error(`Exercise ${id}: its options can't be made into a problem.`);
    return { problem: drawn, own: false };
  });
  const problem = () => made().problem;
  /** Answers are kept by figures: own ones have no seed. */
  const keptAs = () => (made().own ? `own ${JSON.stringify(ownOptions(own() as PlanInput))}` : seed());
  const given = createMemo(
    (): Entered => (props.level === 'half-worked' ? ({ ...view.asking.fade(problem()).given } as Entered) : {}),
  );
  const whole = (): Entered => ({ ...entered(), ...given() });

  /** Brings back what was entered for these figures, and judges it again if it had been checked. */
  const bringBack = () => {
    const { value, keeping: kept } = loadAnswer(id, keptAs());
    setEntered(value.entered);
    setSolved(value.solved);
    setKeeping(kept);
    setHelp(null);
    setJudged(() => (value.checked ? view.asking.judge(problem(), view.answer(whole())) : null));
    if (value.checked && judged()?.outcome === 'not-right') void explain();
  };

  onMount(() => {
    const wanted = new URLSearchParams(location.search).get(id);
    if (wanted) setSeed(wanted);
    const follow = () => {
      const before = keptAs();
      setOwn(wanted ? null : ownReading());
      if (keptAs() !== before) bringBack();
    };
    setOwn(wanted ? null : ownReading());
    bringBack();
    onCleanup(subscribeReading(follow));
  });

  const keep = (change: Parameters<typeof saveAnswer>[2]) => setKeeping(saveAnswer(id, keptAs(), change));

  /** Help is fetched when it is first asked for. */
  const board = async (): Promise<HelpFor<K>> => {
    const { helpFor } = await import('./help.ts');
    return helpFor(view.kind);
  };
  async function explain(): Promise<void> {
    const asked = problem();
    const { explain: explained } = await board();
    if (asked === problem()) setHelp((before) => ({ ...before, ...explained(asked, view.answer(whole()), judged()?.first ?? null) }));
  }
  async function hint(): Promise<void> {
    const asked = problem();
    const { hint: next } = await board();
    if (asked !== problem()) return;
    setHelp((before) => next(asked, before, judged()?.first ?? null));
    keep({ hints: Math.min(3, (loadAnswer(id, keptAs()).value.hints ?? 0) + 1) });
  }
  async function solution(): Promise<void> {
    const asked = problem();
    const { solution: worked } = await board();
    if (asked !== problem()) return;
    setHelp((before) => ({ ...before, solution: worked(asked) }));
    keep({ solutionSeen: true });
  }

  const enter = (field: string, entry: Entry) => {
    setEntered({ ...entered(), [field]: entry });
    keep({ entered: { [field]: entry }, checked: false });
    // A verdict on what no longer stands there would mislead.
    const before = judged();
    if (before && field in before.fields) {
      const { [field as keyof typeof before.fields]: _, ...others } = before.fields;
      setJudged(() => ({ ...before, fields: others }) as JudgedOf<K>);
    }
    if (help()?.slips) setHelp({ ...help(), slips: undefined });
  };

  const check = (options?: JudgeOptions<FieldOf<K>>) => {
    const verdict = view.asking.judge(problem(), view.answer(whole()), options);
    setJudged(() => verdict);
    if (verdict.outcome === 'unreadable') return;
    const done = !options && verdict.outcome === 'right';
    keep({ checked: !options, ...(done ? { solved: true } : {}) });
    if (done) setSolved(true);
    if (verdict.outcome === 'not-right') void explain();
    else if (help()) setHelp({ ...help(), slips: undefined });
  };

  const another = () => {
    const next = /^\d+$/.test(seed()) ? String(Number(seed()) + 1) : '1';
    const address = new URL(location.href);
    address.searchParams.set(id, next);
    history.replaceState(history.state, '', address);
    setOwn(null);
    setSeed(next);
    bringBack();
  };

  return (
    <form
      class="exercise-form"
      data-solved={solved() ? '' : undefined}
      onSubmit={(event) => {
        event.preventDefault();
        check();
      }}
    >
      <Question problem={problem()} />
      <Entry
        id={id}
        problem={problem()}
        entered={entered()}
        given={given()}
        judged={judged()}
        onEnter={enter}
        onCheckField={(field) => check({ upTo: field as FieldOf<K> })}
      />
      <div class="exercise-buttons" data-needs-script>
        <button type="submit" data-kind="must-do">
          Check
        </button>
        <button type="button" onClick={() => void hint()} disabled={help()?.hintsDone}>
          Hint
        </button>
        <button type="button" onClick={() => void solution()}>
          Show the working
        </button>
        <button type="button" onClick={another}>
          Another like it
        </button>
      </div>
      <div class="exercise-say" id={said} role="status" aria-live="polite">
        <Show when={judged()}>
          {(verdict) => <p data-outcome={verdict().outcome}>{outcomeWords(problem(), verdict())}</p>}
        </Show>
        <Show when={help()?.slips}>
          {(slips) => (
            <div class="slips">
              <Show when={slips().say}>
                <p>{slips().say}</p>
              </Show>
              <For each={slips().slips}>
                {({ did, why, next }) => (
                  <p>
                    <strong>{did}</strong> {why} {next}
                  </p>
                )}
              </For>
            </div>
          )}
        </Show>
        <For each={help()?.hints ?? []}>{(text) => <p class="hint">{text}</p>}</For>
        <Show when={help()?.worked}>
          {(worked) => (
            <div class="worked">
              <p>{worked().says}</p>
              <Question problem={worked().problem} />
              <Working steps={worked().steps} />
            </div>
          )}
        </Show>
        <Show when={help()?.solution}>
          {(steps) => (
            <div class="worked">
              <p>The working, with these figures:</p>
              <Working steps={steps()} />
            </div>
          )}
        </Show>
        <Show when={!keeping().kept}>
          <p class="field-problem">{storageWords(keeping())}</p>
        </Show>
      </div>
      <Show when={help()?.followUp}>{(asked) => <FollowUp view={view} id={`${id}-case`} asked={asked()} onSettled={(found) => setHelp({ ...help(), ...found })} />}</Show>
    </form>
  );
}

/** The smallest case on which the slips that fit an answer differ: it decides between them. */
function FollowUp<K extends KindName>(props: {
  view: KindView<K>;
  id: string;
  asked: NonNullable<HelpBoard['followUp']>;
  onSettled: (found: Explained) => void;
}): JSX.Element {
  const { Entry } = props.view;
  const [entered, setEntered] = createSignal<Entered>({});
  const problem = () => props.asked.problem as ProblemOf<K>;
  const [unreadable, setUnreadable] = createSignal<JudgedOf<K> | null>(null);
  const settle = () => {
    const verdict = props.view.asking.judge(problem(), props.view.answer(entered()));
    if (verdict.outcome === 'unreadable') {
      setUnreadable(() => verdict);
      return;
    }
    const found = props.asked.settle(props.view.answer(entered()));
    setEntered({});
    setUnreadable(null);
    props.onSettled(found);
  };
  return (
    <fieldset class="follow-up">
      <legend>One more case tells which it was</legend>
      <Question problem={problem()} />
      <Entry
        id={props.id}
        problem={problem()}
        entered={entered()}
        given={{}}
        judged={unreadable()}
        onEnter={(field, entry) => setEntered({ ...entered(), [field]: entry })}
        onCheckField={settle}
      />
      <button type="button" onClick={settle}>
        Check this case
      </button>
    </fieldset>
  );
}
