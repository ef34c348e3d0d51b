import type { PatternError } from '@paperhinge/geometry';
import { figure, notUsable } from './checks.js';
import type { Check, Fields } from './field.js';
import type { AnyVerbForm } from './form.js';

import { refusal } from './tellings.js';

/** What of a form is needed to check what it is given. */
export type CheckedForm = Pick<AnyVerbForm, 'verb' | 'fields' | 'oneOf' | 'lacks'>;

type Given = Readonly<Record<string, unknown>>;

/** The fields a verb was given, checked, with the usual values of those left out. @throws PatternError, see `perform` */
export function checkFields({ verb, fields, oneOf, lacks }: CheckedForm, given: unknown): Given {
  if (!isGroup(given)) throw refusal('fields-expected', { verb, fields: Object.keys(fields) });
  const filled = takenFields(verb, fields, given);
  for (const names of oneOf ?? []) {
    const there = names.filter(name => given[name] !== undefined);
    if (there.length > 1) throw refusal('fields-exclude', { verb, fields: there });
    if (there.length === 0) throw missing(verb, names);
  }
  const lacking = lacks?.(filled as never);
  if (lacking !== undefined) throw missing(verb, [lacking]);
  return filled;
}

const missing = (verb: string, fields: readonly string[]): PatternError =>
  refusal('field-missing', { verb, fields });

const isGroup = (value: unknown): value is Given =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Values by their fields, each as its field takes it. @throws PatternError `field-unknown`, `field-missing` */
export function takenFields(verb: string, fields: Fields, given: Given): Given {
  const unknown = Object.keys(given).find(name => !Object.hasOwn(fields, name));
  if (unknown !== undefined)
    throw refusal('field-unknown', { verb, field: unknown, fields: Object.keys(fields) });
  const entries = Object.entries(fields).flatMap(([name, field]): [string, unknown][] => {
    const value = given[name] === undefined ? field.usual : given[name];
    if (value !== undefined) return [[name, field.check ? field.check(value, { verb, name, field }) : value]];
    if (field.giving === 'needed') throw missing(verb, [name]);
    return [];
  });
  return Object.fromEntries(entries);
}

/** A group takes its fields, with their own usual values. */
export const groupCheck: Check = (value, at) => {
  if (!isGroup(value)) throw notUsable(at);
  return takenFields(at.verb, at.field.fields!, value);
};

/** Each of several, as few and as many as they may be. */
export const groupsCheck: Check = (value, at) => {
  if (!Array.isArray(value)) throw notUsable(at);
  figure(value.length, { ...at, field: { ...at.field, kind: 'count' } });
  return value.map(one => groupCheck(one, at));
};
