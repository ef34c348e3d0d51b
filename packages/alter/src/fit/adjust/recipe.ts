import { edgePath, type Pattern, type Piece, type Point, pieceNamed } from '@paperhinge/geometry';
import { pointAlong } from '@paperhinge/geometry/paths';
import type { Part } from './in-steps.js';
import { piecesFor, type Where } from './landmarks.js';

/** The steps of an adjustment, for a pattern and an amount in mm, 0 or more. */
export type Recipe = (pattern: Pattern, by: number) => readonly Part[];

/** A step for each piece of a part of the body, by its name, as the piece is when its turn comes. */
export const each =
  (where: Where, part: (pattern: Pattern, piece: Piece) => ReturnType<Part>) =>
  (pattern: Pattern): readonly Part[] =>
    piecesFor(pattern, where).map(
      ({ name }) =>
        now =>
          part(now, pieceNamed(now, name)),
    );

/** A place on an edge, mm from its start. */
export const placeOn = (piece: Piece, edge: string, along: number): Point =>
  pointAlong(edgePath(piece, edge), along);
