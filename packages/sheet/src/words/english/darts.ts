import type { DartSentences, DartTellings } from '@paperhinge/alter/sayings';
import { capital } from '../capital.js';
import type { Sentences, Tellings } from '../catalogue.js';
import { instead } from './instead.js';

/** Darts opened, resized, split, joined and changed. */
export const darts: Tellings<DartTellings> = {
  'unknown-mark': ({ piece, name, names }, say) => ({
    message: capital(`${say.thing({ piece })} has no point mark ${say.written(name)}.`),
    remedy: instead(name, names, 'point marks', say),
  }),
  'dart-name-taken': ({ piece, name }, say) => ({
    message: capital(`${say.thing(piece)} has an edge, dart or pleat ${say.written(name)} already.`),
    remedy: 'Give the new one another name.',
  }),
  'dart-points-meet': ({ dart }, say) => ({
    message: `What stays of ${say.thing(dart)} and the new dart would be sewn to one point, where the cloth would part.`,
    remedy: 'Set the point of the new one back: point back: 20 mm.',
  }),
  'dart-off-edge': ({ edge, intakeMm, leftMm, rightMm }, say) => ({
    message:
      `A dart that takes in ${say.length(intakeMm)} has no room there on ${say.thing(edge)}: ` +
      `${say.length(leftMm)} of it lie before its middle and ${say.length(rightMm)} after it.`,
    remedy: 'Place it farther from the ends, or let it take in less.',
  }),
  'dart-uneven-there': ({ edge, firstMm, secondMm, alongMm }, say) => ({
    message:
      `From there on ${say.thing(edge)} the dart's legs would be ${say.length(firstMm)} and ${say.length(secondMm)} long, ` +
      'and could not be sewn to one another.',
    remedy:
      alongMm === undefined
        ? 'Give the depth of the dart instead of the mark it points to.'
        : `Place it at ${say.length(alongMm)} from the start of the edge, where the mark lies square to it.`,
  }),
  'dart-leaves-piece': ({ dart }, say) => ({
    message: capital(`${say.thing(dart)} would run out of its piece, or into another dart.`),
    remedy: 'Make it less deep, or place it elsewhere.',
  }),
  'dart-too-deep': ({ dart, deepMm, byMm }, say) => ({
    message: capital(
      `${say.thing(dart)} is ${say.length(deepMm)} deep: nothing would be left after ${say.length(byMm)}.`,
    ),
    remedy: 'Shorten it by less, or change it into ease.',
  }),
  'dart-beside-nothing': ({ dart, toMm, roomMm }, say) => ({
    message:
      roomMm > 0
        ? capital(
            `${say.thing(dart)} cannot take in ${say.length(toMm)}: the edge beside it is ${say.length(roomMm)} long.`,
          )
        : capital(`${say.thing(dart)} has no edge on one of its sides.`),
    remedy: 'Let it take in less, or move part of it elsewhere: move dart with a share.',
  }),
  'share-place-unclear': ({ dart, part }, say) => ({
    message: `Part ${part} of ${say.thing(dart)} says neither one edge nor one dart that it goes into.`,
    remedy: 'Give it either "edge" or "dart".',
  }),
  'shares-over-whole': ({ dart, sharePercent }, say) => ({
    message: capital(`the shares of ${say.thing(dart)} add up to ${say.percent(sharePercent)}.`),
    remedy: 'Let them add up to 100 % or less, or leave one of them out: it takes what is left.',
  }),
  'shares-leave-nothing': ({ dart }, say) => ({
    message: capital(`the shares of ${say.thing(dart)} leave nothing for the part that has none.`),
    remedy: 'Give the others less than 100 % together, or leave that part out.',
  }),
  'pinch-too-wide': ({ edge, byMm, slashMm }, say) => ({
    message: `A fold ${say.length(slashMm)} long cannot take ${say.length(byMm)} out of ${say.thing(edge)}.`,
    remedy: 'Pinch out less.',
  }),
  'dart-into-itself': ({ dart }, say) => ({
    message: capital(`${say.thing(dart)} cannot be closed into itself.`),
    remedy: 'Name the dart that is to stay.',
  }),
  'dart-end-redrawn': ({ edge, movedMm }, say) => ({
    message: capital(
      `the legs came out unequal: ${say.thing(edge)} was drawn ${say.slight(movedMm)} on at the dart, so that both are as long.`,
    ),
    remedy: 'Nothing to do; fold the paper along the dart to see it run on.',
  }),
  'contour-dart-leaves-piece': ({ piece, name }, say) => ({
    message: `The contour dart ${say.written(name)} would not lie within ${say.thing(piece)}.`,
    remedy: 'Draw it nearer to the middle of the piece, or smaller.',
  }),
  'dart-is-true': ({ dart }, say) => ({
    message: capital(`the legs of ${say.thing(dart)} are straight and equally long already.`),
    remedy: 'Leave the step out.',
  }),
  'dart-edges-unsewn': ({ dart, edge }, say) => ({
    message: `No seam takes up what ${say.thing(dart)} took in: ${say.thing(edge)} is sewn to nothing.`,
    remedy: 'Gather it to a band or facing, or keep the dart.',
  }),
};

/** What was done to darts. */
export const dartsDone: Sentences<DartSentences> = {
  'split-dart': ({ dart, fresh, to, sharePercent, angleDeg, keptDeg, alongMm, openedMm }, say) =>
    capital(
      `${say.percent(sharePercent)} of ${say.thing(dart)} (${say.angle(angleDeg)}) was moved to ${say.thing(to)}, ` +
        `${say.length(alongMm)} from its start, as ${say.thing(fresh)}, ${say.length(openedMm)} wide; ${say.angle(keptDeg)} stays.`,
    ),
  'joined-darts': ({ dart, into, angleDeg, formerMm, intakeMm }, say) =>
    capital(
      `${say.thing(dart)} (${say.angle(angleDeg)}) was closed into ${say.thing(into)}, which takes in ${say.length(intakeMm)} now; it was ${say.length(formerMm)}.`,
    ),
  'shared-dart': ({ dart, wholeDeg, restDeg, parts }, say) =>
    capital(
      `${say.thing(dart)} (${say.angle(wholeDeg)}) was shared out: ${parts.map(say.saying).join('; ')}.${restDeg > 0 ? ` ${say.angle(restDeg)} stays in it.` : ''}`,
    ),
  'shared-into-edge': ({ edge, sharePercent, alongMm, openedMm }, say) =>
    `${say.percent(sharePercent)} into ${say.thing(edge)}, slashed ${say.length(alongMm)} from its start, which opened by ${say.length(openedMm)}`,
  'shared-into-dart': ({ into, sharePercent, formerMm, intakeMm }, say) =>
    `${say.percent(sharePercent)} into ${say.thing(into)}, which takes in ${say.length(intakeMm)} now (it was ${say.length(formerMm)})`,
  'pinched-out': ({ edge, alongMm, byMm, angleDeg, dart, formerMm, intakeMm }, say) =>
    capital(
      `${say.length(byMm)} (${say.angle(angleDeg)}) were pinched out of ${say.thing(edge)}, ${say.length(alongMm)} from its start, into ${say.thing(dart)}, which takes in ${say.length(intakeMm)} now; it was ${say.length(formerMm)}.`,
    ),
  'opened-dart': ({ dart, edge, alongMm, intakeMm, deepMm }, say) =>
    capital(
      `${say.thing(dart)} was drawn into ${say.thing(edge)}, ${say.length(alongMm)} from its start: it takes in ${say.length(intakeMm)} and is ${say.length(deepMm)} deep.`,
    ),
  'added-contour-dart': ({ piece, name, line, intakeMm, aboveMm, belowMm }, say) =>
    capital(
      `${say.thing(piece)} has a contour dart ${say.written(name)}: it takes in ${say.length(intakeMm)} on ${say.thing(line)} and runs ${say.length(aboveMm)} up and ${say.length(belowMm)} down.`,
    ),
  'trued-dart': ({ dart, firstMm, secondMm, lengthMm }, say) =>
    capital(
      `the legs of ${say.thing(dart)} are straight now and ${say.length(lengthMm)} long, both; they were ${say.length(firstMm)} and ${say.length(secondMm)}.`,
    ),
  'resized-dart': ({ dart, formerMm, toMm }, say) =>
    capital(`${say.thing(dart)} takes in ${say.length(toMm)} now; it was ${say.length(formerMm)}.`),
  'moved-dart-point': ({ dart, movedMm, formerMm, deepMm }, say) =>
    capital(
      `the point of ${say.thing(dart)} was moved by ${say.length(movedMm)}: the dart is ${say.length(deepMm)} deep now; it was ${say.length(formerMm)}.`,
    ),
  'left-dart-unsewn': ({ dart, intakeMm }, say) =>
    capital(
      `${say.thing(dart)} is not sewn any more: the piece keeps the ${say.length(intakeMm)} it took in.`,
    ),
  'changed-dart': ({ dart, into, edge, intakeMm, seams }, say) =>
    capital(
      `${say.thing(dart)} was changed into ${/^[aeiou]/.test(into) && into !== 'ease' ? `an ${into}` : ['ease', 'gathers'].includes(into) ? into : `a ${into}`}: ` +
        `${say.length(intakeMm)} of ${say.thing(edge)}${seams.length > 0 ? `, taken up in ${say.things(seams)} between two notches` : ''}.`,
    ),
};
