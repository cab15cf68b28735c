import type { Problem } from '../solver/index.ts';
import { chartWords } from '../words/chart-words.ts';

/** `file:line:column` and what is wrong there, as an editor's problem list reads it. */
export function chartMistakeMessage(
  file: string,
  problem: Problem & { readonly line?: number; readonly column?: number },
): string {
  return `${file}:${problem.line ?? 1}:${problem.column ?? 1} ${chartWords(problem, false)}`;
}
