import type { Step } from '../solver/problem.ts';
import type { PieceModel } from './piece/index.ts';

/** Figures that a sentence or label needs, by name. */
export type Values = Step<string>['values'];

/** The sentence or label for every key, from its figures; handed in, since figures know no words. */
export type Words<Key extends string> = Readonly<Record<Key, (values: Values) => string>>;

interface Meaning {
  /** What it is, in the craft's words, parted by blanks; the stylesheet knows each as `f-…`. */
  readonly is?: string;
  /** Unique in the drawing. */
  readonly id?: string;
  readonly transform?: string;
}

/**
 * What a drawing is made of. Lengths are units of the viewBox; measures have the names SVG gives them, so that the step
 * from model to text adds nothing of its own.
 */
export type Shape<Key extends string> =
  | (Meaning & {
      readonly tag: 'path';
      /** Where it is empty, nothing is drawn. */
      readonly d: string;
      /** Id of the pattern that fills it. */
      readonly paint?: string;
      /** A thread's own colour, from the palette. */
      readonly fill?: string;
    })
  | (Meaning & {
      /** Any number of cords of one weight, none of which crosses another. */
      readonly tag: 'cord';
      readonly d: string;
      readonly width: number;
      /** The thread's own colour, from the palette. */
      readonly colour?: string | undefined;
    })
  | (Meaning & { readonly tag: 'circle'; readonly cx: number; readonly cy: number; readonly r: number })
  | (Meaning & {
      readonly tag: 'rect';
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
      readonly rx?: number;
    })
  | (Meaning & {
      readonly tag: 'text';
      readonly x: number;
      readonly y: number;
      /** Figures as they stand, or a key and its figures. */
      readonly say: string | Step<Key>;
      /** Which end stands at x; the middle when left out. */
      readonly 'text-anchor'?: 'start' | 'end';
    })
  | (Meaning & { readonly tag: 'use'; readonly href: string; readonly x?: number; readonly y?: number })
  | (Meaning & {
      /** Cords of the strand model, kept to be seen through windows; painted when the drawing's id is known. */
      readonly tag: 'cords';
      readonly id: string;
      /** The strings themselves, in space; the picture is painted from them alone. */
      readonly model: PieceModel;
      readonly style: string;
      readonly paint: (id: string) => string;
    })
  | (Meaning & {
      /** A part of the cords of this id, in a place of the drawing. */
      readonly tag: 'window';
      readonly shows: string;
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
      /** What is seen, in the units of the cords. */
      readonly box: string;
    })
  | (Meaning & { readonly tag: 'g' | 'defs'; readonly shapes: readonly Shape<Key>[] })
  | (Meaning & {
      readonly tag: 'pattern';
      readonly id: string;
      readonly width: number;
      readonly height: number;
      readonly patternUnits: 'userSpaceOnUse';
      readonly patternTransform?: string;
      readonly shapes: readonly Shape<Key>[];
    });

export interface Drawing<Key extends string> {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape<Key>[];
}

/** The units that lengths in a drawing are told in. */
export type DrawnUnits = 'metric' | 'inches';

/** One kind of figure. `describe` begins with the title; both come from the same plan and options. */
export interface Figure<Name extends string, Options extends object, Key extends string, Needs> {
  readonly name: Name;
  /** Whether it tells lengths, so that one of its options is their `units`. */
  readonly measures?: true;
  draw(plan: Needs, options?: Options): Drawing<Key>;
  describe(plan: Needs, options?: Options): readonly Step<Key>[];
}

/** The width of a drawing that is read on a phone. */
export const ACROSS = 360;

/** The size of all text, legible on a phone; the stylesheet does not change it. */
export const TEXT = 13;

export const step = <Key extends string>(key: Key, values: Values = {}): Step<Key> => ({ key, values });

export const path = <Key extends string>(is: string, data: string): Shape<Key> => ({ tag: 'path', is, d: data });

export const text = <Key extends string>(x: number, y: number, say: string | Step<Key>, is = ''): Shape<Key> => ({
  tag: 'text',
  x,
  y,
  say,
  is,
});

/** Path data with its figures to a tenth of a unit. */
export const d = (parts: TemplateStringsArray, ...values: readonly number[]): string =>
  parts.reduce((data, part, index) => data + Math.round((values[index - 1] ?? 0) * 10) / 10 + part);
