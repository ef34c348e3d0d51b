import type { Path } from '../path/path.js';
import type { LengthUnit } from '../units.js';
import type {
  CornerRule,
  Cutting,
  Dart,
  Edge,
  EdgeKind,
  Fabric,
  Mark,
  Notch,
  OutlinePart,
  Pattern,
  Piece,
  PieceLine,
  Seam,
} from './types.js';
import { validatePattern, validatePiece } from './validate.js';

/** An edge as one writes it down: what is left out takes its usual value. Lengths in mm. */
export interface EdgeSpec {
  readonly name: string;
  readonly path: Path;
  readonly kind?: EdgeKind;
  /** mm; default 0. */
  readonly allowance?: number;
  readonly corners?: { readonly start?: CornerRule; readonly end?: CornerRule };
  readonly opening?: number;
}

/** A piece as one writes it down: what is left out takes its usual value. Lengths in mm. */
export interface PieceSpec {
  readonly name: string;
  readonly title?: string;
  /** Edges and darts clockwise, each starting where the last ended. */
  readonly outline: readonly (EdgeSpec | Dart)[];
  readonly notches?: readonly Notch[];
  readonly lines?: readonly PieceLine[];
  readonly marks?: readonly Mark[];
  readonly cutting?: Partial<Cutting>;
}

/**
 * A piece from its edges, with the defaults of the pattern format: seams without allowance, cut once from the main
 * fabric; cut as a mirrored pair when the count is even and no edge is a fold.
 *
 * @throws PatternError those of `validatePiece`
 */
export function definePiece(spec: PieceSpec): Piece {
  const parts = spec.outline.map(
    (part): OutlinePart => ('type' in part && part.type === 'dart' ? part : edgeOf(part as EdgeSpec)),
  );
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
  };
  validatePiece(piece);
  return piece;
}

/** Cut as mirrored pairs: when the count is even and there is no fold edge. */
export const mirroredByDefault = (count: number, hasFold: boolean): boolean => count % 2 === 0 && !hasFold;

const edgeOf = ({ name, path, kind = 'seam', allowance = 0, corners = {}, opening }: EdgeSpec): Edge => ({
  type: 'edge',
  name,
  path,
  kind,
  allowance,
  corners,
  ...(opening === undefined ? {} : { opening }),
});

/** A pattern as one writes it down: what is left out takes its usual value. */
export interface PatternSpec {
  readonly name: string;
  readonly unit?: LengthUnit;
  readonly pieces: readonly Piece[];
  readonly seams?: readonly Seam[];
  readonly fabrics?: readonly Fabric[];
}

/** A pattern from its pieces. @throws PatternError those of `validatePattern` */
export function definePattern({ name, unit = 'mm', pieces, seams = [], fabrics = [] }: PatternSpec): Pattern {
  const pattern: Pattern = { name, unit, pieces, seams, fabrics };
  validatePattern(pattern);
  return pattern;
}
