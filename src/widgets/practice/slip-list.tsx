import { For, type JSX, Show } from 'solid-js';
import type { Skill } from '../../solver/exercises/skills.ts';
import { type SlipSeen, TRIES_TO_MEND } from '../../store/progress/slip-states.ts';
import { slipsGo } from '../../words/progress-words.ts';
import type { SlipTimes } from '../../words/slip-names.ts';
import { slipSeenWords } from '../../words/slip-names.ts';
import type { LessonLink } from './practice.tsx';

interface Props {
  seen: readonly (SlipSeen & SlipTimes)[];
  lessonOf: (skill: Skill) => LessonLink | undefined;
  onPractise: (seen: SlipSeen) => void;
}

/** The slips that came up lately: which, how often, where they are taught, and a way to practise each. */
export function SlipList(props: Props): JSX.Element {
  return (
    <>
      <p>
        Everybody makes some of these. Each is only a habit, and a case or two with it in mind is often enough to lose
        it.
      </p>
      <ul class="slips-seen">
        <For each={props.seen}>
          {(seen) => (
            <Show when={slipSeenWords(seen.slip, seen)}>
              {(words) => (
                <li>
                  <span class="slip-words">{words()}</span>
                  <span class="slip-ways">
                    <Show when={props.lessonOf(seen.skill)}>
                      {(lesson) => (
                        <a href={lesson().path} aria-label={`Lesson ${lesson().order}, ${lesson().title}`}>
                          lesson {lesson().order}
                        </a>
                      )}
                    </Show>
                    <button
                      type="button"
                      aria-label={`Practise this: ${words()}`}
                      onClick={() => props.onPractise(seen)}
                    >
                      Practise this
                    </button>
                  </span>
                </li>
              )}
            </Show>
          )}
        </For>
      </ul>
      <p class="note">{slipsGo(TRIES_TO_MEND)}</p>
    </>
  );
}
