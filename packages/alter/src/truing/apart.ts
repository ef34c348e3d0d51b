import { type Path, type Point, pathLength, type Segment } from '@paperhinge/geometry';
import { isLine, pointAt, segmentLength } from '@paperhinge/geometry/curves';
import { oncePer, oncePerAll } from '@paperhinge/geometry/internal';

/**
 * mm: the greatest distance that any point of either of two lines has from the other (Hausdorff's). Both are seen as
 * polygons whose sides are at most a `sides`-th of the line long and within 0.002 mm of it; the distance between them
 * is exact at the polygons' corners and at most half a side too small between them. Whoever draws a line anew asks it to
 * choose, and again to tell.
 */
export const apartBetween: (a: Path, b: Path) => number = /* @__PURE__ */ oncePerAll(
  (a, b) => [a, b],
  (a: Path, b: Path): number => {
    const p = polygonOf(a, sides),
      q = polygonOf(b, sides);
    return Math.sqrt(Math.max(farthestFrom(p, blocksOf(q)), farthestFrom(q, blocksOf(p))));
  },
);

/** The same by fewer points, to choose by; where it is over `limit` mm, some distance over that. */
export function roughlyApart(a: Path, b: Path, limit: number): number {
  const p = roughly(a),
    q = roughly(b);
  const there = farthestFrom(p.polygon, q.blocks, limit ** 2);
  return Math.sqrt(
    there > limit ** 2 ? there : Math.max(there, farthestFrom(q.polygon, p.blocks, limit ** 2)),
  );
}

/** mm²: the area between two lines that share both ends, what lies to one side of the first less what lies to the other. */
export function areaBetween(a: Path, b: Path): number {
  const ring = [...roughly(a).polygon, ...[...roughly(b).polygon].reverse()];
  const origin = ring[0]!;
  const twice = ring.reduce((sum, p, i) => {
    const q = ring[(i + 1) % ring.length]!;
    return sum + (p.x - origin.x) * (q.y - origin.y) - (q.x - origin.x) * (p.y - origin.y);
  }, 0);
  return Math.abs(twice) / 2;
}

/** Sides of a polygon for a figure that is told, and of one that is good enough to choose by. */
const sides = 640;
const quickSides = 160;

/** A line as a rough polygon: one is compared with many. */
const roughly = /* @__PURE__ */ oncePer((path: Path) => {
  const polygon = polygonOf(path, quickSides);
  return { polygon, blocks: blocksOf(polygon) };
});

/** mm. How far a polygon's side may lie from the curve it stands for. */
const sideError = 0.002;

function polygonOf(path: Path, sides: number): readonly Point[] {
  const longest = pathLength(path) / sides;
  const points = [pointAt(path.segments[0]!, 0)];
  for (const segment of path.segments) {
    const steps = Math.max(1, Math.ceil(segmentLength(segment) / longest), stepsForError(segment));
    for (let i = 1; i <= steps; i++) points.push(pointAt(segment, i / steps));
  }
  return points;
}

/** A cubic's chord over 1/n of its parameter lies within max|B″| / 8n² of it. */
function stepsForError(segment: Segment): number {
  if (isLine(segment)) return 1;
  const [p0, p1, p2, p3] = segment;
  const bend = (a: Point, b: Point, c: Point): number => Math.hypot(a.x - 2 * b.x + c.x, a.y - 2 * b.y + c.y);
  return Math.ceil(Math.sqrt((6 * Math.max(bend(p0, p1, p2), bend(p1, p2, p3))) / (8 * sideError)));
}

/** Some sides of a polygon that follow one another, in a box: those between its corners `from` and `to`. */
interface Block {
  readonly points: readonly Point[];
  readonly from: number;
  readonly to: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const sidesInBlock = 16;

function blocksOf(polygon: readonly Point[]): readonly Block[] {
  const count = Math.max(1, Math.ceil((polygon.length - 1) / sidesInBlock));
  return Array.from({ length: count }, (_, i) => {
    const from = i * sidesInBlock,
      to = Math.min(from + sidesInBlock, polygon.length - 1);
    let left = Number.POSITIVE_INFINITY,
      right = Number.NEGATIVE_INFINITY,
      top = Number.POSITIVE_INFINITY,
      bottom = Number.NEGATIVE_INFINITY;
    for (let k = from; k <= to; k++) {
      const { x, y } = polygon[k]!;
      left = Math.min(left, x);
      right = Math.max(right, x);
      top = Math.min(top, y);
      bottom = Math.max(bottom, y);
    }
    return { points: polygon, from, to, left, right, top, bottom };
  });
}

/** The square of the greatest distance of any of the points from a polygon, or of the first that is over `enough`. */
function farthestFrom(
  points: readonly Point[],
  blocks: readonly Block[],
  enough = Number.POSITIVE_INFINITY,
): number {
  let farthest = 0;
  let home = blocks[0]!;
  for (const p of points) {
    // The block that was nearest to the last point comes first: most others then lie too far to matter. A point that is
    // no farther from it than the farthest so far cannot be the farthest.
    let nearest = squareToBlock(p, home);
    if (nearest <= farthest) continue;
    for (const block of blocks) {
      if (block === home || squareToBox(p, block) >= nearest) continue;
      const square = squareToBlock(p, block);
      if (square >= nearest) continue;
      nearest = square;
      home = block;
    }
    farthest = Math.max(farthest, nearest);
    if (farthest > enough) break;
  }
  return farthest;
}

function squareToBox({ x, y }: Point, { left, right, top, bottom }: Block): number {
  const dx = Math.max(left - x, 0, x - right),
    dy = Math.max(top - y, 0, y - bottom);
  return dx * dx + dy * dy;
}

function squareToBlock(p: Point, { points, from, to }: Block): number {
  let nearest = Number.POSITIVE_INFINITY;
  for (let i = from + 1; i <= to; i++)
    nearest = Math.min(nearest, squareToSide(p, points[i - 1]!, points[i]!));
  return nearest;
}

/** The square of the distance, without points in between: it is asked for some thousand times a line. */
function squareToSide(p: Point, a: Point, b: Point): number {
  const sx = b.x - a.x,
    sy = b.y - a.y,
    wx = p.x - a.x,
    wy = p.y - a.y;
  const square = sx * sx + sy * sy;
  const t = square === 0 ? 0 : Math.min(1, Math.max(0, (wx * sx + wy * sy) / square));
  const dx = wx - sx * t,
    dy = wy - sy * t;
  return dx * dx + dy * dy;
}
