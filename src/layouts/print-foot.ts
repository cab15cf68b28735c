function quoted(text: string): string {
  // As a CSS string that is also safe between style tags.
  return `"${text.replace(/[\\"<>&\n]/g, (sign) => `\\${sign.charCodeAt(0).toString(16)} `)}"`;
}

/** Rules that write the workbook's name, the page's title and its address at the foot of every printed sheet. */
export function printFoot(title: string | undefined, address: string): string {
  return `@page{@bottom-left{content:${quoted(['Evenfold', title, address].filter(Boolean).join(' · '))}}}`;
}
