import type { AnyVerb, Derived, OrderedJob } from '@paperhinge/alter';
import {
  verbs as allVerbs,
  bandStretch,
  easeFindings,
  girthsBesideBody,
  orderOfWork,
  overTheHead,
} from '@paperhinge/alter';
import { hasEdge } from '@paperhinge/alter/fit';
import {
  checkPattern,
  type Finding,
  levelGirths,
  measurePattern,
  type Pattern,
  readPattern,
  writePattern,
} from '@paperhinge/geometry';
import { requireWhole } from '@paperhinge/geometry/internal';
import { locating } from '@paperhinge/geometry/sayings';
import type { StepDone } from './apply-step.js';
import { told } from './caused.js';
import { refuse } from './faults.js';
import { laidOver, withLateFacts } from './laid-over.js';
import { outgrown } from './made-for.js';
import { isMended } from './mended.js';
import { onFirstUse } from './on-first-use.js';
import { derivedJson, fileName, type RecordJson, type StepRecord } from './record.js';
import { writtenFields } from './replay/written-fields.js';
import { requireSheet } from './require-sheet.js';
import { runSteps, type StepSource, unknownBeforehand, whereOf } from './run-steps.js';
import type { Sheet } from './sheet.js';
import { type State, stateOf } from './state.js';
import { wearerDoubts } from './wearer-doubts.js';
import { english } from './words/english/index.js';
import { type Words, wordsOf } from './words/words.js';

/** What came of a sheet. */
export interface Run {
  readonly sheet: Sheet;
  /** The pattern as read, the sheet's fabrics and openings laid over it. */
  readonly before: Pattern;
  readonly altered: Pattern;
  /** The altered pattern as SVG; `record.after` measures what is read back from it. Made when first asked for. */
  readonly svg: string;
  readonly steps: readonly StepDone[];
  readonly derived: readonly Derived[];
  readonly findings: readonly Finding[];
  /** What is sewn before what, each job with its reasons. */
  readonly order: readonly OrderedJob[];
  /** Made when first asked for. */
  readonly record: RecordJson;
}

/** What a run may be told beside the sheet and its pattern. */
export interface RunOptions {
  /** What was found on reading the pattern. */
  readonly readFindings?: readonly Finding[];
  /** The record's; absent = English in the pattern's unit. */
  readonly words?: Words;
  /** Those the sheet was read with; absent = all there are. */
  readonly verbs?: readonly AnyVerb[];
}

/**
 * Does a sheet's steps in order, walks every seam after each, and says what came of it.
 *
 * @throws SheetFaults names that the pattern does not have, all that can be told before the first step
 * @throws PatternError what a step refuses, with its number and its line in the sheet
 */
export function runSheet(sheet: Sheet, pattern: Pattern, options: RunOptions = {}): Run {
  requireWhole(pattern);
  requireSheet(sheet);
  const { pattern: before, findings: onLaying } = laidOver(pattern, sheet);
  const source: StepSource = {
    file: sheet.file,
    places: sheet.stepPlaces,
    ...(options.verbs === undefined ? {} : { verbs: options.verbs }),
  };
  refuse(unknownBeforehand(before, sheet.steps, source));
  const first = stateOf(before);
  const done = runSteps(first, sheet.steps, source);
  const end = sheet.stepPlaces.at(-1)?.verb;
  return locating({ file: sheet.file, ...end }, () =>
    concludeRun({ sheet, before, onLaying, last: done.at(-1)?.state ?? first, done, source, options }),
  );
}

/** A run whose steps are done. */
export interface RunDone {
  readonly sheet: Sheet;
  readonly before: Pattern;
  /** What was found on laying the sheet's facts over the pattern. */
  readonly onLaying: readonly Finding[];
  readonly last: State;
  readonly done: readonly StepDone[];
  readonly source: StepSource;
  readonly options: RunOptions;
}

/**
 * What stands at the end: the checks of the finished pattern, the order of work, the figures. For whoever does the steps
 * one by one, as a page does while they are written; `runSheet` does both.
 *
 * @throws SheetFaults facts of the sheet about what never came
 */
export function concludeRun({ sheet, before, onLaying, last, done, source, options }: RunDone): Run {
  const { pattern: altered, findings: onLate } = withLateFacts(before, last.pattern, sheet);
  // A piece may have come to be made for more edges than it was drafted along: those of a half that was unfolded.
  const derived = last.derived.flatMap(d =>
    altered.pieces.filter(p => p.name === d.name).map(p => ({ ...d, along: p.madeFor ?? d.along })),
  );
  const standing = derived.map(d => ({ ...d, along: d.along.filter(ref => hasEdge(altered, ref)) }));
  const steps = done.map(
    (one, i): StepDone => ({ ...one, findings: one.findings.map(placedAt(whereOf(source, i))) }),
  );
  const { order, findings: orderFindings } = orderOfWork(altered, standing, last.making);
  const atTheEnd = [
    ...checkPattern(altered),
    ...outgrown(altered, last.made),
    ...bandStretch(altered, derived),
    ...easeFindings(altered, sheet.wearer),
    ...overTheHead({ pattern: altered, wearer: sheet.wearer, derived }),
    ...orderFindings,
  ];
  const { readFindings = [], words = wordsOf(english, before.unit) } = options;
  const known = [...readFindings, ...onLaying, ...wearerDoubts(sheet), ...onLate];
  const findings = gathered(known.map(withoutFolder), steps, atTheEnd);
  const svg = onFirstUse(() => writePattern(altered));
  const record = onFirstUse(
    (): RecordJson => ({
      sheet: fileName(sheet.file),
      ...(sheet.title === undefined ? {} : { title: sheet.title }),
      pattern: before.name,
      given: sheet.given,
      steps: steps.map((one, i) => stepRecord(one, i, { words, verbs: options.verbs })),
      before: measurePattern(before),
      // Measured as read back, so that it equals to the last digit what `measure` says of the file.
      after: measurePattern(readPattern(svg()).pattern),
      derived: derivedJson(derived),
      findings: findings.map(words.finding),
      girths: girthsBesideBody(before, sheet.wearer, levelGirths(before), levelGirths(altered)),
      orderOfWork: order.map(({ job, text, because }) => ({
        job,
        text: words.sentence(text),
        because: because.map(words.sentence),
      })),
    }),
  );
  // Neither is wanted while a maker tries values on a page, and together they take a quarter of the time.
  return {
    sheet,
    before,
    altered,
    get svg() {
      return svg();
    },
    steps,
    derived,
    findings,
    order,
    get record() {
      return record();
    },
  };
}

const stepRecord = (
  { step, did, findings }: StepDone,
  index: number,
  { words, verbs = allVerbs }: { readonly words: Words; readonly verbs?: readonly AnyVerb[] | undefined },
): StepRecord => ({
  step: index + 1,
  verb: step.verb,
  fields: writtenFields(verbs.find(v => v.verb === step.verb)!.fields, step.parameters),
  ...(step.off ? { off: true } : {}),
  did: did === undefined ? '' : words.sentence(did),
  findings: findings.map(words.finding),
});

const placedAt =
  ({ file, ...where }: Finding['where']) =>
  (finding: Finding): Finding => ({
    ...finding,
    where: { ...(file === undefined ? {} : { file: fileName(file) }), ...where, ...finding.where },
  });

/** Without the folder, so that a record does not depend on where its files lay. */
const withoutFolder = (finding: Finding): Finding =>
  finding.where.file === undefined
    ? finding
    : { ...finding, where: { ...finding.where, file: fileName(finding.where.file) } };

/**
 * The findings of the whole run, each once: those on reading, of the operations, and of the pattern as it is at the
 * end, these with the step after which they first stood. What walking the seams found after a step and no longer
 * stands is told with that step only.
 */
function gathered(
  onReading: readonly Finding[],
  steps: readonly StepDone[],
  atTheEnd: readonly Finding[],
): readonly Finding[] {
  const ofSteps = new Map(steps.flatMap(({ findings }) => findings).map(f => [told(f), f]));
  const standing = new Map(atTheEnd.map(f => [told(f), ofSteps.get(told(f)) ?? f]));
  const ofOperations = steps
    .flatMap(({ findings }, i) => findings.filter(f => !isMended(f, i, { steps, atTheEnd })))
    .map(f => [told(f), f] as const)
    .filter(([key]) => !standing.has(key));
  return [...new Map([...onReading.map(f => [told(f), f] as const), ...ofOperations, ...standing]).values()];
}
