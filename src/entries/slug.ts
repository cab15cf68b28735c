const NAME = /^(\d\d)-([a-z0-9]+(?:-[a-z0-9]+)*)\.mdx$/;

/** What a lesson's file name says: `04-the-fitting-sum.mdx` is number 4, at `/lessons/the-fitting-sum/`. */
export interface FileName {
  readonly order: number;
  readonly slug: string;
}

/** Reads a lesson's file name; undefined where it is not two digits, a hyphen and small letters, digits, hyphens. */
export function readFileName(name: string): FileName | undefined {
  const [, order, slug] = name.match(NAME) ?? [];
  return order === undefined || slug === undefined ? undefined : { order: Number(order), slug };
}
