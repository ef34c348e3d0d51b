import { nearestOnSegment } from '../curve/nearest.js';
import { pathLength, pointAlong } from '../path/length.js';
import { pathEnd, pathStart } from '../path/path.js';
import { edgeNamed, edgeNames, edgePath } from '../pattern/outline.js';
import type { Piece } from '../pattern/types.js';
import type { Where } from '../telling.js';
import { foldTolerance } from '../tolerance.js';
import type { Report } from './report.js';
import { finding } from './tellings.js';

/** Places along a fold edge that are held against the straight line. */
const samples = 16;

/** A fold edge that is not straight cannot be laid on a fold. */
export function foldFinding(piece: Piece, placeOf: (edge?: string) => Where, report: Report): void {
  for (const name of edgeNames(piece)) {
    if (edgeNamed(piece, name).kind !== 'fold') continue;
    const path = edgePath(piece, name);
    const length = pathLength(path);
    const chord = [pathStart(path), pathEnd(path)] as const;
    const bowMm = Math.max(
      ...Array.from(
        { length: samples },
        (_, i) => nearestOnSegment(chord, pointAlong(path, (length * (i + 1)) / (samples + 1))).distance,
      ),
    );
    if (bowMm > foldTolerance)
      report.take(
        finding('warning', 'fold-not-straight', placeOf(name), {
          edge: { piece: piece.name, edge: name },
          bowMm,
        }),
      );
  }
}
