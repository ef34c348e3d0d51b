import { cautionsFor, type OrderedJob, overTheHead, verbs } from '@paperhinge/alter';
import {
  type Finding,
  measurePattern,
  type Pattern,
  PatternError,
  type ToldFinding,
} from '@paperhinge/geometry';
import { girthsAtLevels, hemSweep } from '@paperhinge/geometry/measure';
import {
  applyStep,
  concludeRun,
  laidOver,
  patternOfSheet,
  type Run,
  type RunDone,
  type Sheet,
  type State,
  type Step,
  type StepDone,
  stateOf,
} from '@paperhinge/sheet';
import { type Catalogue, faultsIn, type Words, wordsOf } from '@paperhinge/sheet/words';
import { pieceView } from './piece-view.js';
import type { Ask } from './questions.js';
import { readableSheet } from './readable-sheet.js';
import { girthRows, namesOf, seamRows } from './rows.js';
import { spokenOf } from './spoken-of.js';
import { verdictOf } from './verdict.js';
import type { Fault, StepView, View } from './view.js';

/** What was last worked out, kept for what is taken away. */
export interface Worked {
  readonly sheet: Sheet;
  /** As read, before anything of the sheet was laid over it. */
  readonly pattern: Pattern;
  readonly before: Pattern;
  readonly readFindings: readonly Finding[];
  readonly words: Words;
  readonly language: Ask['language'];
  /** The steps that were done, and what stood before each and after the last. */
  readonly steps: readonly Step[];
  readonly states: readonly State[];
  /** The making of what stands at the end. */
  readonly order: readonly OrderedJob[];
}

/** The steps of the last sheet; older ones are let go, and what came of them with them. */
let known = new Map<string, Step>();
let read: { text: string; pattern: Pattern; findings: readonly Finding[] } | undefined;

/** The pattern of a text as the sheet reads it, of none where the text is empty; read again only when either is another. */
function patternOf(text: string, file: string, sheet: Sheet) {
  const { pieces, scale, size, names, measured } = sheet;
  const key = `${JSON.stringify([pieces, scale, size, names, measured])}${text}`;
  if (read?.text !== key) read = { text: key, ...patternOfSheet(sheet, text || undefined, file) };
  return read;
}

/** Steps that were there before are the same objects, so that what is known of them is not done again. */
function sameObjects(steps: readonly Step[]): readonly Step[] {
  const now = new Map<string, Step>();
  const same = steps.map(step => {
    const key = JSON.stringify(step);
    const have = known.get(key) ?? step;
    now.set(key, have);
    return have;
  });
  known = now;
  return same;
}

let lastLaid: (ReturnType<typeof laidOver> & { readonly key: string; readonly read: Pattern }) | undefined;

/** The pattern with what the sheet says laid over it; the same object as long as nothing of that changes. */
function laid(read: Pattern, sheet: Sheet): ReturnType<typeof laidOver> {
  const { steps, stepPlaces, places, print, title, ...rest } = sheet;
  const key = JSON.stringify(rest);
  if (lastLaid?.key !== key || lastLaid.read !== read) lastLaid = { key, read, ...laidOver(read, sheet) };
  return lastLaid;
}

/** What came of the steps: what stood before each and after the last, and what the page says of them. */
interface Done {
  readonly states: readonly State[];
  /** For each step; one that could not be done stands as one that is switched off. */
  readonly done: readonly StepDone[];
  readonly steps: readonly StepView[];
  readonly errors: readonly Fault[];
}

/** Does the steps up to the needle; one that cannot be done is told, and the others go on from what stood before it. */
function doneSteps(
  start: State,
  written: readonly Step[],
  { needle }: Ask,
  { sheet, faults }: ReturnType<typeof readableSheet>,
  words: Words,
): Done {
  const states: State[] = [start];
  const done: StepDone[] = [];
  const steps: StepView[] = [];
  const errors: Fault[] = [];
  const notDone = (i: number) => {
    states.push(states[i]!);
    done.push({ step: written[i]!, findings: [], state: states[i]! });
  };
  const fault = (i: number, error: PatternError) => {
    const { message, remedy } = words.error(error);
    const text = `${message} ${remedy}`;
    notDone(i);
    steps.push({ did: '', findings: [], fault: text });
    errors.push({ line: sheet.stepPlaces[i]!.verb.line, text });
  };
  for (const [i, step] of written.entries()) {
    const unread = faults.get(i);
    if (unread) fault(i, unread);
    else if (i >= needle) {
      notDone(i);
      steps.push({ did: '', findings: [] });
    } else
      try {
        const verb = verbs.find(v => v.verb === step.verb)!;
        const one = applyStep(states[i]!, step, verb);
        const { did, findings, state } = one;
        states.push(state);
        done.push(one);
        steps.push({
          did: did === undefined ? '' : words.sentence(did),
          findings: findings.map(words.finding),
        });
      } catch (error) {
        if (!(error instanceof PatternError)) throw error;
        fault(i, faultsIn(error)[0]!);
      }
  }
  return { states, done, steps, errors };
}

/** Does the sheet up to the needle, and says all that the page shows of it. @throws PatternError what cannot be read */
export function work(ask: Ask, catalogue: Catalogue): { readonly view: View; readonly worked: Worked } {
  const started = performance.now();
  const words = wordsOf(catalogue, ask.unit);
  const readable = readableSheet(ask.sheet);
  const { sheet } = readable;
  const { pattern, findings: readFindings } = patternOf(ask.pattern, ask.patternName, sheet);
  const { pattern: before, findings: onLaying } = laid(pattern, sheet);
  const written = sameObjects(sheet.steps);
  const { states, done, steps, errors } = doneSteps(stateOf(before), written, ask, readable, words);
  const whole = errors.length === 0 && ask.needle >= written.length;
  const run = concluded(
    {
      sheet,
      before,
      onLaying,
      last: states.at(-1)!,
      done,
      source: { file: sheet.file, places: sheet.stepPlaces },
      options: { readFindings, words },
    },
    whole,
  );
  const view: View = {
    ...shownOf(run, words),
    pattern: before.name,
    steps,
    names: states.map(s => namesOf(s.pattern)),
    errors,
    milliseconds: performance.now() - started,
  };
  const upTo = { steps: written.slice(0, ask.needle), states: states.slice(0, ask.needle + 1) };
  return {
    view,
    worked: {
      sheet,
      pattern,
      before,
      readFindings,
      words,
      language: ask.language,
      order: run.order,
      ...upTo,
    },
  };
}

/** What stands at the end. Before all steps are done, what the sheet says of things that they make has nothing to be said of. */
function concluded(done: RunDone, isWhole: boolean): Run {
  try {
    return concludeRun(done);
  } catch (error) {
    if (isWhole || !(error instanceof PatternError)) throw error;
    const sheet = { ...done.sheet, facts: {}, openings: [], seams: [], fastenings: [] };
    return concludeRun({ ...done, sheet });
  }
}

/** What the page shows of what stands after the last step. */
function shownOf({ sheet, before, altered, derived, order, findings: found }: Run, words: Words) {
  const { wearer } = sheet;
  const passages = overTheHead({ pattern: altered, wearer, derived });
  const findings = found.map(words.finding);
  const { seams } = measurePattern(altered);
  const girths = new Map(girthsAtLevels(altered).map(g => [g.level, g.girthMm]));
  const standing = { seams, passages: passages.map(words.finding), findings, sweeps: hemSweep(altered) };
  const was = (name: string) => before.pieces.find(p => p.name === name);
  return {
    pieces: altered.pieces.map(piece => pieceView(piece, altered, was(piece.name), words, girths)),
    verdict: verdictOf(standing, words),
    girths: girthRows(sheet, before, girths, words),
    seams: seamRows(seams, findings, words),
    findings: byHarm(findings),
    making: order.map(({ text, because }) => ({
      text: words.sentence(text),
      lights: spokenOf(text, altered),
      detail: because.map(words.sentence).join('; '),
      tone: 'sound' as const,
    })),
    cautions: cautionsFor({ pattern: altered, wearer, derived }).map(words.sentence),
  };
}

const weights = { fault: 0, warning: 1, note: 2 } as const;
const byHarm = (findings: readonly ToldFinding[]): readonly ToldFinding[] =>
  [...findings].sort((p, q) => weights[p.severity] - weights[q.severity]);
