import { edgePath, type Path, type Pattern, type Piece, pathLength, pieceNamed } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { endTangent, fairCurve, pathEnd, pathStart, startTangent } from '@paperhinge/geometry/paths';
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
import { refusal, saying } from '../redrawn-edges/tellings.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

/** Draw an edge anew: further in or out, along a drawn line, or through a mark. */
export interface RecutEdge {
  readonly piece: string;
  readonly edge: string;
  /** mm into the piece: along all of the edge, or at its start and at its end (clockwise). */
  readonly in?: number | readonly [number, number];
  /** mm out of the piece, likewise. */
  readonly out?: number | readonly [number, number];
  /** Name of a line drawn on the piece, from outline to outline. */
  readonly line?: string;
  /** Name of a point mark that the edge is drawn through. */
  readonly through?: string;
}

/**
 * Recuts an edge. By an amount it moves square to itself, evenly or by other amounts at its two ends, and its neighbours
 * are cut or run on straight. Along a drawn line the part of the piece that holds the old edge, or less of the cloth,
 * goes, and the line takes the edge's name. Through a mark it is drawn fair from end to end, its ends in the
 * directions they have. The edge keeps name, allowance and seam. Source: common practice, no source.
 *
 * @throws PatternError `unknown-piece`, `unknown-edge`, `unknown-line`, `unknown-mark`; `take-in-too-much`,
 *   `line-ends-off-outline`, `line-crosses-dart`, `edge-in-two-parts`, `redrawn-crosses`; those of `perform`
 */
export const recutEdge = (pattern: Pattern, parameters: RecutEdge): Alteration =>
  perform(recutEdgeVerb, pattern, parameters);

export const recutEdgeForm = formOf<RecutEdge>()({
  verb: 'recut edge',
  does: 'Draws an edge anew: further in or out, evenly or more at one end; along a line drawn on the piece; or fair through a mark.',
  fields: {
    piece: field.piece(),
    edge: field.edge(),
    in: field.optional(field.lengths()),
    out: field.optional(field.lengths()),
    line: field.optional(field.drawnLine()),
    through: field.optional(field.mark()),
  },
  oneOf: [['in', 'out', 'line', 'through']],
  leaves: ({ piece }) => ({ changed: [piece] }),
  sentence:
    'Recut the {edge} of the {piece}[, {in} further in][, {out} further out][, along the {line} line][, through the {through}]',
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
    const drawn = redrawn(piece, parameters);
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

function redrawn(piece: Piece, parameters: RecutEdge): Reshaped {
  const { edge, line, through } = parameters;
  if (line !== undefined) return cutToDrawnLine(piece, edgeInRing(piece, edge).run.edge, line);
  if (through === undefined) return movedInOrOut(piece, parameters);
  const ring = edgeInRing(piece, edge);
  const { run } = ring;
  const path = drawnThrough(run.path, pivotOf(piece, { pivot: through })!);
  return recomposed(piece, withEdgeRedrawn(ring, [{ ...run, path }], []));
}

function drawnThrough(path: Path, point: { readonly x: number; readonly y: number }): Path {
  return fairCurve(
    { point: pathStart(path), direction: startTangent(path) },
    { point: pathEnd(path), direction: endTangent(path) },
    tolerances.fitTolerance,
    [point],
  );
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

function wayOf({ in: cutIn, out, line, through }: RecutEdge) {
  const by = cutIn ?? out;
  if (by !== undefined)
    return { way: cutIn === undefined ? 'out' : 'in', byMm: typeof by === 'number' ? [by] : by } as const;
  return line === undefined
    ? ({ way: 'through', by: { mark: through! } } as const)
    : ({ way: 'line', by: { line } } as const);
}
