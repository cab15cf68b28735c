/** Address of a page, from its path below the place where the workbook is served: `to('lessons/')`. */
export function to(path = ''): string {
  return `${import.meta.env.BASE_URL.replace(/\/*$/, '/')}${path}`;
}
