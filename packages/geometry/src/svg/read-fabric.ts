import type { Fabric, FabricRole } from '../pattern/types.js';
import { fabricRoles } from '../pattern/words.js';
import type { Thing } from '../telling.js';

import type { Json } from './json.js';
import {
  type Entries,
  entriesOf,
  lengthAt,
  type MetadataContext,
  notUnderstood,
  percentIn,
  tellUnread,
  wordAt,
} from './metadata-values.js';
import { fabricKeys } from './vocabulary.js';

/** Per cent. Beyond what any cloth stretches. */
const mostStretch = 300;

/**
 * A fabric of the metadata: `width` and `repeat` lengths, `stretch` "35 %" or {across, along}, `recovery` a
 * percentage, `nap` yes or no, `role` one of ours (default: its name if that is a role, else main).
 *
 * @throws PatternError `metadata-not-understood`, `percent-not-understood`, `stretch-out-of-range`, with line
 */
export function readFabric(name: string, json: Json, context: MetadataContext): Fabric {
  const of: Thing = { fabric: name };
  const entries = entriesOf(json, { of }, context);
  tellUnread(entries, fabricKeys, of, context);
  const width = lengthAt(entries, 'width', of, context),
    repeat = lengthAt(entries, 'repeat', of, context);
  const stretch = stretchOf(entries, of, context);
  const recovery = stretchAt(entries, 'recovery', of, context);
  const nap = napOf(entries.get('nap')?.value, of, context);
  return {
    name,
    ...(width === undefined ? {} : { width }),
    ...(stretch === undefined ? {} : { stretch }),
    ...(recovery === undefined ? {} : { recovery }),
    ...(nap === undefined ? {} : { nap }),
    ...(repeat === undefined ? {} : { repeat }),
    role: wordAt(entries, 'role', fabricRoles, of, context) ?? roleByName(name),
  };
}

function stretchAt(entries: Entries, key: string, of: Thing, context: MetadataContext): number | undefined {
  const json = entries.get(key)?.value;
  if (!json) return undefined;
  const percent = percentIn(json, { of, key }, context);
  if (percent >= 0 && percent <= mostStretch) return percent;
  throw context.report.refuse('stretch-out-of-range', context.offset(json.at), { most: mostStretch });
}

function stretchOf(entries: Entries, of: Thing, context: MetadataContext): Fabric['stretch'] | undefined {
  const json = entries.get('stretch')?.value;
  if (json?.kind !== 'object') {
    const across = stretchAt(entries, 'stretch', of, context);
    return across === undefined ? undefined : { across };
  }
  const across = stretchAt(json.entries, 'across', of, context);
  const along = stretchAt(json.entries, 'along', of, context);
  if (across === undefined) throw notUnderstood(json, 'stretch', { of }, context);
  return { across, ...(along === undefined ? {} : { along }) };
}

function napOf(json: Json | undefined, of: Thing, context: MetadataContext): boolean | undefined {
  if (!json) return undefined;
  if (json.kind === 'boolean') return json.value;
  if (json.kind === 'string' && (json.value === 'yes' || json.value === 'no')) return json.value === 'yes';
  throw notUnderstood(json, 'nap', { of }, context);
}

const roleByName = (name: string): FabricRole => fabricRoles.find(role => role === name) ?? 'main';
