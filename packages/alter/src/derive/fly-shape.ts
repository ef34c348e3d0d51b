import { type Edge, edgeNamed, type Path, type Piece, pathLength, roleOf } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import {
  endTangent,
  fairCurve,
  intersectPaths,
  joined,
  pathEnd,
  reversedPath,
  subpath,
  tangentAlong,
} from '@paperhinge/geometry/paths';
import { partsOfEdge } from '@paperhinge/geometry/pattern';
import { leftOf, rightOf } from '@paperhinge/geometry/plane';
import { joinedInOne, parallelPieces } from '../moved-edges/inward-parallel.js';
import { reachOf, runOnBothWays, startingIn } from '../moved-edges/meet.js';
import { refusal } from './tellings.js';

/** The centre front edge of trousers or a skirt as a fly is drawn on it: from the waist downwards. */
export interface FlyFront {
  readonly piece: Piece;
  readonly edge: Edge;
  readonly waist: Edge;
  /** The centre front, and the waist, each from the corner where they meet. */
  readonly down: Path;
  readonly across: Path;
  /** The outline runs down the centre front from the waist; else up to it. */
  readonly downwards: boolean;
}

/** A fly's measures, mm: of the opening, how far beyond it the fly reaches, and how wide it is. */
export interface FlyMeasures {
  readonly length: number;
  readonly below: number;
  readonly width: number;
}

/**
 * @throws PatternError `fly-not-at-waist`: neither end of the edge meets a waist; `fly-on-fold`; `fly-beyond-edge`;
 *   `unknown-edge`
 */
export function flyFront(piece: Piece, name: string, { length, below }: FlyMeasures): FlyFront {
  const edge = { piece: piece.name, edge: name };
  const { kind } = edgeNamed(piece, name);
  if (kind === 'fold') throw refusal('fly-on-fold', { edge }, edge);
  const { parts } = piece.outline;
  const own = partsOfEdge(piece, name);
  const at = (part: Edge, step: number) => parts[(parts.indexOf(part) + step + parts.length) % parts.length]!;
  const [before, after] = [at(own[0]!, -1), at(own.at(-1)!, 1)];
  const isWaist = (part: typeof before): part is Edge => part.type === 'edge' && roleOf(part) === 'waist';
  const waist = [before, after].find(isWaist);
  if (!waist) throw refusal('fly-not-at-waist', { edge }, edge);
  const downwards = waist === before;
  const part = downwards ? own[0]! : own.at(-1)!;
  const down = downwards ? part.path : reversedPath(part.path);
  const across = downwards ? reversedPath(waist.path) : waist.path;
  const lengthMm = pathLength(down);
  if (length + below >= lengthMm - tolerances.joiningGap)
    throw refusal('fly-beyond-edge', { edge, wantedMm: length + below, lengthMm }, edge);
  return { piece, edge: part, waist, down, across, downwards };
}

/**
 * The line that a fly ends at or is topstitched along: from the waist beside the centre front at its width, rounded at
 * the end of the opening and square on to the centre front below it.
 *
 * @param across what it begins at: the waist itself, or for a fly beyond the centre front the waist turned over there
 * @param side which side of the centre front it lies on: into the cloth, or beyond
 * @throws PatternError `facing-end-too-wide` where the waist is not so wide there
 */
export function flyLine(
  front: FlyFront,
  { length, below, width }: FlyMeasures,
  across: Path,
  side: 'in' | 'beyond' = 'in',
): Path {
  const { piece, waist, down, downwards } = front;
  // The cloth is to the right of a clockwise outline, so also of the way down where that is the outline's own.
  const toRight = downwards === (side === 'in');
  const straight = Math.max(tolerances.joiningGap, length - width);
  const offset = toRight ? width : -width;
  const parallel = joinedInOne(parallelPieces(subpath(down, 0, straight), offset), offset);
  const reach = reachOf(across);
  const [crossing] = intersectPaths(runOnBothWays(parallel, reach), across)
    .filter(({ alongA }) => alongA - reach < pathLength(parallel))
    .sort((one, other) => one.alongB - other.alongB);
  if (!crossing) {
    const edge = { piece: piece.name, edge: waist.name };
    throw refusal('facing-end-too-wide', { edge, widthMm: width, edgeMm: pathLength(across) }, edge);
  }
  const from = crossing.alongA - reach;
  const upright =
    from > 0 ? subpath(parallel, from, Number.POSITIVE_INFINITY) : runOnBothWays(parallel, -from);
  const beside = startingIn(from > 0 ? upright : withoutLast(upright), crossing.point);
  const end = subpath(down, 0, length + below);
  const square = toRight
    ? leftOf(tangentAlong(down, length + below))
    : rightOf(tangentAlong(down, length + below));
  return joined(
    beside,
    fairCurve(
      { point: pathEnd(beside), direction: endTangent(beside) },
      { point: pathEnd(end), direction: square },
    ),
  );
}

/** Without what it was run on by at its far end. */
const withoutLast = ({ segments }: Path): Path => ({ segments: segments.slice(0, -1) });

/** How far along the waist a fly's line begins, mm from the centre front. */
export const alongWaist = (across: Path, line: Path): number => {
  const [meeting] = intersectPaths(line, across).filter(({ alongA }) => alongA <= tolerances.joiningGap);
  return meeting?.alongB ?? 0;
};
