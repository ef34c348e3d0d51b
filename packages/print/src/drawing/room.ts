import { dot, type Point, subtract } from '@paperhinge/geometry';

/** A polygon by its corners, closed from last to first. */
export type Polygon = readonly Point[];

/** What a label may not touch: straight pieces of ink, and the polygon it must stay inside. */
export interface Room {
  readonly inside: Polygon;
  readonly ink: readonly (readonly [Point, Point])[];
}

/** The chords between the points of a polyline; closed if asked. */
export function chords(points: readonly Point[], closed = false): readonly (readonly [Point, Point])[] {
  const pairs = points.slice(1).map((p, i) => [points[i]!, p] as const);
  return closed && points.length > 2 ? [...pairs, [points.at(-1)!, points[0]!] as const] : pairs;
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

/** Whether a rectangle (four corners in order) lies inside, with no ink nearer to it than `gap` mm. */
export function isFree(room: Room, box: readonly Point[], gap: number): boolean {
  const [origin, right, , below] = box as readonly [Point, Point, Point, Point];
  const u = subtract(right, origin),
    v = subtract(below, origin);
  const width = Math.hypot(u.x, u.y),
    height = Math.hypot(v.x, v.y);
  if (width === 0 || height === 0) return false;
  const e = { x: u.x / width, y: u.y / width },
    f = { x: v.x / height, y: v.y / height };
  if (!box.every(corner => polygonHolds(room.inside, corner))) return false;
  return room.ink.every(([a, b]) => {
    const p = subtract(a, origin),
      q = subtract(b, origin);
    return !meetsRectangle(dot(p, e), dot(p, f), dot(q, e), dot(q, f), -gap, -gap, width + gap, height + gap);
  });
}

/** Whether the chord p-q meets an upright rectangle (Liang and Barsky's clipping). */
export function meetsRectangle(
  px: number,
  py: number,
  qx: number,
  qy: number,
  x0: number,
  y0: number,
  x1: number,
  y1: number,
): boolean {
  if ((px < x0 && qx < x0) || (px > x1 && qx > x1) || (py < y0 && qy < y0) || (py > y1 && qy > y1))
    return false;
  let from = 0,
    to = 1;
  const clip = (step: number, distance: number): boolean => {
    if (step === 0) return distance >= 0;
    const t = distance / step;
    if (step < 0) from = Math.max(from, t);
    else to = Math.min(to, t);
    return from <= to;
  };
  const dx = qx - px,
    dy = qy - py;
  return clip(-dx, px - x0) && clip(dx, x1 - px) && clip(-dy, py - y0) && clip(dy, y1 - py);
}
