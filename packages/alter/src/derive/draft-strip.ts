import {
  type EdgeRef,
  edgeNamed,
  type Finding,
  formatLength,
  type Pattern,
  pieceNamed,
} from '@paperhinge/geometry';
import type { Alteration, Derived } from '../alteration.js';
import * as field from '../verb/fields.js';
import { perform, verbOf } from '../verb/verb.js';
import { cutLength } from './cut-size.js';
import { drafted } from './drafted.js';
import { freePlace } from './free-place.js';
import { distinctEdges, garmentChains, runsAlong } from './garment-chain.js';
import { endEdges, longPiece, sewnEdge } from './long-piece.js';
import { narrowFindings, stitchedIn } from './stitched-in.js';
import { takePlace } from './take-place.js';

/** A strip (cut width given) or a binding (finished width given, cut four times as wide). Lengths in mm. */
export interface DraftStrip {
  readonly name: string;
  readonly along: readonly EdgeRef[];
  readonly width: number;
  /** Added at each end to join it; default 0. */
  readonly join?: number;
  readonly fabric?: string;
}

/**
 * Drafts a straight strip as long as its edges are in the whole garment, and 2 join.
 *
 * @throws PatternError `drafted-along-itself`; `unknown-piece`, `unknown-edge`; those of `perform`
 */
export const draftStrip = (pattern: Pattern, parameters: DraftStrip): Alteration =>
  perform(draftStripVerb, pattern, parameters);

/** Drafts a bias binding: cut four times its finished width and stitched a quarter of that from both edges. */
export const draftBinding = (pattern: Pattern, parameters: DraftStrip): Alteration =>
  perform(draftBindingVerb, pattern, parameters);

const fields = {
  name: field.newName(),
  along: field.edgesOfPieces(),
  width: field.size(),
  join: field.usually(field.length(), 0),
  fabric: field.optional(field.cloth()),
};
const startsAt = { edge: ['along'], table: [] };

export const draftStripVerb = verbOf<DraftStrip>()({
  verb: 'draft strip',
  does: 'Drafts a straight strip as long as its edges are in the whole garment, cut as wide as given.',
  fields,
  leaves: drafted,
  sentence:
    'Draft a strip "{name}" for {along}, cut {width} wide[, with {join} to join it][, of the {fabric} cloth]',
  startsAt,
  example: {
    pattern: 'woven-shift',
    step: { name: 'hem strip', along: ['sleeve.hem'], width: 50, join: 10 },
  },
  alter: (pattern, parameters) => drawnStrip(pattern, parameters, 'strip'),
});

export const draftBindingVerb = verbOf<DraftStrip>()({
  verb: 'draft binding',
  does: 'Drafts a bias binding as long as its edges are in the whole garment, cut four times as wide as it is when finished.',
  fields,
  leaves: drafted,
  sentence:
    'Draft a binding "{name}" for {along}, {width} wide when finished[, with {join} to join it][, of the {fabric} cloth]',
  startsAt,
  example: {
    pattern: 'woven-shift',
    step: { name: 'neck binding', along: ['front.neck', 'back.neck'], width: 10, join: 10 },
  },
  alter: (pattern, parameters) => drawnStrip(pattern, parameters, 'binding'),
});

function drawnStrip(
  pattern: Pattern,
  { name, along: asked, width, join, fabric }: DraftStrip & { readonly join: number },
  kind: 'strip' | 'binding',
): Alteration {
  const along = distinctEdges(asked);
  const chains = garmentChains(pattern, along);
  const edgeMm = chains.flatMap(c => c.lying).reduce((sum, l) => sum + l.lengthMm, 0);
  const source = pieceNamed(pattern, along[0]!.piece);
  const cutWidth = kind === 'binding' ? 4 * width : width;
  const given = edgeNamed(source, along[0]!.edge).allowance;
  const allowance = kind === 'binding' ? width : stitchedIn(cutWidth, given);
  const cloth = fabric ?? source.cutting.fabric;
  const piece = longPiece({
    name,
    madeFor: along,
    place: freePlace(pattern, name),
    fabric: cloth,
    finishedLength: edgeMm,
    finishedWidth: cutWidth - 2 * allowance,
    join,
    allowance,
    grain: kind === 'binding' ? 'bias' : 'along',
    notches: [],
    ...(kind === 'binding' ? { note: 'on the bias' } : {}),
  });
  const ring = chains.length === 1 && chains[0]!.closed;
  const ends = {
    a: [{ piece: name, edge: endEdges[0], reversed: true }],
    b: [{ piece: name, edge: endEdges[1], reversed: false }],
  };
  const own = [{ piece: name, edge: sewnEdge, reversed: false }];
  const placed = takePlace(
    pattern,
    piece,
    { own, partner: runsAlong(chains), easeMm: 0 },
    ring ? ends : undefined,
  );
  const lengthMm = edgeMm + 2 * join;
  const derived: Derived = {
    name,
    kind,
    lengthMm,
    widthMm: cutWidth,
    fabric: cloth,
    along,
    edgeMm,
    figures: {
      joinMm: join,
      allowanceMm: allowance,
      finishedWidthMm: kind === 'binding' ? width : (cutWidth - 2 * allowance) / 2,
    },
  };
  const cut = (mm: number): string => cutLength(mm, pattern.unit);
  return {
    pattern: placed.pattern,
    did:
      `drafted ${kind} ${name} for ${formatLength(edgeMm, pattern.unit)} of edge: cut ${cut(lengthMm)} × ${cut(cutWidth)}` +
      (kind === 'binding' ? ' on the bias' : '') +
      (placed.replaced ? '; it takes the place of the old piece of that name' : ''),
    findings: [
      ...severalFinding(name, chains.length, edgeMm, join),
      ...(kind === 'strip' ? narrowFindings(name, cutWidth, given, pattern.unit) : []),
      ...placed.findings,
    ],
    derived: [derived],
  };
}

function severalFinding(name: string, count: number, edgeMm: number, join: number): readonly Finding[] {
  if (count < 2) return [];
  return [
    {
      severity: 'note',
      code: 'several-stretches',
      where: { piece: name },
      message: `The edges of "${name}" lie in ${count} separate stretches of the garment; its length is for all of them together.`,
      figures: { stretches: count, extraJoinsMm: 2 * join * (count - 1), edgeMm },
      remedy: 'Cut it apart for each, and allow for the joins of each.',
    },
  ];
}
