import { refusal } from '../curve/tellings.js';
import type { Path } from '../path/path.js';
import { requirePath } from '../path/sound.js';
import type { Ring } from './arcs.js';
import { groundOf } from './ground.js';

/** The surface covered by any of `a` or any of `b`; see {@link covered}. */
export const union = (a: readonly Path[], b: readonly Path[]): readonly Path[] =>
  covered([a, b], ([inA, inB]) => inA !== 0 || inB !== 0);
/** The surface covered by `a` and by `b`; see {@link covered}. */
export const intersection = (a: readonly Path[], b: readonly Path[]): readonly Path[] =>
  covered([a, b], ([inA, inB]) => inA !== 0 && inB !== 0);
/** The surface covered by `a` but not by `b`; see {@link covered}. */
export const difference = (a: readonly Path[], b: readonly Path[]): readonly Path[] =>
  covered([a, b], ([inA, inB]) => inA !== 0 && inB === 0);

/**
 * Sets of closed paths as surfaces: a place is covered where the paths of a set wind round it, and so is the answer
 * ({@link groundOf}). Outer paths run clockwise as seen, holes anticlockwise; no ground is an empty list. Outlines are
 * taken for the sum of their parts, so edges have no names here.
 */
function covered(
  sets: readonly (readonly Path[])[],
  isCovered: (windings: readonly number[]) => boolean,
): readonly Path[] {
  const rings = sets.flatMap((paths, set): readonly Ring[] => paths.map(path => ({ path, set })));
  for (const { path } of rings) requirePath(path);
  const ground = groundOf(rings, sets.length, isCovered);
  if ('openAfter' in ground) throw refusal('region-not-closed', {});
  return ground.boundaries.map(({ path }) => path);
}
