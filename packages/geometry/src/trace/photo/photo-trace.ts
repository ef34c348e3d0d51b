import type { Path } from '../../path/path.js';
import type { Finding } from '../../telling.js';
import type { Point } from '../../vector.js';
import type { FloorMap } from './floor-map.js';
import type { PlacedSheet } from './floor-of-sheets.js';

/** A piece as traced: its edges from corner to corner, clockwise, in floor mm. */
export interface TracedPiece {
  readonly name: string;
  /** From corner to corner, from the upper left one on: they are called `edge-1`, `edge-2` ... */
  readonly edges: readonly Path[];
  /** The points on the picture's own edge that the edges were fitted to. */
  readonly points: readonly Point[];
  /** mm² of it that lie on sheets, where its edge is harder to see. */
  readonly onPaper: number;
  /** Whether its edge is clear against the ground all round; else it is less true. */
  readonly isClear: boolean;
}

/** The floor as measured, and the pieces on it, in floor mm. */
export interface PhotoTrace {
  readonly pieces: readonly TracedPiece[];
  /** Every size of a nest, the first as `pieces`, all named alike. */
  readonly sizes?: readonly SizeTraced[];
  /** mm: what the targets' corners leave, and the worst target. Nothing in a scan can say. */
  readonly residualMm?: number;
  readonly worstMm?: number;
  /** mm of floor to a dot in the middle of the finest picture. */
  readonly dotMm: number;
  readonly sheets: readonly PlacedSheet[];
  readonly floor: FloorMap;
  readonly findings: readonly Finding[];
}

/** One size of a nest as it was traced. */
export interface SizeTraced {
  readonly size: string;
  readonly pieces: readonly TracedPiece[];
}
