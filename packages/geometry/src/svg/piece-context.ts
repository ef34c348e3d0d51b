import type { LengthUnit } from '../units.js';
import type { Report } from './report.js';
import type { SheetPiece } from './sheet-pieces.js';

/** What the readers of a piece's parts share. */
export interface PieceContext {
  readonly report: Report;
  readonly unit: LengthUnit;
  readonly sheet: SheetPiece | undefined;
  readonly owner: { readonly piece: string };
  /** Where the piece itself stands in the file. */
  readonly offset: number;
}
