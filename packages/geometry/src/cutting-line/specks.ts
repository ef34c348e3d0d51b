import { endOf, type Segment, startOf } from '../curve/segment.js';
import { endingAt, startingAt } from '../path/mended.js';
import { isSamePoint } from '../same-point.js';
import { clearSlack, fitTolerance, joiningGap, kinkTurn } from '../tolerance.js';
import { angleBetween, distance, type Point, subtract } from '../vector.js';

/**
 * A chain without specks: stretches that make a kink on the way and stray from where they begin by no more than
 * `fitTolerance`, or come back there and stray by no more than a `joiningGap`. At the chain's ends, where the whole shape
 * of a corner would hang on them, they may lead 0.01 mm away. An editor's rounding leaves such spurs, hooks and little
 * steps; a parallel keeps no better to its line than that, and would be mitred about each of them, to many times its
 * size. The chain's two ends stay; what lay on both sides of a speck is joined where it began.
 */
export function withoutSpecks(chain: readonly Segment[]): readonly Segment[] {
  if (!chain.some(segment => isWithin(segment, startOf(segment), joiningGap))) return chain;
  return without(without(chain, fitTolerance), joiningGap);
}

function without(chain: readonly Segment[], reach: number): readonly Segment[] {
  const groups = groupsOf(chain, reach);
  const kept = groups.filter(group => !isSpeck(group, chain));
  if (kept.length === groups.length || kept.length === 0) return chain;
  const [first, ...rest] = kept.flatMap(({ from, to }) => chain.slice(from, to));
  const welded = [startingAt(first!, startOf(chain[0]!))];
  for (const segment of rest) welded.push(startingAt(segment, endOf(welded.at(-1)!)));
  return [...welded.slice(0, -1), endingAt(welded.at(-1)!, endOf(chain.at(-1)!))];
}

/** Segments `from` to `to` of a chain, the last left out; `small`: together no larger than a speck. */
interface Group {
  readonly from: number;
  readonly to: number;
  readonly small: boolean;
}

/** Each segment by itself, but for small ones that follow one another within one speck. */
function groupsOf(chain: readonly Segment[], reach: number): readonly Group[] {
  const groups: Group[] = [];
  for (const [i, segment] of chain.entries()) {
    const last = groups.at(-1);
    if (last?.small && isWithin(segment, startOf(chain[last.from]!), reach))
      groups[groups.length - 1] = { ...last, to: i + 1 };
    else groups.push({ from: i, to: i + 1, small: isWithin(segment, startOf(segment), reach) });
  }
  return groups;
}

const isWithin = (segment: Segment, center: Point, reach: number): boolean =>
  segment.every(p => distance(p, center) <= reach);

/** Whether a small group ends where it begins, and turns by a kink more than its neighbours would without it. */
function isSpeck({ from, to, small }: Group, chain: readonly Segment[]): boolean {
  const isLast = from === 0 || to === chain.length;
  const apart = distance(startOf(chain[from]!), endOf(chain[to - 1]!));
  if (!small || apart > (isLast ? clearSlack : fitTolerance)) return false;
  const before = legsOf(chain[from - 1]).slice(-1),
    after = legsOf(chain[to]).slice(0, 1);
  const through = [...before, ...chain.slice(from, to).flatMap(legsOf), ...after];
  return turnOf(through) - turnOf([...before, ...after]) > kinkTurn;
}

/** The directions that a segment's control points lead in, one after another. */
const legsOf = (segment: Segment | undefined): readonly Point[] =>
  (segment ?? [])
    .slice(1)
    .flatMap((p, i) => (isSamePoint(p, segment![i]!) ? [] : [subtract(p, segment![i]!)]));

/** rad. */
const turnOf = (directions: readonly Point[]): number =>
  directions.slice(1).reduce((sum, way, i) => sum + Math.abs(angleBetween(directions[i]!, way)), 0);
