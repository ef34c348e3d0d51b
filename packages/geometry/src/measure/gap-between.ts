import { type Corner, type EdgeEnd, endCorner, endOfTravel } from '../joining/corner.js';
import { neighboursAtEnds, type PlacedEnd } from '../joining/meetings.js';
import { pathLength, pointAlong } from '../path/length.js';
import { pathEnd, pathStart } from '../path/path.js';
import { edgePath, foldEdgeOf, partsOfEdge, pieceNamed } from '../pattern/outline.js';
import { isCentreEdge } from '../pattern/roles/roles.js';
import type { EdgeRun, OutlinePart, Pattern, Piece } from '../pattern/types.js';
import { joiningGap } from '../tolerance.js';
import { cross, distance, type Point, subtract, unit } from '../vector.js';

/**
 * Straight distance in mm from the end of one run to the beginning of the next where they do not meet in the garment:
 * the other side of the seam bridges it (a neckband over an inset). It is 0 where they meet at a corner, across a
 * dart, a pleat, a fold or a centre seam, or in different pieces, which a seam then joins.
 */
export function gapBetween(pattern: Pattern, before: EdgeRun, after: EdgeRun): number {
  if (before.piece !== after.piece) return 0;
  const piece = pieceNamed(pattern, before.piece);
  const leaving = endCorner(piece, before, 'end'),
    arriving = endCorner(piece, after, 'start');
  if (before.edge === after.edge && before.reversed !== after.reversed)
    return leaving ? gapToMirrorImage(piece, leaving) : 0;
  if (leaving && arriving && isSewnShut(leaving.neighbour) && leaving.neighbour === arriving.neighbour)
    return 0;
  const gap = distance(endOfRun(piece, before, 'end'), endOfRun(piece, after, 'start'));
  return gap <= joiningGap || areSewnTogether(pattern, before, after) ? 0 : gap;
}

/** Distance from a corner to its mirror image in the fold; 0 at the fold or at a centre seam. */
function gapToMirrorImage(piece: Piece, { neighbour, point }: Corner): number {
  const fold = foldEdgeOf(piece);
  if (!fold || (neighbour.type === 'edge' && isCentreEdge(neighbour))) return 0;
  const onFold = pathStart(fold.path);
  const along = unit(subtract(pathEnd(fold.path), onFold));
  const gap = 2 * Math.abs(cross(along, subtract(point, onFold)));
  return gap > joiningGap ? gap : 0;
}

/** Where a run starts or ends on its piece. */
export function endOfRun(piece: Piece, run: EdgeRun, at: EdgeEnd): Point {
  const path = edgePath(piece, run.edge);
  const end = endOfTravel(run, at);
  return pointAlong(path, end === 'start' ? (run.part?.from ?? 0) : (run.part?.to ?? pathLength(path)));
}

/** Whether a part of an outline is closed when the piece is sewn, so that its two ends lie on one another. */
const isSewnShut = (part: OutlinePart): boolean => part.type !== 'edge';

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
 * wide, in mm. Darts and pleats make none, as they are sewn shut.
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
    const gapMm = isSewnShut(between) ? 0 : distance(pathEnd(before.path), pathStart(part.path));
    return gapMm > joiningGap ? [{ alongMm, gapMm }] : [];
  });
}
