import { distance, lerp, type Point } from '../../vector.js';
import { darkRegions } from './dark-regions.js';
import { type Grey, halved } from './picture.js';
import { type Quad, quadIn } from './quad.js';
import { readTarget, type SeenTarget } from './read-target.js';

/** What looking for targets found: those read, and how many shapes looked like targets and could not be read. */
export interface TargetsSeen {
  readonly targets: readonly SeenTarget[];
  readonly unread: number;
}

/** Dots of the picture in which patches are looked for; a larger one is halved first. */
const enoughDots = 3.4e6;
/** Dots of a target's side at that size: below it no cell can be told from the next. */
const smallestSide = 14;
/** Of the picture's width, the windows that the mean is taken over: about a target's side, seen from far and from near. */
const windows = [1 / 36, 1 / 14];

/** Finds and reads every target, corners to a small part of a dot. */
export function findTargets(grey: Grey): TargetsSeen {
  let small = grey,
    times = 1;
  while (small.width * small.height > enoughDots) {
    small = halved(small);
    times *= 2;
  }
  const found: SeenTarget[] = [];
  const unread: Point[] = [];
  for (const share of windows)
    for (const quad of targetShapes(small, Math.round(small.width * share))) {
      const corners = quad.map(p => ({ x: p.x * times, y: p.y * times })) as unknown as Quad;
      const middle = middleOf(corners);
      const size = distance(corners[0], corners[2]) / 4;
      if (found.some(t => distance(middleOf(t.corners), middle) < size)) continue;
      const target = readTarget(grey, corners);
      if (target) found.push(target);
      else if (!unread.some(p => distance(p, middle) < size)) unread.push(middle);
    }
  return { targets: found, unread: unread.length };
}

const middleOf = (q: Quad): Point => lerp(lerp(q[0], q[2], 1 / 2), lerp(q[1], q[3], 1 / 2), 1 / 2);

function targetShapes(grey: Grey, window: number): readonly Quad[] {
  return darkRegions(grey, window, smallestSide, grey.width / 4)
    .map(region => quadIn(region.hull))
    .filter(quad => quad !== undefined);
}
