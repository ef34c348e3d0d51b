import {
  type EdgeRef,
  edgePath,
  type Pattern,
  type Piece,
  pathLength,
  pieceNamed,
} from '@paperhinge/geometry';
import { withPiece } from '@paperhinge/geometry/pattern';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import { pivotOf } from '../darts/pivot.js';
import type { Reshaped } from '../moved-edges/chains.js';
import { recomposed } from '../moved-edges/composed.js';
import { moveEdgesInwards } from '../moved-edges/move-edges-inwards.js';
import { requireSimple, tidied } from '../moved-edges/tidy.js';
import { cutToDrawnLine } from '../neckline/drawn.js';
import { edgeInRing, withEdgeRedrawn } from '../redrawn-edges/corner-moved.js';
import { fairOfLength, fairThrough, tracedBetween } from '../redrawn-edges/fair-between.js';
import { refusal, saying } from '../redrawn-edges/tellings.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

/** Draw an edge anew: further in or out, along a drawn line, through marks, to a length, or like another edge. */
export interface RecutEdge {
  readonly piece: string;
  readonly edge: string;
  /** mm into the piece: along all of the edge, or at its start and at its end (clockwise). */
  readonly in?: number | readonly [number, number];
  /** mm out of the piece, likewise. */
  readonly out?: number | readonly [number, number];
  /** Name of a line drawn on the piece, from outline to outline. */
  readonly line?: string;
  /** Names of point marks that the edge is drawn through, in whatever order. */
  readonly through?: readonly string[];
  /** mm that it is to be long between the ends it has. */
  readonly length?: number;
  /** Another edge, whose line is traced between its ends. */
  readonly like?: EdgeRef;
}

/**
 * Recuts an edge. By an amount it moves square to itself, evenly or by other amounts at its two ends, and its neighbours
 * are cut or run on straight. Along a drawn line the part of the piece that holds the old edge, or less of the cloth,
 * goes, and the line takes the edge's name. Through marks it is drawn fair from end to end, its ends in the
 * directions they have; to a length likewise, as little flatter or fuller at its middle as gives it. Like another edge
 * it is that edge's line, turned, and drawn larger or smaller where the ends lie further apart or nearer; turned over as
 * for a seam where it lies nearer to the old line so. The edge keeps name, allowance and seam. Source: common practice,
 * no source.
 *
 * @throws PatternError `unknown-piece`, `unknown-edge`, `unknown-line`, `unknown-mark`; `take-in-too-much`,
 *   `line-ends-off-outline`, `line-crosses-dart`, `edge-in-two-parts`, `edge-length-unreached`, `redrawn-crosses`; those
 *   of `perform`
 */
export const recutEdge = (pattern: Pattern, parameters: RecutEdge): Alteration =>
  perform(recutEdgeVerb, pattern, parameters);

export const recutEdgeForm = formOf<RecutEdge>()({
  verb: 'recut edge',
  does: 'Draws an edge anew: further in or out, evenly or more at one end; along a line drawn on the piece; fair through marks; to a length between its ends; or like another edge.',
  fields: {
    piece: field.piece(),
    edge: field.edge(),
    in: field.optional(field.lengths()),
    out: field.optional(field.lengths()),
    line: field.optional(field.drawnLine()),
    through: field.optional(field.marks()),
    length: field.optional(field.size()),
    like: field.optional(field.edgeOfPiece()),
  },
  oneOf: [['in', 'out', 'line', 'through', 'length', 'like']],
  leaves: ({ piece }) => ({ changed: [piece] }),
  sentence:
    'Recut the {edge} of the {piece}[, {in} further in][, {out} further out][, along the {line} line][, through the {through}][, {length} long][, like the {like}]',
  startsAt: { edge: ['piece', 'edge'], line: ['piece', 'line'] },
  example: {
    pattern: 'darted-dress',
    step: { piece: 'skirt front', edge: 'side', out: ['0 mm', '60 mm'] },
  },
});
export const recutEdgeVerb = /* @__PURE__ */ verbFrom(recutEdgeForm, (pattern, parameters) => {
  const piece = pieceNamed(pattern, parameters.piece);
  const edge = { piece: piece.name, edge: parameters.edge };
  return locating(edge, () => {
    const formerMm = pathLength(edgePath(piece, parameters.edge));
    const drawn = redrawn(pattern, piece, parameters);
    const done = tidied(piece, drawn);
    requireSimple(done.piece, () => refusal('redrawn-crosses', { edge }, edge));
    return {
      pattern: withPiece(pattern, done.piece),
      became: done.became,
      did: saying('recut-edge', {
        edge,
        ...wayOf(parameters),
        formerMm,
        lengthMm: pathLength(edgePath(done.piece, parameters.edge)),
      }),
      findings: done.findings,
    };
  });
});

function redrawn(pattern: Pattern, piece: Piece, parameters: RecutEdge): Reshaped {
  const { edge, line, through, length, like } = parameters;
  if (line !== undefined) return cutToDrawnLine(piece, edgeInRing(piece, edge).run.edge, line);
  if (through === undefined && length === undefined && like === undefined)
    return movedInOrOut(piece, parameters);
  const ring = edgeInRing(piece, edge);
  const { run } = ring;
  const path = like
    ? tracedBetween(run.path, edgePath(pieceNamed(pattern, like.piece), like.edge))
    : length === undefined
      ? fairThrough(
          run.path,
          through!.map(name => pivotOf(piece, { pivot: name })!),
        )
      : fairOfLength(run.path, length, { piece: piece.name, edge });
  return recomposed(piece, withEdgeRedrawn(ring, [{ ...run, path }], []));
}

function movedInOrOut(piece: Piece, { edge, in: cutIn, out }: RecutEdge): Reshaped {
  const by = cutIn ?? out!;
  const [atFrom, atTo] = typeof by === 'number' ? [by, by] : by;
  const most = Math.max(atFrom, atTo);
  const run = { piece: piece.name, edge, reversed: false, side: 'a', fromShare: 0, toShare: 1 } as const;
  const even = atFrom === atTo;
  return moveEdgesInwards(
    piece,
    [run],
    cutIn === undefined ? -most : most,
    even ? { kind: 'whole' } : { kind: 'ends', from: 0, to: 1, atFrom: atFrom / most, atTo: atTo / most },
  );
}

function wayOf({ in: cutIn, out, line, through, length, like }: RecutEdge) {
  const by = cutIn ?? out;
  if (by !== undefined)
    return { way: cutIn === undefined ? 'out' : 'in', byMm: typeof by === 'number' ? [by] : by } as const;
  if (line !== undefined) return { way: 'line', by: [{ line }] } as const;
  if (like) return { way: 'like', by: [{ ...like }] } as const;
  if (length !== undefined) return { way: 'length' } as const;
  return { way: 'through', by: through!.map(mark => ({ mark })) } as const;
}
