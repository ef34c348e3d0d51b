import { oncePerAll } from '../once-per.js';
import { pathLength } from '../path/length.js';
import { copiesInGarment } from '../pattern/copies.js';
import { edgePath, pieceNamed } from '../pattern/outline.js';
import { refusal } from '../pattern/tellings.js';
import type { EdgeRun, Pattern, Piece, Seam } from '../pattern/types.js';
import { coincidenceTolerance, joiningGap, largestCoordinate, seamTolerance } from '../tolerance.js';
import { withFoldedEnds } from './folded-ends.js';

/** How the runs of a seam are counted: each as it is written, or as often as its piece stands in the garment. */
export type RunsCounted = 'written' | 'garment';

/** The sides of a seam as they are measured against each other, each run as often as it is sewn there. */
export interface RunsTaken {
  readonly counted: RunsCounted;
  readonly a: readonly EdgeRun[];
  readonly b: readonly EdgeRun[];
}

/** Stitching length of a run, in mm: of its edge, or of the part of it that is sewn. @throws PatternError `unknown-piece`, `unknown-edge` */
export function runLength(pattern: Pattern, run: EdgeRun): number {
  const path = edgePath(pieceNamed(pattern, run.piece), run.edge);
  return run.part ? run.part.to - run.part.from : pathLength(path);
}

/** mm by which the sides of a seam may differ and still match: the seam's own, else the pattern's, else 1/32 in. */
export const toleranceOf = (pattern: Pattern, seam: Seam): number =>
  seam.tolerance ?? pattern.tolerance ?? seamTolerance;

/**
 * Ease wanted between the sides of a seam, a − b in mm; a percentage is one of side b.
 * @throws PatternError `length-out-of-range`
 */
export function easeWanted({ name, ease }: Seam, bMm: number): number {
  const mm = 'mm' in ease ? ease.mm : (ease.percent / 100) * bMm;
  if (!(Math.abs(mm) <= largestCoordinate)) throw refusal('length-out-of-range', {}, { seam: name });
  return mm;
}

/**
 * The runs of a seam as its sides are held against each other. Both are taken as written where they list as many
 * copies (a sleeve's cap, a front's and a back's armhole: one of each) and where they match so. Where one side is
 * whole, every copy of its pieces listed, and the other's pieces are cut several times but listed once (a waistband
 * drawn whole, one front and one back of two), each run is taken as often as its piece stands in the garment, unless
 * that is farther off: a band folded along its length is a fold's two halves, and goes round once. The end of a tie
 * that is folded along its length is half as broad, where that matches better.
 * @throws PatternError `unknown-piece`, `unknown-edge`; `empty-seam` where a side lists no edge
 */
export const runsTaken: (pattern: Pattern, seam: Seam) => RunsTaken = /* @__PURE__ */ oncePerAll(
  (pattern, seam) => decidedBy(pattern, seam),
  takenRuns,
);

/** What decides how the sides of a seam are counted and whether they match: the seam, its pieces and the tolerance. */
export const decidedBy = ({ pieces, tolerance }: Pattern, seam: Seam): readonly object[] => [
  seam,
  toleranceKey(tolerance),
  ...pieces.filter(({ name }) => [...seam.a, ...seam.b].some(run => run.piece === name)),
];

/** One object for each tolerance there is, as what is known is known by objects. */
const toleranceKeys = new Map<number | undefined, object>();
function toleranceKey(tolerance: number | undefined): object {
  const key = toleranceKeys.get(tolerance) ?? {};
  toleranceKeys.set(tolerance, key);
  return key;
}

function takenRuns(pattern: Pattern, seam: Seam): RunsTaken {
  requireRuns(seam);
  const folded = withFoldedEnds(pattern, seam);
  const plain = takenAsDrawn(pattern, seam);
  if (folded === seam) return plain;
  const doubled = takenAsDrawn(pattern, folded);
  return offBy(seam, sumsTaken(pattern, doubled)) < offBy(seam, sumsTaken(pattern, plain)) ? doubled : plain;
}

/** Both sides as they are taken, in mm. */
export const sumsTaken = (pattern: Pattern, { a, b }: RunsTaken): SideSums => {
  const sum = (side: readonly EdgeRun[]) => side.reduce((mm, run) => mm + runLength(pattern, run), 0);
  return { aMm: sum(a), bMm: sum(b) };
};

function takenAsDrawn(pattern: Pattern, seam: Seam): RunsTaken {
  const written = sumsOf(pattern, seam, 'written'),
    garment = sumsOf(pattern, seam, 'garment');
  const times = (['a', 'b'] as const).map(side => seam[side].map(run => timesSewn(pattern, seam[side], run)));
  const whole = times.map(side => side.every(t => t <= 1));
  const taken: RunsTaken = { counted: 'written', a: seam.a, b: seam.b };
  const alike = times.flat().every(t => t === times[0]![0]);
  if (alike || matches(pattern, seam, written)) return taken;
  const isLikelier = whole[0] !== whole[1] && offBy(seam, garment) <= offBy(seam, written);
  if (!isLikelier && !matches(pattern, seam, garment)) return taken;
  return { counted: 'garment', a: everyCopy(pattern, seam.a), b: everyCopy(pattern, seam.b) };
}

function requireRuns(seam: Seam): void {
  for (const side of [seam.a, seam.b])
    if (side.length === 0) throw refusal('empty-seam', { name: seam.name }, { seam: seam.name });
}

/** Lengths of both sides of a seam in mm, counted one way. */
export interface SideSums {
  readonly aMm: number;
  readonly bMm: number;
}

/** Both sides of a seam in mm, counted as written or over the whole garment. */
export function sumsOf(pattern: Pattern, seam: Seam, counted: RunsCounted): SideSums {
  const sum = (side: readonly EdgeRun[]) =>
    side.reduce(
      (mm, run) => mm + (counted === 'garment' ? timesSewn(pattern, side, run) : 1) * runLength(pattern, run),
      0,
    );
  return { aMm: sum(seam.a), bMm: sum(seam.b) };
}

/** Whether two sides differ by the ease wanted. Lengths carry rounding: a difference of exactly the tolerance matches. */
export const matches = (pattern: Pattern, seam: Seam, sums: SideSums): boolean =>
  offBy(seam, sums) <= toleranceOf(pattern, seam) + coincidenceTolerance;

/** mm by which two sides miss the ease wanted. */
const offBy = (seam: Seam, { aMm, bMm }: SideSums): number => Math.abs(aMm - bMm - easeWanted(seam, bMm));

/** How often a run of a side stands there in the whole garment, for each time that the side lists it. */
function timesSewn(pattern: Pattern, side: readonly EdgeRun[], run: EdgeRun): number {
  const listed = side.filter(other => isSameRun(other, run)).length;
  return copiesInGarment(pieceNamed(pattern, run.piece)) / listed;
}

/** Left and right of one edge, each told from its own end, differ by the rounding of the drawing. */
const isSameRun = (one: EdgeRun, other: EdgeRun): boolean =>
  one.piece === other.piece &&
  one.edge === other.edge &&
  (one.part === undefined) === (other.part === undefined) &&
  Math.abs((one.part?.from ?? 0) - (other.part?.from ?? 0)) <= joiningGap &&
  Math.abs((one.part?.to ?? 0) - (other.part?.to ?? 0)) <= joiningGap;

/**
 * A side with each run as often as it is sewn, in the order of the sewing: mirror images run back the way they came
 * (front, back, and again back, front), copies that are cut alike follow one another. A run that is listed as often as it
 * is sewn stands between the two halves.
 */
function everyCopy(pattern: Pattern, side: readonly EdgeRun[]): readonly EdgeRun[] {
  const times = (run: EdgeRun) => Math.max(1, Math.round(timesSewn(pattern, side, run)));
  const single = side.filter(run => times(run) === 1),
    several = side.filter(run => times(run) > 1);
  if (several.length === 0) return side;
  const back = several.toReversed().map((run): EdgeRun => ({ ...run, reversed: !run.reversed }));
  const most = Math.max(...several.map(times));
  const mirrors = several.some(run => standsMirrored(pieceNamed(pattern, run.piece)));
  if (single.length > 0) return single.includes(side[0]!) ? [...back, ...side] : [...side, ...back];
  return Array.from({ length: most }, (_, i) => i).flatMap(i =>
    (mirrors && i % 2 === 1 ? back : several).filter(run => times(run) > i),
  );
}

const standsMirrored = (piece: Piece): boolean =>
  piece.cutting.mirrored || piece.outline.parts.some(p => p.type === 'edge' && p.kind === 'fold');
