import { z } from 'zod';
import { sheetSchema } from './schema.js';
import { verbSchemas } from './verbs.js';

/**
 * The sheet's grammar as JSON Schema (draft 2020-12), for editors that complete and check while one types. It knows
 * the fields and their form; ranges, units and names are judged on reading.
 */
export function sheetJsonSchema(): Readonly<Record<string, unknown>> {
  const sheet = z.toJSONSchema(sheetSchema('mm'), { io: 'input' }) as Record<string, unknown>;
  const steps = Object.entries(verbSchemas('mm')).map(([verb, fields]) => {
    const { $schema, ...schema } = z.toJSONSchema(fields, { io: 'input' }) as Record<string, unknown>;
    return { type: 'object', properties: { [verb]: schema }, required: [verb], additionalProperties: false };
  });
  const properties = sheet.properties as Record<string, unknown>;
  return {
    ...sheet,
    title: 'Alteration sheet',
    properties: { ...properties, steps: { type: 'array', items: { anyOf: steps } } },
  };
}
