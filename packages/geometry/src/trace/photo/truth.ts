import type { Finding } from '../../telling.js';
import { cross, distance, type Point, subtract } from '../../vector.js';
import { matrixOf } from './camera.js';
import { dotAt, type Shot } from './floor-map.js';
import { hullOf } from './hull.js';
import type { TracedPiece } from './photo-trace.js';
import type { CornerLeft, Solution } from './solve.js';
import { paperCorners, targetSide } from './target-sheet.js';
import { finding } from './tellings.js';
import { mapOf } from './unknowns.js';

/** How true a solution is: what the corners of the targets leave, mm on the floor. */
export interface Truth {
  /** Root of the mean square over all corners. */
  readonly residualMm: number;
  /** The worst target, in the mean of its corners, and the sheet it is on. */
  readonly worstMm: number;
  readonly worstSheet: number;
}

/** What the corners say of a solution. */
export function truthOf(solution: Solution, shots: readonly Shot[]): Truth {
  const dots = shots.map(dotAt);
  const mm = (c: CornerLeft) => c.off * dots[c.picture]!;
  const square = solution.used.reduce((sum, c) => sum + mm(c) ** 2, 0);
  const byTarget = new Map<string, { sheet: number; sum: number; count: number }>();
  for (const c of solution.used) {
    const key = `${c.picture} ${c.sheet} ${c.place}`;
    const entry = byTarget.get(key) ?? { sheet: solution.sheets[c.sheet]!.number, sum: 0, count: 0 };
    byTarget.set(key, { ...entry, sum: entry.sum + mm(c), count: entry.count + 1 });
  }
  const worst = [...byTarget.values()].reduce((a, b) => (b.sum / b.count > a.sum / a.count ? b : a));
  return {
    residualMm: Math.sqrt(square / solution.used.length),
    worstMm: worst.sum / worst.count,
    worstSheet: worst.sheet,
  };
}

/** Sheets with which a picture is measured as well as it can be. */
const enoughSheets = 4;
/** deg. Seen more aslant, the far side of the floor is shown too small. */
const mostTilt = 40;
/** mm to a dot. */
const coarseDot = 0.6;
/** Of a sheet's corners: with more that lie elsewhere than they should, the sheet does not lie flat. */
const strayShare = 0.15;
/** mm. A piece farther outside the ring of sheets is measured by what lies beside it. */
const mostBeyond = 150;

/** What a maker should know of how true her tracing is, and what would better it. */
export function truthFindings(
  solution: Solution,
  shots: readonly Shot[],
  pieces: readonly TracedPiece[],
): readonly Finding[] {
  const { residualMm, worstMm, worstSheet } = truthOf(solution, shots);
  const { sheets } = solution;
  const numbers = new Set(sheets.map(s => s.number));
  const tilts = solution.cameras.map(
    c => (Math.acos(Math.min(1, Math.abs(matrixOf(c.turn)[8]))) * 180) / Math.PI,
  );
  return [
    finding('note', 'trace-truth', {}, { residualMm, worstMm, sheet: worstSheet }),
    ...(sheets.length < enoughSheets
      ? [finding('warning', 'few-sheets', {}, { sheets: sheets.length })]
      : []),
    ...[...numbers].flatMap(number => sheetFindings(solution, shots, number)),
    ...shots.flatMap((shot, i) => {
      const picture = solution.order[i]! + 1;
      const dotMm = dotAt(shot);
      return [
        ...(tilts[i]! > mostTilt
          ? [finding('warning', 'picture-aslant', {}, { picture, tiltDeg: tilts[i]! })]
          : []),
        ...(dotMm > coarseDot ? [finding('warning', 'picture-coarse', {}, { picture, dotMm })] : []),
      ];
    }),
    ...beyondSheets(solution, pieces),
    ...pieces
      .filter(p => p.onPaper > 0)
      .map(({ name }) => finding('warning', 'piece-touches-sheet', { piece: name }, { piece: name })),
  ];
}

function sheetFindings(solution: Solution, shots: readonly Shot[], number: number): readonly Finding[] {
  const own = (c: CornerLeft) => solution.sheets[c.sheet]!.number === number;
  const [used, strays] = [solution.used.filter(own), solution.strays.filter(own)];
  const dot = Math.max(...shots.map(dotAt));
  const offMm = Math.max(0, ...strays.map(c => c.off * dot));
  return [
    ...(strays.length > strayShare * (used.length + strays.length)
      ? [finding('warning', 'sheet-not-flat', {}, { sheet: number, offMm })]
      : []),
    ...(solution.sheets.filter(s => s.number === number && s.copy > 0).length > 0
      ? [finding('note', 'sheet-laid-twice', {}, { sheet: number })]
      : []),
  ];
}

function beyondSheets(solution: Solution, pieces: readonly TracedPiece[]): readonly Finding[] {
  const ring = hullOf(solution.sheets.flatMap((s, i) => paperCorners(s.paper, mapOf(solution.places[i]!))));
  return pieces.flatMap(({ name, points }) => {
    const beyondMm = Math.max(0, ...points.filter((_, i) => i % 8 === 0).map(p => outside(ring, p)));
    return beyondMm > mostBeyond
      ? [finding('warning', 'piece-beyond-sheets', { piece: name }, { piece: name, beyondMm })]
      : [];
  });
}

/** mm from a clockwise ring outwards; 0 within. */
function outside(ring: readonly Point[], p: Point): number {
  let far = 0;
  ring.forEach((a, i) => {
    const b = ring[(i + 1) % ring.length]!;
    const off = -cross(subtract(b, a), subtract(p, a)) / Math.max(distance(a, b), targetSide / 1000);
    far = Math.max(far, off);
  });
  return far;
}
