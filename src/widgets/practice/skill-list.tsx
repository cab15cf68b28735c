import { For, type JSX } from 'solid-js';
import type { Skill } from '../../solver/exercises/skills.ts';
import { daysUntil } from '../../store/progress/day.ts';
import { DAYS_TO_STEADY, type SkillState } from '../../store/progress/skill-states.ts';
import { capital } from '../../words/numbers.ts';
import { dueWords, SKILL_STATES, steadyMeans } from '../../words/progress-words.ts';
import { SKILL_NAMES } from '../../words/skills.ts';

interface Props {
  /** Skills that were met with the moment each is due, in ms since 1970. */
  turn: readonly (readonly [skill: Skill, at: number])[];
  states: Readonly<Record<Skill, SkillState>>;
  now: number;
}

/** Every skill that was met, in words: how far it has got, and when it comes up again. */
export function SkillList(props: Props): JSX.Element {
  return (
    <>
      <ul class="skills">
        <For each={props.turn}>
          {([skill, at]) => (
            <li data-state={props.states[skill].state} data-due={at <= props.now ? '' : undefined}>
              <span class="skill-name">{capital(SKILL_NAMES[skill])}</span>
              <span class="skill-state">{SKILL_STATES[props.states[skill].state]}</span>
              <span class="skill-due">{dueWords(daysUntil(at, props.now), at <= props.now)}</span>
            </li>
          )}
        </For>
      </ul>
      <p class="note">{steadyMeans(DAYS_TO_STEADY)}</p>
    </>
  );
}
