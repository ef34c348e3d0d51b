import { at, type Pattern, type Piece, type Point } from '@paperhinge/geometry';
import { boundsOfPath } from '@paperhinge/geometry/paths';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { subtract, translation } from '@paperhinge/geometry/plane';
import { movedPiece } from '../moved-edges/moved-part.js';

/**
 * Where a drafted piece is laid in the drawing: where the piece of its name lay, else below all others, so
 * that nothing lies under it when the drawing is opened.
 */
export function freePlace(pattern: Pattern, name: string): Point {
  const old = pattern.pieces.find(p => p.name === name);
  if (old) return boundsOfPath(outlinePath(old.outline)).min;
  const boxes = pattern.pieces.map(p => boundsOfPath(outlinePath(p.outline)));
  return at(Math.min(...boxes.map(b => b.min.x)), Math.max(...boxes.map(b => b.max.y)) + apart);
}

/** mm. Room for both pieces' allowances, hems included. */
const apart = 100;

/** A piece moved, with all that lies on it, to a place of its own in the drawing. */
export function laidAside(pattern: Pattern, piece: Piece): Piece {
  const corner = boundsOfPath(outlinePath(piece.outline)).min;
  return movedPiece(piece, translation(subtract(freePlace(pattern, piece.name), corner)));
}
