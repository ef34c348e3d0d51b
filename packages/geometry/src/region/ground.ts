import { pathLength } from '../path/length.js';
import type { Path } from '../path/path.js';
import { coincidenceTolerance } from '../tolerance.js';
import { arcsOf, type Origin, type Ring } from './arcs.js';
import { signedArea } from './area.js';
import { loopsOf, type Step, stepOf, stretchesOfLoop } from './loops.js';
import { sidesOf } from './sides.js';

/** A closed, simple boundary: its ground lies on the right of its steps. */
export interface GroundBoundary {
  readonly path: Path;
  readonly steps: readonly Step[];
}

/** Every boundary of the ground, or, where one cannot be closed, what it was cut from last. */
export type Ground = { readonly boundaries: readonly GroundBoundary[] } | { readonly openAfter: Origin };

/**
 * The boundary of the ground that sets of closed chains cover, as `isCovered` says of how often each set winds round a
 * place (a gap in a chain is closed straight). Outer paths run clockwise as seen, holes anticlockwise; each is simple,
 * and grounds that touch at a point stay apart.
 *
 * All curves are cut where they meet; a stretch is boundary where one side of it is covered and the other is not.
 * Error: crossings within 1e-9 mm; ends and curves nearer than `coincidenceTolerance` are one, and what is thinner is
 * nothing.
 */
export function groundOf(
  rings: readonly Ring[],
  sets: number,
  isCovered: (windings: readonly number[]) => boolean,
): Ground {
  let openAfter: Origin | undefined;
  for (const within of drawnTogether) {
    const arcs = arcsOf(rings, within, sets);
    const sides = sidesOf(arcs);
    const steps = arcs.flatMap((arc, i) => {
      const right = isCovered(sides[i]!.right);
      return right === isCovered(sides[i]!.left) ? [] : [stepOf(arc, right)];
    });
    const linked = loopsOf(steps);
    if ('loops' in linked) return { boundaries: boundariesOf(linked.loops, rings, within) };
    openAfter ??= linked.openAfter.origin;
  }
  return { openAfter: openAfter! };
}

/** mm. Where rounding leaves a boundary open, what lies about the opening is drawn together a little more. */
const drawnTogether: readonly number[] = [1, 100, 1e4].map(times => times * coincidenceTolerance);

function boundariesOf(loops: readonly (readonly Step[])[], rings: readonly Ring[], within: number) {
  return loops
    .map(loop => stretchesOfLoop(loop, rings))
    .map((steps): GroundBoundary => ({ path: { segments: steps.map(step => step.curve) }, steps }))
    .filter(({ path }) => !isSliver(path, within));
}

/** Thinner than what counts as one. */
const isSliver = (path: Path, within: number): boolean =>
  Math.abs(signedArea(path)) <= within * pathLength(path);
