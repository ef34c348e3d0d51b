import { type Pattern, type Piece, type Point, pieceNamed } from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { type EdgePosition, resolvePosition, withPiece } from '@paperhinge/geometry/pattern';
import {
  type Affine,
  compose,
  distance,
  identity,
  leftOf,
  rotation,
  scale,
  subtract,
  translation,
  unit,
} from '@paperhinge/geometry/plane';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import type { Cut } from '../hinge/cut.js';
import { inDegrees } from '../hinge/degrees.js';
import { holdingSection } from '../hinge/holding.js';
import { openingFindings } from '../hinge/opening-findings.js';
import { type CutPiece, cutApart } from '../hinge/sections.js';
import { swing } from '../hinge/swing.js';
import * as field from '../verb/fields.js';
import { perform, verbOf } from '../verb/verb.js';
import { refusal, saying } from './tellings.js';

/** The edge where slashes begin or end, and where on it. */
export interface SpreadEnd {
  readonly edge: string;
  /** One place (one slash) or a range [a, b] (several); absent = the middle, or the whole edge. */
  readonly at?: EdgePosition | readonly [EdgePosition, EdgePosition];
}
/** Slash a piece from one edge to another and spread, or overlap, it. */
export interface Spread {
  readonly piece: string;
  readonly from: SpreadEnd;
  readonly to: SpreadEnd;
  /** Total on the piece as drawn: mm of chord on the edge that opens. Negative overlaps. Or `angle`. */
  readonly by?: number;
  /** rad, instead of `by`. */
  readonly angle?: number;
  /** Where the paper holds together; `none`: the sides part in parallel. Default `to`. */
  readonly hinge?: 'from' | 'to' | 'none';
  /** Default 1. */
  readonly slashes?: number;
}
/** A spread with its usual values. */
type WholeSpread = Spread & Required<Pick<Spread, 'hinge' | 'slashes'>>;

/**
 * Slash and spread, or overlap where the amount is negative. Each of n slashes takes 1/n of the total: hinged, it
 * turns by 2 asin(by / 2nR), R being the slash's length, so that the chord on the edge that opens is by/n;
 * unhinged, each strip moves by by/n square to the straight line of its slash. The strip with the fold, else the
 * centre, else the grain stays; the others follow one another outwards from it.
 *
 * @throws PatternError `unknown-piece`, `unknown-edge`, `spread-too-wide`, `spread-needs-length`, `range-needed`,
 *   `slash-leaves-piece`, `slash-crosses-dart`, `slashes-cross`, `slash-too-short`, `overlap-too-wide`,
 *   `outline-tangled`, and those of `perform` and `resolvePosition`
 */
export const spread = (pattern: Pattern, parameters: Spread): Alteration =>
  perform(spreadVerb, pattern, parameters);

/** Each is a cut through the whole piece: more would only slow it down. */
const mostSlashes = 200;

const end = () => field.group<SpreadEnd>({ edge: field.edge(), at: field.optional(field.places('edge')) });

export const spreadVerb = verbOf<Spread>()({
  verb: 'spread',
  does: 'Slashes the pattern from one edge to another and spreads it, hinged at one end or in parallel; a negative amount overlaps it.',
  fields: {
    piece: field.piece(),
    from: end(),
    to: end(),
    by: field.optional(field.signedLength()),
    angle: field.optional(field.angle()),
    hinge: field.usually(field.choice('from', 'to', 'none'), 'to'),
    slashes: field.usually(field.count(mostSlashes), 1),
  },
  oneOf: [['by', 'angle']],
  sentence:
    'Slash the {piece} from the {from.edge}[ at {from.at}] to the {to.edge}[ at {to.at}] and spread it [by {by}][by {angle}][, in {slashes} slashes][, hinge: {hinge}]',
  startsAt: { edge: ['piece', 'from'], piece: ['piece'] },
  example: {
    pattern: 'woven-shift',
    step: {
      piece: 'back',
      from: { edge: 'hem', at: '1/2' },
      to: { edge: 'shoulder', at: '1/2' },
      by: 60,
      hinge: 'to',
    },
  },
  alter: spreadOut,
});

function spreadOut(pattern: Pattern, parameters: WholeSpread): Alteration {
  const piece = pieceNamed(pattern, parameters.piece);
  return locating({ piece: piece.name }, () => {
    const cuts = slashesOf(piece, parameters);
    const cutPiece = cutApart(piece, cuts);
    const holding = holdingSection(cutPiece);
    const swung = swing(cutPiece, motionsFrom(cutPiece, holding, parameters), holding);
    return {
      pattern: withPiece(pattern, swung.piece),
      became: swung.became,
      did: whatItDid(parameters, cuts, turnsOf(cutPiece, parameters)),
      findings: openingFindings(piece.name, swung),
    };
  });
}

function slashesOf(piece: Piece, { from, to, slashes, hinge }: WholeSpread): readonly Cut[] {
  const starts = placesOn(piece, from, slashes, hinge === 'from').sort((a, b) => a - b);
  // Clockwise along one edge is anticlockwise along the other: first to last, no two slashes cross.
  const ends = placesOn(piece, to, slashes, hinge === 'to').sort((a, b) => b - a);
  return starts.map((along, i) => ({
    from: { edge: from.edge, along },
    to: { edge: to.edge, along: ends[i]! },
  }));
}

/** mm along an edge of each slash's end: slash i of n at a + (b − a) i / (n + 1). */
function placesOn(piece: Piece, { edge, at }: SpreadEnd, slashes: number, hinged: boolean): number[] {
  const resolve = (position: EdgePosition) => resolvePosition(piece, edge, position);
  if (at !== undefined && !isRange(at)) {
    // Several slashes may run to one hinge, but they cannot open at one place.
    if (slashes > 1 && !hinged)
      throw refusal('range-needed', { edge: { piece: piece.name, edge }, slashes }, { edge });
    return Array.from({ length: slashes }, () => resolve(at));
  }
  const [a, b] = at ? at.map(resolve) : [resolve({ share: 0 }), resolve({ share: 1 })];
  return Array.from({ length: slashes }, (_, i) => a! + ((b! - a!) * (i + 1)) / (slashes + 1));
}

const isRange = (at: NonNullable<SpreadEnd['at']>): at is readonly [EdgePosition, EdgePosition] =>
  Array.isArray(at);

const chordOf = ({ courses }: CutPiece, cut: number): readonly [Point, Point] => [
  pathStart(courses[cut]!),
  pathEnd(courses[cut]!),
];

/** rad by which each slash turns; 0 for unhinged ones. */
function turnsOf(cutPiece: CutPiece, parameters: WholeSpread): readonly number[] {
  const { by = 0, angle, hinge, slashes, from, to } = parameters;
  return cutPiece.cuts.map((_, cut) => {
    if (hinge === 'none') return 0;
    if (angle !== undefined) return angle / slashes;
    const radius = distance(...chordOf(cutPiece, cut));
    const share = by / (2 * slashes * radius);
    if (Math.abs(share) <= 1) return 2 * Math.asin(share);
    const edge = hinge === 'to' ? from.edge : to.edge;
    throw refusal('spread-too-wide', { slashMm: radius, byMm: Math.abs(by / slashes) }, { edge });
  });
}

/** The motion across each slash: of the section to its left, if the one to its right stays. */
function steps(cutPiece: CutPiece, parameters: WholeSpread): readonly Affine[] {
  const { by = 0, angle, hinge, slashes } = parameters;
  if (hinge === 'none' && angle !== undefined) throw refusal('spread-needs-length', {});
  return turnsOf(cutPiece, parameters).map((turn, cut) => {
    const [from, to] = chordOf(cutPiece, cut);
    // To the left, looking from `from` to `to`, lies what follows along the edge at `from`: moving it that way opens.
    if (hinge === 'to') return rotation(turn, to);
    if (hinge === 'from') return rotation(-turn, from);
    return translation(scale(leftOf(unit(subtract(to, from))), by / slashes));
  });
}

/** Motions of all sections, outwards from the one that stays: each follows its neighbour and adds its own slash. */
function motionsFrom(cutPiece: CutPiece, holding: number, parameters: WholeSpread): readonly Affine[] {
  const across = steps(cutPiece, parameters);
  const motions: (Affine | undefined)[] = cutPiece.sections.map((_, i) =>
    i === holding ? identity : undefined,
  );
  const visit = (section: number) => {
    for (const [cut, { left, right }] of cutPiece.beside.entries()) {
      if (left === right || (left !== section && right !== section)) continue;
      const next = left === section ? right : left;
      if (motions[next]) continue;
      const step = left === section ? inverse(across[cut]!) : across[cut]!;
      motions[next] = compose(step, motions[section]!);
      visit(next);
    }
  };
  visit(holding);
  return motions.map(motion => motion ?? identity);
}

/** Of a rigid motion: its linear part is orthogonal, so its transpose turns back. */
function inverse({ a, b, c, d, e, f }: Affine): Affine {
  return { a, b: c, c: b, d, e: -(a * e + b * f), f: -(c * e + d * f) };
}

function whatItDid(
  { piece, from, to, by, angle = 0, hinge, slashes }: WholeSpread,
  cuts: readonly Cut[],
  turns: readonly number[],
) {
  const along = (of: 'from' | 'to') =>
    cuts.flatMap(({ [of]: place }) => ('along' in place ? [place.along] : []));
  return saying('spread', {
    piece: { piece },
    from: { edge: from.edge },
    to: { edge: to.edge },
    hinge,
    overlapped: (by ?? angle) < 0,
    slashes,
    ...(by === undefined ? { angleDeg: inDegrees(Math.abs(angle)) } : { byMm: Math.abs(by) }),
    fromMm: along('from'),
    toMm: along('to'),
    turnsDeg: turns.map(turn => inDegrees(Math.abs(turn))),
  });
}
