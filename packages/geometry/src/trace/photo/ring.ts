import { add, distance, lerp, norm, type Point, scale, subtract } from '../../vector.js';

/** Points at even steps round a closed ring, about `step` mm apart. */
export function evenly(ring: readonly Point[], step: number): readonly Point[] {
  const ends: number[] = [];
  let length = 0;
  ring.forEach((p, i) => {
    length += distance(p, ring[(i + 1) % ring.length]!);
    ends.push(length);
  });
  const count = Math.max(8, Math.round(length / step));
  const out: Point[] = [];
  let at = 0;
  for (let k = 0; k < count; k++) {
    const place = (length * k) / count;
    while (ends[at]! < place) at++;
    const from = at === 0 ? 0 : ends[at - 1]!;
    const share = ends[at]! > from ? (place - from) / (ends[at]! - from) : 0;
    out.push(lerp(ring[at]!, ring[(at + 1) % ring.length]!, share));
  }
  return out;
}

/** Each point of a closed ring moved to the mean of `reach` neighbours on both sides. */
export function softenedRing(ring: readonly Point[], reach: number): readonly Point[] {
  const n = ring.length;
  return ring.map((_, i) => {
    let sum = { x: 0, y: 0 };
    for (let k = -reach; k <= reach; k++) sum = add(sum, ring[(i + k + n) % n]!);
    return scale(sum, 1 / (2 * reach + 1));
  });
}

/** Unit vectors into what a clockwise ring surrounds, from the points `reach` before and after each. */
export function inwardOf(ring: readonly Point[], reach: number): readonly Point[] {
  const n = ring.length;
  return ring.map((_, i) => {
    const along = subtract(ring[(i + reach) % n]!, ring[(i - reach + n) % n]!);
    const length = norm(along) || 1;
    return { x: -along.y / length, y: along.x / length };
  });
}
