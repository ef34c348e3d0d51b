import type { AnyVerbForm } from '@paperhinge/alter';
import { type Field, type Fields, inSheet } from '@paperhinge/alter/verb';
import type { SeamEase } from '@paperhinge/geometry';
import type { EdgePosition } from '@paperhinge/geometry/pattern';
import type { Tree } from '../document.js';
import { angle, count, length, perCent, percent, signedLength } from './figures.js';
import { orGoal } from './goal.js';
import { type At, type Kind, tell } from './kind.js';
import { choice, edgeRef, name, oneName, orWords, position, yesOrNo } from './names.js';
import { byForm, type Member, mapping, oneOrMore, pairOf, turnedInto } from './shapes.js';

/** What a step says, by the names that the library has for its fields; what was left out is not there. */
export type Parameters = Readonly<Record<string, unknown>>;

/** The fields of a verb as a sheet writes them, from its declaration. */
export const stepKind = (verb: AnyVerbForm): Kind<Parameters> => {
  const fields = fieldsKind(verb.fields);
  return {
    schema: { description: verb.does, ...fields.schema },
    read: (tree, at) => {
      const faults = at.reading.faults.length;
      const parameters = fields.read(tree, at);
      if (parameters !== undefined && at.reading.faults.length === faults) tellTogether(verb, parameters, at);
      return parameters;
    },
  };
};

/** Fields that exclude or need one another. */
function tellTogether(verb: AnyVerbForm, parameters: Parameters, at: At): void {
  for (const names of verb.oneOf ?? []) {
    const there = names.filter(n => parameters[n] !== undefined);
    if (there.length > 1) tell(at, 'fields-conflict', { fields: there.map(inSheet) });
    if (there.length === 0) tell(at, 'missing-field', { fields: names.map(inSheet) });
  }
  const lacking = verb.lacks?.({ ...usualOf(verb.fields), ...parameters } as never);
  if (lacking !== undefined) tell(at, 'missing-field', { fields: [inSheet(lacking)] });
}

const usualOf = (fields: Fields): Parameters =>
  Object.fromEntries(
    Object.entries(fields).flatMap(([key, { usual }]) => (usual === undefined ? [] : [[key, usual]])),
  );

function fieldsKind(fields: Fields): Kind<Parameters> {
  const names = Object.keys(fields);
  const members = names.map(key => [inSheet(key), memberOf(fields[key]!)] as const);
  return turnedInto(mapping(Object.fromEntries(members)), read =>
    Object.fromEntries(
      names.flatMap((key): [string, unknown][] => {
        const value = (read as Parameters)[inSheet(key)];
        return value === undefined ? [] : [[key, value]];
      }),
    ),
  );
}

/** The usual value is the library's to fill in, so that a step holds what the maker wrote. */
const memberOf = (field: Field): Member => ({
  kind: described(kindOf(field), field),
  giving: field.giving === 'needed' ? 'needed' : 'optional',
});

function described(kind: Kind<unknown>, { usual }: Field): Kind<unknown> {
  if (typeof usual !== 'string' && typeof usual !== 'number' && typeof usual !== 'boolean') return kind;
  return { ...kind, schema: { ...kind.schema, default: usual } };
}

function kindOf(field: Field): Kind<unknown> {
  const { least = 0, most = Number.POSITIVE_INFINITY, over = false, words = [], kind, several } = field;
  switch (kind) {
    case 'length':
      return orGoal(length({ least, most, over }));
    case 'lengths':
      return oneOrTwo(orGoal(length({ least, most, over })));
    case 'ease':
      return ease;
    case 'angle':
      return orGoal(angle);
    case 'share':
      return orGoal(percent(perCent(least), perCent(most), over));
    case 'count':
      return count(most);
    case 'choice':
      return choice(words);
    case 'yes-or-no':
      return yesOrNo;
    case 'pieces':
    case 'marks':
      return oneOrMore(name);
    case 'edge-of-piece':
      return edgeRef;
    case 'edges-of-pieces':
      return words.length > 0 ? byForm(isWord, choice(words), oneOrMore(edgeRef)) : oneOrMore(edgeRef);
    case 'place':
      return position;
    case 'places':
      return byForm(isList, range, position);
    case 'range':
      return range;
    case 'group':
      return fieldsKind(field.fields!);
    case 'groups':
      return oneOrMore(fieldsKind(field.fields!));
    default:
      if (several !== undefined) return oneName(several);
      return words.length > 0 ? orWords(words, name) : name;
  }
}

const oneOrTwo = <T>(kind: Kind<T>): Kind<T | readonly [T, T]> => byForm(isList, pairOf(kind), kind);
const isList = (tree: Tree): boolean => tree.kind === 'list';
/** Words have no full stop, edges of pieces have one. */
const isWord = (tree: Tree): boolean =>
  tree.kind === 'scalar' && typeof tree.value === 'string' && !tree.value.includes('.');

const range: Kind<readonly [EdgePosition, EdgePosition]> = {
  schema: { ...pairOf(position).schema, description: 'Two places: [1/4, 3/4].' },
  read: (tree, at) =>
    tree.kind === 'list' && tree.items.length === 2
      ? pairOf(position).read(tree, at)
      : tell(at, 'position-not-understood', { form: 'any' }),
};

/** Wanted of a difference: a length or a percentage, either way. */
export const ease: Kind<SeamEase> = byForm<SeamEase, SeamEase>(
  tree => tree.kind === 'scalar' && String(tree.value).includes('%'),
  turnedInto(percent(-100, 300), share => ({ percent: perCent(share) })),
  turnedInto(signedLength, mm => ({ mm })),
);
