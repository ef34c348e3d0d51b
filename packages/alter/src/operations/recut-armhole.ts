import { edgeNamed, type Pattern, type Piece, pathLength, pieceNamed, roleOf } from '@paperhinge/geometry';
import { edgesOfRole, withPiece } from '@paperhinge/geometry/pattern';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration, Said } from '../alteration.js';
import { nothingBecame, together } from '../became/became.js';
import { andPartners } from '../matching/and-partners.js';
import { nothingToMatch } from '../matching/done-to-each.js';
import { stepsInTurn } from '../matching/in-turn.js';
import type { Reshaped } from '../moved-edges/chains.js';
import { recomposed } from '../moved-edges/composed.js';
import { grainOrVertical } from '../moved-edges/grain.js';
import { requireSimple, tidied } from '../moved-edges/tidy.js';
import { armholeOf } from '../redrawn-edges/armhole.js';
import { cornerMoved, edgeInRing, withEdgeRedrawn } from '../redrawn-edges/corner-moved.js';
import { withEndsMoved } from '../redrawn-edges/ends-moved.js';
import { refusal, saying } from '../redrawn-edges/tellings.js';
import { capEased, capSeams, differenceIn } from '../sleeves/cap-eased.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

/** Make armholes deeper or shallower, cut them in at the shoulder or let them out. */
export interface RecutArmhole {
  readonly pieces: readonly string[];
  /** mm down the side seam; negative: raised. */
  readonly lower?: number;
  /** mm along the shoulder towards the neck; negative: the shoulder becomes longer. */
  readonly in?: number;
  /** The sleeve's cap to fit, and the pieces beside whose side or shoulder seam this changed. */
  readonly matching?: boolean;
}

/**
 * Moves an armhole's two ends, along the side seam and along the shoulder, and draws the armhole between them as it
 * was, stretched or narrowed along the grain and across it, so that it meets shoulder and side at the angles it met them
 * at. Notches keep their share of it. For a sleeveless armhole raise it and cut it in: `lower: -10 mm, in: 10 mm`. The
 * sleeve is not changed: what it no longer fits is told. With `matching` the pieces that side and shoulder are sewn to are
 * recut likewise, and the cap is raised or lowered at the width it has until its seam has the ease it had: no wider sleeve
 * comes of it. Source: common practice, no source.
 *
 * @throws PatternError `goal-not-reached` where no cap fits; `unknown-piece`, `no-armhole`, `edge-in-two-parts`, `corner-beside-dart`, `corner-beyond-edge`,
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
    matching: field.optional(field.yesOrNo()),
  },
  lacks: ({ lower, in: cutIn }) => (lower === undefined && cutIn === undefined ? 'lower' : undefined),
  leaves: ({ pieces }) => ({ changed: pieces }),
  sentence:
    'Recut the armhole of the {pieces}[, {lower} lower][, {in} in at the shoulder][, sleeve and pieces beside to fit: {matching}]',
  startsAt: { piece: ['pieces'], edge: ['pieces'] },
  example: {
    pattern: 'woven-shift',
    step: { pieces: ['front', 'back'], lower: '-10 mm', in: '15 mm' },
  },
});
export const recutArmholeVerb = /* @__PURE__ */ verbFrom(
  recutArmholeForm,
  (pattern, { pieces, matching, ...amounts }) => {
    const given = [...new Set(pieces)];
    return matching ? withSleeves(pattern, given, amounts) : allRecut(pattern, given, amounts);
  },
);

type Amounts = Pick<RecutArmhole, 'lower' | 'in'>;

function allRecut(pattern: Pattern, names: readonly string[], { lower = 0, in: cutIn = 0 }: Amounts): Said {
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
}

/** The armholes of the pieces named and of those beside, and every cap set into them with the ease it had. */
function withSleeves(pattern: Pattern, pieces: readonly string[], amounts: Amounts): Alteration {
  const hasArmhole = (piece: Piece): boolean => edgesOfRole(piece, 'armhole').length === 1;
  const { names, done } = andPartners(pattern, pieces, hasArmhole, all => allRecut(pattern, all, amounts));
  const caps = capSeams(pattern).filter(({ seam: { a, b } }) =>
    [...a, ...b].some(({ piece }) => names.includes(piece)),
  );
  if (names.length === pieces.length && caps.length === 0)
    return { ...done, findings: [...done.findings, nothingToMatch(pieces[0]!)] };
  return stepsInTurn(pattern, [
    now => recutArmhole(now, { pieces: names, ...amounts }),
    ...caps.map(
      ({ seam, sleeve }) =>
        (now: Pattern) =>
          capEased(now, seam.name, sleeve, differenceIn(pattern, seam)),
    ),
  ]);
}

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
