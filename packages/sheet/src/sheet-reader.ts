import type { AnyVerb } from '@paperhinge/alter';
import type { PatternError, Where } from '@paperhinge/geometry';
import { nearestName } from '@paperhinge/geometry/sayings';
import { type Entry, type Place, placesIn, readDocument, type Tree } from './document.js';
import { refuse } from './faults.js';
import type { Kind, Reading } from './fields/kind.js';
import { type Parameters, stepKind } from './fields/of-verb.js';
import { edgeRefOf, yesOrNo } from './fields/values.js';
import { mostSteps } from './limits.js';
import { factsOf, outlineOf } from './piece-fields.js';
import { seamOf } from './seam-fields.js';
import type { Sheet, SheetFabric, SheetOpening, Step, StepPlaces } from './sheet.js';
import { lengthUnits, sheetKind, wordAt } from './sheet-fields.js';
import { refusal } from './tellings.js';
import { languages } from './words/languages.js';

/**
 * A reader of alteration sheets, YAML or JSON, that knows these verbs. All faults of a sheet's fields are gathered and
 * told at once.
 *
 * @throws SheetFaults (the reader) every fault with line, column and remedy; a file that is no YAML, or no sheet, is
 *   never quoted
 */
export function sheetReader(
  verbs: readonly AnyVerb[],
): (text: string, options: { readonly file: string }) => Sheet {
  const kinds = new Map(verbs.map(verb => [verb.verb, { verb, kind: stepKind(verb) }]));
  return (text, { file }) => {
    const tree = readDocument(text, file);
    const entries = fieldsOf(tree, file);
    const unit = wordAt(tree, 'unit', lengthUnits) ?? 'mm';
    const language = wordAt(tree, 'language', languages) ?? 'en';
    const reading: Reading = { unit, where: { file }, faults: [] };
    const read = sheetKind.read(tree, { reading, of: {}, place: tree.place });
    const openings = readOpenings(entries.get('opening')?.value, read?.opening ?? {}, reading);
    const steps = readSteps(entries.get('steps'), kinds, reading);
    refuse(reading.faults, { unit, language });
    // Nothing was refused, so everything was read.
    return {
      ...plainly(read!, openings),
      file,
      unit,
      language,
      wearerUnit: wearerUnitOf(entries) ?? unit,
      steps: steps.map(s => s.step),
      places: placesIn(tree),
      stepPlaces: steps.map(s => s.places),
    };
  };
}

const wearerUnitOf = (entries: ReadonlyMap<string, Entry>) => {
  const wearer = entries.get('wearer')?.value;
  return wearer && wordAt(wearer, 'unit', lengthUnits);
};

type SheetRead = typeof sheetKind extends Kind<infer T> ? T : never;

/** What the fields say, in the form that a sheet has. */
function plainly(read: SheetRead, openings: readonly SheetOpening[]) {
  const { pattern, title, wearer, fabrics, print, tolerance, scale, size } = read;
  const pieces = Object.entries(read.pieces);
  const outlines = pieces.map(([name, piece]) => [name, outlineOf(piece)] as const);
  return {
    ...(title === undefined ? {} : { title }),
    pattern,
    wearer,
    fabrics: Object.entries(fabrics).map(([name, fabric]): SheetFabric => ({ name, ...fabric })),
    pieces: Object.fromEntries(outlines.flatMap(([name, outline]) => (outline ? [[name, outline]] : []))),
    facts: Object.fromEntries(pieces.map(([name, piece]) => [name, factsOf(piece)])),
    seams: Object.entries(read.seams).map(seamOf),
    fastenings: Object.entries(read.fastenings).map(([name, fastening]) => ({ name, ...fastening })),
    openings,
    print,
    ...(tolerance === undefined ? {} : { tolerance }),
    ...(scale === undefined ? {} : { scale }),
    ...(size === undefined ? {} : { size }),
  };
}

/** A file that has neither of the two fields every sheet has may be anything, so not even its keys are told. */
function fieldsOf(tree: Tree, file: string): ReadonlyMap<string, Entry> {
  const where = { file, ...tree.place };
  const entries: ReadonlyMap<string, Entry> = tree.kind === 'mapping' ? tree.entries : new Map();
  if ([...entries.keys()].some(key => nearestName(key, ['pattern', 'steps']) !== undefined)) return entries;
  refuse([
    tree.kind === 'scalar' && tree.value === null
      ? refusal('sheet-empty', {}, where)
      : refusal('not-a-sheet', {}, where),
  ]);
  return entries;
}

type VerbKinds = ReadonlyMap<string, { readonly verb: AnyVerb; readonly kind: Kind<Parameters> }>;

interface StepRead {
  readonly step: Step;
  readonly places: StepPlaces;
}

function readSteps(entry: Entry | undefined, kinds: VerbKinds, reading: Reading): readonly StepRead[] {
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
  const switched = off && yesOrNo.read(off.value, { reading, of: { field: 'off' }, place: off.value.place });
  if (parameters === undefined) return [];
  const step = { verb, parameters, ...(switched ? { off: true as const } : {}) };
  return [{ step, places: { verb: entry.place, fields: placesIn(entry.value) } }];
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

function readOpenings(
  tree: Tree | undefined,
  lengths: Readonly<Record<string, number>>,
  { where, faults }: Reading,
): readonly SheetOpening[] {
  const openings: SheetOpening[] = [];
  for (const [key, { place }] of tree?.kind === 'mapping' ? tree.entries : []) {
    const ref = edgeRefOf(key),
      length = lengths[key];
    if (ref && length !== undefined) openings.push({ ...ref, length, place });
    if (!ref)
      faults.push(refusal('edge-not-understood', { field: key, withLength: true }, { ...where, ...place }));
  }
  return openings;
}
