import { requireDistance } from '../curve/sound.js';
import { besides, interiorAngle } from '../joining/corner.js';
import { areUnsewn, followEachOther, type Meeting, meetingsAtEnds, runningOn } from '../joining/meetings.js';
import { liesUnder } from '../joining/turns-back.js';
import { pathLength } from '../path/length.js';
import { endTangent, startTangent } from '../path/path.js';
import { dartsOf, edgePath, pieceNamed, pleatsOf } from '../pattern/outline.js';
import { requireWhole, requireWholePiece, requireWholeSeam } from '../pattern/require-whole.js';
import type { Dart, EdgeRef, Pattern, Piece, Pleat, Seam } from '../pattern/types.js';
import type { Thing } from '../telling.js';

import { blendReach } from '../tolerance.js';
import { angleBetween } from '../vector.js';

/** Two edges that become one line where something between them is sewn shut. */
export interface JoinedLine {
  /** What is sewn shut: a seam, a dart, a pleat; absent where the two meet as they are drawn. */
  readonly closed?: Thing;
  readonly first: EdgeRef;
  readonly second: EdgeRef;
  /** Degrees: 180 − (angle on one side + angle on the other). Positive is a peak, negative a dip. */
  readonly cornerDeg: number;
  /** mm by which the first edge's end stands out beyond the second's along what is sewn shut. */
  readonly stepMm: number;
  /** mm to take off at the corner (a peak) or to add (negative: a dip), blended out within `blendMm` to both sides. */
  readonly takeMm: number;
  readonly blendMm: number;
}

/**
 * The lines that must run on across the ends of a seam (trade-notes §4): with side b laid on side a, the neighbours
 * at an end are compared if both are unsewn, or if they follow one another in one side of one seam; never at the
 * garment's centre line, nor where one piece is turned back under the other. `stepMm` is what the walk leaves over at
 * the seam's end beyond the ease wanted.
 */
export function joinedLinesOf(pattern: Pattern, seam: Seam, remainderMm: number): readonly JoinedLine[] {
  requireWhole(pattern);
  requireWholeSeam(seam);
  requireDistance(remainderMm, 'length');
  return runningOn(pattern, seam).map(meeting =>
    joinedLine(
      { closed: { seam: seam.name }, first: meeting.first, second: meeting.second },
      Math.PI - meeting.a.corner.interior - meeting.b.corner.interior,
      meeting.at === 'end' ? remainderMm : 0,
      edgeLengths(pattern, meeting),
    ),
  );
}

/**
 * The ends of a piece that is turned back under another (a facing, a lining) against the edges they lie on: the corner
 * is by how much the angle on side a is wider than that on side b, where the two should be alike.
 */
export const turnedBackLines = (pattern: Pattern, seam: Seam): readonly JoinedLine[] =>
  meetingsAtEnds(pattern, seam)
    .filter(
      ({ a, b, first, second }) =>
        liesUnder(a.piece) !== liesUnder(b.piece) && areUnsewn(pattern, liesUnder(a.piece) ? first : second),
    )
    .map(meeting =>
      joinedLine(
        { closed: { seam: seam.name }, first: meeting.first, second: meeting.second },
        meeting.a.corner.interior - meeting.b.corner.interior,
        0,
        edgeLengths(pattern, meeting),
      ),
    );

const edgeLengths = (pattern: Pattern, { first, second }: Meeting): readonly number[] =>
  [first, second].map(({ piece, edge }) => pathLength(edgePath(pieceNamed(pattern, piece), edge)));

/** The lines that must run on across the mouths of a piece's darts and pleats, each folded shut. */
export function joinedLinesAcrossFolds(pattern: Pattern, piece: Piece): readonly JoinedLine[] {
  requireWhole(pattern);
  requireWholePiece(piece);
  return [...dartsOf(piece), ...pleatsOf(piece)].flatMap(fold => {
    const before = besides(piece.outline, fold, 'start'),
      after = besides(piece.outline, fold, 'end');
    if (before.type !== 'edge' || after.type !== 'edge') return [];
    const first = { piece: piece.name, edge: before.name, end: 'end' as const };
    const second = { piece: piece.name, edge: after.name, end: 'start' as const };
    if (
      before.name !== after.name &&
      !areUnsewn(pattern, first, second) &&
      !followEachOther(pattern, first, second)
    )
      return [];
    const [arriving, leaving] = [endTangent(before.path), startTangent(after.path)];
    const isDart = fold.type === 'dart';
    const corner = isDart
      ? Math.PI -
        interiorAngle(arriving, startTangent(fold.legs[0])) -
        interiorAngle(endTangent(fold.legs[1]), leaving)
      : // A pleat's folds are parallel: closed, its far side has only been moved along the mouth.
        angleBetween(arriving, leaving);
    const stepMm = isDart ? pathLength(fold.legs[0]) - pathLength(fold.legs[1]) : 0;
    const reach = [pathLength(before.path), pathLength(after.path)];
    return [joinedLine({ closed: thingOf(piece, fold), first, second }, corner, stepMm, reach)];
  });
}

const thingOf = (piece: Piece, fold: Dart | Pleat): Thing =>
  fold.type === 'dart' ? { piece: piece.name, dart: fold.name } : { piece: piece.name, pleat: fold.name };

/**
 * Pairs of edges of one piece that meet directly and make one line: they follow one another in one side of a seam, or
 * are both unsewn hems. A closed dart leaves such a pair where it lay.
 */
export function weldedLines(pattern: Pattern, piece: Piece): readonly JoinedLine[] {
  requireWhole(pattern);
  requireWholePiece(piece);
  return piece.outline.parts.flatMap(before => {
    const after = besides(piece.outline, before, 'end');
    if (before.type !== 'edge' || after.type !== 'edge' || before.name === after.name) return [];
    const first = { piece: piece.name, edge: before.name, end: 'end' as const };
    const second = { piece: piece.name, edge: after.name, end: 'start' as const };
    const hems = [before, after].every(e => e.kind === 'hem') && areUnsewn(pattern, first, second);
    if (!hems && !followEachOther(pattern, first, second)) return [];
    const corner = angleBetween(endTangent(before.path), startTangent(after.path));
    const lengths = [pathLength(before.path), pathLength(after.path)];
    return [joinedLine({ first, second }, corner, 0, lengths)];
  });
}

/**
 * The fair curve that leaves both lines `blend` mm from the corner stands blend × sin(corner / 2) / 2 from it:
 * the quadratic with its control point in the corner passes half way between the corner and its own chord.
 */
function joinedLine(
  { closed, first, second }: Pick<JoinedLine, 'closed' | 'first' | 'second'>,
  corner: number,
  stepMm: number,
  lengths: readonly number[],
): JoinedLine {
  const blendMm = Math.min(blendReach, ...lengths);
  return {
    ...(closed ? { closed } : {}),
    first: { piece: first.piece, edge: first.edge },
    second: { piece: second.piece, edge: second.edge },
    cornerDeg: (corner * 180) / Math.PI,
    stepMm,
    takeMm: (blendMm * Math.sin(corner / 2)) / 2,
    blendMm,
  };
}
