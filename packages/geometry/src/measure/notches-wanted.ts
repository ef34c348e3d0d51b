import type { Pattern } from '../pattern/types.js';
import type { Finding } from '../telling.js';

import { longestWithoutNotch } from '../tolerance.js';
import { innerJoints, type SeamSide } from './side.js';
import { finding } from './tellings.js';
import { sidesOfSeam } from './walk-seam.js';

/**
 * Seams so long that they want a notch and have none (trade-notes §5), in one note together. Seams that cross on both
 * sides are matched like notches: what counts is the longest way between two of them. A piece drafted for an edge is
 * marked by its making note.
 */
export function notchesWanted(pattern: Pattern): readonly Finding[] {
  const drafted = new Set(pattern.pieces.filter(p => p.madeFor).map(p => p.name));
  const bare = pattern.seams.flatMap(seam => {
    const { a, b } = sidesOfSeam(pattern, seam);
    const isDrafted = [a, b].some(side => side.runs.every(r => drafted.has(r.run.piece)));
    const isMarked = a.notches.length + b.notches.length > 0;
    const longestMm = Math.max(...[a, b].map(side => longestWay(side, a, b)));
    return isDrafted || isMarked || longestMm <= longestWithoutNotch
      ? []
      : [{ seam: seam.name, lengthMm: Math.max(a.lengthMm, b.lengthMm) }];
  });
  if (bare.length === 0) return [];
  return [
    finding(
      'note',
      'notches-wanted',
      {},
      {
        seams: bare.map(({ seam }) => ({ seam })),
        count: bare.length,
        longestMm: Math.max(...bare.map(b => b.lengthMm)),
      },
    ),
  ];
}

/** The longest way along a side between its ends and the seams that cross it, where as many cross the other. */
function longestWay(side: SeamSide, a: SeamSide, b: SeamSide): number {
  const joints = innerJoints(a).length === innerJoints(b).length ? innerJoints(side) : [];
  const stops = [0, ...joints, side.reachMm];
  return Math.max(...stops.slice(1).map((stop, i) => stop - stops[i]!));
}
