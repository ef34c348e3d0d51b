import { type Path, pathLength } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { intersectPaths, pointAlong, subpath } from '@paperhinge/geometry/paths';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { containsPoint } from '@paperhinge/geometry/regions';
import type { CutPiece } from './cut-piece.js';

/** A run of a line that lies in one section; `section` undefined: off the paper, as in a dart's mouth. */
export interface LinePart {
  readonly section: number | undefined;
  readonly path: Path;
}

/**
 * A line cut into the runs that lie in one section each, in order. A run that lies along a cut counts to `preferred`
 * if it borders on that section.
 */
export function linePartsOf(cutPiece: CutPiece, path: Path, preferred?: number): readonly LinePart[] {
  const length = pathLength(path);
  const across = [outlinePath(cutPiece.piece.outline), ...cutPiece.courses].flatMap(other =>
    intersectPaths(path, other).map(m => m.alongA),
  );
  const places = [...across.sort((a, b) => a - b), length];
  const runs: { section: number | undefined; from: number; to: number }[] = [];
  for (const to of places) {
    const from = runs.at(-1)?.to ?? 0;
    if (to <= from || (to - from <= tolerances.coincidenceTolerance && to < length)) continue;
    const section = sectionHolding(cutPiece, pointAlong(path, (from + to) / 2), preferred);
    const last = runs.at(-1);
    if (last && last.section === section) last.to = to;
    else runs.push({ section, from, to });
  }
  if (runs.length <= 1) return [{ section: runs[0]?.section, path }];
  return runs.map(({ section, from, to }) => ({ section, path: subpath(path, from, to) }));
}

/** The section a point lies in; on a cut, `preferred` if it touches it. Undefined outside the piece. */
export function sectionHolding(
  cutPiece: CutPiece,
  point: { readonly x: number; readonly y: number },
  preferred?: number,
): number | undefined {
  const { sections } = cutPiece;
  if (preferred !== undefined && containsPoint(sections[preferred]!.border, point)) return preferred;
  const found = sections.findIndex(s => containsPoint(s.border, point));
  return found < 0 ? undefined : found;
}
