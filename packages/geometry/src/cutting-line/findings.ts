import { segmentLength } from '../curve/arc-length.js';
import type { Finding } from '../errors.js';
import type { Dart, Piece } from '../pattern/types.js';
import { seamTolerance } from '../tolerance.js';
import type { SnipMark } from './assemble.js';
import type { FoldedMouth } from './dart-fold.js';
import { isWithin, type Shortcut } from './outer-boundary.js';
import type { Run } from './run.js';
import type { Strand } from './strand.js';
import { finding } from './tellings.js';

export function mouthFindings(piece: Piece, dart: Dart, mouth: FoldedMouth | undefined): readonly Finding[] {
  if (!mouth) return [bridgedMouth(piece, dart)];
  if (mouth.step <= seamTolerance) return [];
  return [
    finding(
      'note',
      'dart-fold-step',
      { piece: piece.name, edge: dart.name },
      { dart: { piece: piece.name, dart: dart.name }, stepMm: mouth.step },
    ),
  ];
}

export const bridgedMouth = ({ name }: Piece, dart: Dart): Finding =>
  finding(
    'warning',
    'dart-mouth-bridged',
    { piece: name, edge: dart.name },
    { dart: { piece: name, dart: dart.name } },
  );

export const notSimple = (piece: Piece): Finding =>
  finding('fault', 'cutting-line-not-simple', { piece: piece.name }, {});

export const notShaped = ({ name }: Piece, before: Run, after: Run): Finding =>
  finding(
    'note',
    'corner-not-shaped',
    { piece: name, edge: before.of },
    { edges: [before, after].map(run => ({ piece: name, edge: run.of })) },
  );

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
  return [...lost].map(([edge, lostMm]) => {
    const where = { piece: piece.name, edge };
    return finding('warning', 'allowance-too-wide', where, { edge: where, lostMm });
  });
}
