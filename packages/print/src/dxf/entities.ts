import type { Point } from '@paperhinge/geometry';
import type { DxfLayer } from './layers.js';

/** One group of a DXF file: its code and its value, on a line each. */
export type Group = readonly [code: number, value: string | number];

/**
 * Lengths in mm with four decimals (R12 keeps what is printed), always with a point: some readers take a whole number
 * for a count. DXF's y runs up, ours down: y is turned over here and nowhere else.
 */
export const decimal = (value: number): string => {
  const text = String(Number(value.toFixed(4)) + 0);
  return text.includes('.') ? text : `${text}.0`;
};

export const place = ({ x, y }: Point, code = 10): readonly Group[] => [
  [code, decimal(x)],
  [code + 10, decimal(-y)],
  [code + 20, '0.0'],
];

export const lineEntity = (layer: DxfLayer, from: Point, to: Point): readonly Group[] => [
  [0, 'LINE'],
  [8, layer],
  ...place(from),
  ...place(to, 11),
];

export const pointEntity = (layer: DxfLayer, at: Point): readonly Group[] => [
  [0, 'POINT'],
  [8, layer],
  ...place(at),
];

/** A line through points; a closed one ends in its first point once more, which readers of the trade ask for. */
export const polylineEntity = (
  layer: DxfLayer,
  points: readonly Point[],
  closed: boolean,
): readonly Group[] => [
  [0, 'POLYLINE'],
  [8, layer],
  [66, 1],
  ...place({ x: 0, y: 0 }),
  [70, closed ? 1 : 0],
  ...[...points, ...(closed ? points.slice(0, 1) : [])].flatMap((p): readonly Group[] => [
    [0, 'VERTEX'],
    [8, layer],
    ...place(p),
  ]),
  [0, 'SEQEND'],
  [8, layer],
];

/** A line of text by the start of its baseline; `height` is that of its capitals, `direction` a unit vector. */
export const textEntity = (
  layer: DxfLayer,
  text: string,
  at: Point,
  height: number,
  direction: Point = { x: 1, y: 0 },
): readonly Group[] => [
  [0, 'TEXT'],
  [8, layer],
  ...place(at),
  [40, decimal(height)],
  [1, text],
  [50, decimal((Math.atan2(-direction.y, direction.x) * 180) / Math.PI)],
  [7, 'STANDARD'],
];

/** The file's text: lines end as the format's home system ends them, which every reader takes. */
export const written = (groups: readonly Group[]): string =>
  groups.map(([code, value]) => `${String(code).padStart(3)}\r\n${value}\r\n`).join('');
