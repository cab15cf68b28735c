import type { Kept } from './figures.ts';
import type { Place, Show } from './show.ts';

export type Role = 'room' | 'speaker';

/** What one window tells the other. Everything is of one showing of one lesson. */
export type Told =
  /** A window has opened and asks how things stand. */
  | { readonly tell: 'hello'; readonly role: Role }
  /** Another window has this part already: the new one goes its own way. */
  | { readonly tell: 'taken'; readonly to: string }
  | { readonly tell: 'show'; readonly show: Show; readonly turn: number }
  /** The room’s figures have changed. */
  | { readonly tell: 'figures'; readonly kept: Kept }
  | { readonly tell: 'point'; readonly at: readonly [x: number, y: number] | null }
  /** A line that is being drawn. */
  | { readonly tell: 'line'; readonly frame: number; readonly stroke: readonly number[] }
  | { readonly tell: 'gone'; readonly role: Role };

type Sent = Told & { readonly from: string; readonly lesson: string };

const NAME = /^evenfold (room|speaker) ([0-9a-z]+)$/;

/** A name nobody else has: 96 bits of chance. */
export function newName(): string {
  return [...crypto.getRandomValues(new Uint32Array(3))].map((part) => part.toString(36)).join('');
}

/** Which showing a window belongs to, and as what. The window that opens another hands this over as its name. */
export const windowName = (role: Role, session: string): string => `evenfold ${role} ${session}`;

/** Reads a window’s name; null for one that belongs to no showing. */
export function readWindowName(name: string): { readonly role: Role; readonly session: string } | null {
  const [, role, session] = NAME.exec(name) ?? [];
  return session === undefined ? null : { role: role as Role, session };
}

/** A show as one window has it, with how often it was changed. */
export interface Version {
  readonly show: Show;
  readonly turn: number;
  readonly by: string;
}

/** Whether what the other window has is newer. Of two changes at once the same one wins in both. */
export const isNewer = (theirs: Omit<Version, 'show'>, mine: Omit<Version, 'show'>): boolean =>
  theirs.turn > mine.turn || (theirs.turn === mine.turn && theirs.by > mine.by);

export interface Link {
  readonly me: string;
  readonly tell: (told: Told) => void;
  readonly close: () => void;
}

/**
 * A line between the windows of one showing, inside this browser: no network, no server, nothing kept. Windows of another
 * showing, or of another lesson, hear nothing.
 */
export function linkTo(session: string, lesson: string, hear: (told: Told, from: string) => void): Link {
  const me = newName();
  const channel = new BroadcastChannel(`evenfold ${session}`);
  channel.addEventListener('message', ({ data }: MessageEvent<Sent>) => {
    if (data.lesson === lesson && data.from !== me) hear(data, data.from);
  });
  return {
    me,
    tell: (told) => channel.postMessage({ ...told, from: me, lesson } satisfies Sent),
    close: () => channel.close(),
  };
}

/** The same place, for saying whether anything has to be shown anew. */
export const isSame = (one: Place, other: Place): boolean => one.frame === other.frame && one.step === other.step;
