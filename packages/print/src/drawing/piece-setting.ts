import type { Pattern, Piece } from '@paperhinge/geometry';
import type { Reader } from '../words/reader.js';
import type { Frame } from './frame.js';
import type { TypeMeasure } from './ink.js';

/** What the words of a piece are set by. */
export interface PieceSetting {
  readonly piece: Piece;
  readonly pattern: Pattern;
  /** How it stands on the page. */
  readonly frame: Frame;
  readonly measure: TypeMeasure;
  readonly reader: Reader;
}

/** How much larger than on paper words are set. */
export const enlargementOf = ({ measure }: Pick<PieceSetting, 'measure'>): number => measure.enlarged ?? 1;
