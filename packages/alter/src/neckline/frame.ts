import {
  type Edge,
  type OutlinePart,
  type Path,
  type PatternError,
  type Piece,
  type Point,
  pathLength,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import {
  intersectPaths,
  pathEnd,
  pathStart,
  pointAlong,
  reversedPath,
  startTangent,
  subpath,
} from '@paperhinge/geometry/paths';
import { isCentreEdge, isCentreLine, outlinePath } from '@paperhinge/geometry/pattern';
import { add, distance, dot, rightOf, scale, subtract, unit } from '@paperhinge/geometry/plane';
import { containsPoint } from '@paperhinge/geometry/regions';
import { grainDirection } from '../hinge/grain-direction.js';
import { middleOf } from '../moved-edges/grain.js';
import { lineThrough, reachOf, runOnBothWays } from '../moved-edges/meet.js';
import { refusal } from './tellings.js';

/** One half of a neckline as seen from the garment's centre line outwards. Places are `down` and `out` from `origin`. */
export interface NeckFrame {
  /** Where the present neck meets the centre line. */
  readonly origin: Point;
  /** mm down the centre line. */
  readonly depth: number;
  /** The new neck's lowest point, `depth` down the centre line. */
  readonly centrePoint: Point;
  readonly down: Point;
  readonly out: Point;
  /** The present neck from the centre line to the shoulder. */
  readonly neckOut: Path;
  /** The edge beyond the neck (the shoulder), outwards. */
  readonly beyond: Edge;
  readonly beyondOut: Path;
  /** The centre edge, where the neck ends on one. */
  readonly centre?: Edge;
  /** The outline runs from the shoulder to the centre here, against the frame. */
  readonly against: boolean;
}

export const outOf = (frame: NeckFrame, p: Point): number => dot(subtract(p, frame.origin), frame.out);
export const downOf = (frame: NeckFrame, p: Point): number => dot(subtract(p, frame.origin), frame.down);

/**
 * The frame of a neck that ends on a fold or centre edge, or both frames of a whole neck, in clockwise order.
 * @throws PatternError `neck-not-at-centre`, `no-centre-line`, `neckline-too-deep`, `dart-in-neck`
 */
export function neckFrames(piece: Piece, neck: Edge, depth: number): readonly NeckFrame[] {
  const ring = piece.outline.parts;
  const i = ring.indexOf(neck);
  const before = ring[(i + ring.length - 1) % ring.length]!,
    after = ring[(i + 1) % ring.length]!;
  const isFold = (part: OutlinePart): boolean => part.type === 'edge' && part.kind === 'fold';
  const isCentre = (part: OutlinePart): boolean => part.type === 'edge' && isCentreEdge(part);
  const on = [isFold, isCentre].find(test => test(before) || test(after));
  if (on) return [halfFrame(piece, neck, { before, after }, on(before), depth)];
  if (ring.some(isFold))
    throw refusal(
      'neck-not-at-centre',
      { piece: { piece: piece.name } },
      { piece: piece.name, edge: neck.name },
    );
  return wholeFrames(piece, neck, { before, after }, depth);
}

/** What lies before and after the neck, clockwise. */
interface Beside {
  readonly before: OutlinePart;
  readonly after: OutlinePart;
}

function halfFrame(
  piece: Piece,
  neck: Edge,
  { before, after }: Beside,
  startsAtCentre: boolean,
  depth: number,
): NeckFrame {
  const centre = (startsAtCentre ? before : after) as Edge;
  const beyond = edgeBeyond(piece, startsAtCentre ? after : before);
  const away = (edge: Edge, against: boolean): Path => (against ? reversedPath(edge.path) : edge.path);
  const neckOut = away(neck, !startsAtCentre);
  const centreDown = away(centre, startsAtCentre);
  if (depth >= pathLength(centreDown) - tolerances.joiningGap) throw tooDeep(piece, depth);
  const origin = pathStart(neckOut);
  const centrePoint = pointAlong(centreDown, depth);
  const down = depth > tolerances.joiningGap ? unit(subtract(centrePoint, origin)) : startTangent(centreDown);
  return {
    origin,
    depth,
    centrePoint,
    down,
    out: outwards(down, subtract(pathEnd(neckOut), origin)),
    neckOut,
    beyond,
    beyondOut: away(beyond, !startsAtCentre),
    centre,
    against: !startsAtCentre,
  };
}

function wholeFrames(
  piece: Piece,
  neck: Edge,
  { before, after }: Beside,
  depth: number,
): readonly NeckFrame[] {
  if (before === after)
    throw refusal(
      'no-shoulders',
      { edge: { piece: piece.name, edge: neck.name } },
      { piece: piece.name, edge: neck.name },
    );
  const { along, direction } = centreAcross(piece, neck);
  const origin = pointAlong(neck.path, along);
  const down = dot(direction, subtract(middleOf(piece), origin)) > 0 ? direction : scale(direction, -1);
  const centrePoint = add(origin, scale(down, depth));
  if (!containsPoint(outlinePath(piece.outline), centrePoint)) throw tooDeep(piece, depth);
  const half = (part: OutlinePart, neckOut: Path, against: boolean): NeckFrame => {
    const beyond = edgeBeyond(piece, part);
    return {
      origin,
      depth,
      centrePoint,
      down,
      out: outwards(down, subtract(pathEnd(neckOut), origin)),
      neckOut,
      beyond,
      beyondOut: against ? reversedPath(beyond.path) : beyond.path,
      against,
    };
  };
  return [
    half(before, reversedPath(subpath(neck.path, 0, along)), true),
    half(after, subpath(neck.path, along, Number.POSITIVE_INFINITY), false),
  ];
}

/** Where the centre line of a whole piece meets its neck: a line of the centre, else the grain at its middle. */
function centreAcross(piece: Piece, neck: Edge): { readonly along: number; readonly direction: Point } {
  const middle = pathLength(neck.path) / 2;
  const drawn = piece.lines.find(isCentreLine);
  if (drawn) {
    const line = runOnBothWays(drawn.path, reachOf(outlinePath(piece.outline)));
    const crossings = intersectPaths(neck.path, line);
    const nearest = crossings.reduce<number | undefined>(
      (best, c) =>
        best === undefined || Math.abs(c.alongA - middle) < Math.abs(best - middle) ? c.alongA : best,
      undefined,
    );
    if (nearest !== undefined)
      return { along: nearest, direction: unit(subtract(pathEnd(drawn.path), pathStart(drawn.path))) };
  }
  const grain = grainDirection(piece);
  if (grain) return { along: middle, direction: grain };
  throw refusal('no-centre-line', { piece: { piece: piece.name } }, { piece: piece.name });
}

const outwards = (down: Point, towards: Point): Point =>
  dot(rightOf(down), towards) > 0 ? rightOf(down) : scale(rightOf(down), -1);

function edgeBeyond(piece: Piece, part: OutlinePart): Edge {
  if (part.type === 'edge') return part;
  throw refusal(
    'dart-in-neck',
    { dart: { piece: piece.name, [part.type]: part.name } },
    { piece: piece.name },
  );
}

const tooDeep = (piece: Piece, depth: number): PatternError =>
  refusal('neckline-too-deep', { piece: { piece: piece.name }, depthMm: depth }, { piece: piece.name });

/** The straight line square to the centre's level at a half width: every place that far out. */
export function halfWidthLine(frame: NeckFrame, halfWidth: number): Path {
  const reach = reachOf(frame.neckOut) + reachOf(frame.beyondOut) + distance(frame.origin, frame.centrePoint);
  return lineThrough(add(frame.origin, scale(frame.out, halfWidth)), frame.down, reach + halfWidth);
}
