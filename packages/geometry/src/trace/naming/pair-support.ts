import type { Candidate } from './seam-candidates.js';

/** Two pieces that may be sewn along several edges are likelier to be sewn along each. */
const supported = 3;
/** mm: lines as long as one another to this support one another. */
const exactly = 0.5;

/** The same candidates, those of pieces that have several exact pairs raised. */
export function withSupport(candidates: readonly Candidate[]): readonly Candidate[] {
  const key = ({ a, b }: Candidate): string => [a[0]!.piece.name, b[0]!.piece.name].sort().join('/');
  const exact = new Map<string, Set<unknown>[]>();
  for (const one of candidates) {
    if (Math.abs(one.aMm - one.bMm) > exactly) continue;
    const sides = exact.get(key(one)) ?? [new Set(), new Set()];
    const turned = one.a[0]!.piece.name > one.b[0]!.piece.name;
    sides[0]!.add((turned ? one.b : one.a)[0]);
    sides[1]!.add((turned ? one.a : one.b)[0]);
    exact.set(key(one), sides);
  }
  return candidates.map(one => {
    const count = Math.min(...(exact.get(key(one)) ?? []).map(side => side.size), 9);
    return count > 1 && count < 9 ? { ...one, odds: supported * one.odds } : one;
  });
}
