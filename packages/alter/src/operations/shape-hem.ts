import {
  type Edge,
  line,
  type Path,
  type Pattern,
  type Piece,
  type Point,
  pathLength,
  pathOf,
  pieceNamed,
} from '@paperhinge/geometry';
import { fairCurve, pathEnd, pathStart, tangentAlong } from '@paperhinge/geometry/paths';
import { edgeParts, isCentreEdge, neighboursOf, withPiece } from '@paperhinge/geometry/pattern';
import { leftOf, rightOf } from '@paperhinge/geometry/plane';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration, Redrawn } from '../alteration.js';
import { andPartners } from '../matching/and-partners.js';
import { doneToEach, nothingToMatch } from '../matching/done-to-each.js';
import { recomposed } from '../moved-edges/composed.js';
import { hemOf } from '../moved-edges/move-hem.js';
import { requireSimple, tidied } from '../moved-edges/tidy.js';
import {
  cornerMoved,
  type EdgeInRing,
  edgeInRing,
  type MovedCorner,
  withEdgeRedrawn,
} from '../redrawn-edges/corner-moved.js';
import { finding, refusal, saying } from '../redrawn-edges/tellings.js';
import type { Filled } from '../verb/field.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

/** Draw a hem to a new shape, by how far it rises at the side and at the centre. */
export interface ShapeHem {
  readonly piece: string;
  /** Absent = the piece's hem. */
  readonly edge?: string;
  /** mm up the side edge; negative: down, longer. Default 0. */
  readonly side?: number;
  /** mm up the centre; negative: down. Default 0. */
  readonly centre?: number;
  /** A curve square to centre and side, or a straight line; default curved. */
  readonly line?: 'curved' | 'straight';
  /** The same to the pieces beside it. */
  readonly matching?: boolean;
}

/**
 * Draws a hem anew between a place on the side edge and one on the centre: a curve that is square to both, or a straight
 * line. With the side up it is a shirt tail, with front and back given unlike amounts a high-low hem. Side and centre
 * are cut, or run on straight where the hem goes down. A deep turned-up allowance on a curve is told. With `matching` the
 * pieces that the changed edges are sewn to, and so on round the garment, get the same hem where theirs runs from side to
 * centre. Source: common practice, no source.
 *
 * @throws PatternError `unknown-piece`, `no-hem`, `several-hems`, `hem-not-at-centre`, `edge-in-two-parts`,
 *   `corner-beside-dart`, `corner-beyond-edge`, `redrawn-crosses`; those of `perform`
 */
export const shapeHem = (pattern: Pattern, parameters: ShapeHem): Alteration =>
  perform(shapeHemVerb, pattern, parameters);

export const shapeHemForm = formOf<ShapeHem>()({
  verb: 'shape hem',
  does: 'Draws a hem to a new shape: up or down at the side and at the centre, in a curve square to both, or straight.',
  fields: {
    piece: field.piece(),
    edge: field.optional(field.edge()),
    side: field.usually(field.signedLength(), 0),
    centre: field.usually(field.signedLength(), 0),
    line: field.usually(field.choice('curved', 'straight'), 'curved'),
    matching: field.optional(field.yesOrNo()),
  },
  leaves: ({ piece }) => ({ changed: [piece] }),
  sentence:
    'Shape the[ {edge}] hem of the {piece}[, {side} up at the side][, {centre} up at the centre][, {line}][, the pieces beside it too: {matching}]',
  startsAt: { piece: ['piece'], edge: ['piece', 'edge'] },
  example: { pattern: 'woven-shift', step: { piece: 'back', side: '70 mm' } },
});
export const shapeHemVerb = /* @__PURE__ */ verbFrom(shapeHemForm, (pattern, { matching, ...wish }) => {
  if (!matching) return shaped(pattern, wish);
  const { edge, ...likewise } = wish;
  const each = (names: readonly string[]) =>
    names.map(name => (name === wish.piece ? wish : { ...likewise, piece: name }));
  const { names, done } = andPartners(pattern, [wish.piece], hasHemAtCentre, names =>
    doneToEach(pattern, each(names), shaped),
  );
  return names.length > 1 ? done : { ...done, findings: [...done.findings, nothingToMatch(wish.piece)] };
});

type Wish = Omit<Filled<ShapeHem, (typeof shapeHemForm)['fields']>, 'matching'>;

function shaped(pattern: Pattern, parameters: Wish): Redrawn {
  const piece = pieceNamed(pattern, parameters.piece);
  const name = parameters.edge ?? hemOf(piece);
  const edge = { piece: piece.name, edge: name };
  const { side, centre, line: kind } = parameters;
  return locating(edge, () => {
    const ring = edgeInRing(piece, name);
    const startsAtCentre = centreIsAtStart(ring);
    const start = cornerMoved(ring, 'start', startsAtCentre ? centre : side),
      end = cornerMoved(ring, 'end', startsAtCentre ? side : centre);
    const path = kind === 'straight' ? pathOf(line(start.point, end.point)) : curved(start, end);
    const drawn = recomposed(piece, withEdgeRedrawn(ring, [{ ...ring.run, path }], [start, end]));
    const done = tidied(piece, drawn);
    requireSimple(done.piece, () => refusal('redrawn-crosses', { edge }, edge));
    const { allowance } = ring.run.edge;
    const deep = kind === 'curved' && side !== centre && allowance > deepestTurned;
    return {
      pattern: withPiece(pattern, done.piece),
      became: done.became,
      did: saying('shaped-hem', {
        edge,
        sideMm: side,
        centreMm: centre,
        curved: kind === 'curved',
        lengthMm: pathLength(path),
      }),
      findings: [
        ...done.findings,
        ...(deep ? [finding('warning', 'hem-curved-deep', edge, { edge, allowanceMm: allowance })] : []),
      ],
    };
  });
}

/** mm. A curved hem that is turned up by more has to be eased or faced (trade-notes §1). */
const deepestTurned = 15;

/** @throws PatternError `hem-not-at-centre`: neither end of the hem lies at the fold or a centre edge */
function centreIsAtStart({ piece, items, index, run }: EdgeInRing): boolean {
  const at = (step: 1 | -1): boolean => {
    const beside = items[(index + step + items.length) % items.length]!;
    return beside.type === 'run' && isCentre(beside.edge);
  };
  const [before, after] = [at(-1), at(1)];
  const edge = { piece: piece.name, edge: run.edge.name };
  if (before === after) throw refusal('hem-not-at-centre', { edge }, edge);
  return before;
}

const isCentre = (edge: Edge): boolean => edge.kind === 'fold' || isCentreEdge(edge);

/** Whether a piece has one hem, and that with a centre at one of its ends. */
function hasHemAtCentre(piece: Piece): boolean {
  const [hem, ...others] = edgeParts(piece).filter(({ kind }) => kind === 'hem');
  if (!hem || others.length > 0) return false;
  const { start, end } = neighboursOf(piece, hem.name);
  const at = (name: string): boolean => edgeParts(piece).some(edge => edge.name === name && isCentre(edge));
  return at(start) !== at(end);
}

/** A curve square to the edges on either side of it. */
function curved(start: MovedCorner, end: MovedCorner): Path {
  const arriving = start.beside.at(-1)!.path,
    leaving = end.beside[0]!.path;
  // The outline runs clockwise: square to what arrives lies to its right, square to what leaves to its left.
  const from: Point = rightOf(tangentAlong(arriving, pathLength(arriving))),
    to: Point = leftOf(tangentAlong(leaving, 0));
  return fairCurve(
    { point: pathEnd(arriving), direction: from },
    { point: pathStart(leaving), direction: to },
  );
}
