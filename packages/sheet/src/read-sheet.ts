import { nearestName, PatternError, quoted, suggestion, type Where } from '@paperhinge/geometry';
import type { z } from 'zod';
import { type Place, placesIn, plain, readDocument, type Tree, treeAt } from './document.js';
import { refuse } from './faults.js';
import { edgeRefOf } from './fields.js';
import { faultsOf } from './issues.js';
import { mostSteps } from './limits.js';
import { lengthUnits, sheetSchema } from './schema.js';
import type { Sheet, SheetFabric, SheetOpening, SheetStep } from './sheet.js';
import { type Verb, verbSchemas, verbs } from './verbs.js';

/**
 * Reads an alteration sheet, YAML or JSON. All faults of its fields are gathered and told at once.
 *
 * @param file the sheet's name for errors
 * @throws SheetFaults every fault with line, column and remedy; a file that is no YAML, or no sheet, is never quoted
 */
export function readSheet(text: string, { file }: { readonly file: string }): Sheet {
  const tree = readDocument(text, file);
  refuse(notASheet(tree, file));
  const value = plain(tree) as Readonly<Record<string, unknown>>;
  const unit = lengthUnits.find(u => u === value.unit) ?? 'mm';
  const read = sheetSchema(unit).safeParse(value);
  const faults = read.success ? [] : [...faultsOf(read.error.issues, tree, { file })];

  const { openings, faults: openingFaults } = readOpenings(tree, file, read.data?.opening ?? {});
  const { steps, faults: stepFaults } = readSteps(tree, file, verbSchemas(unit));
  refuse([...faults, ...openingFaults, ...stepFaults]);
  // Nothing was refused, so everything was read.
  const { pattern, title, wearer, fabrics, pieces, print } = read.data!;
  return {
    file,
    ...(title === undefined ? {} : { title }),
    pattern,
    unit,
    wearer,
    fabrics: Object.entries(fabrics).map(([name, fabric]) => ({ name, ...fabric }) as SheetFabric),
    pieces,
    openings,
    steps,
    print,
    places: placesIn(tree),
  };
}

/** A file that has neither of the two fields every sheet has may be anything, so not even its keys are told. */
function notASheet(tree: Tree, file: string): readonly PatternError[] {
  const keys = tree.kind === 'mapping' ? [...tree.entries.keys()] : [];
  if (keys.some(key => nearestName(key, ['pattern', 'steps']) !== undefined)) return [];
  const empty = tree.kind === 'scalar' && tree.value === null;
  return [
    new PatternError(empty ? 'sheet-empty' : 'not-a-sheet', {
      message: empty ? 'The sheet is empty.' : 'This is not an alteration sheet.',
      remedy: 'Give a sheet with the fields "pattern" and "steps".',
      where: { file, ...tree.place },
    }),
  ];
}

function readSteps(tree: Tree, file: string, schemas: ReturnType<typeof verbSchemas>) {
  const list = tree.kind === 'mapping' ? tree.entries.get('steps')?.value : undefined;
  const steps: SheetStep[] = [],
    faults: PatternError[] = [];
  if (list?.kind !== 'list' || list.items.length > mostSteps) return { steps, faults };
  for (const [index, item] of list.items.entries()) {
    const where = { file, step: index + 1 };
    const verb = verbOf(item, where);
    if (verb instanceof PatternError) {
      faults.push(verb);
      continue;
    }
    const [name, place, fields] = verb;
    const read = (schemas[name] as z.ZodType).safeParse(plain(fields));
    if (read.success)
      steps.push({ verb: name, parameters: read.data, place, places: placesIn(fields) } as SheetStep);
    else faults.push(...faultsOf(read.error.issues, fields, where, { name, place }));
  }
  return { steps, faults };
}

/** The one key of a step, which must be a verb. */
function verbOf(item: Tree, where: Where): PatternError | readonly [Verb, Place, Tree] {
  const fault = (code: string, place: Place, message: string, remedy: string) =>
    new PatternError(code, { message, remedy, where: { ...where, ...place } });
  if (item.kind !== 'mapping' || item.entries.size === 0)
    return fault(
      'step-not-understood',
      item.place,
      'A step has no verb.',
      'Write it as "verb: { field: value }".',
    );
  const [[key, entry], second] = [...item.entries] as [
    [string, { place: Place; value: Tree }],
    [string, { place: Place }]?,
  ];
  const verb = verbs.find(v => v === key);
  if (second)
    return fault(
      'step-not-understood',
      second[1].place,
      `The step has ${quoted(second[0])} beside its verb.`,
      verb && entry.value.kind === 'scalar'
        ? 'Indent the fields deeper than the verb.'
        : 'Start each step with "- ".',
    );
  if (verb) return [verb, entry.place, entry.value];
  return fault(
    'unknown-verb',
    entry.place,
    `There is no verb ${quoted(key)}.`,
    suggestion(key, verbs, 'verbs'),
  );
}

function readOpenings(tree: Tree, file: string, lengths: Readonly<Record<string, number>>) {
  const openings: SheetOpening[] = [],
    faults: PatternError[] = [];
  const mapping = treeAt(tree, ['opening']);
  for (const [key, { place }] of mapping?.kind === 'mapping' ? mapping.entries : []) {
    const ref = edgeRefOf(key),
      length = lengths[key];
    if (ref && length !== undefined) openings.push({ ...ref, length, place });
    if (!ref)
      faults.push(
        new PatternError('edge-not-understood', {
          message: `${quoted(key)} is not an edge of a piece.`,
          remedy: 'Write PIECE.EDGE and a length, such as back.centre-back: 120 mm.',
          where: { file, ...place },
        }),
      );
  }
  return { openings, faults };
}
