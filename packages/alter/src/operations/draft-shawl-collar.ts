import {
  type Edge,
  type EdgeRef,
  type Pattern,
  type Piece,
  type PieceLine,
  pathLength,
  polyline,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { fairCurve, joined, reversedPath } from '@paperhinge/geometry/paths';
import { type EdgePosition, withPiece } from '@paperhinge/geometry/pattern';
import { add, lerp, scale } from '@paperhinge/geometry/plane';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import { halfNeck } from '../derive/half-neck.js';
import { requireFreeEdgeName, requireFreeSeamName } from '../dividing/names-free.js';
import { distinctEdges } from '../edge-refs.js';
import { type LaidBack, laidBack } from '../lapels/laid-back.js';
import { type RollLine, rollLine, rollLineName, withBreakMarked, withLapel } from '../lapels/roll-line.js';
import { refusal, saying } from '../lapels/tellings.js';
import { type Run, recomposed } from '../moved-edges/composed.js';
import { requireSimple } from '../moved-edges/tidy.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

/** Draw a shawl collar on to a front. Lengths in mm. */
export interface DraftShawlCollar {
  /** What its seams are called: with the back neck, and at its own centre back. */
  readonly name: string;
  readonly piece: string;
  readonly neck: string;
  /** The front edge that meets the neck. */
  readonly edge: string;
  /** The edges of the back neck, which it is sewn to. */
  readonly along: readonly EdgeRef[];
  /** Where on the front edge the collar begins to roll. */
  readonly break: EdgePosition;
  /** How high it stands at the centre back; default 28. */
  readonly stand?: number;
  /** From its neck edge to its outer edge at the centre back; default 75. */
  readonly width?: number;
  /** How far its end at the centre back is swung out, so that it lies round the shoulders; default 25. */
  readonly lay?: number;
  /** From the roll line to the outer edge where it is widest; default 75. */
  readonly lapel?: number;
}

/**
 * Draws a shawl collar on to a front, in one with it. On paper: the roll line from the shoulder, run on beyond the neck
 * by the stand less 5 mm, to the break point; from the neck's end, parallel to it, half the back neck; that line swung
 * out at its far end; the centre back square to it; the outer edge fair from the front edge through the widest place of
 * the lapel, square to the centre back. The front neck goes; all else of the front stays. The front is the under-collar
 * then: its upper side is drawn by `draft front facing`. Source: common practice, no source.
 *
 * @throws PatternError those of `rollLine`; `neck-not-whole`, `edges-do-not-join`, `edges-not-halved`, `lapel-crosses`,
 *   `edge-name-taken`, `seam-name-taken`; those of `perform`
 */
export const draftShawlCollar = (pattern: Pattern, parameters: DraftShawlCollar): Alteration =>
  perform(draftShawlCollarVerb, pattern, parameters);

export const draftShawlCollarForm = formOf<DraftShawlCollar>()({
  verb: 'draft shawl collar',
  does: 'Draws a shawl collar on to a front, in one with it, seamed at the centre back and sewn to the back neck.',
  fields: {
    name: field.newName(),
    piece: field.piece(),
    neck: field.edge(),
    edge: field.edge(),
    along: field.edgesOfPieces(),
    break: field.place('edge'),
    stand: field.usually(field.size(), 28),
    width: field.usually(field.size(), 75),
    lay: field.usually(field.length(), 25),
    lapel: field.usually(field.size(), 75),
  },
  leaves: ({ name, piece }) => ({ changed: [piece], seams: [name, `${name} centre back`] }),
  sentence:
    'Draw a shawl collar "{name}" on to the {piece} between its {neck} and its {edge}, for the back neck {along}, breaking at {break}[, standing {stand}][, {width} deep at the centre back][, laid back by {lay}][, the lapel {lapel} wide]',
  startsAt: { corner: ['piece', 'neck'], edge: ['piece', 'edge'] },
  example: {
    pattern: 'shirt',
    after: [{ 'remove piece': { piece: 'collar' } }, { 'remove piece': { piece: 'stand' } }],
    step: {
      name: 'shawl collar',
      piece: 'front',
      neck: 'neck',
      edge: 'front-edge',
      along: ['yoke.neck'],
      break: '280 mm from neck',
    },
  },
});
export const draftShawlCollarVerb = /* @__PURE__ */ verbFrom(draftShawlCollarForm, drawnShawl);

type Whole = Required<DraftShawlCollar>;

/** The edges that take the place of the front's neck, from the break point to the shoulder. */
const own = { outer: 'lapel', centreBack: 'collar-centre-back', neck: 'collar-neck' } as const;

function drawnShawl(pattern: Pattern, wish: Whole): Alteration {
  const where = { piece: wish.piece },
    neck = { ...where, edge: wish.neck };
  return locating(where, () => {
    const roll = rollLine(pattern, wish);
    for (const name of Object.values(own)) requireFreeEdgeName(roll.piece, name);
    for (const name of [wish.name, centreBackSeam(wish)]) requireFreeSeamName(pattern, name);
    const back = backNeck(pattern, wish);
    const laid = laidBack(roll.neckPoint, roll, { ...wish, lengthMm: back.lengthMm });
    const outer = fairCurve(
      { point: roll.breakPoint, direction: roll.upFront },
      { point: laid.outer, direction: laid.way },
      tolerances.fitTolerance,
      [add(lerp(roll.breakPoint, roll.top, widest), scale(roll.out, wish.lapel))],
    );
    const drawn = recomposed(roll.piece, withLapel(roll, runsOf(roll, laid, outer)));
    const piece = withRollLine(drawn.piece, roll, laid, wish.stand);
    requireSimple(piece, () => refusal('lapel-crosses', { piece: where }, where));
    return {
      pattern: withSeams(withPiece(pattern, piece), wish, roll.forwards, back.runs),
      became: {
        ...drawn.became,
        things: [...drawn.became.things, { was: neck, now: { ...where, line: rollLineName } }],
      },
      did: saying('grown-shawl-collar', {
        piece: where,
        neckMm: back.lengthMm,
        layMm: wish.lay,
        widthMm: wish.width,
        outerMm: pathLength(outer),
      }),
      findings: drawn.findings,
    };
  });
}

/** Share of the roll line from the break point up at which a shawl's lapel is widest. Common practice, no source. */
const widest = 0.6;

const centreBackSeam = ({ name }: DraftShawlCollar): string => `${name} centre back`;

/**
 * Half the back neck, from the centre back to the shoulder.
 * @throws PatternError `neck-not-whole` where the front's neck does not follow it
 */
function backNeck(pattern: Pattern, { name, piece, neck, along }: Whole) {
  const ref = { piece, edge: neck };
  const half = halfNeck(pattern, distinctEdges([ref, ...along]), name);
  const last = half.lying.at(-1)!;
  const isFront = ({ piece: p, edge }: typeof last) => p === piece && edge === neck;
  if (!isFront(last) || half.lying.filter(isFront).length !== 1 || half.lying.length < 2)
    throw refusal('neck-not-whole', { neck: ref, along: along.map(one => ({ ...one })) }, ref);
  return { lengthMm: half.lengthMm - last.lengthMm, runs: half.runs.slice(0, -1) };
}

function runsOf({ neck }: RollLine, laid: LaidBack, outer: ReturnType<typeof fairCurve>): readonly Run[] {
  const { roleGuessed: _, opening: __, ...rest } = neck.edge;
  const edge = (name: string, role: Edge['role']): Edge => ({ ...rest, name, role: role!, corners: {} });
  return [
    { type: 'run', edge: edge(own.outer, 'opening'), path: outer },
    {
      type: 'run',
      edge: edge(own.centreBack, 'centre'),
      path: reversedPath(laid.centreBack),
    },
    { type: 'run', edge: edge(own.neck, 'neck'), path: reversedPath(laid.neck) },
  ];
}

/** The roll line from the break point up to the stand's height at the centre back. */
function withRollLine(piece: Piece, roll: RollLine, laid: LaidBack, stand: number): Piece {
  const { breakPoint, top } = roll;
  const { nape, outer } = laid;
  const share = stand / Math.hypot(outer.x - nape.x, outer.y - nape.y);
  const upper = fairCurve(
    { point: top, direction: { x: top.x - breakPoint.x, y: top.y - breakPoint.y } },
    { point: lerp(nape, outer, Math.min(1, share)), direction: laid.way },
  );
  const drawn: PieceLine = {
    kind: 'fold',
    name: rollLineName,
    path: joined(polyline(breakPoint, top), upper),
  };
  return withBreakMarked(
    { ...piece, lines: [...piece.lines.filter(l => l.name !== drawn.name), drawn] },
    roll,
  );
}

/** Sewn to the back neck, and to its other half at the centre back. */
function withSeams(
  pattern: Pattern,
  wish: Whole,
  forwards: boolean,
  back: ReturnType<typeof backNeck>['runs'],
): Pattern {
  const run = (edge: string) => [{ piece: wish.piece, edge, reversed: !forwards }];
  const neck = { name: wish.name, a: run(own.neck), b: back, ease: { mm: 0 } };
  const centre = {
    name: centreBackSeam(wish),
    a: run(own.centreBack),
    b: run(own.centreBack),
    ease: { mm: 0 },
  };
  return { ...pattern, seams: [...pattern.seams, neck, centre] };
}
