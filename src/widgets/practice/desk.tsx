import { createEffect, createMemo, createSignal, For, type JSX, onCleanup, onMount, Show } from 'solid-js';
import type { Skill } from '../../solver/exercises/skills.ts';
import { SLIPS_KEPT } from '../../store/progress/compact.ts';
import { daysUntil } from '../../store/progress/day.ts';
import { gather, happeningOf } from '../../store/progress/gather.ts';
import { standingOf } from '../../store/progress/lesson-states.ts';
import { NOTES } from '../../store/progress/notes.ts';
import { pageName } from '../../store/progress/page-name.ts';
import { type Asked, inTurn, nextExercise, type Picked, sheetOf } from '../../store/progress/practice.ts';
import { thisProgress } from '../../store/progress/progress.ts';
import { eventsIn } from '../../store/progress/read-event.ts';
import { dueTimes } from '../../store/progress/schedule.ts';
import { chosenSkills, skillStates } from '../../store/progress/skill-states.ts';
import { recentSlips, type SlipSeen } from '../../store/progress/slip-states.ts';
import { keepStanding } from '../../store/progress/standing.ts';
import { askToStay } from '../../store/progress/stay.ts';
import { TOLD, type Told } from '../../store/progress/told.ts';
import { thisDevice } from '../../store/safe-storage.ts';
import { dueSentence, nextSentence } from '../../words/progress-words.ts';
import { SKILL_NAMES } from '../../words/skills.ts';
import { slipSeenWords } from '../../words/slip-names.ts';
import { createStorageWords } from '../storage-say.ts';
import { readAddress, writeAddress } from './address.ts';
import { FileOffer } from './file-offer.tsx';
import { KeepProgress } from './keep-progress.tsx';
import type { PracticeProps } from './practice.tsx';
import { prepare } from './prepare.tsx';
import { SkillChoice } from './skill-choice.tsx';
import { SkillList } from './skill-list.tsx';
import { SlipList } from './slip-list.tsx';

/** Exercises on a printed sheet. */
const ON_A_SHEET = 6;
/** Slips that are told at once. */
const SLIPS_SHOWN = 5;
const MINUTE = 60_000;

type Shown = { readonly picked: Picked; readonly sheet: () => JSX.Element };

/** The desk one practises at: what is due, one exercise after the other, how far each skill is, and the file to keep. */
export function Desk(props: PracticeProps): JSX.Element {
  let place: HTMLDivElement | undefined;
  let head: HTMLHeadingElement | undefined;
  let printer: HTMLButtonElement | undefined;
  gather(thisProgress);
  const [loaded, setLoaded] = createSignal(thisProgress.load());
  const [now, setNow] = createSignal(Date.now());
  const [shown, setShown] = createSignal<Shown | null>(null);
  const [answered, setAnswered] = createSignal(false);
  const [paper, setPaper] = createSignal<readonly (() => JSX.Element)[]>([]);
  const salt = pageName();
  /** The skill practised last, so that another comes next. */
  let before: Skill | null = null;

  const events = createMemo(() => eventsIn(loaded().value));
  const lessonSkills = Object.fromEntries(props.lessons.map(({ slug, skills }) => [slug, skills]));
  const due = createMemo(() => dueTimes(events(), lessonSkills));
  const states = createMemo(() => skillStates(events()));
  const chosen = createMemo(() => chosenSkills(events()));
  const askable = new Set(props.bank.flatMap(({ skills }) => skills));
  /** What was met and has exercises, the one due first at the front. */
  const turn = createMemo(() => inTurn(due()).filter(([skill]) => askable.has(skill)));
  const dueNow = createMemo(() => turn().filter(([, at]) => at <= now()));
  /** Slips that can be told, the newest first: a few, for a long list would weigh on the one who reads it. */
  const slips = createMemo(() =>
    recentSlips(events(), now())
      .map((seen) => ({ ...seen, most: SLIPS_KEPT }))
      .filter((seen) => slipSeenWords(seen.slip, seen) !== null)
      .slice(0, SLIPS_SHOWN),
  );
  const lessonOf = (skill: Skill) => props.lessons.find(({ skills }) => skills.includes(skill));
  /** A beginner finds the choice first. It stays where it is while it is used. */
  const beginner = turn().length === 0;
  const asked = (): Asked => ({ events: events(), bank: props.bank, due: due(), now: Date.now(), before, salt });
  const sayNotKept = createStorageWords(() => loaded().keeping);

  onMount(() => {
    // What a lesson in another tab jots down comes in as it happens.
    onCleanup(
      thisDevice.watch((key) => {
        if (key?.startsWith(NOTES)) gather(thisProgress);
      }),
    );
    onCleanup(
      thisProgress.subscribe((next) => {
        setLoaded(next);
        setNow(Date.now());
      }),
    );
    const clock = setInterval(() => setNow(Date.now()), MINUTE);
    onCleanup(() => clearInterval(clock));
    const back = readAddress(props.bank);
    if (back) void show(back, false);
  });
  createEffect(() => keepStanding(standingOf(loaded().value, due())));

  async function show(picked: Picked | null, asksFocus = true): Promise<void> {
    const sheet = picked && (await prepare(picked));
    if (picked) before = picked.skill;
    setAnswered(false);
    // The sheet asks for the figures that the address names, so they stand there before it.
    writeAddress(picked);
    setShown(picked && sheet && { picked, sheet });
    if (!asksFocus) return;
    queueMicrotask(() => (picked ? document.getElementById(`${picked.entry.id}-name`) : head)?.focus());
  }
  const next = (more: boolean) => {
    setNow(Date.now());
    void show(nextExercise({ ...asked(), more }));
  };
  /** Something in which the slip would show; of its skill at least, where no exercise asks for that any more. */
  const practiseSlip = async (seen: SlipSeen) => {
    setNow(Date.now());
    const { slipExercise } = await import('../../store/progress/slip-practice.ts');
    const ofSkill = props.bank.filter(({ skills }) => skills.includes(seen.skill));
    void show(
      slipExercise(seen, { events: events(), bank: props.bank, salt }) ??
        nextExercise({ ...asked(), bank: ofSkill, more: true }),
    );
  };
  const stop = () => void show(null);

  onMount(() => {
    const heard = (event: Event) => {
      const told = (event as CustomEvent<Told>).detail;
      const entry = props.bank.find(({ id }) => id === told.exercise);
      if (!entry) return;
      const at = new Date();
      const place = { lesson: entry.lesson, ofLesson: entry.ofLesson, zone: at.getTimezoneOffset() };
      const happening = happeningOf({ ...told, ...place, act: 'told' }, at.getTime());
      const keeping = happening && thisProgress.note(happening);
      if (told.outcome) setAnswered(true);
      if (keeping?.kept) askToStay();
    };
    place?.addEventListener(TOLD, heard);
    onCleanup(() => place?.removeEventListener(TOLD, heard));
  });

  /** On paper stand the exercises that come next, after the one on the screen. */
  const printSheet = async () => {
    const open = shown()?.picked.entry.id;
    const sheet = sheetOf({ ...asked(), without: new Set(open ? [open] : []) }, open ? ON_A_SHEET - 1 : ON_A_SHEET);
    setPaper(await Promise.all(sheet.map(prepare)));
    addEventListener('afterprint', () => setPaper([]), { once: true });
    printer?.click();
  };

  /** What was met elsewhere: the way in for a beginner, and out of the way for others. */
  const Choice = () => (
    <section class="practice-part" aria-labelledby="practice-choice">
      <h2 id="practice-choice">Met elsewhere</h2>
      <SkillChoice
        askable={askable}
        met={(skill) => skill in due() && !chosen().has(skill)}
        chosen={chosen()}
        lessons={props.lessons}
        open={beginner}
      />
    </section>
  );

  return (
    <>
      <section class="practice-now" aria-labelledby="practice-now">
        <h2 id="practice-now" ref={head} tabindex="-1">
          {shown() ? 'On your desk' : 'What to practise'}
        </h2>
        <Show when={!shown()}>
          <Show
            when={turn().length > 0}
            fallback={
              <div class="practice-empty">
                <p>
                  There is nothing to practise yet. <a href={props.lessonsPath}>Begin with a lesson</a> and try its
                  exercises. What you meet there comes up here, on the days when looking at it again helps most.
                </p>
                <p>Do you know some of it already? Choose it below, and start here.</p>
              </div>
            }
          >
            <p>{dueSentence(dueNow().map(([skill]) => SKILL_NAMES[skill]))}</p>
            <Show
              when={dueNow().length > 0}
              fallback={
                <>
                  <Show when={turn()[0]}>
                    {(first) => <p>{nextSentence(SKILL_NAMES[first()[0]], daysUntil(first()[1], now()))}</p>}
                  </Show>
                  <p class="practice-buttons only-screen">
                    <button type="button" onClick={() => next(true)}>
                      Practise all the same
                    </button>
                  </p>
                </>
              }
            >
              <p class="practice-buttons only-screen">
                <button type="button" data-kind="must-do" onClick={() => next(false)}>
                  Practise
                </button>
              </p>
            </Show>
          </Show>
        </Show>
        <div ref={place}>
          <Show when={shown()} keyed>
            {({ sheet }) => sheet()}
          </Show>
          <div class="only-print">
            <For each={paper()}>{(sheet) => sheet()}</For>
          </div>
        </div>
        <Show when={shown()}>
          <p class="practice-buttons only-screen">
            <button
              type="button"
              data-kind={answered() ? 'must-do' : undefined}
              onClick={() => next(dueNow().length === 0)}
            >
              Next exercise
            </button>
            <button type="button" onClick={stop}>
              Stop for now
            </button>
          </p>
        </Show>
        <Show when={sayNotKept()}>
          <p class="field-problem" role="status">
            {sayNotKept()}
          </p>
        </Show>
      </section>

      <FileOffer tried={events().some(({ act }) => act === 'tried')} log={() => loaded().value} />
      <div class="practice-beside only-screen">
        <Show when={turn().length > 0}>
          <section class="practice-part" aria-labelledby="practice-skills">
            <h2 id="practice-skills">How far you are</h2>
            <SkillList turn={turn()} states={states()} now={now()} />
            <p class="practice-buttons">
              <button type="button" onClick={() => void printSheet()}>
                Print a practice sheet
              </button>
              <button type="button" hidden data-print ref={printer} />
            </p>
          </section>
        </Show>
        <Show when={slips().length > 0}>
          <section class="practice-part" aria-labelledby="practice-slips">
            <h2 id="practice-slips">What slipped in lately</h2>
            <SlipList seen={slips()} lessonOf={lessonOf} onPractise={(seen) => void practiseSlip(seen)} />
          </section>
        </Show>
        <Show when={beginner}>
          <Choice />
        </Show>
        <section class="practice-part" aria-labelledby="practice-keep">
          <h2 id="practice-keep">Keep your progress</h2>
          <KeepProgress log={loaded().value} />
        </section>
        <Show when={!beginner}>
          <Choice />
        </Show>
      </div>
    </>
  );
}
