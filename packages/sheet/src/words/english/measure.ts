import type { Thing } from '@paperhinge/geometry';
import type { MeasureTellings } from '@paperhinge/geometry/sayings';
import { capital } from '../capital.js';
import type { Say, Tellings } from '../catalogue.js';
import { capWithEase, edgeText, stepText, typedLength } from '../step-text.js';

export const measure: Tellings<MeasureTellings> = {
  'seam-does-not-match': (facts, say) => ({
    message: `${mismatch(facts, say)}${lyingBetween(facts, say)}${countedOtherwise(facts, say)}`,
    remedy: mismatchRemedy(facts, say),
  }),
  'contour-dart-cut': ({ dart }, say) => ({
    message: capital(
      `${say.thing(dart)} is cut: no closed shape within its piece any more, it cannot be sewn.`,
    ),
    remedy: 'Draw it anew where it is whole: add contour dart. Or cut the piece in two through it: divide.',
  }),
  'crossing-seams-apart': ({ seam, first, second, offMm }, say) => ({
    message: capital(
      `on ${say.thing(seam)}, the seam before ${say.thing(first)} and the seam before ${say.thing(second)} cross ${say.slight(Math.abs(offMm))} apart.`,
    ),
    remedy: `If they should meet, move one of them by ${say.slight(Math.abs(offMm))}.`,
  }),
  'notches-do-not-meet': ({ seam, notch, partner, aMm, bMm, differenceMm, offMm }, say) => ({
    message: capital(
      `${notchWords(notch, say)} lies ${say.slight(bMm)} from the beginning of ${say.thing(seam)}, its partner, ${notchWords(partner, say)}, ${say.slight(aMm)}: ${easeBefore(differenceMm - offMm, say)}they miss each other by ${say.slight(Math.abs(offMm))}.`,
    ),
    remedy: capital(
      `move ${notchWords(notch, say)} by ${say.slight(Math.abs(offMm))} ${offMm > 0 ? 'away from' : 'towards'} the beginning of the seam.`,
    ),
  }),
  'ease-the-wrong-way': ({ seam, notch, partner, easeMm }, say) => ({
    message: `Just before ${notchWords(notch, say)} that side is ${say.slight(Math.abs(easeMm))} the longer, where ${say.thing(seam)} as a whole is eased the other way.`,
    remedy: `Move that notch back by ${say.slight(Math.abs(easeMm))}, or ${notchWords(partner, say)} forward.`,
  }),
  'notch-misses-seam': ({ seam, notch, offMm }, say) => ({
    message: capital(
      `${notchWords(notch, say)} misses the seam that meets ${say.thing(seam)} on the other side by ${say.slight(Math.abs(offMm))}.`,
    ),
    remedy: `Move it by ${say.slight(Math.abs(offMm))} ${offMm > 0 ? 'towards' : 'away from'} the beginning of the seam.`,
  }),
  'notch-without-partner': ({ seam, notches, count }, say) => ({
    message: capital(
      `${say.list(notches.map(n => notchWords(n, say)))} ${count === 1 ? 'has' : 'have'} no partner on the other side of ${say.thing(seam)}.`,
    ),
    remedy: 'Mark the same distance on the other side, or leave the notch out.',
  }),
  'notches-wanted': ({ seams, count, longestMm }, say) => ({
    message: `There is no notch yet on ${say.things(seams)}, ${count === 1 ? '' : 'up to '}${say.length(longestMm)} long.`,
    remedy: `Mark the middle of ${count === 1 ? 'both its sides' : 'each'}: ${seams.map(({ seam = '' }) => stepText('add notches', { seam, count: 1 })).join(', ')}.`,
  }),
  'joined-line-broken': ({ closed, first, second, cornerDeg, stepMm, takeMm, blendMm, ...is }, say) => {
    const seen = [
      ...(is.corner ? [`a ${cornerDeg > 0 ? 'peak' : 'dip'} of ${say.angle(Math.abs(cornerDeg))}`] : []),
      ...(is.step ? [`a step of ${say.slight(Math.abs(stepMm))}`] : []),
    ];
    const amount = say.slight(Math.abs(takeMm));
    const [longer, shorter] = stepMm > 0 ? [first, second] : [second, first];
    const todo = [
      ...(is.corner
        ? [
            `${cornerDeg > 0 ? `Take ${amount} off` : `Add ${amount}`} there, running out to nothing within ${say.length(blendMm)} on both sides: ${trueStep([first, second])}.`,
          ]
        : []),
      ...(is.step
        ? [
            `Take ${say.slight(Math.abs(stepMm))} off ${say.thing(longer)} there, or add it to ${say.thing(shorter)}.`,
          ]
        : []),
    ];
    return {
      message: capital(
        `with ${say.thing(closed)} ${closed.pleat === undefined ? 'sewn' : 'folded'}, ${both(first, second, say)} ${isSame(first, second) ? 'makes' : 'make'} ${say.list(seen)}.`,
      ),
      remedy: todo.join(' '),
    };
  },
  'turned-back-end-off': ({ under, over, piece, angleDeg }, say) => ({
    message: capital(
      `turned under, ${say.thing(under)} does not lie along ${say.thing(over)}: it is ${say.angle(angleDeg)} out.`,
    ),
    remedy: capital(
      `give ${say.thing(piece)} the shape of what it lies under there, or draft it again from the pattern as it is now.`,
    ),
  }),
  'edge-kinked': ({ edge, next, count, angleDeg, alongMm, from }, say) => {
    const kink = count === 1 ? 'a kink' : `${say.number(count, 0)} kinks, the sharpest`;
    const place =
      alongMm === undefined || from === undefined ? '' : `, ${say.length(alongMm)} from ${say.thing(from)}`;
    return {
      message: capital(
        next === undefined
          ? `${say.thing(edge)} has ${kink} of ${say.angle(angleDeg)}${place}.`
          : `${say.thing(edge)} runs on as ${say.thing(next)} with a kink of ${say.angle(angleDeg)}.`,
      ),
      remedy: `Redraw ${next === undefined ? 'it' : 'both'} with a fair line: ${trueStep(next === undefined ? [edge] : [edge, next])}.`,
    };
  },
  'edge-turns-back': ({ edge, spurMm, alongMm, from }, say) => ({
    message: capital(
      `${say.thing(edge)} goes out by ${say.slight(spurMm)} and comes back, ${say.length(alongMm)} from ${say.thing(from)}: a spur, about which the cutting line may run to a point.`,
    ),
    remedy: 'Delete the point at its tip in the drawing.',
  }),
  'edge-ends-hooked': ({ edge, hookMm, beside }, say) => ({
    message: capital(
      `${say.thing(edge)} ends beside ${say.thing(beside)} in a hook of ${say.slight(hookMm)}, and the corner of the cutting line goes by it.`,
    ),
    remedy: 'Delete the point next to that corner in the drawing.',
  }),
  'edge-stepped': ({ edge, stepMm, alongMm, from }, say) => ({
    message: capital(
      `${say.thing(edge)} steps by ${say.slight(stepMm)}, ${say.length(alongMm)} from ${say.thing(from)}.`,
    ),
    remedy: `Redraw it with a fair line: ${trueStep([edge])}.`,
  }),
  'fold-corner-not-square': ({ edge, angleDeg, amountMm, dips }, say) => ({
    message: capital(
      `${say.thing(edge)} meets the fold at ${say.angle(angleDeg)} instead of ${say.angle(90)}: opened out, it ${dips ? 'dips' : 'comes to a point'} at the centre.`,
    ),
    remedy: `Draw it square to the fold, about ${say.slight(amountMm)} ${dips ? 'on' : 'off'} there: ${trueStep([edge])}.`,
  }),
  'small-differences': ({ kinks, sharpestDeg, edges, seams, mostMm }, say) => {
    const seen = [
      ...(kinks === 0
        ? []
        : [
            `${kinks === 1 ? 'a kink' : `${say.number(kinks, 0)} kinks`} of ${say.angle(sharpestDeg)}${kinks === 1 ? '' : ' at most'} (${say.list(edges.map(e => say.thing(e)))})`,
          ]),
      ...(seams.length === 0
        ? []
        : [
            `${seams.length === 1 ? 'a difference' : 'differences'} of ${say.slight(mostMm)}${seams.length === 1 ? '' : ' at most'} between the two sides of ${say.things(seams)}`,
          ]),
    ];
    return {
      message: `Small enough to sew as it is: ${say.list(seen)}.`,
      remedy:
        kinks === 0 ? 'Share the difference out along the seam.' : `To smooth the kinks: ${trueStep(edges)}.`,
    };
  },
  'opening-longer-than-edge': ({ edge, openingMm, edgeMm }, say) => ({
    message: `The opening of ${say.length(openingMm)} is longer than ${say.thing(edge)}, which has ${say.length(edgeMm)}.`,
    remedy: 'Give a length within the edge; an opening over two edges is given for each.',
  }),
  'piece-in-no-seam': ({ piece }, say) => ({
    message: `No seam takes in ${say.thing(piece)}: is one missing?`,
    remedy:
      'List under "seams" what it is sewn to; or, if it is laid on like a patch pocket, draw its place there with data-line="placement".',
  }),
  'edges-left-raw': ({ role, edges }, say) => ({
    message: `Nothing is sewn to ${say.list(edges.map(e => say.thing(e)))}, and nothing finishes ${edges.length === 1 ? 'it: it' : 'them: they'} would be left raw.`,
    remedy: rawRemedy(role, edges, say),
  }),
  'lining-edges-loose': ({ edges }, say) => ({
    message: `No seam takes in ${say.list(edges.map(e => say.thing(e)))}: ${edges.length === 1 ? 'it' : 'they'} would hang loose within the garment.`,
    remedy:
      'List under "seams" what is sewn to them, such as the edge of the garment that they lie under; or write in the drawing how they are finished, such as data-finish="turned once".',
  }),
  'ends-hang-loose': ({ things, guessed }, say) => ({
    message: `${capital(say.things(things))} ${things.length === 1 ? (guessed ? 'looks like a tie or strap and hangs' : 'hangs') : guessed ? 'look like ties or straps and hang' : 'hang'} loose: on children's clothes ties, cords and loops can catch and strangle.`,
    remedy:
      'None at the hood or neck of a child; local rules decide the rest. Sewn on at both ends, or left out, nothing hangs.',
  }),
  'no-seams': () => ({
    message: 'No seams are listed, so none could be walked: whether the pieces fit together was not checked.',
    remedy:
      'List under "seams" what is sewn to what, such as side: { a: front.side from armhole, b: back.side from armhole }.',
  }),
};

type Facts<C extends keyof MeasureTellings> = MeasureTellings[C];

function rawRemedy(role: Facts<'edges-left-raw'>['role'], edges: readonly Thing[], say: Say): string {
  const face = stepText('draft facing', {
    name: `${role} facing`,
    along: edges.map(edgeText),
    width: typedLength(60, say.unit),
  });
  const it = edges.length === 1 ? 'it' : 'them';
  if (role === 'hem' || role === 'wrist')
    return `If it is turned up, write data-kind="hem" on it in the drawing; or face ${it}: ${face}.`;
  return `Face, bind or band ${it}: ${face}. Or write in the drawing how it is finished, such as data-finish="bound".`;
}

const fitted = {
  eased: 'eased in',
  gathered: 'gathered in',
  stretched: 'stretched',
  pleated: 'pleated in',
} as const;

function mismatch(
  { longer, shorter, aMm, bMm, offMm, easeWantedMm, takenUp }: Facts<'seam-does-not-match'>,
  say: Say,
): string {
  const [longMm, shortMm] = offMm > 0 ? [aMm, bMm] : [bMm, aMm];
  const off = say.slight(Math.abs(offMm));
  const verb = longer.length > 1 ? 'are' : 'is';
  const figures = `${say.length(longMm)} against ${say.length(shortMm)}`;
  // The side that was to be the longer one is the one that lacks.
  if (Math.abs(easeWantedMm) >= 0.05 && Math.sign(offMm) !== Math.sign(easeWantedMm)) {
    const is = shorter.length > 1 ? 'are' : 'is';
    const by = say.slight(Math.abs(longMm - shortMm));
    return capital(
      `${say.things(shorter)} ${is} to be ${say.slight(Math.abs(easeWantedMm))} longer than ${say.things(longer)}, and ${is} ${by} ${shortMm > longMm ? 'longer' : 'shorter'}: ${say.length(shortMm)} against ${say.length(longMm)}; ${off} missing.`,
    );
  }
  return capital(
    Math.abs(easeWantedMm) < 0.05
      ? `${say.things(longer)} ${verb} ${off} longer than ${say.things(shorter)}: ${figures}.`
      : `${say.things(longer)} ${verb} ${off} too long for ${say.things(shorter)}, with the ${say.slight(Math.abs(easeWantedMm))} to be ${fitted[takenUp]} allowed for: ${figures}.`,
  );
}

/** Whether side a is the one that the sentence names first. */
const isNamedFirst = ({ offMm, easeWantedMm }: Facts<'seam-does-not-match'>): boolean =>
  Math.abs(easeWantedMm) < 0.05 ? offMm > 0 : easeWantedMm > 0;

function lyingBetween({ from, to }: Facts<'seam-does-not-match'>, say: Say): string {
  if (from === undefined || to === undefined) return '';
  return ` The difference lies between ${placeWords(from, say)} and ${placeWords(to, say)}.`;
}

function countedOtherwise(facts: Facts<'seam-does-not-match'>, say: Say): string {
  const { counted, otherAMm, otherBMm } = facts;
  if (otherAMm === undefined || otherBMm === undefined) return '';
  const [first, second] = isNamedFirst(facts) ? [otherAMm, otherBMm] : [otherBMm, otherAMm];
  const figures = `${say.length(first)} and ${say.length(second)}`;
  return counted === 'garment'
    ? ` That counts every piece as often as it is cut; each once, they measure ${figures}.`
    : ` Counted as often as the pieces are cut, they measure ${figures}.`;
}

function mismatchRemedy(facts: Facts<'seam-does-not-match'>, say: Say): string {
  const {
    seam,
    shorten,
    shortenTimes,
    lengthen,
    lengthenTimes,
    offMm,
    differenceMm,
    easeWantedMm,
    redraft,
    cap,
    layered,
    layers,
    folded,
  } = facts;
  const by = (times: number): string =>
    `${say.slight(Math.abs(offMm) / times)}${times > 1 ? ` (it is sewn there ${say.number(times, 0)} times)` : ''}`;
  const ways = [
    ...(redraft === undefined ? [] : [`draft ${say.thing(redraft)} again for the edges as they are now`]),
    `shorten ${say.thing(shorten)} by ${by(shortenTimes)}`,
    `lengthen ${say.thing(lengthen)} by ${by(lengthenTimes)}`,
    ...(cap === undefined
      ? []
      : [
          `let the height of the cap make it up: ${capWithEase(cap, seam, typedLength(easeWantedMm, say.unit))}`,
        ]),
  ];
  const ease = typedLength(differenceMm, say.unit);
  const meant = `If the difference is meant, say so: ${stepText('set seam', { seam: seam.seam ?? '', ease })}.`;
  const lying =
    folded !== undefined
      ? `If ${say.thing(folded)} is folded along its length, draw the fold along its middle, with data-line="fold": then the sides agree. `
      : layered === undefined || layers === undefined
        ? ''
        : layers === 1
          ? `If ${say.thing(layered)} lies single there, leave out its data-layers: then the sides agree. `
          : `If ${say.number(layers, 0)} of ${say.thing(layered)} lie on one another, give it data-layers="${layers}": then the sides agree. `;
  return `${lying}${capital(ways.join(', or '))}. ${meant}`;
}

const easeBefore = (easeMm: number, say: Say): string =>
  Math.abs(easeMm) < 0.05 ? '' : `with the ${say.slight(Math.abs(easeMm))} of ease before them allowed for, `;

const placeWords = (place: 'beginning' | 'end' | Thing, say: Say): string =>
  typeof place === 'string' ? `the ${place} of the seam` : notchWords(place, say);

/** "the double notch on the armhole of the back", "the notch "top" on the cap of the sleeve". */
function notchWords({ notch = '', ...edge }: Thing, say: Say): string {
  const isStyle = ['single', 'double', 'triple'].includes(notch);
  return `the ${isStyle ? `${notch} notch` : `notch ${say.written(notch)}`} on ${say.thing(edge)}`;
}

const isSame = (one: Thing, other: Thing): boolean => one.piece === other.piece && one.edge === other.edge;

const both = (first: Thing, second: Thing, say: Say): string =>
  say.things(isSame(first, second) ? [first] : [first, second]);

const trueStep = (edges: readonly Thing[]): string =>
  stepText('true', { edges: [...new Set(edges.map(edgeText))] });
