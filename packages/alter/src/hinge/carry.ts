import {
  type Finding,
  type Mark,
  type Path,
  type PieceLine,
  type Point,
  pathLength,
} from '@paperhinge/geometry';
import { joined, nearestOnPath, transformedPath } from '@paperhinge/geometry/paths';
import { type Affine, apply } from '@paperhinge/geometry/plane';
import { bridged, closedRing } from './bridged.js';
import type { CutPiece } from './cut-piece.js';
import { least } from './least.js';
import { linePartsOf, sectionHolding } from './line-parts.js';

import { finding } from './tellings.js';

/** What lies within a piece, moved with it, and what could not be. */
export interface Carried {
  readonly lines: readonly PieceLine[];
  readonly marks: readonly Mark[];
  readonly findings: readonly Finding[];
}

/**
 * Moves lines and marks with the sections they lie on. A line that a cut crosses is parted, its parts move
 * with the cloth and are joined straight across the opening; of the grain line only the part on the cloth that
 * stayed is kept, since a piece has one grain. What is lost is a finding.
 */
export function carry(cutPiece: CutPiece, motions: readonly Affine[], holding: number): Carried {
  const marks = cutPiece.piece.marks.map(mark => {
    const section = sectionHolding(cutPiece, mark.at, holding) ?? nearestSection(cutPiece, mark.at);
    return { ...mark, at: apply(motions[section]!, mark.at) };
  });
  const lines = cutPiece.piece.lines.map(line => carriedLine(cutPiece, motions, holding, line));
  const where = { piece: cutPiece.piece.name };
  const parted = lines.filter(l => l.parted).map(l => ({ ...where, line: l.line.name }));
  return {
    lines: lines.map(l => l.line),
    marks,
    findings: [
      ...lines.flatMap(l => l.findings),
      ...(parted.length > 0 ? [finding('note', 'lines-parted', where, { lines: parted })] : []),
    ],
  };
}

const nearestSection = (cutPiece: CutPiece, p: Point): number =>
  least(
    cutPiece.sections.map((s, i) => ({ i, away: nearestOnPath(s.border, p).distance })),
    ({ away }) => away,
  )!.i;

interface Run {
  readonly section: number;
  readonly path: Path;
}

interface CarriedLine {
  readonly line: PieceLine;
  /** Slashed, and joined straight across. */
  readonly parted: boolean;
  readonly findings: readonly Finding[];
}

function carriedLine(
  cutPiece: CutPiece,
  motions: readonly Affine[],
  holding: number,
  line: PieceLine,
): CarriedLine {
  const runs = runsOf(cutPiece, motions, line.path, holding);
  const moved = (run: Run) => transformedPath(run.path, motions[run.section]!);
  const parted = runs.length > 1;
  if (line.kind !== 'grain') {
    const path = runs.map(moved).reduce(bridged);
    // A double-pointed dart is a ring, and stays one.
    return {
      line: { ...line, path: parted && line.kind === 'dart' ? closedRing(path) : path },
      parted,
      findings: [],
    };
  }
  const where = { piece: cutPiece.piece.name };
  const grain = { ...where, line: line.name };
  const kept = longest(runs.filter(r => r.section === holding));
  if (!kept)
    return { line, parted: false, findings: [finding('note', 'grain-line-stays', where, { line: grain })] };
  const keptMm = pathLength(kept.path);
  const shortened = finding('note', 'grain-line-shortened', where, { line: grain, keptMm });
  return {
    line: { ...line, path: moved(kept) },
    parted: false,
    findings: parted ? [shortened] : [],
  };
}

/** Runs of a line that move alike; what hangs over the outline goes with its neighbour, what lay in a dart is lost. */
function runsOf(cutPiece: CutPiece, motions: readonly Affine[], path: Path, holding: number): readonly Run[] {
  const parts = linePartsOf(cutPiece, path, holding);
  const known = parts.filter((p): p is Run => p.section !== undefined);
  if (known.length === 0) return [{ section: nearestSection(cutPiece, path.segments[0]![0]), path }];
  if (known.every(p => same(motions[p.section]!, motions[known[0]!.section]!)))
    return [{ section: known[0]!.section, path }];
  const first = parts.indexOf(known[0]!),
    last = parts.lastIndexOf(known.at(-1)!);
  const runs: { section: number; path: Path }[] = [];
  let broken = false;
  for (const [i, part] of parts.entries()) {
    const section =
      part.section ?? (i < first ? known[0]!.section : i > last ? known.at(-1)!.section : undefined);
    const previous = runs.at(-1);
    if (section === undefined) broken = true;
    else if (previous && !broken && same(motions[previous.section]!, motions[section]!))
      previous.path = joined(previous.path, part.path);
    else runs.push({ section, path: part.path });
    if (section !== undefined) broken = false;
  }
  return runs;
}

const longest = (runs: readonly Run[]): Run | undefined => least(runs, run => -pathLength(run.path));

const entries = ['a', 'b', 'c', 'd', 'e', 'f'] as const;

export const same = (a: Affine, b: Affine): boolean => entries.every(entry => a[entry] === b[entry]);
