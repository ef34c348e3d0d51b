import { segmentLength } from '../curve/arc-length.js';
import { pathLength } from '../path/length.js';
import { edgePath } from '../pattern/outline.js';
import type { Piece } from '../pattern/types.js';
import type { Finding } from '../telling.js';
import { seamTolerance } from '../tolerance.js';
import type { Run } from './run.js';
import { finding } from './tellings.js';

/** mm. A curved hem no deeper than this eases itself flat under the iron. Common practice, no source. */
const deepestEasedHem = 15;

/**
 * A curved hem deeper than `deepestEasedHem` must be eased or faced: how much longer its edge is than the fold it is
 * turned up on, in mm (shorter, if negative). A difference below what can be sewn is no finding.
 */
export function hemFindings(piece: Piece, runs: readonly Run[]): readonly Finding[] {
  const hems = new Set(
    runs.filter(r => r.edge?.kind === 'hem' && r.allowance > deepestEasedHem).map(r => r.of),
  );
  return [...hems].flatMap(name => {
    const own = runs.filter(r => r.of === name);
    const edge = own.reduce(
      (sum, r) => sum + r.parallel.reduce((l, s) => l + segmentLength(s.segment), 0),
      0,
    );
    const excessMm = edge - pathLength(edgePath(piece, name));
    if (Math.abs(excessMm) <= seamTolerance) return [];
    const depthMm = own[0]!.allowance,
      hem = { piece: piece.name, edge: name };
    return [finding('note', 'curved-hem', hem, { hem, excessMm, depthMm, deepestMm: deepestEasedHem })];
  });
}
