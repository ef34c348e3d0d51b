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
import { bridged } from '../edit/bridged.js';
import { linePartsOf, sectionHolding } from './line-parts.js';
import type { CutPiece } from './sections.js';
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
  const findings: Finding[] = [];
  const marks = cutPiece.piece.marks.map(mark => {
    const section = sectionHolding(cutPiece, mark.at, holding) ?? nearestSection(cutPiece, mark.at);
    return { ...mark, at: apply(motions[section]!, mark.at) };
  });
  const parted: string[] = [];
  const lines = cutPiece.piece.lines.map(line =>
    carriedLine(cutPiece, motions, holding, line, findings, parted),
  );
  const where = { piece: cutPiece.piece.name };
  const named = parted.map(line => ({ ...where, line }));
  if (parted.length > 0) findings.push(finding('note', 'lines-parted', where, { lines: named }));
  return { lines, marks, findings };
}

const nearestSection = (cutPiece: CutPiece, p: Point): number =>
  cutPiece.sections
    .map((s, i) => ({ i, away: nearestOnPath(s.border, p).distance }))
    .reduce((a, b) => (b.away < a.away ? b : a)).i;

interface Run {
  readonly section: number;
  readonly path: Path;
}

function carriedLine(
  cutPiece: CutPiece,
  motions: readonly Affine[],
  holding: number,
  line: PieceLine,
  findings: Finding[],
  parted: string[],
): PieceLine {
  const runs = runsOf(cutPiece, motions, line.path, holding);
  const moved = (run: Run) => transformedPath(run.path, motions[run.section]!);
  if (line.kind === 'grain') {
    const kept = longest(runs.filter(r => r.section === holding));
    const where = { piece: cutPiece.piece.name };
    const grain = { ...where, line: line.name };
    if (!kept) findings.push(finding('note', 'grain-line-stays', where, { line: grain }));
    else if (runs.length > 1) {
      const keptMm = pathLength(kept.path);
      findings.push(finding('note', 'grain-line-shortened', where, { line: grain, keptMm }));
    }
    return kept ? { ...line, path: moved(kept) } : line;
  }
  if (runs.length > 1) parted.push(line.name);
  return { ...line, path: runs.map(moved).reduce(bridged) };
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

const longest = (runs: readonly Run[]): Run | undefined =>
  runs.reduce<Run | undefined>(
    (best, run) => (best === undefined || pathLength(run.path) > pathLength(best.path) ? run : best),
    undefined,
  );

export const same = (a: Affine, b: Affine): boolean =>
  a.a === b.a && a.b === b.b && a.c === b.c && a.d === b.d && a.e === b.e && a.f === b.f;
