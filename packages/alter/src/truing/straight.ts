import { type Edge, line, type Path, type Piece, pathLength, pathOf } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { joined, pointAlong, subpath } from '@paperhinge/geometry/paths';
import { type EdgePosition, partsOfEdge, resolvePosition } from '@paperhinge/geometry/pattern';
import { refusal } from './tellings.js';

/** Between which places of an edge it is drawn straight; absent: from its start, to its end. */
export interface StraightBetween {
  readonly from?: EdgePosition;
  readonly to?: EdgePosition;
}

/**
 * The parts of an edge with a straight line between two places of it, the rest as it is; with no places named, each
 * part is straight from end to end.
 * @throws PatternError `straight-over-dart`, `straight-without-length`; those of `resolvePosition`
 */
export function straightParts(
  piece: Piece,
  edge: string,
  { from, to }: StraightBetween,
): readonly { readonly part: Edge; readonly path: Path }[] {
  const parts = partsOfEdge(piece, edge);
  const whole = parts.reduce((sum, part) => sum + pathLength(part.path), 0);
  const places = [
    from ? resolvePosition(piece, edge, from) : 0,
    to ? resolvePosition(piece, edge, to) : whole,
  ].sort((p, q) => p - q);
  if (!from && !to)
    return parts.map(part => ({ part, path: straightBetween(part.path, 0, pathLength(part.path)) }));
  const thing = { piece: piece.name, edge };
  if (places[1]! - places[0]! <= tolerances.joiningGap)
    throw refusal('straight-without-length', { edge: thing });
  let start = 0;
  for (const part of parts) {
    const length = pathLength(part.path);
    const [a, b] = places.map(place => place - start) as [number, number];
    if (a >= -tolerances.joiningGap && b <= length + tolerances.joiningGap)
      // So near to an end that end is meant: what is left beside it would be too short to stay.
      return [
        {
          part,
          path: straightBetween(
            part.path,
            a <= tolerances.joiningGap ? 0 : a,
            b >= length - tolerances.joiningGap ? length : b,
          ),
        },
      ];
    start += length;
  }
  throw refusal('straight-over-dart', { edge: thing });
}

function straightBetween(path: Path, from: number, to: number): Path {
  const length = pathLength(path);
  const near = tolerances.joiningGap;
  const chord = pathOf(line(pointAlong(path, from), pointAlong(path, to)));
  return joined(
    ...(from > near ? [subpath(path, 0, from)] : []),
    chord,
    ...(to < length - near ? [subpath(path, to, length)] : []),
  );
}
