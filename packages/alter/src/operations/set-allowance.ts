import { type Edge, type EdgeRef, edgeNamed, type Pattern, pieceNamed } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import type { Alteration } from '../alteration.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { refusal, saying } from './tellings.js';

/** Give edges another allowance, in mm. */
export interface SetAllowance {
  readonly edges: 'all seams' | 'all hems' | readonly EdgeRef[];
  /** mm. */
  readonly to: number;
}

/**
 * Gives edges a new allowance: every edge of kind seam, every edge of kind hem, or those named.
 *
 * @throws PatternError `no-allowance-there`: a fold or raw edge has none; `unknown-piece`, `unknown-edge`; those of
 *   `perform`
 */
export const setAllowance = (pattern: Pattern, parameters: SetAllowance): Alteration =>
  perform(setAllowanceVerb, pattern, parameters);

export const setAllowanceForm = formOf<SetAllowance>()({
  verb: 'set allowance',
  does: 'Gives edges another seam or hem allowance. The stitching line stays where it is; the cutting line moves.',
  fields: {
    edges: field.edgesOr('all seams', 'all hems'),
    to: field.length({ most: tolerances.largestAllowance }),
  },
  sentence: 'Set the allowance of {edges} to {to}',
  startsAt: { edge: ['edges'], table: [] },
  example: { pattern: 'woven-shift', step: { edges: 'all seams', to: 7 } },
});
export const setAllowanceVerb = /* @__PURE__ */ verbFrom(setAllowanceForm, (pattern, { edges, to }) => {
  if (typeof edges !== 'string') for (const ref of edges) requireAllowance(pattern, ref, to);
  const isMeant = (piece: string, edge: Edge): boolean =>
    typeof edges === 'string'
      ? edge.kind === (edges === 'all seams' ? 'seam' : 'hem')
      : edges.some(ref => ref.piece === piece && ref.edge === edge.name);
  const before = new Map<string, { readonly ref: EdgeRef; readonly allowance: number }>();
  const pieces = pattern.pieces.map(piece => {
    const parts = piece.outline.parts.map(part => {
      if (part.type !== 'edge' || !isMeant(piece.name, part)) return part;
      const ref = { piece: piece.name, edge: part.name };
      before.set(`${ref.piece}.${ref.edge}`, { ref, allowance: part.allowance });
      return part.allowance === to ? part : { ...part, allowance: to };
    });
    const same = parts.every((part, i) => part === piece.outline.parts[i]);
    return same ? piece : { ...piece, outline: { parts } };
  });
  const changed = [...before.values()];
  return {
    pattern: { ...pattern, pieces },
    did: saying('set-allowance', {
      edges: typeof edges === 'string' ? edges : changed.map(c => ({ ...c.ref })),
      count: changed.length,
      toMm: to,
      formerMm: [...new Set(changed.map(c => c.allowance))].sort((a, b) => a - b),
    }),
    findings: [],
  };
});

function requireAllowance(pattern: Pattern, { piece, edge }: EdgeRef, to: number): void {
  const { kind } = edgeNamed(pieceNamed(pattern, piece), edge);
  if (to === 0 || kind === 'seam' || kind === 'hem') return;
  throw refusal('no-allowance-there', { edge: { piece, edge }, kind }, { piece, edge });
}
