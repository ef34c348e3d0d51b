import {
  type EdgeRef,
  type EdgeRun,
  edgePath,
  type Pattern,
  pathLength,
  pieceNamed,
} from '@paperhinge/geometry';
import { abs, infinite, max, min } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { eachOnce, edgeOf, hasEdge, sameEdge } from '../edge-refs.js';

import type { Became, EdgeSpan, SpanBecame } from './became.js';
import { imagesBetween, spansOf } from './stretches.js';
import { followThing, stillThere } from './things.js';

/** A pattern before and after a step. */
export interface Step {
  readonly before: Pattern;
  readonly after: Pattern;
  readonly became: Became;
}

const near = tolerances.coincidenceTolerance;

/**
 * A run of a seam or fastening after a step: nowhere where its edge is gone. What was sewn as far as a corner still
 * is; a whole edge stays whole, however long it is now; of an edge that two were joined to it is a part.
 */
export function followedRun({ before, after, became }: Step, run: EdgeRun): readonly EdgeRun[] {
  const spans = spansOf(became, run);
  if (spans.length === 0) {
    const there = followThing(became, edgeOf(run));
    return there.length === 1 && sameEdge(there[0]!, run) ? [run] : there.map(ref => ({ ...run, ...ref }));
  }
  const { from, to } = run.part ?? { from: 0, to: lengthOf(before, run) };
  const all = imagesBetween(spans, from, to);
  // What lies in two places now (a mirrored half) stays sewn where it lay.
  const images = all.filter((image, i) => !all.slice(0, i).some(other => overlap(other, image)));
  const ordered = run.reversed ? [...images].reverse() : images;
  const targets = eachOnce(ordered, (one, other) => sameEdge(one.now!, other.now!));
  return targets.map(({ now }) => {
    const own = images.filter(image => sameEdge(image.now!, now!));
    const runs = {
      ...run,
      ...edgeOf(now!),
      reversed: run.reversed !== now!.from > now!.to,
    };
    const { part: _, ...whole } = runs;
    const extent = partNow(became, own);
    if (!extent) return whole;
    const most = hasEdge(after, whole) ? lengthOf(after, whole) : extent.to;
    return { ...whole, part: { from: extent.from, to: min(extent.to, most) } };
  });
}

const overlap = (a: SpanBecame, b: SpanBecame): boolean =>
  min(a.was.to, b.was.to) - max(a.was.from, b.was.from) > near;

/** Runs that follow each other on one edge without a gap, as those of edges that were joined do, are one run. */
export function joinedRuns(after: Pattern, runs: readonly EdgeRun[]): readonly EdgeRun[] {
  const result: EdgeRun[] = [];
  for (const run of runs) {
    const last = result.at(-1);
    const [low, high] = run.reversed ? [run, last] : [last, run];
    const goesOn =
      last?.part && run.part && sameEdge(last, run) && last.reversed === run.reversed
        ? abs(low!.part!.to - high!.part!.from) <= near
        : false;
    if (!goesOn) result.push(run);
    else result[result.length - 1] = withPart(after, run, low!.part!.from, high!.part!.to);
  }
  return result;
}

function withPart(after: Pattern, { part: _, ...run }: EdgeRun, from: number, to: number): EdgeRun {
  return from <= near && to >= lengthOf(after, run) - near ? run : { ...run, part: { from, to } };
}

const lengthOf = (pattern: Pattern, { piece, edge }: EdgeRef): number =>
  pathLength(edgePath(pieceNamed(pattern, piece), edge));

/** The part of the new edge that stretches of the old one take up; nothing where that is all of it. */
function partNow(
  became: Became,
  own: readonly SpanBecame[],
): { readonly from: number; readonly to: number } | undefined {
  const on = own[0]!.now!;
  const all = stillThere(became.edges).filter(now => sameEdge(now, on));
  const [least, most] = bounds(all);
  const [from, to] = bounds(stillThere(own));
  // Beyond the outermost old cloth lies only what a step added there: it is sewn with its neighbour.
  const isFirst = from <= least + near,
    isLast = to >= most - near;
  if (isFirst && isLast) return undefined;
  return { from: isFirst ? 0 : from, to: isLast ? infinite : to };
}

const bounds = (spans: readonly EdgeSpan[]): readonly [number, number] => {
  const ends = spans.flatMap(s => [s.from, s.to]);
  return [min(...ends), max(...ends)];
};
