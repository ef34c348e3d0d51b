import {
  type Edge,
  edgePath,
  type Path,
  PatternError,
  type Piece,
  type Point,
  pathLength,
  pathOf,
} from '@paperhinge/geometry';
import { nearestOnPath, pathEnd, pathStart, pointAlong } from '@paperhinge/geometry/paths';
import {
  type Affine,
  add,
  carrying,
  compose,
  cross,
  distance,
  dot,
  leftOf,
  mirror,
  scale,
  subtract,
  unit,
} from '@paperhinge/geometry/plane';
import { type InTwo, inTwo } from '../dividing/in-two.js';
import type { Cut } from '../hinge/cut.js';
import type { CutPiece } from '../hinge/cut-piece.js';
import { cutApart } from '../hinge/sections.js';
import type { SetIn, SetInBody } from './set-in.js';
import { refusal } from './tellings.js';

/** Where a raglan line runs on a front or back, in mm. */
export interface RaglanLine {
  /** Along the neck from the shoulder. */
  readonly neck: number;
  /** Up the armhole from the underarm. */
  readonly up: number;
  /** How far it bows towards the shoulder, a third of the way down. */
  readonly bow: number;
}

/** A front or back with its upper part cut off along the raglan line. */
export interface CutBody extends InTwo {
  readonly body: SetInBody;
  readonly lineMm: number;
  readonly upMm: number;
  /** Where the line left the armhole, and the armhole's end at the shoulder: on the piece as drawn. */
  readonly foot: Point;
  readonly tip: Point;
}

/** What the edge along the cut is called, on the body; the sleeve's has the body's name behind it. */
export const raglanEdge = 'raglan';

/**
 * Cuts the upper part off a front or back, from the neck to the armhole.
 * @throws PatternError `raglan-off-edge`, `raglan-off-piece`; `raglan-through-dart` where a dart would be cut off with it; those of the slash
 */
export function cutBody(body: SetInBody, { neck, up, bow }: RaglanLine, partName: string): CutBody {
  const { piece, run, armholeMm } = body;
  const neckPath = edgePath(piece, body.neck);
  const neckMm = pathLength(neckPath);
  const where = { piece: piece.name, edge: neck >= neckMm ? body.neck : run.edge };
  if (neck >= neckMm || up >= armholeMm)
    throw refusal('raglan-off-edge', { edge: where, mostMm: neck >= neckMm ? neckMm : armholeMm }, where);
  const neckAt = awayFromShoulder(body) ? neck : neckMm - neck;
  const armholeAt = body.up === run.reversed ? armholeMm - up : up;
  const foot = pointAlong(edgePath(piece, run.edge), armholeAt);
  const top = pointAlong(neckPath, neckAt);
  const tip = shoulderTip(body);
  const course = bowed(top, foot, tip, bow);
  const cutPiece = cutOrRefused(piece, {
    from: { edge: body.neck, along: neckAt },
    to: { edge: run.edge, along: armholeAt },
    course,
  });
  const upper = sectionWith(cutPiece, body.shoulder);
  const inParts = inTwo(cutPiece, 1 - upper, partName, freshEdge(body, course));
  const { parts } = inParts.off.outline;
  const named = [raglanEdge, run.edge, body.shoulder, body.neck];
  const other = parts.find(({ name }) => !named.includes(name));
  if (other || parts.length !== named.length)
    throw refusal('raglan-through-dart', { piece: { piece: piece.name } }, { piece: piece.name });
  return { ...inParts, body, lineMm: pathLength(course), upMm: up, foot, tip };
}

/** An armhole is hollow: a line from near the shoulder would run through the air. */
function cutOrRefused(piece: Piece, cut: Cut): CutPiece {
  try {
    return cutApart(piece, [cut]);
  } catch (error) {
    const code = error instanceof PatternError ? error.code : undefined;
    const where = { piece: piece.name };
    if (code === 'slash-leaves-piece') throw refusal('raglan-off-piece', { piece: where }, where);
    if (code === 'slash-crosses-dart') throw refusal('raglan-through-dart', { piece: where }, where);
    throw error;
  }
}

/** Whether the neck's start is its end at the shoulder. */
function awayFromShoulder({ piece, shoulder, neck }: SetInBody): boolean {
  const start = pathStart(edgePath(piece, neck));
  const own = edgePath(piece, shoulder);
  return Math.min(distance(start, pathStart(own)), distance(start, pathEnd(own))) < near;
}
/** mm. Corners of an outline are one point but for rounding. */
const near = 0.01;

/** Where the armhole meets the shoulder. */
function shoulderTip({ piece, run, up }: SetInBody): Point {
  const path = edgePath(piece, run.edge);
  return up === run.reversed ? pathStart(path) : pathEnd(path);
}

/** Straight, or one cubic that lies `bow` mm off the straight line a third of its way down, on the shoulder's side. */
function bowed(from: Point, to: Point, shoulder: Point, bow: number): Path {
  if (bow === 0) return pathOf([from, to]);
  const way = subtract(to, from);
  const square = unit(leftOf(way));
  const side = Math.sign(cross(way, subtract(shoulder, from)) * cross(way, square));
  // With one handle off the line the cubic goes 3 (1 − t)² t of the way out to it: 4/9 at most, at t = 1/3.
  const out = scale(square, (side * bow * 9) / 4);
  return pathOf([from, add(add(from, scale(way, 1 / 3)), out), add(from, scale(way, 2 / 3)), to]);
}

function sectionWith({ stretches, sectionOf }: CutPiece, edge: string): number {
  return sectionOf[stretches.findIndex(one => one.type === 'edge' && one.edge.name === edge)]!;
}

function freshEdge({ piece, run }: SetInBody, path: Path): Edge {
  const armhole = piece.outline.parts.find(part => part.type === 'edge' && part.name === run.edge) as Edge;
  const { allowance } = armhole;
  return { type: 'edge', name: raglanEdge, path, kind: 'seam', role: 'armhole', allowance, corners: {} };
}

/** How the upper parts lie on the sleeve: a motion for each, and where both shoulder tips meet. */
export interface LaidUppers {
  readonly motions: readonly [Affine, Affine];
  readonly tip: Point;
  /** Where the raglan lines leave the cap, mm along it from its start. */
  readonly feet: readonly [number, number];
  /** mm by which the tip lies outside the cap as it was; negative: within it. */
  readonly liftMm: number;
}

/**
 * Lays both upper parts on the sleeve: the foot of each at the place of the cap that walks to it without ease, and turned
 * about it until their shoulder tips meet: in the one point that is as far from either foot as on the bodies.
 *
 * @throws PatternError `cap-too-flat` where they do not reach one another over the cap
 */
export function laidUppers({ sleeve, cap, capMm }: SetIn, uppers: readonly [CutBody, CutBody]): LaidUppers {
  const path = edgePath(sleeve, cap.edge);
  const sewn = [uppers[0].upMm, capMm - uppers[1].upMm];
  const feet = sewn.map(along => (cap.reversed ? capMm - along : along)) as [number, number];
  const [p, q] = feet.map(along => pointAlong(path, along)) as [Point, Point];
  const [r, s] = uppers.map(({ foot, tip }) => distance(foot, tip)) as [number, number];
  const apart = distance(p, q);
  const along = (r ** 2 - s ** 2 + apart ** 2) / (2 * apart);
  const high = r ** 2 - along ** 2;
  if (!(high > 0) || sewn[0]! >= sewn[1]!)
    throw refusal('cap-too-flat', { piece: { piece: sleeve.name } }, { piece: sleeve.name, edge: cap.edge });
  const way = unit(subtract(q, p));
  const middle = pointAlong(path, capMm / 2);
  // On the side of the cap's top.
  const square = scale(leftOf(way), Math.sign(cross(way, subtract(middle, p)) * cross(way, leftOf(way))));
  const foot = add(p, scale(way, along));
  const tip = add(foot, scale(square, Math.sqrt(high)));
  const motion = ({ foot: was, tip: wasTip, body }: CutBody, to: Point): Affine => {
    const carried = carrying(was, subtract(wasTip, was), to, subtract(tip, to));
    return body.over ? compose(carried, mirror(to, subtract(tip, to))) : carried;
  };
  const nearest = nearestOnPath(path, tip);
  const liftMm = Math.sign(dot(subtract(tip, nearest.point), square)) * nearest.distance;
  return { motions: [motion(uppers[0], p), motion(uppers[1], q)], tip, feet, liftMm };
}
