/** A file of the workbook as the worker keeps it. */
export interface KeptFile {
  /** Path below the place where the workbook is served. */
  readonly url: string;
  /** Checksum of the file, or null where its name holds one. */
  readonly revision: string | null;
}

/**
 * The kept file that answers to a page's address, or the address to go to instead.
 *
 * @param pathname path of the address as the browser has it, without what was asked for
 * @example keptPage('/lessons/widening/') // { act: 'show', path: '/lessons/widening/index.html' }
 * @example keptPage('/lessons/widening') // { act: 'redirect', path: '/lessons/widening/' }
 */
export function keptPage(pathname: string): { readonly act: 'show' | 'redirect'; readonly path: string } {
  if (pathname.endsWith('/')) return { act: 'show', path: `${pathname}index.html` };
  if (/\.\w+$/.test(pathname)) return { act: 'show', path: pathname };
  return { act: 'redirect', path: `${pathname}/` };
}
