import { pathLength } from '../path/length.js';
import type { OutlinePart } from '../pattern/types.js';
import type { Finding, Thing } from '../telling.js';
import { visibleLength } from '../tolerance.js';
import type { CuttingLine } from './cutting-line.js';
import { type Drawn, type MovedIn, movedIn } from './moved-in.js';
import { lengthOff, redrawn } from './redrawn.js';
import type { EndStretch } from './tails.js';
import { finding } from './tellings.js';

/**
 * An outline moved in by what its corners most likely are: as their looks say; where an end stretch was kept that could
 * be a corner's shape, with it or without, whichever has the cutting line that was drawn. Where both have, it is told.
 */
export function likeliest(drawn: Drawn): MovedIn {
  const first = movedIn(drawn);
  if (first.kept.length + first.dropped.length === 0) return first;
  let best = judged(drawn, first);
  const tried: EndStretch[] = [];
  const doubted: EndStretch[] = [];
  while (tried.length < mostTried) {
    const isRight = best.off <= visibleLength;
    const isOpen = (k: EndStretch) => (k.isShort || !isRight) && !tried.some(t => isSame(t, k));
    // What a corner leaves is shorter than the edge itself, which is looked at in its turn: the shortest first.
    const [stretch] = best.moved.kept.filter(isOpen).sort((p, q) => lengthOf(p) - lengthOf(q));
    if (!stretch) break;
    tried.push(stretch);
    const without = judged(drawn, movedIn(drawn, [...best.moved.also, stretch]));
    const isAlike = Math.abs(without.off - best.off) <= visibleLength;
    const worse = troublesOf(without.moved) - troublesOf(best.moved);
    if (isAlike && worse === 0 && isSeenApart(best.moved, without.moved)) doubted.push(stretch);
    else if (isAlike ? worse <= 0 : without.off < best.off && mayGo(stretch, without)) best = without;
  }
  return { ...best.moved, findings: [...best.moved.findings, ...doubts(best, doubted)] };
}

/** End stretches that are looked at: a drawn outline has a few, one of thousands of bends is left as it looks. */
const mostTried = 24;

/** The greater part of an edge is no corner's shape, unless the cutting line is right without it and not otherwise. */
const mayGo = (stretch: EndStretch, without: Judged): boolean =>
  lengthOf(stretch) <= pathLength({ segments: segmentsOf(stretch.part) }) / 2 || without.off <= visibleLength;

/** Corners that were not found again, or guessed: an outline that has none of them is likelier. */
const troublesOf = ({ findings }: MovedIn): number => findings.filter(f => f.severity !== 'note').length;

/** Whether a maker could tell two outlines apart. */
function isSeenApart(one: MovedIn, other: MovedIn): boolean {
  const a = (one.parts ?? []).flatMap(segmentsOf),
    b = (other.parts ?? []).flatMap(segmentsOf);
  return lengthOff(a, { segments: b }) + lengthOff(b, { segments: a }) > 0;
}

const lengthOf = ({ drawn }: EndStretch): number => pathLength({ segments: drawn });

const isSame = (a: EndStretch, b: EndStretch): boolean =>
  a.part === b.part && a.end === b.end && a.count === b.count;

/** An outline moved in, its cutting line, and mm of that and of the one drawn that lie off each other. */
interface Judged {
  readonly moved: MovedIn;
  readonly again: ReturnType<typeof redrawn>;
  readonly off: number;
}

function judged({ parts, allowance }: Drawn, moved: MovedIn): Judged {
  const again = moved.parts && redrawn(moved.parts, allowance);
  if (!again) return { moved, again, off: Number.POSITIVE_INFINITY };
  const segments = parts.flatMap(segmentsOf);
  return {
    moved,
    again,
    off: lengthOff(segments, again.path) + lengthOff(again.path.segments, { segments }),
  };
}

const segmentsOf = (part: OutlinePart) => (part.type === 'edge' ? part.path.segments : []);

/**
 * Short end stretches at corners that the cutting line does not show again, whether they were kept or dropped, what is
 * as likely as not, and what it shows again as a neighbour's.
 */
function doubts({ moved, again }: Judged, doubted: readonly EndStretch[]): readonly Finding[] {
  if (!again) return [];
  return [...moved.kept, ...moved.dropped].flatMap(stretch => {
    const { part, neighbour, drawn, isShort } = stretch;
    const kept = moved.kept.includes(stretch);
    const where = { edge: part.name },
      next = { edge: neighbour.name };
    const isTold = moved.findings.some(
      f => f.severity !== 'note' && [part, neighbour].every(({ name }) => edgesToldOf(f).includes(name)),
    );
    if (!isShort || isTold || neighbour.type !== 'edge') return [];
    const shape = kept ? [part, neighbour].flatMap(segmentsOf) : drawn;
    const isDoubted =
      doubted.some(d => isSame(d, stretch)) ||
      lengthOff(shape, again.path) > visibleLength ||
      (!kept && isNeighboursNow(stretch, again));
    const lengthMm = lengthOf(stretch);
    return isDoubted
      ? [finding('warning', 'corner-doubted', where, { edge: where, next, lengthMm, kept })]
      : [];
  });
}

/**
 * Whether a stretch that was dropped goes straight on in its neighbour's line, and is cut there as the neighbour's. A
 * step of the edge that ends as far from its neighbour as their allowances differ has the very same cutting line: what
 * lies between the two is lost, and whether there was a step only the edge's name along it says.
 */
function isNeighboursNow({ part, isRunOn, drawn }: EndStretch, { stretches }: CuttingLine): boolean {
  const own = stretches.filter(s => s.of === part.name).flatMap(s => s.path.segments);
  return isRunOn && (own.length === 0 || lengthOff(drawn, { segments: own }) > visibleLength);
}

const edgesToldOf = ({ about }: Finding): readonly (string | undefined)[] =>
  Array.isArray(about?.edges) ? about.edges.map((thing: Thing) => thing.edge) : [];
