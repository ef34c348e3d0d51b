import { refusal } from '../curve/tellings.js';
import { pathLength } from '../path/length.js';
import type { Path } from '../path/path.js';
import { requirePath } from '../path/sound.js';
import { coincidenceTolerance } from '../tolerance.js';
import { arcsOf, type Ring } from './arcs.js';
import { signedArea } from './area.js';
import { loopsOf, pathOfLoop, stepOf } from './loops.js';
import { sidesOf } from './sides.js';

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
 * The boundary of the ground that sets of closed paths cover, as `isCovered` says of how often each set winds round a
 * place (a gap in a path is closed straight). Outer paths run clockwise as seen, holes anticlockwise; each is simple,
 * surfaces that touch at a point or along nothing stay apart, and no ground is an empty list.
 *
 * All curves are cut where they meet; a stretch is boundary where one side of it is covered and the other is not.
 * Error: crossings within 1e-9 mm; ends and curves nearer than `coincidenceTolerance` are one, and what is thinner is
 * nothing.
 */
function covered(
  sets: readonly (readonly Path[])[],
  isCovered: (windings: readonly number[]) => boolean,
): readonly Path[] {
  const rings = sets.flatMap((paths, set): readonly Ring[] => paths.map(path => ({ path, set })));
  for (const { path } of rings) requirePath(path);
  // Where rounding leaves a boundary open, what lies about the opening is drawn together a little more.
  for (const within of [1, 100, 1e4].map(times => times * coincidenceTolerance)) {
    const arcs = arcsOf(rings, within, sets.length);
    const sides = sidesOf(arcs);
    const steps = arcs.flatMap((arc, i) => {
      const right = isCovered(sides[i]!.right);
      return right === isCovered(sides[i]!.left) ? [] : [stepOf(arc, right)];
    });
    const loops = loopsOf(steps);
    if (loops) return loops.map(loop => pathOfLoop(loop, rings)).filter(path => !isSliver(path, within));
  }
  throw refusal('region-not-closed', {});
}

/** Thinner than what counts as one. */
const isSliver = (path: Path, within: number): boolean =>
  Math.abs(signedArea(path)) <= within * pathLength(path);
