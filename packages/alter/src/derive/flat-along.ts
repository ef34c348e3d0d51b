import {
  type Dart,
  type OutlinePart,
  type Path,
  type Pattern,
  PatternError,
  type Piece,
  type Point,
  pathLength,
  pathOf,
  pieceNamed,
  type Thing,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { intersectPaths, pathEnd, pathStart, pointAlong } from '@paperhinge/geometry/paths';
import { edgeParts, neighboursOf, outlinePath, partsOfEdge } from '@paperhinge/geometry/pattern';
import { add, dot, lerp, norm, subtract, unit } from '@paperhinge/geometry/plane';
import { closeDart } from '../operations/close-dart.js';
import { refusal } from './tellings.js';

/** A piece that lies flat along some of its edges, and the darts that were closed for that. */
export interface FlatAlong {
  readonly piece: Piece;
  readonly darts: readonly string[];
}

/**
 * A piece as it is laid on the table to trace something along its edges: each dart that opens between two of these edges
 * is pinned closed, and the paper is slashed from its point on to an edge beyond, which opens instead. What lies along
 * the edges is as it will be sewn.
 *
 * @throws PatternError `dart-in-facing` where no edge can be slashed to from a dart; those of `closeDart`
 */
export function flatAlong(piece: Piece, edges: readonly string[]): FlatAlong {
  const darts = dartsWithin(piece, edges);
  const flat = darts.reduce((now, dart) => closedInto(now, dart, edges), piece);
  return { piece: flat, darts: darts.map(({ name }) => name) };
}

/**
 * A piece that lies flat along some of its edges, and a shape traced on it. A dart that the tracing finds in its way,
 * where it ends on an edge beside those, is pinned closed as well.
 *
 * @param traced draws the shape, and refuses with `dart-in-facing` where a dart is in its way
 * @throws PatternError those of `flatAlong`, and of `traced`
 */
export function tracedFlat<Shape>(
  flat: FlatAlong,
  edges: readonly string[],
  traced: (piece: Piece) => Shape,
): FlatAlong & { readonly shape: Shape } {
  try {
    return { ...flat, shape: traced(flat.piece) };
  } catch (error) {
    const dart = error instanceof PatternError ? dartInTheWay(flat.piece, error) : undefined;
    if (!dart) throw error;
    const { parts } = flat.piece.outline;
    const at = parts.indexOf(dart);
    const beside = [at - 1, at + 1].map(i => parts[(i + parts.length) % parts.length]!.name);
    const piece = closedInto(flat.piece, dart, [...edges, ...beside]);
    return tracedFlat({ piece, darts: [...flat.darts, dart.name] }, edges, traced);
  }
}

function dartInTheWay({ outline: { parts } }: Piece, { code, facts }: PatternError): Dart | undefined {
  const { dart: name } = (facts?.dart ?? {}) as Thing;
  const dart = parts.find((part): part is Dart => part.type === 'dart' && part.name === name);
  return code === 'dart-in-facing' ? dart : undefined;
}

/** Darts with one of these edges on both sides of their mouth. */
function dartsWithin({ outline: { parts } }: Piece, edges: readonly string[]): readonly Dart[] {
  const isMeant = (part: OutlinePart): boolean => part.type === 'edge' && edges.includes(part.name);
  return parts.filter((part, i): part is Dart => {
    if (part.type !== 'dart') return false;
    return [i + parts.length - 1, i + 1].every(at => isMeant(parts[at % parts.length]!));
  });
}

function closedInto(piece: Piece, dart: Dart, edges: readonly string[]): Piece {
  const into = beyond(piece, dart, edges);
  if (!into) {
    const thing = { piece: piece.name, dart: dart.name };
    throw refusal('dart-in-facing', { dart: thing }, { piece: piece.name });
  }
  const alone: Pattern = { name: piece.name, unit: 'mm', pieces: [piece], seams: [], fabrics: [] };
  const done = closeDart(alone, { piece: piece.name, dart: dart.name, into: into.edge, at: { mm: into.mm } });
  return pieceNamed(done.pattern, piece.name);
}

/**
 * Where the paper is slashed to from a dart's point: a place on another edge that can be seen from there, as straight
 * ahead as may be, on an edge that does not end at those that are traced where there is one.
 */
function beyond(piece: Piece, { legs, apex }: Dart, edges: readonly string[]) {
  const ahead = unit(subtract(apex, lerp(pathStart(legs[0]), pathEnd(legs[1]), 1 / 2)));
  const outline = outlinePath(piece.outline);
  const besides = new Set(edges.flatMap(edge => Object.values(neighboursOf(piece, edge))));
  const places = edgeParts(piece)
    .filter(part => !edges.includes(part.name) && part.kind !== 'fold')
    .flatMap(part =>
      tried.map(share => {
        const along = share * pathLength(part.path);
        const way = subtract(pointAlong(part.path, along), apex);
        return { part, along, way, straight: dot(unit(way), ahead) - (besides.has(part.name) ? 2 : 0) };
      }),
    )
    .sort((one, other) => other.straight - one.straight);
  const found = places.find(({ way }) => isSeen(apex, way, outline));
  if (!found) return undefined;
  const parts = partsOfEdge(piece, found.part.name);
  const before = parts.slice(0, parts.indexOf(found.part));
  return {
    edge: found.part.name,
    mm: before.reduce((sum, { path }) => sum + pathLength(path), found.along),
  };
}

/** Shares of an edge at which a slash is tried. */
const tried = [1 / 2, 1 / 4, 3 / 4, 1 / 8, 7 / 8];

const isSeen = (from: Point, way: Point, outline: Path): boolean => {
  const far = norm(way);
  return intersectPaths(pathOf([from, add(from, way)]), outline).every(
    ({ alongA }) => alongA <= tolerances.joiningGap || alongA >= far - tolerances.joiningGap,
  );
};
