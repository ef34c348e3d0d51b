import type { Point } from '@paperhinge/geometry';
import { dot, subtract } from '@paperhinge/geometry/plane';
import { type Chord, type Polygon, polygonHolds } from '../plane/polygon.js';
import { meetsRectangle } from '../plane/rectangle.js';

/** What a label may not touch: straight pieces of ink, and the polygon it must stay inside. */
export interface Room {
  readonly inside: Polygon;
  readonly ink: readonly Chord[];
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
  const inBox = (p: Point): Point => {
    const w = subtract(p, origin);
    return { x: dot(w, e), y: dot(w, f) };
  };
  return room.ink.every(
    ([a, b]) => !meetsRectangle(inBox(a), inBox(b), [-gap, -gap, width + gap, height + gap]),
  );
}
