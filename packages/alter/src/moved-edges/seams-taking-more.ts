import { type EdgeRef, type Pattern, type Seam, walkSeam } from '@paperhinge/geometry';
import { sameEdge } from '../edge-refs.js';
import { seamNamed } from './seam-place.js';

/** The seams of an edge with as much more ease as the edge became longer, taken up as it is meant. */
export function seamsTakingMore(
  before: Pattern,
  after: Pattern,
  edge: EdgeRef,
  takenUp: 'eased' | 'gathered',
): { readonly pattern: Pattern; readonly seams: readonly Seam[] } {
  const changed = after.seams.map((seam): Seam => {
    if (![...seam.a, ...seam.b].some(run => sameEdge(run, edge))) return seam;
    const was = walkSeam(before, seamNamed(before, seam.name)),
      is = walkSeam(after, seam);
    const more = is.differenceMm - was.differenceMm;
    return more === 0 ? seam : { ...seam, ease: { mm: was.easeWantedMm + more }, takenUp };
  });
  const seams = changed.filter((seam, i) => seam !== after.seams[i]);
  return { pattern: { ...after, seams: changed }, seams };
}
