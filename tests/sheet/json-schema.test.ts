import { verbs } from '@paperhinge/alter';
import { expect, test } from 'vitest';
import { sheetJsonSchema } from '../../packages/sheet/src/json-schema.js';

interface Schema {
  readonly properties: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly items: Schema;
  readonly description?: string;
  readonly allOf?: readonly { readonly oneOf: readonly Schema[] }[];
  readonly additionalProperties?: boolean;
}
const schema = sheetJsonSchema(verbs) as unknown as Schema;
const fieldsOf = (verb: string) => schema.properties.steps!.items.properties[verb]!;

test('the JSON Schema knows every verb', () => {
  expect(Object.keys(schema.properties.steps!.items.properties)).toEqual([
    ...verbs.map(v => v.verb),
    'include',
    'off',
  ]);
});

test('the JSON Schema knows the fields of a verb and which of them it needs', () => {
  const band = fieldsOf('draft band');
  expect(Object.keys(band.properties)).toEqual([
    'name',
    'along',
    'gap',
    'ratio',
    'width',
    'join',
    'stretched part',
    'fabric',
    'allowance',
  ]);
  expect(band.required).toEqual(['name', 'along', 'ratio', 'width']);
  expect(band.additionalProperties).toBe(false);
});

test('every verb and every field of it is described; what excludes one another is said', () => {
  for (const { verb, does } of verbs) {
    const { description, properties } = fieldsOf(verb);
    expect(description).toBe(does);
    for (const field of Object.values(properties))
      expect(field.properties ?? field.description, verb).toBeDefined();
  }
  expect(fieldsOf('spread').allOf).toEqual([
    { oneOf: [{ required: ['by'] }, { required: ['angle'] }, { required: ['ratio'] }] },
  ]);
});

// `vitest -u` writes it anew after a change of the grammar.
test('the published schema file is that of the code', async () => {
  await expect(`${JSON.stringify(schema, null, 1)}\n`).toMatchFileSnapshot(
    '../../packages/sheet/sheet.schema.json',
  );
});
