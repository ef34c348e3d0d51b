import type { Point } from '../../vector.js';
import type { View } from './camera.js';
import type { Picture } from './picture.js';

/** A picture of the floor from straight above at true scale: even cells, row by row. */
export interface FloorMap {
  /** Floor point of the upper left corner of the first cell, mm. */
  readonly origin: Point;
  /** mm. */
  readonly cell: number;
  readonly width: number;
  readonly height: number;
  /** Red, green, blue of each cell, 0 to 255. */
  readonly rgb: Uint8Array;
  /** Which picture each cell is taken from, from 1; 0 where none shows the floor. */
  readonly from: Uint8Array;
}

/** A picture and the camera that took it. */
export interface Shot {
  readonly picture: Picture;
  readonly view: View;
}

/** Cells at most: finer than the picture is no use, and memory ends. */
const mostCells = 4e6;
/** Dots of the picture to a cell, at its middle: the outlines are found in the picture itself. */
const dotsInCell = 1.4;
/** mm. So far outside the sheets nothing is true enough to cut by. */
const farthest = 450;

/** mm of floor to a dot, at the middle of a picture. */
export function dotAt({ picture: { width, height }, view }: Shot): number {
  const u = width / 2,
    v = height / 2;
  const p = view.toFloor(u, v),
    q = view.toFloor(u + 1, v),
    r = view.toFloor(u, v + 1);
  return Math.sqrt(Math.abs((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x)));
}

/**
 * The floor as several pictures show it; where they overlap, each cell from the one that shows it largest.
 * @param about points of the floor, beyond all of which no more than `farthest` is looked at
 */
export function floorMap(shots: readonly Shot[], about: readonly Point[]): FloorMap {
  const box = boxOf(shots, about);
  const [w, h] = [box.right - box.left, box.bottom - box.top];
  const finest = Math.min(...shots.map(dotAt)) * dotsInCell;
  const cell = Math.max(finest, Math.sqrt((w * h) / mostCells));
  const [width, height] = [Math.ceil(w / cell), Math.ceil(h / cell)];
  const map: FloorMap = {
    origin: { x: box.left, y: box.top },
    cell,
    width,
    height,
    rgb: new Uint8Array(3 * width * height),
    from: new Uint8Array(width * height),
  };
  const size = shots.length > 1 ? new Float32Array(width * height) : undefined;
  for (const [i, shot] of shots.entries()) take(map, shot, i + 1, size);
  return map;
}

function boxOf(shots: readonly Shot[], about: readonly Point[]) {
  const within = boundsOf(about);
  const seen = boundsOf(
    shots.flatMap(({ picture: { width, height }, view }) =>
      Array.from({ length: 17 }, (_, i) => i / 16).flatMap(s =>
        (
          [
            [s, 0],
            [s, 1],
            [0, s],
            [1, s],
          ] as const
        ).map(([u, v]) => {
          const p = view.toFloor(u * width, v * height);
          return Number.isNaN(p.x) ? view.toFloor(width / 2, height / 2) : p;
        }),
      ),
    ),
  );
  return {
    left: Math.max(seen.left, within.left - farthest),
    right: Math.min(seen.right, within.right + farthest),
    top: Math.max(seen.top, within.top - farthest),
    bottom: Math.min(seen.bottom, within.bottom + farthest),
  };
}

const boundsOf = (points: readonly Point[]) => ({
  left: Math.min(...points.map(p => p.x)),
  right: Math.max(...points.map(p => p.x)),
  top: Math.min(...points.map(p => p.y)),
  bottom: Math.max(...points.map(p => p.y)),
});

/** Writes what a picture shows into the map where no other shows it larger. */
function take(map: FloorMap, shot: Shot, number: number, size: Float32Array | undefined): void {
  const { picture, view } = shot;
  for (let j = 0, k = 0; j < map.height; j++)
    for (let i = 0; i < map.width; i++, k++) {
      const x = map.origin.x + (i + 0.5) * map.cell,
        y = map.origin.y + (j + 0.5) * map.cell;
      const p = view.toPicture(x, y);
      // One dot inside, so that four lie round it. Also false for what lies behind the camera.
      if (!(p.x > 1 && p.y > 1 && p.x < picture.width - 1 && p.y < picture.height - 1)) continue;
      if (size) {
        const q = view.toPicture(x + 1, y),
          r = view.toPicture(x, y + 1);
        const dots = Math.abs((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x));
        if (map.from[k] !== 0 && dots <= size[k]!) continue;
        size[k] = dots;
      }
      map.from[k] = number;
      for (let channel = 0; channel < 3; channel++)
        map.rgb[3 * k + channel] = colourAt(picture, p.x, p.y, channel);
    }
}

/** One channel of a picture between its dots, linear, 0 to 255; the place lies half a dot or more inside. */
export function colourAt({ width, rgba }: Picture, x: number, y: number, channel: number): number {
  const i = Math.floor(x - 0.5),
    j = Math.floor(y - 0.5);
  const a = x - 0.5 - i,
    b = y - 0.5 - j,
    k = 4 * (j * width + i) + channel,
    row = 4 * width;
  const top = rgba[k]! + (rgba[k + 4]! - rgba[k]!) * a;
  const bottom = rgba[k + row]! + (rgba[k + row + 4]! - rgba[k + row]!) * a;
  return top + (bottom - top) * b;
}

/** The cell that a floor point lies in, or −1 outside the map. */
export function cellAt(
  { origin, cell, width, height }: Pick<FloorMap, 'origin' | 'cell' | 'width' | 'height'>,
  { x, y }: Point,
): number {
  const i = Math.floor((x - origin.x) / cell),
    j = Math.floor((y - origin.y) / cell);
  return i >= 0 && j >= 0 && i < width && j < height ? j * width + i : -1;
}

/** The part of a map that shows some places and so much about them, mm. */
export function partOfMap(map: FloorMap, about: readonly Point[], mm: number): FloorMap {
  const { origin, cell } = map;
  const range = (of: (p: Point) => number, from: number, count: number): readonly [number, number] => [
    Math.max(0, Math.floor((Math.min(...about.map(of)) - mm - from) / cell)),
    Math.min(count, Math.ceil((Math.max(...about.map(of)) + mm - from) / cell)),
  ];
  const [left, right] = range(p => p.x, origin.x, map.width),
    [top, bottom] = range(p => p.y, origin.y, map.height);
  const width = Math.max(0, right - left),
    height = Math.max(0, bottom - top);
  const rgb = new Uint8Array(3 * width * height),
    from = new Uint8Array(width * height);
  for (let j = 0; j < height; j++) {
    const row = (top + j) * map.width + left;
    rgb.set(map.rgb.subarray(3 * row, 3 * (row + width)), 3 * j * width);
    from.set(map.from.subarray(row, row + width), j * width);
  }
  return { origin: { x: origin.x + left * cell, y: origin.y + top * cell }, cell, width, height, rgb, from };
}
