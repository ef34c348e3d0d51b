import type { Point } from '@paperhinge/geometry';

/** A polygon by its corners, closed from last to first. */
export type Polygon = readonly Point[];

/** A straight piece of a line. */
export type Chord = readonly [Point, Point];

/** The chords between the points of a polyline; closed if asked. */
export function chords(points: readonly Point[], closed = false): readonly Chord[] {
  const pairs = points.slice(1).map((p, i) => [points[i]!, p] as const);
  return closed && points.length > 2 ? [...pairs, [points.at(-1)!, points[0]!] as const] : pairs;
}

/** Where a polygon's sides cross a level line, in ascending order: between the first and the second is inside, and so on. */
export function crossingsAt(polygon: Polygon, y: number): readonly number[] {
  const crossings: number[] = [];
  for (let i = 0, j = polygon.length - 1; i < polygon.length; j = i++) {
    const a = polygon[j]!,
      b = polygon[i]!;
    if (a.y > y !== b.y > y) crossings.push(a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y));
  }
  return crossings.sort((p, q) => p - q);
}

/** Even-odd test; a point on the boundary may fall either way. */
export function polygonHolds(polygon: Polygon, p: Point): boolean {
  let within = false;
  for (let i = 0, j = polygon.length - 1; i < polygon.length; j = i++) {
    const a = polygon[i]!,
      b = polygon[j]!;
    if (a.y > p.y !== b.y > p.y && p.x < ((b.x - a.x) * (p.y - a.y)) / (b.y - a.y) + a.x) within = !within;
  }
  return within;
}

/** mm², positive whichever way round the corners run. */
export const polygonArea = (polygon: Polygon): number =>
  Math.abs(
    polygon.reduce((sum, p, i) => {
      const q = polygon[(i + 1) % polygon.length]!;
      return sum + (p.x * q.y - q.x * p.y) / 2;
    }, 0),
  );

/** The upright box round polygons, mm. */
export function boxOf(polygons: readonly Polygon[]) {
  let [x0, y0, x1, y1] = [
    Number.POSITIVE_INFINITY,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
  ];
  for (const polygon of polygons)
    for (const { x, y } of polygon) {
      if (x < x0) x0 = x;
      if (x > x1) x1 = x;
      if (y < y0) y0 = y;
      if (y > y1) y1 = y;
    }
  return { x0, y0, x1, y1, width: x1 - x0, height: y1 - y0 };
}

/** The corners of an upright box. */
export const boxPolygon = (x: number, y: number, width: number, height: number): Polygon => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + height },
  { x, y: y + height },
];
