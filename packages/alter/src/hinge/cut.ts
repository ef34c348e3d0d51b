import { type Path, type Piece, type Point, pathLength, pathOf, type Saying } from '@paperhinge/geometry';
import { hypot, min } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { pathEnd, pointAlong } from '@paperhinge/geometry/paths';
import { partsOfEdge } from '@paperhinge/geometry/pattern';
import { dartNamed } from './dart-named.js';
import { refusal, saying } from './tellings.js';

/** Where a cut begins or ends. */
export type CutEnd =
  /** A place on an edge, mm of arc length from the edge's start (clockwise). What opens there belongs to that edge. */
  | { readonly edge: string; readonly along: number }
  /** The drawn apex of a dart: the cut parts the two legs. */
  | { readonly dart: string }
  /** A point inside the piece, where the cut stops or meets others. */
  | { readonly pivot: Point };

/** A slash through the paper, drawn on the piece before anything moves. */
export interface Cut {
  readonly from: CutEnd;
  readonly to: CutEnd;
  /** The way the scissors take, from `from` to `to`; absent = straight. Its ends must be those of the cut. */
  readonly course?: Path;
}

export const onEdge = (end: CutEnd): end is { readonly edge: string; readonly along: number } =>
  'edge' in end;

/**
 * The point at which a cut begins or ends, in mm.
 * @throws PatternError `unknown-edge`, `unknown-dart`, `not-a-number`
 */
export function pointOfEnd(piece: Piece, end: CutEnd): Point {
  if ('pivot' in end) return end.pivot;
  if ('dart' in end) return dartNamed(piece, end.dart).apex;
  let along = end.along;
  const parts = partsOfEdge(piece, end.edge);
  for (const { path } of parts) {
    const length = pathLength(path);
    // As on the ring: where a dart interrupts the edge, its first mouth end is meant, never the second.
    // Turned round, so that what is no number is refused as a place.
    if (!(along > length + tolerances.coincidenceTolerance)) return pointAlong(path, min(along, length));
    along -= length;
  }
  return pathEnd(parts.at(-1)!.path);
}

/**
 * The course of a cut.
 * @throws PatternError `slash-too-short` where both ends are one point; `unknown-edge`, `unknown-dart`
 */
export function courseOf(piece: Piece, cut: Cut): Path {
  if (cut.course) return cut.course;
  const from = pointOfEnd(piece, cut.from),
    to = pointOfEnd(piece, cut.to);
  if (hypot(to.x - from.x, to.y - from.y) <= tolerances.coincidenceTolerance)
    throw refusal(
      'slash-too-short',
      {},
      { piece: piece.name, ...(onEdge(cut.from) ? { edge: cut.from.edge } : {}) },
    );
  return pathOf([from, to]);
}

/** A cut as it is spoken of. */
export const slashOf = (cut: Cut): Saying =>
  saying('slash', { from: spokenEnd(cut.from), to: spokenEnd(cut.to) });

function spokenEnd(end: CutEnd): Saying {
  if ('edge' in end) return saying('slash-at-edge', { edge: { edge: end.edge }, alongMm: end.along });
  return 'dart' in end ? saying('slash-at-dart', { dart: { dart: end.dart } }) : saying('slash-at-point', {});
}
