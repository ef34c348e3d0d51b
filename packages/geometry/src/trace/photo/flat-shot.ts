import type { Point } from '../../vector.js';
import type { View } from './camera.js';
import { cellAt, type FloorMap } from './floor-map.js';
import type { FloorKnown } from './ground.js';
import type { Picture } from './picture.js';

/** A scan, or a picture taken as one: straight from above, the same scale everywhere. */
export const flatView = (dotsToMm: number): View => ({
  toPicture: (x, y) => ({ x: x * dotsToMm, y: y * dotsToMm }),
  toFloor: (u, v) => ({ x: u / dotsToMm, y: v / dotsToMm }),
});

/** mm from the rim of a scan where its ground is looked for, and from place to place along it. */
const inset = [3, 6],
  step = 5;

/** What is known of a scan: along its rim lies ground. */
export function groundAtRim(map: FloorMap, { width, height }: Picture, dotsToMm: number): FloorKnown {
  const [w, h] = [width / dotsToMm, height / dotsToMm];
  const along = (length: number) =>
    Array.from({ length: Math.floor(length / step) }, (_, i) => (i + 0.5) * step);
  const sides: readonly (readonly Point[])[] = [
    inset.flatMap(d => along(w).map(x => ({ x, y: d }))),
    inset.flatMap(d => along(h).map(y => ({ x: w - d, y }))),
    inset.flatMap(d => along(w).map(x => ({ x, y: h - d }))),
    inset.flatMap(d => along(h).map(y => ({ x: d, y }))),
  ];
  return {
    codes: new Uint8Array(map.width * map.height),
    white: [],
    beside: sides.map(side => side.filter(p => cellAt(map, p) >= 0)),
  };
}
