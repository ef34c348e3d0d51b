import {
  edgePath,
  line,
  type Pattern,
  type Piece,
  type Point,
  pathLength,
  pathOf,
  pieceNamed,
  roleOf,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { endTangent, pathEnd, pathStart, startTangent } from '@paperhinge/geometry/paths';
import { isCentreEdge, withPiece } from '@paperhinge/geometry/pattern';
import { add, dot, leftOf, scale, subtract, unit } from '@paperhinge/geometry/plane';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import { offStraight } from '../hinge/off-straight.js';
import { type Item, type Run, recomposed } from '../moved-edges/composed.js';
import { requireSimple } from '../moved-edges/tidy.js';
import { type EdgeInRing, edgeInRing } from '../redrawn-edges/corner-moved.js';
import { asPair, centreLine, openEdge } from '../redrawn-edges/opened-centre.js';
import { refusal, saying } from '../redrawn-edges/tellings.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

/** Let a front wrap over the other. */
export interface WrapOver {
  readonly piece: string;
  /** The centre edge. */
  readonly edge: string;
  /** mm beyond the centre. */
  readonly by: number;
  /** mm down the centre from the neck at which the slant of the neck ends. */
  readonly depth: number;
}

/**
 * Draws a wrap: the neck runs straight from the shoulder to a point `by` mm beyond the centre and `depth` mm down it;
 * from there the edge runs parallel to the centre to the hem or waist, which runs on straight. A line shows the centre; a
 * piece on the fold is cut as a pair. The slant is on the bias: stay it. Source: common practice, no source.
 *
 * @throws PatternError `unknown-piece`, `unknown-edge`, `edge-in-two-parts`, `stand-edge-bent`, `wrap-not-at-neck`,
 *   `wrap-too-deep`, `redrawn-crosses`; those of `perform`
 */
export const wrapOver = (pattern: Pattern, parameters: WrapOver): Alteration =>
  perform(wrapOverVerb, pattern, parameters);

export const wrapOverForm = formOf<WrapOver>()({
  verb: 'wrap over',
  does: 'Draws a front that wraps over the other: its neck slants from the shoulder to a point beyond the centre, and its edge runs down from there.',
  fields: { piece: field.piece(), edge: field.edge(), by: field.size(), depth: field.size() },
  leaves: ({ piece }) => ({ changed: [piece] }),
  sentence: 'Let the {piece} wrap over its {edge} by {by}, its neck slanting to {depth} down',
  startsAt: { edge: ['piece', 'edge'] },
  example: {
    pattern: 'darted-dress',
    step: { piece: 'front', edge: 'centre', by: '90 mm', depth: '220 mm' },
  },
});
export const wrapOverVerb = /* @__PURE__ */ verbFrom(wrapOverForm, (pattern, parameters) => {
  const piece = pieceNamed(pattern, parameters.piece);
  const edge = { piece: piece.name, edge: parameters.edge };
  return locating(edge, () => {
    const ring = edgeInRing(piece, edge.edge);
    const centre = edgePath(piece, edge.edge);
    const offMm = offStraight(centre);
    if (offMm > tolerances.foldTolerance) throw refusal('stand-edge-bent', { edge, offMm }, edge);
    const centreMm = pathLength(centre);
    const { by, depth } = parameters;
    if (depth >= centreMm - tolerances.joiningGap)
      throw refusal('wrap-too-deep', { edge, depthMm: depth, centreMm }, edge);
    const done = recomposed(piece, wrapped(ring, by, depth));
    const lines = [...done.piece.lines, centreLine(edge.edge, centre)];
    const opened = ring.run.edge.kind === 'fold';
    const drawn: Piece = { ...done.piece, lines };
    requireSimple(drawn, () => refusal('redrawn-crosses', { edge }, edge));
    const neck = neckBeside(ring).edge.name;
    return {
      pattern: withPiece(pattern, opened ? asPair(drawn) : drawn),
      became: done.became,
      did: saying('wrapped-over', {
        edge,
        byMm: by,
        depthMm: depth,
        neck: { edge: neck },
        neckMm: pathLength(edgePath(drawn, neck)),
        opened,
      }),
      findings: done.findings,
    };
  });
});

/** The neck that ends at the edge, which must be one of the centre. @throws PatternError `wrap-not-at-neck` */
function neckBeside({ piece, items, index, run }: EdgeInRing): Run & { readonly step: 1 | -1 } {
  const found = ([1, -1] as const).flatMap(step => {
    const beside = items[(index + step + items.length) % items.length]!;
    return beside.type === 'run' && roleOf(beside.edge) === 'neck' ? [{ ...beside, step }] : [];
  });
  const edge = { piece: piece.name, edge: run.edge.name };
  const { edge: own } = run;
  const isCentre = own.kind === 'fold' || isCentreEdge(own) || roleOf(own) === 'opening';
  if (!isCentre || found.length !== 1) throw refusal('wrap-not-at-neck', { edge }, edge);
  return found[0]!;
}

/** The ring with the neck slanting to beyond the centre, the new edge down from there, and the hem run on to it. */
function wrapped(ring: EdgeInRing, by: number, depth: number): readonly Item[] {
  const { piece, items, index, run } = ring;
  const { step, ...neck } = neckBeside(ring);
  const neckIndex = (index + step + items.length) % items.length,
    hemIndex = (index - step + items.length) % items.length;
  const [from, to] = [pathStart(run.path), pathEnd(run.path)];
  const way = unit(subtract(to, from));
  const out = leftOf(way);
  const [atNeck, atHem] = step === 1 ? [to, from] : [from, to];
  const down = step === 1 ? scale(way, -1) : way;
  const tip = add(add(atNeck, scale(down, depth)), scale(out, by));
  const hem = items[hemIndex]!;
  // The hem runs on in its own direction as far as the new edge.
  const onwards = hem.type === 'run' ? hemDirection(hem, step) : out;
  const foot = add(atHem, scale(onwards, by / Math.max(dot(onwards, out), leastSlope)));
  const shoulder = step === 1 ? pathEnd(neck.path) : pathStart(neck.path);
  const along = (a: Point, b: Point) => pathOf(step === 1 ? line(a, b) : line(b, a));
  const slant: Run = { ...neck, path: along(tip, shoulder), redrawn: true };
  const front: Run = {
    type: 'run',
    edge: openEdge(piece, run.edge),
    path: along(foot, tip),
    was: run.was!,
    redrawn: true,
  };
  const runOn: Run = {
    type: 'run',
    edge: hem.type === 'run' ? hem.edge : run.edge,
    path: along(atHem, foot),
  };
  return items.flatMap((item, i): readonly Item[] => {
    if (i === index) return [front];
    if (i === neckIndex) return [slant];
    if (i === hemIndex) return step === 1 ? [item, runOn] : [runOn, item];
    return [item];
  });
}

/** Away from the piece, where the hem meets the centre. */
const hemDirection = (hem: Run, step: 1 | -1): Point =>
  step === 1 ? endTangent(hem.path) : scale(startTangent(hem.path), -1);

/** A hem that hardly leaves the centre line would run on for ever. */
const leastSlope = 0.2;
