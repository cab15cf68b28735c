import { type JSX, Show } from 'solid-js';
import type { KindName } from '../../solver/exercises/contract.ts';
import { making } from '../../solver/exercises/making.ts';
import type { Picked } from '../../store/progress/practice.ts';
import { capital } from '../../words/numbers.ts';
import { LEVEL_NAMES } from '../../words/progress-words.ts';
import { SKILL_NAMES } from '../../words/skills.ts';
import { questionOf } from '../exercise/asked.ts';
import { Question } from '../exercise/question.tsx';
import type { Entered } from '../exercise/view.ts';
import { Working, type WorkingLine } from '../working-list.tsx';
import { VIEWS } from './views.ts';

/** The working without the step that gives the answer, where nothing of the answer can be given. */
async function partWorking<K extends KindName>(
  { entry, level, problem }: Picked<K>,
  given: Entered,
): Promise<readonly WorkingLine[]> {
  if (level !== 'half-worked' || Object.keys(given).length > 0) return [];
  return (await import('../exercise/working.ts')).partOf(entry.kind, problem);
}

async function workedFirst<K extends KindName>({ entry, level, problem }: Picked<K>) {
  if (level !== 'worked') return null;
  return (await import('../exercise/like-it.ts')).workedLike(entry.kind, problem);
}

/** Fetches what an exercise needs, and gives the sheet it stands on: the same frame as in its lesson. */
export async function prepare<K extends KindName>(picked: Picked<K>): Promise<() => JSX.Element> {
  const { entry, level, seed, problem, skill } = picked;
  const { id, kind, options, lesson } = entry;
  const given = level === 'half-worked' ? ({ ...making[kind].fade(problem).given } as Entered) : {};
  const [View, question, lines, worked] = await Promise.all([
    VIEWS[kind](),
    questionOf(kind, problem),
    partWorking(picked, given),
    workedFirst(picked),
  ]);
  return () => (
    <section
      class="exercise"
      id={id}
      data-kind={kind}
      data-level={level}
      data-practised={lesson}
      aria-labelledby={`${id}-name`}
    >
      <h3 id={`${id}-name`} tabindex="-1">
        {capital(SKILL_NAMES[skill])}
      </h3>
      <p class="note">{capital(LEVEL_NAMES[level])}.</p>
      <Show when={worked}>
        {(shown) => (
          <div class="worked-case">
            <p class="note">A case worked through:</p>
            <Question words={shown().question} />
            <Working steps={shown().steps} />
            <p class="note">Now the same with these figures:</p>
          </div>
        )}
      </Show>
      <View
        id={id}
        level={level}
        options={options}
        seed={seed}
        problem={problem}
        question={question}
        given={given}
        lines={lines}
      />
    </section>
  );
}
