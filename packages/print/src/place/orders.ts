import type { Candidate } from './candidates.js';

/** The orders in which shapes are laid: largest first, tallest first, widest first, then each shape in turn before the others. */
export function ordersOf(
  candidates: readonly (readonly Candidate[])[],
  ahead: number,
): readonly (readonly number[])[] {
  const first = (i: number) => Math.min(i, ahead);
  const by = (size: (i: number) => number) =>
    candidates.map((_, i) => i).sort((a, b) => first(a) - first(b) || size(b) - size(a) || a - b);
  const tall = (i: number) => candidates[i]![0]!.cells.rows.length,
    wide = (i: number) => candidates[i]![0]!.cells.columns;
  const largest = by(i => tall(i) * wide(i));
  const plain = [largest, by(tall), by(wide)];
  // Beyond a few dozen shapes nobody gets to each of them in turn.
  const led = largest
    .slice(ahead + 1, mostLed)
    .map(i => by(k => (k === i ? Number.POSITIVE_INFINITY : tall(k) * wide(k))));
  const all = [...plain, ...led];
  const known = all.map(order => order.join());
  return all.filter((_, i) => known.indexOf(known[i]!) === i);
}

const mostLed = 40;

/** An order, and how each shape may lie in it. */
export interface Draw {
  readonly order: readonly number[];
  readonly held: readonly (readonly Candidate[])[];
}

/**
 * Draws one order after another, always the same ones: every second shape or so is held to one way of lying, large
 * shapes tend to come first.
 */
export function shuffled(candidates: readonly (readonly Candidate[])[], ahead: number): () => Draw {
  const next = lehmer(candidates.length);
  const area = (i: number) => candidates[i]![0]!.cells.area;
  return () => {
    const weights = candidates.map((_, i) =>
      i < ahead ? Number.POSITIVE_INFINITY : area(i) * (0.2 + next()),
    );
    const order = candidates.map((_, i) => i).sort((a, b) => weights[b]! - weights[a]! || a - b);
    const held = candidates.map(list => (next() < 0.5 ? list : [list[Math.floor(next() * list.length)]!]));
    return { order, held };
  };
}

/** Numbers from 0 to 1 (Park and Miller, 1988), the same every time. */
function lehmer(seed: number): () => number {
  let state = (seed * 2654435761) % 2147483646 || 1;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}
