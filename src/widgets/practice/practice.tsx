import { createSignal, type JSX, onMount, Show } from 'solid-js';
import type { Skill } from '../../solver/exercises/skills.ts';
import type { BankEntry } from '../../store/progress/practice.ts';
import type { Desk } from './desk.tsx';

/** A lesson as practice speaks of it. */
export interface LessonLink {
  readonly slug: string;
  readonly title: string;
  readonly order: number;
  readonly path: string;
  readonly skills: readonly Skill[];
}

export interface PracticeProps {
  bank: readonly BankEntry[];
  lessons: readonly LessonLink[];
  /** Address of the list of lessons. */
  lessonsPath: string;
}

/** Practice over the skills met so far. The scheduler, and what makes exercises, are fetched once the page stands there. */
export function Practice(props: PracticeProps): JSX.Element {
  const [desk, setDesk] = createSignal<typeof Desk | null>(null);
  const [failed, setFailed] = createSignal(false);
  onMount(() => {
    import('./desk.tsx').then(
      (part) => setDesk(() => part.Desk),
      () => setFailed(true),
    );
  });
  return (
    <div class="practice">
      <Show
        when={desk()}
        fallback={
          <p class="practice-waits" role="status">
            {failed() ? 'This part could not be fetched. Load the page again when you have a network.' : ''}
          </p>
        }
      >
        {(Ready) => {
          const Part = Ready();
          return <Part bank={props.bank} lessons={props.lessons} lessonsPath={props.lessonsPath} />;
        }}
      </Show>
    </div>
  );
}
