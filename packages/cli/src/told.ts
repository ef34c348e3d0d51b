import { type LengthUnit, PatternError } from '@paperhinge/geometry';
import { commandRefusal, faultsIn, type Language, SheetFaults, type Words } from '@paperhinge/sheet/words';
import { CommanderError } from 'commander';
import { ourFailure, unusable } from './exit-codes.js';
import type { Io } from './io.js';
import { errorLine, named, oneLine } from './one-line.js';
import { wordsFor } from './speech.js';
import type { Usage } from './usage/usage.js';

/** Says what went wrong, one line a fault; with `--json` also as one document. @returns the exit code */
export async function tell(error: unknown, io: Io, json: boolean, usage: Usage): Promise<number> {
  const { texts, wrong } = usage;
  if (error instanceof CommanderError) {
    const message = error.message.replace(/^error: /, '').replace(/\.$/, '');
    const said = oneLine(wrong(error.code, message));
    return refused([commandRefusal('arguments', { said })], await wordsFor(texts), io, json);
  }
  if (error instanceof PatternError) {
    const spoken = error instanceof SheetFaults ? error.spoken : {};
    return refused(faultsIn(error), await wordsFor(spoken), io, json);
  }
  const words = error instanceof Error ? (error.stack ?? error.message) : String(error);
  io.stderr(`${texts.ourFailure}\n${words}\n`);
  return ourFailure;
}

function refused(faults: readonly PatternError[], words: Words, io: Io, json: boolean): number {
  for (const fault of faults) io.stderr(`${errorLine(fault, words)}\n`);
  if (json) {
    const errors = faults.map(fault => named(fault, words));
    io.stdout(`${JSON.stringify({ errors }, null, 2)}\n`);
  }
  return unusable;
}

/** Does work for a sheet: what is refused is told in the sheet's language and unit. */
export async function spokenIn<T>(
  spoken: { readonly language: Language; readonly unit: LengthUnit },
  work: () => Promise<T>,
): Promise<T> {
  try {
    return await work();
  } catch (error) {
    if (!(error instanceof PatternError)) throw error;
    const [first, ...more] = faultsIn(error);
    throw new SheetFaults([first!, ...more], spoken);
  }
}

/** One line about an answer that nobody could be given, without loading any catalogue: the disk may be full. */
export const answerNotWritten = (system: string): string =>
  `paperhinge: The answer could not be written (${system}): Check where the output of the command leads, and whether the disk is full.\n`;
