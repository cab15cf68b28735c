import type { PiecePart } from '../../figures/piece/index.ts';

/** What stands in a picture now, by the keys of its parts. */
export type KeptParts = Map<string, { readonly element: Element; svg: string }>;

const GROUP = 'http://www.w3.org/2000/svg';

/**
 * Puts the parts of a picture into an element; of a picture that stands there already only those that differ.
 *
 * @returns how many parts were put in, changed or taken out
 */
export function keepParts(into: Element, parts: readonly PiecePart[], kept: KeptParts): number {
  if (kept.size === 0) {
    into.innerHTML = parts.map(({ svg }) => `<g>${svg}</g>`).join('');
    for (const [i, { key, svg }] of parts.entries()) {
      const element = into.children[i];
      if (element) kept.set(key, { element, svg });
    }
    return parts.length;
  }
  // What is gone leaves first: moving what stays would make the browser draw all of it anew.
  const wanted = new Set(parts.map(({ key }) => key));
  let changed = 0;
  for (const [key, { element }] of kept) {
    if (wanted.has(key)) continue;
    element.remove();
    kept.delete(key);
    changed += 1;
  }
  let next = into.firstElementChild;
  for (const { key, svg } of parts) {
    const own = kept.get(key) ?? { element: document.createElementNS(GROUP, 'g'), svg: '' };
    kept.set(key, own);
    if (own.svg !== svg) {
      own.element.innerHTML = svg;
      own.svg = svg;
      changed += 1;
    }
    if (own.element === next) next = next.nextElementSibling;
    else into.insertBefore(own.element, next);
  }
  return changed;
}
