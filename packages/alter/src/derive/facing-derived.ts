import {
  type EdgeRef,
  edgePath,
  type Finding,
  type Pattern,
  type Piece,
  pathLength,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { lengthInGarment } from '@paperhinge/geometry/measure';
import type { Alteration, Derived } from '../alteration.js';
import type { FacingShape } from './facing-shape.js';
import { finding, saying } from './tellings.js';

/** What a facing or stay was asked to be, as far as its figures go. Lengths in mm. */
export interface FacingFigures {
  readonly kind: 'facing' | 'stay';
  readonly width: number;
  readonly join: number;
}

/**
 * The figures of a facing or stay in a pattern.
 * @param outer the names of its edges that lie on those it was made for
 */
export function derivedFacing(
  pattern: Pattern,
  piece: Piece,
  outer: readonly string[],
  { kind, width, join }: FacingFigures,
): Derived {
  const along = piece.madeFor ?? [];
  return {
    name: piece.name,
    kind,
    lengthMm: outer.reduce((sum, edge) => sum + pathLength(edgePath(piece, edge)), 0),
    widthMm: width,
    fabric: piece.cutting.fabric,
    along,
    edgeMm: along.reduce((sum, ref) => sum + lengthInGarment(pattern, ref), 0),
    figures: {
      innerMm: pathLength(edgePath(piece, 'inner')),
      ...(join > 0 ? { joinMm: join } : {}),
    },
  };
}

/** What drafting these did. */
export const saidOf = (kind: 'facing' | 'stay', derived: readonly Derived[]): Alteration['did'] =>
  saying('drafted-facing', {
    kind,
    pieces: derived.map(({ name: piece, lengthMm, widthMm }) =>
      saying('drafted-facing-piece', { piece, lengthMm, widthMm }),
    ),
  });

/** Tells where an inner line could not follow the whole bend of its edge. */
export function trimmedFindings(
  piece: string,
  { trimmedMm }: FacingShape,
  widthMm: number,
): readonly Finding[] {
  if (trimmedMm <= tolerances.fitTolerance) return [];
  return [finding('note', 'inner-line-trimmed', { piece }, { piece, trimmedMm, widthMm })];
}

/** Tells which darts of its piece a facing was traced with closed. */
export const dartFindings = (piece: string, source: string, darts: readonly string[]): readonly Finding[] =>
  darts.length === 0
    ? []
    : [
        finding(
          'note',
          'facing-over-darts',
          { piece },
          { piece: { piece }, darts: darts.map(dart => ({ piece: source, dart })) },
        ),
      ];

/** The edges of each piece by themselves, and the name of what is drafted for them. */
export function perSource(
  along: readonly EdgeRef[],
  name: string,
): readonly { readonly source: string; readonly along: readonly EdgeRef[]; readonly name: string }[] {
  const sources = [...new Set(along.map(ref => ref.piece))];
  return sources.map(source => ({
    source,
    along: along.filter(ref => ref.piece === source),
    name: sources.length === 1 ? name : `${name} ${source}`,
  }));
}
