import type { AnyVerbForm } from '@paperhinge/alter';
import { lengthUnits } from '@paperhinge/geometry/pattern';
import { nearestName } from '@paperhinge/geometry/sayings';
import { type Entry, placesIn, readDocument, type Tree } from './document.js';
import { refuse } from './faults.js';
import type { Kind, Reading } from './fields/kind.js';
import { edgeRefOf } from './fields/names.js';
import { stepKind } from './fields/of-verb.js';
import { mostIncludes } from './limits.js';
import { factsOf, measuredPieceOf, newNamesOf, outlineOf } from './piece-fields.js';
import { readSteps } from './read-steps.js';
import type { Included } from './replay/included.js';
import type { WrittenValue } from './replay/written-fields.js';
import { seamOf } from './seam-fields.js';
import type { Sheet, SheetFabric, SheetOpening } from './sheet.js';
import { sheetKind, wearerKind, wordAt } from './sheet-fields.js';
import { refusal } from './tellings.js';
import { valuesOf } from './values/let.js';
import type { Value } from './values/value.js';
import { languages } from './words/languages.js';

/**
 * A reader of alteration sheets, YAML or JSON, that knows these verbs. All faults of a sheet's fields are gathered and
 * told at once.
 *
 * @throws SheetFaults (the reader) every fault with line, column and remedy; a file that is no YAML, or no sheet, is
 *   never quoted
 */
export function sheetReader(
  verbs: readonly AnyVerbForm[],
): (text: string, options: { readonly file: string; readonly included?: Included }) => Sheet {
  const kinds = new Map(verbs.map(verb => [verb.verb, { verb, kind: stepKind(verb) }]));
  return (text, { file, included }) => {
    if (typeof text !== 'string') throw refusal('not-a-sheet', {}, { file });
    const tree = readDocument(text, file);
    const entries = fieldsOf(tree, file);
    const unit = wordAt(tree, 'unit', lengthUnits) ?? 'mm';
    const language = wordAt(tree, 'language', languages) ?? 'en';
    const plain: Reading = {
      unit,
      where: { file },
      faults: [],
      ...(included ? { included: atMost(mostIncludes, included) } : {}),
    };
    const reading = readingOf(entries, plain);
    const read = sheetKind.read(tree, { reading, of: {}, place: tree.place });
    const openings = readOpenings(entries.get('opening')?.value, read?.opening ?? {}, reading);
    requireDrawing(entries, tree, reading);
    const steps = readSteps(entries.get('steps'), kinds, reading);
    refuse(reading.faults, { unit, language });
    // Nothing was refused, so everything was read.
    return {
      ...plainly(read!, openings),
      file,
      unit,
      language,
      wearerUnit: wearerUnitOf(entries) ?? unit,
      given: givenIn(entries),
      steps: steps.map(s => s.step),
      places: placesIn(tree),
      stepPlaces: steps.map(s => s.places),
    };
  };
}

/** The same, so many times; after that nothing is there. */
function atMost(times: number, included: Included): Included {
  let left = times;
  return (path, from) => (left-- > 0 ? included(path, from) : undefined);
}

/** A reading that knows who the sheet is for and the figures it keeps under names, the wearer's among them. */
function readingOf(entries: ReadonlyMap<string, Entry>, plain: Reading): Reading {
  const tree = entries.get('wearer')?.value;
  // What is wrong with the wearer is told where all fields are read.
  const unheard: Reading = { ...plain, faults: [] };
  const wearer = (tree && wearerKind.read(tree, { reading: unheard, of: {}, place: tree.place })) ?? {};
  const known = new Map(
    Object.entries(wearer).map(([name, mm]): [string, Value] => [name, { kind: 'length', amount: mm }]),
  );
  return { ...plain, wearer, values: valuesOf(entries.get('let')?.value, { ...plain, known }) };
}

const wearerUnitOf = (entries: ReadonlyMap<string, Entry>) => {
  const wearer = entries.get('wearer')?.value;
  return wearer && wordAt(wearer, 'unit', lengthUnits);
};

/** Every field but the steps, as plain values. */
const givenIn = (entries: ReadonlyMap<string, Entry>): Readonly<Record<string, WrittenValue>> =>
  Object.fromEntries(
    [...entries].flatMap(([key, { value }]): [string, WrittenValue][] => {
      const written = plainValue(value);
      return key === 'steps' || written === undefined ? [] : [[key, written]];
    }),
  );

function plainValue(tree: Tree): WrittenValue | undefined {
  if (tree.kind === 'scalar') return tree.value ?? undefined;
  if (tree.kind === 'list') return tree.items.flatMap(item => plainValue(item) ?? []);
  return givenIn(tree.entries);
}

type SheetRead = typeof sheetKind extends Kind<infer T> ? T : never;

/** What the fields say, in the form that a sheet has. */
function plainly(read: SheetRead, openings: readonly SheetOpening[]) {
  const { pattern, title, wearer, fabrics, print, tolerance, scale, size } = read;
  const pieces = Object.entries(read.pieces);
  const outlines = pieces.map(([name, piece]) => [name, outlineOf(piece)] as const);
  return {
    ...(title === undefined ? {} : { title }),
    ...(pattern === undefined ? {} : { pattern }),
    wearer,
    fabrics: Object.entries(fabrics).map(([name, fabric]): SheetFabric => ({ name, ...fabric })),
    pieces: Object.fromEntries(outlines.flatMap(([name, outline]) => (outline ? [[name, outline]] : []))),
    measured: pieces.flatMap(([name, piece]) => measuredPieceOf(name, piece) ?? []),
    names: Object.fromEntries(
      pieces.flatMap(([name, piece]) => {
        const names = newNamesOf(piece);
        return names ? [[name, names]] : [];
      }),
    ),
    facts: Object.fromEntries(
      pieces.map(([name, piece]) => [newNamesOf(piece)?.name ?? name, factsOf(piece)]),
    ),
    seams: Object.entries(read.seams).map(seamOf),
    fastenings: Object.entries(read.fastenings).map(([name, fastening]) => ({ name, ...fastening })),
    openings,
    print,
    ...(tolerance === undefined ? {} : { tolerance }),
    ...(scale === undefined ? {} : { scale }),
    ...(size === undefined ? {} : { size }),
  };
}

/** A sheet is for a drawing, unless its pieces were measured on paper. */
function requireDrawing(
  entries: ReadonlyMap<string, Entry>,
  { place }: Tree,
  { where, faults }: Reading,
): void {
  const pieces = entries.get('pieces')?.value;
  const isMeasured = (piece: Entry): boolean =>
    piece.value.kind === 'mapping' && piece.value.entries.has('points');
  // A misspelt field is told as such, not what it leads to.
  const isMisspelt = [...entries.keys()].some(key => nearestName(key, ['pattern', 'pieces']) === 'pattern');
  if (isMisspelt || (pieces?.kind === 'mapping' && [...pieces.entries.values()].some(isMeasured))) return;
  faults.push(refusal('missing-field', { fields: ['pattern'] }, { ...where, ...place }));
}

/** A file that has neither of the two fields every sheet has may be anything, so not even its keys are told. */
function fieldsOf(tree: Tree, file: string): ReadonlyMap<string, Entry> {
  const where = { file, ...tree.place };
  const entries: ReadonlyMap<string, Entry> = tree.kind === 'mapping' ? tree.entries : new Map();
  if ([...entries.keys()].some(key => nearestName(key, ['pattern', 'pieces', 'steps']) !== undefined))
    return entries;
  refuse([
    tree.kind === 'scalar' && tree.value === null
      ? refusal('sheet-empty', {}, where)
      : refusal('not-a-sheet', {}, where),
  ]);
  return entries;
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
