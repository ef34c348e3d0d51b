import {
  at,
  type EdgeRef,
  line,
  type Pattern,
  type Piece,
  type Point,
  pathOf,
  pieceNamed,
} from '@paperhinge/geometry';
import { arcBetween } from '@paperhinge/geometry/curves';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { fairCurve, joined } from '@paperhinge/geometry/paths';
import { subtract } from '@paperhinge/geometry/plane';
import type { Alteration, Derived } from '../alteration.js';
import { distinctEdges } from '../edge-refs.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { grainLine, seamEdge } from './collar-shapes.js';
import { freePlace } from './free-place.js';
import { halfNeck } from './half-neck.js';
import { titled } from './long-piece.js';
import { shoulderNotches } from './shoulder-notches.js';
import { takePlace } from './take-place.js';
import { takenAllowance } from './taken-allowance.js';
import { finding, refusal, saying } from './tellings.js';

/** A hood of two halves. Lengths in mm, finished. */
export interface DraftHood {
  readonly name: string;
  /** The neck's edges, all of them. */
  readonly along: readonly EdgeRef[];
  /** From the neck's front to the top. */
  readonly height: number;
  /** From the face to the back of the head. */
  readonly depth: number;
  /** How far the neck edge rises from the front to the centre back; default 25. */
  readonly rise?: number;
  /** Depth of the hem at the face; default 25. */
  readonly hem?: number;
  readonly fabric?: string;
}

/**
 * Drafts a hood of two halves, sewn to one another over the head and down the back. On paper: the face edge upright, so
 * high as from the neck over the ear to the crown; the neck edge as long as half the neck, rising to the centre back;
 * so deep as the head from the brow to its back, rounded at the crown. Common practice, no source. The garment does
 * not change. A hood brings the cautions of cords: none at a child's hood or neck.
 *
 * @throws PatternError `hood-too-small`; `edges-do-not-join`, `edges-not-halved`; `drafted-along-itself`;
 *   `unknown-piece`, `unknown-edge`; those of `perform`
 */
export const draftHood = (pattern: Pattern, parameters: DraftHood): Alteration =>
  perform(draftHoodVerb, pattern, parameters);

export const draftHoodForm = formOf<DraftHood>()({
  verb: 'draft hood',
  does: 'Drafts a hood of two halves for a neck.',
  fields: {
    name: field.newName(),
    along: field.edgesOfPieces(),
    height: field.size(),
    depth: field.size(),
    rise: field.usually(field.length(), 25),
    hem: field.usually(field.length({ most: tolerances.largestAllowance }), 25),
    fabric: field.optional(field.cloth()),
  },
  leaves: ({ name }) => ({ pieces: [name], seams: [name, `${name} join`] }),
  sentence:
    'Draft a hood "{name}" for {along}, {height} high and {depth} deep[, its neck edge rising by {rise}][, of the {fabric} cloth]',
  startsAt: { edge: ['along'], table: [] },
  example: {
    pattern: 'woven-shift',
    step: { name: 'hood', along: ['front.neck', 'back.neck'], height: 350, depth: 260 },
  },
});
export const draftHoodVerb = /* @__PURE__ */ verbFrom(draftHoodForm, drawnHood);

type Whole = DraftHood & Required<Pick<DraftHood, 'rise' | 'hem'>>;

function drawnHood(pattern: Pattern, parameters: Whole): Alteration {
  const { name, height, depth } = parameters;
  const along = distinctEdges(parameters.along);
  const half = halfNeck(pattern, along, name);
  const drawn = hoodPiece(pattern, { ...parameters, along }, half.lengthMm);
  const piece = { ...drawn, notches: shoulderNotches(half, 'neck') };
  const centre = [{ piece: name, edge: 'centre', reversed: false }];
  const placed = takePlace(
    pattern,
    piece,
    { own: [{ piece: name, edge: 'neck', reversed: false }], partner: half.runs, easeMm: 0 },
    { a: centre, b: centre },
  );
  const derived: Derived = {
    name,
    kind: 'hood',
    lengthMm: height,
    widthMm: depth,
    fabric: piece.cutting.fabric,
    along,
    edgeMm: half.lengthMm,
    figures: {},
  };
  const one = saying('drafted-piece', { piece: name, count: 2, lengthMm: height, widthMm: depth });
  return {
    pattern: placed.pattern,
    did: saying('drafted-pieces', { pieces: [one] }),
    findings: [finding('note', 'hood-without-cords', { piece: name }, { piece: name }), ...placed.findings],
    derived: [derived],
  };
}

/** Round the crown: this share of the hood's depth is a quarter circle. */
const crown = 0.55;

function hoodPiece(pattern: Pattern, wish: Whole, neckMm: number): Piece {
  const { name, along, height, depth, rise } = wish;
  const reach = Math.sqrt(neckMm ** 2 - rise ** 2);
  const radius = crown * depth;
  // The neck edge must end behind the face and under the crown.
  if (!(rise < neckMm / 2 && depth > reach / 2 && height > radius + rise))
    throw refusal('hood-too-small', { piece: name, heightMm: height, depthMm: depth, neckMm });
  const place = freePlace(pattern, name);
  const spot = (x: number, y: number): Point => at(place.x + x, place.y + y);
  const [top, brow] = [spot(0, 0), spot(depth - radius, 0)];
  const [back, nape, front] = [spot(depth, radius), spot(reach, height - rise), spot(0, height)];
  const middle = spot(depth - radius, radius);
  const centre = joined(
    pathOf(line(top, brow)),
    { segments: arcBetween(middle, subtract(brow, middle), subtract(back, middle), true) },
    fairCurve(
      { point: back, direction: at(0, 1) },
      { point: nape, direction: subtract(nape, spot(depth * 0.9, radius)) },
    ),
  );
  const allowance = takenAllowance(pattern, along);
  return {
    name,
    title: titled(name),
    role: 'hood',
    outline: {
      parts: [
        seamEdge('centre', centre, allowance),
        seamEdge('neck', pathOf(line(nape, front)), allowance),
        seamEdge('face', pathOf(line(front, top)), wish.hem, 'hem'),
      ],
    },
    notches: [],
    lines: [grainLine(spot(depth * 0.4, height * 0.7), spot(depth * 0.4, height * 0.3))],
    marks: [],
    cutting: {
      count: 2,
      mirrored: true,
      fabric: wish.fabric ?? pieceNamed(pattern, along[0]!.piece).cutting.fabric,
    },
    madeFor: along,
  };
}
