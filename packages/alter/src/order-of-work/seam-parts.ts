import {
  type EdgeRef,
  type EdgeRun,
  edgeNamed,
  edgePath,
  type Pattern,
  pathLength,
  pieceNamed,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { neighboursOf } from '@paperhinge/geometry/pattern';
import { distinctRuns } from '../edge-refs.js';
import { asThing } from './jobs.js';
import type { SewnInPart } from './sentences.js';

/**
 * The edges of a seam that it sews in part only, each told from the end that says most: what is sewn along the greater
 * part of its edge by what it leaves out there, the rest by what it sews.
 * @param byWhatIsLeft always by what it leaves out
 */
export const sewnInPart = (
  pattern: Pattern,
  runs: readonly EdgeRun[],
  { byWhatIsLeft = false } = {},
): readonly SewnInPart[] =>
  distinctRuns(runs).flatMap(run => {
    if (!run.part) return [];
    const piece = pieceNamed(pattern, run.piece);
    const edgeMm = pathLength(edgePath(piece, run.edge));
    const fromStart = run.part.from,
      fromEnd = edgeMm - run.part.to;
    const sewnMm = run.part.to - run.part.from;
    if (Math.max(fromStart, fromEnd) <= tolerances.joiningGap) return [];
    const atStart = fromStart <= tolerances.joiningGap,
      atEnd = fromEnd <= tolerances.joiningGap;
    // What is sewn along the greater part of its edge is told by what it leaves out.
    const most = byWhatIsLeft || sewnMm > edgeMm / 2;
    const tellsFromEnd = atStart ? most : atEnd ? !most : run.reversed;
    const { start, end } = neighboursOf(piece, run.edge);
    const [fromMm, toMm] = tellsFromEnd ? [fromEnd, fromEnd + sewnMm] : [fromStart, fromStart + sewnMm];
    const beside = { piece: run.piece, edge: tellsFromEnd ? end : start };
    return [{ edge: asThing(run), beside, fromMm, toMm, toEnd: toMm >= edgeMm - tolerances.joiningGap }];
  });

/** The runs of a seam without what a zip along them opens, where no opening of the edge says it already. */
export const belowZip = (pattern: Pattern, runs: readonly EdgeRun[]): readonly EdgeRun[] =>
  runs.map(run => {
    const edge = edgeNamed(pieceNamed(pattern, run.piece), run.edge);
    const zip = pattern.fastenings?.find(
      ({ kind, along }) => kind === 'zip' && along.piece === run.piece && along.edge === run.edge,
    );
    const edgeMm = pathLength(edgePath(pieceNamed(pattern, run.piece), run.edge));
    if (!zip?.length || run.part || (edge.opening ?? 0) > 0 || zip.length >= edgeMm) return run;
    const part = zip.along.reversed ? { from: 0, to: edgeMm - zip.length } : { from: zip.length, to: edgeMm };
    return { ...run, part };
  });

/** mm that a seam leaves open for a zip, a placket or for turning, as its edges say; 0 where the runs themselves leave it out. */
export const leftOpenMm = (pattern: Pattern, runs: readonly EdgeRun[]): number =>
  Math.max(
    0,
    ...runs
      .filter(run => run.part === undefined && !isOpenWhole(pattern, run))
      .map(({ piece, edge }) => edgeNamed(pieceNamed(pattern, piece), edge).opening ?? 0),
  );

/** Whether an edge is open from end to end, as a front is: what is sewn to it faces it and leaves nothing open. */
export function isOpenWhole(pattern: Pattern, { piece: name, edge }: EdgeRef): boolean {
  const piece = pieceNamed(pattern, name);
  const { opening = 0 } = edgeNamed(piece, edge);
  return opening > 0 && opening >= pathLength(edgePath(piece, edge)) - tolerances.seamTolerance;
}
