import { nearestName } from '@paperhinge/geometry/sayings';
import type { Entry, Tree } from '../document.js';
import { type At, type JsonSchema, type Kind, tell } from './kind.js';
import { isPrintable } from './names.js';

/** A field of a mapping: what it takes, and what becomes of it where it is left out. */
export interface Member<
  T = unknown,
  G extends 'needed' | 'optional' | 'usual' = 'needed' | 'optional' | 'usual',
> {
  readonly kind: Kind<T>;
  readonly giving: G;
  readonly usual?: T;
}
export const needed = <T>(kind: Kind<T>): Member<T, 'needed'> => ({ kind, giving: 'needed' });
export const optional = <T>(kind: Kind<T>): Member<T, 'optional'> => ({ kind, giving: 'optional' });
export const usually = <T>(kind: Kind<T>, usual: T): Member<T, 'usual'> => ({ kind, giving: 'usual', usual });

type Members = Readonly<Record<string, Member>>;
type ValueOf<M> = M extends Member<infer T> ? T : never;
type OptionalIn<M> = { [K in keyof M]: M[K] extends Member<unknown, 'optional'> ? K : never }[keyof M];
/** What a mapping of these members is read into. */
export type Read<M> = { readonly [K in Exclude<keyof M, OptionalIn<M>>]: ValueOf<M[K]> } & {
  readonly [K in OptionalIn<M>]?: ValueOf<M[K]>;
};

/** A mapping of these fields and no others. */
export const mapping = <M extends Members>(members: M): Kind<Read<M>> => ({
  schema: mappingSchema(members),
  read: (tree, at) => {
    if (tree.kind !== 'mapping') return tell(at, 'mapping-expected', meant(members, tree));
    const meantBy = tellUnknown(members, tree.entries, at);
    const values = Object.entries(members).flatMap(([key, member]): [string, unknown][] => {
      // What was misspelt is not lacking as well.
      if (meantBy.has(key) && !tree.entries.has(key)) return [];
      const value = readMember(key, member, tree.entries.get(key), at);
      return value === undefined ? [] : [[key, value]];
    });
    return Object.fromEntries(values) as Read<M>;
  },
});

function readMember(key: string, member: Member, entry: Entry | undefined, at: At): unknown {
  const isBare = entry !== undefined && isEmpty(entry.value) && !member.kind.mayBeEmpty;
  if (member.giving !== 'needed' && (entry === undefined || (isBare && isHeading(member))))
    return member.usual;
  if (entry === undefined || isBare) return tell(at, 'missing-field', { fields: [key] });
  return member.kind.read(entry.value, under(key, entry, at));
}

/** Under it stand things by their names, usually none: with all of them struck out it says no more than if it were not there. */
const isHeading = ({ kind, usual }: Member): boolean =>
  kind.schema.type === 'object' && typeof usual === 'object';

/** A value of a mapping; mappings and lists are best told at their key. */
const under = (key: string, { place, value }: Entry, at: At): At => ({
  ...at,
  of: { field: key },
  place: value.kind === 'scalar' ? value.place : place,
});
const isEmpty = (tree: Tree): boolean => tree.kind === 'scalar' && tree.value === null;

const mappingSchema = (members: Members): JsonSchema => {
  const entries = Object.entries(members);
  const lacking = entries.filter(([, { giving }]) => giving === 'needed').map(([key]) => key);
  return {
    type: 'object',
    properties: Object.fromEntries(
      entries.map(([key, { kind, usual }]) => [
        key,
        usual === undefined || typeof usual === 'object' ? kind.schema : { ...kind.schema, default: usual },
      ]),
    ),
    ...(lacking.length > 0 ? { required: lacking } : {}),
    additionalProperties: false,
  };
};

/** `from: hem` where `from: { edge: hem }` was meant: the one word is its first field, if that alone is needed. */
function meant(members: Members, tree: Tree): { readonly write?: string } {
  const needs = Object.keys(members).filter(key => members[key]!.giving === 'needed');
  const word = tree.kind === 'scalar' && typeof tree.value === 'string' ? tree.value.trim() : '';
  return needs.length === 1 && word !== '' && isPrintable(word) ? { write: `{ ${needs[0]}: ${word} }` } : {};
}

/** Tells fields that are none. @returns the fields that were most likely meant by them */
function tellUnknown(
  members: Members,
  entries: ReadonlyMap<string, Entry>,
  at: At,
): ReadonlySet<string | undefined> {
  const names = Object.keys(members);
  const meantBy = new Set<string | undefined>();
  let before: Entry | undefined;
  for (const [key, entry] of entries) {
    const previous = before;
    before = entry;
    if (Object.hasOwn(members, key)) continue;
    const [head = '', ...rest] = key.split(':').map(part => part.trim());
    if (isEmpty(entry.value) && rest.length > 0 && names.includes(head)) {
      meantBy.add(head);
      tell(at, 'space-after-colon', { write: `${head}: ${rest.join(':')}` }, entry.place);
    } else if (isEmpty(entry.value) && /^\d+\s*(mm|cm|in|"|%)?$/.test(key) && isFigure(previous?.value))
      tell(at, 'decimal-comma', { write: `${previous.value.value}.${key}` }, entry.place);
    else {
      meantBy.add(nearestName(key, names));
      tell(at, 'unknown-field', { name: key, names }, entry.place);
    }
  }
  return meantBy;
}
const isFigure = (
  tree: Tree | undefined,
): tree is Tree & { readonly kind: 'scalar'; readonly value: number } =>
  tree?.kind === 'scalar' && typeof tree.value === 'number';

/** One value, or a list of at least one; always read as a list. */
export const oneOrMore = <T>(kind: Kind<T>): Kind<readonly T[]> => ({
  schema: { anyOf: [kind.schema, { type: 'array', items: kind.schema, minItems: 1 }] },
  read: (tree, at) => {
    if (tree.kind !== 'list') {
      const one = kind.read(tree, at);
      return one === undefined ? undefined : [one];
    }
    if (tree.items.length === 0) return tell(at, 'list-empty', {});
    return tree.items.flatMap((item, i): readonly T[] => {
      const value = kind.read(item, itemAt(at, item, i));
      return value === undefined ? [] : [value];
    });
  },
});
const itemAt = (at: At, item: Tree, index: number): At => ({
  ...at,
  of: { ...at.of, item: index + 1 },
  place: item.place,
});

/** A list of exactly two, where a single value would be another kind. */
export const pairOf = <T>(kind: Kind<T>): Kind<readonly [T, T]> => ({
  schema: { type: 'array', items: kind.schema, minItems: 2, maxItems: 2 },
  read: (tree, at) => {
    const items = tree.kind === 'list' ? tree.items : [];
    if (items.length !== 2) return tell(at, 'pair-expected', {});
    const [a, b] = items.map((item, i) => kind.read(item, itemAt(at, item, i)));
    return a !== undefined && b !== undefined ? [a, b] : undefined;
  },
});

/** Values under names of the maker's choice. */
export const named = <T>(kind: Kind<T>): Kind<Readonly<Record<string, T>>> => ({
  schema: { type: 'object', additionalProperties: kind.schema },
  read: (tree, at) => {
    if (tree.kind !== 'mapping') return tell(at, 'mapping-expected', {});
    const values = [...tree.entries].flatMap(([key, entry]): [string, T][] => {
      if (key.trim() === '' || !isPrintable(key)) {
        const { field } = at.of;
        tell(at, 'name-not-printable', field === undefined ? {} : { among: field }, entry.place);
        return [];
      }
      const value = isEmpty(entry.value)
        ? tell(at, 'missing-field', { fields: [key] })
        : kind.read(entry.value, under(key, entry, at));
      return value === undefined ? [] : [[key, value]];
    });
    return Object.fromEntries(values);
  },
});

/** A value read by the kind that suits its form, so that its own faults are told and not only "neither of two". */
export const byForm = <A, B>(
  isFirst: (tree: Tree) => boolean,
  first: Kind<A>,
  second: Kind<B>,
): Kind<A | B> => ({
  schema: { anyOf: [first.schema, second.schema] },
  read: (tree, at): A | B | undefined => (isFirst(tree) ? first : second).read(tree, at),
});

/** A kind whose value is put into another form once it is read. */
export const turnedInto = <T, U>(kind: Kind<T>, into: (value: T, at: At) => U | undefined): Kind<U> => ({
  schema: kind.schema,
  read: (tree, at) => {
    const value = kind.read(tree, at);
    return value === undefined ? undefined : into(value, at);
  },
});
