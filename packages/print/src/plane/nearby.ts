import type { Chord } from './polygon.js';
import type { Rectangle } from './rectangle.js';

/** Chords sorted into square buckets, so that those near a place are found without asking each. */
export interface Nearby {
  /** The chords whose boxes may meet a rectangle, in their order. */
  within(rectangle: Rectangle): readonly Chord[];
}

/** @param size mm: side of a bucket; about as long as the rectangles that will be asked for */
export function nearby(chords: readonly Chord[], size: number): Nearby {
  const buckets = new Map<string, number[]>();
  for (const [i, [a, b]] of chords.entries())
    for (const key of keysIn(
      [Math.min(a.x, b.x), Math.min(a.y, b.y), Math.max(a.x, b.x), Math.max(a.y, b.y)],
      size,
    )) {
      const own = buckets.get(key);
      if (own) own.push(i);
      else buckets.set(key, [i]);
    }
  return {
    within(rectangle) {
      const found = new Set<number>();
      for (const key of keysIn(rectangle, size)) for (const i of buckets.get(key) ?? []) found.add(i);
      return [...found].sort((a, b) => a - b).map(i => chords[i]!);
    },
  };
}

function* keysIn([x0, y0, x1, y1]: Rectangle, size: number): Generator<string> {
  const [left, right, top, bottom] = [x0, x1, y0, y1].map(v => Math.floor(v / size)) as [
    number,
    number,
    number,
    number,
  ];
  for (let row = top; row <= bottom; row++)
    for (let column = left; column <= right; column++) yield `${column} ${row}`;
}
