import { type Edge, type Path, type PieceLine, pathLength } from '@paperhinge/geometry';
import { max } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { isCentreEdge, isCentreLine } from '@paperhinge/geometry/pattern';
import { signedArea } from '@paperhinge/geometry/regions';
import type { CutPiece, Section } from './cut-piece.js';
import { linePartsOf } from './line-parts.js';

/**
 * The section that stays put while the others move: the one with the fold, else with the centre edge or line, else
 * with the grain line, else the largest. Where a cut parts any of these, the section with the longer part of it.
 */
export function holdingSection(cutPiece: CutPiece): number {
  const { piece, sections } = cutPiece;
  const edgesThat = (wanted: (edge: Edge) => boolean) => (section: Section) =>
    section.stretches.reduce((sum, i) => {
      const stretch = cutPiece.stretches[i]!;
      return stretch.type === 'edge' && wanted(stretch.edge) ? sum + pathLength(stretch.path) : sum;
    }, 0);
  const linesThat = (wanted: (line: PieceLine) => boolean) => {
    const parts = piece.lines.filter(wanted).flatMap(({ path }) => linePartsOf(cutPiece, path));
    return (_: Section, index: number) => lengthIn(parts, index);
  };
  const measures = [
    edgesThat(e => e.kind === 'fold'),
    edgesThat(isCentreEdge),
    linesThat(isCentreLine),
    linesThat(l => l.kind === 'grain'),
    (section: Section) => signedArea(section.border),
  ];
  let candidates = sections.map((_, i) => i);
  for (const measure of measures) {
    const figures = sections.map(measure);
    const most = max(...candidates.map(i => figures[i]!));
    candidates = candidates.filter(i => figures[i]! >= most - tolerances.coincidenceTolerance);
  }
  return candidates[0]!;
}

const lengthIn = (parts: readonly { section: number | undefined; path: Path }[], index: number): number =>
  parts.reduce((sum, part) => (part.section === index ? sum + pathLength(part.path) : sum), 0);
