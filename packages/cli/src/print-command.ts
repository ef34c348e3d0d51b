import { dirname, join } from 'node:path';
import { checkPattern, type Finding, type Pattern } from '@paperhinge/geometry';
import { commandSaying, type Words } from '@paperhinge/sheet/words';
import { asAsked, type PatternArguments, type Reading } from './asked.js';
import { codeFor } from './exit-codes.js';
import type { Io } from './io.js';
import { inFile, loadPattern } from './load.js';
import { findingLine } from './one-line.js';
import { progress } from './progress.js';
import { type Asked, wayOut } from './put-out.js';
import { wordsFor } from './speech.js';
import { checkOutputs, writeOutputs } from './write-outputs.js';

type PrintOptions = Asked & PatternArguments;

/** `paperhinge print PATTERN --paper a4 -o FILE.pdf`, `--projector dark`, `-o FILE.dxf`. @returns the exit code @throws PatternError, SheetFaults */
export const printCommand = (file: string, options: PrintOptions, io: Io): Promise<number> =>
  asAsked(options, reading => printed(file, options, io, reading));

async function printed(file: string, options: PrintOptions, io: Io, reading: Reading): Promise<number> {
  const { output, json = false, sheet: sheetPath } = options;
  const { sheet, language, unit } = reading;
  const { sentence } = await wordsFor({ language });
  const way = wayOut({ ...options, language });
  const { say, end } = progress(io);
  try {
    const folder = dirname(output);
    const inputs = [file, sheetPath, options.before].filter(path => path !== undefined);
    await checkOutputs(folder, way.names, inputs);
    say(sentence(commandSaying('reading-pattern', {})));
    const { pattern, findings } = await loadPattern(file, sheet);
    const before = options.before === undefined ? undefined : (await loadPattern(options.before)).pattern;
    const words = await wordsFor({ language, unit: unit ?? pattern.unit });
    say(sentence(way.doing));
    const done = await inFile(file, () => way.put(pattern, before));
    say(sentence(commandSaying('writing', {})));
    await writeOutputs(folder, done.files);
    end();
    const told = [...findings, ...(done.findings ?? [])].map(words.finding);
    for (const finding of told) io.stderr(`${findingLine(finding, words)}\n`);
    const unsewable = faultsOf(pattern, words);
    if (unsewable !== undefined) io.stderr(`${unsewable}\n`);
    const files = way.names.map(name => join(folder, name));
    const said = commandSaying('in-files', { what: done.words, files });
    io.stdout(json ? `${JSON.stringify(done.json, null, 2)}\n` : `${words.sentence(said)}\n`);
    return codeFor(told);
  } finally {
    end();
  }
}

/** That a pattern does not pass its check, so that it is not cut before that is mended. */
function faultsOf(pattern: Pattern, { sentence }: Words): string | undefined {
  const isFault = ({ severity }: Finding) => severity === 'fault';
  const faults = checkPattern(pattern).filter(isFault).length;
  return faults === 0 ? undefined : sentence(commandSaying('fails-check', { faults }));
}
