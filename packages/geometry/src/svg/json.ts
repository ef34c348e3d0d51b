import type { PatternError } from '../errors.js';
import type { Where } from '../telling.js';
import { deepestJson } from './limits.js';
import { type JsonReason, refusal } from './tellings.js';

/** A JSON value that knows where it stands in its text (index of its first character). */
export type Json =
  | { readonly kind: 'object'; readonly at: number; readonly entries: ReadonlyMap<string, JsonEntry> }
  | { readonly kind: 'array'; readonly at: number; readonly items: readonly Json[] }
  | { readonly kind: 'string'; readonly at: number; readonly value: string }
  | { readonly kind: 'number'; readonly at: number; readonly value: number }
  | { readonly kind: 'boolean'; readonly at: number; readonly value: boolean }
  | { readonly kind: 'null'; readonly at: number };

export interface JsonEntry {
  /** Where the key stands. */
  readonly keyAt: number;
  readonly value: Json;
}

/** A fault in JSON, by its index in the text. */
export class JsonFault extends Error {
  readonly at: number;
  readonly reason: JsonReason;
  /** The character that was expected. */
  readonly character: string | undefined;
  constructor(reason: JsonReason, at: number, character?: string) {
    super(reason);
    this.at = at;
    this.reason = reason;
    this.character = character;
  }
}

/** Where in its text a reader of JSON is. */
interface Cursor {
  readonly text: string;
  at: number;
}

/**
 * Reads JSON (RFC 8259) with the place of every value. Duplicate keys are refused: one of the two would be lost.
 * @throws JsonFault
 */
export function parseJson(text: string): Json {
  const cursor: Cursor = { text, at: 0 };
  const whole = valueAt(cursor, 0);
  skipSpace(cursor);
  if (cursor.at < text.length) throw faultAt(cursor, 'text-after-end');
  return whole;
}

const faultAt = ({ at }: Cursor, reason: JsonReason, character?: string): JsonFault =>
  new JsonFault(reason, at, character);

function skipSpace(cursor: Cursor): void {
  while (cursor.at < cursor.text.length && ' \n\r\t'.includes(cursor.text[cursor.at]!)) cursor.at++;
}

function expectCharacter(cursor: Cursor, character: string): void {
  if (cursor.text[cursor.at] !== character) throw faultAt(cursor, 'character-expected', character);
  cursor.at++;
}

const word = /true|false|null|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;

function valueAt(cursor: Cursor, depth: number): Json {
  if (depth > deepestJson) throw faultAt(cursor, 'nested-too-deep');
  skipSpace(cursor);
  const { at } = cursor;
  const character = cursor.text[at];
  if (character === '{') return { kind: 'object', at, entries: entriesAt(cursor, depth) };
  if (character === '[') return { kind: 'array', at, items: itemsAt(cursor, depth) };
  if (character === '"') return { kind: 'string', at, value: stringAt(cursor) };
  word.lastIndex = at;
  const found = word.exec(cursor.text)?.[0];
  if (found === undefined) throw faultAt(cursor, 'value-expected');
  cursor.at += found.length;
  if (found === 'null') return { kind: 'null', at };
  if (found === 'true' || found === 'false') return { kind: 'boolean', at, value: found === 'true' };
  return { kind: 'number', at, value: Number(found) };
}

function entriesAt(cursor: Cursor, depth: number): ReadonlyMap<string, JsonEntry> {
  const found = new Map<string, JsonEntry>();
  expectCharacter(cursor, '{');
  skipSpace(cursor);
  if (cursor.text[cursor.at] !== '}')
    for (;;) {
      skipSpace(cursor);
      const keyAt = cursor.at;
      const key = stringAt(cursor);
      if (found.has(key)) throw new JsonFault('key-twice', keyAt);
      skipSpace(cursor);
      expectCharacter(cursor, ':');
      found.set(key, { keyAt, value: valueAt(cursor, depth + 1) });
      skipSpace(cursor);
      if (cursor.text[cursor.at] === '}') break;
      expectCharacter(cursor, ',');
    }
  cursor.at++;
  return found;
}

function itemsAt(cursor: Cursor, depth: number): readonly Json[] {
  const found: Json[] = [];
  expectCharacter(cursor, '[');
  skipSpace(cursor);
  if (cursor.text[cursor.at] !== ']')
    for (;;) {
      found.push(valueAt(cursor, depth + 1));
      skipSpace(cursor);
      if (cursor.text[cursor.at] === ']') break;
      expectCharacter(cursor, ',');
    }
  cursor.at++;
  return found;
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: JSON forbids them within strings
const quotedText = /"(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/y;

function stringAt(cursor: Cursor): string {
  quotedText.lastIndex = cursor.at;
  const found = quotedText.exec(cursor.text)?.[0];
  if (found === undefined) throw faultAt(cursor, 'text-expected');
  cursor.at += found.length;
  return JSON.parse(found) as string;
}

/** Rethrows a fault of JSON as an error of ours, placed by the caller; the text is not quoted. */
export const jsonError = ({ reason, character }: JsonFault, where: Where): PatternError =>
  refusal('metadata-not-json', { reason, ...(character === undefined ? {} : { character }) }, where);
