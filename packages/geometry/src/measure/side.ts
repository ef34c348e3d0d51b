import { runLength } from '../joining/runs-taken.js';
import { pieceNamed } from '../pattern/outline.js';
import type { EdgeRef, EdgeRun, NotchStyle, Pattern } from '../pattern/types.js';
import { coincidenceTolerance } from '../tolerance.js';
import { gapBetween, gapsWithin } from './gap-between.js';

/**
 * One edge of a seam's side, laid out along it: where it begins, in mm from the side's beginning with gaps counted,
 * and its length.
 */
export interface LaidRun {
  readonly run: EdgeRun;
  readonly fromMm: number;
  readonly lengthMm: number;
}

/** A notch as the hand meets it along a side of a seam, in mm from the side's beginning, gaps counted. */
export interface LaidNotch {
  readonly alongMm: number;
  readonly style: NotchStyle;
  /** The notch's own name, where it has one. */
  readonly name?: string;
  readonly run: EdgeRun;
}

/** One side of a seam as it is walked: its runs end to end, darts closed, and the notches on it in order. */
export interface SeamSide {
  readonly runs: readonly LaidRun[];
  /** Stitching length, gaps not counted. */
  readonly lengthMm: number;
  /** Length with the straight gaps in it over which the other side is sewn to nothing (a band across an inset). */
  readonly reachMm: number;
  readonly notches: readonly LaidNotch[];
}

/**
 * Lays out one side of a seam, its runs as they are taken. Lengths are stitching lengths; mouths of darts and pleats
 * take none, as they are closed.
 * @throws PatternError `unknown-piece`, `unknown-edge`
 */
export function laidOut(pattern: Pattern, side: readonly EdgeRun[]): SeamSide {
  const runs: LaidRun[] = [],
    notches: LaidNotch[] = [];
  let along = 0,
    gapMm = 0;
  for (const [i, run] of side.entries()) {
    const piece = pieceNamed(pattern, run.piece);
    const lengthMm = runLength(pattern, run);
    const gap = i === 0 ? 0 : gapBetween(pattern, side[i - 1]!, run);
    const fromMm = along + gap;
    runs.push({ run, fromMm, lengthMm });
    const from = run.part?.from ?? 0,
      to = from + lengthMm;
    const travelled = (at: number): number => (run.reversed ? to - at : at - from);
    const holds = (at: number): boolean =>
      at >= from - coincidenceTolerance && at <= to + coincidenceTolerance;
    const within = gapsWithin(piece, run.edge).filter(g => g.alongMm > from && g.alongMm < to);
    const bridged = (at: number): number =>
      within.reduce((sum, g) => (travelled(g.alongMm) < travelled(at) ? sum + g.gapMm : sum), 0);
    for (const { edge, at, style, name } of piece.notches)
      if (edge === run.edge && holds(at))
        notches.push({
          alongMm: fromMm + travelled(at) + bridged(at),
          style,
          ...(name === undefined ? {} : { name }),
          run,
        });
    const inner = within.reduce((sum, g) => sum + g.gapMm, 0);
    along = fromMm + lengthMm + inner;
    gapMm += gap + inner;
  }
  return {
    runs,
    lengthMm: along - gapMm,
    reachMm: along,
    notches: notches.sort((p, q) => p.alongMm - q.alongMm),
  };
}

/** Where one run ends and the next begins, in mm from the side's beginning: a seam or dart that this seam crosses. */
export const innerJoints = (side: SeamSide): readonly number[] => side.runs.slice(1).map(r => r.fromMm);

/** The edges of a side in its order; one that stands there several times is named once. */
export const edgesOfSide = ({ runs }: SeamSide): readonly EdgeRef[] =>
  runs
    .map(({ run: { piece, edge } }) => ({ piece, edge }))
    .filter((ref, i, all) => all.findIndex(o => o.piece === ref.piece && o.edge === ref.edge) === i);
