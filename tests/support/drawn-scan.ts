import type { Point } from '@paperhinge/geometry';
import type { Picture } from '@paperhinge/geometry/trace';
import { chance } from './photo-scene.js';

// Scans drawn dot by dot: paper, what is drawn on it with a pen, and the noise of a scanner.

/** Dots to a mm of a scan of 150 dpi. */
export const dotsToMm = 150 / 25.4;
const [wide, high] = [200, 260];

/** A scan that is white paper until something is drawn on it: brightness by dot. */
export function paper(): { readonly grey: Float32Array; readonly width: number; readonly height: number } {
  const width = Math.round(wide * dotsToMm),
    height = Math.round(high * dotsToMm);
  return { width, height, grey: new Float32Array(width * height).fill(245) };
}

/** Noise of a scanner over it, as a picture. */
export function scanned({ grey, width, height }: ReturnType<typeof paper>): Picture {
  const next = chance(11);
  const rgba = new Uint8Array(4 * width * height).fill(255);
  for (let k = 0; k < grey.length; k++)
    rgba.fill(Math.round(grey[k]! + 4 * (next() - 0.5)), 4 * k, 4 * k + 3);
  return { width, height, rgba };
}

/** A pen line of half a millimetre along points, in dashes if they are given. */
export function penLine(
  sheet: ReturnType<typeof paper>,
  points: readonly (readonly number[])[],
  dash?: readonly [number, number],
): void {
  let along = 0;
  for (let i = 1; i < points.length; i++) {
    const [ax, ay] = points[i - 1]! as [number, number],
      [bx, by] = points[i]! as [number, number];
    const length = Math.hypot(bx - ax, by - ay),
      n = Math.max(1, Math.ceil(length / 0.05));
    for (let k = 0; k < n; k++) {
      const at = along + (length * k) / n;
      if (dash && at % (dash[0] + dash[1]) > dash[0]) continue;
      const x = (ax + ((bx - ax) * k) / n) * dotsToMm,
        y = (ay + ((by - ay) * k) / n) * dotsToMm;
      for (let dy = -2; dy <= 2; dy++)
        for (let dx = -2; dx <= 2; dx++) {
          const off = Math.hypot(Math.floor(x) + dx + 0.5 - x, Math.floor(y) + dy + 0.5 - y);
          const at = (Math.floor(y) + dy) * sheet.width + Math.floor(x) + dx;
          const ink = 245 - 190 * Math.max(0, Math.min(1, 0.25 * dotsToMm + 0.5 - off));
          sheet.grey[at] = Math.min(sheet.grey[at]!, ink);
        }
    }
    along += length;
  }
}

/** A scan of three channels, each drawn by itself. */
export function inColour(channels: readonly ReturnType<typeof paper>[]): Picture {
  const [red, green, blue] = channels.map(scanned);
  const rgba = Uint8Array.from(red!.rgba, (v, k) => [v, green!.rgba[k]!, blue!.rgba[k]!, 255][k % 4]!);
  return { ...red!, rgba };
}

/** mm from a point to the nearest side of a polygon. */
export const offRing = ({ x, y }: Point, ring: readonly (readonly number[])[]): number =>
  Math.min(
    ...ring.map(([ax, ay], i) => {
      const [bx, by] = ring[(i + 1) % ring.length]! as [number, number];
      const [dx, dy] = [bx - ax!, by - ay!];
      const t = Math.max(0, Math.min(1, ((x - ax!) * dx + (y - ay!) * dy) / (dx * dx + dy * dy || 1)));
      return Math.hypot(x - ax! - t * dx, y - ay! - t * dy);
    }),
  );
