import { pathLength, pointAlong, tangentAlong } from '../path/length.js';
import { type Path, polyline } from '../path/path.js';
import { edgePath } from '../pattern/outline.js';
import type { Notch, NotchStyle, Piece } from '../pattern/types.js';
import { add, leftOf, scale } from '../vector.js';

/** mm between the strokes of a double or triple notch, common practice. */
const notchSpacing = 6;
/** mm that a stroke reaches to either side of the stitching line. */
const notchReach = 4;

const strokesOf: Readonly<Record<NotchStyle, number>> = { single: 1, double: 2, triple: 3 };

/**
 * The strokes of a notch: short lines square across the stitching line, 6 mm apart along it. Near an edge's end they
 * stand closer, so that their middle is always the notch's own place.
 */
export function notchStrokes(piece: Piece, { edge, at, style }: Notch): readonly Path[] {
  const path = edgePath(piece, edge);
  const count = strokesOf[style];
  const spread = Math.min((notchSpacing * (count - 1)) / 2, at, pathLength(path) - at);
  return Array.from({ length: count }, (_, i) => {
    const along = count === 1 ? at : at - spread + (2 * spread * i) / (count - 1);
    const p = pointAlong(path, along);
    const out = scale(leftOf(tangentAlong(path, along)), notchReach);
    return polyline(add(p, out), add(p, scale(out, -1)));
  });
}
