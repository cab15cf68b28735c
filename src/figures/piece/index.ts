export { describePiece, type PieceKey } from './describe.ts';
export { type DrawPieceOptions, drawPiece, LEVEL_SIZES, type Level, levelFor } from './draw.ts';
export { MOST_KNOTS, partPath, pieceModel, stringPath, turnRound } from './model.ts';
export type { Course, Part, PieceInput, PieceModel, PieceShape, PieceString, Place } from './model-types.ts';
