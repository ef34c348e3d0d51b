import type { UnfoldSentences, UnfoldTellings } from '@paperhinge/alter/sayings';
import { capital } from '../capital.js';
import type { Sentences, Tellings } from '../catalogue.js';

export const unfold: Tellings<UnfoldTellings> = {
  'pair-needed': ({ piece, count }, say) => ({
    message: capital(
      `${say.thing(piece)} is cut ${count === 1 ? 'once' : `${count} times`} or on a fold, not as a mirrored pair.`,
    ),
    remedy: 'Open a piece on the fold out instead, with "unfold".',
  }),
  'unfolded-overlaps': ({ piece }, say) => ({
    message: `Opened out, the two halves of ${say.thing(piece)} would touch one another away from the fold.`,
    remedy: 'Keep it on the fold, or divide it into more panels first.',
  }),
  'no-fold': ({ piece }, say) => ({
    message: capital(`${say.thing(piece)} has no fold to be opened out about.`),
    remedy: 'Make its centre edge a fold, or leave it as it is.',
  }),
  'several-folds': ({ piece, folds }, say) => ({
    message: capital(`${say.thing(piece)} has ${folds.length} folds: ${say.things(folds)}.`),
    remedy: 'Leave one fold, the one it is to be opened out about.',
  }),
  'unfold-not-straight': ({ edge, offMm }, say) => ({
    message: capital(`${say.thing(edge)} is a fold, and ${say.slight(offMm)} off a straight line.`),
    remedy: 'Draw the fold straight; cloth folds along a line only.',
  }),
  'seam-followed': ({ seam, how }, say) => ({
    message: capital(`${say.thing(seam)} ${say.saying(how)}.`),
    remedy: 'Nothing to do.',
  }),
  'seam-to-check': ({ seam, how }, say) => ({
    message: capital(`${say.thing(seam)} ${say.saying(how)}.`),
    remedy: 'Check where it begins and how its notches lie.',
  }),
};

/** How a seam goes on: after its name. */
export const opened: Sentences<UnfoldSentences> = {
  'separated-pair': ({ piece, other, count }, say) =>
    capital(
      `${say.thing(piece)} and ${say.thing(other)}, its mirror image, are pieces of their own now, each cut ${count === 1 ? 'once' : `${count} times`} with its right side up.`,
    ),
  'seam-sewn-twice': ({ second }, say) => `is sewn twice now: ${say.thing(second)} joins the mirrored half`,
  'seam-one-run-across-fold': () => 'runs on across the fold now',
  'seam-both-halves': () => 'is one seam across the fold now, both halves of it',
  'seam-left-at-fold': () => 'was left as it was, though it meets the fold in its middle',
  'seam-begins-elsewhere': () => 'is a ring that no longer begins at the fold',
};
