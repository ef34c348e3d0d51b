import type { Pattern, Seam } from '@paperhinge/geometry';
import { shareOfSeam } from '../moved-edges/seam-place.js';
import type { Taper } from '../moved-edges/taper.js';
import type { TakeIn } from './take-in-wish.js';
import { refusal } from './tellings.js';

/** The most that is taken in anywhere along a seam, mm in the whole garment. */
export const mostTaken = ({ by }: TakeIn): number => (typeof by === 'number' ? by : Math.max(...by));

/**
 * How what is taken in grows and fades along its seam.
 * @throws PatternError `taper-with-between`, `taper-without-length`; those of `shareOfSeam`
 */
export function taperOf(pattern: Pattern, seam: Seam, { by, from, to, between }: TakeIn): Taper {
  if (between) {
    if (from ?? to ?? (typeof by === 'number' ? undefined : by))
      throw refusal('taper-with-between', { seam: { seam: seam.name } });
    const places = between.map(place => shareOfSeam(pattern, seam, place)).sort((p, q) => p - q);
    requireApart(seam, places[0]!, places[1]!);
    return { kind: 'between', from: places[0]!, to: places[1]! };
  }
  if (typeof by === 'number' && !from && !to) return { kind: 'whole' };
  const [atFrom, atTo] = typeof by === 'number' ? [by, 0] : by;
  const most = Math.max(atFrom, atTo);
  if (most === 0) return { kind: 'whole' };
  const start = from ? shareOfSeam(pattern, seam, from) : 0,
    end = to ? shareOfSeam(pattern, seam, to) : 1;
  requireApart(seam, start, end);
  return { kind: 'ends', from: start, to: end, atFrom: atFrom / most, atTo: atTo / most };
}

function requireApart(seam: Seam, from: number, to: number): void {
  if (from === to) throw refusal('taper-without-length', { seam: { seam: seam.name } });
}
