import { pathLength, pointAlong } from '../../path/length.js';
import { type Path, pathEnd, pathStart } from '../../path/path.js';
import { edgeNamed, edgeNames, edgePath } from '../../pattern/outline.js';
import type { EdgeKind, Piece } from '../../pattern/types.js';
import { distance, dot, leftOf, lerp, type Point, rightOf, subtract, unit } from '../../vector.js';

/** What a stretch of an outline, one edge or a few that follow each other, looks like. */
export interface RunShape {
  readonly edges: readonly string[];
  /** Of its length in the outline's. */
  readonly share: number;
  /** How far its middle lies inside its chord, as a share of the chord; negative where it bulges outwards. */
  readonly hollow: number;
  /** rad from the right, clockwise on the page: where the chord faces, away from the piece. */
  readonly faces: number;
  readonly kinds: readonly EdgeKind[];
}

/** The edges of a piece and all runs of up to three that follow each other, by where they begin and how many they are. */
export interface PieceShape {
  readonly edges: readonly string[];
  /** `undefined` where there are no more edges than that. */
  readonly run: (from: number, count: number) => RunShape;
  /** mm: the longer side of the box around it, and how much of that the shorter is. */
  readonly sizeMm: number;
}

/** The shape of a piece as its proposals look at it; darts' mouths are not counted. */
export function pieceShape(piece: Piece): PieceShape {
  const edges = edgeNames(piece);
  const paths = edges.map(name => edgePath(piece, name));
  const lengths = paths.map(pathLength);
  const whole = lengths.reduce((a, b) => a + b, 0);
  const known = new Map<number, RunShape>();
  const run = (from: number, count: number): RunShape => {
    const key = from * edges.length + count;
    const have = known.get(key);
    if (have) return have;
    const own = Array.from({ length: count }, (_, i) => (from + i) % edges.length);
    const shape: RunShape = {
      edges: own.map(i => edges[i]!),
      share: own.reduce((sum, i) => sum + lengths[i]!, 0) / whole,
      ...bow(
        own.map(i => paths[i]!),
        own.map(i => lengths[i]!),
      ),
      kinds: own.map(i => edgeNamed(piece, edges[i]!).kind),
    };
    known.set(key, shape);
    return shape;
  };
  const points = paths.flatMap((path, i) => [pathStart(path), pointAlong(path, lengths[i]! / 2)]);
  const span = (of: (p: Point) => number): number =>
    Math.max(...points.map(of)) - Math.min(...points.map(of));
  return {
    edges,
    run,
    sizeMm: Math.max(
      span(p => p.x),
      span(p => p.y),
    ),
  };
}

function bow(paths: readonly Path[], lengths: readonly number[]): Pick<RunShape, 'hollow' | 'faces'> {
  const from = pathStart(paths[0]!),
    to = pathEnd(paths.at(-1)!);
  const chord = subtract(to, from),
    length = distance(from, to);
  const out = leftOf(chord);
  if (length === 0) return { hollow: 0, faces: 0 };
  let half = lengths.reduce((a, b) => a + b, 0) / 2;
  let at = 0;
  while (at < paths.length - 1 && half > lengths[at]!) half -= lengths[at++]!;
  const off = subtract(pointAlong(paths[at]!, half), lerp(from, to, 1 / 2));
  return { hollow: dot(off, rightOf(unit(chord))) / length, faces: Math.atan2(out.y, out.x) };
}
