import type { Finding, Thing } from '@paperhinge/geometry';
import type { StepDone } from './apply-step.js';

/** Codes of what stands only until it is mended: checking the pattern at the end finds what still does. */
const checks: ReadonlySet<string> = new Set([
  'seam-does-not-match',
  'sewn-edge-changed',
  'notches-do-not-meet',
  'ease-the-wrong-way',
  'notch-misses-seam',
  'crossing-seams-apart',
  'notch-without-partner',
  'joined-line-broken',
  'edge-kinked',
  'edge-stepped',
  'fold-corner-not-square',
  'made-for-edge-changed',
  'made-for-edge-gone',
  'edge-bridged',
  'edge-overlapped',
  'hinge-kink',
  'dart-step',
]);

const truing: ReadonlySet<string> = new Set(['truing-left', 'straight-left']);

/**
 * Whether what a step found is mended by the end: it is of a kind that the checks at the end find anew, a shoulder that
 * matches again, or an edge that a later step trued.
 * @param index of the step
 */
export function isMended(
  found: Finding,
  index: number,
  { steps, atTheEnd }: { readonly steps: readonly StepDone[]; readonly atTheEnd: readonly Finding[] },
): boolean {
  if (checks.has(found.code)) return true;
  if (found.code === 'shoulder-cut')
    return !atTheEnd.some(
      f => f.code === 'seam-does-not-match' && speaksOf(f, found.where.piece, found.where.edge),
    );
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
