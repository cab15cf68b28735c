export {
  type CrossingChoice,
  type CrossingPlace,
  type CrossingVerdict,
  checkCrossing,
  closeUp,
  crossingPlaces,
  pickCrossing,
  type Whereabouts,
} from './crossing-question.ts';
export { type Crossing, crossingsOf } from './crossings.ts';
export { type DrawOptions, drawModel } from './draw.ts';
export type { Stop } from './keys.ts';
export { basesFor, type KnotName, knots } from './knots.ts';
export { mirrorId, mirrorKnot, mirrorModel } from './mirror.ts';
export { type Strand, type StrandModel, type StrandOptions, strandModel } from './model.ts';
export { orderDown, passes } from './passes.ts';
export type { Path, Point } from './point.ts';
export { isStop, REPLAY, replayed, snapped, stopAfter, stopAt, stopBefore } from './stops.ts';
export { STRING_COLOURS, type StringColour, stringPaint } from './string-colours.ts';
export { type Told, type ToldKey, tell } from './told.ts';
export type { Frame, NamedMoment, Role } from './tying.ts';
