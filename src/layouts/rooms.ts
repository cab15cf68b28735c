/** A page that every other page leads to. */
export interface Room {
  readonly id: 'lessons' | 'practice' | 'charts' | 'piece' | 'search';
  readonly name: string;
  readonly path: string;
}

/** Pages to look something up in; the foot of each page lists them. */
export const LOOK_UP: readonly Omit<Room, 'id'>[] = [
  { name: 'Glossary', path: 'glossary/' },
  { name: 'Faults and fixes', path: 'faults/' },
  { name: 'Cautions', path: 'cautions/' },
];

/** The rooms of the workbook, as the head of each page lists them. Paths are below the place where it is served. */
export const ROOMS: readonly Room[] = [
  { id: 'lessons', name: 'Lessons', path: 'lessons/' },
  { id: 'practice', name: 'Practice', path: 'practice/' },
  { id: 'charts', name: 'Charts', path: 'charts/' },
  { id: 'piece', name: 'Your piece', path: 'piece/' },
  { id: 'search', name: 'Search', path: 'search/' },
];
