import type { Derived, MakingNote } from '@paperhinge/alter';
import { bandStretch, easeFindings, girthsBesideBody, orderOfWork, overTheHead } from '@paperhinge/alter';
import {
  checkPattern,
  type Finding,
  levelGirths,
  locating,
  measurePattern,
  type Pattern,
  readPattern,
  type Saying,
  validatePattern,
  walkSeams,
  writePattern,
} from '@paperhinge/geometry';
import { applyStep } from './apply-step.js';
import { caused, told } from './caused.js';
import { refuse } from './faults.js';
import { laidOver, withLateOpenings } from './laid-over.js';
import { type MadeFor, madeForAfter, madeForNow, outgrown } from './made-for.js';
import { namesAfter, namesIn, unknownNames } from './names.js';
import { derivedJson, fileName, type RecordJson, type StepRecord } from './record.js';
import type { Sheet, SheetStep } from './sheet.js';
import type { Verb } from './verbs.js';
import { english } from './words/english/index.js';
import { type Words, wordsOf } from './words/words.js';

/** What came of a sheet. */
export interface Run {
  readonly sheet: Sheet;
  /** The pattern as read, the sheet's fabrics and openings laid over it. */
  readonly before: Pattern;
  readonly altered: Pattern;
  /** The altered pattern as SVG; `record.after` measures what is read back from it. */
  readonly svg: string;
  readonly steps: readonly StepDone[];
  readonly derived: readonly Derived[];
  readonly findings: readonly Finding[];
  readonly record: RecordJson;
}

/**
 * Does a sheet's steps in order, walks every seam after each, and says what came of it.
 *
 * @param readFindings what was found on reading the pattern
 * @throws SheetFaults names that the pattern does not have, all that can be told before the first step
 * @throws PatternError what a step refuses, with its number and its line in the sheet
 */
export function runSheet(
  sheet: Sheet,
  pattern: Pattern,
  readFindings: readonly Finding[] = [],
  words: Words = wordsOf(english, pattern.unit),
): Run {
  const before = laidOver(pattern, sheet);
  refuse(unknownBeforehand(sheet, before));

  const first: State = {
    pattern: before,
    steps: [],
    derived: [],
    making: [],
    made: madeForNow(before),
    standing: standingIn(before, madeForNow(before)),
  };
  const last = sheet.steps.reduce((state, step, i) => afterStep(state, step, i + 1, sheet), first);
  const end = sheet.steps.at(-1)?.place;
  return locating({ file: sheet.file, ...end }, () => concluded(sheet, before, last, readFindings, words));
}

/** What stands at the end: the checks of the finished pattern, the order of work, the figures. */
function concluded(
  sheet: Sheet,
  before: Pattern,
  last: State,
  readFindings: readonly Finding[],
  words: Words,
): Run {
  const altered = withLateOpenings(before, last.pattern, sheet);
  // A piece may have come to be made for more edges than it was drafted along: those of a half that was unfolded.
  const derived = last.derived.flatMap(d =>
    altered.pieces.filter(p => p.name === d.name).map(p => ({ ...d, along: p.madeFor ?? d.along })),
  );

  const { order, findings: orderFindings } = orderOfWork(altered, derived, last.making);
  const atTheEnd = [
    ...checkPattern(altered),
    ...outgrown(altered, last.made),
    ...bandStretch(altered, derived),
    ...easeFindings(altered, sheet.wearer),
    ...overTheHead({ pattern: altered, wearer: sheet.wearer, derived }),
    ...orderFindings,
  ];
  const findings = gathered(readFindings.map(withoutFolder), last.steps, atTheEnd);
  const svg = writePattern(altered);
  const record: RecordJson = {
    sheet: fileName(sheet.file),
    ...(sheet.title === undefined ? {} : { title: sheet.title }),
    pattern: before.name,
    steps: last.steps.map(
      ({ did, findings, ...step }): StepRecord => ({
        ...step,
        did: words.sentence(did),
        findings: findings.map(words.finding),
      }),
    ),
    before: measurePattern(before),
    // Measured as read back, so that it equals to the last digit what `measure` says of the file.
    after: measurePattern(readPattern(svg).pattern),
    derived: derivedJson(derived),
    findings: findings.map(words.finding),
    girths: girthsBesideBody(sheet.wearer, levelGirths(before), levelGirths(altered)),
    orderOfWork: order.map(({ job, text, because }) => ({
      job,
      text: words.sentence(text),
      because: because.map(words.sentence),
    })),
  };
  return { sheet, before, altered, svg, steps: last.steps, derived, findings, record };
}

/** A step that was done: what came of it, not yet in words. */
export interface StepDone {
  /** From 1. */
  readonly step: number;
  readonly verb: Verb;
  readonly did: Saying | string;
  readonly findings: readonly Finding[];
}

interface State {
  readonly pattern: Pattern;
  readonly steps: readonly StepDone[];
  readonly derived: readonly Derived[];
  readonly making: readonly MakingNote[];
  readonly made: readonly MadeFor[];
  /** What walking the seams finds of the pattern as it is. */
  readonly standing: readonly Finding[];
}

function afterStep(state: State, step: SheetStep, number: number, { file }: Sheet): State {
  const where = { file, ...step.place, step: number };
  refuse(unknownNames(step, number, namesIn(state.pattern), file));
  const done = locating(where, () => {
    const alteration = applyStep(state.pattern, step);
    // A step may ask for what no paper can be (a spread that crosses itself): better told here than on reading back.
    validatePattern(alteration.pattern);
    return alteration;
  });
  const drafted = done.derived?.map(d => d.name) ?? [];
  const made = madeForAfter(state.made, done.pattern, drafted);
  const standing = locating(where, () => standingIn(done.pattern, made));
  const findings = [...done.findings, ...caused(state.standing, standing)].map(finding =>
    at(finding, { ...where, file: fileName(file) }),
  );
  return {
    pattern: done.pattern,
    steps: [...state.steps, { step: number, verb: step.verb, did: done.did, findings }],
    derived: [...state.derived.filter(d => !drafted.includes(d.name)), ...(done.derived ?? [])],
    making: [...state.making, ...(done.making ?? [])],
    made,
    standing,
  };
}

const standingIn = (pattern: Pattern, made: readonly MadeFor[]): readonly Finding[] => [
  ...walkSeams(pattern).flatMap(walk => walk.findings),
  ...outgrown(pattern, made),
];

const at = (finding: Finding, where: Finding['where']): Finding => ({
  ...finding,
  where: { ...where, ...finding.where },
});

/** Without the folder, so that a record does not depend on where its files lay. */
const withoutFolder = (finding: Finding): Finding =>
  finding.where.file === undefined
    ? finding
    : { ...finding, where: { ...finding.where, file: fileName(finding.where.file) } };

/** Every name in the sheet that the pattern cannot have at that step, told together. */
function unknownBeforehand(sheet: Sheet, pattern: Pattern) {
  let names = namesIn(pattern);
  return sheet.steps.flatMap((step, i) => {
    const unknown = unknownNames(step, i + 1, names, sheet.file);
    names = namesAfter(step, names);
    return unknown;
  });
}

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
  const ofOperations = [...ofSteps].filter(([key, { code }]) => !standing.has(key) && !checks.has(code));
  return [...new Map([...onReading.map(f => [told(f), f] as const), ...ofOperations, ...standing]).values()];
}

/** Codes of what stands only until it is mended: checking the pattern at the end finds what still does. */
const checks: ReadonlySet<string> = new Set([
  'seam-does-not-match',
  'notches-do-not-meet',
  'ease-the-wrong-way',
  'notch-misses-seam',
  'crossing-seams-apart',
  'notch-without-partner',
  'joined-line-broken',
  'edge-kinked',
  'edge-stepped',
  'fold-corner-not-square',
  'made-for-edge-changed',
  'made-for-edge-gone',
  'edge-bridged',
  'edge-overlapped',
  'hinge-kink',
  'dart-step',
]);
