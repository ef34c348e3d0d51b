import {
  type Cutting,
  type Edge,
  edgeNamed,
  edgePath,
  line,
  type OutlinePart,
  type Pattern,
  type Piece,
  pathLength,
  pathOf,
  pieceNamed,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { foldEdgeOf, withPiece } from '@paperhinge/geometry/pattern';
import type { Alteration } from '../alteration.js';
import { nothingBecame } from '../became/became.js';
import { requireFreeSeamName } from '../dividing/names-free.js';
import { refusal, saying } from '../dividing/tellings.js';
import { usualAllowance } from '../dividing/usual-allowance.js';
import { sameEdge } from '../edge-refs.js';
import { offStraight } from '../hinge/off-straight.js';
import * as field from '../verb/fields.js';
import { formOf, performSaid, verbFrom } from '../verb/verb.js';

/** Cut a piece apart at its fold, with a seam there. */
export interface FoldToSeam {
  readonly piece: string;
  /** mm; absent = as most seams of the piece have. */
  readonly allowance?: number;
  /** What the seam is called; absent = as the edge. */
  readonly seam?: string;
}
/** Lay a straight seam on the fold, so that a pair becomes one piece. */
export interface SeamToFold {
  readonly piece: string;
  readonly edge: string;
}

/**
 * Makes a seam of a piece's fold: the edge gets an allowance, the piece is cut as a pair, and the two are sewn to one
 * another there. No line moves. Source: common practice, no source.
 * @throws PatternError `unknown-piece`, `no-fold-to-open`, `seam-name-taken`; those of `perform`
 */
export const foldToSeam = (pattern: Pattern, parameters: FoldToSeam): Alteration =>
  performSaid(foldToSeamVerb, pattern, parameters);

export const foldToSeamForm = formOf<FoldToSeam>()({
  verb: 'fold to seam',
  does: 'Makes a seam of the fold that a piece is cut on: the piece is cut as a pair and sewn together there.',
  fields: {
    piece: field.piece(),
    allowance: field.optional(field.length({ most: tolerances.largestAllowance })),
    seam: field.optional(field.newName()),
  },
  leaves: ({ piece }) => ({ changed: [piece], seams: 'unknown' }),
  sentence: 'Make a seam of the fold of the {piece}[, with {allowance} of allowance][, called {seam}]',
  startsAt: { piece: ['piece'] },
  example: { pattern: 'woven-shift', step: { piece: 'back', allowance: '5/8 in' } },
});
export const foldToSeamVerb = /* @__PURE__ */ verbFrom(foldToSeamForm, (pattern, parameters) => {
  const piece = pieceNamed(pattern, parameters.piece);
  const where = { piece: piece.name };
  const fold = foldEdgeOf(piece);
  if (!fold) throw refusal('no-fold-to-open', { piece: where }, where);
  const { allowance = usualAllowance(piece), seam = fold.name } = parameters;
  requireFreeSeamName(pattern, seam);
  const edge = { ...fold, kind: 'seam' as const, allowance };
  const paired = (cutting: Cutting): Cutting => ({ ...cutting, count: 2 * cutting.count, mirrored: true });
  const altered = withPiece(pattern, cutAs(withPart(piece, fold, edge), paired));
  const run = { piece: piece.name, edge: fold.name, reversed: false };
  return {
    pattern: { ...altered, seams: [...altered.seams, { name: seam, a: [run], b: [run], ease: { mm: 0 } }] },
    became: nothingBecame,
    did: saying('fold-became-seam', {
      edge: { ...where, edge: fold.name },
      seam: { seam },
      allowanceMm: allowance,
    }),
    findings: [],
  };
});

/**
 * Lays a straight seam of a pair on the fold: the edge loses its allowance and is drawn quite straight, the piece is cut
 * once, and its seam with itself is gone. Source: common practice, no source.
 * @throws PatternError `unknown-piece`, `unknown-edge`, `fold-there-already`, `edge-not-for-fold`, `fold-needs-pair`,
 *   `fold-sewn-elsewhere`; those of `perform`
 */
export const seamToFold = (pattern: Pattern, parameters: SeamToFold): Alteration =>
  performSaid(seamToFoldVerb, pattern, parameters);

export const seamToFoldForm = formOf<SeamToFold>()({
  verb: 'seam to fold',
  does: 'Lays a straight centre seam on the fold instead: a pair becomes one piece without that seam.',
  fields: { piece: field.piece(), edge: field.edge() },
  leaves: ({ piece }) => ({ changed: [piece], seams: 'unknown' }),
  sentence: 'Lay the {edge} of the {piece} on the fold',
  startsAt: { edge: ['piece', 'edge'] },
  example: { pattern: 'smock', step: { piece: 'back', edge: 'centre-back' } },
});
export const seamToFoldVerb = /* @__PURE__ */ verbFrom(seamToFoldForm, (pattern, parameters) => {
  const piece = pieceNamed(pattern, parameters.piece);
  const edge = edgeNamed(piece, parameters.edge);
  const ref = { piece: piece.name, edge: edge.name };
  requireFoldable(pattern, piece, edge);
  const path = edgePath(piece, edge.name);
  const { opening: _, ...rest } = edge;
  const fold: Edge = {
    ...rest,
    kind: 'fold',
    allowance: 0,
    path: pathOf(line(pathStart(path), pathEnd(path))),
  };
  const halved = (cutting: Cutting): Cutting => ({ ...cutting, count: cutting.count / 2, mirrored: false });
  const altered = withPiece(pattern, cutAs(withPart(piece, edge, fold), halved));
  const whole = { ...ref, from: 0, to: pathLength(path) };
  const gone = pattern.seams.filter(({ a, b }) => [...a, ...b].every(run => sameEdge(run, ref)));
  return {
    pattern: { ...altered, seams: altered.seams.filter(seam => !gone.includes(seam)) },
    became: {
      edges: [{ was: whole, now: { ...whole, to: pathLength(fold.path) } }],
      things: gone.map(({ name }) => ({ was: { seam: name } })),
    },
    did: saying('seam-became-fold', { edge: ref }),
    findings: [],
  };
});

const withPart = (piece: Piece, old: OutlinePart, fresh: OutlinePart): Piece => ({
  ...piece,
  outline: { parts: piece.outline.parts.map(part => (part === old ? fresh : part)) },
});

const cutAs = (piece: Piece, as: (cutting: Cutting) => Cutting): Piece => ({
  ...piece,
  cutting: as(piece.cutting),
  ...(piece.alsoCut ? { alsoCut: piece.alsoCut.map(as) } : {}),
});

function requireFoldable(pattern: Pattern, piece: Piece, edge: Edge): void {
  const where = { piece: piece.name };
  const ref = { ...where, edge: edge.name };
  const fold = foldEdgeOf(piece);
  if (fold) throw refusal('fold-there-already', { piece: where, fold: { edge: fold.name } }, where);
  const offMm = offStraight(edgePath(piece, edge.name));
  if (offMm > tolerances.foldTolerance) throw refusal('edge-not-for-fold', { edge: ref, offMm }, ref);
  const pair = [piece.cutting, ...(piece.alsoCut ?? [])].every(
    ({ count, mirrored }) => mirrored && count % 2 === 0,
  );
  if (!pair) throw refusal('fold-needs-pair', { piece: where, count: piece.cutting.count }, where);
  const elsewhere = pattern.seams.find(({ a, b }) => {
    const runs = [...a, ...b];
    return runs.some(run => sameEdge(run, ref)) && !runs.every(run => sameEdge(run, ref));
  });
  if (elsewhere) throw refusal('fold-sewn-elsewhere', { edge: ref, seam: { seam: elsewhere.name } }, ref);
}
