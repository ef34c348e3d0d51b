import { segmentLength } from '../curve/arc-length.js';
import type { Finding } from '../errors.js';
import type { Dart, Piece } from '../pattern/types.js';
import { seamTolerance } from '../tolerance.js';
import type { SnipMark } from './assemble.js';
import type { FoldedMouth } from './dart-fold.js';
import { isWithin, type Shortcut } from './outer-boundary.js';
import type { Run } from './run.js';
import type { Strand } from './strand.js';

export function mouthFindings(piece: Piece, dart: Dart, mouth: FoldedMouth | undefined): readonly Finding[] {
  if (!mouth) return [bridgedMouth(piece, dart)];
  if (mouth.step <= seamTolerance) return [];
  return [
    {
      severity: 'note',
      code: 'dart-fold-step',
      where: { piece: piece.name, edge: dart.name },
      message: `With the dart "${dart.name}" folded, the cutting lines at its mouth do not meet: a step of ${mouth.step.toFixed(1)} mm along its leg.`,
      figures: { stepMm: mouth.step },
      remedy: 'True the edge with the dart folded shut, or trim the step once it is sewn.',
    },
  ];
}

export const bridgedMouth = (piece: Piece, dart: Dart): Finding => ({
  severity: 'warning',
  code: 'dart-mouth-bridged',
  where: { piece: piece.name, edge: dart.name },
  message: `The intake of dart "${dart.name}" cannot be folded onto the edge beside it; its mouth is cut straight across.`,
  remedy:
    'Cut wide there, fold the dart as it will be pressed, and cut along the edge; or press it the other way.',
});

export const notSimple = (piece: Piece): Finding => ({
  severity: 'fault',
  code: 'cutting-line-not-simple',
  where: { piece: piece.name },
  message: 'The cutting line crosses itself, and its loops could not be removed.',
  remedy:
    'Check that the stitching line does not cross itself, and that the allowances suit the size of the piece.',
});

export const notShaped = (piece: Piece, before: Run, after: Run): Finding => ({
  severity: 'note',
  code: 'corner-not-shaped',
  where: { piece: piece.name, edge: before.of },
  message: `The corner of "${before.of}" and "${after.of}" is too sharp or too flat to be pressed open, turned up or run to the fold; it is mitred.`,
  remedy: 'Check the angle there, or ask for a mitre.',
});

/** Parts of parallels that were dropped with a loop, other than the ends at an inner corner; `lostMm` of parallel. */
export function narrowFindings(
  piece: Piece,
  raw: readonly Strand[],
  shortcuts: readonly Shortcut[],
  snips: readonly SnipMark[],
): readonly Finding[] {
  const lost = new Map<string, number>();
  for (const cut of shortcuts) {
    const to = cut.to > cut.from ? cut.to : cut.to + raw.length;
    const corners = snips.filter(mark => isWithin(mark.index, cut, raw.length));
    if (corners.length === 1) continue;
    for (let i = Math.floor(cut.from); i < to; i++) {
      const strand = raw[i % raw.length]!;
      if (strand.shape === 'parallel')
        lost.set(strand.of, (lost.get(strand.of) ?? 0) + segmentLength(strand.segment));
    }
  }
  return [...lost].map(([edge, lostMm]) => ({
    severity: 'warning' as const,
    code: 'allowance-too-wide',
    where: { piece: piece.name, edge },
    message: `The allowance of "${edge}" is wider than a bend or slot there has room for; it is cut where the two sides meet.`,
    figures: { lostMm },
    remedy: 'Set a narrower allowance on this edge, or face it.',
  }));
}
