import type { EdgeRole, PieceRole } from '../../pattern/types.js';

/** What an edge of a kind of piece looks like: about so, and give or take. */
export interface EdgeLike {
  /** Absent: an edge that has no role of its own, such as the end of a band. */
  readonly role?: EdgeRole;
  /** What an edge without a role is called. */
  readonly called?: string;
  /** Degrees: where it faces on a piece that stands upright, 0 to the right, 90 down, clockwise. */
  readonly faces: readonly [number, number];
  /** How far its middle lies inside its chord, as a share of that. */
  readonly hollow: readonly [number, number];
  /** Share of the outline, and by what share of itself it varies. */
  readonly share: readonly [number, number];
}

/** A kind of piece: its edges clockwise, as it stands with its centre or its front to the left. */
export interface PieceLike {
  readonly role: PieceRole;
  /** mm: its longer side, and by what share of itself it varies. */
  readonly size: readonly [number, number];
  readonly edges: readonly EdgeLike[];
  /** Drawn as a half on a fold and hardly ever whole. */
  readonly onFold?: true;
  /** Never drawn on a fold: there are two of it. */
  readonly inPairs?: true;
  /** What else a pattern has in which there is such a piece: a neck for a collar. */
  readonly beside?: 'neck' | 'legs';
}

/** An edge by its role. */
export const edge = (
  role: EdgeRole,
  faces: EdgeLike['faces'],
  hollow: EdgeLike['hollow'],
  share: EdgeLike['share'],
): EdgeLike => ({ role, faces, hollow, share });
/** An edge that has no role of its own, by what it is called. */
export const plain = (
  called: string,
  faces: EdgeLike['faces'],
  hollow: EdgeLike['hollow'],
  share: EdgeLike['share'],
): EdgeLike => ({ called, faces, hollow, share });
/** Hollow by no more than paper and pencil make it. */
export const straight = [0, 0.025] as const;
/** The centre of a piece that stands with it to the left. */
export const centre = (share: number) => edge('centre', [180, 6], straight, [share, 0.35]);
