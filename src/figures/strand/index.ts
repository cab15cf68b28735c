export { type Crossing, crossingsOf } from './crossings.ts';
export type { Stop } from './keys.ts';
export { type KnotName, knots } from './knots.ts';
export { mirrorId, mirrorKnot, mirrorModel } from './mirror.ts';
export { type Strand, type StrandModel, type StrandOptions, strandModel } from './model.ts';
export { orderDown, passes } from './passes.ts';
export type { Path, Point } from './point.ts';
export type { Frame, NamedMoment, Role } from './tying.ts';
export { type DrawOptions, drawModel } from './draw.ts';
