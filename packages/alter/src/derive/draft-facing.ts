import { type EdgeRef, type Finding, type Pattern, pieceNamed } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import type { Alteration } from '../alteration.js';
import { distinctEdges } from '../edge-refs.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { drafted } from './drafted.js';
import { dartFindings, derivedFacing, perSource, saidOf, trimmedFindings } from './facing-derived.js';
import { type FacingOn, facingOn } from './facing-piece.js';
import { facingShape } from './facing-shape.js';
import { flatAlong, tracedFlat } from './flat-along.js';
import { hemsAsSeams } from './hems-as-seams.js';
import { joinedFacings } from './joined-facings.js';
import { titled } from './long-piece.js';
import { placedFacings } from './placed-facings.js';

/** A facing: outer line the edge itself, inner line parallel at `width` mm on the garment side. */
export interface DraftFacing {
  readonly name: string;
  readonly along: readonly EdgeRef[];
  readonly width: number;
  /** mm of allowance where it is cut square or closed; default 0. */
  readonly join?: number;
  readonly fabric?: string;
  /** Facings of several pieces are cut in one, over the seams between them; default no: sewn to one another there. */
  readonly joined?: boolean;
  /** mm that a hem among the edges gets when it becomes a seam; absent: what most seams of its piece have. */
  readonly allowance?: number;
}

/**
 * Drafts a facing: its outer line is the edges themselves, its inner line their parallel, mitred at corners and cut
 * off at the piece's other edges, whose shape its ends have, since it lies on them once it is turned. It lies on the
 * fold where its source does and has its edges' names and allowances. Edges of several pieces get one each, named
 * after its piece and sewn to the others where their pieces are, or one for all. A hem among them becomes a seam.
 * Where darts open into the edges it is traced with them pinned closed, so that it lies flat without any. Source:
 * Armstrong, Patternmaking for Fashion Design (1987), facings [memory]; widths common practice (trade-notes §7).
 *
 * @throws PatternError `edges-not-in-one-run`, `dart-in-facing`, `facing-too-wide`, `facings-do-not-join`,
 *   `facings-overlap`, `drafted-along-itself`; `unknown-piece`, `unknown-edge`; those of `perform`
 */
export const draftFacing = (pattern: Pattern, parameters: DraftFacing): Alteration =>
  perform(draftFacingVerb, pattern, parameters);

export const draftFacingForm = formOf<DraftFacing>()({
  verb: 'draft facing',
  does: 'Drafts a facing: the edge itself outside, its parallel inside, on the fold where its piece is. Facings of several pieces are sewn to one another at the seams between them, or cut in one. Over darts it is traced with them closed.',
  fields: {
    name: field.newName(),
    along: field.edgesOfPieces(),
    width: field.size(),
    join: field.usually(field.length(), 0),
    fabric: field.optional(field.cloth()),
    joined: field.usually(field.yesOrNo(), false),
    allowance: field.optional(field.length({ most: tolerances.largestAllowance })),
  },
  leaves: drafted,
  sentence:
    'Draft a facing "{name}" for {along}, {width} wide[, with {join} to join it][, of the {fabric} cloth][, cut in one: {joined}][, a hem among them now a seam of {allowance}]',
  startsAt: { edge: ['along'], table: [] },
  example: {
    pattern: 'woven-shift',
    step: { name: 'neck facing', along: ['front.neck', 'back.neck'], width: 60 },
  },
});
export const draftFacingVerb = /* @__PURE__ */ verbFrom(draftFacingForm, drawnFacings);

type WholeFacing = DraftFacing & Required<Pick<DraftFacing, 'join' | 'joined'>>;

function drawnFacings(given: Pattern, parameters: WholeFacing): Alteration {
  const { name, width, join } = parameters;
  const along = distinctEdges(parameters.along);
  const { pattern, findings: turned } = hemsAsSeams(given, along, name, parameters.allowance);
  const drawn = perSource(along, name).map(own => facingFor(pattern, own, parameters));
  const facings =
    parameters.joined && drawn.length > 1
      ? [
          called(
            joinedFacings(
              pattern,
              drawn.map(d => d.facing),
              join,
            ),
            name,
          ),
        ]
      : drawn.map(d => d.facing);
  const placed = placedFacings(pattern, facings);
  const derived = placed.facings.map(({ piece, faced }) => {
    const outer = faced.map(one => one.edge);
    return derivedFacing(placed.pattern, piece, outer, { kind: 'facing', width, join });
  });
  return {
    pattern: placed.pattern,
    did: saidOf('facing', derived),
    findings: [...turned, ...placed.findings, ...drawn.flatMap(d => d.findings)],
    derived,
  };
}

function facingFor(
  pattern: Pattern,
  { source: from, along, name }: ReturnType<typeof perSource>[number],
  { width, join, fabric }: WholeFacing,
): { readonly facing: FacingOn; readonly findings: readonly Finding[] } {
  const edges = along.map(ref => ref.edge);
  const flat = flatAlong(pieceNamed(pattern, from), edges);
  const { piece: source, darts, shape } = tracedFlat(flat, edges, piece => facingShape(piece, edges, width));
  const cloth = fabric ?? source.cutting.fabric;
  return {
    facing: facingOn({ name, shape, source, along, fabric: cloth, join }),
    findings: [...trimmedFindings(name, shape, width), ...dartFindings(name, from, darts)],
  };
}

const called = (facing: FacingOn, name: string): FacingOn => ({
  ...facing,
  piece: { ...facing.piece, name, title: titled(name) },
});
