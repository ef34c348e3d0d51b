import type { RedrawnEdgeSentences, RedrawnEdgeTellings } from '@paperhinge/alter/sayings';
import { capital } from '../capital.js';
import type { Sentences, Tellings } from '../catalogue.js';
import { straightStep } from '../straight-step.js';

/** Edges drawn anew: armholes, hems, stands, keyholes. */
export const redrawnEdges: Tellings<RedrawnEdgeTellings> = {
  'corner-beside-dart': ({ edge, dart }, say) => ({
    message: capital(
      `${say.thing(dart)} opens at an end of ${say.thing(edge)}, so that end cannot be moved.`,
    ),
    remedy: 'Close or move it first.',
  }),
  'corner-beyond-edge': ({ edge, beside, byMm, roomMm }, say) => ({
    message: `An end of ${say.thing(edge)} cannot move by ${say.length(byMm)}: ${say.thing(beside)} is ${say.length(roomMm)} long.`,
    remedy: 'Move it by less.',
  }),
  'edge-in-two-parts': ({ edge }, say) => ({
    message: capital(`${say.thing(edge)} is parted by a dart, a pleat or an inset.`),
    remedy: 'Close or move it first, or choose an edge in one part.',
  }),
  'redrawn-crosses': ({ edge }, say) => ({
    message: `Drawn so, ${say.thing(edge)} would run into another edge of its piece.`,
    remedy: 'Change it by less.',
  }),
  'no-armhole': ({ piece }, say) => ({
    message: capital(`${say.thing(piece)} has no edge, or several, that could be its armhole.`),
    remedy: 'Say which edge it is: write data-role="armhole" on it.',
  }),
  'hem-not-at-centre': ({ edge }, say) => ({
    message: `Neither end of ${say.thing(edge)} lies on a fold or centre edge, or both do.`,
    remedy: 'Shape the hem of half a piece; or draw it with "recut edge" along a line.',
  }),
  'edge-in-no-seam': ({ edge }, say) => ({
    message: capital(`${say.thing(edge)} is sewn to nothing, so it has nothing to match.`),
    remedy: 'Choose an edge that is in a seam.',
  }),
  'edge-matches-already': ({ edge, seam }, say) => ({
    message: capital(`${say.thing(edge)} matches what it is sewn to in ${say.thing(seam)} already.`),
    remedy: 'Leave the step out.',
  }),
  'stand-edge-bent': ({ edge, offMm }, say) => ({
    message: capital(`${say.thing(edge)} is ${say.slight(offMm)} off a straight line.`),
    remedy: 'Draw it straight first: true with straight: yes.',
  }),
  'grown-facing-too-wide': ({ edge, widthMm }, say) => ({
    message: `A facing ${say.length(widthMm)} wide at ${say.thing(edge)} is wider than the edges beside it reach.`,
    remedy: 'Make it narrower.',
  }),
  'grown-on-edge-curved': ({ edge, offMm, sideMm }, say) => ({
    message: capital(
      `${say.thing(edge)} is ${say.slight(offMm)} off a straight line, and cloth folds along a straight line only.`,
    ),
    remedy: `Draw it straight first (${straightStep(edge, sideMm, offMm, say)}), or give it a band of its own: cut off band, or draft facing.`,
  }),
  'grown-on-off-square': ({ edge, fold, sideMm }, say) => ({
    message: `A facing folded up at ${say.thing(edge)} would leave ${say.thing(fold)}, which is not square to it.`,
    remedy:
      sideMm === undefined
        ? 'Draw the edge square to the fold first, or open the piece out: unfold.'
        : `Draw the edge square to the fold first: ${straightStep(edge, sideMm, 0, say)}.`,
  }),
  'grown-on-edge-sewn': ({ edge, seam }, say) => ({
    message: capital(`${say.thing(edge)} is sewn in ${say.thing(seam)}, so that it cannot be folded up.`),
    remedy: 'Remove what is sewn to it first, or draft a facing of its own: draft facing.',
  }),
  'grown-on-alone': ({ edge, beside }, say) => ({
    message: capital(`${say.thing(edge)} is sewn to nothing: ${say.thing(beside)} has no facing there.`),
    remedy: `Add the facing to both in one step, if the seam is to run through it.`,
  }),
  'wrap-not-at-neck': ({ edge }, say) => ({
    message: capital(`${say.thing(edge)} is not a centre edge that comes up to the neck.`),
    remedy: 'Choose the centre edge that comes up to the neck.',
  }),
  'wrap-too-deep': ({ edge, depthMm, centreMm }, say) => ({
    message: `The slant would end ${say.length(depthMm)} down ${say.thing(edge)}, which is ${say.length(centreMm)} long.`,
    remedy: 'Make it less deep.',
  }),
  'neck-not-between': ({ edge }, say) => ({
    message: capital(`${say.thing(edge)} does not run from a centre edge or fold to a shoulder.`),
    remedy: 'Raise the neck of half a piece, and close or move a dart at its end first.',
  }),
  'edge-length-unreached': ({ edge, lengthMm, nearestMm }, say) => ({
    message: `No fair line between the ends of ${say.thing(edge)} is ${say.length(lengthMm)} long; the nearest is ${say.length(nearestMm)}.`,
    remedy: 'Move one of its ends instead: match edge with a length.',
  }),
  'cowl-on-bias': ({ edge }, say) => ({
    message: capital(`${say.thing(edge)} falls in soft folds only where it lies on the bias.`),
    remedy:
      'Cut the piece with its centre at 45° to the grain, and give the neck a facing in one with it: add grown-on facing.',
  }),
  'keyhole-off-fold': ({ piece, downMm, roomMm }, say) => ({
    message: `The keyhole would end ${say.length(downMm)} down the fold of ${say.thing(piece)}, which is ${say.length(roomMm)} long.`,
    remedy: 'Make it less deep, or begin it higher.',
  }),
  'keyhole-needs-fold': ({ piece }, say) => ({
    message: capital(`${say.thing(piece)} has no fold that begins at its neck.`),
    remedy: 'Choose a piece that is cut on the fold up to its neck.',
  }),
  'hem-curved-deep': ({ edge, allowanceMm }, say) => ({
    message: capital(
      `${say.thing(edge)} is curved now: ${say.allowance(allowanceMm)} turned up there will not lie flat.`,
    ),
    remedy: 'Give it 10 mm or less with set allowance, or face it: draft facing.',
  }),
};

/** What was drawn anew. */
export const redrawnEdgesDone: Sentences<RedrawnEdgeSentences> = {
  'recut-edge': ({ edge, way, byMm = [], by = [], formerMm, lengthMm }, say) => {
    const amount =
      byMm.length === 1
        ? say.length(byMm[0]!)
        : `${byMm.map(say.length).join(' at its start and ')} at its end`;
    const how = {
      in: `${amount} further in`,
      out: `${amount} further out`,
      line: `along ${say.things(by)}`,
      through: `through ${say.things(by)}`,
      length: 'to a length',
      like: `like ${say.things(by)}`,
    }[way];
    return capital(
      `${say.thing(edge)} was recut ${how}: it is ${say.length(lengthMm)} long now; it was ${say.length(formerMm)}.`,
    );
  },
  'recut-armhole': ({ pieces, lowerMm, inMm, changesMm }, say) => {
    const ways = [
      lowerMm === 0 ? '' : `${lowerMm < 0 ? 'raised' : 'lowered'} by ${say.length(Math.abs(lowerMm))}`,
      inMm === 0 ? '' : `${inMm < 0 ? 'let out' : 'cut in'} by ${say.length(Math.abs(inMm))} at the shoulder`,
    ].filter(way => way !== '');
    return capital(
      `the armhole of ${say.things(pieces)} was ${ways.length === 0 ? 'left as it was' : say.list(ways)}; its length changed by ${say.list(changesMm.map(say.change))}.`,
    );
  },
  'shaped-hem': ({ edge, sideMm, centreMm, curved, lengthMm }, say) => {
    const move = (mm: number, where: string) =>
      mm === 0 ? `as it was ${where}` : `${say.length(Math.abs(mm))} ${mm > 0 ? 'up' : 'down'} ${where}`;
    return capital(
      `${say.thing(edge)} was drawn ${curved ? 'in a curve' : 'straight'}, ${move(sideMm, 'at the side')} and ${move(centreMm, 'at the centre')}; it is ${say.length(lengthMm)} long.`,
    );
  },
  'levelled-hem': ({ pieces, from, heightMm, lengthMm, longerMm }, say) => {
    const change = (mm: number) =>
      mm === 0 ? 'as it was' : `${say.length(Math.abs(mm))} ${mm < 0 ? 'shorter' : 'longer'}`;
    const each = pieces.map((piece, i) => `${say.thing(piece)} ${change(longerMm[i]!)}`);
    return `The hem lies ${say.length(heightMm)} above the floor, ${say.length(lengthMm)} down from the ${say.name(from)}: ${say.list(each)}.`;
  },
  'matched-edge': ({ edge, seam, byMm, lengthMm, beside }, say) =>
    capital(
      `${say.thing(edge)} was made ${say.length(Math.abs(byMm))} ${byMm < 0 ? 'shorter' : 'longer'}${seam ? ` to match ${say.thing(seam)}: ` : ': it is '}${say.length(lengthMm)}; ${say.thing(beside)} is drawn to its new end.`,
    ),
  'added-button-stand': ({ edge, widthMm, facingMm, opened }, say) =>
    capital(
      `${say.thing(edge)} has a button stand ${say.length(widthMm)} wide${facingMm === undefined ? '' : `, and a facing ${say.length(facingMm)} wide cut in one`}; a line shows the centre${opened ? ', and the piece is cut as a pair' : ''}.`,
    ),
  'grown-on': ({ edges, widthMm }, say) =>
    capital(
      `${say.things(edges)} ${edges.length > 1 ? 'have' : 'has'} a facing ${say.length(widthMm)} wide cut in one; ${edges.length > 1 ? 'they are fold lines' : 'it is a fold line'} now.`,
    ),
  'wrapped-over': ({ edge, byMm, depthMm, neck, neckMm, opened }, say) =>
    capital(
      `${say.thing(edge)} wraps over by ${say.length(byMm)}; ${say.thing(neck)} slants to ${say.length(depthMm)} down and is ${say.length(neckMm)} long${opened ? '; the piece is cut as a pair' : ''}. A line shows the centre. The slant is on the bias: stay it.`,
    ),
  'raised-neckline': ({ pieces, byMm, necksMm }, say) =>
    capital(
      `the neckline of ${say.things(pieces)} was raised by ${say.length(byMm)}; it is ${say.list(necksMm.map(say.length))} long on the pattern. It must still pass over the head, or open.`,
    ),
  'draped-neckline': ({ piece, byMm, neckMm, upMm }, say) =>
    capital(
      `${say.thing(piece)} was spread by ${say.length(byMm)} at the neck, which is straight and square to the centre now, ${say.length(neckMm)} long on the pattern; the centre ${upMm < 0 ? 'was cut' : 'runs on'} by ${say.length(Math.abs(upMm))}.`,
    ),
  'cut-keyhole': ({ piece, belowMm, depthMm, widthMm, roundMm }, say) =>
    capital(
      `${say.thing(piece)} has a keyhole ${say.length(belowMm)} below its neck, ${say.length(depthMm)} deep and ${say.length(widthMm)} wide; its edge is ${say.length(roundMm)} round.`,
    ),
};
