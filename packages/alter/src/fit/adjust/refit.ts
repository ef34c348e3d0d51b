import { type Pattern, pieceNamed } from '@paperhinge/geometry';
import { dartsOf, edgesOfRole } from '@paperhinge/geometry/pattern';
import type { Alteration } from '../../alteration.js';
import { changeDart } from '../../operations/change-dart.js';
import { recutArmhole } from '../../operations/recut-armhole.js';
import { setSeam } from '../../operations/set-seam.js';
import { letOut, takeIn } from '../../operations/take-in.js';
import { capEased, capSeams } from '../../sleeves/cap-eased.js';
import * as field from '../../verb/fields.js';
import { formOf, perform, verbFrom } from '../../verb/verb.js';
import { inSteps, type Part } from './in-steps.js';
import { piecesFor, seamFor } from './landmarks.js';

/** Refit a woven garment for a knit, or a knit one for woven cloth. Lengths in mm. */
export interface Refit {
  readonly for: 'knit' | 'woven';
  /** Ease taken out round the garment for a knit, let in for woven cloth. */
  readonly by: number;
  /** How much the armhole is raised for a knit, lowered for woven cloth; default 10. */
  readonly armhole?: number;
  /** The cap's ease over its armhole afterwards; default 6 for a knit, 25 for woven cloth. */
  readonly capEase?: number;
}

/**
 * Refits a garment for another sort of cloth, as one alteration with an account of every change. For a knit: the side
 * seam is taken in by the ease that stretch makes up for, the underarm with it; darts in the side become ease; the armhole is raised; the cap
 * is lowered until it has a knit's ease. For woven cloth: side seams let out, the armhole lowered, the cap raised to its
 * ease; darts are not made, since where they should lie is for the maker to say. Source: cap ease 0 to 12 mm in knits, 20
 * to 35 mm set in wovens, common practice, no source (trade-notes §8).
 *
 * @throws PatternError `adjust-needs-seam`, `adjust-needs-piece`; `goal-not-reached`; what its steps refuse; those of
 *   `perform`
 */
export const refit = (pattern: Pattern, parameters: Refit): Alteration =>
  perform(refitVerb, pattern, parameters);

export const refitForm = formOf<Refit>()({
  verb: 'refit',
  does: 'Refits a woven garment for a knit, or a knit one for woven cloth: sides, darts, armhole and cap, with an account of every change.',
  fields: {
    for: field.choice('knit', 'woven'),
    by: field.length(),
    armhole: field.usually(field.length(), 10),
    capEase: field.optional(field.length()),
  },
  leaves: () => ({ seams: 'unknown' }),
  sentence:
    'Refit for {for} cloth, by {by} round the garment[, the armhole changed by {armhole}][, with {cap ease} of ease in the cap]',
  startsAt: { table: [] },
  example: { pattern: 'woven-shift', step: { for: 'knit', by: '60 mm' } },
});
export const refitVerb = /* @__PURE__ */ verbFrom(refitForm, refitted);

/** mm; knits 0 to 12, woven set-in sleeves 20 to 35 (trade-notes §8). */
const usualCapEase = { knit: 6, woven: 25 } as const;

function refitted(pattern: Pattern, wish: Refit): Alteration {
  const { by, armhole = 10, capEase = usualCapEase[wish.for] } = wish;
  const knit = wish.for === 'knit';
  const side = seamFor(pattern, 'side').name;
  const bodies = [...piecesFor(pattern, 'front'), ...piecesFor(pattern, 'back')].map(({ name }) => name);
  const parts: readonly Part[] = [
    ...(by > 0
      ? seamsOf(pattern, side, by).map(wish => (now: Pattern) => (knit ? takeIn : letOut)(now, wish))
      : []),
    ...(armhole > 0
      ? [(now: Pattern) => recutArmhole(now, { pieces: bodies, lower: knit ? -armhole : armhole })]
      : []),
    // After the sides, so that the ease is what is left of the dart there.
    ...(knit ? bodies.flatMap(name => dartsToEase(pattern, name)) : []),
    ...capParts(pattern, capEase),
  ];
  return inSteps(pattern, parts, { what: `${wish.for} cloth`, byMm: by });
}

/** The side, and the underarm of the sleeve by as much an edge, so that both still meet: half of it, in its limb. */
function seamsOf(pattern: Pattern, side: string, by: number): readonly { seam: string; by: number }[] {
  const underarm = pattern.seams.find(({ a, b }) =>
    [...a, ...b].every(run => edgesOfRole(pieceNamed(pattern, run.piece), 'underarm').includes(run.edge)),
  );
  return [{ seam: side, by }, ...(underarm ? [{ seam: underarm.name, by: by / 2 }] : [])];
}

function dartsToEase(pattern: Pattern, name: string): readonly Part[] {
  const piece = pieceNamed(pattern, name);
  const sides = edgesOfRole(piece, 'side');
  const ring = piece.outline.parts;
  const inSide = dartsOf(piece).filter(dart => {
    const at = ring.indexOf(dart);
    return sides.includes(ring[(at + 1) % ring.length]!.name) || sides.includes(ring[at - 1]?.name ?? '');
  });
  return inSide.map(dart => now => changeDart(now, { piece: name, dart: dart.name, into: 'ease' }));
}

/** The cap of each sleeve as high as its ease asks, and the seam told so. */
const capParts = (pattern: Pattern, easeMm: number): readonly Part[] =>
  capSeams(pattern).flatMap(({ seam: { name }, sleeve, onSideA }): readonly Part[] => {
    const ease = onSideA ? easeMm : -easeMm;
    return [
      now => capEased(now, name, sleeve, ease),
      now => setSeam(now, { seam: name, ease: { mm: ease } }),
    ];
  });
