import { edgePath, type Finding } from '@paperhinge/geometry';
import { abs, max } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { foldEdgeOf } from '@paperhinge/geometry/pattern';
import { inDegrees } from './degrees.js';
import type { Opening } from './joins.js';
import { offStraight } from './off-straight.js';
import type { Swung } from './swing.js';
import { finding } from './tellings.js';

/**
 * What a swing left to be trued: bridged openings, overlaps, kinks at hinges, steps at closed darts. Notes, since a
 * later step may true them; the check of the finished pattern says what still stands. One finding for each edge and
 * kind, however many slashes there were.
 */
export function openingFindings(piece: string, swung: Swung): readonly Finding[] {
  const groups = new Map<string, Opening[]>();
  for (const opening of swung.openings) {
    const key = `${opening.edge}\n${opening.fate}`;
    groups.set(key, [...(groups.get(key) ?? []), opening]);
  }
  return [
    ...[...groups.values()].flatMap(group => ofGroup(piece, group)),
    ...bentFold(swung),
    ...swung.closed
      .filter(c => c.stepMm > tolerances.coincidenceTolerance)
      .map(({ dart, stepMm }) => dartStep(piece, dart, stepMm)),
    ...swung.findings,
  ];
}

/** Openings of one edge that came out alike. */
function ofGroup(piece: string, group: readonly Opening[]): readonly Finding[] {
  const { edge: name, fate } = group[0]!;
  const where = { piece, edge: name };
  const kink = group.reduce((most, o) => max(most, abs(o.turn)), 0);
  const edge = { edge: where, ...(group.length > 1 ? { count: group.length } : {}) };
  const opened = {
    ...edge,
    openedMm: group.reduce((sum, o) => sum + o.openedMm, 0),
    kinkDeg: inDegrees(kink),
  };
  if (fate === 'bridged') return [finding('note', 'edge-bridged', where, opened)];
  if (fate === 'overlapped') {
    const stepMm = max(...group.map(o => o.bridgeMm));
    return [finding('note', 'edge-overlapped', where, { ...opened, stepMm })];
  }
  if (fate === 'dart' || kink < tolerances.kinkTurn) return [];
  return [finding('note', 'hinge-kink', where, { ...edge, kinkDeg: inDegrees(kink) })];
}

const dartStep = (piece: string, dart: string, stepMm: number): Finding =>
  finding(
    stepMm > tolerances.seamTolerance ? 'warning' : 'note',
    'dart-step',
    { piece },
    { dart: { piece, dart }, stepMm },
  );

/** Cloth folds along a straight line only: a fold that a slash bent must be straightened or become a seam. */
function bentFold({ piece, openings }: Swung): readonly Finding[] {
  const fold = foldEdgeOf(piece);
  if (!fold || !openings.some(o => o.edge === fold.name)) return [];
  const offMm = offStraight(edgePath(piece, fold.name));
  if (offMm <= tolerances.foldTolerance) return [];
  const edge = { piece: piece.name, edge: fold.name };
  return [finding('warning', 'fold-bent', edge, { edge, offMm })];
}
