import type { SleeveSentences, SleeveTellings } from '@paperhinge/alter/sayings';
import { capital } from '../capital.js';
import type { Say, Sentences, Tellings } from '../catalogue.js';

export const sleeves: Tellings<SleeveTellings> = {
  'no-cap': ({ piece }, say) => ({
    message: capital(`${say.thing(piece)} has no cap.`),
    remedy: 'Say which of its edges is the cap: data-role="cap" on it.',
  }),
  'cap-too-low': ({ piece, heightMm, byMm }, say) => ({
    message: capital(
      `the cap of ${say.thing(piece)} is ${say.length(heightMm)} high, and cannot be lowered by ${say.length(-byMm)}.`,
    ),
    remedy: `Lower it by less than ${say.length(heightMm)}.`,
  }),
  'seam-without-cap': ({ seam }, say) => ({
    message: capital(`${say.thing(seam)} does not sew a sleeve's cap into an armhole.`),
    remedy: 'Name the seam that does, or say which edge is the cap: data-role="cap" on it.',
  }),
  'cap-shorter-than-armhole': ({ capMm, armholeMm }, say) => ({
    message: `The cap, ${say.length(capMm)}, is shorter than its armhole, ${say.length(armholeMm)}: the ease would lie in the armhole.`,
    remedy:
      'Raise the cap first: change cap: { piece: sleeve, by: { so that: ease of armhole, is: 20 mm }, keep: width }.',
  }),
};

const change = (mm: number, say: Say, more: string, less: string): string =>
  Math.abs(mm) < 0.05 ? 'as before' : `${say.length(Math.abs(mm))} ${mm > 0 ? more : less}`;

export const sleevesDid: Sentences<SleeveSentences> = {
  'changed-cap': ({ piece, byMm, seamMm, widthMm }, say) =>
    capital(
      `the cap of ${say.thing(piece)} is ${say.length(Math.abs(byMm))} ${byMm < 0 ? 'lower' : 'higher'}; its seam is ${change(seamMm, say, 'longer', 'shorter')}, the sleeve ${change(widthMm, say, 'wider', 'narrower')}.`,
    ),
  'walked-cap': ({ seam, easeMm, frontMm, backMm }, say) =>
    capital(
      `${say.thing(seam)} was walked: of ${say.length(easeMm)} of ease ${say.length(frontMm)} lie in front and ${say.length(backMm)} at the back, between the notches and the top.`,
    ),
};
