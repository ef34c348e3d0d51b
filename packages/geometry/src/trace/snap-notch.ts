import { intersectPaths } from '../path/intersect.js';
import { pathLength } from '../path/length.js';
import { nearestOnPath } from '../path/nearest.js';
import { type Path, pathEnd, pathStart } from '../path/path.js';
import { distance, lerp, type Point } from '../vector.js';

export interface NamedPath {
  readonly name: string;
  readonly path: Path;
}
export interface NotchPlace {
  readonly edge: string;
  /** mm from the edge's start. */
  readonly at: number;
}

interface Candidate extends NotchPlace {
  readonly point: Point;
}

/**
 * Where a drawn notch sits: where its drawing crosses the outline, else at the outline point nearest to its nearer
 * end; of a pair (or three), the middle between the first and the last of them.
 *
 * @param edges the piece's edges, each whole
 * @param strokes the notch's drawing; a lone point is a line of no length
 * @param preferred the edge to take where the drawing runs through a corner
 */
export function snapNotch(
  edges: readonly NamedPath[],
  strokes: readonly Path[],
  preferred?: string,
): NotchPlace {
  const found = strokes.map(stroke => placesOf(edges, stroke));
  const isShared = (edge: string): boolean => found.every(places => places.some(p => p.edge === edge));
  const all = found.flat();
  const shared = all.filter(place => isShared(place.edge));
  const edge = shared.some(place => place.edge === preferred)
    ? preferred!
    : nearestToMiddle(shared.length > 0 ? shared : all, strokes).edge;
  const onEdge = found.flatMap(places => places.filter(p => p.edge === edge)).map(p => p.at);
  const at = (Math.min(...onEdge) + Math.max(...onEdge)) / 2;
  const length = pathLength(edges.find(e => e.name === edge)!.path);
  return { edge, at: Math.min(Math.max(0, at), length) };
}

function placesOf(edges: readonly NamedPath[], stroke: Path): readonly Candidate[] {
  const crossings = edges.flatMap(({ name, path }) =>
    intersectPaths(path, stroke).map(({ alongA, point }) => ({ edge: name, at: alongA, point })),
  );
  if (crossings.length === 0) return [nearerEnd(edges, stroke)];
  // One straight stroke marks one place; of several crossings it is the one at its middle. A wedge marks its own middle.
  if (stroke.segments.length > 1) return crossings;
  const middle = lerp(pathStart(stroke), pathEnd(stroke), 1 / 2);
  const nearest = new Map<string, Candidate>();
  for (const crossing of crossings) {
    const other = nearest.get(crossing.edge);
    if (!other || distance(crossing.point, middle) < distance(other.point, middle))
      nearest.set(crossing.edge, crossing);
  }
  return [...nearest.values()];
}

function nearerEnd(edges: readonly NamedPath[], stroke: Path): Candidate {
  const ends = [pathStart(stroke), pathEnd(stroke)];
  const all = edges.flatMap(({ name, path }) =>
    ends.map(end => {
      const { along, point, distance: far } = nearestOnPath(path, end);
      return { edge: name, at: along, point, far };
    }),
  );
  return all.reduce((best, next) => (next.far < best.far ? next : best));
}

function nearestToMiddle(candidates: readonly Candidate[], strokes: readonly Path[]): Candidate {
  const middle = lerp(pathStart(strokes[0]!), pathEnd(strokes[0]!), 1 / 2);
  return candidates.reduce((best, next) =>
    distance(next.point, middle) < distance(best.point, middle) ? next : best,
  );
}
