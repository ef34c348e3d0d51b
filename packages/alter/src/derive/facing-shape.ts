import {
  type Edge,
  edgeNamed,
  line,
  type OutlinePart,
  type Path,
  type Piece,
  pathLength,
  pathOf,
} from '@paperhinge/geometry';
import { pathWithoutLoops } from '@paperhinge/geometry/cutting-line';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import {
  intersectPaths,
  joined,
  type PathMeeting,
  pathEnd,
  pathStart,
  pointAlong,
  reversedPath,
  subpath,
} from '@paperhinge/geometry/paths';
import { outlinePath, pathsOfPart } from '@paperhinge/geometry/pattern';
import { containsPoint, selfCrossings } from '@paperhinge/geometry/regions';
import { joinedInOne, parallelPieces } from '../moved-edges/inward-parallel.js';
import { endingIn, reachOf, runOn, startingIn } from '../moved-edges/meet.js';
import { longestEnd, squareCut } from './facing-cut.js';
import { refusal } from './tellings.js';

/** What a facing or stay is cut from its source as, clockwise: outer edges, one end, the inner line, the other end. */
export interface FacingShape {
  readonly outer: readonly Edge[];
  /** Stretches of the source's other edges from the outer line's end to the inner line, or to a straight cut across. */
  readonly afterOuter: readonly EndStretch[];
  /** From its meeting with `afterOuter` back to that with `beforeOuter`. */
  readonly inner: Path;
  readonly beforeOuter: readonly EndStretch[];
  /** mm of the inner line left out where an edge bends more tightly than the width. */
  readonly trimmedMm: number;
}

export interface EndStretch {
  readonly path: Path;
  /** The edge it is a stretch of, and how many mm of it lie before the stretch; absent for a straight cut. */
  readonly of?: { readonly edge: Edge; readonly from: number };
}

/** @throws PatternError `edges-not-in-one-run`, `dart-in-facing`, `facing-too-wide`, `unknown-edge` */
export function facingShape(piece: Piece, edges: readonly string[], width: number): FacingShape {
  const { outer, rest } = partedRing(piece, edges);
  const drawn = withoutSpecks(joined(...outer.map(e => e.path)));
  if (drawn.segments.length === 0)
    throw refusal('facing-too-wide', { piece: piece.name, widthMm: width }, { piece: piece.name });
  const parallel = joinedInOne(parallelPieces(drawn, width), width);
  const inside = pathWithoutLoops(parallel);
  const others = joined(...rest.flatMap(pathsOfPart));
  const whole = pathLength(others);
  const reach = reachOf(outlinePath(piece.outline)) + width;
  const ahead = firstMeeting(inside, others, reach, m => m.alongB);
  const back = firstMeeting(reversedPath(inside), others, reach, m => whole - m.alongB);
  const endCut = ahead && ahead.alongB <= farthest(rest[0], width) ? ahead : undefined;
  const startCut = back && whole - back.alongB <= farthest(rest.at(-1), width) ? back : undefined;
  const endSquare = endCut ? undefined : squareCut(inside, rest[0], 'end', width);
  const startSquare = startCut ? undefined : squareCut(inside, rest.at(-1), 'start', width);
  const toEnd = cutOrRunOn(inside, endCut ?? endSquare);
  const grown = pathLength(toEnd) - pathLength(inside);
  const start = startCut ?? startSquare;
  const inner = reversedPath(
    cutOrRunOn(reversedPath(toEnd), start && { ...start, alongA: start.alongA + grown }),
  );
  const corner = { end: pathEnd(outer.at(-1)!.path), start: pathStart(outer[0]!.path) };
  const afterOuter = endCut
    ? stretches(piece, rest, 0, endCut.alongB)
    : [
        ...(endSquare ? stretches(piece, rest, 0, endSquare.along) : []),
        { path: pathOf(line(endSquare?.onEdge ?? corner.end, pathEnd(inner))) },
      ];
  const beforeOuter = startCut
    ? stretches(piece, rest, startCut.alongB, whole)
    : [
        { path: pathOf(line(pathStart(inner), startSquare?.onEdge ?? corner.start)) },
        ...(startSquare ? stretches(piece, rest, whole - startSquare.along, whole) : []),
      ];
  const shape = {
    outer,
    afterOuter: snappedEnd(afterOuter, pathEnd(inner)),
    inner: reversedPath(inner),
    beforeOuter: snappedStart(beforeOuter, pathStart(inner)),
    trimmedMm: pathLength(parallel) - pathLength(inside),
  };
  requireSound(piece, shape, width);
  return shape;
}

/** Where a dart was closed its legs may have left a speck of line between them, whose own direction means nothing. */
const withoutSpecks = ({ segments }: Path): Path => ({
  segments: segments.filter(segment => pathLength(pathOf(segment)) > tolerances.joiningGap),
});

/** Run on past its end, the inner line is cut off where the outline first comes across it, seen from the corner. */
function firstMeeting(
  inside: Path,
  others: Path,
  reach: number,
  fromCorner: (meeting: PathMeeting) => number,
): PathMeeting | undefined {
  return intersectPaths(runOn(inside, reach), others)
    .filter(m => m.alongA > pathLength(inside) / 2)
    .reduce<PathMeeting | undefined>(
      (best, m) => (best && fromCorner(best) <= fromCorner(m) ? best : m),
      undefined,
    );
}

/**
 * mm from the corner at which the inner line may meet the next edge. On a fold it may be anywhere: the facing of a
 * steep V runs down the fold as far as its inner line needs.
 */
const farthest = (next: OutlinePart | undefined, width: number): number =>
  next?.type === 'edge' && next.kind === 'fold' ? pathLength(next.path) : longestEnd * width;

/**
 * The edges to be faced in one run, and the rest of the ring from their end round to their start.
 * @throws PatternError `edges-not-in-one-run`, `unknown-edge`
 */
export function partedRing(piece: Piece, edges: readonly string[]) {
  const ring = piece.outline.parts;
  const isOuter = (part: OutlinePart): part is Edge => part.type === 'edge' && edges.includes(part.name);
  // Refused here, where a name is not an edge's.
  for (const name of edges) edgeNamed(piece, name);
  const starts = [...ring.keys()].filter(
    i => isOuter(ring[i]!) && !isOuter(ring[(i + ring.length - 1) % ring.length]!),
  );
  if (starts.length !== 1)
    throw refusal(
      'edges-not-in-one-run',
      { edges: edges.map(edge => ({ piece: piece.name, edge })) },
      { piece: piece.name },
    );
  const turned = [...ring.slice(starts[0]!), ...ring.slice(0, starts[0]!)];
  const rest: readonly OutlinePart[] = turned.filter(part => !(part.type === 'edge' && isOuter(part)));
  return { outer: turned.filter(isOuter), rest };
}

function cutOrRunOn(
  path: Path,
  cut: { readonly alongA: number; readonly point: Parameters<typeof endingIn>[1] } | undefined,
): Path {
  if (!cut) return path;
  const length = pathLength(path);
  if (cut.alongA <= length) return endingIn(subpath(path, 0, cut.alongA), cut.point);
  return joined(path, pathOf(line(pathEnd(path), cut.point)));
}

/** What of the other edges lies between two places on their run. */
function stretches(
  piece: Piece,
  rest: readonly OutlinePart[],
  from: number,
  to: number,
): readonly EndStretch[] {
  let along = 0;
  return rest.flatMap((part): readonly EndStretch[] => {
    const path = joined(...pathsOfPart(part));
    const length = pathLength(path);
    const start = Math.max(0, from - along),
      end = Math.min(length, to - along);
    along += length;
    if (end - start <= 0) return [];
    if (part.type !== 'edge')
      throw refusal(
        'dart-in-facing',
        {
          dart:
            part.type === 'dart'
              ? { piece: piece.name, dart: part.name }
              : { piece: piece.name, pleat: part.name },
        },
        { piece: piece.name },
      );
    const stretch = start === 0 && end === length ? path : subpath(path, start, end);
    return [{ path: stretch, of: { edge: part, from: start } }];
  });
}

const snappedEnd = (ends: readonly EndStretch[], point: ReturnType<typeof pathEnd>): readonly EndStretch[] =>
  ends.map((e, i) => (i === ends.length - 1 ? { ...e, path: endingIn(e.path, point) } : e));
const snappedStart = (
  ends: readonly EndStretch[],
  point: ReturnType<typeof pathEnd>,
): readonly EndStretch[] => ends.map((e, i) => (i === 0 ? { ...e, path: startingIn(e.path, point) } : e));

export function requireSound(piece: Piece, shape: FacingShape, width: number): void {
  const whole = joined(
    ...shape.outer.map(e => e.path),
    ...shape.afterOuter.map(e => e.path),
    shape.inner,
    ...shape.beforeOuter.map(e => e.path),
  );
  const middle = pointAlong(shape.inner, pathLength(shape.inner) / 2);
  const outline = outlinePath(piece.outline);
  const innerLength = pathLength(shape.inner);
  const leaves = intersectPaths(shape.inner, outline).some(
    m => m.alongA > tolerances.joiningGap && m.alongA < innerLength - tolerances.joiningGap,
  );
  if (selfCrossings(whole).length === 0 && !leaves && containsPoint(outline, middle)) return;
  throw refusal('facing-too-wide', { piece: piece.name, widthMm: width }, { piece: piece.name });
}
