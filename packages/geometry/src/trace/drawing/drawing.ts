import type { Path } from '../../path/path.js';
import type { Point } from '../../vector.js';

/** A drawing of any origin: what was drawn in which hand, and what was written beside it. mm, y down. */
export interface ForeignDrawing {
  readonly lines: readonly DrawnLine[];
  readonly words: readonly DrawnWord[];
}

/** One stroke. */
export interface DrawnLine {
  readonly path: Path;
  readonly closed: boolean;
  /** What keeps strokes together that belong to one piece: a block of an interchange file. */
  readonly group?: string;
  /** The layer, or where there is none the colour and dash: what tells sizes apart. */
  readonly layer: string;
  readonly dashed: boolean;
  /** How it is dashed, where the file tells: lengths of dashes and gaps in mm, or the name of a kind of line. */
  readonly dash?: readonly number[] | string;
  /** What a standard says it is. */
  readonly is?: LineMeaning;
}

/** What the standard's layers of pattern interchange mean. */
export type LineMeaning = 'cut' | 'sew' | 'grain' | 'fold' | 'notch' | 'inside' | 'drill' | 'corner';

/** Something written, by where it begins. */
export interface DrawnWord {
  readonly text: string;
  readonly at: Point;
  readonly group?: string;
}
