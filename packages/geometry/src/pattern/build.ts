import type { LengthUnit } from '../units.js';
import { pieceWithRoles, withRoles } from './roles/guess-roles.js';
import type {
  Cutting,
  Dart,
  Edge,
  Fabric,
  Fastening,
  Mark,
  Notch,
  OutlinePart,
  Pattern,
  Piece,
  PieceLine,
  PieceRole,
  Pleat,
  Seam,
} from './types.js';
import { validatePattern, validatePiece } from './validate.js';

/** An edge as one writes it down: what is left out takes its usual value. Lengths in mm. */
export type EdgeSpec = Pick<Edge, 'name' | 'path'> & Partial<Omit<Edge, 'type' | 'name' | 'path'>>;

/** A piece as one writes it down: what is left out takes its usual value. Lengths in mm. */
export interface PieceSpec {
  readonly name: string;
  readonly title?: string;
  /** Edges and darts clockwise, each starting where the last ended. */
  readonly outline: readonly (EdgeSpec | Dart | Pleat)[];
  readonly notches?: readonly Notch[];
  readonly lines?: readonly PieceLine[];
  readonly marks?: readonly Mark[];
  readonly cutting?: Partial<Cutting>;
  /** Absent: guessed. */
  readonly role?: PieceRole;
  readonly alsoCut?: readonly Cutting[];
  readonly greatestStretch?: Piece['greatestStretch'];
  readonly madeFor?: Piece['madeFor'];
}

/**
 * A piece from its edges, with the defaults of the pattern format: seams without allowance, cut once from the main
 * fabric; cut as a mirrored pair when the count is even and no edge is a fold.
 *
 * @throws PatternError those of `validatePiece`
 */
export function definePiece(spec: PieceSpec): Piece {
  const parts = spec.outline.map((part): OutlinePart => (isEdgeSpec(part) ? edgeOf(part) : part));
  const hasFold = parts.some(p => p.type === 'edge' && p.kind === 'fold');
  const count = spec.cutting?.count ?? 1;
  const piece: Piece = {
    name: spec.name,
    title: spec.title ?? spec.name,
    outline: { parts },
    notches: spec.notches ?? [],
    lines: spec.lines ?? [],
    marks: spec.marks ?? [],
    cutting: { fabric: 'main', mirrored: mirroredByDefault(count, hasFold), ...spec.cutting, count },
    ...(spec.role ? { role: spec.role } : {}),
    ...(spec.alsoCut ? { alsoCut: spec.alsoCut } : {}),
    ...(spec.greatestStretch ? { greatestStretch: spec.greatestStretch } : {}),
    ...(spec.madeFor ? { madeFor: spec.madeFor } : {}),
  };
  // Guessing asks for a sound outline, and leaves it as it is.
  validatePiece(piece);
  return pieceWithRoles(piece);
}

const isEdgeSpec = (part: EdgeSpec | Dart | Pleat): part is EdgeSpec =>
  !('type' in part) || (part as { readonly type: string }).type === 'edge';

/** Cut as mirrored pairs: when the count is even and there is no fold edge. */
export const mirroredByDefault = (count: number, hasFold: boolean): boolean => count % 2 === 0 && !hasFold;

const edgeOf = (spec: EdgeSpec): Edge => ({ kind: 'seam', allowance: 0, corners: {}, ...spec, type: 'edge' });

/** A pattern as one writes it down: what is left out takes its usual value. */
export interface PatternSpec {
  readonly name: string;
  readonly unit?: LengthUnit;
  readonly pieces: readonly Piece[];
  readonly seams?: readonly Seam[];
  readonly fabrics?: readonly Fabric[];
  readonly fastenings?: readonly Fastening[];
  /** mm. */
  readonly tolerance?: number;
  readonly size?: string;
}

/** A pattern from its pieces; roles that were not given are guessed. @throws PatternError those of `validatePattern` */
export function definePattern(spec: PatternSpec): Pattern {
  const pattern: Pattern = { unit: 'mm', seams: [], fabrics: [], ...spec };
  validatePattern(pattern);
  return withRoles(pattern);
}
