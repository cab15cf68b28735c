import { describe, expect, test } from 'vitest';
import { type FigureName, planPiece } from '../../src/solver/index.ts';
import { namedFigure, ROW_FIGURES } from '../../src/solver/named-figures.ts';
import { type KnotName, knotHow, knotName } from '../../src/words/knot-words.ts';
import { figureLabel } from '../../src/words/named-figure-words.ts';
import { type NotKept, storageWords } from '../../src/words/storage-words.ts';
import { expectSayable, expectSentences } from './sayable.ts';

describe('names', () => {
  test('each knot has a name and a line on how it is tied', () => {
    const knots: Readonly<Record<KnotName, true>> = {
      forward: true,
      backward: true,
      'forward-backward': true,
      'backward-forward': true,
      'larks-head': true,
      'lone-string': true,
      'square-knot': true,
    };
    const names = (Object.keys(knots) as KnotName[]).map((knot) => {
      expectSentences(knotHow(knot));
      return knotName(knot);
    });
    expect(new Set(names).size).toBe(names.length);
  });

  test('whether something is kept on the device is said in words', () => {
    const reasons: Readonly<Record<NotKept, true>> = {
      'no-storage': true,
      blocked: true,
      full: true,
      unreadable: true,
      newer: true,
      refused: true,
    };
    for (const why of Object.keys(reasons) as NotKept[]) expectSentences(storageWords({ kept: false, why }));
    expect(storageWords({ kept: true })).toBe('Kept on this device.');
  });

  test('each figure of a plan has its own label', () => {
    const plan = planPiece({ width: 26, height: 32, capacity: 16 });
    if (!plan.ok) throw new Error(plan.problem.code);
    const names: readonly FigureName[] = ['width', 'on-bar', 'first-row-knots', 'corner-cells', ...ROW_FIGURES];
    const labels = names.map((name) => {
      expect(namedFigure(plan, name, 3)).not.toBeNull();
      expectSayable(figureLabel(name));
      return figureLabel(name);
    });
    expect(new Set(labels).size).toBe(labels.length);
  });
});
