import type { AlterSentences } from '@paperhinge/alter';
import type { OperationSentences } from '@paperhinge/alter/sayings';
import { capital } from '../capital.js';
import type { Say, Sentences } from '../catalogue.js';

/** What each step did. */
export const did: Sentences<OperationSentences & Pick<AlterSentences, 'said'>> = {
  said: ({ text }) => text,
  'closed-dart': ({ dart, into, wholeDeg, closedDeg, sharePercent, alongMm, openedMm }, say) => {
    const how =
      sharePercent === 100
        ? `(${say.angle(wholeDeg)}) was closed`
        : `was closed by ${say.percent(sharePercent)} (${say.angle(closedDeg)} of ${say.angle(wholeDeg)})`;
    return capital(
      `${say.thing(dart)} ${how} into ${say.thing(into)}, slashed ${say.length(alongMm)} from its start; it opened by ${say.length(openedMm)}.`,
    );
  },
  'moved-dart': ({ dart, about, to, angleDeg, alongMm, openedMm, backMm }, say) =>
    capital(
      `${say.thing(dart)} (${say.angle(angleDeg)}) was moved to ${say.thing(to)}, ${say.length(alongMm)} from its start, ` +
        `turning about ${about ? say.thing(about) : 'its point'}; it is ${say.length(openedMm)} wide there` +
        `${backMm > 0 ? `, its point ${say.length(backMm)} back` : ''}.`,
    ),
  shortened: ({ pieces, at, byMm }, say) =>
    capital(
      `${say.things(pieces)} ${pieces.length > 1 ? 'were' : 'was'} ${byMm < 0 ? 'lengthened' : 'shortened'} by ${say.length(Math.abs(byMm))} at ${at === 'hem' ? 'the hem' : say.thing({ line: at })}.`,
    ),
  spread: (
    { piece, from, to, hinge, overlapped, slashes, byMm, angleDeg = 0, fromMm, toMm, ...more },
    say,
  ) => {
    const size = byMm === undefined ? say.angle(angleDeg) : say.length(byMm);
    const opened = hinge === 'from' ? to : from;
    const where =
      slashes === 1
        ? `slashed ${say.length(fromMm[0]!)} along ${say.thing(from)} to ${say.length(toMm[0]!)} along ${say.thing(to)}`
        : `slashed at ${slashes} places from ${say.thing(from)} to ${say.thing(to)}`;
    const how =
      hinge === 'none'
        ? `${overlapped ? 'overlapped' : 'spread'} evenly by ${size}`
        : `${overlapped ? 'overlapped' : 'spread'} by ${size} at ${say.thing(opened)}, ${more.otherEndMm === undefined ? 'hinged' : `${say.length(more.otherEndMm)}`} at the other end`;
    const taken = more.into === undefined ? '' : `, taken up in ${more.into}`;
    return capital(`${say.thing(piece)} was ${where} and ${how}${taken}.`);
  },
  'took-in': (facts, say) => movedSeam('taken in', facts, say),
  'let-out': (facts, say) => movedSeam('let out', facts, say),
  'share-of-seam': ({ sharePercent, from }, say) =>
    from === undefined && (sharePercent === 0 || sharePercent === 100)
      ? sharePercent === 0
        ? 'its beginning'
        : 'its end'
      : `${say.percent(sharePercent)} of the way${from === undefined ? '' : ` from ${end(from, say)}`}`,
  'distance-on-seam': ({ alongMm, from }, say) =>
    `${say.length(alongMm)} from ${from === undefined ? 'its beginning' : end(from, say)}`,
  'recut-neckline': ({ piece, shape, depthMm = 0, halfWidthMm, shoulderMm, line }, say) => {
    if (line) return capital(`${say.thing(piece)} was cut along ${say.thing(line)} for its new neckline.`);
    const width = halfWidthMm === undefined ? '' : ` and ${say.length(halfWidthMm)} to each side`;
    const kind = {
      'inset V': 'an inset V',
      V: 'a V',
      round: 'a round',
      square: 'a square',
      boat: 'a boat',
      scoop: 'a scoop',
      sweetheart: 'a sweetheart',
      drawn: 'a',
    }[shape];
    return capital(
      `${say.thing(piece)} has a new neckline, ${kind === 'a' ? '' : `${kind} `}${say.length(depthMm)} deep${width}${shoulderMm === undefined ? '' : `; ${say.length(shoulderMm)} of its shoulder are left`}.`,
    );
  },
  'finish-inset': ({ piece }, say) => `Finish the V inset of ${say.thing(piece)} to its point.`,
  trued: ({ edges }, say) => edges.map(edge => capital(say.saying(edge))).join(' '),
  'trued-edge': ({ edge, movedMm }, say) =>
    `${say.thing(edge)} was trued; it moved by ${say.slight(movedMm)} at most.`,
  'trued-nothing': ({ edge, left }, say) =>
    `${say.thing(edge)} was left as it was${left ? '' : ': it is fair already'}.`,
  'set-allowance': ({ edges, count, toMm, formerMm }, say) => {
    const which =
      typeof edges === 'string' ? edges : count > mostNamed ? `${count} edges` : say.things(edges);
    const before = formerMm.filter(mm => mm !== toMm).map(say.allowance);
    return capital(
      `the allowance of ${which} is ${say.allowance(toMm)} now${before.length === 0 ? '' : `; it was ${say.list(before)}`}.`,
    );
  },
  'set-seam': ({ seam, easeMm, easePercent, takenUp, toleranceMm }, say) => {
    const ease =
      easeMm === undefined
        ? easePercent === undefined
          ? ''
          : ` with ${say.percent(easePercent)} of ease`
        : ` with ${say.length(easeMm)} of ease`;
    const how = takenUp === undefined ? '' : `, the longer side ${takenUp} to fit`;
    const near = toleranceMm === undefined ? '' : `; its sides may differ by ${say.slight(toleranceMm)}`;
    return capital(`${say.thing(seam)} is sewn${ease}${how}${near}.`);
  },
  'added-notches': ({ seam, alongMm, style }, say) =>
    capital(
      `${say.thing(seam)} was marked on both sides with ${alongMm.length === 1 ? `a ${style} notch` : `${alongMm.length} ${style} notches`}, ` +
        `${say.list(alongMm.map(say.length))} from its beginning.`,
    ),
  unfolded: ({ piece, fold }, say) =>
    capital(
      `${say.thing(piece)} was opened out about ${say.thing(fold)} into one whole piece; its mirrored edges are called "... other".`,
    ),
  refreshed: ({ pieces }, say) =>
    pieces.length === 0
      ? 'Nothing was drafted again.'
      : capital(`${say.things(pieces)} ${pieces.length > 1 ? 'were' : 'was'} drafted again.`),
  'removed-piece': ({ piece, seams }, say) =>
    capital(
      `${say.thing(piece)} was removed${seams === 0 ? '' : `, and ${seams === 1 ? 'the seam' : `${seams} seams`} it was one side of`}.`,
    ),
};

/** How many edges a sentence names before it only counts them. */
const mostNamed = 4;

const end = (from: string, say: Say): string =>
  from === 'start' ? 'its beginning' : from === 'end' ? 'its end' : `the ${say.name(from)}`;

function movedSeam(
  what: string,
  { seam, byMm, eachMm, edges, inLimb, from, to, between }: OperationSentences['took-in'],
  say: Say,
): string {
  const [by, second] = byMm;
  const [each] = eachMm;
  const whole = `${say.thing(seam)} was ${what} by ${say.length(by!)} in ${inLimb ? 'each sleeve or leg' : 'the whole garment'}`;
  const share = `${say.length(each!)} on each of ${edges} edges`;
  if (between)
    return capital(
      `${whole} half way between ${say.list(between.map(say.saying))}, ${share}, and by nothing there.`,
    );
  const start = from ? say.saying(from) : 'its beginning',
    finish = to ? say.saying(to) : 'its end';
  if (second !== undefined)
    return capital(
      `${whole} at ${start} and by ${say.length(second)} at ${finish}, shared by ${edges} edges.`,
    );
  if (!from && !to) return capital(`${whole}: ${share}.`);
  return capital(`${whole} at ${start}, ${share}, tapering to nothing at ${finish}.`);
}
