import type { Derived, MakingNote } from '@paperhinge/alter';
import { type Finding, type Pattern, walkSeams } from '@paperhinge/geometry';
import { oncePer, requireWhole } from '@paperhinge/geometry/internal';
import { type MadeFor, madeForNow, outgrown } from './made-for.js';
import { onFirstUse } from './on-first-use.js';

/** What stands after some steps. Nothing in it is ever changed: a step makes another. */
export interface State {
  readonly pattern: Pattern;
  /** Pieces made from edges, each as it was drafted last. */
  readonly derived: readonly Derived[];
  /** What the steps add to the order of work. */
  readonly making: readonly MakingNote[];
  /** What the pieces made from edges were made for. */
  readonly made: readonly MadeFor[];
  /** What walking the seams finds of the pattern as it is; walked when first asked for. @throws as `walkSeams` */
  readonly standing: readonly Finding[];
}

/** The state before the first step; of one pattern always the same, so that steps done from it are known. */
export const stateOf: (pattern: Pattern) => State = /* @__PURE__ */ oncePer((pattern: Pattern): State => {
  requireWhole(pattern);
  const made = madeForNow(pattern);
  return walkedLater({ pattern, derived: [], making: [], made });
});

/** A state whose seams are walked when it is first asked what stands: while a figure is dragged, nobody asks. */
export function walkedLater(state: Omit<State, 'standing'>): State {
  const standing = onFirstUse(() => standingIn(state.pattern, state.made));
  return {
    ...state,
    get standing() {
      return standing();
    },
  };
}

/** What will not sew as it stands. */
const standingIn = (pattern: Pattern, made: readonly MadeFor[]): readonly Finding[] => [
  ...walkSeams(pattern).flatMap(walk => walk.findings),
  ...outgrown(pattern, made),
];
