import type { NecklineTellings } from '@paperhinge/alter/sayings';
import { capital } from '../capital.js';
import type { Tellings } from '../catalogue.js';

export const neckline: Tellings<NecklineTellings> = {
  'no-neck': ({ piece, necks }, say) => ({
    message: capital(
      necks.length === 0
        ? `${say.thing(piece)} has no edge that could be its neck.`
        : `${say.thing(piece)} has several edges that could be its neck: ${say.things(necks)}.`,
    ),
    remedy: 'Say which edge is the neck: write data-role="neck" on it.',
  }),
  'neck-interrupted': ({ edge }, say) => ({
    message: capital(`${say.thing(edge)} is parted by a dart or an inset, so it cannot be recut in one.`),
    remedy: 'Close or move the dart first; cut an inset once only.',
  }),
  'neck-not-at-centre': ({ piece }, say) => ({
    message: `The neck of ${say.thing(piece)} does not end on its fold.`,
    remedy: 'Recut the neck before an inset is cut into it, or draw it up to the fold.',
  }),
  'no-shoulders': ({ edge }, say) => ({
    message: capital(`${say.thing(edge)} has the same edge at both its ends.`),
    remedy: 'Part the outline into neck, shoulders and the rest.',
  }),
  'no-centre-line': ({ piece }, say) => ({
    message: capital(
      `${say.thing(piece)} has no fold, no centre line that meets its neck, and no grain line.`,
    ),
    remedy: 'Draw its centre line, or its grain line.',
  }),
  'dart-in-neck': ({ dart }, say) => ({
    message: capital(`${say.thing(dart)} opens where the neck ends.`),
    remedy: 'Close or move it first.',
  }),
  'neckline-too-deep': ({ piece, depthMm }, say) => ({
    message: `A neckline ${say.length(depthMm)} deep would leave ${say.thing(piece)} at its centre line.`,
    remedy: 'Make it less deep.',
  }),
  'neckline-too-shallow': ({ piece }, say) => ({
    message: `The new neckline of ${say.thing(piece)} would not lie below its shoulder.`,
    remedy: 'Make it deeper.',
  }),
  'half-width-off-neck': ({ piece, halfWidthMm, reachesMm }, say) => ({
    message:
      `The neck of ${say.thing(piece)} has no point ${say.length(halfWidthMm)} from the centre line with neck beyond it: ` +
      `it ends ${say.length(reachesMm)} out.`,
    remedy: 'Make the inset narrower than the neck, or recut the whole neck as a V.',
  }),
  'half-width-beyond-shoulder': ({ edge, halfWidthMm, reachesMm }, say) => ({
    message: `A half width of ${say.length(halfWidthMm)} lies beyond ${say.thing(edge)}, which ends ${say.length(reachesMm)} from the centre line.`,
    remedy: 'Make the neck narrower.',
  }),
  'shoulder-out-of-reach': ({ edge, wantedMm }, say) => ({
    message: capital(`${say.thing(edge)} cannot be left ${say.length(wantedMm)} long.`),
    remedy: 'Give a length over 0 that the shoulder can have.',
  }),
  'name-taken': ({ edge }, say) => ({
    message: capital(`${say.thing(edge)} is there already.`),
    remedy: 'Cut one inset only, or give that edge another name.',
  }),
  'line-ends-off-outline': ({ line, awayMm }, say) => ({
    message: capital(`an end of ${say.thing(line)} lies ${say.length(awayMm)} from the outline.`),
    remedy: 'Draw the line from outline to outline.',
  }),
  'line-crosses-dart': ({ dart }, say) => ({
    message: capital(`the new neckline crosses ${say.thing(dart)}.`),
    remedy: 'Close or move it first.',
  }),
  'neckline-leaves-piece': ({ piece }, say) => ({
    message: `The new neckline of ${say.thing(piece)} would run outside the piece.`,
    remedy: 'Make it narrower, or less deep.',
  }),
};
