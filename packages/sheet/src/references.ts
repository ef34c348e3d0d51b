import type { AnyVerbForm } from '@paperhinge/alter';
import { type Field, type FieldKind, type Fields, inSheet } from '@paperhinge/alter/verb';
import type { EdgeRef } from '@paperhinge/geometry';
import type { EdgePosition } from '@paperhinge/geometry/pattern';
import type { Parameters } from './fields/of-verb.js';

/** A name that a step uses and that the pattern must have at that step. */
export interface Reference {
  readonly kind: ReferenceKind;
  readonly name: string;
  /** The piece that an edge, dart, neighbour (an edge or a dart), line or mark belongs to. */
  readonly piece?: string;
  /** Words that may stand instead of a name. */
  readonly words?: readonly string[];
  /** The field that names it, by its dotted path in the step; an item of a list by its number. */
  readonly field: string;
}
export type ReferenceKind =
  | 'piece'
  | 'edge'
  | 'dart'
  | 'pleat'
  | 'line'
  | 'mark'
  | 'notch'
  | 'neighbour'
  | 'seam'
  | 'fabric';

/** Every name that a step of this verb uses, in the order of its fields. */
export const referencesOf = ({ fields }: AnyVerbForm, parameters: Parameters): readonly Reference[] =>
  inFields({ fields, parameters, path: '' });

/** The fields of a verb or of a group of it, with those round it. */
interface Scope {
  readonly fields: Fields;
  readonly parameters: Parameters;
  readonly path: string;
  readonly outer?: Scope;
}

const inFields = (scope: Scope): readonly Reference[] =>
  Object.entries(scope.fields).flatMap(([key, field]) => {
    const value = scope.parameters[key];
    return value === undefined ? [] : inField(field, value, `${scope.path}${inSheet(key)}`, scope);
  });

function inField(field: Field, value: unknown, path: string, scope: Scope): readonly Reference[] {
  const { kind } = field;
  if (typeof value === 'string' && field.words?.includes(value)) return [];
  if (kind === 'group')
    return inFields({
      fields: field.fields!,
      parameters: value as Parameters,
      path: `${path}.`,
      outer: scope,
    });
  if (kind === 'groups')
    return (value as readonly Parameters[]).flatMap((parameters, i) =>
      inFields({ fields: field.fields!, parameters, path: `${path}.${i}.`, outer: scope }),
    );
  if (kind === 'piece') return [{ kind, name: value as string, field: path }];
  if (kind === 'pieces')
    return (value as readonly string[]).map((name, i) => ({ kind: 'piece', name, field: `${path}.${i}` }));
  if (kind === 'seam') return [{ kind, name: value as string, field: path }];
  if (kind === 'cloth') return [{ kind: 'fabric', name: value as string, field: path }];
  if (kind === 'edge-of-piece') return ofEdge(value as EdgeRef, path);
  if (kind === 'edges-of-pieces')
    return (value as readonly EdgeRef[]).flatMap((ref, i) => ofEdge(ref, `${path}.${i}`));
  if (kind === 'place' || kind === 'places' || kind === 'range')
    return [value].flat().flatMap(place => neighbours(field, place as EdgePosition, path, scope));
  if (kind === 'marks')
    return (value as readonly string[]).flatMap((name, i) =>
      piecesOf(field, scope).map(piece => ({ kind: 'mark', name, piece, field: `${path}.${i}` })),
    );
  if (!onPiece(kind)) return [];
  const words = field.words ? { words: field.words } : {};
  return piecesOf(field, scope).map(piece => ({ kind, name: value as string, piece, field: path, ...words }));
}

const onPiece = (kind: FieldKind): kind is FieldKind & ReferenceKind =>
  kind === 'edge' ||
  kind === 'dart' ||
  kind === 'pleat' ||
  kind === 'line' ||
  kind === 'mark' ||
  kind === 'notch';

const ofEdge = ({ piece, edge }: EdgeRef, field: string): readonly Reference[] => [
  { kind: 'piece', name: piece, field },
  { kind: 'edge', name: edge, piece, field },
];

/** The neighbour that a place is counted from: an edge or a dart; `start` and `end` are always there. */
function neighbours(field: Field, { from }: EdgePosition, path: string, scope: Scope): readonly Reference[] {
  if (from === undefined || from === 'start' || from === 'end') return [];
  const edge = found(field.of, scope);
  // A seam's neighbours are those of several edges; only the run can tell.
  if (edge?.field.kind !== 'edge') return [];
  return piecesOf(edge.field, edge.scope).map(piece => ({
    kind: 'neighbour',
    name: from,
    piece,
    field: path,
  }));
}

/** The pieces named by the field that this one belongs to. */
function piecesOf({ of }: Field, scope: Scope): readonly string[] {
  const owner = found(of, scope);
  const names = owner === undefined ? [] : [owner.value].flat();
  return names.filter(name => typeof name === 'string');
}

/** A field by its name, in its own group first. */
function found(
  name: string | undefined,
  scope: Scope,
): { readonly field: Field; readonly value: unknown; readonly scope: Scope } | undefined {
  if (name === undefined) return undefined;
  if (Object.hasOwn(scope.fields, name))
    return { field: scope.fields[name]!, value: scope.parameters[name], scope };
  return scope.outer && found(name, scope.outer);
}
