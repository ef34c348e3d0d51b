import {
  type Dart,
  edgePath,
  line,
  type Pattern,
  type Piece,
  type Point,
  pathLength,
  pathOf,
  pieceNamed,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { nearestOnPath, pathEnd, pathStart, pointAlong } from '@paperhinge/geometry/paths';
import { type EdgePosition, resolvePosition, withPiece } from '@paperhinge/geometry/pattern';
import { add, distance, lerp, rightOf, scale, subtract, unit } from '@paperhinge/geometry/plane';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import { requireFreeDartName } from '../darts/mouth.js';
import { pivotOf } from '../darts/pivot.js';
import { refusal, saying } from '../darts/tellings.js';
import { type Item, itemsOf, partOfRun, type Run, recomposed } from '../moved-edges/composed.js';
import { requireSimple } from '../moved-edges/tidy.js';
import * as field from '../verb/fields.js';
import { formOf, performSaid, verbFrom } from '../verb/verb.js';

/** Draw a new dart that takes in so much of an edge. */
export interface OpenDart {
  readonly piece: string;
  readonly edge: string;
  readonly at: EdgePosition;
  /** mm of the edge that it takes in. */
  readonly intake: number;
  readonly name: string;
  /** mm from the edge to its point, square to the edge; or `to`. */
  readonly depth?: number;
  /** Name of a point mark that it points to and ends at. */
  readonly to?: string;
}

/**
 * Draws a new dart into an edge, its mouth `intake` mm along it with its middle at `at`, its legs straight to a point
 * square to the mouth or to a mark. Nothing turns: what the dart takes in is lost to the edge, which becomes shorter
 * by it and stands in two parts of one name. Source: common practice, no source.
 *
 * @throws PatternError `unknown-piece`, `unknown-edge`, `unknown-mark`, `dart-name-taken`, `dart-off-edge`,
 *   `dart-uneven-there`, `dart-leaves-piece`; those of `perform` and `resolvePosition`
 */
export const openDart = (pattern: Pattern, parameters: OpenDart): Alteration =>
  performSaid(openDartVerb, pattern, parameters);

export const openDartForm = formOf<OpenDart>()({
  verb: 'open dart',
  does: 'Draws a new dart that takes in so much of an edge, its point square to the edge or at a mark. The edge becomes shorter by what it takes in.',
  fields: {
    piece: field.piece(),
    edge: field.edge(),
    at: field.place('edge'),
    intake: field.size(),
    name: field.newName(),
    depth: field.optional(field.size()),
    to: field.optional(field.mark()),
  },
  oneOf: [['depth', 'to']],
  leaves: ({ piece }) => ({ changed: [piece] }),
  sentence:
    'Draw the {name} dart into the {edge} of the {piece} at {at}, taking in {intake}[, {depth} deep][, to the {to}]',
  startsAt: { edge: ['piece', 'edge'], piece: ['piece'] },
  example: {
    pattern: 'woven-shift',
    step: {
      piece: 'back',
      edge: 'shoulder',
      at: '1/2',
      intake: '12 mm',
      depth: '85 mm',
      name: 'shoulder blade',
    },
  },
});
export const openDartVerb = /* @__PURE__ */ verbFrom(openDartForm, (pattern, parameters) => {
  const piece = pieceNamed(pattern, parameters.piece);
  const where = { piece: piece.name, edge: parameters.edge };
  requireFreeDartName(piece, parameters.name);
  return locating(where, () => {
    const along = resolvePosition(piece, parameters.edge, parameters.at);
    const { items, dart } = withDartIn(piece, parameters, along);
    const done = recomposed(piece, items);
    const named = { piece: piece.name, dart: dart.name };
    requireSimple(done.piece, () => refusal('dart-leaves-piece', { dart: named }, where));
    const [a, b] = [pathStart(dart.legs[0]), pathEnd(dart.legs[1])];
    return {
      pattern: withPiece(pattern, done.piece),
      became: done.became,
      did: saying('opened-dart', {
        dart: named,
        edge: { edge: parameters.edge },
        alongMm: along,
        intakeMm: parameters.intake,
        deepMm: distance(lerp(a, b, 0.5), dart.apex),
      }),
      findings: done.findings,
    };
  });
});

/** The ring with the dart in the place of what it takes in. */
function withDartIn(
  piece: Piece,
  parameters: OpenDart,
  along: number,
): { readonly items: readonly Item[]; readonly dart: Dart } {
  const { edge, intake } = parameters;
  const items = itemsOf(piece);
  const run = items.find(
    (item): item is Run =>
      item.type === 'run' &&
      item.edge.name === edge &&
      along <= item.was!.to + tolerances.coincidenceTolerance,
  )!;
  const length = pathLength(run.path);
  const middle = along - run.was!.from;
  const [from, to] = [middle - intake / 2, middle + intake / 2];
  // A stretch of the edge must be left on either side to sew the dart's ends to.
  if (from <= tolerances.joiningGap || to >= length - tolerances.joiningGap)
    throw refusal('dart-off-edge', {
      edge: { piece: piece.name, edge },
      intakeMm: intake,
      leftMm: middle,
      rightMm: length - middle,
    });
  const a = pointAlong(run.path, from),
    b = pointAlong(run.path, to);
  const apex = pointOf(piece, parameters, a, b);
  const dart: Dart = {
    type: 'dart',
    name: parameters.name,
    legs: [pathOf(line(a, apex)), pathOf(line(apex, b))],
    apex,
  };
  const parted = [partOfRun(run, 0, from), dart, partOfRun(run, to, length)];
  return { items: items.flatMap(item => (item === run ? parted : [item])), dart };
}

/** Square to the mouth, or the mark where both legs to it are equal. */
function pointOf(piece: Piece, { edge, intake, depth, to }: OpenDart, a: Point, b: Point): Point {
  if (to === undefined) return add(lerp(a, b, 0.5), scale(rightOf(unit(subtract(b, a))), depth!));
  const apex = pivotOf(piece, { pivot: to })!;
  const [firstMm, secondMm] = [distance(a, apex), distance(apex, b)];
  if (Math.abs(firstMm - secondMm) <= tolerances.dartLegTolerance) return apex;
  const path = edgePath(piece, edge);
  const { along } = nearestOnPath(path, apex);
  const ends = [along - intake / 2, along + intake / 2];
  const fits = ends[0]! > 0 && ends[1]! < pathLength(path);
  const [p, q] = fits
    ? ends.map(place => distance(pointAlong(path, place), apex))
    : [0, Number.POSITIVE_INFINITY];
  throw refusal('dart-uneven-there', {
    edge: { piece: piece.name, edge },
    firstMm,
    secondMm,
    ...(Math.abs(p! - q!) <= tolerances.dartLegTolerance ? { alongMm: along } : {}),
  });
}
