import { pathLength } from '../path/length.js';
import { endTangent, pathEnd, pathStart, startTangent } from '../path/path.js';
import { edgePath, partsOfEdge, pathsOfPart } from '../pattern/outline.js';
import type { EdgeRun, Outline, OutlinePart, Piece } from '../pattern/types.js';
import { joiningGap } from '../tolerance.js';
import { angleBetween, type Point } from '../vector.js';

/** An end of an edge, in clockwise order. */
export type EdgeEnd = 'start' | 'end';

/** A corner of a stitching line, seen from one of the two edges that meet there. */
export interface Corner {
  readonly point: Point;
  /** What comes next beyond the corner: another edge, a dart or a pleat. */
  readonly neighbour: OutlinePart;
  /** Which of the neighbour's ends lies here. */
  readonly neighbourEnd: EdgeEnd;
  /** Angle of the cloth between the two, in rad in [0, 2π], from the true tangents at their ends. */
  readonly interior: number;
}

/** The corner at an end of an edge. @throws PatternError `unknown-edge` */
export function cornerAt(piece: Piece, edge: string, end: EdgeEnd): Corner {
  const parts = partsOfEdge(piece, edge);
  const own = end === 'start' ? parts[0]! : parts.at(-1)!;
  const neighbour = besides(piece.outline, own, end);
  const interior =
    end === 'start'
      ? interiorAngle(leaving(neighbour), startTangent(own.path))
      : interiorAngle(endTangent(own.path), entering(neighbour));
  return {
    point: end === 'start' ? pathStart(own.path) : pathEnd(own.path),
    neighbour,
    neighbourEnd: end === 'start' ? 'end' : 'start',
    interior,
  };
}

/**
 * The corner of its edge at which a run starts or ends in the direction of the sewing; none where only a part of the
 * edge is sewn and the run ends within it.
 * @throws PatternError `unknown-edge`
 */
export function endCorner(piece: Piece, run: EdgeRun, at: EdgeEnd): Corner | undefined {
  const end = endOfTravel(run, at);
  return reachesEnd(piece, run, end) ? cornerAt(piece, run.edge, end) : undefined;
}

/** Whether a run goes as far as that clockwise end of its edge. @throws PatternError `unknown-edge` */
export function reachesEnd(piece: Piece, { edge, part }: EdgeRun, end: EdgeEnd): boolean {
  if (!part) return true;
  return end === 'start'
    ? part.from <= joiningGap
    : part.to >= pathLength(edgePath(piece, edge)) - joiningGap;
}

/** The part of the outline before (`start`) or after (`end`) another, clockwise. */
export function besides(outline: Outline, part: OutlinePart, end: EdgeEnd): OutlinePart {
  const ring = outline.parts;
  const step = end === 'start' ? ring.length - 1 : 1;
  return ring[(ring.indexOf(part) + step) % ring.length]!;
}

/** Angle on the right of travel, where the cloth is, between a direction of arrival and one of departure, in rad. */
export const interiorAngle = (arriving: Point, departing: Point): number =>
  Math.PI - angleBetween(arriving, departing);

const entering = (part: OutlinePart): Point => startTangent(pathsOfPart(part)[0]!);
const leaving = (part: OutlinePart): Point => endTangent(pathsOfPart(part).at(-1)!);

/** Which clockwise end of an edge a run starts or ends at. */
export const endOfTravel = (run: EdgeRun, at: EdgeEnd): EdgeEnd =>
  run.reversed ? (at === 'start' ? 'end' : 'start') : at;
