import type { SizesTrace } from '../trace/drawing/sizes-of-drawing.js';
import { writePattern, writeSizes } from './write-pattern.js';

/** Which of a piece's two lines a drawing shows, where it shows one alone. */
export type LineDrawn = 'stitching' | 'cutting';

/**
 * What was taken of a drawing as SVG; several sizes in one drawing. Where one line was drawn, allowances are left open,
 * and it is said which line it was.
 */
export function writeTrace({ patterns, bothLines }: Omit<SizesTrace, 'findings'>, line: LineDrawn): string {
  const svg = patterns.length === 1 ? writePattern(patterns[0]!) : writeSizes(patterns);
  if (bothLines) return svg;
  const open = svg.replaceAll(' data-allowance="0 mm"', '');
  return line === 'stitching'
    ? open
    : open.replace(' data-pattern=', ' data-line-drawn="cutting" data-pattern=');
}
