import { edgePath, line, type Notch, type Piece, type Point, pathLength, pathOf } from '@paperhinge/geometry';
import { pointAlong, tangentAlong } from '@paperhinge/geometry/paths';
import { partsOfEdge } from '@paperhinge/geometry/pattern';
import { add, leftOf, rightOf, scale, subtract } from '@paperhinge/geometry/plane';
import { requireWord } from '../known-words.js';
import { chords, type Polygon } from '../plane/polygon.js';
import type { Ink } from './ink.js';
import { fill, stroke } from './shapes.js';

/** mm between the ticks of a double or triple notch. Common practice, no source (trade-notes §5: 6 mm). */
const between = 6;
/** mm: half the base of a notch's triangle on the cutting line; a blade finds it, and a photocopy keeps it. */
const halfBase = 1.9;
/** mm: a snip deeper than this weakens a wide allowance. */
const deepest = 6;

const places = { single: [0], double: [-0.5, 0.5], triple: [-1, 0, 1] } as const;

/** Where one tick of a notch is: on the stitching line, where it is measured, and straight out on the cutting line. */
export interface NotchPlace {
  readonly sewn: Point;
  readonly cut: Point;
  /** Unit direction of the stitching line there. */
  readonly tangent: Point;
  /** mm from `sewn` to `cut`; 0 on an edge without allowance. */
  readonly width: number;
}

/** A place for each tick of a notch: one, or two or three side by side. */
export function notchPlaces(piece: Piece, notch: Notch, cutting: Polygon): readonly NotchPlace[] {
  const path = edgePath(piece, notch.edge);
  const length = pathLength(path);
  const { allowance } = partsOfEdge(piece, notch.edge)[0]!;
  requireWord('notch', notch.style, Object.keys(places));
  return places[notch.style].map(step => {
    const along = Math.min(Math.max(notch.at + step * between, 0), length);
    const sewn = pointAlong(path, along);
    const tangent = tangentAlong(path, along);
    const out = leftOf(tangent);
    const width = allowance > 0 ? reachTo(sewn, out, cutting, allowance) : 0;
    return { sewn, cut: add(sewn, scale(out, width)), tangent, width };
  });
}

/**
 * How a notch is cut: a triangle into the allowance, a triangle outwards for cloth that frays or a narrow allowance, or
 * one short snip.
 */
export type NotchDrawing = 'inwards' | 'outwards' | 'snips';
/** The ways a notch may be drawn. */
export const notchStyles: readonly NotchDrawing[] = ['inwards', 'outwards', 'snips'];

/**
 * A notch as the maker cuts it: a solid triangle at the cutting line (or a snip from it), and a fine tick to the
 * stitching line, where the notch is measured. An edge without allowance gets a short one into the piece.
 */
export const notchInks = (
  piece: Piece,
  notch: Notch,
  cutting: Polygon,
  style: NotchDrawing = 'inwards',
): readonly Ink[] => notchPlaces(piece, notch, cutting).flatMap(place => oneNotch(place, style));

/** mm: how far a notch outwards stands beyond the cutting line; less than the paper kept between pieces. */
const outwardDepth = 4;

function oneNotch({ sewn, cut, tangent, width }: NotchPlace, style: NotchDrawing): readonly Ink[] {
  const depth = width > 0 ? Math.min(width * 0.6, deepest) : 3;
  const into = rightOf(tangent);
  const tip = add(cut, scale(into, style === 'outwards' ? -outwardDepth : depth));
  if (style === 'snips')
    return [stroke('snip', pathOf(line(cut, tip))), ...(width > depth ? [tick(tip, sewn)] : [])];
  const base = scale(tangent, Math.min(halfBase, depth * 0.6));
  const triangle =
    style === 'outwards'
      ? fill('notch', subtract(cut, base), tip, add(cut, base))
      : fill('notch', add(cut, base), tip, subtract(cut, base));
  const from = style === 'outwards' ? cut : tip;
  return width > (style === 'outwards' ? 0 : depth) ? [triangle, tick(from, sewn)] : [triangle];
}

const tick = (from: Point, to: Point): Ink => stroke('notch', pathOf(line(from, to)));

/** mm from the stitching line straight out to the cutting line; the allowance where the ray finds none near it. */
function reachTo(from: Point, out: Point, cutting: Polygon, allowance: number): number {
  let nearest = Number.POSITIVE_INFINITY;
  for (const [a, b] of chords(cutting, true)) {
    const u = subtract(b, a),
      w = subtract(a, from);
    const det = out.x * -u.y + u.x * out.y;
    if (det === 0) continue;
    const t = (w.x * -u.y + u.x * w.y) / det,
      s = (out.x * w.y - out.y * w.x) / det;
    if (s >= 0 && s <= 1 && t > 0 && t < nearest) nearest = t;
  }
  return nearest < 2 * allowance + 1 ? nearest : allowance;
}
