import type { Pattern } from '@paperhinge/geometry';
import type { Alteration } from '../alteration.js';
import { stepsInTurn } from './in-turn.js';
import { finding } from './tellings.js';

/**
 * A step done to a seam and to those that go on from it, and from those, each once. Where none goes on, that is told,
 * and the seam alone is changed.
 * @param beyond what to do to the seams that go on from the one of a wish
 */
export function seamsInTurn<Wish extends { readonly seam: string }>(
  pattern: Pattern,
  wish: Wish,
  beyond: (pattern: Pattern, wish: Wish) => readonly Wish[],
  alter: (pattern: Pattern, wish: Wish) => Alteration,
): Alteration {
  const wishes = new Map([[wish.seam, wish]]);
  // What is found on the way is asked in its turn: a map is gone through in the order in which it grew.
  for (const one of wishes.values())
    for (const next of beyond(pattern, one)) if (!wishes.has(next.seam)) wishes.set(next.seam, next);
  const done = stepsInTurn(
    pattern,
    [...wishes.values()].map(one => (now: Pattern) => alter(now, one)),
  );
  if (wishes.size > 1) return done;
  const { seam } = wish;
  const alone = finding('note', 'seam-goes-on-nowhere', { seam }, { seam: { seam } });
  return { ...done, findings: [...done.findings, alone] };
}
