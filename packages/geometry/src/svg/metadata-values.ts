import { PatternError } from '../errors.js';
import { nearestName } from '../naming.js';
import { parsePercent } from '../pattern/position-text.js';
import type { Piece } from '../pattern/types.js';
import type { Thing } from '../telling.js';

import { type LengthUnit, parseLength } from '../units.js';
import type { Json, JsonEntry } from './json.js';
import type { Report } from './report.js';
import type { MetadataPart, ReadingTellings } from './tellings.js';

/** Reads values of the metadata; knows where each stands in the file. */
export interface MetadataContext {
  readonly report: Report;
  readonly unit: LengthUnit;
  readonly pieces: readonly Piece[];
  /** Offset in the file of a place in the JSON. */
  readonly offset: (at: number) => number;
}

/** The thing and the key that a value belongs to. */
export interface Belongs {
  readonly of?: Thing;
  readonly key?: string;
}

export type Entries = ReadonlyMap<string, JsonEntry>;

/** The entries of a JSON object. @throws PatternError `metadata-not-understood` where it is anything else */
export function entriesOf(json: Json, belongs: Belongs, context: MetadataContext): Entries {
  if (json.kind === 'object') return json.entries;
  throw notUnderstood(json, 'object', belongs, context);
}

export const notUnderstood = (
  json: Json,
  part: MetadataPart,
  belongs: Belongs,
  context: MetadataContext,
): PatternError =>
  context.report.refuse('metadata-not-understood', context.offset(json.at), { part, ...belongs });

/** Says of every key that is none of ours that it is not read. */
export function tellUnread(
  entries: Entries,
  keys: readonly string[],
  of: Thing | undefined,
  context: MetadataContext,
): void {
  for (const [key, { keyAt }] of entries)
    if (!keys.includes(key))
      context.report.add('warning', 'metadata-not-read', context.offset(keyAt), {
        key,
        keys,
        ...(of ? { of } : {}),
      });
}

/** Runs the reading of a text; what it refuses gets its place in the file. */
export function placedAt<T>(json: Json, context: MetadataContext, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof PatternError)) throw error;
    const code = error.code as keyof ReadingTellings & string;
    throw context.report.refuse(code, context.offset(json.at), error.facts as never, error.where);
  }
}

/** A length in mm, of any sign. @throws PatternError */
export function lengthIn(json: Json, belongs: Belongs, context: MetadataContext): number {
  if (json.kind !== 'string' && json.kind !== 'number') throw notUnderstood(json, 'length', belongs, context);
  return placedAt(json, context, () => parseLength(json.value, context.unit));
}

/** A length of 0 or more (over 0 where `over` says so) under a key; `undefined` where there is none. */
export function lengthAt(
  entries: Entries,
  key: string,
  of: Thing,
  context: MetadataContext,
): number | undefined {
  const json = entries.get(key)?.value;
  if (!json) return undefined;
  const mm = lengthIn(json, { of, key }, context);
  if (mm > 0) return mm;
  throw context.report.refuse('length-not-positive', context.offset(json.at), { attribute: key });
}

/** Per cent, from a text with its sign. @throws PatternError */
export function percentIn(json: Json, belongs: Belongs, context: MetadataContext): number {
  if (json.kind !== 'string' && json.kind !== 'number')
    throw notUnderstood(json, 'percentage', belongs, context);
  const share = placedAt(json, context, () => parsePercent(json.value));
  // A share of 0.35 times 100 may differ from 35 in the last digit; ten digits are more than anyone measures.
  return Number((share * 100).toPrecision(12));
}

/** One of the words a key may say; `undefined` where there is none. @throws PatternError `metadata-not-understood` */
export function wordAt<W extends string>(
  entries: Entries,
  key: string,
  words: readonly W[],
  of: Thing,
  context: MetadataContext,
): W | undefined {
  const json = entries.get(key)?.value;
  if (!json) return undefined;
  const written = json.kind === 'string' ? json.value : '';
  const word = words.find(w => w === written);
  if (word !== undefined) return word;
  const near = nearestName(written, words);
  throw context.report.refuse('metadata-not-understood', context.offset(json.at), {
    part: 'word',
    of,
    key,
    words,
    ...(near === undefined ? {} : { near }),
  });
}
