import { fitHandles, type Station } from '../../curve/hermite-fit.js';
import { type Cubic, line } from '../../curve/segment.js';
import { type Path, pathOf } from '../../path/path.js';
import { distance, type Point } from '../../vector.js';
import { evenedEdge, evenedRing } from './evened.js';
import type { OutlineCorner } from './outline-corner.js';
import { pointsBetween, straightThrough } from './sharpen.js';

/** mm. Curves are fitted this near to the evened edge; with what evening moves, they stay within 0.1 of the traced one. */
const curveFit = 0.07;
/** Stations between a curve's ends that it is fitted to. */
const stations = 40;

/** The outline between its corners, clockwise; one closed curve if it has none. */
export function edgesOfOutline(points: readonly Point[], corners: readonly OutlineCorner[]): readonly Path[] {
  if (corners.length === 0) return [fewest(evenedRing(points))];
  return corners.map((from, k) => {
    const to = corners[(k + 1) % corners.length]!;
    return edgeThrough(from.at, pointsBetween(points, from, to), to.at);
  });
}

function edgeThrough(from: Point, between: readonly Point[], to: Point): Path {
  if (between.length < 8 || (straightThrough(between) && distance(from, to) > 0))
    return pathOf(line(from, to));
  const even = evenedEdge(from, between, to);
  // The line goes by the corners nearly; the outline goes through them.
  return fewest([{ ...even[0]!, point: from }, ...even.slice(1, -1), { ...even.at(-1)!, point: to }]);
}

/** The fewest cubics, one direction at each joint, that pass every station within `curveFit`; each as long as may be. */
function fewest(even: readonly Station[]): Path {
  const segments: Cubic[] = [];
  const last = even.length - 1;
  let from = 0;
  while (from < last) {
    let good = from + 1,
      bad = last + 1,
      to = last;
    let curve = fitBetween(even, from, good).curve;
    while (bad - good > 1) {
      const fit = fitBetween(even, from, to);
      if (fit.deviation <= curveFit) {
        good = to;
        ({ curve } = fit);
      } else bad = to;
      to = (good + bad) >> 1;
    }
    segments.push(curve);
    from = good;
  }
  return { segments };
}

function fitBetween(even: readonly Station[], from: number, to: number) {
  const count = Math.min(stations, to - from - 1);
  const inner = Array.from(
    { length: count },
    (_, k) => even[from + Math.round(((k + 1) * (to - from)) / (count + 1))]!,
  );
  return fitHandles(even[from]!, even[to]!, inner, curveFit);
}
