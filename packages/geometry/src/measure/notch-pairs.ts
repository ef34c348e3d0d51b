import { joiningGap } from '../tolerance.js';
import type { LaidNotch, SeamSide } from './side.js';

/** Two notches that meet when the seam is sewn. */
export interface NotchPair {
  readonly a: LaidNotch;
  readonly b: LaidNotch;
}

export interface PairedNotches {
  readonly pairs: readonly NotchPair[];
  /** Notches without a partner, in order. */
  readonly aloneOnA: readonly LaidNotch[];
  readonly aloneOnB: readonly LaidNotch[];
}

/**
 * Pairs the notches of both sides in order, single with single and double with double: as many pairs as can be
 * made without crossing, and of those the pairing whose partners lie nearest each other as shares of their sides.
 * Dynamic programming over both lists (the alignment of Needleman and Wunsch, 1970).
 */
export function pairNotches(a: SeamSide, b: SeamSide): PairedNotches {
  const p = onceEach(a),
    q = onceEach(b);
  const apart = (i: number, j: number) => Math.abs(p[i]!.alongMm / a.reachMm - q[j]!.alongMm / b.reachMm);
  // best[i][j]: pairs and summed distance among the notches from i on side a and from j on side b.
  const best: { pairs: number; apart: number; take: boolean }[][] = [];
  for (let i = p.length; i >= 0; i--) {
    best[i] = [];
    for (let j = q.length; j >= 0; j--) {
      if (i === p.length || j === q.length) {
        best[i]![j] = { pairs: 0, apart: 0, take: false };
        continue;
      }
      const skipA = best[i + 1]![j]!,
        skipB = best[i]![j + 1]!;
      let found = { ...(better(skipA, skipB) ? skipA : skipB), take: false };
      if (p[i]!.style === q[j]!.style) {
        const rest = best[i + 1]![j + 1]!;
        const taken = { pairs: rest.pairs + 1, apart: rest.apart + apart(i, j), take: true };
        if (!better(found, taken)) found = taken;
      }
      best[i]![j] = found;
    }
  }
  const pairs: NotchPair[] = [];
  const aloneOnA = new Set(p),
    aloneOnB = new Set(q);
  for (let i = 0, j = 0; i < p.length && j < q.length; ) {
    if (best[i]![j]!.take) {
      pairs.push({ a: p[i]!, b: q[j]! });
      aloneOnA.delete(p[i]!);
      aloneOnB.delete(q[j]!);
      i++;
      j++;
    } else if (better(best[i + 1]![j]!, best[i]![j + 1]!)) i++;
    else j++;
  }
  return { pairs, aloneOnA: [...aloneOnA], aloneOnB: [...aloneOnB] };
}

interface Score {
  readonly pairs: number;
  readonly apart: number;
}
const better = (one: Score, other: Score): boolean =>
  one.pairs > other.pairs || (one.pairs === other.pairs && one.apart <= other.apart);

/** A notch where two runs meet, at a fold or at a seam that crosses, is marked on both and is one. */
const onceEach = ({ notches }: SeamSide): readonly LaidNotch[] =>
  notches.filter(
    (n, i) => !notches.slice(0, i).some(m => m.style === n.style && n.alongMm - m.alongMm <= joiningGap),
  );
