import type { Affine } from '../affine.js';
import { endOf, startOf } from '../curve/segment.js';
import type { Path } from '../path/path.js';
import { distance, type Point } from '../vector.js';
import type { Joint } from './joint.js';
import { firstOnRay } from './line-crossings.js';
import { type Strand, straight, strandsBetween, strandsTransformed } from './strand.js';

/**
 * The cutting line over the mouth of a dart or pleat, so shaped that the folded intake ends where the cloth under it does:
 * a joint of the cutting lines before and after it.
 */
export interface FoldedMouth extends Joint {
  /** Where the cloth is folded, as far as the cutting line: the middle of a dart's intake, from its apex. */
  readonly folds: readonly Path[];
  /** mm along the leg's line between the folded shape and the cutting line it should meet. */
  readonly step: number;
}

/** What lies on a line, folded over: its image, as far as the ray along which the cloth is folded back. */
export function imageUpTo(
  line: readonly Strand[],
  over: Affine,
  fold: { readonly on: Point; readonly direction: Point; readonly least?: number },
) {
  const image = strandsTransformed(line, over);
  const end = firstOnRay(image, fold.on, fold.direction, fold.least);
  return end && { ...end, strands: strandsBetween(image, 0, end.place) };
}

/** What is folded, end to end; where it does not meet, straight along the fold, the longest such step told. */
export function bridged(from: Point, strands: readonly Strand[], to: Point, of: string) {
  const chain: Strand[] = [];
  let at = from,
    step = 0;
  const goTo = (next: Point): void => {
    step = Math.max(step, distance(at, next));
    chain.push(...straight(at, next, of, 'dart'));
  };
  for (const { segment } of strands) {
    goTo(startOf(segment));
    chain.push({ segment, of, shape: 'dart' });
    at = endOf(segment);
  }
  goTo(to);
  return { chain, step };
}
