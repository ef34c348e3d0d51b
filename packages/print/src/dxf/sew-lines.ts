import type { OutlinePart, Path, Piece } from '@paperhinge/geometry';
import { joined } from '@paperhinge/geometry/paths';
import { pathsOfPart } from '@paperhinge/geometry/pattern';

/** A stitching line as one stroke; `closed` if it runs all round. */
export interface SewLine {
  readonly path: Path;
  readonly closed: boolean;
}

/**
 * Where a piece is sewn or turned up, legs of its darts included: each run of the outline between folds and raw edges
 * is one line, clockwise.
 */
export function sewLinesOf({ outline: { parts } }: Piece): readonly SewLine[] {
  const rest = parts.findIndex(part => !isSewn(part));
  if (rest < 0) return [{ path: joined(...parts.flatMap(pathsOfPart)), closed: true }];
  const runs: OutlinePart[][] = [];
  let open = false;
  for (const part of [...parts.slice(rest), ...parts.slice(0, rest)]) {
    if (isSewn(part)) {
      if (open) runs.at(-1)!.push(part);
      else runs.push([part]);
    }
    open = isSewn(part);
  }
  return runs.map(run => ({ path: joined(...run.flatMap(pathsOfPart)), closed: false }));
}

const isSewn = (part: OutlinePart): boolean =>
  part.type !== 'edge' || part.kind === 'seam' || part.kind === 'hem';
