import { type Edge, type EdgeRef, edgeNamed, type Pattern, pieceNamed } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import type { Alteration } from '../alteration.js';
import { distinctEdges, edgeOf, holdsEdge } from '../edge-refs.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { refusal, saying } from './tellings.js';

/** Give edges another allowance, in mm. */
export interface SetAllowance {
  readonly edges: 'all seams' | 'all hems' | readonly EdgeRef[];
  /** mm. */
  readonly to: number;
  /** The edges that they are sewn to as well. */
  readonly matching?: boolean;
}

/**
 * Gives edges a new allowance: every edge of kind seam, every edge of kind hem, or those named; with `matching` also the
 * edges that those named are sewn to, so that both sides of a seam are laid edge on edge when it is sewn. Source: common
 * practice, no source.
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
    matching: field.optional(field.yesOrNo()),
  },
  sentence: 'Set the allowance of {edges} to {to}[, what is sewn to them too: {matching}]',
  startsAt: { edge: ['edges'], table: [] },
  example: { pattern: 'woven-shift', step: { edges: 'all seams', to: 7 } },
});
export const setAllowanceVerb = /* @__PURE__ */ verbFrom(
  setAllowanceForm,
  (pattern, { edges: given, to, matching }) => {
    if (typeof given !== 'string') for (const ref of given) requireAllowance(pattern, ref, to);
    const edges =
      typeof given === 'string' || !matching
        ? given
        : distinctEdges([...given, ...given.flatMap(edge => sewnTo(pattern, edge))]);
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
  },
);

/** The edges that one is sewn to, of those that have an allowance. */
const sewnTo = (pattern: Pattern, edge: EdgeRef): readonly EdgeRef[] =>
  pattern.seams
    .flatMap(({ a, b }) => [...(holdsEdge(a, edge) ? b : []), ...(holdsEdge(b, edge) ? a : [])])
    .filter(other => ['seam', 'hem'].includes(edgeNamed(pieceNamed(pattern, other.piece), other.edge).kind))
    .map(edgeOf);

function requireAllowance(pattern: Pattern, { piece, edge }: EdgeRef, to: number): void {
  const { kind } = edgeNamed(pieceNamed(pattern, piece), edge);
  if (to === 0 || kind === 'seam' || kind === 'hem') return;
  throw refusal('no-allowance-there', { edge: { piece, edge }, kind }, { piece, edge });
}
