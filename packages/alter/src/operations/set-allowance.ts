import {
  type Edge,
  type EdgeRef,
  edgeNamed,
  formatLength,
  type Pattern,
  PatternError,
  pieceNamed,
  tolerances,
} from '@paperhinge/geometry';
import type { Alteration } from '../alteration.js';

/** Give edges another allowance, in mm. */
export interface SetAllowance {
  readonly edges: 'all seams' | 'all hems' | readonly EdgeRef[];
  /** mm. */
  readonly to: number;
}

/**
 * Gives edges a new allowance: every edge of kind seam, every edge of kind hem, or those named.
 *
 * @throws PatternError `allowance-out-of-range`: negative, or over `largestAllowance`; `allowance-on-fold`: a fold
 *   or raw edge has none; `unknown-piece`, `unknown-edge`
 */
export function setAllowance(pattern: Pattern, { edges, to }: SetAllowance): Alteration {
  if (!(to >= 0 && to <= tolerances.largestAllowance))
    throw new PatternError('allowance-out-of-range', {
      message: `An allowance of ${Number.isFinite(to) ? to.toFixed(1) : 'no number of'} mm cannot be cut.`,
      remedy: `Give one from 0 to ${tolerances.largestAllowance} mm.`,
    });
  if (typeof edges !== 'string') for (const ref of edges) requireAllowance(pattern, ref, to);
  const isMeant = (piece: string, edge: Edge): boolean =>
    typeof edges === 'string'
      ? edge.kind === (edges === 'all seams' ? 'seam' : 'hem')
      : edges.some(ref => ref.piece === piece && ref.edge === edge.name);
  const before = new Map<string, number>();
  const pieces = pattern.pieces.map(piece => {
    const parts = piece.outline.parts.map(part => {
      if (part.type !== 'edge' || !isMeant(piece.name, part)) return part;
      before.set(`${piece.name}.${part.name}`, part.allowance);
      return part.allowance === to ? part : { ...part, allowance: to };
    });
    return parts.every((part, i) => part === piece.outline.parts[i])
      ? piece
      : { ...piece, outline: { parts } };
  });
  const say = (mm: number): string => formatLength(mm, pattern.unit);
  const former = [...new Set(before.values())].sort((a, b) => a - b).map(say);
  const which = typeof edges === 'string' ? edges : [...before.keys()].join(', ');
  const was = former.length === 0 ? '' : `; before: ${former.join(', ')}`;
  return {
    pattern: { ...pattern, pieces },
    did: `set the allowance of ${which} (${before.size} ${before.size === 1 ? 'edge' : 'edges'}) to ${say(to)}${was}`,
    findings: [],
  };
}

function requireAllowance(pattern: Pattern, { piece, edge }: EdgeRef, to: number): void {
  const { kind } = edgeNamed(pieceNamed(pattern, piece), edge);
  if (to === 0 || kind === 'seam' || kind === 'hem') return;
  throw new PatternError('allowance-on-fold', {
    message: `${piece}.${edge} is a ${kind} edge, which has no allowance.`,
    remedy: kind === 'fold' ? 'Unfold the piece first, or leave this edge out.' : 'Leave this edge out.',
    where: { piece, edge },
  });
}
