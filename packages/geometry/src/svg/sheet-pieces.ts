import type { EdgeKind, EdgeRole, PieceRole } from '../pattern/types.js';

/** What a sheet says of a piece that the drawing shows as one closed path. Lengths in mm. */
export interface SheetPiece {
  /** The id of the closed path. */
  readonly outline: string;
  /** Names of its edges, clockwise from the corner at or after the path's first point; absent = `edge-1` ... */
  readonly edges?: readonly string[];
  /** Kinds by edge name; absent = seam. */
  readonly kinds?: Readonly<Record<string, EdgeKind>>;
  /** Roles by edge name; absent = guessed. */
  readonly roles?: Readonly<Record<string, EdgeRole>>;
  /** What the piece is; absent = guessed. */
  readonly role?: PieceRole;
  /** Of every seam and hem edge; absent = what the drawing says. */
  readonly allowance?: number;
  readonly title?: string;
  readonly fabric?: string;
  readonly cut?: number;
  readonly mirrored?: boolean;
  /** `cutting`: the path runs along the cutting line, `includedAllowance` outside the stitching line. */
  readonly lineDrawn?: 'stitching' | 'cutting';
  readonly includedAllowance?: number;
}

/** The `pieces` mapping of a sheet, by piece name. */
export type SheetPieces = Readonly<Record<string, SheetPiece>>;
