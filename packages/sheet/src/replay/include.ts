import { lengthUnits } from '@paperhinge/geometry/pattern';
import { type Entry, readDocument, type Tree } from '../document.js';
import type { At, Kind, Reading } from '../fields/kind.js';
import { tell } from '../fields/kind.js';
import { filePath, name } from '../fields/names.js';
import { mapping, named, needed, usually } from '../fields/shapes.js';
import { numberOrText, written } from '../fields/written.js';
import { deepestIncludes } from '../limits.js';
import { wordAt } from '../sheet-fields.js';
import type { StepRead, VerbKinds } from '../step-read.js';
import { valuesOf } from '../values/let.js';
import { type NameMap, renamed } from './rename.js';

type ReadSteps = (entry: Entry | undefined, kinds: VerbKinds, reading: Reading) => readonly StepRead[];

const names = named(name);
const nothing = {};
const nameMap = mapping({
  pieces: usually(names, nothing),
  edges: usually(names, nothing),
  darts: usually(names, nothing),
  lines: usually(names, nothing),
  marks: usually(names, nothing),
  seams: usually(names, nothing),
  fabrics: usually(names, nothing),
});
const anyFigure: Kind<string | number> = {
  schema: numberOrText,
  read: (tree, at) => written(tree) ?? tell(at, 'sum-not-understood', {}),
};

/** `include: { sheet: hem.yaml, names: { pieces: { front: bodice } }, let: { hem drop: 180 } }`. */
export const includeKind = mapping({
  sheet: needed(filePath),
  names: usually(nameMap, {
    pieces: nothing,
    edges: nothing,
    darts: nothing,
    lines: nothing,
    marks: nothing,
    seams: nothing,
    fabrics: nothing,
  } satisfies NameMap),
  let: usually(named(anyFigure), nothing),
});

/**
 * The steps of another sheet in the place of one step: in that sheet's unit, with its figures where this one gives no
 * others of their names, and with the names of this one's pattern. Its other fields are not looked at.
 */
export function includedSteps(
  tree: Tree,
  at: At,
  { kinds, readSteps }: { readonly kinds: VerbKinds; readonly readSteps: ReadSteps },
): readonly StepRead[] {
  const { reading } = at;
  const read = includeKind.read(tree, at);
  if (!read) return [];
  const place = tree.kind === 'mapping' ? (tree.entries.get('sheet')?.value.place ?? at.place) : at.place;
  const { included, includedBy = [] } = reading;
  const from = reading.where.file ?? '';
  const told = (code: 'include-not-here' | 'include-in-itself') => {
    tell({ ...at, of: {} }, code, { sheet: read.sheet }, place);
    return [];
  };
  if (includedBy.length >= deepestIncludes) return told('include-in-itself');
  const found = included?.(read.sheet, from);
  if (!found) return told('include-not-here');
  if ([from, ...includedBy].includes(found.file)) return told('include-in-itself');
  const given = tree.kind === 'mapping' ? tree.entries.get('let')?.value : undefined;
  const theirs = readDocument(found.text, found.file);
  const entries: ReadonlyMap<string, Entry> = theirs.kind === 'mapping' ? theirs.entries : new Map();
  const inner: Reading = {
    ...reading,
    unit: wordAt(theirs, 'unit', lengthUnits) ?? 'mm',
    where: { file: found.file },
    includedBy: [from, ...includedBy],
  };
  const steps = readSteps(entries.get('steps'), kinds, {
    ...inner,
    values: valuesWithin(entries, given, at, inner),
  });
  return steps.map(({ step, places }) => ({
    step: { ...step, parameters: renamed(kinds.get(step.verb)!.verb.fields, step.parameters, read.names) },
    places: { ...places, file: places.file ?? found.file },
  }));
}

/** Their figures, but for those that this sheet gives, which are worked out where it stands. */
function valuesWithin(
  entries: ReadonlyMap<string, Entry>,
  given: Tree | undefined,
  { reading }: At,
  inner: Reading,
) {
  const { values = new Map(), unit, where, faults } = reading;
  const ours = valuesOf(given, { known: values, unit, where, faults });
  const own = given?.kind === 'mapping' ? given.entries : new Map();
  const kept = entries.get('let')?.value;
  const theirs: Tree | undefined =
    kept?.kind === 'mapping'
      ? { ...kept, entries: new Map([...kept.entries].filter(([key]) => !own.has(key))) }
      : kept;
  return valuesOf(theirs, { ...inner, known: ours });
}
