import type { Start } from '@paperhinge/alter';
import { inSheet } from '@paperhinge/alter/verb';
import type { Declared, Part, PieceView, Touched } from '../engine/view.js';

/**
 * A sentence about a seam begins at an edge only if it is sewn in one; one about a line, only at a hem, which may stand for
 * it; one about a dart, only on a piece that has one.
 */
export const canBegin = (
  verb: Declared,
  { kind }: Touched,
  part: Part | undefined,
  piece: PieceView | undefined,
): boolean =>
  (kind !== 'edge' ||
    ((verb.fields.seam?.kind !== 'seam' || (part?.seams ?? []).length > 0) &&
      (part?.sort === 'hem' ||
        !(verb.startsAt.edge ?? []).some(field => verb.fields[field]?.kind === 'line')))) &&
  (piece === undefined || !needsDart(verb) || piece.parts.some(p => p.kind === 'dart'));

const needsDart = ({ fields }: Declared): boolean =>
  Object.values(fields).some(f => f.kind === 'dart' && f.giving === 'needed');

/** The fields that the thing touched fills: its piece first, then itself; a corner fills both edges that meet there. */
export function filledBy(
  verb: Declared,
  { kind, piece, name }: Touched,
  part: Part | undefined,
): Readonly<Record<string, unknown>> {
  const filled: Record<string, unknown> = {};
  for (const way of verb.startsAt[kind as Start] ?? []) {
    const [first = '', rest] = way.split('.');
    const field = verb.fields[first];
    // A group (an edge and a place on it) takes the thing as its edge.
    const within = rest ?? (field?.kind === 'group' ? 'edge' : undefined);
    const sort = (within === undefined ? field : field?.fields?.[within])?.kind;
    const value = valueFor(sort, {
      piece,
      names: part?.edges ?? (name === undefined ? [] : [name]),
      seam: part?.seams?.[0],
    });
    if (value === undefined) continue;
    const key = inSheet(first);
    filled[key] =
      within === undefined ? value : { ...(filled[key] as object | undefined), [inSheet(within)]: value };
  }
  return filled;
}

interface Names {
  readonly piece: string | undefined;
  readonly names: readonly string[];
  readonly seam: string | undefined;
}

function valueFor(kind: string | undefined, { piece, names, seam }: Names): unknown {
  const [name] = names;
  if (kind === 'seam') return seam;
  if (kind === 'piece') return piece;
  if (kind === 'pieces') return piece === undefined ? undefined : [piece];
  if (kind === 'edge-of-piece') return name === undefined ? undefined : `${piece}.${name}`;
  if (kind === 'edges-of-pieces') return name === undefined ? undefined : names.map(n => `${piece}.${n}`);
  return name;
}
