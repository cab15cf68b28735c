import type { KindName, Level } from '../../solver/exercises/contract.ts';
import type { Skill } from '../../solver/exercises/skills.ts';

/** A lesson was opened for the first time, or read to its end. */
export interface LessonMet {
  readonly act: 'opened' | 'read';
  /** The name in the lesson's address. */
  readonly lesson: string;
}

/** A check at the bench was ticked, or its tick taken away. */
export interface Ticked {
  readonly act: 'ticked';
  readonly lesson: string;
  readonly check: string;
  readonly on: boolean;
}

/** An exercise was checked, and what was entered could be read. */
export interface Tried {
  readonly act: 'tried';
  /** The lesson the exercise belongs to. */
  readonly lesson: string;
  readonly exercise: string;
  readonly kind: KindName;
  readonly level: Level;
  readonly seed: string;
  /** The foremost first. */
  readonly skills: readonly Skill[];
  readonly outcome: 'right' | 'not-right';
  /** Whether a hint or the working was looked at before. */
  readonly aided: boolean;
  /** The day on the learner's own calendar, such as 2026-03-09. */
  readonly day: string;
}

/** The slips that lay behind a wrong answer, once it was certain which they were. */
export interface Slipped {
  readonly act: 'slipped';
  readonly exercise: string;
  readonly seed: string;
  readonly slips: readonly string[];
}

/** The learner says that a skill was met elsewhere, or takes that back. */
export interface Chosen {
  readonly act: 'chosen';
  readonly skill: Skill;
  readonly on: boolean;
}

export type Happening = LessonMet | Ticked | Tried | Slipped | Chosen;

/** What is the same for all: an id that no other event on any device has, and the moment in ms since 1970. */
export interface Stamp {
  readonly id: string;
  readonly at: number;
}
export type ProgressEvent = Happening & Stamp;
