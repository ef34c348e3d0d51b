import {
  type Affine,
  compose,
  distance,
  type EdgePosition,
  identity,
  leftOf,
  locating,
  type Pattern,
  PatternError,
  type Piece,
  type Point,
  pathEnd,
  pathStart,
  pieceNamed,
  resolvePosition,
  rotation,
  scale,
  subtract,
  translation,
  unit,
  withPiece,
} from '@paperhinge/geometry';
import type { Alteration } from '../alteration.js';
import type { Cut } from '../hinge/cut.js';
import { holdingSection } from '../hinge/holding.js';
import { openingFindings } from '../hinge/opening-findings.js';
import { type CutPiece, cutApart } from '../hinge/sections.js';
import { swing } from '../hinge/swing.js';
import { degrees, millimetres } from '../hinge/wording.js';

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
  /** Total on the piece as drawn: mm of chord on the edge that opens, or rad. Negative overlaps. */
  readonly amount: { readonly by: number } | { readonly angle: number };
  readonly hinge: 'from' | 'to' | 'none';
  readonly slashes: number;
}

/**
 * Slash and spread, or overlap where the amount is negative. Each of n slashes takes 1/n of the total: hinged, it
 * turns by 2 asin(by / 2nR), R being the slash's length, so that the chord on the edge that opens is by/n;
 * unhinged, each strip moves by by/n square to the straight line of its slash. The strip with the fold, else the
 * centre, else the grain stays; the others follow one another outwards from it.
 *
 * @throws PatternError `unknown-piece`, `unknown-edge`, `spread-too-wide`, `spread-needs-length`, `range-needed`,
 *   `slash-leaves-piece`, `slash-crosses-dart`, `slashes-cross`, `slash-too-short`, `overlap-too-wide`,
 *   `outline-tangled`, and those of `resolvePosition`
 */
export function spread(pattern: Pattern, parameters: Spread): Alteration {
  const piece = pieceNamed(pattern, parameters.piece);
  return locating({ piece: piece.name }, () => {
    const cuts = slashesOf(piece, parameters);
    const cutPiece = cutApart(piece, cuts);
    const holding = holdingSection(cutPiece);
    const swung = swing(cutPiece, motionsFrom(cutPiece, holding, parameters), holding);
    return {
      pattern: withPiece(pattern, swung.piece),
      did: sentence(parameters, cuts, turnsOf(cutPiece, parameters)),
      findings: openingFindings(piece.name, swung),
    };
  });
}

function slashesOf(piece: Piece, { from, to, slashes, hinge }: Spread): readonly Cut[] {
  if (!(Number.isInteger(slashes) && slashes >= 1))
    throw new PatternError('range-needed', {
      message: `A piece cannot be slashed ${slashes} times.`,
      remedy: 'Give a whole number of slashes, one or more.',
    });
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
      throw new PatternError('range-needed', {
        message: `${slashes} slashes cannot all begin at one place of "${edge}".`,
        remedy: `Give a range for "${edge}", such as [1/4, 3/4], or leave its place out.`,
        where: { edge },
      });
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
function turnsOf(cutPiece: CutPiece, { amount, hinge, slashes, from, to }: Spread): readonly number[] {
  return cutPiece.cuts.map((_, cut) => {
    if (hinge === 'none') return 0;
    if ('angle' in amount) return amount.angle / slashes;
    const radius = distance(...chordOf(cutPiece, cut));
    const share = amount.by / (2 * slashes * radius);
    if (Math.abs(share) <= 1) return 2 * Math.asin(share);
    throw new PatternError('spread-too-wide', {
      message: `A slash ${millimetres(radius)} long cannot open by ${millimetres(Math.abs(amount.by / slashes))}.`,
      remedy: 'Spread by less, or make more slashes.',
      where: { edge: hinge === 'to' ? from.edge : to.edge },
    });
  });
}

/** The motion across each slash: of the section to its left, if the one to its right stays. */
function steps(cutPiece: CutPiece, parameters: Spread): readonly Affine[] {
  const { amount, hinge, slashes } = parameters;
  if (hinge === 'none' && 'angle' in amount)
    throw new PatternError('spread-needs-length', {
      message: 'Without a hinge nothing turns, so it cannot be spread by an angle.',
      remedy: 'Give "by" as a length, or name the hinge.',
    });
  return turnsOf(cutPiece, parameters).map((turn, cut) => {
    const [from, to] = chordOf(cutPiece, cut);
    // To the left, looking from `from` to `to`, lies what follows along the edge at `from`: moving it that way opens.
    if (hinge === 'to') return rotation(turn, to);
    if (hinge === 'from') return rotation(-turn, from);
    const by = 'by' in amount ? amount.by : 0;
    return translation(scale(leftOf(unit(subtract(to, from))), by / slashes));
  });
}

/** Motions of all sections, outwards from the one that stays: each follows its neighbour and adds its own slash. */
function motionsFrom(cutPiece: CutPiece, holding: number, parameters: Spread): readonly Affine[] {
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

function sentence(
  { piece, from, to, amount, hinge, slashes }: Spread,
  cuts: readonly Cut[],
  turns: readonly number[],
) {
  const negative = ('by' in amount ? amount.by : amount.angle) < 0;
  const size = 'by' in amount ? millimetres(Math.abs(amount.by)) : degrees(Math.abs(amount.angle));
  const opening = hinge === 'from' ? to.edge : from.edge;
  const how =
    hinge === 'none'
      ? 'parallel'
      : `hinged at ${hinge === 'to' ? to.edge : from.edge}, ${turns.map(t => degrees(Math.abs(t))).join(', ')}`;
  const place = cuts
    .map(c =>
      'along' in c.from && 'along' in c.to
        ? `${millimetres(c.from.along)} to ${millimetres(c.to.along)}`
        : '',
    )
    .join('; ');
  return (
    `${negative ? 'overlapped' : 'spread'} ${piece} by ${size} at ${opening}` +
    `${slashes > 1 ? `, ${size} shared by ${slashes} slashes` : ''}, slashed from ${from.edge} to ${to.edge} (${place}), ${how}`
  );
}
