import {
  type Edge,
  type Pattern,
  type Piece,
  type Point,
  pathLength,
  pieceNamed,
  roleOf,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { joined, pathEnd, pathStart, reversedPath } from '@paperhinge/geometry/paths';
import { foldEdgeOf, withPiece } from '@paperhinge/geometry/pattern';
import { add, lerp, rightOf, scale, subtract, unit } from '@paperhinge/geometry/plane';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import { requireFreeEdgeName } from '../dividing/names-free.js';
import { usualAllowance } from '../dividing/usual-allowance.js';
import { offStraight } from '../hinge/off-straight.js';
import { partOfRun, type Run, recomposed } from '../moved-edges/composed.js';
import { requireSimple, tidied } from '../moved-edges/tidy.js';
import { quarterEllipse } from '../neckline/quarter-ellipse.js';
import { type EdgeInRing, edgeInRing, withEdgeRedrawn } from '../redrawn-edges/corner-moved.js';
import { refusal, saying } from '../redrawn-edges/tellings.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

/** Cut a keyhole below the neck of a piece on the fold. */
export interface CutKeyhole {
  readonly piece: string;
  /** mm down the fold from the neck to its upper end. */
  readonly below: number;
  /** mm from its upper to its lower end. */
  readonly depth: number;
  /** mm at its widest, across the whole piece. */
  readonly width: number;
}

/**
 * Cuts a keyhole into a piece on the fold, below its neck: half an oval, whole once the piece is opened out. Its edge is
 * called `keyhole` and wants a facing or binding. Source: common practice, no source.
 *
 * @throws PatternError `unknown-piece`, `keyhole-needs-fold`, `stand-edge-bent`, `keyhole-off-fold`, `edge-name-taken`,
 *   `edge-in-two-parts`, `redrawn-crosses`; those of `perform`
 */
export const cutKeyhole = (pattern: Pattern, parameters: CutKeyhole): Alteration =>
  perform(cutKeyholeVerb, pattern, parameters);

export const cutKeyholeForm = formOf<CutKeyhole>()({
  verb: 'cut keyhole',
  does: 'Cuts an oval opening into a piece on the fold, below its neck; its edge wants a facing or a binding.',
  fields: {
    piece: field.piece(),
    below: field.length({ least: 5 }),
    depth: field.size(),
    width: field.size(),
  },
  leaves: ({ piece }) => ({ changed: [piece] }),
  sentence: 'Cut a keyhole into the {piece}, {below} below the neck, {depth} deep and {width} wide',
  startsAt: { piece: ['piece'] },
  example: {
    pattern: 'woven-shift',
    step: { piece: 'back', below: '20 mm', depth: '110 mm', width: '60 mm' },
  },
});
export const cutKeyholeVerb = /* @__PURE__ */ verbFrom(cutKeyholeForm, (pattern, parameters) => {
  const piece = pieceNamed(pattern, parameters.piece);
  const where = { piece: piece.name };
  return locating(where, () => {
    const ring = foldBelowNeck(piece);
    const keyhole = keyholeIn(ring, parameters);
    requireFreeEdgeName(piece, keyhole.edge.name);
    const { below, depth } = parameters;
    const length = pathLength(ring.run.path);
    const ends = ring.neckFirst ? [below, below + depth] : [length - below - depth, length - below];
    const fresh = [partOfRun(ring.run, 0, ends[0]!), keyhole, partOfRun(ring.run, ends[1]!, length)];
    const done = tidied(piece, recomposed(piece, withEdgeRedrawn(ring, fresh, [])));
    const edge = { ...where, edge: keyhole.edge.name };
    requireSimple(done.piece, () => refusal('redrawn-crosses', { edge }, where));
    return {
      pattern: withPiece(pattern, done.piece),
      became: done.became,
      did: saying('cut-keyhole', {
        piece: where,
        belowMm: below,
        depthMm: depth,
        widthMm: parameters.width,
        roundMm: 2 * pathLength(keyhole.path),
      }),
      findings: done.findings,
    };
  });
});

type FoldRing = EdgeInRing & { readonly neckFirst: boolean };

/** @throws PatternError `keyhole-needs-fold`: no fold that begins or ends at the neck */
function foldBelowNeck(piece: Piece): FoldRing {
  const where = { piece: piece.name };
  const none = () => refusal('keyhole-needs-fold', { piece: where }, where);
  const fold = foldEdgeOf(piece);
  if (!fold) throw none();
  const ring = edgeInRing(piece, fold.name);
  const offMm = offStraight(ring.run.path);
  const edge = { ...where, edge: fold.name };
  if (offMm > tolerances.foldTolerance) throw refusal('stand-edge-bent', { edge, offMm }, edge);
  const isNeck = (step: 1 | -1): boolean => {
    const beside = ring.items[(ring.index + step + ring.items.length) % ring.items.length]!;
    return beside.type === 'run' && roleOf(beside.edge) === 'neck';
  };
  if (isNeck(-1) === isNeck(1)) throw none();
  return { ...ring, neckFirst: isNeck(-1) };
}

/** Half an oval in the outline's direction, bulging into the piece. */
function keyholeIn({ piece, run, neckFirst }: FoldRing, { below, depth, width }: CutKeyhole): Run {
  const roomMm = pathLength(run.path);
  if (below + depth >= roomMm - tolerances.joiningGap)
    throw refusal('keyhole-off-fold', { piece: { piece: piece.name }, downMm: below + depth, roomMm });
  const [start, end] = [pathStart(run.path), pathEnd(run.path)];
  const way = unit(subtract(end, start));
  const first = neckFirst ? below : roomMm - below - depth;
  const from = add(start, scale(way, first)),
    to = add(from, scale(way, depth));
  const centre = lerp(from, to, 0.5);
  const out = scale(rightOf(way), width / 2);
  const widest = add(centre, out);
  const quarter = (tip: Point) => quarterEllipse(tip, out, subtract(tip, centre), widest);
  const edge: Edge = {
    type: 'edge',
    name: 'keyhole',
    path: run.path,
    kind: 'seam',
    allowance: usualAllowance(piece),
    corners: {},
  };
  return { type: 'run', edge, path: joined(quarter(from), reversedPath(quarter(to))) };
}
