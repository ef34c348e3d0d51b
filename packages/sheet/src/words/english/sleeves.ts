import type { SleeveSentences, SleeveTellings } from '@paperhinge/alter/sayings';
import { capital } from '../capital.js';
import type { Say, Sentences, Tellings } from '../catalogue.js';
import { edgeText, raisedCap, stepText } from '../step-text.js';

export const sleeves: Tellings<SleeveTellings> = {
  'no-cap': ({ piece }, say) => ({
    message: capital(`${say.thing(piece)} has no cap.`),
    remedy: 'Say which of its edges is the cap: data-role="cap" on it.',
  }),
  'cap-too-low': ({ piece, heightMm, byMm }, say) => ({
    message: capital(
      `the cap of ${say.thing(piece)} is ${say.length(heightMm)} high, and cannot be lowered by ${say.length(-byMm)}.`,
    ),
    remedy: `Lower it by less than ${say.atMost(heightMm)}.`,
  }),
  'seam-without-cap': ({ seam }, say) => ({
    message: capital(`${say.thing(seam)} does not sew a sleeve's cap into an armhole.`),
    remedy: 'Name the seam that does, or say which edge is the cap: data-role="cap" on it.',
  }),
  'cap-not-sewn': ({ piece }, say) => ({
    message: `No seam sews the cap of ${say.thing(piece)} into an armhole, so which side is the front is not known.`,
    remedy: 'Give the armhole seam under "seams" at the top of the sheet.',
  }),
  'underarm-not-sewn': ({ first, second }, say) => ({
    message: `No seam sews ${say.thing(first)} to ${say.thing(second)}.`,
    remedy: 'Give the underarm seam under "seams" at the top of the sheet.',
  }),
  'strips-too-wide': ({ edge, takenMm, roomMm }, say) => ({
    message: `Both strips together take ${say.length(takenMm)} of ${say.thing(edge)}, which is ${say.length(roomMm)} long.`,
    remedy: `Give front and back less than ${say.length(roomMm)} together.`,
  }),
  'bend-too-far': ({ piece, byMm, mostMm }, say) => ({
    message: `Opened by ${say.length(byMm)}, ${say.thing(piece)} would bend by more than 45 degrees.`,
    remedy: `Give at most ${say.length(mostMm)}.`,
  }),
  'elbow-dart-too-deep': ({ piece, depthMm, mostMm }, say) => ({
    message: `A dart ${say.length(depthMm)} deep reaches right across ${say.thing(piece)}.`,
    remedy: `Make it less deep than ${say.length(mostMm)}.`,
  }),
  'armhole-of-several': ({ seam }, say) => ({
    message: capital(`${say.thing(seam)} does not sew one whole cap to one front and one back.`),
    remedy: 'Join a yoke or panel to its front or back first, with "join pieces".',
  }),
  'shoulder-not-sewn': ({ first, second }, say) => ({
    message: `No seam sews ${say.thing(first)} to ${say.thing(second)}, whole and without a dart.`,
    remedy: 'Close a dart in the shoulder into the hem first, with "close dart".',
  }),
  'shoulders-unlike': ({ first, firstMm, second, secondMm }, say) => ({
    message: capital(
      `${say.thing(first)} is ${say.slight(firstMm)} long and ${say.thing(second)} ${say.slight(secondMm)}: they cannot be the two legs of one dart.`,
    ),
    remedy: `Make them equally long first: ${stepText('match edge', { edge: edgeText(first), at: 'start' })}.`,
  }),
  'sleeve-cut-unlike': ({ piece, sleeve }, say) => ({
    message: capital(
      `${say.thing(piece)} and ${say.thing(sleeve)} are not cut for the same number of sides.`,
    ),
    remedy: 'Work on the half pattern, before it is opened out: one half front, one half back, one sleeve.',
  }),
  'raglan-off-edge': ({ edge, mostMm }, say) => ({
    message: capital(`${say.thing(edge)} is only ${say.length(mostMm)} long: the line would run off it.`),
    remedy: `Give less than ${say.atMost(mostMm)}.`,
  }),
  'raglan-off-piece': ({ piece }, say) => ({
    message: `The raglan line of ${say.thing(piece)} would run outside it, across the hollow of the armhole.`,
    remedy: 'Begin it further down the neck, away from the shoulder.',
  }),
  'raglan-through-dart': ({ piece }, say) => ({
    message: `A dart or pleat of ${say.thing(piece)} would be cut off with its upper part.`,
    remedy: 'Close it into the hem first, with "close dart".',
  }),
  'sleeve-without-middle': ({ edge }, say) => ({
    message: `The grain through the top of the cap does not meet ${say.thing(edge)}, or a pleat parts it.`,
    remedy: 'Cut the kimono first, and shape the hem of its sleeve afterwards.',
  }),
  'kimono-off-side': ({ edge, mostMm }, say) => ({
    message: capital(
      `${say.thing(edge)} is no side seam that goes on so far: ${say.length(mostMm)} of it lie below the armhole.`,
    ),
    remedy:
      mostMm > 0
        ? `Give "drop" less than ${say.length(mostMm)}.`
        : 'Say which edge is the side: data-role="side" on it.',
  }),
  'kimono-underarms-unlike': ({ piece }, say) => ({
    message: `However the sleeve is laid on ${say.thing(piece)}, its underarm seam does not come out as long as the other one.`,
    remedy: 'Give another slope.',
  }),
  'kimono-crosses': ({ piece }, say) => ({
    message: `Laid on so, the sleeve of ${say.thing(piece)} would lie on its body.`,
    remedy: 'Give less slope.',
  }),
  'gusset-too-shallow': ({ leastMm }, say) => ({
    message: `The slash for a gusset is ${say.length(leastMm)} wide on either side: it must be deeper than that.`,
    remedy: 'Give the gusset 80 mm or so.',
  }),
  'kimono-curve-too-wide': ({ piece, mostMm }, say) => ({
    message: `The side of ${say.thing(piece)} leaves no room for an underarm curve of that radius.`,
    remedy: `Give "curve" ${say.length(Math.max(1, Math.floor(mostMm)))} or less, or the underarm less "drop".`,
  }),
  'kimono-curve-and-gusset': ({ seam }, say) => ({
    message: `With a gusset the underarm at ${say.thing(seam)} stays a corner, which the gusset is sewn into.`,
    remedy: 'Leave out "curve", or leave out "gusset".',
  }),
  'cap-too-flat': ({ piece }, say) => ({
    message: `The cap of ${say.thing(piece)} is so flat that the upper parts of front and back do not meet over it.`,
    remedy: 'Raise the cap first: change cap with keep: seam.',
  }),
  'cap-shorter-than-armhole': ({ piece, seam, capMm, armholeMm }, say) => ({
    message: `The cap, ${say.length(capMm)}, is shorter than its armhole, ${say.length(armholeMm)}: the ease would lie in the armhole.`,
    remedy: `Raise the cap first: ${raisedCap(piece, seam)}.`,
  }),
};

const change = (mm: number, say: Say, more: string, less: string): string =>
  Math.abs(mm) < 0.05 ? 'as before' : `${say.length(Math.abs(mm))} ${mm > 0 ? more : less}`;

export const sleevesDid: Sentences<SleeveSentences> = {
  'changed-cap': ({ piece, byMm, seamMm, widthMm }, say) =>
    capital(
      `the cap of ${say.thing(piece)} is ${say.length(Math.abs(byMm))} ${byMm < 0 ? 'lower' : 'higher'}; its seam is ${change(seamMm, say, 'longer', 'shorter')}, the sleeve ${change(widthMm, say, 'wider', 'narrower')}.`,
    ),
  'bent-sleeve': ({ piece, byMm, bendDeg, dart, depthMm }, say) =>
    capital(
      `${say.thing(piece)} was bent forward by ${say.angle(bendDeg)} at the elbow; ${say.thing(dart)} takes in ${say.length(byMm)} and is ${say.length(depthMm)} deep.`,
    ),
  'divided-sleeve': ({ piece, under, foreArmMm, hindArmMm, easeMm }, say) =>
    capital(
      `${say.thing(piece)} was divided: it is the upper sleeve, and ${say.thing(under)} lies below it; the fore-arm seam is ${say.length(foreArmMm)} long and the hind-arm seam ${say.length(hindArmMm)}${easeMm < 0.05 ? ', on both' : `, with ${say.length(easeMm)} more to ease in at the elbow of the upper sleeve`}.`,
    ),
  'cut-raglan': ({ piece, bodies, seamsMm, dartDeg, easeMm, liftMm, half }, say) =>
    capital(
      `the upper parts of ${say.list(bodies.map(say.thing))} were joined to ${say.thing(piece)}; the raglan seams are ${say.list(seamsMm.map(mm => say.length(mm)))} long from underarm to neck. ${half ? `${capital(say.thing(half))} is cut off along the shoulder and down the arm; over the shoulder the two part by ${say.angle(dartDeg)}` : `The dart over the shoulder is ${say.angle(dartDeg)}`}, its point ${say.length(Math.abs(liftMm))} ${liftMm < 0 ? 'within' : 'beyond'} the old cap${easeMm < 0.05 ? '' : `; ${say.length(easeMm)} of ease went with the cap`}.`,
    ),
  'cut-kimono': ({ sleeve, bodies, slopesDeg, underarmMm, curveMm, gusset }, say) =>
    capital(
      `${say.thing(sleeve)} was laid half on ${say.thing(bodies[0]!)}, ${say.angle(slopesDeg[0]!)} below the shoulder, and half on ${say.thing(bodies[1]!)}, ${say.angle(slopesDeg[1]!)} below it; both underarm seams are ${say.length(underarmMm)} long${curveMm === undefined ? '' : `, and curve into the side by a radius of ${say.length(curveMm)}`}.${gusset ? ` ${capital(say.thing(gusset))} is sewn into both slashes.` : ''}`,
    ),
  'walked-cap': ({ seam, easeMm, frontMm, backMm }, say) =>
    capital(
      `${say.thing(seam)} was walked: of ${say.length(easeMm)} of ease ${say.length(frontMm)} lie in front and ${say.length(backMm)} at the back, between the notches and the top.`,
    ),
};
