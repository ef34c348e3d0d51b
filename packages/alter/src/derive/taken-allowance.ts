import { type EdgeRef, edgeNamed, type Finding, type Pattern, pieceNamed } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { finding } from './tellings.js';

/** mm: the allowance of the first of the edges a piece is sewn to, which the piece takes over. */
export const takenAllowance = (pattern: Pattern, along: readonly EdgeRef[]): number =>
  allowanceOf(pattern, along[0]!);

/** Tells where other edges have another allowance than {@link takenAllowance}. */
export function allowanceFindings(
  pattern: Pattern,
  along: readonly EdgeRef[],
  piece: string,
): readonly Finding[] {
  const allowanceMm = takenAllowance(pattern, along);
  const others = along.filter(
    ref => Math.abs(allowanceOf(pattern, ref) - allowanceMm) > tolerances.coincidenceTolerance,
  );
  if (others.length === 0) return [];
  const facts = { piece, edge: { ...along[0]! }, allowanceMm, others: others.map(ref => ({ ...ref })) };
  return [finding('warning', 'allowances-differ', { piece }, facts)];
}

const allowanceOf = (pattern: Pattern, { piece, edge }: EdgeRef): number =>
  edgeNamed(pieceNamed(pattern, piece), edge).allowance;
