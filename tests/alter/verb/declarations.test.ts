import { verbs } from '@paperhinge/alter';
import { type Fields, inSheet } from '@paperhinge/alter/verb';
import { describe, expect, test } from 'vitest';
import { verbs as germanVerbs } from '../../../packages/sheet/src/words/german/verbs.js';

/** Every field as a sentence names it: `half width`, `to.edge`. */
const pathsOf = (fields: Fields, prefix = ''): readonly string[] =>
  Object.entries(fields).flatMap(([name, field]) =>
    field.kind === 'group' ? pathsOf(field.fields!, `${inSheet(name)}.`) : [`${prefix}${inSheet(name)}`],
  );
const named = (sentence: string): readonly string[] =>
  [...sentence.matchAll(/\{([^}]*)\}/g)].map(match => match[1]!);

test('no two verbs share a name', () => {
  expect(new Set(verbs.map(v => v.verb)).size).toBe(verbs.length);
});

describe.each(verbs.map(verb => [verb.verb, verb] as const))('%s', (name, verb) => {
  const paths = pathsOf(verb.fields);

  test('says every field that must be given, and none that it does not have', () => {
    expect(paths).toEqual(expect.arrayContaining([...named(verb.sentence)]));
    const needed = Object.entries(verb.fields).filter(
      ([, field]) => field.giving === 'needed' && field.kind !== 'group',
    );
    expect(named(verb.sentence)).toEqual(expect.arrayContaining(needed.map(([field]) => inSheet(field))));
  });

  test('says in brackets what may be left out', () => {
    const certain = verb.sentence.replace(/\[[^\]]*\]/g, '');
    for (const field of named(certain)) {
      const [first] = field.split('.');
      const [, found] = Object.entries(verb.fields).find(([key]) => inSheet(key) === first)!;
      const one = verb.oneOf?.some(list => list.map(inSheet).includes(first!)) ?? false;
      expect([field, one || found.giving === 'needed' || verb.lacks !== undefined]).toEqual([field, true]);
    }
  });

  test('says the same fields in German', () => {
    const german = germanVerbs[name as keyof typeof germanVerbs];
    expect([...named(german.sentence)].sort()).toEqual([...named(verb.sentence)].sort());
    expect(german.does).toMatch(/\.$/);
    expect(verb.does).toMatch(/\.$/);
  });

  test('begins at things that fill fields it has, and its fields belong to one another', () => {
    for (const filled of Object.values(verb.startsAt))
      for (const field of filled) expect(Object.keys(verb.fields)).toContain(field);
    const within = (fields: Fields, outer: readonly string[]): void => {
      const known = [...outer, ...Object.keys(fields)];
      for (const field of Object.values(fields)) {
        if (field.of !== undefined) expect(known).toContain(field.of);
        if (field.fields) within(field.fields, known);
      }
    };
    within(verb.fields, []);
    for (const list of verb.oneOf ?? [])
      for (const field of list) expect(verb.fields[field]?.giving).toBe('optional');
  });

  test('has an example that names only its fields and all that must be given', () => {
    const keys = Object.keys(verb.example.step);
    expect(Object.keys(verb.fields).map(inSheet)).toEqual(expect.arrayContaining(keys));
    const needed = Object.entries(verb.fields).filter(([, field]) => field.giving === 'needed');
    expect(keys).toEqual(expect.arrayContaining(needed.map(([field]) => inSheet(field))));
    for (const list of verb.oneOf ?? []) expect(list.filter(f => keys.includes(inSheet(f)))).toHaveLength(1);
  });
});
