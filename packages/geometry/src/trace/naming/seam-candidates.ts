import type { EdgeRun } from '../../pattern/types.js';
import { byChance, type Easing } from './seam-chances.js';
import type { SewingLine } from './sewing-lines.js';

/** Lines that may be sewn to one another, and the odds that they are. */
export interface Candidate {
  readonly name: string;
  readonly a: readonly SewingLine[];
  readonly b: readonly SewingLine[];
  readonly runs: { readonly a: readonly EdgeRun[]; readonly b: readonly EdgeRun[] };
  readonly odds: number;
  readonly aMm: number;
  readonly bMm: number;
  /** No surer than this, whatever the odds. */
  readonly most?: number;
}

/** Odds that a line which is sewn in every garment is sewn to one that it may be sewn to. */
export const usual = 6;

/** What belongs to the garment outside, not to its lining. */
export const outside = ({ layer }: SewingLine): boolean => layer === 0;

/** How two sides are sewn. */
export interface How {
  readonly runs: Candidate['runs'];
  readonly prior?: number;
  /** How often the second side is gone along. */
  readonly times?: number;
  readonly most?: number;
}

/** How sure a seam may be that takes several edges of a piece for one line. */
const partedSure = 0.9;

/** A candidate weighed by its lengths against chance. */
export function candidate(
  name: string,
  a: readonly SewingLine[],
  b: readonly SewingLine[],
  easing: Easing,
  { runs, prior = 1, times = 1, most }: How,
): Candidate {
  const sum = (lines: readonly SewingLine[]): number => lines.reduce((all, line) => all + line.lengthMm, 0);
  const aMm = sum(a),
    bMm = times * sum(b);
  const sure = Math.min(...[...a, ...b].map(line => line.confidence));
  // Edges with a corner between them may be more than one seam.
  const parted = [...a, ...b].some(line => line.edges.length > 1);
  const limit = Math.min(most ?? 1, parted ? partedSure : 1);
  const odds = (prior * sure * easing(aMm - bMm, bMm)) / byChance(bMm);
  return { name, a, b, runs, odds, aMm, bMm, ...(limit < 1 ? { most: limit } : {}) };
}
