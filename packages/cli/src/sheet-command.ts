import { basename, dirname, isAbsolute, join, relative } from 'node:path';
import { PatternError } from '@paperhinge/geometry';
import type { RecordJson } from '@paperhinge/sheet';
import { commandRefusal, commandSaying } from '@paperhinge/sheet/words';
import { fileToWrite } from './file-to-write.js';
import type { Io } from './io.js';
import { readInput, utf8 } from './read-input.js';
import { wordsFor } from './speech.js';
import { checkOutputs, writeOutputs } from './write-outputs.js';

interface SheetArguments {
  readonly output: string;
  readonly pattern?: string;
}

/** `paperhinge sheet RECORD -o FILE`: the sheet that a record is the record of. @returns the exit code */
export async function sheetCommand(
  path: string,
  { output: wanted, pattern }: SheetArguments,
  io: Io,
): Promise<number> {
  const output = fileToWrite(wanted, 'sheet');
  const record = recordIn(utf8(await readInput(path, 'record', { file: path }), 'record', path), path);
  const { readSheet, sheetOfRecord } = await import('@paperhinge/sheet');
  const text = sheetOfRecord(record, pattern === undefined ? undefined : seenFrom(dirname(output), pattern));
  // What is written is read first: a record that was tampered with makes no sheet.
  const sheet = readSheet(text, { file: path });
  const name = basename(output);
  await checkOutputs(dirname(output), [name], [path, ...(pattern === undefined ? [] : [pattern])]);
  await writeOutputs(dirname(output), [{ name, content: text }]);
  const { sentence } = await wordsFor(sheet);
  io.stdout(`${sentence(commandSaying('wrote-sheet', { steps: sheet.steps.length, file: output }))}\n`);
  return 0;
}

const seenFrom = (folder: string, file: string): string =>
  isAbsolute(file) ? file : relative(folder, join('.', file)) || file;

/** @throws PatternError `not-a-record`; nothing of the file is told */
function recordIn(text: string, file: string): Pick<RecordJson, 'given' | 'steps'> {
  try {
    const { given, steps } = JSON.parse(text) as Partial<RecordJson>;
    if (typeof given === 'object' && given !== null && Array.isArray(steps) && steps.every(isStep))
      return { given, steps };
  } catch (error) {
    if (!(error instanceof SyntaxError || error instanceof TypeError || error instanceof PatternError))
      throw error;
  }
  throw commandRefusal('not-a-record', {}, { file });
}

const isStep = (step: unknown): boolean => {
  const { verb, fields } = (step ?? {}) as Partial<RecordJson['steps'][number]>;
  return typeof verb === 'string' && typeof fields === 'object' && fields !== null;
};
