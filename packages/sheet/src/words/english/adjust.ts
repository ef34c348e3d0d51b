import type { AdjustSentences, AdjustTellings } from '@paperhinge/alter/sayings';
import { capital } from '../capital.js';
import type { Sentences, Tellings } from '../catalogue.js';

export const adjust: Tellings<AdjustTellings> = {
  'adjust-needs-piece': ({ what }) => ({
    message: `No piece here is ${what === 'trousers' ? 'a leg of trousers' : `a ${what}`}, as this adjustment needs one.`,
    remedy: `Say what each piece and edge is, data-role in the drawing, or role under pieces in the sheet${what === 'front' || what === 'back' ? ', and list the shoulder seam, by which front and back are told apart' : ''}.`,
  }),
  'adjust-needs-edge': ({ piece, role }, say) => ({
    message: capital(`${say.thing(piece)} has no ${role} where this adjustment needs one.`),
    remedy: `Say which of its edges is the ${role}: data-role="${role}" on it.`,
  }),
  'adjust-needs-level': ({ piece, levels }, say) => ({
    message: capital(`${say.thing(piece)} has no line at the ${levels.join(' or ')}.`),
    remedy: `Draw one: data-line="level" data-name="${levels[0]}".`,
  }),
  'adjust-needs-seam': ({ role }) => ({
    message: `The pattern has no ${role} seam.`,
    remedy: `List it under seams, between edges that have data-role="${role}".`,
  }),
  'adjust-needs-dart': ({ piece }, say) => ({
    message: capital(`${say.thing(piece)} has no dart in its side.`),
    remedy: 'Open one first, or adjust for a full bust, which opens one.',
  }),
  'bust-point-unknown': ({ piece }, say) => ({
    message: capital(`where the bust point of ${say.thing(piece)} lies is not marked.`),
    remedy: 'Mark it: data-mark="point" data-name="bust point".',
  }),
  'adjust-too-much': ({ what, byMm, mostMm }, say) => ({
    message: `The paper for the ${what} does not reach so far as ${say.length(Math.abs(byMm))}.`,
    remedy: `Adjust by less; at the very most ${say.atMost(Math.abs(mostMm))} on the piece.`,
  }),
};

export const adjusted: Sentences<AdjustSentences> = {
  adjusted: ({ what, byMm, steps }, say) =>
    `Adjusted for ${what} by ${say.length(byMm)}: ${steps.map(say.saying).join(' ')}`,
  'swung-bust': ({ piece, byMm, dropMm, turnDeg, dart }, say) =>
    capital(
      `the bust point of ${say.thing(piece)} moved ${say.length(Math.abs(byMm))} ${byMm < 0 ? 'in' : 'out'} and ${say.length(Math.abs(dropMm))} ${dropMm < 0 ? 'up' : 'down'}, the side swinging about the armhole by ${say.angle(turnDeg)}; ${say.thing(dart)} ${byMm < 0 ? 'closed' : 'opened'} by as much.`,
    ),
  'swung-apart': ({ piece, byMm, top, lowerMm }, say) =>
    capital(
      `${say.thing(piece)} is ${say.length(Math.abs(byMm))} ${byMm < 0 ? 'narrower' : 'wider'} across, ${say.thing(top)} ${say.length(Math.abs(lowerMm))} ${lowerMm < 0 ? 'higher' : 'lower'}.`,
    ),
  'slid-shoulder': ({ piece, byMm }, say) =>
    capital(
      `shoulder and armhole of ${say.thing(piece)} slid ${say.length(Math.abs(byMm))} ${byMm < 0 ? 'down' : 'up'}.`,
    ),
};
