import {
  type Edge,
  type EdgeRef,
  type Path,
  type Pattern,
  type Piece,
  pathLength,
} from '@paperhinge/geometry';
import { isCornerLeft } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { weldedLines } from '@paperhinge/geometry/measure';
import { joined, nearestOnPath, pathEnd, subpath } from '@paperhinge/geometry/paths';
import { partOffsets } from '../hinge/ring.js';
import { endingIn, startingIn } from '../moved-edges/meet.js';

/** Parts of edges that follow one another without a corner and are trued as one line. */
export type Run = readonly [Edge, ...Edge[]];

/** The parts of a piece that are to be trued, clockwise; those of welded edges together. */
export function runsToTrue(pattern: Pattern, piece: Piece, trued: readonly EdgeRef[]): readonly Run[] {
  const welds = weldedLines(pattern, piece).filter(
    ({ first, second, cornerDeg }) =>
      Math.abs(cornerDeg) <= widestWeld || isCornerLeft(pattern, piece, first.edge, second.edge),
  );
  const ring = piece.outline.parts;
  const wanted = (i: number): Edge | undefined => {
    const part = ring[(i + ring.length) % ring.length]!;
    const named = trued.some(t => t.piece === piece.name && t.edge === part.name);
    return part.type === 'edge' && named ? part : undefined;
  };
  const runsOn = (before: Edge, after: Edge): boolean =>
    welds.some(({ first, second }) => first.edge === before.name && second.edge === after.name);
  const runs: Run[] = [];
  for (const i of ring.keys()) {
    const part = wanted(i);
    const before = wanted(i - 1);
    if (!part || (before && before !== part && runsOn(before, part))) continue;
    const run: [Edge, ...Edge[]] = [part];
    for (
      let next = wanted(i + run.length);
      next && runsOn(run.at(-1)!, next);
      next = wanted(i + run.length)
    ) {
      if (run.includes(next)) break;
      run.push(next);
    }
    runs.push(run);
  }
  return runs;
}

/** Degrees. A sharper corner between two edges was drawn on purpose; see `brokenPlaces`. */
const widestWeld = 45;

export const pathOfRun = (run: Run): Path => joined(...run.map(part => part.path));

/** A run's new line cut up again where it passes the corners between its parts. */
export function partedAgain(run: Run, path: Path): readonly Path[] {
  const length = pathLength(path);
  const stops = run.slice(0, -1).map(part => nearestOnPath(path, pathEnd(part.path)).along);
  const paths: Path[] = [];
  for (const [i, to] of [...stops, length].entries()) {
    const from = i === 0 ? 0 : stops[i - 1]!;
    const own = run.length === 1 ? path : subpath(path, from, to);
    const last = paths.at(-1);
    paths.push(last ? startingIn(own, pathEnd(last)) : own);
  }
  // The last part ends where the line does, to the digit.
  if (run.length > 1) paths[paths.length - 1] = endingIn(paths.at(-1)!, pathEnd(path));
  return paths;
}

/** mm along a run of the sharp corners that alterations left on it. */
export function leftOnRun({ leftToTrue = [] }: Pattern, piece: Piece, run: Run): readonly number[] {
  const offsets = partOffsets(piece);
  let before = 0;
  return run.flatMap(part => {
    const start = before - offsets.get(part)!;
    before += pathLength(part.path);
    return leftToTrue
      .filter(left => left.piece === piece.name && left.edge === part.name)
      .map(({ at }) => start + at);
  });
}

/** Which part of a run a place lies on (mm along the run), and where on it. */
export function placeOnRun(run: Run, along: number): { readonly part: Edge; readonly alongMm: number } {
  let left = along;
  for (const part of run) {
    const length = pathLength(part.path);
    if (left <= length + tolerances.joiningGap || part === run.at(-1)) return { part, alongMm: left };
    left -= length;
  }
  return { part: run[0], alongMm: along };
}
