import { readFileSync } from 'node:fs';
import { type PieceInput, type PieceModel, pieceModel, stringPath } from '../../../src/figures/piece/index.ts';
import { type Plan, parseChart } from '../../../src/solver/index.ts';
import { planned } from '../drawn.ts';

/** What `pieceModel` takes of a plan. */
const partsOf = (plan: Plan): PieceInput => ({
  fit: plan.fit,
  bundles: plan.outline,
  rows: plan.rows,
  chart: plan.chart,
});

export const modelOf = (plan: Plan, options: Partial<PieceInput> = {}): PieceModel =>
  pieceModel({ ...partsOf(plan), ...options });

/** A plan of one of the workbook's own charts. */
export function chartPlan(name: string, capacity: number, options: Partial<Parameters<typeof planned>[0]> = {}): Plan {
  const parsed = parseChart(readFileSync(new URL(`../../../content/charts/${name}.chart`, import.meta.url), 'utf8'));
  if (!parsed.ok) throw new Error(parsed.problem.code);
  const { chart } = parsed;
  return planned({ width: chart.width, height: chart.height, capacity, chart, ...options });
}

/** The tags of a drawing with their attributes; what stands in `<defs>` by its id. */
export interface Tag {
  readonly name: string;
  readonly at: Readonly<Record<string, string>>;
  readonly inside: Tag[];
}

/** A drawing as a tree of tags. */
export function treeOf(svg: string): Tag {
  const root: Tag = { name: 'root', at: {}, inside: [] };
  const open = [root];
  for (const [, close, name = '', attributes = '', self] of svg.matchAll(
    /<(\/?)(\w+)((?:\s[\w:-]+="[^"]*")*)(\/?)>/g,
  )) {
    if (close) {
      open.pop();
      continue;
    }
    const at = Object.fromEntries(
      [...attributes.matchAll(/([\w:-]+)="([^"]*)"/g)].map(([, key, value]) => [key, value]),
    );
    const tag: Tag = { name, at, inside: [] };
    open.at(-1)?.inside.push(tag);
    if (!self) open.push(tag);
  }
  return root;
}

export type Matrix = readonly [number, number, number, number, number, number];
export const times = (m: Matrix, n: Matrix): Matrix => [
  m[0] * n[0] + m[2] * n[1],
  m[1] * n[0] + m[3] * n[1],
  m[0] * n[2] + m[2] * n[3],
  m[1] * n[2] + m[3] * n[3],
  m[0] * n[4] + m[2] * n[5] + m[4],
  m[1] * n[4] + m[3] * n[5] + m[5],
];

export function matrixOf(transform: string | undefined): Matrix {
  const [, kind, raw = ''] = transform?.match(/(\w+)\(([^)]*)\)/) ?? [];
  const figures = (raw.match(/-?[\d.]+/g) ?? []).map(Number);
  const [a = 1, b = kind === 'scale' ? a : 0, c = 0, d = 1, e = 0, f = 0] = figures;
  if (kind === 'translate') return [1, 0, 0, 1, a, b];
  if (kind === 'scale') return [a, 0, 0, b, 0, 0];
  return kind === 'matrix' ? [a, b, c, d, e, f] : [1, 0, 0, 1, 0, 0];
}

/** What has an id in a drawing, for those who refer to it. */
export function tagsById(root: Tag): Map<string, Tag> {
  const ids = new Map<string, Tag>();
  const collect = (tag: Tag): void => {
    if (tag.at['id']) ids.set(tag.at['id'], tag);
    tag.inside.forEach(collect);
  };
  collect(root);
  return ids;
}

/** Everything drawn, uses put in the place where they are used: each tag with its place and the ids it came through. */
export function expanded(svg: string): { tag: Tag; matrix: Matrix; through: readonly string[]; colour: string }[] {
  const root = treeOf(svg);
  const ids = tagsById(root);
  const out: { tag: Tag; matrix: Matrix; through: readonly string[]; colour: string }[] = [];
  const walk = (tag: Tag, before: Matrix, through: readonly string[], inherited: string): void => {
    if (tag.name === 'defs') return;
    const matrix = times(before, matrixOf(tag.at['transform']));
    const colour = tag.at['color'] ?? inherited;
    if (tag.name === 'use') {
      const id = (tag.at['href'] ?? '').slice(1);
      const target = ids.get(id);
      if (!target) throw new Error(`${id} is used and not there`);
      const placed = times(matrix, [1, 0, 0, 1, Number(tag.at['x'] ?? 0), Number(tag.at['y'] ?? 0)]);
      out.push({ tag, matrix: placed, through, colour });
      walk(target, placed, [...through, id], colour);
      return;
    }
    out.push({ tag, matrix, through, colour });
    for (const inner of tag.inside) walk(inner, matrix, through, colour);
  };
  walk(root, [1, 0, 0, 1, 0, 0], [], '');
  return out;
}

/** The greatest step between two neighbouring points of a string where two of its parts meet. */
export function greatestGap(model: PieceModel): number {
  let greatest = 0;
  for (const string of model.strings)
    for (const [i, part] of string.parts.entries()) {
      const before = string.parts[i - 1];
      if (!before) continue;
      const [a, b] = [before, part].map((one) => stringPath(model, { ...string, parts: [one] }));
      const [end, start] = [a?.at(-1), b?.[0]];
      if (!end || !start) throw new Error(`${string.id} has an empty part`);
      greatest = Math.max(greatest, Math.hypot(end[0] - start[0], end[1] - start[1], end[2] - start[2]));
    }
  return greatest;
}
