import type { Field } from '@paperhinge/alter/verb';
import type { Names } from '../engine/view.js';

/** What a field may be chosen from, given what the step says already; none where it is typed. */
export function choicesOf(
  field: Field,
  fields: Readonly<Record<string, unknown>>,
  names: Names | undefined,
): readonly string[] {
  if (field.kind === 'choice') return field.words ?? [];
  if (field.kind === 'yes-or-no') return ['yes', 'no'];
  if (!names) return [];
  const { pieces, edges, darts, lines, marks, seams, fabrics } = names;
  const owner = fields[field.of ?? 'piece'];
  const owners = (Array.isArray(owner) ? owner : [owner]).filter((o): o is string => typeof o === 'string');
  const of = (lists: Readonly<Record<string, readonly string[]>>) => [
    ...(field.words ?? []),
    ...new Set(owners.flatMap(o => lists[o] ?? [])),
  ];
  switch (field.kind) {
    case 'piece':
    case 'pieces':
      return pieces;
    case 'edge':
      return of(edges);
    case 'dart':
      return of(darts);
    case 'line':
      return of(lines);
    case 'mark':
    case 'marks':
      return of(marks);
    case 'seam':
      return seams;
    case 'cloth':
      return fabrics;
    case 'edge-of-piece':
    case 'edges-of-pieces':
      return [...(field.words ?? []), ...pieces.flatMap(p => (edges[p] ?? []).map(e => `${p}.${e}`))];
    default:
      return [];
  }
}

export const isList = ({ kind }: Field): boolean => ['pieces', 'edges-of-pieces', 'marks'].includes(kind);

/** What lights up on the table while a name is looked at: `front.hem`, or `front.` for the whole piece. */
export function litBy(
  field: Field,
  fields: Readonly<Record<string, unknown>>,
  name: string | undefined,
): ReadonlySet<string> | undefined {
  if (name === undefined) return undefined;
  if (field.kind === 'piece' || field.kind === 'pieces') return new Set([`${name}.`]);
  if (field.kind === 'edge-of-piece' || field.kind === 'edges-of-pieces') return new Set([name]);
  const owner = fields[field.of ?? 'piece'];
  return new Set((Array.isArray(owner) ? owner : [owner]).map(piece => `${piece}.${name}`));
}
