import { line, pointAt, type Segment } from '../curve/segment.js';
import { centreOf } from '../joining/centre.js';
import { oncePer } from '../once-per.js';
import { boundsOfPath } from '../path/bounds.js';
import { nearestOnPath } from '../path/nearest.js';
import { pathEnd, pathOf, pathStart } from '../path/path.js';
import { outlinePath, pathsOfPart } from '../pattern/outline.js';
import { requireWholePiece } from '../pattern/require-whole.js';
import type { Piece, PieceLine } from '../pattern/types.js';
import { containsPoint } from '../region/contains.js';
import { coincidenceTolerance, cornerReach, joiningGap } from '../tolerance.js';
import { add, distance, dot, type Point, scale, subtract, unit } from '../vector.js';
import { intakesAcross } from './intakes.js';
import { clothBeyond, nearestStretch, stopsAlong } from './stops.js';

/** The names of a piece's level lines, each once. */
export function levelNames(piece: Piece): readonly string[] {
  requireWholePiece(piece);
  return [...new Set(piece.lines.filter(l => l.kind === 'level').map(l => l.name))];
}

/** A level as it runs across one piece: the length of cloth in mm, where it ends, and the edges that meet each end. */
export interface LevelAcross {
  readonly lengthMm: number;
  readonly ends: readonly (readonly string[])[];
  /** On the outline or at a dart; none where the level runs outside the piece. */
  readonly places: readonly Point[];
}

/**
 * Length of cloth across a piece at a level, in mm: the straight line of that part of the level line which lies at
 * the centre, run on to the far sides of the outline. Intakes are left out, of darts and of pleats stitched so far:
 * where the line runs through a dart it is taken up again beyond it; where it runs out of a dart's mouth it follows
 * the dart's seam to its end.
 */
export const levelAcross = (piece: Piece, level: string): LevelAcross =>
  levelsAcross(piece).get(level)?.straight ?? nowhere;

/**
 * The same with each end taken to a corner of the outline: the one that the level line is drawn to, else the nearest
 * within `cornerReach`. An end that has neither stays where it is.
 */
export const levelToCorners = (piece: Piece, level: string): LevelAcross =>
  levelsAcross(piece).get(level)?.toCorners() ?? nowhere;

const levelsAcross = /* @__PURE__ */ oncePer(
  (piece: Piece) => new Map(levelNames(piece).map(level => [level, waysAcross(piece, level)])),
);

const nowhere: LevelAcross = { lengthMm: 0, ends: [[], []], places: [] };

function waysAcross(piece: Piece, level: string) {
  const drawn = piece.lines.filter(l => l.kind === 'level' && l.name === level);
  const segment = segmentAtCentre(piece, drawn);
  const straight = segment && runAcross(piece, pointAt(segment, 0), pointAt(segment, 1));
  if (!straight) return undefined;
  const toCorners = (): LevelAcross => {
    const [from, to] = straight.places;
    const corners = straight.places.map(place => cornerNear(piece, drawn, place));
    return runAcross(piece, corners[0] ?? from, corners[1] ?? to) ?? straight;
  };
  return { straight, toCorners };
}

/** A level that runs across a piece. */
interface Run extends LevelAcross {
  readonly places: readonly [Point, Point];
}

/** The cloth along the straight line through two points, about the middle between them. */
function runAcross(piece: Piece, from: Point, to: Point): Run | undefined {
  const direction = unit(subtract(to, from));
  const outline = outlinePath(piece.outline);
  const box = boundsOfPath(outline);
  const reach = distance(box.min, box.max) + distance(from, box.min) + distance(from, to);
  const middle = scale(add(from, to), 1 / 2);
  const placeAt = (at: number): Point => add(middle, scale(direction, at - reach));
  const across = pathOf(line(placeAt(0), placeAt(2 * reach)));
  const stops = stopsAlong(piece, across, outline);
  const inside = stops
    .slice(1)
    .map((stop, i) => containsPoint(outline, placeAt((stop.at + stops[i]!.at) / 2)));
  const home = nearestStretch(stops, inside, reach);
  if (home === undefined) return undefined;
  const drawn = distance(from, to) / 2;
  const after = clothBeyond(piece, { stops, inside, home, way: 1, drawnTo: reach + drawn }),
    before = clothBeyond(piece, { stops, inside, home, way: -1, drawnTo: reach - drawn });
  const length = stops[home + 1]!.at - stops[home]!.at + before.length + after.length;
  const taken = intakesAcross(piece, across, { from: before.at, to: after.at });
  return {
    lengthMm: length - taken,
    ends: [before.edges, after.edges],
    places: [placeAt(before.at), placeAt(after.at)],
  };
}

/** The corner of an outline that an end of a level belongs to. */
function cornerNear(piece: Piece, drawn: readonly PieceLine[], place: Point): Point | undefined {
  const nearest = (points: readonly Point[], to: Point): Point =>
    points.reduce((p, q) => (distance(q, to) < distance(p, to) ? q : p));
  const corners = piece.outline.parts.map(part => pathStart(pathsOfPart(part)[0]!));
  const end = nearest(
    drawn.flatMap(l => [pathStart(l.path), pathEnd(l.path)]),
    place,
  );
  const meant = nearest(corners, end),
    near = nearest(corners, place);
  if (distance(meant, end) <= joiningGap) return meant;
  return distance(near, place) <= cornerReach ? near : undefined;
}

/** That segment of a level (which a hinge may have broken) that lies nearest the centre of the piece. */
function segmentAtCentre(piece: Piece, drawn: readonly PieceLine[]): Segment | undefined {
  const segments = drawn
    .flatMap(l => l.path.segments)
    .filter(s => distance(pointAt(s, 0), pointAt(s, 1)) > coincidenceTolerance);
  const centre = centreOf(piece);
  if (!centre || segments.length < 2) return segments[0];
  const [first] = centre.segments;
  const run = unit(subtract(pointAt(first!, 1), pointAt(first!, 0)));
  return segments
    .map(segment => ({
      segment,
      away: Math.min(...[0, 0.5, 1].map(t => nearestOnPath(centre, pointAt(segment, t)).distance)),
      // Of two that touch the centre alike, the one that runs squarer to it: the other is a bridge along it.
      along: Math.abs(dot(unit(subtract(pointAt(segment, 1), pointAt(segment, 0))), run)),
    }))
    .sort((p, q) => p.away - q.away || p.along - q.along)[0]?.segment;
}
