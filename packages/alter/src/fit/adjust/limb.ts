import { edgePath, type Pattern, type Piece, type Point } from '@paperhinge/geometry';
import { intersectPaths, nearestOnPath, pointAlong } from '@paperhinge/geometry/paths';
import { edgesOfRole, neighboursOf, outlinePath, withPiece } from '@paperhinge/geometry/pattern';
import {
  type Affine,
  add,
  angleBetween,
  compose,
  distance,
  dot,
  rotation,
  scale,
  subtract,
  translation,
} from '@paperhinge/geometry/plane';
import type { Alteration } from '../../alteration.js';
import type { Cut } from '../../hinge/cut.js';
import { openingFindings } from '../../hinge/opening-findings.js';
import { cutApart } from '../../hinge/sections.js';
import { swing } from '../../hinge/swing.js';
import { grainOrVertical } from '../../moved-edges/grain.js';
import { lineThrough, reachOf } from '../../moved-edges/meet.js';
import { acrossAt, bottomOf, edgeFor, lengthOf } from './landmarks.js';
import { refusal, saying } from './tellings.js';

/**
 * More or less room for the upper arm. On paper: the sleeve is slashed down its middle from cap to hem, and across from
 * underarm to underarm; its four parts swing on hinges of paper at the cap, the hem and both underarms until the sleeve
 * is `by` mm wider there. Cap, underarm seams and hem keep their lengths; the cap comes down. Negative: overlapped. Rigid:
 * the four parts. Source: common practice, no source (trade-notes §8).
 *
 * @throws PatternError `adjust-needs-edge`, `adjust-too-much`; those of the hinge
 */
export function swungSleeve(pattern: Pattern, piece: Piece, by: number): Alteration {
  const cap = edgeFor(piece, 'cap');
  return swungApart(pattern, piece, {
    top: cap,
    bottom: bottomOf(piece),
    sides: [
      { edge: cap, along: 0 },
      { edge: cap, along: lengthOf(piece, cap) },
    ],
    by,
  });
}

/**
 * More or less room for the thigh: the leg likewise, slashed from waist to hem, and across from the crotch point to the
 * outseam. Waist, crotch, both leg seams and hem keep their lengths.
 *
 * @throws PatternError `adjust-needs-edge`, `adjust-too-much`; those of the hinge
 */
export function swungLeg(pattern: Pattern, piece: Piece, by: number): Alteration {
  const inseam = edgeFor(piece, 'inseam');
  const path = edgePath(piece, inseam);
  const atStart = edgesOfRole(piece, 'crotch').includes(neighboursOf(piece, inseam).start);
  // Just below the point, where a straight cut clears the curve of the crotch.
  const along = atStart ? belowCrotch : lengthOf(piece, inseam) - belowCrotch;
  return swungApart(pattern, piece, {
    top: edgeFor(piece, 'waist'),
    bottom: bottomOf(piece),
    sides: [{ edge: inseam, along }, acrossAt(piece, pointAlong(path, along), 'outseam')],
    by,
  });
}

/** mm. */
const belowCrotch = 40;

interface Place {
  readonly edge: string;
  readonly along: number;
}

/** Four parts swung apart about the middles of two edges and two places at the sides. */
function swungApart(
  pattern: Pattern,
  piece: Piece,
  wish: {
    readonly top: string;
    readonly bottom: string;
    readonly sides: readonly [Place, Place];
    readonly by: number;
  },
): Alteration {
  const frame = frameOf(piece, wish);
  const cutPiece = cutApart(piece, frame.cuts);
  const place = widened(frame, wish.by);
  const motions = cutPiece.sections.map((section): Affine => {
    // Each part holds one side and either the top or the bottom.
    const holds = (point: Point): boolean => nearestOnPath(section.border, point).distance < near;
    const side = holds(frame.underarms[0]) ? 0 : 1;
    const end = holds(frame.cap) ? 'cap' : 'hem';
    return carrying([frame[end], frame.underarms[side]], [place[end], place.underarms[side]]);
  });
  const held = cutPiece.sections.findIndex(({ border }) => nearestOnPath(border, frame.hem).distance < near);
  const swung = swing(cutPiece, motions, held);
  return {
    pattern: withPiece(pattern, swung.piece),
    did: saying('swung-apart', {
      piece: { piece: piece.name },
      byMm: wish.by,
      top: { edge: wish.top },
      lowerMm: distance(frame.cap, frame.hem) - distance(place.cap, place.hem),
    }),
    findings: openingFindings(piece.name, swung),
    became: swung.became,
  };
}

/** mm. Points of the frame lie on the borders of their parts but for rounding. */
const near = 0.01;

interface Frame {
  readonly cap: Point;
  readonly hem: Point;
  readonly underarms: readonly [Point, Point];
}
/** The middles of top and bottom on the line along the grain half way between the sides, and the cuts between all four. */
function frameOf(
  piece: Piece,
  {
    top,
    bottom,
    sides,
  }: { readonly top: string; readonly bottom: string; readonly sides: readonly [Place, Place] },
): Frame & { readonly cuts: readonly Cut[] } {
  const above = edgePath(piece, top),
    below = edgePath(piece, bottom);
  const [first, second] = sides.map(({ edge, along }) => pointAlong(edgePath(piece, edge), along)) as [
    Point,
    Point,
  ];
  const middle = scale(add(first, second), 1 / 2);
  const way = lineThrough(middle, grainOrVertical(piece).grain, reachOf(outlinePath(piece.outline)));
  const topAlong = intersectPaths(way, above)[0]?.alongB,
    bottomAlong = intersectPaths(way, below)[0]?.alongB;
  if (topAlong === undefined || bottomAlong === undefined)
    throw refusal('adjust-needs-edge', { piece: { piece: piece.name }, role: top }, { piece: piece.name });
  const to = { pivot: middle };
  const ends: readonly Place[] = [
    { edge: top, along: topAlong },
    { edge: bottom, along: bottomAlong },
    ...sides,
  ];
  return {
    cap: pointAlong(above, topAlong),
    hem: pointAlong(below, bottomAlong),
    underarms: [first, second],
    cuts: ends.map(({ edge, along }) => ({ from: { edge, along }, to })),
  };
}

/**
 * Where the corners lie when the sleeve is wider: each half is a triangle of cap, underarm and hem whose two sides keep
 * their lengths while cap and hem come nearer to one another, until both underarms together have moved `by` mm apart.
 */
function widened(frame: Frame, by: number): Frame {
  const axis = subtract(frame.hem, frame.cap);
  const whole = distance(frame.cap, frame.hem);
  const down = scale(axis, 1 / whole);
  const across = { x: -down.y, y: down.x };
  const sides = frame.underarms.map(point => ({
    upper: distance(frame.cap, point),
    lower: distance(point, frame.hem),
    way: Math.sign(dot(subtract(point, frame.cap), across)),
  }));
  const reach = (
    side: (typeof sides)[number],
    high: number,
  ): { readonly out: number; readonly along: number } => {
    const along = (side.upper ** 2 - side.lower ** 2 + high ** 2) / (2 * high);
    return { out: Math.sqrt(Math.max(0, side.upper ** 2 - along ** 2)), along };
  };
  const width = (high: number): number => sides.reduce((sum, side) => sum + reach(side, high).out, 0);
  const least = Math.max(...sides.map(({ upper, lower }) => Math.abs(upper - lower))) * 1.001;
  const most = Math.min(...sides.map(({ upper, lower }) => upper + lower));
  const wanted = width(whole) + by;
  let [low, high] = by > 0 ? [widest(width, least, whole), whole] : [whole, most];
  if (wanted > width(low) || wanted < width(high))
    throw refusal('adjust-too-much', {
      what: 'limb',
      byMm: by,
      mostMm: by > 0 ? width(low) - width(whole) : width(whole) - width(high),
    });
  // The nearer cap and hem, the wider the sleeve: halved until rounding is reached.
  for (let n = 0; n < 60; n++) {
    const middle = (low + high) / 2;
    if (width(middle) > wanted) low = middle;
    else high = middle;
  }
  const cap = subtract(frame.hem, scale(down, high));
  const underarms = sides.map(side => {
    const { out, along } = reach(side, high);
    return add(cap, add(scale(down, along), scale(across, side.way * out)));
  });
  return { cap, hem: frame.hem, underarms: [underarms[0]!, underarms[1]!] };
}

/** The height at which the sleeve is widest: nearer than that it narrows again. Found by thirds. */
function widest(width: (high: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let n = 0; n < 80; n++) {
    const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
    if (width(a) > width(b)) high = b;
    else low = a;
  }
  return low;
}

/** The rigid motion that carries one pair of points to another as far apart. */
function carrying(from: readonly [Point, Point], to: readonly [Point, Point]): Affine {
  const turn = angleBetween(subtract(from[1], from[0]), subtract(to[1], to[0]));
  return compose(rotation(turn, from[0]), translation(subtract(to[0], from[0])));
}
