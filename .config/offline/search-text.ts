import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { type HTMLElement, NodeType, parse } from 'node-html-parser';
import type { Section } from '../../src/words/search.ts';

/**
 * Questions, the tools of a lesson, controls, drawings, files to keep and what stands in their place are not read: a
 * search leads to where a thing is taught. Nor are passages that are not so of the worked example: beside those that are they would contradict.
 */
const UNREAD =
  '.lesson-tools, script, style, svg, template, noscript, nav, form, button:not(.term), astro-island, figure details, .exercise, .only-print, [data-unsearched], [data-needs-script], [data-units=inches], [data-when][hidden], a[download]';

const plain = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** Id of the element or of the nearest one round it, up to `main`. */
function placeOf(element: HTMLElement, main: HTMLElement): string {
  for (let at: HTMLElement | null = element; at && at !== main; at = at.parentNode as HTMLElement | null)
    if (at.id) return `#${at.id}`;
  return '';
}

/** A block as it runs on in a line: a dot in the middle stands where it ends without a mark of its own. */
const ended = (text: string): string =>
  /[.!?:;,”’)]\s*$/.test(text) || text.trim() === '' ? ` ${text} ` : ` ${text.trimEnd()} · `;

/** The text of an element, with a mark where a block ends. */
function textOf(element: HTMLElement): string {
  return element.childNodes
    .map((node) => {
      if (node.nodeType === NodeType.TEXT_NODE) return node.text;
      if (node.nodeType !== NodeType.ELEMENT_NODE) return '';
      const child = node as HTMLElement;
      return /^(p|li|h\d|dt|dd|div|figcaption|td|th|summary)$/i.test(child.tagName ?? '')
        ? ended(textOf(child))
        : textOf(child);
    })
    .join('');
}

/**
 * A page by its headings. Text before the second heading belongs to the first; a page without `main`, without `h1` or
 * not meant for lists of pages has none.
 *
 * @param url address of the page, below the place where the workbook is served
 */
export function sectionsOf(url: string, html: string): Section[] {
  const root = parse(html);
  const main = root.querySelector('main');
  const title = plain(root.querySelector('h1')?.text ?? '');
  if (!main || !title || root.querySelector('meta[name=robots]')) return [];
  for (const unread of main.querySelectorAll(UNREAD)) unread.remove();
  const sections: { url: string; page: string; heading: string; text: string }[] = [];
  let text = '';
  const close = () => {
    const last = sections.at(-1);
    if (last) last.text = plain(last.text + text).replace(/ ·$/, '');
    text = '';
  };
  const walk = (element: HTMLElement): void => {
    for (const node of element.childNodes) {
      if (node.nodeType === NodeType.TEXT_NODE) text += node.text;
      if (node.nodeType !== NodeType.ELEMENT_NODE) continue;
      const child = node as HTMLElement;
      if (/^h[1-3]$/i.test(child.tagName)) {
        close();
        const heading = plain(textOf(child));
        sections.push({ url: url + placeOf(child, main), page: title, heading, text: '' });
      } else if (/^(p|li|dt|dd|td|th|figcaption|summary)$/i.test(child.tagName)) text += ended(textOf(child));
      else walk(child);
    }
  };
  walk(main);
  close();
  return sections.filter((section) => section.text !== '' || section.heading === title);
}

/** What can be searched in the built workbook, page after page. */
export function searchText(folder: string): Section[] {
  if (!existsSync(join(folder, 'search'))) throw new Error('There is no page for the search, so nothing can be found.');
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name === 'index.html')
    .map((entry) => relative(folder, entry.parentPath).split(sep).join('/'))
    .sort()
    .flatMap((path) => {
      const url = path === '' ? '' : `${path}/`;
      return sectionsOf(url, readFileSync(join(folder, path, 'index.html'), 'utf8'));
    });
}
