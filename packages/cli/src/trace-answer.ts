import { basename, dirname, join } from 'node:path';
import type { Finding, Saying } from '@paperhinge/geometry';
import { commandRefusal, commandSaying, type Words } from '@paperhinge/sheet/words';
import { codeFor } from './exit-codes.js';
import type { Io } from './io.js';
import { findingLine } from './one-line.js';
import type { TraceArguments } from './trace-options.js';

/** What was found of a file, and what was made of it. */
export interface Answered {
  readonly output: string;
  readonly json: boolean;
  readonly findings: readonly Finding[];
  readonly made: Saying;
  /** For another program, beside the findings. */
  readonly record: object;
}

/** Tells what was found and what was written where. @returns the exit code */
export function answer({ output, json, findings, made, record }: Answered, words: Words, io: Io): number {
  const told = findings.map(words.finding);
  for (const finding of told) io.stderr(`${findingLine(finding, words)}\n`);
  const files = [join(dirname(output), basename(output))];
  io.stdout(
    json
      ? `${JSON.stringify({ ...record, findings: told }, null, 2)}\n`
      : `${words.sentence(commandSaying('in-files', { what: [made], files }))}\n`,
  );
  return codeFor(told);
}

/** What is for pictures alone says nothing of a drawing or a sheet. @throws PatternError `options-of-pictures` */
export function refusePictureOptions({ measured, dpi, known, at, pen, picture }: TraceArguments): void {
  if ([measured, dpi, known, at, pen, picture].some(option => option !== undefined))
    throw commandRefusal('options-of-pictures', {});
}
