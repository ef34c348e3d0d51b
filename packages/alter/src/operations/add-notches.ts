import {
  type Finding,
  type Notch,
  type NotchStyle,
  type Pattern,
  type Piece,
  pieceNamed,
  type Seam,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { type EdgePosition, withPiece } from '@paperhinge/geometry/pattern';
import type { Alteration } from '../alteration.js';
import { sameEdge } from '../edge-refs.js';
import { acrossSeams } from '../matching/across-seam.js';
import { seamNamed, shareOfSeam, sideLength } from '../moved-edges/seam-place.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { type Placed, placesOnSide } from './places-on-side.js';
import { finding, saying } from './tellings.js';

/** Mark a seam with notches that meet when it is sewn. */
export interface AddNotches {
  readonly seam: string;
  /** How many, at even distances; left out where `at` names the place of one. */
  readonly count?: number;
  readonly at?: EdgePosition;
  readonly style?: NotchStyle;
  /** Also what else is sewn to the edges marked, as a facing or a lining is. */
  readonly matching?: boolean;
}

/**
 * Walks both sides of a seam and marks each with notches at the same shares of its length, so that what one side is
 * longer by is spread evenly between them. With `matching` they are carried on to whatever else is sewn to the marked
 * edges in other seams, a facing or a lining. Where a notch of that style stands already, none is added. Source: common
 * practice, no source.
 * @throws PatternError `unknown-seam`, `position-off-seam`, `seam-end-ambiguous`, `seam-end-unknown`; those of
 *   `perform`
 */
export const addNotches = (pattern: Pattern, parameters: AddNotches): Alteration =>
  perform(addNotchesVerb, pattern, parameters);

export const addNotchesForm = formOf<AddNotches>()({
  verb: 'add notches',
  does: 'Walks both sides of a seam and marks each with notches that meet when it is sewn.',
  fields: {
    seam: field.seam(),
    count: field.optional(field.count(20)),
    at: field.optional(field.place('seam')),
    style: field.usually(field.choice('single', 'double', 'triple'), 'single'),
    matching: field.optional(field.yesOrNo()),
  },
  oneOf: [['count', 'at']],
  sentence:
    'Mark the {seam} seam with [{count} notches][a notch at {at}][, what else is sewn there too: {matching}]',
  startsAt: { seam: ['seam'], edge: ['seam'] },
  example: { pattern: 'woven-shift', step: { seam: 'side', count: 2 } },
});
export const addNotchesVerb = /* @__PURE__ */ verbFrom(
  addNotchesForm,
  (pattern, { seam: name, count = 1, at, style, matching }) => {
    const seam = seamNamed(pattern, name);
    const shares = at
      ? [shareOfSeam(pattern, seam, at)]
      : Array.from({ length: count }, (_, i) => (i + 1) / (count + 1));
    const own = [seam.a, seam.b].flatMap(side => placesOnSide(pattern, side, shares, style));
    const wanted = matching ? [...own, ...carriedOn(pattern, seam, own)] : own;
    let altered = pattern;
    const there: Notch[] = [];
    for (const { piece: owner, ...notch } of wanted) {
      const piece = pieceNamed(altered, owner);
      if (stands(piece, notch)) there.push(notch);
      else altered = withPiece(altered, { ...piece, notches: [...piece.notches, notch] });
    }
    const lengthMm = sideLength(pattern, seam.a);
    return {
      pattern: altered,
      did: saying('added-notches', {
        seam: { seam: name },
        alongMm: shares.map(share => share * lengthMm),
        style,
      }),
      findings: there.length === wanted.length ? [alreadyThere(seam)] : [],
    };
  },
);

/** The same notches on what else is sewn to their edges, in other seams. */
const carriedOn = (pattern: Pattern, but: Seam, own: readonly Placed[]): readonly Placed[] =>
  own.flatMap(({ style, ...place }) =>
    acrossSeams(pattern, place)
      .filter(({ seam, ...there }) => seam !== but && !own.some(one => sameEdge(one, there)))
      .map(({ seam: _, ...there }) => ({ ...there, style })),
  );

const stands = (piece: Piece, { edge, at, style }: Notch): boolean =>
  piece.notches.some(
    n => n.edge === edge && n.style === style && Math.abs(n.at - at) <= tolerances.seamTolerance,
  );

const alreadyThere = (seam: Seam): Finding =>
  finding('note', 'notches-already-there', {}, { seam: { seam: seam.name } });
