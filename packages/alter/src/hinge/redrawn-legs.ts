import { type Dart, type Piece, type Point, pathOf } from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { distance } from '@paperhinge/geometry/plane';
import { selfCrossings } from '@paperhinge/geometry/regions';
import { dartAngle } from './assemble.js';
import { refusal } from './tellings.js';

/** Legs that differ by more than this share of the mouth point to a place over 30° off the dart's axis. */
const steepestPivot = 1 / 2;

/**
 * The piece with a dart's legs redrawn straight from its mouth to another point, as is done before a dart is turned
 * about the bust point, and after.
 * @throws PatternError `pivot-out-of-reach`: the point lies outside, off to the side of the dart, or beyond an edge
 */
export function withLegsTo(piece: Piece, dart: Dart, apex: Point): Piece {
  const a = pathStart(dart.legs[0]),
    b = pathEnd(dart.legs[1]);
  const redrawn: Dart = { ...dart, apex, legs: [pathOf([a, apex]), pathOf([apex, b])] };
  const parts = piece.outline.parts.map(p => (p === dart ? redrawn : p));
  const step = Math.abs(distance(a, apex) - distance(b, apex));
  // A point outside the piece could be reached across its outline only; one in the dart's own mouth makes it shorter.
  const reached =
    dartAngle(redrawn) * dartAngle(dart) > 0 &&
    step <= steepestPivot * distance(a, b) &&
    selfCrossings(outlinePath({ parts })).length === 0;
  if (!reached) throw refusal('pivot-out-of-reach', { dart: { piece: piece.name, dart: dart.name } });
  return { ...piece, outline: { parts } };
}
