import { at, type Point } from '@paperhinge/geometry';
import { blockGrid, placeForBlock } from '../drawing/block-place.js';
import type { Ink, TypeMeasure } from '../drawing/ink.js';
import { fitted, setCentred, setLine } from '../drawing/lettering.js';
import { circle, closedStroke, straight } from '../drawing/shapes.js';
import type { Chord, Polygon } from '../plane/polygon.js';

/** A piece that has no room for its name, and a point of it. */
export interface Unnamed {
  readonly title: string;
  readonly at: Point;
}

/** mm: em sizes that are tried for a name, and how wide it may run. */
const sizes = [3.2, 2.8, 2.5];
const longest = 36;

/** A piece's name where none of the lines crosses it; none if there is no such place. */
export function nameWithin(
  measure: TypeMeasure,
  title: string,
  outline: Polygon,
  lines: readonly Chord[],
): Ink | undefined {
  const grid = blockGrid({ inside: outline, ink: lines }, at(0, -1), 0.35);
  for (const size of sizes)
    for (const reading of [at(0, -1), at(1, 0)]) {
      const words = fitted(measure, title, size, 'bold', longest);
      const width = measure.width(words, size, 'bold'),
        height = size * 0.95;
      const middle =
        reading.x === 0 ? placeForBlock(grid, width, height) : placeForBlock(grid, height, width);
      if (middle) return setCentred(measure, words, { role: 'text', size, weight: 'bold' }, middle, reading);
    }
  return undefined;
}

/** A point of the outline clear of lines, if there is one. */
export function pointWithin(outline: Polygon, lines: readonly Chord[]): Point {
  const clear = blockGrid({ inside: outline, ink: lines }, at(0, -1), 0.2);
  const any = blockGrid({ inside: outline, ink: [] }, at(0, -1), 0);
  return (
    placeForBlock(clear, 0.8, 0.8) ??
    placeForBlock(clear, 0.3, 0.3) ??
    placeForBlock(any, 0.2, 0.2) ??
    outline[0]!
  );
}

/** mm that names beside the map take at most. */
export const columnWidth = 26;

/** Where the column of names stands: its left side, and how high the map is. */
export interface Column {
  readonly x: number;
  readonly height: number;
}

/** mm: em size of a name beside the map, 7 pt, and from one to the next at the least. */
const size = 2.5;
const pitch = 3.3;

/** Names in a column, each as near the height of its piece as the others allow, with a line to a dot in it. */
export function namesBeside(
  measure: TypeMeasure,
  unnamed: readonly Unnamed[],
  { x, height }: Column,
): { readonly inks: readonly Ink[]; readonly height: number } {
  const sorted = [...unnamed].sort((a, b) => a.at.y - b.at.y || b.at.x - a.at.x);
  const room = Math.max(height, sorted.length * pitch);
  let above = 0;
  const inks = sorted.flatMap(({ title, at: point }, i): readonly Ink[] => {
    const lowest = room - (sorted.length - i) * pitch;
    const top = Math.min(Math.max(point.y - pitch / 2, above), lowest);
    above = top + pitch;
    const words = fitted(measure, title, size, 'bold', columnWidth);
    return [
      closedStroke('map-piece', circle(point, 0.25)),
      straight('map-page', point, at(x - 0.8, top + pitch / 2)),
      setLine(measure, words, { role: 'text', size, weight: 'bold' }, at(x, top + pitch / 2 + size * 0.3)),
    ];
  });
  return { inks, height: sorted.length * pitch };
}
