import type { PatternError, Where } from '../errors.js';
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

/**
 * Reads JSON (RFC 8259) with the place of every value. Duplicate keys are refused: one of the two would be lost.
 * @throws JsonFault
 */
export function parseJson(text: string): Json {
  let i = 0;
  const fault = (reason: JsonReason, character?: string): JsonFault => new JsonFault(reason, i, character);
  const space = (): void => {
    while (i < text.length && ' \n\r\t'.includes(text[i]!)) i++;
  };
  const expect = (character: string): void => {
    if (text[i] !== character) throw fault('character-expected', character);
    i++;
  };

  function value(depth: number): Json {
    if (depth > deepestJson) throw fault('nested-too-deep');
    space();
    const at = i;
    const character = text[i];
    if (character === '{') return { kind: 'object', at, entries: entries(depth) };
    if (character === '[') return { kind: 'array', at, items: items(depth) };
    if (character === '"') return { kind: 'string', at, value: string() };
    const word = /true|false|null|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
    word.lastIndex = i;
    const found = word.exec(text)?.[0];
    if (found === undefined) throw fault('value-expected');
    i += found.length;
    if (found === 'null') return { kind: 'null', at };
    if (found === 'true' || found === 'false') return { kind: 'boolean', at, value: found === 'true' };
    return { kind: 'number', at, value: Number(found) };
  }

  function entries(depth: number): ReadonlyMap<string, JsonEntry> {
    const found = new Map<string, JsonEntry>();
    expect('{');
    space();
    if (text[i] === '}') {
      i++;
      return found;
    }
    for (;;) {
      space();
      const keyAt = i;
      const key = string();
      if (found.has(key)) {
        i = keyAt;
        throw fault('key-twice');
      }
      space();
      expect(':');
      found.set(key, { keyAt, value: value(depth + 1) });
      space();
      if (text[i] === '}') break;
      expect(',');
    }
    i++;
    return found;
  }

  function items(depth: number): readonly Json[] {
    const found: Json[] = [];
    expect('[');
    space();
    if (text[i] === ']') {
      i++;
      return found;
    }
    for (;;) {
      found.push(value(depth + 1));
      space();
      if (text[i] === ']') break;
      expect(',');
    }
    i++;
    return found;
  }

  function string(): string {
    // biome-ignore lint/suspicious/noControlCharactersInRegex: JSON forbids them within strings
    const quotedText = /"(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/y;
    quotedText.lastIndex = i;
    const found = quotedText.exec(text)?.[0];
    if (found === undefined) throw fault('text-expected');
    i += found.length;
    return JSON.parse(found) as string;
  }

  const whole = value(0);
  space();
  if (i < text.length) throw fault('text-after-end');
  return whole;
}

/** Rethrows a fault of JSON as an error of ours, placed by the caller; the text is not quoted. */
export const jsonError = ({ reason, character }: JsonFault, where: Where): PatternError =>
  refusal('metadata-not-json', { reason, ...(character === undefined ? {} : { character }) }, where);
