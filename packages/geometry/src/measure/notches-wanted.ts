import type { Pattern } from '../pattern/types.js';
import type { Finding } from '../sayings.js';
import { longestWithoutNotch } from '../tolerance.js';
import { finding } from './tellings.js';
import { sidesOfSeam } from './walk-seam.js';

/**
 * Seams so long that they want a notch and have none (trade-notes §5), in one note together. A piece drafted for an
 * edge is marked by its making note.
 */
export function notchesWanted(pattern: Pattern): readonly Finding[] {
  const drafted = new Set(pattern.pieces.filter(p => p.madeFor).map(p => p.name));
  const bare = pattern.seams.flatMap(seam => {
    const { a, b } = sidesOfSeam(pattern, seam);
    const isDrafted = [a, b].some(side => side.runs.every(r => drafted.has(r.run.piece)));
    const isMarked = a.notches.length + b.notches.length > 0;
    const lengthMm = Math.max(a.lengthMm, b.lengthMm);
    return isDrafted || isMarked || lengthMm <= longestWithoutNotch ? [] : [{ seam: seam.name, lengthMm }];
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
