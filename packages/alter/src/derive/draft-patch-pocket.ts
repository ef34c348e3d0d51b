import {
  at,
  edgePath,
  line,
  type Path,
  type Pattern,
  type Piece,
  type PieceLine,
  type Point,
  pathOf,
  pieceNamed,
  polyline,
} from '@paperhinge/geometry';
import { arcBetween } from '@paperhinge/geometry/curves';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import {
  intersectPaths,
  joined,
  pathEnd,
  pathStart,
  pointAlong,
  tangentAlong,
  transformedPath,
} from '@paperhinge/geometry/paths';
import { type EdgePosition, outlinePath, resolvePosition, withPiece } from '@paperhinge/geometry/pattern';
import { add, rightOf, scale, subtract } from '@paperhinge/geometry/plane';
import { containsPoint } from '@paperhinge/geometry/regions';
import type { Alteration } from '../alteration.js';
import { grainOrVertical } from '../moved-edges/grain.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { grainLine, seamEdge } from './collar-shapes.js';
import { freePlace } from './free-place.js';
import { titled } from './long-piece.js';
import { takePlace } from './take-place.js';
import { refusal, saying } from './tellings.js';

/** A pocket sewn onto a piece. Lengths in mm, finished. */
export interface DraftPatchPocket {
  readonly name: string;
  readonly piece: string;
  readonly width: number;
  readonly height: number;
  /** Where the middle of its mouth lies: a mark, or so far in from a place on an edge. */
  readonly mark?: string;
  readonly beside?: { readonly edge: string; readonly at: EdgePosition; readonly in: number };
  /** Default square. */
  readonly corners?: 'square' | 'round' | 'pointed';
  /** Radius of round corners, or how far a pointed pocket runs below its sides; default 20. */
  readonly by?: number;
  /** Depth of the hem at its mouth; default 25. */
  readonly hem?: number;
  /** Default 10. */
  readonly allowance?: number;
  readonly fabric?: string;
}

/**
 * Drafts a patch pocket: a rectangle with its mouth on top, the lower corners square, round or run to a point, a hem at
 * the mouth whose corners are turned up. The pocket's line is drawn on its piece, along the
 * grain, where the middle of its mouth is to lie. On paper the same; common practice, no source. The garment keeps its outline.
 *
 * @throws PatternError `pocket-off-piece`, `pocket-corners-too-large`, `unknown-mark`; `unknown-piece`; those of
 *   `perform`
 */
export const draftPatchPocket = (pattern: Pattern, parameters: DraftPatchPocket): Alteration =>
  perform(draftPatchPocketVerb, pattern, parameters);

export const draftPatchPocketForm = formOf<DraftPatchPocket>()({
  verb: 'draft patch pocket',
  does: 'Drafts a pocket that is sewn onto a piece, with a hem at its mouth, and draws its place there.',
  fields: {
    name: field.newName(),
    piece: field.piece(),
    width: field.size(),
    height: field.size(),
    mark: field.optional(field.mark()),
    beside: field.optional(
      field.group<NonNullable<DraftPatchPocket['beside']>>({
        edge: field.edge(),
        at: field.place('edge'),
        in: field.length(),
      }),
    ),
    corners: field.usually(field.choice('square', 'round', 'pointed'), 'square'),
    by: field.usually(field.size(), 20),
    hem: field.usually(field.length({ most: tolerances.largestAllowance }), 25),
    allowance: field.usually(field.length({ most: tolerances.largestAllowance }), 10),
    fabric: field.optional(field.cloth()),
  },
  oneOf: [['mark', 'beside']],
  leaves: ({ name, piece }) => ({ pieces: [name], changed: [piece] }),
  sentence:
    'Draft a patch pocket "{name}" for the {piece}, {width} wide and {height} high[, its mouth at the {mark}][, its mouth {beside.in} in from the {beside.edge} at {beside.at}][, its corners {corners}][ by {by}][, of the {fabric} cloth]',
  startsAt: { piece: ['piece'], mark: ['piece', 'mark'] },
  example: {
    pattern: 'woven-shift',
    step: {
      name: 'pocket',
      piece: 'front',
      width: 110,
      height: 125,
      beside: { edge: 'centre-front', at: '420 mm from hem', in: 110 },
      corners: 'pointed',
    },
  },
});
export const draftPatchPocketVerb = /* @__PURE__ */ verbFrom(draftPatchPocketForm, drawnPocket);

type Whole = DraftPatchPocket & Required<Pick<DraftPatchPocket, 'corners' | 'by' | 'hem' | 'allowance'>>;

function drawnPocket(pattern: Pattern, wish: Whole): Alteration {
  const { name, width, height, hem, allowance } = wish;
  const source = pieceNamed(pattern, wish.piece);
  if (wish.corners === 'round' && wish.by > Math.min(width / 2, height))
    throw refusal('pocket-corners-too-large', {
      piece: name,
      byMm: wish.by,
      mostMm: Math.min(width / 2, height),
    });
  const placed = withPlace(pattern, source, wish);
  const place = freePlace(pattern, name);
  const spot = (x: number, y: number): Point => at(place.x + x, place.y + y);
  const round = roundOf(wish, spot);
  const { count, mirrored, layers = 1 } = source.cutting;
  const fabric = wish.fabric ?? source.cutting.fabric;
  const piece: Piece = {
    name,
    title: titled(name),
    role: 'pocket',
    outline: {
      parts: [
        seamEdge('mouth', pathOf(line(pathEnd(round), pathStart(round))), hem, 'hem'),
        seamEdge('round', round, allowance),
      ],
    },
    notches: [],
    lines: [grainLine(spot(width / 2, height * 0.75), spot(width / 2, height * 0.25))],
    marks: [],
    cutting: { count: count / layers, mirrored, fabric },
  };
  const done = takePlace(placed, piece, undefined);
  const one = saying('drafted-piece', {
    piece: name,
    count: piece.cutting.count,
    lengthMm: width,
    widthMm: height,
  });
  return {
    pattern: done.pattern,
    did: saying('drafted-pieces', { pieces: [one] }),
    findings: done.findings,
    derived: [
      {
        name,
        kind: 'pocket',
        lengthMm: height,
        widthMm: width,
        fabric,
        along: [],
        edgeMm: 0,
        figures: { hemMm: hem, allowanceMm: allowance },
      },
    ],
  };
}

/** Down one side, along the bottom and up the other, clockwise from the mouth's right end. */
function roundOf({ width, height, corners, by }: Whole, spot: (x: number, y: number) => Point): Path {
  const right = spot(width, 0),
    left = spot(0, 0);
  if (corners === 'square') return polyline(right, spot(width, height), spot(0, height), left);
  if (corners === 'pointed')
    return polyline(right, spot(width, height - by), spot(width / 2, height), spot(0, height - by), left);
  const arc = (centre: Point, from: Point, to: Point): Path => ({
    segments: arcBetween(centre, subtract(from, centre), subtract(to, centre), true),
  });
  const first = arc(spot(width - by, height - by), spot(width, height - by), spot(width - by, height));
  const second = arc(spot(by, height - by), spot(by, height), spot(0, height - by));
  const down = by < height ? [pathOf(line(right, pathStart(first)))] : [];
  const up = by < height ? [pathOf(line(pathEnd(second), left))] : [];
  const across = 2 * by < width ? [pathOf(line(pathEnd(first), pathStart(second)))] : [];
  return joined(...down, first, ...across, second, ...up);
}

/** The pocket's line on its piece, the middle of its mouth where it is to lie, upright along the grain. */
function withPlace(pattern: Pattern, source: Piece, wish: Whole): Pattern {
  const { grain } = grainOrVertical(source);
  const down = grain.y >= 0 ? grain : scale(grain, -1);
  const middle = middleOf(source, wish);
  const upright = { a: down.y, b: -down.x, c: down.x, d: down.y, e: middle.x, f: middle.y };
  const round = transformedPath(
    roundOf(wish, (x, y) => at(x - wish.width / 2, y)),
    upright,
  );
  const outline = outlinePath(source.outline);
  if (!containsPoint(outline, middle) || intersectPaths(round, outline).length > 0)
    throw refusal(
      'pocket-off-piece',
      { pocket: wish.name, piece: { piece: source.name } },
      { piece: source.name },
    );
  const placement: PieceLine = { kind: 'placement', name: wish.name, path: round };
  const lines = [...source.lines.filter(one => one.name !== wish.name), placement];
  return withPiece(pattern, { ...source, lines });
}

function middleOf(source: Piece, { mark: name, beside }: Whole): Point {
  if (beside) {
    const path = edgePath(source, beside.edge);
    const along = resolvePosition(source, beside.edge, beside.at);
    // The cloth lies to the right of an outline that runs clockwise.
    return add(pointAlong(path, along), scale(rightOf(tangentAlong(path, along)), beside.in));
  }
  const mark = source.marks.find(one => one.name === name);
  if (mark) return mark.at;
  const names = source.marks.map(one => one.name);
  throw refusal('pocket-mark-unknown', { piece: source.name, name: name!, names });
}
