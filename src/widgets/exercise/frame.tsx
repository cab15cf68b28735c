import { createSignal, type JSX, onCleanup, onMount, Show } from 'solid-js';
import type {
  FieldOf,
  JudgedOf,
  JudgeOptions,
  KindName,
  Level,
  OptionsOf,
  ProblemOf,
} from '../../solver/exercises/contract.ts';
import { seedIn } from '../../solver/exercises/sheet-code.ts';
import type { PlanInput } from '../../solver/plan.ts';
import { type Entry, loadAnswer, saveAnswer } from '../../store/answers.ts';
import { TOLD, type Told } from '../../store/progress/told.ts';
import { ownReading, subscribeReading } from '../../store/reading.ts';
import type { QuestionWords } from '../../words/exercises/question-words.ts';
import type { Keeping } from '../../words/storage-words.ts';
import { createStorageWords } from '../storage-say.ts';
import { Working, type WorkingLine } from '../working-list.tsx';
import type { HelpBoard } from './help.ts';
import { verdicts } from './later.ts';
import { Question } from './question.tsx';
import type { Entered, KindView } from './view.ts';

export interface ExerciseProps<K extends KindName> {
  /** Stable id in the workbook: progress and addresses go by it. */
  id: string;
  level: Level;
  options: OptionsOf<K>;
  /** Figures the page was built with: their seed, the problem, its question, and what a half-worked form gives. */
  seed: string;
  problem: ProblemOf<K>;
  question: QuestionWords;
  given: Entered;
  /** The working of these figures without the step that gives the answer, for a half-worked form. */
  lines: readonly WorkingLine[];
}

/** What is asked at the moment. */
interface Asked<K extends KindName> {
  readonly problem: ProblemOf<K>;
  readonly question: QuestionWords;
  readonly given: Entered;
  readonly seed: string;
  /** The learner's own figures, where the problem is made of them. */
  readonly own: object | null;
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
export function ExerciseFrame<K extends KindName>(frame: { asked: ExerciseProps<K>; view: KindView<K> }): JSX.Element {
  const { asked: props, view } = frame;
  const { id } = props;
  const { Entry } = view;
  let say: HTMLDivElement | undefined;
  let form: HTMLFormElement | undefined;
  const built: Asked<K> = {
    problem: props.problem,
    question: props.question,
    given: props.given,
    seed: props.seed,
    own: null,
  };
  const [asked, setAsked] = createSignal(built);
  /** Whether the figures that are wanted stand there; until then the page may hide those it was built with. */
  const [ready, setReady] = createSignal(false);
  const [entered, setEntered] = createSignal<Entered>({});
  const [judged, setJudged] = createSignal<JudgedOf<K> | null>(null);
  const [solved, setSolved] = createSignal(false);
  const [keeping, setKeeping] = createSignal<Keeping>({ kept: true });
  const [help, setHelp] = createSignal<HelpBoard | null>(null);
  /** What shows the help; it comes with the first of it. */
  const [boardParts, setBoardParts] = createSignal<Pick<
    typeof import('./help-board.tsx'),
    'Board' | 'FollowUp'
  > | null>(null);
  /** The working up to the figure asked for, where nothing of the answer itself can be given. */
  const [lines, setLines] = createSignal<readonly WorkingLine[]>(props.lines);
  /** The learner reads with own figures that make no problem here. */
  const [unsuited, setUnsuited] = createSignal(false);
  const sayNotKept = createStorageWords(keeping);

  const problem = () => asked().problem;
  const given = () => asked().given;
  const answer = () => view.answer({ ...entered(), ...given() }, given());
  /** Answers are kept by figures: own ones have no seed. */
  const keptAs = () => (asked().own ? `own ${JSON.stringify(asked().own)}` : asked().seed);

  /** Asks with these figures. Those the page was built with are there; for others the maker is fetched. */
  async function ask(seed: string, reading: PlanInput | null): Promise<void> {
    const own = reading && ownOptions(reading);
    setUnsuited(false);
    const missed = props.level === 'half-worked' ? loadAnswer('missed', view.kind).value.entered['field'] : undefined;
    if (!own && seed === built.seed && typeof missed !== 'string') {
      setAsked(built);
      return;
    }
    const { sheetFor } = await import('./sheets.ts');
    const sheet = sheetFor(view.kind, props.level, props.options);
    const made = (own && sheet.make(seed, own)) ?? null;
    setUnsuited(own !== null && made === null);
    const next = made ?? (seed === built.seed ? built.problem : sheet.make(seed));
    if (next === null) throw new Error(`Exercise ${id}: its options can't be made into a problem.`);
    setAsked({
      problem: next,
      question: await sheet.question(next),
      given: sheet.given(next, missed as FieldOf<K> | undefined),
      seed,
      own: made && own,
    });
  }

  /** Brings back what was entered and shown for these figures, and judges it again if it had been checked. */
  const bringBack = async () => {
    const { value, keeping: kept } = loadAnswer(id, keptAs());
    const before = problem();
    if (value.checked) await view.ready();
    if (before !== problem()) return;
    setEntered(value.entered);
    setSolved(value.solved);
    setKeeping(kept);
    setHelp(null);
    setLines(props.lines);
    const otherFigures = props.lines.length > 0 && problem() !== built.problem;
    const verdict = value.checked ? view.judge(problem(), answer()) : null;
    setJudged(() => verdict);
    const wrong = verdict?.outcome === 'not-right';
    if (wrong || value.hints > 0 || value.solutionSeen || otherFigures)
      void showAgain(wrong, value.hints, value.solutionSeen, otherFigures);
  };
  /** What was shown before the page was left, in the order of the board. */
  async function showAgain(wrong: boolean, hints: number, seen: boolean, otherFigures: boolean): Promise<void> {
    const shown = problem();
    if (wrong) await explain();
    for (let count = 0; count < hints; count += 1) await giveHint();
    if (seen) await giveSolution();
    if (!otherFigures) return;
    const { partOf } = await import('./working.ts');
    const part = await partOf(view.kind, shown);
    if (shown === problem()) setLines(part);
  }

  let awake = false;
  onMount(() => {
    // What was typed before the script arrived counts.
    const typed = Object.entries(entered());
    awake = true;
    const wanted = seedIn(location.search, id);
    const follow = async () => {
      const before = keptAs();
      await ask(wanted ?? built.seed, wanted ? null : ownReading());
      if (keptAs() !== before) await bringBack();
    };
    void follow().then(async () => {
      await bringBack();
      setReady(true);
      for (const [field, entry] of typed) enter(field, entry);
    });
    onCleanup(subscribeReading(() => void follow()));
  });

  const keep = (change: Parameters<typeof saveAnswer>[2]) => setKeeping(saveAnswer(id, keptAs(), change));

  /**
   * Help is fetched when it is first asked for, one request after the other, since the next hint follows from the last;
   * what comes too late, for figures that are gone, is not shown.
   */
  let turn: Promise<unknown> = Promise.resolve();
  function withHelp<Part>(
    part: Promise<Part>,
    use: (part: Part, asked: ProblemOf<K>) => HelpBoard | Promise<HelpBoard>,
  ): Promise<boolean> {
    const before = problem();
    const mine = turn.then(async () => {
      const shown = await use(await part, before);
      const { Board, FollowUp } = await import('./help-board.tsx');
      if (before !== problem()) return false;
      setBoardParts({ Board, FollowUp });
      setHelp({ ...help(), ...shown });
      return true;
    });
    turn = mine.catch(() => {});
    return mine;
  }
  const first = () => judged()?.first ?? null;
  const explain = (options?: JudgeOptions<FieldOf<K>>) =>
    withHelp(import('./slips.ts'), ({ slipsFor }, problem) =>
      slipsFor(view.kind, view.judge).explain(problem, answer(), first(), options),
    );
  const giveHint = () =>
    withHelp(import('./hints.ts'), ({ nextHint }, problem) => {
      const like =
        problem === built.problem ? (document.getElementById(id)?.querySelector('[data-like-it]') ?? null) : null;
      return nextHint(view.kind, problem, help(), first(), like);
    });
  const giveSolution = () =>
    withHelp(import('./working.ts'), async ({ workingOf }, problem) => ({
      solution: await workingOf(view.kind, problem),
    }));
  const hint = async () => {
    if (await giveHint()) keep({ hints: Math.min(3, loadAnswer(id, keptAs()).value.hints + 1) });
  };
  const solution = async () => {
    if (await giveSolution()) keep({ solutionSeen: true });
  };

  const enter = (field: string, entry: Entry) => {
    setEntered({ ...entered(), [field]: entry });
    if (!awake) return;
    keep({ entered: { [field]: entry }, checked: false });
    // A verdict on what no longer stands there would mislead.
    const before = judged();
    if (view.judgedWhole) setJudged(null);
    else if (before && field in before.fields) {
      const { [field as keyof typeof before.fields]: _, ...others } = before.fields;
      setJudged(() => ({ ...before, fields: others }) as JudgedOf<K>);
    }
    if (help()?.slips) setHelp({ ...help(), slips: undefined, followUp: undefined });
  };

  /** Tells the page of a try, or of the slips behind it; whoever keeps progress listens. */
  const tell = (told: Partial<Told>) => {
    const detail = { exercise: id, kind: view.kind, level: props.level, seed: keptAs(), problem: problem(), ...told };
    form?.dispatchEvent(new CustomEvent(TOLD, { bubbles: true, detail }));
  };
  const tellSlips = () => {
    const slips = help()?.slips?.named;
    if (slips) tell({ slips });
  };

  const check = (options?: JudgeOptions<FieldOf<K>>) => {
    void view.ready().then(() => judgeNow(options));
  };
  const judgeNow = (options?: JudgeOptions<FieldOf<K>>) => {
    const entry = answer();
    const verdict = view.judge(problem(), entry, options);
    setJudged(() => verdict);
    if (verdict.outcome === 'unreadable') return;
    // Enter in the last field checks all of them.
    const done = verdict.outcome === 'right' && view.judge(problem(), entry).outcome === 'right';
    const { hints, solutionSeen } = loadAnswer(id, keptAs()).value;
    if (done || verdict.outcome === 'not-right') tell({ outcome: verdict.outcome, aided: hints > 0 || solutionSeen });
    keep({ checked: !options || done, ...(done ? { solved: true } : {}) });
    if (done) setSolved(true);
    if (verdict.outcome === 'not-right') {
      const field = view.missed ? view.missed(problem(), verdict) : verdict.first;
      if (!options && field !== null) saveAnswer('missed', view.kind, { entered: { field } });
      void explain(options).then(tellSlips);
    } else if (help()) setHelp({ ...help(), slips: undefined, followUp: undefined });
  };

  const another = () => {
    const { seed } = asked();
    const next = /^\d+$/.test(seed) ? String(Number(seed) + 1) : '1';
    const address = new URL(location.href);
    address.searchParams.set(id, next);
    history.replaceState(history.state, '', address);
    void ask(next, null).then(bringBack);
  };

  return (
    <form
      ref={form}
      class="exercise-form"
      data-asked={ready() ? asked().seed : undefined}
      data-solved={solved() ? '' : undefined}
      onSubmit={(event) => {
        event.preventDefault();
        check();
      }}
    >
      <Question words={asked().question} />
      <Show when={unsuited()}>
        <p class="note">Your own piece does not suit this exercise. It keeps the workbook’s figures.</p>
      </Show>
      <Show when={lines().length > 0}>
        <Working steps={lines()} />
      </Show>
      <Entry
        id={id}
        problem={problem()}
        question={asked().question}
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
        <button
          type="button"
          onClick={() => {
            if (!help()?.hintsDone) void hint();
          }}
          aria-disabled={help()?.hintsDone ?? false}
        >
          Hint
        </button>
        <Show when={view.showsWorking?.(entered()) ?? true}>
          <button type="button" onClick={() => void solution()}>
            Show the working
          </button>
        </Show>
        <button type="button" onClick={another}>
          Another like it
        </button>
      </div>
      <div class="exercise-say" ref={say} tabindex="-1" role="status" aria-live="polite">
        <Show when={judged()}>
          {(verdict) => (
            <p data-outcome={verdict().outcome}>
              {view.outcome?.(verdict()) ?? verdicts.part()?.outcomeWords(problem(), verdict())}
            </p>
          )}
        </Show>
        <Show when={boardParts()}>{(parts) => parts().Board({ board: help })}</Show>
        <Show when={sayNotKept()}>
          <p class="field-problem">{sayNotKept()}</p>
        </Show>
      </div>
      <Show when={help()?.followUp}>
        {(open) => {
          const FollowUp = boardParts()?.FollowUp;
          return FollowUp ? (
            <FollowUp
              view={view}
              id={`${id}-case`}
              asked={open()}
              onSettled={(found) => {
                // The case goes, and the focus with it: it moves to what is said of it.
                if (!found.followUp) say?.focus();
                setHelp({ ...help(), ...found });
                tellSlips();
              }}
            />
          ) : null;
        }}
      </Show>
    </form>
  );
}
