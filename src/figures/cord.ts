import type { Shape } from './drawing.ts';

/** The twist of cords of the given width, with which `toSvg` paints them; one is for cords that run across. */
export const twist = <Key extends string>(width: number): Shape<Key> => {
  const tile = (id: string, turned: string): Shape<Key> => ({
    tag: 'pattern',
    id,
    width: 8,
    height: Math.max(2.2, width * 0.72),
    patternUnits: 'userSpaceOnUse',
    patternTransform: `${turned}skewY(-32)`,
    shapes: [{ tag: 'path', is: 'ply', d: 'M0 1h8' }],
  });
  return { tag: 'defs', shapes: [tile('twist', ''), tile('across', 'rotate(90)')] };
};

/** Cords of one weight, none crossing another; `is` has `across` for cords that run level. */
export const cord = <Key extends string>(width: number, data: string, is = '', colour?: string): Shape<Key> => ({
  tag: 'cord',
  is,
  width,
  d: data,
  colour,
});
