/** The last space of a passage, where a short word comes after it. */
const LAST_SPACE = / (?=[^\s<>]{1,9}(?:<\/(?:em|strong|span|a)>)?[.?!:,)”]*<\/(?:p|li|dd|figcaption)>)/g;

/**
 * Markup in which no short last word of a passage stands alone in a line: it keeps to the word before it. Large lines are
 * short, so a room would see it often. Not for what a widget has rendered, which has to stay as it was.
 *
 * `<p>The rules come first.</p>` has no break before “first” any more.
 */
export const withoutOrphans = (html: string): string => html.replace(LAST_SPACE, '\u00a0');
