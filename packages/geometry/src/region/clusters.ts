import { distance, type Point } from '../vector.js';

/** The number of the place that each point is at, and where each place is. */
export interface Clusters {
  readonly numbers: readonly number[];
  readonly places: readonly Point[];
}

/** Points nearer than `within` mm to each other, also by way of others, are at one place: where the first of them is. */
export function clustered(points: readonly Point[], within: number): Clusters {
  const leader = points.map((_, i) => i);
  const leaderOf = (i: number): number => {
    let at = i;
    while (leader[at] !== at) at = leader[at] = leader[leader[at]!]!;
    return at;
  };
  const order = [...leader].sort((i, k) => points[i]!.x - points[k]!.x);
  for (const [place, i] of order.entries())
    for (let next = place + 1; next < order.length; next++) {
      const k = order[next]!;
      if (points[k]!.x - points[i]!.x > within) break;
      if (distance(points[i]!, points[k]!) > within) continue;
      const a = leaderOf(i),
        b = leaderOf(k);
      leader[Math.max(a, b)] = Math.min(a, b);
    }
  const numbers: number[] = [],
    places: Point[] = [],
    numberOf = new Map<number, number>();
  for (const [i, point] of points.entries()) {
    const first = leaderOf(i);
    if (first === i) {
      numberOf.set(i, places.length);
      places.push(point);
    }
    numbers.push(numberOf.get(first)!);
  }
  return { numbers, places };
}
