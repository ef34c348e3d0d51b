import type { Pattern, Seam, SeamEase, TakenUp } from '@paperhinge/geometry';
import type { Alteration } from '../alteration.js';
import { seamNamed } from '../moved-edges/seam-place.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { saying } from './tellings.js';

/** Say how a seam is sewn; what is left out stays as it is. */
export interface SetSeam {
  readonly seam: string;
  /** By how much side a is to be longer than side b: mm, or per cent of b. */
  readonly ease?: SeamEase;
  /** How the longer side is made to fit. */
  readonly takenUp?: TakenUp;
  /** mm by which the sides may differ from that and still match. */
  readonly tolerance?: number;
}

/**
 * Says how much longer one side of a seam is to be than the other, how the difference is taken up, and how near the
 * two must come. No line of the pattern moves. Source: common practice, no source.
 *
 * @throws PatternError `unknown-seam`; those of `perform`
 */
export const setSeam = (pattern: Pattern, parameters: SetSeam): Alteration =>
  perform(setSeamVerb, pattern, parameters);

export const setSeamForm = formOf<SetSeam>()({
  verb: 'set seam',
  does: 'Says how a seam is sewn: how much one side is eased, gathered, stretched or pleated to fit the other, and how closely the two must match.',
  fields: {
    seam: field.seam(),
    ease: field.optional(field.ease()),
    takenUp: field.optional(field.choice('eased', 'gathered', 'stretched', 'pleated')),
    tolerance: field.optional(field.length({ most: 100 })),
  },
  lacks: ({ ease, takenUp, tolerance }) =>
    (ease ?? takenUp ?? tolerance) === undefined ? 'ease' : undefined,
  leaves: ({ seam }) => ({ seams: [seam] }),
  sentence: 'Sew the {seam} seam with {ease} of ease[, {taken up}][, matching within {tolerance}]',
  startsAt: { seam: ['seam'], edge: ['seam'] },
  example: { pattern: 'woven-shift', step: { seam: 'armhole', ease: '15 mm', 'taken up': 'eased' } },
});
export const setSeamVerb = /* @__PURE__ */ verbFrom(setSeamForm, (pattern, { seam: name, ...wanted }) => {
  const before = seamNamed(pattern, name);
  const after: Seam = { ...before, ...wanted };
  const { ease, takenUp, tolerance } = wanted;
  return {
    pattern: { ...pattern, seams: pattern.seams.map(seam => (seam === before ? after : seam)) },
    did: saying('set-seam', {
      seam: { seam: name },
      ...(ease === undefined ? {} : 'mm' in ease ? { easeMm: ease.mm } : { easePercent: ease.percent }),
      ...(takenUp === undefined ? {} : { takenUp }),
      ...(tolerance === undefined ? {} : { toleranceMm: tolerance }),
    }),
    findings: [],
  };
});
