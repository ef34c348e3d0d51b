import { edgePath, type Finding, type Pattern, type Piece, pathLength } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { type EdgePosition, foldEdgeOf } from '@paperhinge/geometry/pattern';
import type { Affine } from '@paperhinge/geometry/plane';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import type { ThingBecame } from '../became/became.js';
import { thingsOn } from '../became/by-names.js';
import { carriedNotches } from '../became/parts.js';
import { carriedThings } from '../dividing/carried-things.js';
import { joinedRing } from '../dividing/joined-ring.js';
import { laidOn } from '../dividing/laid-on.js';
import { requireFreeEdgeName } from '../dividing/names-free.js';
import { restDart } from '../dividing/rest-dart.js';
import { finding, refusal, saying } from '../dividing/tellings.js';
import { type TwoEdges, twoEdgesOf } from '../dividing/two-edges.js';
import { offStraight } from '../hinge/off-straight.js';
import { finding as hingeFinding } from '../hinge/tellings.js';
import { composed } from '../moved-edges/composed.js';
import { seamNamed, shareOfSeam } from '../moved-edges/seam-place.js';
import { requireSimple } from '../moved-edges/tidy.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

/** Join two pieces into one at the seam between them. */
export interface JoinPieces {
  readonly seam: string;
  /** mm the two seam lines may lie apart when the pieces lie edge to edge; default 2. */
  readonly within?: number;
  /** How far along the seam, from its beginning, they are joined; absent = all of it. */
  readonly upTo?: EdgePosition;
  /** What the dart is called that is kept beyond. */
  readonly dart?: string;
}

/**
 * Joins the two pieces of a seam into one: one is laid seam on seam against the other (end on end, turned over where
 * their outlines ask for it) and both outlines become one. The piece with the fold keeps place, grain and name, else the
 * first of the seam; nothing else of either changes its shape. Lines that run on across the seam's ends become one
 * edge. Seam lines that do not lie within `within` mm of one another are refused: what does not lie flat needs a dart,
 * gathers, or the seam. Joined `upTo` a place only, what opens beyond it is kept as a dart of both lines: so a panel seam
 * is joined as far as the bust point. Source: common practice, no source.
 *
 * @throws PatternError `unknown-seam`, `seam-not-of-two-edges`, `seam-of-one-piece`, `join-through-dart`,
 *   `join-not-flat`, `joined-overlapping`, `rest-legs-unlike`, `edge-name-taken`; those of a place on a seam; those of `perform`
 */
export const joinPieces = (pattern: Pattern, parameters: JoinPieces): Alteration =>
  perform(joinPiecesVerb, pattern, parameters);

export const joinPiecesForm = formOf<JoinPieces>()({
  verb: 'join pieces',
  does: 'Lays two pieces edge to edge along their seam, or up to a place on it, and makes one piece of them; what opens beyond is kept as a dart.',
  fields: {
    seam: field.seam(),
    within: field.usually(field.length({ most: 50 }), 2),
    upTo: field.optional(field.place('seam')),
    dart: field.optional(field.newName()),
  },
  lacks: ({ upTo, dart }) => (upTo !== undefined && dart === undefined ? 'dart' : undefined),
  leaves: () => ({ seams: 'unknown' }),
  sentence:
    'Join the two pieces of the {seam} seam[, where they lie within {within}][, up to {up to}][, and keep what opens beyond as the {dart} dart]',
  startsAt: { seam: ['seam'], edge: ['seam'] },
  example: { pattern: 'waistcoat', step: { seam: 'shoulder' } },
});
export const joinPiecesVerb = /* @__PURE__ */ verbFrom(joinPiecesForm, joinedPieces);

function joinedPieces(pattern: Pattern, parameters: JoinPieces & { readonly within: number }): Alteration {
  const { seam, ...two } = staysFirst(twoEdgesOf(pattern, seamNamed(pattern, parameters.seam)));
  const { a, b } = two;
  const where = { piece: a.piece.name, edge: a.run.edge };
  const named = { seam: seam.name };
  return locating(where, () => {
    const share = parameters.upTo === undefined ? 1 : shareOfSeam(pattern, seam, parameters.upTo);
    const { motion, apartMm } = laidOn({ seam, ...two }, share);
    const withinMm = parameters.within;
    if (apartMm > withinMm + tolerances.coincidenceTolerance)
      throw refusal('join-not-flat', { seam: named, apartMm, withinMm }, where);
    const ring = joinedRing(
      { piece: a.piece, edge: a.run.edge },
      { piece: b.piece, edge: b.run.edge },
      motion,
      share < 1 ? keptDart({ seam, ...two }, share, motion, parameters.dart) : undefined,
    );
    const { parts, spans } = composed(a.piece, ring.items);
    const carried = carriedThings(a.piece, b.piece, motion);
    const seamEdges = [a, b].map(({ piece, run }) => ({
      was: { ...refOf(piece, run.edge), from: 0, to: pathLength(edgePath(piece, run.edge)) },
    }));
    // Where the seam was there is cloth now.
    const within = [a, b].map(({ piece, run }) => ({
      was: refOf(piece, run.edge),
      now: { piece: a.piece.name },
    }));
    const outline = outlineThings(a.piece.name, b.piece, ring.renamed);
    const became = {
      edges: [...spans, ...seamEdges],
      things: [...carried.things, ...outline, ...within, { was: named }],
    };
    const drawn: Piece = {
      ...a.piece,
      outline: { parts },
      lines: carried.lines,
      marks: carried.marks,
      notches: [...carriedNotches(a.piece, became), ...carriedNotches(b.piece, became)],
    };
    requireSimple(drawn, () => refusal('joined-overlapping', { seam: named }, where));
    const pieces = pattern.pieces.flatMap(p => (p === a.piece ? [drawn] : p === b.piece ? [] : [p]));
    return {
      pattern: { ...pattern, pieces, seams: pattern.seams.filter(s => s !== seam) },
      became,
      did: saying('joined-pieces', {
        piece: { piece: a.piece.name },
        other: { piece: b.piece.name },
        seam: named,
        lengthMm: pathLength(edgePath(a.piece, a.run.edge)),
      }),
      findings: findingsOf(drawn, { seam, ...two }, apartMm, ring.renamed),
    };
  });
}

function keptDart(two: TwoEdges, share: number, motion: Affine, name = two.seam.name) {
  for (const { piece } of [two.a, two.b]) requireFreeEdgeName(piece, name);
  return restDart(two, share, motion, name);
}

const refOf = (piece: Piece, edge: string) => ({ piece: piece.name, edge });

/** The piece with the fold stays where it is. */
function staysFirst({ seam, a, b }: TwoEdges): TwoEdges {
  const turn = foldEdgeOf(b.piece) !== undefined && foldEdgeOf(a.piece) === undefined;
  return turn ? { seam, a: b, b: a } : { seam, a, b };
}

/** Darts and pleats of the second piece, by the names they have now. */
const outlineThings = (
  piece: string,
  second: Piece,
  renamed: ReadonlyMap<string, string>,
): readonly ThingBecame[] =>
  thingsOn(second).flatMap((was): readonly ThingBecame[] => {
    const name = was.dart ?? was.pleat;
    if (name === undefined) return [];
    const now = { piece, [was.dart === undefined ? 'pleat' : 'dart']: renamed.get(name)! };
    return [{ was, now }];
  });

function findingsOf(
  joined: Piece,
  { seam, a, b }: TwoEdges,
  apartMm: number,
  renamed: ReadonlyMap<string, string>,
): readonly Finding[] {
  const where = { piece: joined.name };
  const findings: Finding[] = [];
  if (apartMm > tolerances.seamTolerance)
    findings.push(finding('note', 'joined-apart', where, { seam: { seam: seam.name }, apartMm }));
  const fold = foldEdgeOf(joined);
  const offMm = fold ? offStraight(edgePath(joined, fold.name)) : 0;
  if (fold && offMm > tolerances.foldTolerance)
    findings.push(hingeFinding('warning', 'fold-bent', where, { edge: refOf(joined, fold.name), offMm }));
  const [first, second] = [a.piece, b.piece].map(
    piece => piece.cutting.count / (foldEdgeOf(piece) ? 1 : foldEdgeOf(joined) ? 2 : 1),
  );
  if (first !== second)
    findings.push(
      finding('warning', 'joined-cut-unlike', where, {
        first: { piece: a.piece.name },
        second: { piece: b.piece.name },
      }),
    );
  for (const [was, now] of renamed) {
    if (was === now || a.piece.outline.parts.some(part => part.name === now)) continue;
    findings.push(
      finding('note', 'edge-renamed', where, { edge: refOf(b.piece, was), now: refOf(joined, now) }),
    );
  }
  return findings;
}
