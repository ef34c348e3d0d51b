import { PatternError } from '../errors.js';
import { listed, nearestName, quoted, suggestion } from '../naming.js';
import { parsePercent } from '../pattern/position-text.js';
import type { Fabric, FabricRole } from '../pattern/types.js';
import { parseLength } from '../units.js';
import type { Json } from './json.js';
import { entriesOf, type MetadataContext, notUnderstood } from './read-metadata.js';
import { fabricRoles } from './vocabulary.js';

const keys = ['width', 'stretch', 'recovery', 'nap', 'repeat', 'role'];
/** Per cent. Beyond what any cloth stretches. */
const mostStretch = 300;

/**
 * A fabric of the metadata: `width` and `repeat` lengths, `stretch` "35 %" or {across, along}, `recovery` a
 * percentage, `nap` yes or no, `role` one of ours (default: its name if that is a role, else main).
 *
 * @throws PatternError `metadata-not-understood`, `percent-not-understood`, `stretch-out-of-range`, with line
 */
export function readFabric(name: string, json: Json, context: MetadataContext): Fabric {
  const entries = entriesOf(json, `The fabric ${quoted(name)}`, context);
  for (const [key, { keyAt }] of entries)
    if (!keys.includes(key))
      context.report.add('warning', 'metadata-not-read', context.offset(keyAt), {
        message: `The fabric ${quoted(name)} has ${quoted(key)}, which is not read.`,
        remedy: suggestion(key, keys, 'keys'),
      });
  const value = (key: string): Json | undefined => entries.get(key)?.value;
  const width = lengthOf(value('width'), context),
    repeat = lengthOf(value('repeat'), context);
  const stretch = stretchOf(value('stretch'), context);
  const recovery = percentOf(value('recovery'), context);
  const nap = napOf(value('nap'), context);
  return {
    name,
    ...(width === undefined ? {} : { width }),
    ...(stretch === undefined ? {} : { stretch }),
    ...(recovery === undefined ? {} : { recovery }),
    ...(nap === undefined ? {} : { nap }),
    ...(repeat === undefined ? {} : { repeat }),
    role: roleOf(name, value('role'), context),
  };
}

function located<T>(json: Json, context: MetadataContext, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof PatternError)) throw error;
    throw context.report.error(error.code, context.offset(json.at), error);
  }
}

function lengthOf(json: Json | undefined, context: MetadataContext): number | undefined {
  if (!json) return undefined;
  if (json.kind !== 'string' && json.kind !== 'number')
    throw notUnderstood(json, 'A length must be a text or a number.', 'Write it as "150 cm".', context);
  const mm = located(json, context, () => parseLength(json.value, context.unit));
  if (mm > 0) return mm;
  throw notUnderstood(
    json,
    'A width or repeat must be longer than 0.',
    'Give its length, or leave it out.',
    context,
  );
}

/** Per cent, from a text with its sign. */
function percentOf(json: Json | undefined, context: MetadataContext): number | undefined {
  if (!json) return undefined;
  if (json.kind !== 'string' && json.kind !== 'number')
    throw notUnderstood(json, 'A percentage must be a text.', 'Write it as "35 %".', context);
  const share = located(json, context, () => parsePercent(json.value));
  // A share of 0.35 times 100 may differ from 35 in the last digit; ten digits are more than anyone measures.
  const percent = Number((share * 100).toPrecision(12));
  if (percent >= 0 && percent <= mostStretch) return percent;
  throw context.report.error('stretch-out-of-range', context.offset(json.at), {
    message: `A stretch or recovery must be from 0 to ${mostStretch} %.`,
    remedy: 'Check the figure.',
  });
}

function stretchOf(json: Json | undefined, context: MetadataContext): Fabric['stretch'] | undefined {
  if (json?.kind !== 'object') {
    const across = percentOf(json, context);
    return across === undefined ? undefined : { across };
  }
  const across = percentOf(json.entries.get('across')?.value, context);
  const along = percentOf(json.entries.get('along')?.value, context);
  if (across === undefined)
    throw notUnderstood(
      json,
      'A stretch in two directions lacks the one across.',
      'Write { "across": "35 %", "along": "20 %" }.',
      context,
    );
  return { across, ...(along === undefined ? {} : { along }) };
}

function napOf(json: Json | undefined, context: MetadataContext): boolean | undefined {
  if (!json) return undefined;
  if (json.kind === 'boolean') return json.value;
  if (json.kind === 'string' && (json.value === 'yes' || json.value === 'no')) return json.value === 'yes';
  throw notUnderstood(json, 'Nap must be true or false.', 'Write true or false.', context);
}

function roleOf(name: string, json: Json | undefined, context: MetadataContext): FabricRole {
  const written = json === undefined ? name : json.kind === 'string' ? json.value : '';
  const role = fabricRoles.find(r => r === written);
  if (role) return role;
  if (!json) return 'main';
  const near = nearestName(written, fabricRoles);
  throw notUnderstood(
    json,
    `The role of the fabric ${quoted(name)} is not one of ours.`,
    near === undefined ? `Write one of: ${listed(fabricRoles)}.` : `Did you mean ${quoted(near)}?`,
    context,
  );
}
