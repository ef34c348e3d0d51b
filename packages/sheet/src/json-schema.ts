import type { AnyVerb } from '@paperhinge/alter';
import type { JsonSchema } from './fields/kind.js';
import { yesOrNo } from './fields/names.js';
import { stepKind } from './fields/of-verb.js';
import { mostSteps } from './limits.js';
import { sheetKind } from './sheet-fields.js';

/**
 * The sheet's grammar as JSON Schema (draft 2020-12), for editors that complete and check while one types. It knows
 * the fields and their form; ranges, units and names are judged on reading.
 */
export function sheetJsonSchema(verbs: readonly AnyVerb[]): JsonSchema {
  const { properties, ...sheet } = sheetKind.schema;
  const steps = verbs.map(verb => ({
    type: 'object',
    properties: {
      [verb.verb]: stepKind(verb).schema,
      off: { ...yesOrNo.schema, description: 'Yes: the step stands here and is not done.' },
    },
    required: [verb.verb],
    additionalProperties: false,
  }));
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'Alteration sheet',
    ...sheet,
    properties: {
      ...(properties as object),
      steps: { type: 'array', maxItems: mostSteps, items: { anyOf: steps } },
    },
  };
}
