import { boxAround } from '../../curve/bounds.js';
import { type DrawnPage, windowOf } from './page.js';

/**
 * Pages that tell no window of their own, with the one that they were all cut off at: what is drawn on any of them lies in
 * it, and on pages enough something reaches each of its sides.
 */
export function inCommonWindow(pages: readonly DrawnPage[]): readonly DrawnPage[] {
  const drawn = pages.filter(page => page.drawing.lines.length > 0);
  if (drawn.length < 2 || pages.some(page => page.window !== undefined)) return pages;
  const window = drawn.map(windowOf).reduce(boxAround);
  return pages.map(page => ({ ...page, window }));
}
