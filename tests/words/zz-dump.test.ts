import { test } from 'vitest';
import { exercises, LEVELS, MARK_TARGETS, NUMBER_ASKS } from '/work/main/src/solver/exercises/index.ts';
import { missteps, SLIPS } from '/work/main/src/solver/missteps/index.ts';
import { slips } from '/work/main/src/solver/exercises/sum/missteps.ts';
import { explanationWords, slipWords } from '/work/main/src/words/slips/index.ts';
import { stepWords, stepSum } from '/work/main/src/words/exercises/step-words.ts';
import { questionWords } from '/work/main/src/words/exercises/question.ts';
import { hintWords } from '/work/main/src/words/exercises/hint-words.ts';
test('dump', () => {
  const out: string[] = [];
  const probs: any[] = [exercises.sum.make('lone','mixed',{width:21,capacity:15}), exercises.sum.make('a','alone',{width:26,capacity:16}), exercises.sum.make('a','alone',{width:25,capacity:16,oddMethod:'carried-end'}), exercises.sum.make('a','alone',{width:12,capacity:16}),
   ...NUMBER_ASKS.flatMap((ask) => [1,2].map((s) => exercises.number.make(s, 'mixed', { ask }))), ...MARK_TARGETS.flatMap((target) => [1,2].map((s) => exercises.mark.make(s,'mixed',{target})))];
  for (const p of probs) {
    const q = questionWords(p);
    out.push('## ' + q.given + ' || ' + q.ask);
    for (const st of (exercises as any)[p.kind].solution(p)) out.push('  step ' + st.key + ': ' + stepWords(p.kind, st) + '   [' + stepSum(p.kind, st) + ']');
    const h = (exercises as any)[p.kind].hints(p); out.push('  look: ' + hintWords(p.kind, h.look)); out.push('  do: ' + hintWords(p.kind, h.do));
    for (const s of SLIPS) { const a = missteps[s](p); if (!a || JSON.stringify(a) === JSON.stringify((exercises as any)[p.kind].solve(p))) continue; const w = slipWords(p, s, a as any); if (w) out.push('  ' + s + ': ' + Object.values(w).join(' ')); }
  }
  out.push('PAIRS');
  const p = probs[1];
  for (const { slips: made, answer } of slips.pairs(p).slice(0, 400)) out.push(made.join('+') + ' ' + JSON.stringify(answer) + '\n    ' + explanationWords(p, answer as any, { explanations: [made], needsFollowUp: false })[0]!.map((w) => Object.values(w).join(' ')).join('\n    '));
  require('fs').writeFileSync('/tmp/dump.txt', out.join('\n'));
});
