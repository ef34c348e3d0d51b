import { line, type Path } from '@paperhinge/geometry';
import type { Box } from '@paperhinge/geometry/curves';
import type { Ink } from '../drawing/ink.js';

/** mm between the lines of the grid; each fifth is a little darker. */
const spacing = 10;
const bold = 5;

/** A fine grid over the whole sheet, in centimetres from its corner: joined pages run on by it, and lengths are seen at a glance. */
export function fineGrid({ min, max }: Box): readonly Ink[] {
  const upright = (x: number) => line({ x, y: min.y }, { x, y: max.y });
  const level = (y: number) => line({ x: min.x, y }, { x: max.x, y });
  const along = (from: number, to: number, every: (n: number) => boolean) =>
    Array.from({ length: Math.floor((to - from) / spacing) + 1 }, (_, n) => n)
      .filter(every)
      .map(n => from + n * spacing);
  const lines = (every: (n: number) => boolean): Path => ({
    segments: [...along(min.x, max.x, every).map(upright), ...along(min.y, max.y, every).map(level)],
  });
  return [
    { kind: 'stroke', role: 'guide', path: lines(n => n % bold !== 0) },
    { kind: 'stroke', role: 'guide-bold', path: lines(n => n % bold === 0) },
  ];
}
