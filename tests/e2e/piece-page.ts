import { readFileSync } from 'node:fs';
import type { Locator, Page } from '@playwright/test';
import { type Chart, type Plan, type PlanInput, parseChart, planPiece, type RowPlan } from '../../src/solver/index.ts';
import { numberWord } from '../../src/words/numbers.ts';
import { rowSummary } from '../../src/words/row-words.ts';
import { awake } from './learner.ts';

/** A chart of the workbook. */
export function chartOf(id: string): Chart {
  const read = parseChart(readFileSync(new URL(`../../content/charts/${id}.chart`, import.meta.url), 'utf8'));
  if (!read.ok) throw new Error(`${id} can’t be read.`);
  return read.chart;
}

/** What the solver plans. */
export function planOf(input: PlanInput): Plan {
  const plan = planPiece(input);
  if (!plan.ok) throw new Error('The solver can’t plan this piece.');
  return plan;
}

/** The plan of a chart on a ring, as the page of one's own piece makes it. */
export const withChart = (chart: Chart, more: Partial<PlanInput> & { capacity: number }): Plan =>
  planOf({ maxBundle: 8, width: chart.width, height: chart.height, chart, ...more });

/** The page of one’s own piece, awake. */
export async function openPiece(page: Page, query = ''): Promise<Locator> {
  await page.goto(`piece/${query}`);
  const main = page.locator('main');
  await awake(main);
  return main;
}

const HOW_MANY = new Map(Array.from({ length: 21 }, (_, value) => [numberWord(value), value]));
const howMany = (word: string): number => HOW_MANY.get(word) ?? Number(word);

/**
 * The knots of a row by colour, counted from the words in which the page tells it; a row of one colour says once that
 * all are in it. A colour that is never said counts as ''.
 */
export function knotsSaid(row: string): Record<string, number> {
  const all = /, all in ([^,.\n]+)/.exec(row)?.[1] ?? '';
  const found: [colour: string | undefined, knots: number][] = [];
  for (const [, colour] of row.matchAll(/ie a (?:forward-backward|backward-forward) knot(?: in ([^.]+?))? round/g))
    found.push([colour, 1]);
  for (const [, knots = '', colour] of row.matchAll(/Tie (\w+) (?:forward|backward) knots?(?: in ([^.]+))?\./g))
    found.push([colour, howMany(knots)]);
  for (const [, runs = ''] of row.matchAll(/Tie (?:forward|backward) knots: ([^.]+)\./g))
    for (const run of runs.split(', ')) {
      const [knots = '', colour] = run.split(' in ');
      found.push([colour, howMany(knots)]);
    }
  const counts: Record<string, number> = {};
  for (const [colour = all, knots] of found) counts[colour] = (counts[colour] ?? 0) + knots;
  return counts;
}

/** The same from the solver's plan. */
export function knotsPlanned(plan: Plan): Record<string, number>[] {
  return plan.rows.map(({ runs }) => {
    const counts: Record<string, number> = {};
    for (const { colour, count } of runs) {
      const name = colour === undefined ? '' : (plan.chart?.palette[colour]?.name ?? '?');
      counts[name] = (counts[name] ?? 0) + count;
    }
    return counts;
  });
}

/** The heading of a row: which, from where to where, how many knots, which bundles; of a row of one colour it may say which. */
export function rowHead(row: RowPlan): RegExp {
  const [begins = '', ends = ''] = rowSummary(row).split(/(?=, with a bundle)/);
  return new RegExp(`^${begins}(, all in [^,]+)?${ends}$`);
}
