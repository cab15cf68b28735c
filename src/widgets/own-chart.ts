import { parseChart } from '../solver/chart-text.ts';
import type { OwnChart } from '../store/own-figures.ts';

export type ReadChart = ReturnType<typeof parseChart>;

const charts = `${import.meta.env.BASE_URL.replace(/\/*$/, '/')}charts/`;
const fetched = new Map<string, Promise<string>>();

/** The text of a chart of the index, fetched once a page; a fetch that fails is tried again the next time. */
function textOf(id: string): Promise<string> {
  const known = fetched.get(id);
  if (known) return known;
  const text = fetch(`${charts}${id}.txt`).then((answer) => {
    if (!answer.ok) throw new Error(`${id}: ${answer.status}`);
    return answer.text();
  });
  fetched.set(id, text);
  text.catch(() => fetched.delete(id));
  return text;
}

/** Reads the learner's chart: one of the index, or their own text. Rejects when it can't be fetched. */
export const readOwnChart = async (wanted: OwnChart): Promise<ReadChart> =>
  parseChart(wanted.from === 'text' ? wanted.text : await textOf(wanted.id));
