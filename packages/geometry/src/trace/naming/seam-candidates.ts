import type { EdgeRun } from '../../pattern/types.js';
import { byChance, type Easing } from './seam-chances.js';
import { agreementOfMarks, atMostTelling, marksOf } from './seam-marks.js';
import { runsOf, type SewingLine } from './sewing-lines.js';

/** Lines that may be sewn to one another, and the odds that they are. */
export interface Candidate {
  readonly name: string;
  readonly a: readonly SewingLine[];
  readonly b: readonly SewingLine[];
  readonly runs: { readonly a: readonly EdgeRun[]; readonly b: readonly EdgeRun[] };
  readonly odds: number;
  /** How much likelier its notches make it: by them the way of a seam is told, where the odds do not. */
  readonly marks?: number;
  readonly aMm: number;
  readonly bMm: number;
  /** No surer than this, whatever the odds. */
  readonly most?: number;
}

/** What a candidate takes up, so that nothing else is sewn to it. */
export const edgesTaken = ({ a, b }: Pick<Candidate, 'a' | 'b'>): readonly string[] =>
  [...a, ...b].flatMap(({ piece, edges }) => edges.map(edge => `${piece.name}/${edge}`));

/** Odds that a line which is sewn in every garment is sewn to one that it may be sewn to. */
export const usual = 6;

/** What belongs to the garment outside, not to its lining. */
export const outside = ({ layer }: SewingLine): boolean => layer === 0;

/** How two sides are sewn. */
export interface How {
  readonly runs: Candidate['runs'];
  readonly prior?: number;
  /** How sure it is that the lines are what they are taken for; absent = as sure as their pieces are. */
  readonly sure?: number;
  /** How much likelier what is seen at its ends and bows makes it. */
  readonly agrees?: number;
  /** How often the second side is gone along. */
  readonly times?: number;
  /** mm of the two sides that lie twice: they are gone along, and do not count. */
  readonly twice?: readonly [a: number, b: number];
  readonly most?: number;
}

/** A piece surer than this is what it seems; how sure a seam of others may be, however well their lengths agree. */
const surelyKnown = 0.8,
  unsureSure = 0.85;
/** How sure a seam may be that takes several edges of a piece for one line. */
const partedSure = 0.9;

const surenessOf = (lines: readonly SewingLine[]): number => Math.min(...lines.map(line => line.confidence));

/** A candidate weighed by its lengths against chance. */
export function candidate(
  name: string,
  a: readonly SewingLine[],
  b: readonly SewingLine[],
  easing: Easing,
  { runs, prior = 1, agrees = 1, times = 1, twice = [0, 0], most, sure = surenessOf([...a, ...b]) }: How,
): Candidate {
  const sum = (lines: readonly SewingLine[]): number => lines.reduce((all, line) => all + line.lengthMm, 0);
  const aMm = sum(a),
    bMm = times * sum(b);
  // Edges with a corner between them may be more than one seam.
  const parted = [...a, ...b].some(line => line.edges.length > 1);
  const limit = Math.min(
    most ?? 1,
    parted ? partedSure : 1,
    surenessOf([...a, ...b]) < surelyKnown ? unsureSure : 1,
  );
  const marks = agreementOfMarks(marksOf(runs.a, a), marksOf(runs.b, b));
  const odds =
    (prior * sure * agrees * atMostTelling(marks) * easing(aMm - twice[0] - (bMm - twice[1]), bMm)) /
    byChance(bMm);
  return { name, a, b, runs, odds, marks, aMm, bMm, ...(limit < 1 ? { most: limit } : {}) };
}

/** A line that is sewn to its own mirror image, or to that of its other layer: lengths say nothing of it. */
export function ofItself(
  line: SewingLine,
  { name, odds, most }: { readonly name: string; readonly odds: number; readonly most: number },
): Candidate {
  const runs = runsOf(line, false);
  return {
    name,
    a: [line],
    b: [line],
    runs: { a: runs, b: runs },
    odds,
    aMm: line.lengthMm,
    bMm: line.lengthMm,
    most,
  };
}
