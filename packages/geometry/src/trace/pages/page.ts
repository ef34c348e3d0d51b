import { type Box, boxAround } from '../../curve/bounds.js';
import { boundsOfPath } from '../../path/bounds.js';
import type { ForeignDrawing } from '../drawing/drawing.js';

/** One page of a pattern printed in tiles: what is drawn on it, in mm from its upper left corner, y down. */
export interface DrawnPage {
  readonly drawing: ForeignDrawing;
  readonly width: number;
  readonly height: number;
  /** The part of it that shows the pattern, where what is drawn is cut off at it. */
  readonly window?: Box;
  /** The window is a frame that is drawn: what reaches beyond it is cut off at it. */
  readonly cuts?: true;
}

/** mm: what reaches no farther out of a page's window ends at it. */
export const atEdge = 0.6;

/** Where a page is cut off: its window; else all that is drawn on it, or the paper where that reaches beyond it. */
export function windowOf({ window, drawing, width, height }: DrawnPage): Box {
  if (window) return window;
  const paper = { min: { x: 0, y: 0 }, max: { x: width, y: height } };
  const boxes = drawing.lines.map(({ path }) => boundsOfPath(path));
  return boxes.length === 0 || boxes.some(box => reachesOut(box, paper)) ? paper : boxes.reduce(boxAround);
}

/** Whether a box is not all within a window. */
export const reachesOut = (box: Box, window: Box): boolean =>
  box.min.x < window.min.x - atEdge ||
  box.min.y < window.min.y - atEdge ||
  box.max.x > window.max.x + atEdge ||
  box.max.y > window.max.y + atEdge;

/** How pages are laid where nothing on them tells. Lengths in mm. */
export interface GridWishes {
  readonly columns: number;
  readonly overlap: number;
}
