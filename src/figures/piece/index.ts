export { edgesOf, topOf } from './courses.ts';
export { describePiece, type PieceKey, tellStanding } from './describe.ts';
export {
  type DrawPieceOptions,
  drawPiece,
  LEVEL_SIZES,
  type Level,
  levelFor,
  PiecePainter,
  type PiecePart,
  pieceStyle,
} from './draw.ts';
export {
  type Box,
  boxOf,
  columnPixels,
  following,
  type Look,
  lookBox,
  moved,
  NEARER,
  NEAREST,
  nearer,
  turnedLook,
  wholeLook,
} from './look.ts';
export { partPath, pieceModel, stringPath, turnRound } from './model.ts';
export type {
  Course,
  Ending,
  Moved,
  Part,
  PieceInput,
  PieceModel,
  PieceShape,
  PieceString,
  Place,
} from './model-types.ts';
export { MOMENTS, type Moment, type MomentPlan, momentsOf, piecesOf, type Standing, standingAt } from './moments.ts';
export { COLUMN, ROW } from './packed.ts';
export { UNIT } from './pen.ts';
export { type PiecePlateOptions, piecePlate } from './plate.ts';
export { type At, atStanding, atStep, knotBack, knotOn, rowBack, rowOn, sameIn, stepOf, stepsIn } from './walk.ts';
