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

/** What of a wish for a neckline shapes one half of it. */
export interface HalfWish {
  readonly shape: 'inset V' | 'V' | 'round' | 'square' | 'drawn';
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
  const fresh =
    shape === 'round'
      ? quarterEllipse(centrePoint, scale(frame.out, across), scale(frame.down, rise), shoulder)
      : shape === 'square'
        ? pathOf(line(centrePoint, level(across)), line(level(across), shoulder))
        : pathOf(line(centrePoint, shoulder));
  return { frame, fresh, ...cut };
}

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
