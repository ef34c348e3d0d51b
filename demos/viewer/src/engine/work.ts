import { type Finding, type Pattern, PatternError } from '@paperhinge/geometry';
import {
  concludeRun,
  laidOver,
  patternOfSheet,
  type Run,
  type RunDone,
  type Sheet,
  type State,
  type Step,
  stateOf,
  withLateFacts,
} from '@paperhinge/sheet';
import { type Catalogue, type Words, wordsOf } from '@paperhinge/sheet/words';
import { pieceView } from './piece-view.js';
import type { Ask } from './questions.js';
import { readableSheet } from './readable-sheet.js';
import { namesOfEach } from './rows.js';
import { doneSteps, sameObjects } from './steps-done.js';
import type { View } from './view.js';

/** What was last worked out, kept for what is found out of it and what is taken away. */
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
  /** The checks and the order of work of what stands at the end; worked out when first asked for. */
  readonly concluded: () => Run;
}

let read: { text: string; pattern: Pattern; findings: readonly Finding[] } | undefined;

/** The pattern of a text as the sheet reads it, of none where the text is empty; read again only when either is another. */
function patternOf(text: string, file: string, sheet: Sheet) {
  const { pieces, scale, size, names, measured } = sheet;
  const key = `${JSON.stringify([pieces, scale, size, names, measured])}${text}`;
  if (read?.text !== key) read = { text: key, ...patternOfSheet(sheet, text || undefined, file) };
  return read;
}

let lastLaid: (ReturnType<typeof laidOver> & { readonly key: string; readonly read: Pattern }) | undefined;

/** The pattern with what the sheet says laid over it; the same object as long as nothing of that changes. */
function laid(read: Pattern, sheet: Sheet): ReturnType<typeof laidOver> {
  const { steps, stepPlaces, places, print, title, ...rest } = sheet;
  const key = JSON.stringify(rest);
  if (lastLaid?.key !== key || lastLaid.read !== read) lastLaid = { key, read, ...laidOver(read, sheet) };
  return lastLaid;
}

let lastWords: { readonly catalogue: Catalogue; readonly words: Words } | undefined;

/** A language's words in a unit; the same object as long as neither changes. */
function wordsIn(catalogue: Catalogue, unit: Ask['unit']): Words {
  if (lastWords?.catalogue !== catalogue || lastWords.words.unit !== unit)
    lastWords = { catalogue, words: wordsOf(catalogue, unit) };
  return lastWords.words;
}

/** Does the sheet up to the needle, and says what is drawn of it. @throws PatternError what cannot be read */
export function work(ask: Ask, catalogue: Catalogue): { readonly view: View; readonly worked: Worked } {
  const started = performance.now();
  const words = wordsIn(catalogue, ask.unit);
  const readable = readableSheet(ask.sheet);
  const { sheet } = readable;
  const { pattern, findings: readFindings } = patternOf(ask.pattern, ask.patternName, sheet);
  const { pattern: before, findings: onLaying } = laid(pattern, sheet);
  const written = sameObjects(sheet.steps);
  const { states, done, steps, errors } = doneSteps(stateOf(before), written, ask.needle, readable, words);
  const isWhole = errors.length === 0 && ask.needle >= written.length;
  const last = states.at(-1)!;
  const told = toldOf(sheet, before, last.pattern, isWhole);
  const altered = withLateFacts(before, last.pattern, told).pattern;
  const was = new Map(before.pieces.map(piece => [piece.name, piece]));
  const view: View = {
    pattern: before.name,
    pieces: altered.pieces.map(piece => pieceView(piece, altered, was.get(piece.name), words)),
    steps,
    names: namesOfEach(states.map(s => s.pattern)),
    errors,
    milliseconds: performance.now() - started,
  };
  const source = { file: sheet.file, places: sheet.stepPlaces };
  const options = { readFindings, words };
  return {
    view,
    worked: {
      sheet,
      pattern,
      before,
      readFindings,
      words,
      language: ask.language,
      steps: written.slice(0, ask.needle),
      states: states.slice(0, ask.needle + 1),
      concluded: once({ sheet: told, before, onLaying, last, done, source, options }),
    },
  };
}

/** The sheet as far as it can be told of what stands: before all steps are done, it may speak of things that they make. */
function toldOf(sheet: Sheet, before: Pattern, altered: Pattern, isWhole: boolean): Sheet {
  try {
    withLateFacts(before, altered, sheet);
    return sheet;
  } catch (error) {
    if (isWhole || !(error instanceof PatternError)) throw error;
    return { ...sheet, facts: {}, openings: [], seams: [], fastenings: [] };
  }
}

function once(done: RunDone): () => Run {
  let run: Run | undefined;
  return () => {
    run ??= concludeRun(done);
    return run;
  };
}
