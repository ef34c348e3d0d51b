import { pathLength } from '../path/length.js';
import { pathEnd, pathStart } from '../path/path.js';
import { foldEdgeOf, partsOfEdge, pieceNamed } from '../pattern/outline.js';
import type { EdgeRun, Pattern, Piece } from '../pattern/types.js';
import { joiningGap } from '../tolerance.js';
import { cross, distance, subtract, unit } from '../vector.js';
import { isCentreName } from './centre.js';
import { cornerAt, type EdgeEnd, endOfTravel } from './corner.js';
import { neighboursAtEnds, type PlacedEnd } from './joined-lines.js';

/**
 * Straight distance in mm from the end of one run to the beginning of the next where they do not meet in the garment:
 * the other side of the seam bridges it (a neckband over an inset). It is 0 where they meet at a corner, across a
 * dart, a fold or a centre seam, or in different pieces, which a seam then joins.
 */
export function gapBetween(pattern: Pattern, before: EdgeRun, after: EdgeRun): number {
  if (before.piece !== after.piece) return 0;
  const piece = pieceNamed(pattern, before.piece);
  const leaving = cornerAt(piece, before.edge, endOfTravel(before, 'end'));
  const arriving = cornerAt(piece, after.edge, endOfTravel(after, 'start'));
  if (before.edge === after.edge && before.reversed !== after.reversed) {
    const fold = foldEdgeOf(piece);
    if (!fold || (leaving.neighbour.type === 'edge' && isCentreName(leaving.neighbour.name))) return 0;
    // To the mirror image of the same corner in the fold.
    const onFold = pathStart(fold.path);
    const along = unit(subtract(pathEnd(fold.path), onFold));
    const gap = 2 * Math.abs(cross(along, subtract(leaving.point, onFold)));
    return gap > joiningGap ? gap : 0;
  }
  if (leaving.neighbour.type === 'dart' && leaving.neighbour === arriving.neighbour) return 0;
  const gap = distance(leaving.point, arriving.point);
  return gap <= joiningGap || areSewnTogether(pattern, before, after) ? 0 : gap;
}

/** Whether some seam of the pattern ends where one run ends and the next begins, and so brings them together. */
function areSewnTogether(pattern: Pattern, before: EdgeRun, after: EdgeRun): boolean {
  const is = (placed: PlacedEnd, run: EdgeRun, at: EdgeEnd) =>
    placed.piece === run.piece && placed.edge === run.edge && placed.end === endOfTravel(run, at);
  return pattern.seams
    .flatMap(seam => neighboursAtEnds(pattern, seam))
    .some(
      ({ first, second }) =>
        (is(first, before, 'end') && is(second, after, 'start')) ||
        (is(second, before, 'end') && is(first, after, 'start')),
    );
}

/**
 * The gaps that another edge (an inset) makes within one edge: how far along it from its start, clockwise, and how
 * wide, in mm. A dart makes none, as it is sewn shut.
 */
export function gapsWithin(
  piece: Piece,
  edge: string,
): readonly { readonly alongMm: number; readonly gapMm: number }[] {
  const ring = piece.outline.parts;
  const parts = partsOfEdge(piece, edge);
  let alongMm = 0;
  return parts.slice(1).flatMap((part, i) => {
    const before = parts[i]!;
    alongMm += pathLength(before.path);
    const between = ring[(ring.indexOf(before) + 1) % ring.length]!;
    const gapMm = between.type === 'dart' ? 0 : distance(pathEnd(before.path), pathStart(part.path));
    return gapMm > joiningGap ? [{ alongMm, gapMm }] : [];
  });
}
