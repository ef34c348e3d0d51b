import { edgePath, type Finding, foldEdgeOf, tolerances } from '@paperhinge/geometry';
import type { Opening } from './joins.js';
import { offStraight } from './off-straight.js';
import type { Swung } from './swing.js';
import { degrees, inDegrees, millimetres } from './wording.js';

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
    ...[...groups.values()].flatMap(group => finding(piece, group)),
    ...bentFold(swung),
    ...swung.closed
      .filter(c => c.stepMm > tolerances.coincidenceTolerance)
      .map(({ dart, stepMm }) => dartStep(piece, dart, stepMm)),
    ...swung.findings,
  ];
}

function finding(piece: string, group: readonly Opening[]): readonly Finding[] {
  const { edge, fate } = group[0]!;
  const sum = (figure: (opening: Opening) => number) => group.reduce((total, o) => total + figure(o), 0);
  const kink = group.reduce((most, o) => Math.max(most, Math.abs(o.turn)), 0);
  const openedMm = sum(o => o.openedMm);
  const stepMm = Math.max(...group.map(o => o.bridgeMm));
  const places = group.length === 1 ? '' : ` at ${group.length} places`;
  const note = (code: string, message: string, figures: Finding['figures'] & object): readonly Finding[] => [
    {
      severity: 'note',
      code,
      where: { piece, edge },
      message,
      figures,
      remedy: `True it: true: { edges: [${piece}.${edge}] }.`,
    },
  ];
  if (fate === 'bridged')
    return note(
      'edge-bridged',
      `"${edge}" opened by ${millimetres(openedMm)}${places} and is bridged straight.`,
      { openedMm, kinkDeg: inDegrees(kink) },
    );
  if (fate === 'overlapped')
    return note(
      'edge-overlapped',
      `"${edge}" overlaps by ${millimetres(-openedMm)}${places} and is cut ` +
        (stepMm > 0 ? `half way, with a step of ${millimetres(stepMm)}.` : 'where its two sides cross.'),
      { openedMm, kinkDeg: inDegrees(kink), stepMm },
    );
  if (fate === 'dart' || kink < tolerances.kinkTurn) return [];
  return note(
    'hinge-kink',
    `"${edge}" bends by ${degrees(kink)} at the hinge${group.length > 1 ? 's' : ''}.`,
    {
      kinkDeg: inDegrees(kink),
    },
  );
}

const dartStep = (piece: string, dart: string, stepMm: number): Finding => ({
  severity: stepMm > tolerances.seamTolerance ? 'warning' : 'note',
  code: 'dart-step',
  where: { piece },
  message: `The legs of dart "${dart}" differ: closed, they leave a step of ${stepMm.toFixed(2)} mm.`,
  figures: { stepMm },
  remedy: 'True the edge across it.',
});

/** Cloth folds along a straight line only: a fold that a slash bent must be straightened or become a seam. */
function bentFold({ piece, openings }: Swung): readonly Finding[] {
  const fold = foldEdgeOf(piece);
  if (!fold || !openings.some(o => o.edge === fold.name)) return [];
  const offMm = offStraight(edgePath(piece, fold.name));
  if (offMm <= tolerances.fitTolerance) return [];
  return [
    {
      severity: 'warning',
      code: 'fold-bent',
      where: { piece: piece.name, edge: fold.name },
      message: `The fold "${fold.name}" is ${offMm.toFixed(1)} mm off a straight line now, and cannot be cut on a fold.`,
      figures: { offMm },
      remedy: 'Draw it straight, or make it a seam.',
    },
  ];
}
