import type { CornerRule, Edge, Pattern, Piece } from '../pattern/types.js';
import { type Run, turnBetween } from './run.js';
import { neighbourRunsOn } from './runs-on.js';

/** Past this many times the larger allowance a mitred tip is cut square to its bisector. Common practice, no source. */
export const mitreLimit = 2.5;

/**
 * How the cutting line turns a corner. `at-fold`: the other edge's cutting line is run to the fold's line.
 * `mirrored`: the end of the `shaped` edge's allowance is the mirror image of the other's cutting line
 * (pressed-open, turned-up).
 */
export type CornerPlan =
  | { readonly form: 'plain' }
  | { readonly form: 'at-fold'; readonly fold: 'before' | 'after' }
  | {
      readonly form: 'mirrored';
      readonly shaped: 'before' | 'after';
      readonly rule: 'pressed-open' | 'turned-up';
    };

const plain: CornerPlan = { form: 'plain' };
const degrees = Math.PI / 180;

/**
 * The rule for the corner between two neighbouring runs: what an edge asks for, else the first of trade-notes §1
 * that applies. A mitre and an inner corner are both `plain`: the two parallels are run on or cut to where they
 * meet.
 */
export function cornerPlan(before: Run, after: Run, piece: Piece, pattern: Pattern | undefined): CornerPlan {
  const plan = ruleFor(before, after, piece, pattern);
  // Without an allowance there is no end to shape.
  const shaped = plan.form === 'mirrored' ? (plan.shaped === 'before' ? before : after) : undefined;
  return shaped?.allowance === 0 ? plain : plan;
}

function ruleFor(before: Run, after: Run, piece: Piece, pattern: Pattern | undefined): CornerPlan {
  const a = before.ends,
    b = after.starts;
  if (!a || !b) return plain;
  // Two parts of one edge, left by a dart that was closed between them.
  if (a.name === b.name) return plain;
  if (a.kind === 'fold' || b.kind === 'fold')
    return a.kind === b.kind ? plain : { form: 'at-fold', fold: a.kind === 'fold' ? 'before' : 'after' };
  const interior = Math.PI - turnBetween(before, after);
  if (interior > Math.PI) return plain;
  const asked = askedFor(a, b);
  if (asked) return asked;
  if (a.kind === 'hem' && b.kind !== 'hem') return { form: 'mirrored', shaped: 'before', rule: 'turned-up' };
  if (b.kind === 'hem' && a.kind !== 'hem') return { form: 'mirrored', shaped: 'after', rule: 'turned-up' };
  if (a.kind !== 'seam' || b.kind !== 'seam' || !pattern) return plain;
  // Below 75°, or from 105° to 150°.
  if (Math.abs(interior - Math.PI / 2) > 15 * degrees && interior < 150 * degrees) {
    const acrossA = neighbourRunsOn(pattern, piece, b, 'start'),
      acrossB = neighbourRunsOn(pattern, piece, a, 'end');
    if (acrossA !== acrossB)
      return { form: 'mirrored', shaped: acrossA ? 'before' : 'after', rule: 'pressed-open' };
  }
  return plain;
}

/**
 * What the edges ask for at their common corner. A mirrored end is asked for by the edge whose end it shapes; a
 * turned-up corner always shapes the hem if one of the two is a hem. Where both ask, the mirrored end is given,
 * and of two such the earlier edge's.
 */
function askedFor(a: Edge, b: Edge): CornerPlan | undefined {
  const endsWith = a.corners.end,
    startsWith = b.corners.start;
  const mirrored = (rule: CornerRule | undefined, own: 'before' | 'after'): CornerPlan | undefined => {
    if (rule === undefined || rule === 'mitre') return undefined;
    const hem = a.kind === 'hem' ? 'before' : b.kind === 'hem' ? 'after' : own;
    return { form: 'mirrored', rule, shaped: rule === 'turned-up' ? hem : own };
  };
  return (
    mirrored(endsWith, 'before') ??
    mirrored(startsWith, 'after') ??
    (endsWith === 'mitre' || startsWith === 'mitre' ? plain : undefined)
  );
}
