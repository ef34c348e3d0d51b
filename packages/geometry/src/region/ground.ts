import { pathLength } from '../path/length.js';
import type { Path } from '../path/path.js';
import { coincidenceTolerance } from '../tolerance.js';
import { type Arc, arcsOf, type Origin, type Ring } from './arcs.js';
import { signedArea } from './area.js';
import { loopsOf, type Step, stepOf, stretchesOfLoop } from './loops.js';
import { mended, type Use } from './mended.js';
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
  const open: { readonly arcs: readonly Arc[]; readonly uses: readonly Use[]; readonly within: number }[] =
    [];
  for (const within of drawnTogether) {
    const arcs = arcsOf(rings, within, sets);
    const sides = sidesOf(arcs);
    const uses = sides.map(({ right, left }) => (Number(isCovered(right)) - Number(isCovered(left))) as Use);
    const linked = loopsOf(stepsOf(arcs, uses));
    if ('loops' in linked) return { boundaries: boundariesOf(linked.loops, rings, within) };
    openAfter ??= linked.openAfter.origin;
    open.push({ arcs, uses, within });
  }
  for (const { arcs, uses, within } of open) {
    const linked = loopsOf(stepsOf(arcs, mended(arcs, uses, thinnest) ?? uses));
    if ('loops' in linked) return { boundaries: boundariesOf(linked.loops, rings, within) };
  }
  return { openAfter: openAfter! };
}

const stepsOf = (arcs: readonly Arc[], uses: readonly Use[]): readonly Step[] =>
  arcs.flatMap((arc, i) => (uses[i] === 0 ? [] : [stepOf(arc, uses[i] === 1)]));

/** mm. Where rounding leaves a boundary open, what lies about the opening is drawn together a little more. */
const drawnTogether: readonly number[] = [1, 100, 1e4].map(times => times * coincidenceTolerance);

/** mm. What is thinner may be covered or not where else the boundary would stay open. */
const thinnest = Math.max(...drawnTogether);

function boundariesOf(loops: readonly (readonly Step[])[], rings: readonly Ring[], within: number) {
  return loops
    .map(loop => stretchesOfLoop(loop, rings))
    .map((steps): GroundBoundary => ({ path: { segments: steps.map(step => step.curve) }, steps }))
    .filter(({ path }) => !isSliver(path, within));
}

/** Thinner than what counts as one. */
const isSliver = (path: Path, within: number): boolean =>
  Math.abs(signedArea(path)) <= within * pathLength(path);
