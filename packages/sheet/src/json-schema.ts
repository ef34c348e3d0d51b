import type { AnyVerbForm } from '@paperhinge/alter';
import { type Field, type Fields, inSheet } from '@paperhinge/alter/verb';
import { goalSchema } from './fields/goal.js';
import type { JsonSchema } from './fields/kind.js';
import { yesOrNo } from './fields/names.js';
import { stepKind } from './fields/of-verb.js';
import { mostSteps } from './limits.js';
import { includeKind } from './replay/include.js';
import { sheetKind } from './sheet-fields.js';
import { fieldKinds } from './words/english/verb.js';

/**
 * The sheet's grammar as JSON Schema (draft 2020-12), for editors that complete and check while one types. It knows
 * the fields and their form; ranges, units and names are judged on reading.
 */
export function sheetJsonSchema(verbs: readonly AnyVerbForm[]): JsonSchema {
  const { properties, ...sheet } = sheetKind.schema;
  // One mapping of all verbs, not one alternative for each: so an editor tells the very field that is wrong.
  const step = {
    type: 'object',
    description: 'A trade verb with its fields.',
    properties: {
      ...Object.fromEntries(verbs.map(verb => [verb.verb, stepSchema(verb)])),
      include: {
        ...includeKind.schema,
        description: 'The steps of another sheet, in the place of this one.',
      },
      off: { ...yesOrNo.schema, description: 'Yes: the step stands here and is not done.' },
    },
    minProperties: 1,
    maxProperties: 2,
    additionalProperties: false,
  };
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'Alteration sheet',
    ...sheet,
    $defs: { goal: goalSchema },
    properties: { ...(properties as object), steps: { type: 'array', maxItems: mostSteps, items: step } },
  };
}

function stepSchema(verb: AnyVerbForm): JsonSchema {
  const { schema } = stepKind(verb);
  const either = (verb.oneOf ?? []).map(names => ({
    oneOf: names.map(name => ({ required: [inSheet(name)] })),
  }));
  return { ...described(schema, verb.fields), ...(either.length > 0 ? { allOf: either } : {}) };
}

/** Says of every field what it holds, where its own form does not. */
function described(schema: JsonSchema, fields: Fields): JsonSchema {
  const own = schema.properties as Readonly<Record<string, JsonSchema>>;
  const properties = Object.entries(fields).map(([key, field]) => {
    const name = inSheet(key);
    const { description = describe(field), ...rest } = own[name]!;
    if (field.kind === 'group') return [name, described(own[name]!, field.fields!)];
    // One of several may stand alone or in a list; each has the same fields.
    if (field.kind === 'groups') return [name, { description, anyOf: eachOf(rest, field.fields!) }];
    return [name, { description, ...rest }];
  });
  return { ...schema, properties: Object.fromEntries(properties) };
}

function eachOf({ anyOf }: JsonSchema, fields: Fields): readonly JsonSchema[] {
  const [one, list] = anyOf as readonly [JsonSchema, JsonSchema];
  const each = described(one, fields);
  return [each, { ...list, items: each }];
}

function describe({ kind, of }: Field): string {
  const held = fieldKinds[kind] ?? 'a word';
  return `${held.charAt(0).toUpperCase()}${held.slice(1)}${of === undefined ? '' : ` of ${inSheet(of)}`}.`;
}
