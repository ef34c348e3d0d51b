import { line, type Path, type Piece, type Point, pathLength, pathOf } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import {
  intersectPaths,
  pathEnd,
  pathStart,
  pointAlong,
  reversedPath,
  subpath,
} from '@paperhinge/geometry/paths';
import { add, scale } from '@paperhinge/geometry/plane';
import { reachOf, runOn, startingIn, withEndAt } from '../moved-edges/meet.js';
import { downOf, halfWidthLine, type NeckFrame, outOf } from './frame.js';
import { quarterEllipse } from './quarter-ellipse.js';
import { refusal } from './tellings.js';

/** One half of a new neckline. */
export interface RecutHalf {
  readonly frame: NeckFrame;
  /** The new line from the centre outwards. */
  readonly fresh: Path;
  /** What is left of the present neck, outwards; nothing where the new line replaces it. */
  readonly rest?: Path;
  /** The edge beyond the neck after it was cut, outwards, and the mm it gained at the neck (negative: lost). */
  readonly beyondOut: Path;
  readonly beyondBy: number;
}

/** The shapes of a neckline that are drawn by depth and half width, and the one along a line. */
export type NeckShape = 'inset V' | 'V' | 'round' | 'square' | 'boat' | 'scoop' | 'sweetheart' | 'drawn';

/** What of a wish for a neckline shapes one half of it. */
export interface HalfWish {
  readonly shape: NeckShape;
  readonly halfWidth?: number;
  /** mm of shoulder that are left. */
  readonly shoulder?: number;
}

export function recutHalf(
  piece: Piece,
  frame: NeckFrame,
  { shape, halfWidth, shoulder: left }: HalfWish,
): RecutHalf {
  if (shape === 'inset V') return insetHalf(piece, frame, halfWidth!);
  const cut = left === undefined ? cutBeyond(piece, frame, halfWidth) : cutToLength(piece, frame, left);
  const shoulder = pathStart(cut.beyondOut);
  const { centrePoint } = frame;
  const rise = downOf(frame, centrePoint) - downOf(frame, shoulder);
  if (!(rise > tolerances.joiningGap))
    throw refusal('neckline-too-shallow', { piece: { piece: piece.name } }, { piece: piece.name });
  const level = (out: number): Point => add(centrePoint, scale(frame.out, out));
  const across = outOf(frame, shoulder) - outOf(frame, centrePoint);
  const fresh = freshLine(shape, { centre: centrePoint, shoulder, across, rise, level, frame });
  return { frame, fresh, ...cut };
}

interface NeckPlaces {
  /** The lowest point on the centre line, and where the neck ends on the shoulder. */
  readonly centre: Point;
  readonly shoulder: Point;
  /** mm from the centre line to the shoulder's end, and from the lowest point up to it. */
  readonly across: number;
  readonly rise: number;
  /** A point so far out on the level of the lowest point. */
  readonly level: (out: number) => Point;
  readonly frame: NeckFrame;
}

/**
 * One half of a neckline of a shape. V, square and round (a quarter of an ellipse) are as their names say; a boat runs
 * level from the centre and comes to the shoulder's end flat; a scoop stays level for longer and rises steeply; a
 * sweetheart rises from a point at the centre over the bust, turns a corner there and runs straight to the shoulder.
 * Shapes common practice, no source.
 */
function freshLine(shape: NeckShape, places: NeckPlaces): Path {
  const { centre, shoulder, across, rise, level, frame } = places;
  const up = (from: Point, by: number): Point => add(from, scale(frame.down, -by));
  switch (shape) {
    case 'round':
      return quarterEllipse(centre, scale(frame.out, across), scale(frame.down, rise), shoulder);
    case 'square':
      return pathOf(line(centre, level(across)), line(level(across), shoulder));
    case 'boat':
      return pathOf([centre, level(across * 0.6), up(level(across * 0.85), rise * 0.75), shoulder]);
    case 'scoop':
      return pathOf([centre, level(across * 0.85), up(level(across), rise * 0.2), shoulder]);
    case 'sweetheart': {
      const top = up(level(across), rise * lobe);
      const towards = up(level(across * 0.15), rise * lobe * 0.9);
      return pathOf([centre, towards, up(level(across * 0.5), rise * lobe * 1.15), top], line(top, shoulder));
    }
    default:
      return pathOf(line(centre, shoulder));
  }
}

/** Share of the depth by which a sweetheart rises from its point over the bust. */
const lobe = 0.3;

/** The straight line to the point of the present neck at the half width; the neck beyond it stays. */
function insetHalf(piece: Piece, frame: NeckFrame, halfWidth: number): RecutHalf {
  const { neckOut, centrePoint } = frame;
  // Of several such points the first from the centre: the V ends where the neck first comes that far out.
  const met = intersectPaths(neckOut, halfWidthLine(frame, halfWidth))[0];
  const left = met && pathLength(neckOut) - met.alongA;
  if (!met || left! <= tolerances.joiningGap)
    throw refusal(
      'half-width-off-neck',
      { piece: { piece: piece.name }, halfWidthMm: halfWidth, reachesMm: outOf(frame, pathEnd(neckOut)) },
      { piece: piece.name },
    );
  return {
    frame,
    fresh: pathOf(line(centrePoint, met.point)),
    rest: startingIn(subpath(neckOut, met.alongA, Number.POSITIVE_INFINITY), met.point),
    beyondOut: frame.beyondOut,
    beyondBy: 0,
  };
}

/** The edge beyond the neck, cut (or run on straight towards the centre) at the half width. */
function cutBeyond(piece: Piece, frame: NeckFrame, halfWidth: number | undefined) {
  const { beyondOut } = frame;
  const present = outOf(frame, pathStart(beyondOut));
  if (halfWidth === undefined || Math.abs(halfWidth - present) <= tolerances.coincidenceTolerance)
    return { beyondOut, beyondBy: 0 };
  const inwards = reversedPath(beyondOut);
  const reach = reachOf(beyondOut) + Math.abs(halfWidth - present);
  const ahead = runOn(inwards, reach);
  const met = intersectPaths(ahead, halfWidthLine(frame, halfWidth)).at(-1);
  const length = pathLength(beyondOut);
  if (!met || met.alongA <= tolerances.joiningGap)
    throw refusal(
      'half-width-beyond-shoulder',
      {
        edge: { piece: piece.name, edge: frame.beyond.name },
        halfWidthMm: halfWidth,
        reachesMm: outOf(frame, pathEnd(beyondOut)),
      },
      { piece: piece.name, edge: frame.beyond.name },
    );
  const by = met.alongA - length;
  return { beyondOut: reversedPath(withEndAt(inwards, met.point, by)), beyondBy: by };
}

/** The edge beyond the neck, cut (or run on straight towards the centre) so that this much of it is left. */
function cutToLength(piece: Piece, frame: NeckFrame, left: number) {
  const { beyond, beyondOut } = frame;
  const by = left - pathLength(beyondOut);
  if (Math.abs(by) <= tolerances.coincidenceTolerance) return { beyondOut, beyondBy: 0 };
  const edge = { piece: piece.name, edge: beyond.name };
  const inwards = reversedPath(beyondOut);
  const point = by < 0 ? pointAlong(inwards, left) : pathEnd(runOn(inwards, by));
  // A neck must stay open: its end lies beyond the centre line.
  if (left <= tolerances.joiningGap || outOf(frame, point) <= tolerances.joiningGap)
    throw refusal('shoulder-out-of-reach', { edge, wantedMm: left }, edge);
  return { beyondOut: reversedPath(withEndAt(inwards, point, by)), beyondBy: by };
}
