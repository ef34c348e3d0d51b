import type { EdgeRef, Pattern } from '../pattern/types.js';
import type { Finding } from '../telling.js';

import { coincidenceTolerance, leastSeen } from '../tolerance.js';
import { finding } from './tellings.js';
import { slightKinks } from './truing-check.js';
import { walkSeams } from './walk-seam.js';

/**
 * What is there to be seen and small enough to be sewn as it is, in one note together: kinks under `slightKink`, and
 * seams whose sides differ within their tolerance.
 */
export function smallDifferences(pattern: Pattern): readonly Finding[] {
  const kinks = pattern.pieces.flatMap(piece => slightKinks(pattern, piece));
  const seams = walkSeams(pattern)
    .map(({ seam, matches, differenceMm, easeWantedMm }) => ({
      seam,
      matches,
      offMm: Math.abs(differenceMm - easeWantedMm),
    }))
    .filter(({ matches, offMm }) => matches && offMm >= leastSeen - coincidenceTolerance);
  if (kinks.length === 0 && seams.length === 0) return [];
  return [
    finding(
      'note',
      'small-differences',
      {},
      {
        kinks: kinks.length,
        sharpestDeg: Math.max(0, ...kinks.map(k => k.angleDeg)),
        edges: distinct(kinks.flatMap(k => k.edges)),
        seams: seams.map(({ seam }) => ({ seam })),
        mostMm: Math.max(0, ...seams.map(s => s.offMm)),
      },
    ),
  ];
}

const distinct = (edges: readonly EdgeRef[]): readonly EdgeRef[] =>
  edges.filter((e, i) => edges.findIndex(o => o.piece === e.piece && o.edge === e.edge) === i);
