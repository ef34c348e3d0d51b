import { type EdgeRef, type Pattern, type Piece, type PieceRole, pieceRoleOf } from '@paperhinge/geometry';
import { isCentreLine } from '@paperhinge/geometry/pattern';
import type { Derived, DerivedKind } from '../alteration.js';

/** A piece made for an edge, in this run or before it, as far as the order of work asks. */
export interface MadePiece {
  readonly name: string;
  readonly kind: DerivedKind;
  readonly along: readonly EdgeRef[];
  readonly joinMm: number;
  readonly gapMm: number;
}

/** What lies under an edge and is not sewn to it. */
export const isUnder = (kind: DerivedKind): boolean => kind === 'stay' || kind === 'interfacing';

const madeKinds: readonly PieceRole[] = ['band', 'strip', 'binding', 'facing', 'stay', 'interfacing'];

/** The pieces drafted in this run, and those that a file says were made for edges that are still there. */
export function madePieces(pattern: Pattern, derived: readonly Derived[]): readonly MadePiece[] {
  const there = (ref: EdgeRef) =>
    pattern.pieces.some(p => p.name === ref.piece && p.outline.parts.some(e => e.name === ref.edge));
  const before = pattern.pieces.filter(
    p => p.madeFor?.every(there) === true && madeKinds.includes(pieceRoleOf(p) ?? 'pocket'),
  );
  return [
    // Collars, cuffs, pockets and linings have jobs of their own by their roles.
    ...derived
      .filter(({ kind }) => madeKinds.includes(kind))
      .map(({ name, kind, along, figures: { joinMm = 0, gapMm = 0 } }) => ({
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

/** The pattern without what is fused or laid under others and in no seam: its darts and hems are theirs. */
export function withoutInterfacing(pattern: Pattern): Pattern {
  const sewn = new Set(pattern.seams.flatMap(({ a, b }) => [...a, ...b].map(run => run.piece)));
  const pieces = pattern.pieces.filter(piece => pieceRoleOf(piece) !== 'interfacing' || sewn.has(piece.name));
  return pieces.length === pattern.pieces.length ? pattern : { ...pattern, pieces };
}

/** Whether a piece lines the garment: by its role, or cut from a lining. */
export function isLining(pattern: Pattern, piece: Piece): boolean {
  if (pieceRoleOf(piece) === 'lining') return true;
  return pattern.fabrics.some(f => f.name === piece.cutting.fabric && f.role === 'lining');
}

/** Pieces sewn onto an edge of the garment: a band, collar or cuff that is drawn like any other piece. */
export const isSewnOn = (piece: Piece | undefined): boolean =>
  piece !== undefined && ['band', 'collar', 'cuff', 'binding', 'strip'].includes(pieceRoleOf(piece) ?? '');

/** A piece that no seam holds and that is laid on where a placement line shows, and the pieces that have the line. */
export interface LaidOn {
  readonly piece: Piece;
  readonly on: readonly string[];
}

/** The pieces that no seam holds; a placement line of their own name shows where they go, or of a pocket any. */
export const laidOnPieces = ({ pieces, seams }: Pattern): readonly LaidOn[] =>
  pieces
    .filter(piece => !seams.some(({ a, b }) => [...a, ...b].some(r => r.piece === piece.name)))
    .map(piece => {
      const named = placed(pieces, name => name === piece.name);
      return { piece, on: named.length === 0 && pieceRoleOf(piece) === 'pocket' ? placed(pieces) : named };
    });

const placed = (pieces: readonly Piece[], isIts: (name: string) => boolean = () => true): readonly string[] =>
  pieces
    .filter(({ lines }) => lines.some(l => l.kind === 'placement' && !isCentreLine(l) && isIts(l.name)))
    .map(piece => piece.name);

/** Whether a piece lies within the garment: a lining, or a facing that a lining is sewn to. */
export function isWithin(pattern: Pattern, piece: Piece): boolean {
  if (isLining(pattern, piece)) return true;
  if (pieceRoleOf(piece) !== 'facing') return false;
  const isLiningRun = (run: EdgeRef): boolean =>
    pattern.pieces.some(p => p.name === run.piece && isLining(pattern, p));
  const holds = (side: readonly EdgeRef[]) => side.some(run => run.piece === piece.name);
  return pattern.seams.some(
    ({ a, b }) => (holds(a) && b.every(isLiningRun)) || (holds(b) && a.every(isLiningRun)),
  );
}
