import { createSignal, For, type JSX, Show } from 'solid-js';
import { SKILLS, type Skill } from '../../solver/exercises/skills.ts';
import { thisProgress } from '../../store/progress/progress.ts';
import { capital } from '../../words/numbers.ts';
import { SKILL_NAMES } from '../../words/skills.ts';
import type { LessonLink } from './practice.tsx';

interface Props {
  /** Skills that some exercise asks for. */
  askable: ReadonlySet<Skill>;
  /** Whether a skill was met in the workbook itself, so that there is nothing to choose. */
  met: (skill: Skill) => boolean;
  chosen: ReadonlySet<Skill>;
  lessons: readonly LessonLink[];
  /** Whether the list lies open from the start. */
  open: boolean;
}

/** Skills that a learner brings along, to be practised without their lesson. */
export function SkillChoice(props: Props): JSX.Element {
  const lessonOf = (skill: Skill) => props.lessons.find(({ skills }) => skills.includes(skill));
  const [opened] = createSignal(props.open);
  const left = () => SKILLS.filter((skill) => props.askable.has(skill) && !props.met(skill));
  return (
    <Show when={left().length > 0} fallback={<p>You have met everything there is to practise.</p>}>
      <details open={opened()}>
        <summary>Choose what you know already</summary>
        <ul class="skill-choice">
          <For each={left()}>
            {(skill) => (
              <li>
                <label>
                  <input
                    type="checkbox"
                    autocomplete="off"
                    checked={props.chosen.has(skill)}
                    onChange={(event) => thisProgress.note({ act: 'chosen', skill, on: event.currentTarget.checked })}
                  />
                  <span>{capital(SKILL_NAMES[skill])}</span>
                </label>
                <Show when={lessonOf(skill)}>
                  {(lesson) => (
                    <a href={lesson().path} aria-label={`Lesson ${lesson().order}, ${lesson().title}`}>
                      lesson {lesson().order}
                    </a>
                  )}
                </Show>
              </li>
            )}
          </For>
        </ul>
      </details>
    </Show>
  );
}
