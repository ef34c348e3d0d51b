import {
  type EdgeRef,
  type EdgeRun,
  edgeNames,
  type Finding,
  lengthInGarment,
  type Pattern,
  type Piece,
  pathLength,
  pieceNamed,
  tolerances,
} from '@paperhinge/geometry';
import type { Alteration, Derived, MakingNote } from '../alteration.js';
import * as field from '../verb/fields.js';
import { perform, verbOf } from '../verb/verb.js';
import { cutLength } from './cut-size.js';
import { drafted } from './drafted.js';
import { facingPiece, stayPiece } from './facing-piece.js';
import { facingShape } from './facing-shape.js';
import { laidAside } from './free-place.js';
import { distinctEdges } from './garment-chain.js';
import { takePlace } from './take-place.js';

/** A facing or a stay: outer line the edge itself, inner line parallel at `width` mm on the garment side. */
export interface DraftFacing {
  readonly name: string;
  readonly along: readonly EdgeRef[];
  readonly width: number;
  /** Default 0. */
  readonly join?: number;
  readonly fabric?: string;
}
type Kind = 'facing' | 'stay';
type WholeFacing = DraftFacing & { readonly join: number };

/**
 * Drafts a facing: its outer line is the edges themselves, its inner line their parallel, mitred at corners and cut
 * off at the piece's other edges. It lies on the fold where its source does and has its edges' names and allowances.
 * Edges of several pieces get one each, named after its piece.
 *
 * @throws PatternError `edges-do-not-join`, `dart-in-facing`, `facing-too-wide`, `drafted-along-itself`;
 *   `unknown-piece`, `unknown-edge`; those of `perform`
 */
export const draftFacing = (pattern: Pattern, parameters: DraftFacing): Alteration =>
  perform(draftFacingVerb, pattern, parameters);

/** Drafts a stay: as a facing, but whole and without allowance. */
export const draftStay = (pattern: Pattern, parameters: DraftFacing): Alteration =>
  perform(draftStayVerb, pattern, parameters);

const fields = {
  name: field.newName(),
  along: field.edgesOfPieces(),
  width: field.size(),
  join: field.usually(field.length(), 0),
  fabric: field.optional(field.cloth()),
};
const startsAt = { edge: ['along'], table: [] };

export const draftFacingVerb = verbOf<DraftFacing>()({
  verb: 'draft facing',
  does: 'Drafts a facing: the edge itself outside, its parallel inside, on the fold where its piece is.',
  fields,
  leaves: drafted,
  sentence:
    'Draft a facing "{name}" for {along}, {width} wide[, with {join} to join it][, of the {fabric} cloth]',
  startsAt,
  example: {
    pattern: 'woven-shift',
    step: { name: 'neck facing', along: ['front.neck', 'back.neck'], width: 60 },
  },
  alter: (pattern, parameters) => drawnFacing(pattern, parameters, 'facing'),
});

export const draftStayVerb = verbOf<DraftFacing>()({
  verb: 'draft stay',
  does: 'Drafts a stay that keeps an edge from stretching: the edge itself outside, its parallel inside, whole and without allowance.',
  fields,
  leaves: drafted,
  sentence:
    'Draft a stay "{name}" for {along}, {width} wide[, with {join} to join it][, of the {fabric} cloth]',
  startsAt,
  example: { pattern: 'woven-shift', step: { name: 'shoulder stay', along: ['front.shoulder'], width: 18 } },
  alter: (pattern, parameters) => drawnFacing(pattern, parameters, 'stay'),
});

function drawnFacing(pattern: Pattern, parameters: WholeFacing, kind: Kind): Alteration {
  const { name, width } = parameters;
  const along = distinctEdges(parameters.along);
  const sources = [...new Set(along.map(ref => ref.piece))];
  const findings: Finding[] = [];
  const derived: Derived[] = [];
  const said: string[] = [];
  let altered = pattern;
  for (const source of sources) {
    const own = along.filter(ref => ref.piece === source);
    const made = oneFacing(altered, pieceNamed(altered, source), own, {
      ...parameters,
      kind,
      name: sources.length === 1 ? name : `${name} ${source}`,
    });
    altered = made.pattern;
    findings.push(...made.findings);
    derived.push(made.derived);
    const cut = (mm: number): string => cutLength(mm, pattern.unit);
    said.push(
      `${made.derived.name}, ${cut(made.derived.lengthMm)} along its outer edge and ${cut(width)} wide`,
    );
  }
  return {
    pattern: altered,
    did: `drafted ${kind} ${said.join('; ')}`,
    findings,
    derived,
    making: derived.map(d => note(d)),
  };
}

function oneFacing(
  pattern: Pattern,
  source: Piece,
  along: readonly EdgeRef[],
  { kind, name, width, join, fabric: asked }: WholeFacing & { readonly kind: Kind },
) {
  const shape = facingShape(
    source,
    along.map(ref => ref.edge),
    width,
  );
  const fabric = asked ?? source.cutting.fabric;
  const wanted = { name, shape, source, along, fabric, join };
  const piece = laidAside(pattern, kind === 'facing' ? facingPiece(wanted) : stayPiece(wanted));
  // A stay is fused or basted on, not sewn by a seam of its own.
  const sewn = kind === 'facing' ? { ...sewnAlong(piece, along), easeMm: 0 } : undefined;
  const placed = takePlace(pattern, piece, sewn);
  const outer = piece.outline.parts.filter(
    p => p.type === 'edge' && outerNames(kind, along).includes(p.name),
  );
  const lengthMm = outer.reduce((sum, p) => sum + (p.type === 'edge' ? pathLength(p.path) : 0), 0);
  const inner = piece.outline.parts.find(p => p.type === 'edge' && p.name === 'inner');
  const derived: Derived = {
    name,
    kind,
    lengthMm,
    widthMm: width,
    fabric,
    along,
    edgeMm: along.reduce((sum, ref) => sum + lengthInGarment(pattern, ref), 0),
    figures: {
      innerMm: inner?.type === 'edge' ? pathLength(inner.path) : 0,
      ...(join > 0 ? { joinMm: join } : {}),
    },
  };
  return {
    ...placed,
    findings: [...placed.findings, ...trimmedFinding(name, shape.trimmedMm, width)],
    derived,
  };
}

function trimmedFinding(name: string, trimmedMm: number, width: number): readonly Finding[] {
  if (trimmedMm <= tolerances.fitTolerance) return [];
  return [
    {
      severity: 'note',
      code: 'inner-line-trimmed',
      where: { piece: name },
      message: `"${name}" follows a bend tighter than its width; its inner line is cut to a point there.`,
      figures: { trimmedMm, widthMm: width },
      remedy: 'Nothing to do; make it narrower for an inner line that follows the whole bend.',
    },
  ];
}

const outerNames = (kind: Kind, along: readonly EdgeRef[]): readonly string[] =>
  kind === 'stay' ? ['outer'] : along.map(ref => ref.edge);

/** The facing's edges lie on those of the garment one by one, clockwise on both. */
function sewnAlong(piece: Piece, along: readonly EdgeRef[]) {
  const ordered = edgeNames(piece).filter(name => along.some(ref => ref.edge === name));
  const run = (owner: string, edge: string): EdgeRun => ({ piece: owner, edge, reversed: false });
  return {
    own: ordered.map(edge => run(piece.name, edge)),
    partner: ordered.map(edge => run(along[0]!.piece, edge)),
  };
}

const note = ({ name, kind, along }: Derived): MakingNote => {
  const edges = along.map(r => `${r.piece}.${r.edge}`).join(', ');
  return kind === 'stay'
    ? {
        job: `stay ${name}`,
        text: `Lay ${name} on the wrong side of ${edges} and fuse or baste it there.`,
        after: [],
      }
    : {
        job: `facing ${name}`,
        text: `Sew ${name} to ${edges}, right sides together; clip, turn and press.`,
        after: [],
      };
};
