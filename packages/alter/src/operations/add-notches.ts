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
import { seamNamed, shareOfSeam, sideLength } from '../moved-edges/seam-place.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { placesOnSide } from './places-on-side.js';
import { finding, saying } from './tellings.js';

/** Mark a seam with notches that meet when it is sewn. */
export interface AddNotches {
  readonly seam: string;
  /** How many, at even distances; left out where `at` names the place of one. */
  readonly count?: number;
  readonly at?: EdgePosition;
  readonly style?: NotchStyle;
}

/**
 * Walks both sides of a seam and marks each with notches at the same shares of its length, so that what one side is
 * longer by is spread evenly between them. Where a notch of that style stands already, none is added.
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
  },
  oneOf: [['count', 'at']],
  sentence: 'Mark the {seam} seam with [{count} notches][a notch at {at}]',
  startsAt: { seam: ['seam'], edge: ['seam'] },
  example: { pattern: 'woven-shift', step: { seam: 'side', count: 2 } },
});
export const addNotchesVerb = /* @__PURE__ */ verbFrom(
  addNotchesForm,
  (pattern, { seam: name, count = 1, at, style }) => {
    const seam = seamNamed(pattern, name);
    const shares = at
      ? [shareOfSeam(pattern, seam, at)]
      : Array.from({ length: count }, (_, i) => (i + 1) / (count + 1));
    const wanted = [seam.a, seam.b].flatMap(side => placesOnSide(pattern, side, shares, style));
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

const stands = (piece: Piece, { edge, at, style }: Notch): boolean =>
  piece.notches.some(
    n => n.edge === edge && n.style === style && Math.abs(n.at - at) <= tolerances.seamTolerance,
  );

const alreadyThere = (seam: Seam): Finding =>
  finding('note', 'notches-already-there', {}, { seam: { seam: seam.name } });
