import { pointAt } from '../curve/segment.js';
import { besides } from '../joining/corner.js';
import { nearestOnPath } from '../path/nearest.js';
import type { Path } from '../path/path.js';
import type { Dart, Edge, Piece, Pleat } from '../pattern/types.js';
import type { Finding } from '../telling.js';
import { lengthTolerance, seamTolerance, visibleLength } from '../tolerance.js';
import type { SnipMark } from './assemble.js';
import { type Boundary, isWithin } from './boundaries.js';
import type { FoldedMouth } from './folded-mouth.js';
import { type LostStretch, lengthOfAll, lostOfBend, lostToLoop } from './lost-lengths.js';
import type { Run } from './run.js';
import { pathOfStrands, type Strand, strandsBetween } from './strand.js';
import { finding } from './tellings.js';
import { isOuter } from './tight-bends.js';

export function mouthFindings(
  piece: Piece,
  part: Dart | Pleat,
  mouth: FoldedMouth | undefined,
): readonly Finding[] {
  const where = { piece: piece.name, edge: part.name };
  if (!mouth)
    return [
      part.type === 'dart'
        ? bridgedMouth(piece, part)
        : finding('warning', 'pleat-mouth-bridged', where, {
            pleat: { piece: piece.name, pleat: part.name },
            oneWay: part.kind === 'knife',
          }),
    ];
  if (mouth.step <= seamTolerance) return [];
  // A mouth that is folded lies between two edges.
  const beside = (['start', 'end'] as const).map(end => besides(piece.outline, part, end) as Edge);
  const told = {
    stepMm: mouth.step,
    edges: beside.map(edge => ({ piece: piece.name, edge: edge.name })),
    unlike: Math.abs(beside[0]!.allowance - beside[1]!.allowance) > lengthTolerance,
  };
  return [
    part.type === 'dart'
      ? finding('note', 'dart-fold-step', where, { dart: { piece: piece.name, dart: part.name }, ...told })
      : finding('note', 'pleat-fold-step', where, {
          pleat: { piece: piece.name, pleat: part.name },
          ...told,
        }),
  ];
}

export const bridgedMouth = ({ name }: Piece, dart: Dart): Finding =>
  finding(
    'warning',
    'dart-mouth-bridged',
    { piece: name, edge: dart.name },
    { dart: { piece: name, dart: dart.name } },
  );

export const notSimple = ({ name }: Piece, edge: string): Finding =>
  finding('fault', 'cutting-line-not-simple', { piece: name, edge }, { edge: { piece: name, edge } });

export const notShaped = ({ name }: Piece, before: Run, after: Run): Finding =>
  finding(
    'note',
    'corner-not-shaped',
    { piece: name, edge: before.of },
    { edges: [before, after].map(run => ({ piece: name, edge: run.of })) },
  );

/** What a line was cleared of loops from: its chain, the runs along it and the bends that are bare in it. */
export interface Cleared {
  readonly runs: readonly Run[];
  readonly bends: readonly Run[];
  readonly raw: readonly Strand[];
  readonly snips: readonly SnipMark[];
}

/**
 * Where allowances do not all have room, other than at an inner corner: `lostMm` of the edge whose parallel was left out
 * with a loop. None where a maker could not see it: neither so short a stretch of edge, nor parallels that lie so near
 * to the line that is cut.
 */
export function narrowFindings(
  piece: Piece,
  { runs, bends, raw, snips }: Cleared,
  { strands, shortcuts }: Boundary,
): readonly Finding[] {
  const path = pathOfStrands(strands);
  const lost = new Map<Run, readonly LostStretch[]>();
  const lose = (run: Run, stretches: readonly LostStretch[]): void => {
    lost.set(run, [...(lost.get(run) ?? []), ...stretches]);
  };
  for (const bend of bends) {
    const i = runs.indexOf(bend);
    const isInner = {
      start: !isOuter(runs.at(i - 1)!, bend),
      end: !isOuter(bend, runs[(i + 1) % runs.length]!),
    };
    lose(bend, lostOfBend(bend, strands, isInner));
  }
  for (const cut of shortcuts) {
    const corners = snips.filter(mark => isWithin(mark.index, cut, raw.length));
    const leftOut = strandsBetween([...raw, ...raw], cut.from, cut.to);
    if (corners.length === 1 || !leftOut.some(strand => isSeenBeside(path, strand))) continue;
    // What a wider bend covers of its neighbours is no loss of theirs.
    if (bends.some(bend => leftOut.some(({ beside }) => bend.stitching.includes(beside!)))) continue;
    for (const run of runs) lose(run, lostToLoop(run, raw, cut));
  }
  const ofEdge = new Map<string, number>();
  for (const [run, stretches] of lost) ofEdge.set(run.of, (ofEdge.get(run.of) ?? 0) + lengthOfAll(stretches));
  return [...ofEdge].flatMap(([edge, lostMm]) => {
    const where = { piece: piece.name, edge };
    return lostMm < visibleLength
      ? []
      : [finding('warning', 'allowance-too-wide', where, { edge: where, lostMm })];
  });
}

/** Whether any of a parallel that was left out lies off the line that is cut, as far as can be seen. */
const isSeenBeside = (path: Path, { segment, shape }: Strand): boolean =>
  shape === 'parallel' &&
  samples.some(t => nearestOnPath(path, pointAt(segment, t)).distance >= visibleLength);

/** Of a parameter: a loop's cusps are where its stretches end, one at the start of the next; its belly in their middles. */
const samples = [1 / 2, 1];
