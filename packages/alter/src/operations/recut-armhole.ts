import { edgeNamed, type Pattern, type Piece, pathLength, pieceNamed, roleOf } from '@paperhinge/geometry';
import { withPiece } from '@paperhinge/geometry/pattern';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import { nothingBecame, together } from '../became/became.js';
import type { Reshaped } from '../moved-edges/chains.js';
import { recomposed } from '../moved-edges/composed.js';
import { grainOrVertical } from '../moved-edges/grain.js';
import { requireSimple, tidied } from '../moved-edges/tidy.js';
import { armholeOf } from '../redrawn-edges/armhole.js';
import { cornerMoved, edgeInRing, withEdgeRedrawn } from '../redrawn-edges/corner-moved.js';
import { withEndsMoved } from '../redrawn-edges/ends-moved.js';
import { refusal, saying } from '../redrawn-edges/tellings.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

/** Make armholes deeper or shallower, cut them in at the shoulder or let them out. */
export interface RecutArmhole {
  readonly pieces: readonly string[];
  /** mm down the side seam; negative: raised. */
  readonly lower?: number;
  /** mm along the shoulder towards the neck; negative: the shoulder becomes longer. */
  readonly in?: number;
}

/**
 * Moves an armhole's two ends, along the side seam and along the shoulder, and draws the armhole between them as it
 * was, stretched or narrowed along the grain and across it, so that it meets shoulder and side at the angles it met them
 * at. Notches keep their share of it. For a sleeveless armhole raise it and cut it in: `lower: -10 mm, in: 10 mm`. The
 * sleeve is not changed: what it no longer fits is told. Source: common practice, no source.
 *
 * @throws PatternError `unknown-piece`, `no-armhole`, `edge-in-two-parts`, `corner-beside-dart`, `corner-beyond-edge`,
 *   `redrawn-crosses`; those of `perform`
 */
export const recutArmhole = (pattern: Pattern, parameters: RecutArmhole): Alteration =>
  perform(recutArmholeVerb, pattern, parameters);

export const recutArmholeForm = formOf<RecutArmhole>()({
  verb: 'recut armhole',
  does: 'Makes an armhole deeper or shallower along the side seam, and cuts it in or lets it out along the shoulder; it keeps its shape between the two.',
  fields: {
    pieces: field.pieces(),
    lower: field.optional(field.signedLength()),
    in: field.optional(field.signedLength()),
  },
  lacks: ({ lower, in: cutIn }) => (lower === undefined && cutIn === undefined ? 'lower' : undefined),
  leaves: ({ pieces }) => ({ changed: pieces }),
  sentence: 'Recut the armhole of the {pieces}[, {lower} lower][, {in} in at the shoulder]',
  startsAt: { piece: ['pieces'], edge: ['pieces'] },
  example: {
    pattern: 'woven-shift',
    step: { pieces: ['front', 'back'], lower: '-10 mm', in: '15 mm' },
  },
});
export const recutArmholeVerb = /* @__PURE__ */ verbFrom(
  recutArmholeForm,
  (pattern, { pieces, lower = 0, in: cutIn = 0 }) => {
    const names = [...new Set(pieces)];
    const changes: number[] = [];
    let altered = pattern;
    let became = nothingBecame;
    for (const name of names) {
      const piece = pieceNamed(altered, name);
      const armhole = armholeOf(piece);
      const { reshaped, changeMm } = recut(piece, armhole, lower, cutIn);
      changes.push(changeMm);
      altered = withPiece(altered, reshaped.piece);
      became = together(became, reshaped.became);
    }
    return {
      pattern: altered,
      became,
      did: saying('recut-armhole', {
        pieces: names.map(piece => ({ piece })),
        lowerMm: lower,
        inMm: cutIn,
        changesMm: changes,
      }),
      findings: [],
    };
  },
);

function recut(
  piece: Piece,
  armhole: string,
  lower: number,
  cutIn: number,
): { readonly reshaped: Reshaped; readonly changeMm: number } {
  const edge = { piece: piece.name, edge: armhole };
  return locating(edge, () => {
    const ring = edgeInRing(piece, armhole);
    const startsAtShoulder =
      roleBeside(piece, ring, -1) === 'shoulder' || roleBeside(piece, ring, 1) !== 'shoulder';
    const start = cornerMoved(ring, 'start', startsAtShoulder ? cutIn : lower),
      end = cornerMoved(ring, 'end', startsAtShoulder ? lower : cutIn);
    const { grain } = grainOrVertical(piece);
    const path = withEndsMoved(ring.run.path, start.point, end.point, grain);
    const drawn = recomposed(piece, withEdgeRedrawn(ring, [{ ...ring.run, path }], [start, end]));
    const reshaped = tidied(piece, drawn);
    requireSimple(reshaped.piece, () => refusal('redrawn-crosses', { edge }, edge));
    return { reshaped, changeMm: pathLength(path) - pathLength(ring.run.path) };
  });
}

function roleBeside(piece: Piece, { items, index }: ReturnType<typeof edgeInRing>, step: 1 | -1) {
  const item = items[(index + step + items.length) % items.length]!;
  return item.type === 'run' ? roleOf(edgeNamed(piece, item.edge.name)) : undefined;
}
