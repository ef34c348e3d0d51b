import { edgePath, type Pattern, type Piece, pathLength, pieceNamed } from '@paperhinge/geometry';
import { type EdgePosition, resolvePosition, withPiece } from '@paperhinge/geometry/pattern';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import type { Cut } from '../hinge/cut.js';
import { inDegrees } from '../hinge/degrees.js';
import { holdingSection } from '../hinge/holding.js';
import { openingFindings } from '../hinge/opening-findings.js';
import { cutApart } from '../hinge/sections.js';
import { swing } from '../hinge/swing.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { spreadMatching } from './spread-matching.js';
import { motionsFrom, turnsOf } from './spread-motions.js';
import { pleatsFor, takenUp } from './spread-taken-up.js';
import { folds, openEnd, type Spread, type SpreadEnd, type WholeSpread } from './spread-wish.js';
import { refusal, saying } from './tellings.js';

export type { Spread, SpreadEnd } from './spread-wish.js';

/**
 * Slash and spread, or overlap where the amount is negative. Each of n slashes takes 1/n of the total: hinged, it turns
 * by 2 asin(by / 2nR), R being the slash's length, so that the chord on the edge that opens is by/n; unhinged, each
 * strip moves by by/n square to the straight line of its slash. The strip with the fold, else the centre, else the
 * grain stays; the others follow one another outwards from it. With `other end` the end at the hinge opens as well: the
 * strips turn about the point beyond it at which the two openings would come to nothing. With `ratio` the edge that
 * opens becomes so many times as long. What opens may be taken up: `gathers` or `ease` become ease of the edge's seams;
 * pleats and tucks stand in the edge at each slash, laid away from what stays. Source: Armstrong, Patternmaking for
 * Fashion Design (1987), added fullness [memory]. With `matching` each piece that is sewn beside this one, and has
 * edges that answer to both ends (sewn to them, or of the same role), is spread likewise, mirrored across the seam
 * between them.
 *
 * @throws PatternError `unknown-piece`, `unknown-edge`, `spread-too-wide`, `spread-needs-length`, `range-needed`,
 *   `fold-needs-opening`, `pleat-name-taken`, `slash-leaves-piece`, `slash-crosses-dart`, `slashes-cross`,
 *   `slash-too-short`, `overlap-too-wide`, `outline-tangled`, and those of `perform` and `resolvePosition`
 */
export const spread = (pattern: Pattern, parameters: Spread): Alteration =>
  perform(spreadVerb, pattern, parameters);

/** Each is a cut through the whole piece: more would only slow it down. */
const mostSlashes = 200;

const end = () => field.group<SpreadEnd>({ edge: field.edge(), at: field.optional(field.places('edge')) });

export const spreadForm = formOf<Spread>()({
  verb: 'spread',
  does: 'Slashes the pattern from one edge to another and spreads it, hinged at one end or in parallel; a negative amount overlaps it.',
  fields: {
    piece: field.piece(),
    from: end(),
    to: end(),
    by: field.optional(field.signedLength()),
    angle: field.optional(field.angle()),
    ratio: field.optional(field.share({ least: 1, most: 6 })),
    otherEnd: field.optional(field.signedLength()),
    hinge: field.usually(field.choice('from', 'to', 'none'), 'to'),
    slashes: field.usually(field.count(mostSlashes), 1),
    into: field.optional(
      field.choice('ease', 'gathers', 'knife pleats', 'box pleats', 'inverted pleats', 'tucks'),
    ),
    name: field.optional(field.newName()),
    stitched: field.usually(field.length(), 0),
    matching: field.optional(field.yesOrNo()),
  },
  oneOf: [['by', 'angle', 'ratio']],
  lacks: ({ into, name }) => (into !== undefined && into in folds && name === undefined ? 'name' : undefined),
  sentence:
    'Slash the {piece} from the {from.edge}[ at {from.at}] to the {to.edge}[ at {to.at}] and spread it [by {by}][by {angle}][to {ratio} of its length][, and {other end} at the other end][, in {slashes} slashes][, hinged {hinge}][, taken up in {into}][, called {name}][, stitched down {stitched}][, the pieces beside it too: {matching}]',
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
});
export const spreadVerb = /* @__PURE__ */ verbFrom(spreadForm, (pattern, parameters) =>
  parameters.matching ? spreadMatching(pattern, parameters, spreadOut) : spreadOut(pattern, parameters),
);

function spreadOut(pattern: Pattern, given: WholeSpread): Alteration {
  const piece = pieceNamed(pattern, given.piece);
  return locating({ piece: piece.name }, () => {
    const parameters = inLength(piece, given);
    const cuts = slashesOf(piece, parameters);
    const cutPiece = cutApart(piece, cuts);
    const holding = holdingSection(cutPiece);
    const mouths = pleatsFor(cutPiece, holding, parameters);
    const swung = swing(cutPiece, motionsFrom(cutPiece, holding, parameters), holding, { mouths });
    const { became } = swung;
    return {
      ...takenUp(pattern, withPiece(pattern, swung.piece), became, parameters),
      became,
      did: whatItDid(parameters, cuts, turnsOf(cutPiece, parameters)),
      findings: openingFindings(piece.name, swung),
    };
  });
}

/** A ratio as the length that it adds to the edge that opens. */
function inLength(piece: Piece, { ratio, ...wish }: WholeSpread): WholeSpread {
  if (ratio === undefined) return wish;
  return { ...wish, by: (ratio - 1) * pathLength(edgePath(piece, wish[openEnd(wish)].edge)) };
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

function whatItDid(
  { piece, from, to, by, angle = 0, hinge, slashes, otherEnd, into }: WholeSpread,
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
    ...(otherEnd === undefined ? {} : { otherEndMm: otherEnd }),
    ...(into === undefined ? {} : { into }),
    turnsDeg: turns.map(turn => inDegrees(Math.abs(turn))),
  });
}
