import type { PatternError, Where } from '@paperhinge/geometry';
import { type Entry, type Place, placesIn, type Tree } from './document.js';
import type { Reading } from './fields/kind.js';
import { yesOrNo } from './fields/names.js';
import { mostSteps } from './limits.js';
import { includedSteps } from './replay/include.js';
import type { StepRead, VerbKinds } from './step-read.js';

import { refusal } from './tellings.js';

/** The steps of a sheet, each with where it stands; faults are told to the reading. */
export function readSteps(entry: Entry | undefined, kinds: VerbKinds, reading: Reading): readonly StepRead[] {
  const list = entry?.value;
  if (!entry || !list || (list.kind === 'scalar' && list.value === null)) return [];
  const fault = (error: PatternError): readonly StepRead[] => {
    reading.faults.push(error);
    return [];
  };
  const { where } = reading;
  if (list.kind !== 'list')
    return fault(refusal('list-expected', { field: 'steps' }, { ...where, ...told(entry) }));
  if (list.items.length > mostSteps)
    return fault(
      refusal('too-many-steps', { field: 'steps', most: mostSteps }, { ...where, ...entry.place }),
    );
  return list.items.flatMap((item, i) =>
    readStep(item, kinds, { ...reading, where: { ...where, step: i + 1 } }),
  );
}

const told = ({ place, value }: Entry): Place => (value.kind === 'scalar' ? value.place : place);

function readStep(item: Tree, kinds: VerbKinds, reading: Reading): readonly StepRead[] {
  const include = includeIn(item);
  if (include) {
    const at = { reading, of: { verb: 'include' }, place: include.entry.place };
    const steps = includedSteps(include.entry.value, at, { kinds, readSteps });
    if (!isOff(include.off, reading)) return steps;
    return steps.map(({ step, places }) => ({ step: { ...step, off: true }, places }));
  }
  const named = verbIn(item, kinds, reading.where);
  if (!('entry' in named)) {
    reading.faults.push(named);
    return [];
  }
  const { verb, entry, off } = named;
  const { kind } = kinds.get(verb)!;
  const opposite = oppositeOf(verb, kinds);
  const at = { reading, of: { verb }, place: entry.place, ...(opposite === undefined ? {} : { opposite }) };
  const parameters = kind.read(entry.value, at);
  const switched = isOff(off, reading);
  if (parameters === undefined) return [];
  const step = { verb, parameters, ...(switched ? { off: true as const } : {}) };
  return [{ step, places: { verb: entry.place, fields: placesIn(entry.value) } }];
}

const isOff = (off: Entry | undefined, reading: Reading): boolean =>
  off !== undefined &&
  yesOrNo.read(off.value, { reading, of: { field: 'off' }, place: off.value.place }) === true;

/** `include` with nothing beside it but `off`. */
function includeIn(item: Tree): Omit<VerbFound, 'verb'> | undefined {
  const entries: ReadonlyMap<string, Entry> = item.kind === 'mapping' ? item.entries : new Map();
  const entry = entries.get('include');
  const alone = [...entries.keys()].every(key => key === 'include' || key === 'off');
  return entry && alone ? { entry, off: entries.get('off') } : undefined;
}

interface VerbFound {
  readonly verb: string;
  readonly entry: Entry;
  readonly off: Entry | undefined;
}

/** The one key of a step, which must be a verb, beside it at most `off`. */
function verbIn(item: Tree, kinds: VerbKinds, where: Where): PatternError | VerbFound {
  if (item.kind !== 'mapping' || item.entries.size === 0) {
    const text = item.kind === 'scalar' && typeof item.value === 'string' ? item.value : '';
    const at = { ...where, ...item.place };
    return runTogether(text, kinds, at) ?? refusal('step-not-understood', {}, at);
  }
  const off = item.entries.get('off');
  const [[key, entry] = ['off', off!] as const, second] = [...item.entries].filter(
    ([name]) => name !== 'off',
  );
  const known = kinds.has(key);
  if (second) {
    const indented = !(known && entry.value.kind === 'scalar');
    return refusal('step-not-understood', { key: second[0], indented }, { ...where, ...second[1].place });
  }
  if (known) return { verb: key, entry, off };
  const rest = entry.value.kind === 'scalar' ? `: ${entry.value.value}` : '';
  const together = runTogether(`${key}${rest}`, kinds, { ...where, ...entry.place });
  if (together) return together;
  return refusal('unknown-verb', { name: key, names: [...kinds.keys()] }, { ...where, ...entry.place });
}

/** `unfold:{ piece: front }`: the colon lacks its space, so that it is no colon to YAML. */
function runTogether(text: string, kinds: VerbKinds, where: Where): PatternError | undefined {
  const verb = [...kinds.keys()].find(name => text.startsWith(`${name}:`));
  if (verb === undefined) return undefined;
  return refusal('space-after-colon', { write: `${verb}: ${text.slice(verb.length + 1).trim()}` }, where);
}

/** The verb of the very same fields, if there is one: what a negative amount of the one means. */
function oppositeOf(name: string, kinds: VerbKinds): string | undefined {
  const { fields } = kinds.get(name)!.verb;
  const alike = [...kinds.values()].filter(({ verb }) => verb.fields === fields && verb.verb !== name);
  return alike.length === 1 ? alike[0]!.verb.verb : undefined;
}
