import { type Field, type Fields, longestLength, mostEase } from './fields.js';
import { refusal } from './tellings.js';
import type { AnyVerb } from './verb.js';

type Given = Readonly<Record<string, unknown>>;

/** The fields a verb was given, checked, with the usual values of those left out. @throws PatternError, see `perform` */
export function checkFields(verb: AnyVerb, given: unknown): Given {
  if (typeof given !== 'object' || given === null || Array.isArray(given))
    throw refusal('fields-expected', { verb: verb.verb, fields: Object.keys(verb.fields) });
  const fields = given as Given;
  const filled = checked(verb.verb, verb.fields, fields);
  for (const names of verb.oneOf ?? []) {
    const there = names.filter(name => fields[name] !== undefined);
    if (there.length > 1) throw refusal('fields-exclude', { verb: verb.verb, fields: there });
    if (there.length === 0) throw refusal('field-missing', { verb: verb.verb, fields: names });
  }
  const lacking = verb.lacks?.(filled as never);
  if (lacking !== undefined) throw refusal('field-missing', { verb: verb.verb, fields: [lacking] });
  return filled;
}

function checked(verb: string, fields: Fields, given: Given): Given {
  const unknown = Object.keys(given).find(name => !Object.hasOwn(fields, name));
  if (unknown !== undefined)
    throw refusal('field-unknown', { verb, field: unknown, fields: Object.keys(fields) });
  const entries = Object.entries(fields).flatMap(([name, field]): [string, unknown][] => {
    const value = given[name] === undefined ? field.usual : given[name];
    if (value === undefined) {
      if (field.giving === 'needed') throw refusal('field-missing', { verb, fields: [name] });
      return [];
    }
    return [[name, checkedValue(verb, name, field, value)]];
  });
  return Object.fromEntries(entries);
}

/** A value of its field's kind, as it was given; a group with its own usual values. */
function checkedValue(verb: string, name: string, field: Field, value: unknown): unknown {
  const { kind, words } = field;
  const wrong = () =>
    refusal('field-not-usable', { verb, field: name, kind, ...(words && words.length > 0 ? { words } : {}) });
  switch (kind) {
    case 'length':
    case 'angle':
    case 'share':
    case 'count':
      if (typeof value !== 'number' || !Number.isFinite(value)) throw wrong();
      if (kind === 'count' && !Number.isInteger(value)) throw wrong();
      requireInRange(verb, name, field, value);
      return value;
    case 'lengths':
      if (Array.isArray(value) && value.length !== 2) throw wrong();
      for (const one of Array.isArray(value) ? value : [value])
        checkedValue(verb, name, { ...field, kind: 'length' }, one);
      return value;
    case 'ease':
      if (!isEase(value)) throw wrong();
      return value;
    case 'choice':
      if (typeof value !== 'string') throw wrong();
      if (!words!.includes(value))
        throw refusal('choice-unknown', { verb, field: name, given: value, words: words! });
      return value;
    case 'yes-or-no':
      if (typeof value !== 'boolean') throw wrong();
      return value;
    case 'pieces':
      if (!Array.isArray(value) || value.length === 0 || !value.every(isName)) throw wrong();
      return value;
    case 'edge-of-piece':
      if (!isEdgeRef(value)) throw wrong();
      return value;
    case 'edges-of-pieces':
      if (words?.includes(value as string)) return value;
      if (!Array.isArray(value) || value.length === 0 || !value.every(isEdgeRef)) throw wrong();
      return value;
    case 'place':
      if (!isPlace(value)) throw wrong();
      return value;
    case 'places':
      if (!(isPlace(value) || (Array.isArray(value) && value.length === 2 && value.every(isPlace))))
        throw wrong();
      return value;
    case 'range':
      if (!(Array.isArray(value) && value.length === 2 && value.every(isPlace))) throw wrong();
      return value;
    case 'group':
      if (typeof value !== 'object' || value === null || Array.isArray(value)) throw wrong();
      return checked(verb, field.fields!, value as Given);
    case 'new-name':
      if (!isName(value) || value.length > longestName || unprintable.test(value)) throw wrong();
      return value;
    default:
      if (!isName(value)) throw wrong();
      return value;
  }
}

function requireInRange(verb: string, name: string, field: Field, value: number): void {
  const { least = Number.NEGATIVE_INFINITY, most = Number.POSITIVE_INFINITY, over = false, kind } = field;
  if ((over ? value > least : value >= least) && value <= most) return;
  throw refusal('field-out-of-range', { verb, field: name, kind, value, least, most, over });
}

/** Characters a name may have, so that it fits on a piece and in a sentence. */
const longestName = 100;
const unprintable = /[\p{C}\p{Zl}\p{Zp}]/u;

const isName = (value: unknown): value is string => typeof value === 'string' && value.trim() !== '';

function isEdgeRef(value: unknown): boolean {
  const { piece, edge } = (value ?? {}) as Given;
  return isName(piece) && isName(edge);
}

/** A share or a length, neither absurd; `resolvePosition` asks whether it lies on the edge. */
function isPlace(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return false;
  const { share, mm, from, ...others } = value as Given;
  return (
    Object.keys(others).length === 0 &&
    Number.isFinite(share ?? mm) &&
    (share === undefined) !== (mm === undefined) &&
    (from === undefined || isName(from))
  );
}

/** Millimetres or per cent, one of them. */
function isEase(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return false;
  const { mm, percent, ...others } = value as Given;
  if (Object.keys(others).length > 0) return false;
  if ((mm === undefined) === (percent === undefined)) return false;
  return (
    Number.isFinite(mm ?? percent) &&
    Math.abs((mm ?? percent) as number) <= (mm === undefined ? mostEase : longestLength)
  );
}
