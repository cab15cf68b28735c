/** A page that every other page leads to. */
export interface Room {
  readonly id: 'lessons' | 'charts' | 'piece' | 'search';
  readonly name: string;
  readonly path: string;
}

/** The rooms of the workbook, as the head of each page lists them. Paths are below the place where it is served. */
export const ROOMS: readonly Room[] = [
  { id: 'lessons', name: 'Lessons', path: 'lessons/' },
  { id: 'charts', name: 'Charts', path: 'charts/' },
  { id: 'piece', name: 'Your piece', path: 'piece/' },
  { id: 'search', name: 'Search', path: 'search/' },
];
