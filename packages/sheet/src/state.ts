import type { Derived, MakingNote } from '@paperhinge/alter';
import { type Finding, type Pattern, walkSeams } from '@paperhinge/geometry';
import { oncePer, requireWhole } from '@paperhinge/geometry/internal';
import { type MadeFor, madeForNow, outgrown } from './made-for.js';

/** What stands after some steps. Nothing in it is ever changed: a step makes another. */
export interface State {
  readonly pattern: Pattern;
  /** Pieces made from edges, each as it was drafted last. */
  readonly derived: readonly Derived[];
  /** What the steps add to the order of work. */
  readonly making: readonly MakingNote[];
  /** What the pieces made from edges were made for. */
  readonly made: readonly MadeFor[];
  /** What walking the seams finds of the pattern as it is. */
  readonly standing: readonly Finding[];
}

/**
 * The state before the first step; of one pattern always the same, so that steps done from it are known.
 * @throws PatternError what walking its seams refuses
 */
export const stateOf: (pattern: Pattern) => State = /* @__PURE__ */ oncePer((pattern: Pattern): State => {
  requireWhole(pattern);
  const made = madeForNow(pattern);
  return { pattern, derived: [], making: [], made, standing: standingIn(pattern, made) };
});

/** What will not sew as it stands. */
export const standingIn = (pattern: Pattern, made: readonly MadeFor[]): readonly Finding[] => [
  ...walkSeams(pattern).flatMap(walk => walk.findings),
  ...outgrown(pattern, made),
];
