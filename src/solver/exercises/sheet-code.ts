/**
 * Which figures stand on whose sheet. A class has a code, and each of its learners a number; both together give the
 * seed of every exercise on the sheet. So the sheet, and the key to it, can be made again from the code alone.
 */
export interface SheetCode {
  /** 1 to 24 letters, digits and hyphens, all small: it stands in addresses and is read out in a room. */
  readonly code: string;
  /** The learner’s number from 1, or null for the sheet that the whole room sees. */
  readonly learner: number | null;
}

/** Most learners that one class has sheets for. */
export const MOST_LEARNERS = 40;

const CODE = /^[a-z0-9](?:[a-z0-9-]{0,22}[a-z0-9])?$/;

/**
 * What somebody typed as a class's code, as it is used: small letters, with a hyphen where they left a gap.
 *
 * @returns null where nothing of it can be used
 * @example readCode('Spring Tide ') // 'spring-tide'
 */
export function readCode(typed: string): string | null {
  const code = typed
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 24)
    .replace(/^-+|-+$/g, '');
  return CODE.test(code) ? code : null;
}

/**
 * A sheet as it stands in an address: `tide.3`, or `tide` for the room.
 *
 * @example sheetText({ code: 'tide', learner: 3 }) // 'tide.3'
 */
export const sheetText = ({ code, learner }: SheetCode): string => (learner === null ? code : `${code}.${learner}`);

/** The seed of one exercise on a sheet. The exercise's own id is in it, so that no two on a sheet have like figures. */
export const sheetSeed = (sheet: SheetCode, exercise: string): string => `${sheetText(sheet)} ${exercise}`;

/**
 * Reads a sheet out of an address.
 *
 * @returns null where the text is none, or the learner's number is not 1 to 40
 */
export function readSheet(text: string | null): SheetCode | null {
  const [code = '', number, ...more] = (text ?? '').split('.');
  if (more.length > 0 || !CODE.test(code)) return null;
  if (number === undefined) return { code, learner: null };
  const learner = /^[1-9]\d?$/.test(number) ? Number(number) : 0;
  return learner >= 1 && learner <= MOST_LEARNERS ? { code, learner } : null;
}

/**
 * The seed that an address asks for in one exercise: its own (`?sum-whole=7`) before that of a sheet (`?sheet=tide.3`).
 *
 * @param query what stands in the address after the path, with its question mark
 * @returns null where the address asks for nothing
 */
export function seedIn(query: string, exercise: string): string | null {
  const asked = new URLSearchParams(query);
  const sheet = readSheet(asked.get('sheet'));
  return asked.get(exercise) ?? (sheet && sheetSeed(sheet, exercise));
}
