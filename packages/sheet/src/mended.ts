import type { Finding, Thing } from '@paperhinge/geometry';
import type { StepDone } from './apply-step.js';
import { told } from './caused.js';
import { stillStands } from './still-stands.js';

/** Codes of what an operation leaves and a later one may mend: checking the pattern at the end finds what still stands. */
const passing: ReadonlySet<string> = new Set([
  'seam-does-not-match',
  'sewn-edge-changed',
  'edge-kinked',
  'edge-stepped',
  'edge-turns-back',
  'edge-ends-hooked',
  'fold-corner-not-square',
  'edge-bridged',
  'edge-overlapped',
  'hinge-kink',
  'dart-step',
  'loose-ends',
]);

const truing: ReadonlySet<string> = new Set(['truing-left', 'straight-left']);

/**
 * Whether what a step found is mended by the end: it is what the checks at the end would find anew, a shoulder that
 * matches again, an edge that a later step trued, or what no longer stands.
 * @param index of the step
 */
export function isMended(
  found: Finding,
  index: number,
  { steps, atTheEnd }: { readonly steps: readonly StepDone[]; readonly atTheEnd: readonly Finding[] },
): boolean {
  // What walking the seams found after the step is walked again at the end.
  if (passing.has(found.code) || steps[index]!.state.standing.some(f => told(f) === told(found))) return true;
  if (found.code === 'shoulder-cut')
    return !atTheEnd.some(
      f => f.code === 'seam-does-not-match' && speaksOf(f, found.where.piece, found.where.edge),
    );
  const standing = stillStands[found.code];
  if (standing) return !standing(found, steps.at(-1)!.state.pattern);
  if (!truing.has(found.code)) return false;
  const { piece, edge } = found.where;
  return steps.slice(index + 1).some(({ step, did }) => {
    if (step.verb !== 'true' || did === undefined) return false;
    const { edges } = step.parameters as { readonly edges: readonly Thing[] };
    return edges.some(e => e.piece === piece && e.edge === edge);
  });
}

function speaksOf({ about }: Finding, piece: string | undefined, edge: string | undefined): boolean {
  const { longer = [], shorter = [] } = (about ?? {}) as Partial<
    Record<'longer' | 'shorter', readonly Thing[]>
  >;
  return [...longer, ...shorter].some(t => t.piece === piece && t.edge === edge);
}
