import type { FullnessSentences, FullnessTellings } from '@paperhinge/alter/sayings';
import { capital } from '../capital.js';
import type { Sentences, Tellings } from '../catalogue.js';

/** Circles, flounces, godets, slits and vents. */
export const fullness: Tellings<FullnessTellings> = {
  'circle-too-wide-for-cloth': ({ piece, widthMm, clothMm }, say) => ({
    message: capital(
      `${say.thing(piece)} opened out is ${say.length(widthMm)} wide; the cloth is ${say.length(clothMm)}.`,
    ),
    remedy: 'Take more panels, or a smaller part of a circle.',
  }),
  'bias-hem-hangs': ({ piece }, say) => ({
    message: `Parts of the hem of ${say.thing(piece)} hang on the bias and drop.`,
    remedy: 'Let it hang for a day, then level the hem from the floor.',
  }),
  'godet-seam-short': ({ seam, depthMm, seamMm }, say) => ({
    message: `A godet ${say.length(depthMm)} deep has no room in ${say.thing(seam)}, which is ${say.length(seamMm)} long.`,
    remedy: 'Make it less deep.',
  }),
  'slit-beyond-edge': ({ edge, lengthMm, edgeMm }, say) => ({
    message: `A slit of ${say.length(lengthMm)} is longer than ${say.thing(edge)}, which is ${say.length(edgeMm)}.`,
    remedy: 'Make it shorter.',
  }),
  'slash-pivot-and-end': ({ mark }, say) => ({
    message: `A slash that hinges at ${say.thing(mark)} overlaps at its other end by as much as it must.`,
    remedy: 'Leave "other end" out, or "pivot".',
  }),
  'vent-not-at-hem': ({ edge }, say) => ({
    message: capital(`${say.thing(edge)} does not end at a hem, or has one at both ends.`),
    remedy: 'Choose an edge that comes down to the hem.',
  }),
  'vent-too-wide': ({ lengthMm, widthMm }, say) => ({
    message: `A vent ${say.length(widthMm)} wide has no room for its slant in ${say.length(lengthMm)} of length.`,
    remedy: 'Make it narrower, or longer.',
  }),
  'vent-too-long': ({ edge, lengthMm, edgeMm }, say) => ({
    message: `A vent that takes ${say.length(lengthMm)} has no room on ${say.thing(edge)}, which is ${say.length(edgeMm)} long.`,
    remedy: 'Make it shorter or narrower.',
  }),
};

/** What was made fuller, or opened. */
export const fullnessDone: Sentences<FullnessSentences> = {
  'drafted-circle-skirt': ({ piece, part, panels, waistMm, radiusMm, lengthMm, sweepMm }, say) =>
    capital(
      `${say.thing(piece)} was drafted as a ${part} circle in ${panels === 1 ? 'one panel' : `${panels} panels`}: waist ${say.length(waistMm)}, drawn with a radius of ${say.length(radiusMm)}; ${say.length(lengthMm)} long; hem ${say.length(sweepMm)} all round.`,
    ),
  'drafted-flounce': ({ piece, along, edgeMm, radiusMm, widthMm, rings, sweepMm }, say) =>
    capital(
      `${say.thing(piece)} was drafted for ${say.things(along)}, ${say.length(edgeMm)}: ${rings === 1 ? 'one ring' : `${rings} rings`} with an inner radius of ${say.length(radiusMm)}, ${say.length(widthMm)} wide, ${say.length(sweepMm)} along the hem.`,
    ),
  'drafted-godet': ({ piece, seam, depthMm, sweepMm, count }, say) =>
    capital(
      `${say.thing(piece)} was drafted, ${say.length(depthMm)} deep and ${say.length(sweepMm)} along its hem, cut ${count === 1 ? 'once' : `${count} times`}; ${say.thing(seam)} is sewn as far as its point.`,
    ),
  slashed: ({ piece, slashes }, say) =>
    capital(
      `${say.thing(piece)} was slashed at ${slashes.length === 1 ? 'one place' : `${slashes.length} places`}: ${slashes.map(say.saying).join('; ')}.`,
    ),
  'slashed-at': ({ from, fromMm, to, toMm, openedMm, otherMm, turnDeg, about, into }, say) => {
    const came = (mm: number) => `${mm < 0 ? 'overlapped' : 'opened'} by ${say.length(Math.abs(mm))}`;
    const other = otherMm === 0 ? 'hinged there' : `${came(otherMm)} there`;
    const hinge = about ? `, hinged at ${say.thing(about)}` : '';
    return `${say.length(fromMm)} along ${say.thing(from)} ${came(openedMm)} (${say.angle(turnDeg)})${hinge}${into === undefined ? '' : `, taken up in ${into === 'dart' ? 'a dart' : into}`}, ${say.length(toMm)} along ${say.thing(to)} ${other}`;
  },
  'set-slit': ({ edge, lengthMm }, say) =>
    capital(`${say.length(lengthMm)} of ${say.thing(edge)} stay open as a slit.`),
  'added-vent': ({ edge, lengthMm, widthMm }, say) =>
    capital(
      `${say.thing(edge)} has a vent ${say.length(lengthMm)} up from the hem and ${say.length(widthMm)} wide, with a fold line where the edge was.`,
    ),
};
