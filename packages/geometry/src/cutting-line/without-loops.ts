import type { Path } from '../path/path.js';
import { requirePath } from '../path/sound.js';
import { selfMeetings } from './self-meetings.js';
import { chainEnd, chainStart, isBefore, type Place, type Strand, strandsBetween } from './strand.js';

/** An open chain with the loops left out that a bend tighter than the allowance makes of its parallel. */
export function withoutLoops(strands: readonly Strand[]): readonly Strand[] {
  const meetings = [...selfMeetings(strands)].sort((p, q) => p.a - q.a || q.b - p.b);
  const kept: Strand[] = [];
  let from = chainStart;
  for (const { a, b } of meetings) {
    const leave = placeOf(a);
    if (b <= a || !isBefore(from, leave)) continue;
    kept.push(...strandsBetween(strands, from, leave));
    from = placeOf(b);
  }
  return from === chainStart ? strands : [...kept, ...strandsBetween(strands, from, chainEnd(strands))];
}

/**
 * An open path with its loops left out, cut at each place that it passes twice: the parallel of a line that bends
 * more tightly than its distance, trimmed to what lies clear of the line. The same path where it has no loop.
 */
export function pathWithoutLoops(path: Path): Path {
  requirePath(path);
  const strands = path.segments.map((segment): Strand => ({ segment, of: '', shape: 'parallel' }));
  const kept = withoutLoops(strands);
  return kept === strands ? path : { segments: kept.map(s => s.segment) };
}

const placeOf = (position: number): Place => ({ index: Math.floor(position), t: position % 1 });
