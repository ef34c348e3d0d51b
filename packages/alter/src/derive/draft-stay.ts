import { type EdgeRef, type Finding, type Pattern, pieceNamed } from '@paperhinge/geometry';
import type { Alteration, Derived } from '../alteration.js';
import { distinctEdges } from '../edge-refs.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { drafted } from './drafted.js';
import { derivedFacing, perSource, saidOf, trimmedFindings } from './facing-derived.js';
import { stayPiece } from './facing-piece.js';
import { facingShape } from './facing-shape.js';
import { laidAside } from './free-place.js';
import { takePlace } from './take-place.js';

/** A stay: outer line the edge itself, inner line parallel at `width` mm on the garment side. */
export interface DraftStay {
  readonly name: string;
  readonly along: readonly EdgeRef[];
  readonly width: number;
  /** Default 0. */
  readonly join?: number;
  readonly fabric?: string;
}

/**
 * Drafts a stay: its outer line is the edges themselves, its inner line their parallel, cut off at the piece's other
 * edges; whole, and without allowance. Edges of several pieces get one each, named after its piece. Source: common
 * practice, no source (trade-notes §7).
 *
 * @throws PatternError those of `draftFacing`
 */
export const draftStay = (pattern: Pattern, parameters: DraftStay): Alteration =>
  perform(draftStayVerb, pattern, parameters);

export const draftStayForm = formOf<DraftStay>()({
  verb: 'draft stay',
  does: 'Drafts a stay that keeps an edge from stretching: the edge itself outside, its parallel inside, whole and without allowance.',
  fields: {
    name: field.newName(),
    along: field.edgesOfPieces(),
    width: field.size(),
    join: field.usually(field.length(), 0),
    fabric: field.optional(field.cloth()),
  },
  leaves: drafted,
  sentence:
    'Draft a stay "{name}" for {along}, {width} wide[, with {join} to join it][, of the {fabric} cloth]',
  startsAt: { edge: ['along'], table: [] },
  example: { pattern: 'woven-shift', step: { name: 'shoulder stay', along: ['front.shoulder'], width: 18 } },
});
export const draftStayVerb = /* @__PURE__ */ verbFrom(draftStayForm, drawnStays);

type WholeStay = DraftStay & { readonly join: number };

function drawnStays(pattern: Pattern, parameters: WholeStay): Alteration {
  const { width, join } = parameters;
  const findings: Finding[] = [];
  const derived: Derived[] = [];
  let altered = pattern;
  for (const { source: from, along, name } of perSource(distinctEdges(parameters.along), parameters.name)) {
    const source = pieceNamed(pattern, from);
    const shape = facingShape(
      source,
      along.map(ref => ref.edge),
      width,
    );
    const fabric = parameters.fabric ?? source.cutting.fabric;
    const piece = laidAside(altered, stayPiece({ name, shape, source, along, fabric, join }));
    // A stay is fused or basted on, not sewn by a seam of its own.
    const placed = takePlace(altered, piece, undefined);
    altered = placed.pattern;
    findings.push(...placed.findings, ...trimmedFindings(name, shape, width));
    derived.push(derivedFacing(altered, piece, ['outer'], { kind: 'stay', width, join }));
  }
  return { pattern: altered, did: saidOf('stay', derived), findings, derived };
}
