import { PatternError } from '../errors.js';
import { pathLength } from '../path/length.js';
import { edgePath, pieceNamed, runLabel } from '../pattern/outline.js';
import type { EdgeRun, NotchStyle, Pattern, Seam } from '../pattern/types.js';
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
  /** `front.armhole`, with the notch's own name where it has one: `front.armhole (front)`. */
  readonly label: string;
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
 * Lays out one side of a seam. Lengths are stitching lengths; mouths of darts take none, as they are closed.
 * @throws PatternError `unknown-piece`, `unknown-edge`; `empty-seam` where the side lists no edge
 */
export function laidOut(pattern: Pattern, seam: Seam, side: 'a' | 'b'): SeamSide {
  const runs: LaidRun[] = [],
    notches: LaidNotch[] = [];
  let along = 0,
    gapMm = 0;
  if (seam[side].length === 0)
    throw new PatternError('empty-seam', {
      message: `Side ${side} of seam "${seam.name}" lists no edge.`,
      remedy: 'Name the edges that are sewn there, or leave the seam out.',
    });
  for (const [i, run] of seam[side].entries()) {
    const piece = pieceNamed(pattern, run.piece);
    const lengthMm = pathLength(edgePath(piece, run.edge));
    const gap = i === 0 ? 0 : gapBetween(pattern, seam[side][i - 1]!, run);
    const fromMm = along + gap;
    runs.push({ run, fromMm, lengthMm });
    const travelled = (at: number): number => (run.reversed ? lengthMm - at : at);
    const within = gapsWithin(piece, run.edge);
    const bridged = (at: number): number =>
      within.reduce((sum, g) => (travelled(g.alongMm) < travelled(at) ? sum + g.gapMm : sum), 0);
    for (const { edge, at, style, name } of piece.notches)
      if (edge === run.edge)
        notches.push({
          alongMm: fromMm + travelled(at) + bridged(at),
          style,
          label: name === undefined ? runLabel(run) : `${runLabel(run)} (${name})`,
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

/** `front.side-upper + front.side-lower`; an edge that stands twice in the garment is named once. */
export const sideLabel = (side: SeamSide): string =>
  [...new Set(side.runs.map(r => runLabel(r.run)))].join(' + ');

/** Ease wanted between the sides of a seam, a − b in mm; a percentage is one of side b. */
export const easeWanted = (seam: Seam, bMm: number): number =>
  'mm' in seam.ease ? seam.ease.mm : (seam.ease.percent / 100) * bMm;
