import {
  edgePath,
  type Path,
  type Pattern,
  PatternError,
  type Piece,
  type Point,
  pathLength,
} from '@paperhinge/geometry';
import { intersectPaths, nearestOnPath, pathEnd, pathStart, pointAlong } from '@paperhinge/geometry/paths';
import { edgesOfRole, neighboursOf, outlinePath, withPiece } from '@paperhinge/geometry/pattern';
import {
  type Affine,
  add,
  angleBetween,
  compose,
  distance,
  dot,
  lerp,
  rotation,
  scale,
  subtract,
  translation,
} from '@paperhinge/geometry/plane';
import type { Alteration } from '../../alteration.js';
import type { CutPiece } from '../../hinge/cut-piece.js';
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
  return swungApart(pattern, piece, { ...sleeveParts(piece, cap), by });
}

/**
 * A cap raised (negative: lowered) at constant seam length: the same four parts, swung until cap and hem are `by` mm
 * farther apart; the sleeve is narrower by what that takes.
 *
 * @throws PatternError `adjust-needs-edge`, `adjust-too-much`; those of the hinge
 */
export function swungCap(pattern: Pattern, piece: Piece, by: number): Alteration {
  const cap = edgeFor(piece, 'cap');
  return swungApart(pattern, piece, { ...sleeveParts(piece, cap), raise: by });
}

const sleeveParts = (piece: Piece, cap: string) => ({
  top: cap,
  bottom: bottomOf(piece),
  sides: [
    { edge: cap, along: 0 },
    { edge: cap, along: lengthOf(piece, cap) },
  ] as const,
});

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
    /** How much wider, or how much farther top and bottom are to be apart. */
    readonly by?: number;
    readonly raise?: number;
  },
): Alteration {
  const frame = frameOf(piece, wish);
  const cutPiece = cutInFour(piece, frame);
  const reaches = reachesOf(frame);
  const high = wish.raise === undefined ? highFor(reaches, wish.by ?? 0) : raised(reaches, wish.raise);
  const place = placedAt(frame, reaches, high);
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
      byMm: reaches.width(high) - reaches.width(reaches.whole),
      top: { edge: wish.top },
      lowerMm: distance(frame.cap, frame.hem) - distance(place.cap, place.hem),
    }),
    findings: openingFindings(piece.name, swung),
    became: swung.became,
  };
}

/**
 * The four cuts meet half way between the sides, or where a cap dips below that line, as one that was lowered before may,
 * further down: where they meet inside makes no difference to the swing.
 * @throws PatternError those of the slash
 */
function cutInFour(piece: Piece, frame: Frame & { readonly ends: readonly Place[] }): CutPiece {
  const middle = lerp(frame.underarms[0], frame.underarms[1], 1 / 2);
  const cutAt = (lower: number): CutPiece => {
    const to = { pivot: lerp(middle, frame.hem, lower) };
    return cutApart(
      piece,
      frame.ends.map(({ edge, along }) => ({ from: { edge, along }, to })),
    );
  };
  for (const lower of lowerPivots)
    try {
      return cutAt(lower);
    } catch (error) {
      if (!(error instanceof PatternError) || error.code !== 'slash-leaves-piece') throw error;
    }
  return cutAt(0);
}
/** Shares of the way from the line between the sides down to the hem, tried in turn. */
const lowerPivots = [0, 0.1, 0.2, 0.35, 0.5] as const;

/** mm. Points of the frame lie on the borders of their parts but for rounding. */
const near = 0.01;

interface Frame {
  readonly cap: Point;
  readonly hem: Point;
  readonly underarms: readonly [Point, Point];
}
/** The middles of top and bottom on the line along the grain half way between the sides, and where the cuts to all four begin. */
function frameOf(
  piece: Piece,
  {
    top,
    bottom,
    sides,
  }: { readonly top: string; readonly bottom: string; readonly sides: readonly [Place, Place] },
): Frame & { readonly ends: readonly Place[] } {
  const above = edgePath(piece, top),
    below = edgePath(piece, bottom);
  const [first, second] = sides.map(({ edge, along }) => pointAlong(edgePath(piece, edge), along)) as [
    Point,
    Point,
  ];
  const middle = scale(add(first, second), 1 / 2);
  const way = lineThrough(middle, grainOrVertical(piece).grain, reachOf(outlinePath(piece.outline)));
  const topAlong = meetingAlong(way, above),
    bottomAlong = meetingAlong(way, below);
  const ends: readonly Place[] = [
    { edge: top, along: topAlong },
    { edge: bottom, along: bottomAlong },
    ...sides,
  ];
  return {
    cap: pointAlong(above, topAlong),
    hem: pointAlong(below, bottomAlong),
    underarms: [first, second],
    ends,
  };
}

/** Where a line meets an edge, mm along it; where it runs beside it, near the end that it comes closest to. */
function meetingAlong(way: Path, edge: Path): number {
  const [met] = intersectPaths(way, edge);
  if (met) return met.alongB;
  const length = pathLength(edge);
  const atStart = nearestOnPath(way, pathStart(edge)).distance < nearestOnPath(way, pathEnd(edge)).distance;
  return atStart ? length * besideShare : length * (1 - besideShare);
}
const besideShare = 0.1;

/** How far out each side lies for a distance of top and bottom: triangles whose other two sides keep their lengths. */
interface Reaches {
  readonly whole: number;
  readonly least: number;
  readonly most: number;
  readonly reach: (side: 0 | 1, high: number) => { readonly out: number; readonly along: number };
  /** Both sides together. */
  readonly width: (high: number) => number;
}

function reachesOf(frame: Frame): Reaches {
  const sides = frame.underarms.map(point => ({
    upper: distance(frame.cap, point),
    lower: distance(point, frame.hem),
  }));
  const reach = (side: 0 | 1, high: number) => {
    const { upper, lower } = sides[side]!;
    const along = (upper ** 2 - lower ** 2 + high ** 2) / (2 * high);
    return { out: Math.sqrt(Math.max(0, upper ** 2 - along ** 2)), along };
  };
  return {
    whole: distance(frame.cap, frame.hem),
    // A hair more than where a triangle falls flat.
    least: Math.max(...sides.map(({ upper, lower }) => Math.abs(upper - lower))) * 1.001,
    most: Math.min(...sides.map(({ upper, lower }) => upper + lower)),
    reach,
    width: high => reach(0, high).out + reach(1, high).out,
  };
}

/** How far apart top and bottom are when both sides together lie `by` mm farther out. */
function highFor({ whole, least, most, width }: Reaches, by: number): number {
  const wanted = width(whole) + by;
  let [low, high] = by > 0 ? [widest(width, least, whole), whole] : [whole, most];
  if (wanted > width(low) || wanted < width(high)) {
    const mostMm = by > 0 ? width(low) - width(whole) : width(whole) - width(high);
    throw refusal('adjust-too-much', { what: 'limb', byMm: by, mostMm });
  }
  // The nearer they are, the wider it is: halved until rounding is reached.
  for (let n = 0; n < 60; n++) {
    const middle = (low + high) / 2;
    if (width(middle) > wanted) low = middle;
    else high = middle;
  }
  return high;
}

/** The same where it is told how much farther apart. */
function raised({ whole, least, most, width }: Reaches, by: number): number {
  const lowest = widest(width, least, whole);
  if (whole + by >= lowest && whole + by <= most) return whole + by;
  const mostMm = by > 0 ? most - whole : whole - lowest;
  throw refusal('adjust-too-much', { what: 'cap', byMm: by, mostMm });
}

/** Where the corners lie then; the bottom stays. */
function placedAt(frame: Frame, { whole, reach }: Reaches, high: number): Frame {
  const down = scale(subtract(frame.hem, frame.cap), 1 / whole);
  const across = { x: -down.y, y: down.x };
  const cap = subtract(frame.hem, scale(down, high));
  const [first, second] = ([0, 1] as const).map(side => {
    const { out, along } = reach(side, high);
    const way = Math.sign(dot(subtract(frame.underarms[side], frame.cap), across));
    return add(cap, add(scale(down, along), scale(across, way * out)));
  });
  return { cap, hem: frame.hem, underarms: [first!, second!] };
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
