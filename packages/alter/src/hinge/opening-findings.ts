import { type Finding, tolerances } from '@paperhinge/geometry';
import type { Opening } from './joins.js';
import type { Swung } from './swing.js';
import { degrees, inDegrees, millimetres } from './wording.js';

/**
 * What a swing left to be trued: bridged openings, overlaps, kinks at hinges, steps at closed darts. Notes, since a
 * later step may true them; the check of the finished pattern says what still stands.
 */
export function openingFindings(piece: string, swung: Swung): readonly Finding[] {
  const steps = swung.closed
    .filter(c => c.stepMm > tolerances.coincidenceTolerance)
    .map(
      ({ dart, stepMm }): Finding => ({
        severity: stepMm > tolerances.seamTolerance ? 'warning' : 'note',
        code: 'dart-step',
        where: { piece },
        message: `The legs of dart "${dart}" differ: closed, they leave a step of ${stepMm.toFixed(2)} mm.`,
        figures: { stepMm },
        remedy: 'True the edge across it.',
      }),
    );
  return [...swung.openings.flatMap(o => openingFinding(piece, o)), ...steps, ...swung.findings];
}

function openingFinding(piece: string, opening: Opening): readonly Finding[] {
  const { edge, fate, openedMm, turn } = opening;
  const where = { piece, edge };
  const remedy = `True it: true: { edges: [${piece}.${edge}] }.`;
  const figures = { openedMm, kinkDeg: inDegrees(turn) };
  if (fate === 'bridged')
    return [
      {
        severity: 'note',
        code: 'edge-bridged',
        where,
        message: `"${edge}" opened by ${millimetres(openedMm)} and is bridged straight.`,
        figures,
        remedy,
      },
    ];
  if (fate === 'overlapped')
    return [
      {
        severity: 'note',
        code: 'edge-overlapped',
        where,
        message: `"${edge}" overlaps by ${millimetres(-openedMm)} and is cut where its two sides meet.`,
        figures,
        remedy,
      },
    ];
  if (fate === 'dart' || Math.abs(turn) < tolerances.kinkTurn) return [];
  return [
    {
      severity: 'note',
      code: 'hinge-kink',
      where,
      message: `"${edge}" bends by ${degrees(Math.abs(turn))} at the hinge.`,
      figures: { kinkDeg: inDegrees(turn) },
      remedy,
    },
  ];
}
