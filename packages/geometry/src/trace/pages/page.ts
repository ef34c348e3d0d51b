import type { Box } from '../../curve/bounds.js';
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

/** How pages are laid where nothing on them tells. Lengths in mm. */
export interface GridWishes {
  readonly columns: number;
  readonly overlap: number;
}
