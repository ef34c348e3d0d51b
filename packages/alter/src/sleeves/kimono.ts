import { edgePath, type Path, type Piece, type Point, pathLength, pathOf } from '@paperhinge/geometry';
import {
  pathEnd,
  pathStart,
  pointAlong,
  reversedPath,
  subpath,
  transformedPath,
} from '@paperhinge/geometry/paths';
import { edgesOfRole, neighboursOf, partsOfEdge } from '@paperhinge/geometry/pattern';
import {
  type Affine,
  add,
  angleBetween,
  apply,
  carrying,
  compose,
  cross,
  distance,
  mirror,
  rotation,
  subtract,
  unit,
} from '@paperhinge/geometry/plane';
import { alongGrainAt, bottomOf } from '../fit/adjust/landmarks.js';
import type { SetIn, SetInBody } from './set-in.js';
import { refusal } from './tellings.js';

/** The half of a sleeve that goes to one body: from the top of its cap down the grain, and along the hem to its underarm. */
export interface SleeveHalf {
  readonly top: Point;
  /** Where the line down the grain meets the hem. */
  readonly middle: Point;
  /** The hem from there to the underarm seam, mm along the hem's edge: `from` over `to` where it runs against it. */
  readonly hem: { readonly edge: string; readonly from: number; readonly to: number };
  readonly corner: Point;
}

/** Both halves, in the order of the bodies. @throws PatternError `sleeve-without-middle` */
export function sleeveHalves({ sleeve, cap, capMm, bodies }: SetIn): readonly [SleeveHalf, SleeveHalf] {
  const share = bodies[0].armholeMm / (bodies[0].armholeMm + bodies[1].armholeMm);
  const path = edgePath(sleeve, cap.edge);
  const top = pointAlong(path, capMm * (cap.reversed ? 1 - share : share));
  const hem = bottomOf(sleeve);
  const whole = edgePath(sleeve, hem);
  const along = alongGrainAt(sleeve, top, hem);
  if (along === undefined || partsOfEdge(sleeve, hem).length > 1)
    throw refusal(
      'sleeve-without-middle',
      { edge: { piece: sleeve.name, edge: hem } },
      { piece: sleeve.name, edge: hem },
    );
  const middle = pointAlong(whole, along);
  // Clockwise the hem begins at the underarm beside the cap's end, and ends at that beside its start.
  const half = (atCapStart: boolean): SleeveHalf => ({
    top,
    middle,
    hem: { edge: hem, from: along, to: atCapStart ? pathLength(whole) : 0 },
    corner: atCapStart ? pathEnd(whole) : pathStart(whole),
  });
  return [half(!cap.reversed), half(cap.reversed)];
}

/** A body with its sleeve half laid at the shoulder: all on the body as it is drawn. */
export interface Kimono {
  readonly body: SetInBody;
  readonly half: SleeveHalf;
  readonly motion: Affine;
  readonly tip: Point;
  readonly sideEdge: string;
  /** mm of the side, from its end at the underarm, that the new underarm seam cuts off. */
  readonly dropMm: number;
  readonly foot: Point;
  /** rad by which the sleeve's middle slopes further down than the shoulder. */
  readonly slope: number;
  readonly underarmMm: number;
}

/** A body before its sleeve half is laid on: what the laying is reckoned from. */
interface Frame {
  readonly tip: Point;
  readonly shoulderWay: Point;
  readonly sideEdge: string;
  readonly foot: Point;
  /** Which way round down is, from the shoulder's way: 1 clockwise as seen. */
  readonly down: 1 | -1;
  /** rad from the shoulder's way down to the foot of the underarm seam, and from the sleeve's middle to its corner. */
  readonly toFoot: number;
  readonly toCorner: number;
  readonly footMm: number;
  readonly cornerMm: number;
}

/**
 * Lays a sleeve half on the front at a slope below its shoulder, and the other on the back at the slope at which its
 * underarm seam is as long: two sides of a triangle and the third give the angle between them.
 *
 * @throws PatternError `kimono-off-side`; `kimono-underarms-unlike` where no slope of the back does it
 */
export function laidHalves(
  { bodies }: SetIn,
  halves: readonly [SleeveHalf, SleeveHalf],
  { slope, drop, front }: { readonly slope: number; readonly drop: number; readonly front: 0 | 1 },
): readonly [Kimono, Kimono] {
  const frames = bodies.map((body, i) => frameOf(body, halves[i]!, drop)) as [Frame, Frame];
  const other = (1 - front) as 0 | 1;
  const { footMm: p, cornerMm: q, toFoot, toCorner } = frames[front];
  const underarmMm = Math.sqrt(p * p + q * q - 2 * p * q * Math.cos(toFoot - slope - toCorner));
  const [r, s] = [frames[other].footMm, frames[other].cornerMm];
  const cosine = (r * r + s * s - underarmMm * underarmMm) / (2 * r * s);
  const where = { piece: bodies[other].piece.name };
  if (!(Math.abs(cosine) <= 1)) throw refusal('kimono-underarms-unlike', { piece: where }, where);
  const otherSlope = frames[other].toFoot - frames[other].toCorner - Math.acos(cosine);
  const slopes = front === 0 ? [slope, otherSlope] : [otherSlope, slope];
  return bodies.map((body, i) =>
    laid(body, halves[i]!, frames[i]!, { slope: slopes[i]!, drop, underarmMm }),
  ) as [Kimono, Kimono];
}

function frameOf(body: SetInBody, half: SleeveHalf, drop: number): Frame {
  const { piece, run, shoulder } = body;
  const armhole = edgePath(piece, run.edge);
  const atStart = body.up === run.reversed;
  const [tip, armpit] = atStart
    ? [pathStart(armhole), pathEnd(armhole)]
    : [pathEnd(armhole), pathStart(armhole)];
  const line = edgePath(piece, shoulder);
  const neckEnd =
    distance(pathEnd(line), tip) < distance(pathStart(line), tip) ? pathStart(line) : pathEnd(line);
  const sideEdge = neighboursOf(piece, run.edge)[atStart ? 'end' : 'start'];
  const where = { piece: piece.name, edge: sideEdge };
  if (!edgesOfRole(piece, 'side').includes(sideEdge))
    throw refusal('kimono-off-side', { edge: where, mostMm: 0 }, where);
  const part = partsOfEdge(piece, sideEdge).at(atStart ? 0 : -1)!.path;
  const mostMm = pathLength(part);
  if (drop >= mostMm) throw refusal('kimono-off-side', { edge: where, mostMm }, where);
  const foot = pointAlong(part, atStart ? drop : mostMm - drop);
  const shoulderWay = unit(subtract(tip, neckEnd));
  const down = cross(shoulderWay, subtract(armpit, tip)) > 0 ? 1 : -1;
  const { top, middle, corner } = half;
  return {
    tip,
    shoulderWay,
    sideEdge,
    foot,
    down,
    toFoot: down * angleBetween(shoulderWay, subtract(foot, tip)),
    toCorner: Math.abs(angleBetween(subtract(middle, top), subtract(corner, top))),
    footMm: distance(tip, foot),
    cornerMm: distance(top, corner),
  };
}

function laid(
  body: SetInBody,
  half: SleeveHalf,
  { tip, shoulderWay, sideEdge, foot, down }: Frame,
  { slope, drop, underarmMm }: { readonly slope: number; readonly drop: number; readonly underarmMm: number },
): Kimono {
  const way = subtract(apply(rotation(down * slope, tip), add(tip, shoulderWay)), tip);
  const { top, middle } = half;
  const carried = carrying(top, subtract(middle, top), tip, way);
  const motion = body.over ? compose(carried, mirror(tip, way)) : carried;
  return { body, half, motion, tip, sideEdge, dropMm: drop, foot, slope, underarmMm };
}

/** The lines of a sleeve half on its body: over the arm, along the hem, and back under the arm, from the tip to the foot. */
export interface SleeveLines {
  readonly overarm: Path;
  readonly hem: Path;
  readonly underarm: Path;
}

export function sleeveLines({ half, motion, tip, foot }: Kimono, sleeve: Piece): SleeveLines {
  const [middle, corner] = [apply(motion, half.middle), apply(motion, half.corner)];
  const { edge, from, to } = half.hem;
  const own = subpath(edgePath(sleeve, edge), Math.min(from, to), Math.max(from, to));
  const hem = transformedPath(from > to ? reversedPath(own) : own, motion);
  return { overarm: pathOf([tip, middle]), hem, underarm: pathOf([corner, foot]) };
}
