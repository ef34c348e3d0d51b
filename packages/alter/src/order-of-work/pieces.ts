import { type EdgeRef, type Pattern, type Piece, type PieceRole, pieceRoleOf } from '@paperhinge/geometry';
import type { Derived, DerivedKind } from '../alteration.js';

/** A piece made for an edge, in this run or before it, as far as the order of work asks. */
export interface MadePiece {
  readonly name: string;
  readonly kind: DerivedKind;
  readonly along: readonly EdgeRef[];
  readonly joinMm: number;
  readonly gapMm: number;
}

const madeKinds: readonly PieceRole[] = ['band', 'strip', 'binding', 'facing', 'stay'];

/** The pieces drafted in this run, and those that a file says were made for edges that are still there. */
export function madePieces(pattern: Pattern, derived: readonly Derived[]): readonly MadePiece[] {
  const there = (ref: EdgeRef) =>
    pattern.pieces.some(p => p.name === ref.piece && p.outline.parts.some(e => e.name === ref.edge));
  const before = pattern.pieces.filter(
    p => p.madeFor?.every(there) === true && madeKinds.includes(pieceRoleOf(p) ?? 'pocket'),
  );
  return [
    ...derived.map(({ name, kind, along, figures: { joinMm = 0, gapMm = 0 } }) => ({
      name,
      kind,
      along,
      joinMm,
      gapMm,
    })),
    ...before
      .filter(p => !derived.some(d => d.name === p.name))
      .map(p => ({
        name: p.name,
        kind: pieceRoleOf(p) as DerivedKind,
        along: p.madeFor!,
        joinMm: 0,
        gapMm: 0,
      })),
  ];
}

/** Whether a piece lines the garment: by its role, or cut from a lining. */
export function isLining(pattern: Pattern, piece: Piece): boolean {
  if (pieceRoleOf(piece) === 'lining') return true;
  return pattern.fabrics.some(f => f.name === piece.cutting.fabric && f.role === 'lining');
}
