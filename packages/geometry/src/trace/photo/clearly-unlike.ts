import type { FloorSeen } from './edge-of-patch.js';
import type { Unlikeness } from './ground.js';

/** Times the limit: what differs by less in the middle is left to be found by its edge. */
const clearly = 2;

/**
 * Marks cells that are unlike the ground, in patches that are so without a doubt.
 * @param limit in logarithms, from which a cell is unlike the ground
 */
export function clearlyUnlike({ map, codes }: FloorSeen, { values }: Unlikeness, limit: number): Uint8Array {
  const marked = new Uint8Array(values.length);
  for (let k = 0; k < marked.length; k++)
    if (values[k]! > limit && codes[k] === 0 && map.from[k] !== 0) marked[k] = 1;
  for (const own of groupsOf(marked, map.width)) {
    const middle = own.map(k => values[k]!).sort((a, b) => a - b)[own.length >> 1]!;
    if (middle < clearly * limit) for (const k of own) marked[k] = 0;
  }
  return marked;
}

/** Marked cells that are joined by their sides. */
function* groupsOf(marked: Uint8Array, width: number): Generator<readonly number[]> {
  const met = new Uint8Array(marked.length);
  for (let seed = 0; seed < marked.length; seed++) {
    if (marked[seed] !== 1 || met[seed] === 1) continue;
    const own = [seed];
    met[seed] = 1;
    for (let at = 0; at < own.length; at++) {
      const k = own[at]!,
        i = k % width;
      for (const next of [i > 0 ? k - 1 : -1, i < width - 1 ? k + 1 : -1, k - width, k + width])
        if (marked[next] === 1 && met[next] === 0) {
          met[next] = 1;
          own.push(next);
        }
    }
    yield own;
  }
}
