import { runLength, runsTaken } from '../joining/runs-taken.js';
import { oncePer } from '../once-per.js';
import { requireWhole } from '../pattern/require-whole.js';
import type { EdgeRef, EdgeRun, Pattern } from '../pattern/types.js';
import { seamTolerance } from '../tolerance.js';

/** Two edges that lie on one another when a seam is sewn. */
export interface FacingEdges {
  readonly a: EdgeRef;
  readonly b: EdgeRef;
}

/**
 * The edges that face each other in the seams of a pattern: those whose runs lie beside one another for more than
 * `seamTolerance`, each side laid out in shares of its length so that ease is spread evenly. An edge sewn to its own
 * mirror image faces itself.
 * @throws PatternError `unknown-piece`, `unknown-edge`, `empty-seam`
 */
export const facingEdges = /* @__PURE__ */ oncePer((pattern: Pattern): readonly FacingEdges[] => {
  requireWhole(pattern);
  return pattern.seams.flatMap(seam => {
    const { a, b } = runsTaken(pattern, seam);
    const [left, right] = [inShares(pattern, a), inShares(pattern, b)];
    return left.flatMap(one =>
      right
        .filter(other => {
          const shared = Math.min(one.to, other.to) - Math.max(one.from, other.from);
          return shared * Math.min(one.wholeMm, other.wholeMm) > seamTolerance;
        })
        .map(other => ({ a: one.edge, b: other.edge })),
    );
  });
});

/** The runs of a side one after another, in shares of its length. */
function inShares(pattern: Pattern, side: readonly EdgeRun[]) {
  const lengths = side.map(run => runLength(pattern, run));
  const wholeMm = lengths.reduce((sum, mm) => sum + mm, 0);
  let along = 0;
  return side.map(({ piece, edge }, i) => {
    const from = along / wholeMm;
    along += lengths[i]!;
    return { edge: { piece, edge }, from, to: along / wholeMm, wholeMm };
  });
}
