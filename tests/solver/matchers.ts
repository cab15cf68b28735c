import { expect } from 'vitest';
import { type RowPlan, walkLead } from '../../src/solver/index.ts';

/** Where a value is NaN, as a path such as `.fit.left.columns`; what was entered may be shown back as it was. */
export function placesOfNaN(value: unknown, path = ''): string[] {
  if (typeof value === 'number') return Number.isNaN(value) ? [path === '' ? 'the value itself' : path] : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    path.endsWith('problem') && key === 'entered' ? [] : placesOfNaN(inner, `${path}.${key}`),
  );
}

interface Verdict {
  pass: boolean;
  message: () => string;
}

const written = (value: unknown): string => JSON.stringify(value) ?? String(value);

/** The problem of a refusal, or null where the value is no refusal that a sentence could be made of. */
export function problemOf(value: unknown): { code: string; values: Record<string, unknown> } | null {
  if (typeof value !== 'object' || value === null || !('ok' in value) || value.ok !== false || !('problem' in value))
    return null;
  const { problem } = value;
  if (typeof problem !== 'object' || problem === null || !('code' in problem) || !('values' in problem)) return null;
  const { code, values } = problem;
  if (typeof code !== 'string' || typeof values !== 'object' || values === null) return null;
  return { code, values: { ...values } };
}

expect.extend({
  toHoldNoNaN(received: unknown): Verdict {
    const places = placesOfNaN(received);
    return {
      pass: places.length === 0,
      message: () => `NaN at ${places.join(', ') || 'no place'} in ${written(received)}`,
    };
  },
  toBeRefusedAs(received: unknown, ...codes: string[]): Verdict {
    const problem = problemOf(received);
    return {
      pass: problem !== null && codes.includes(problem.code),
      message: () => `expected a refusal as ${codes.join(' or ')}, got ${written(received)?.slice(0, 400)}`,
    };
  },
  toBeWalkable(received: readonly RowPlan[]): Verdict {
    const walk = walkLead(received);
    return {
      pass: walk.ok,
      message: () => `the leading string ${walk.ok ? 'never jumps' : `jumps: ${written(walk)}`}`,
    };
  },
});

declare module 'vitest' {
  interface Matchers<R extends void | Promise<void> = void | Promise<void>, T = unknown> {
    /** No figure anywhere inside is NaN. */
    toHoldNoNaN: () => R;
    /** `{ ok: false, problem }` with one of these codes and with values. */
    toBeRefusedAs: (...codes: string[]) => R;
    /** The leading string goes through these rows without a jump. */
    toBeWalkable: () => R;
  }
}
