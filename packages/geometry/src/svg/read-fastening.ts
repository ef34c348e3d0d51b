import type { Fastening } from '../pattern/types.js';
import { fasteningKinds } from '../pattern/words.js';
import type { Thing } from '../telling.js';

import type { JsonEntry } from './json.js';
import {
  type Entries,
  entriesOf,
  lengthAt,
  type MetadataContext,
  notUnderstood,
  tellUnread,
  wordAt,
} from './metadata-values.js';
import { readRun } from './read-seams.js';
import { fasteningKeys } from './vocabulary.js';

/** How many buttons a garment may have. */
const mostOfThem = 1000;

/**
 * A fastening of the metadata: `kind` and `along` (a run, as a seam has them) always; `length`, `count`, `spacing`,
 * `size`, `relaxed`, `overlap`, `underlap` and `sort` where they say something.
 *
 * @throws PatternError `metadata-not-understood`, `unknown-piece`, `unknown-edge`, `length-not-positive`, with line
 */
export function readFastening(
  name: string,
  { keyAt, value }: JsonEntry,
  context: MetadataContext,
): Fastening {
  const of: Thing = { fastening: name };
  const entries = entriesOf(value, { of }, context);
  tellUnread(entries, fasteningKeys, of, context);
  const kind = wordAt(entries, 'kind', fasteningKinds, of, context);
  const along = entries.get('along')?.value;
  if (!kind)
    throw context.report.refuse('metadata-not-understood', context.offset(keyAt), {
      part: 'word',
      of,
      key: 'kind',
      words: fasteningKinds,
    });
  if (!along)
    throw context.report.refuse('metadata-not-understood', context.offset(keyAt), { part: 'run', of });
  return { name, kind, along: readRun(along, of, context), ...figuresOf(entries, of, context) };
}

function figuresOf(
  entries: Entries,
  of: Thing,
  context: MetadataContext,
): Omit<Fastening, 'name' | 'kind' | 'along'> {
  const lengths = (['length', 'spacing', 'size', 'relaxed', 'overlap', 'underlap'] as const).flatMap(key => {
    const mm = lengthAt(entries, key, of, context);
    return mm === undefined ? [] : [[key, mm] as const];
  });
  const count = countAt(entries, of, context);
  const sort = sortAt(entries, of, context);
  return {
    ...Object.fromEntries(lengths),
    ...(count === undefined ? {} : { count }),
    ...(sort === undefined ? {} : { sort }),
  };
}

function countAt(entries: Entries, of: Thing, context: MetadataContext): number | undefined {
  const json = entries.get('count')?.value;
  if (!json) return undefined;
  if (json.kind === 'number' && Number.isInteger(json.value) && json.value >= 1 && json.value <= mostOfThem)
    return json.value;
  throw notUnderstood(json, 'count', { of }, context);
}

function sortAt(entries: Entries, of: Thing, context: MetadataContext): string | undefined {
  const json = entries.get('sort')?.value;
  if (!json) return undefined;
  if (json.kind === 'string' && json.value.trim() !== '') return json.value;
  throw notUnderstood(json, 'word', { of, key: 'sort' }, context);
}
