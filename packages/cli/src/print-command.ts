import { dirname, join } from 'node:path';
import { codeFor } from './exit-codes.js';
import type { Io } from './io.js';
import { loadPattern, loadSheet } from './load.js';
import { findingLine } from './one-line.js';
import { progress } from './progress.js';
import { type Asked, wayOut } from './put-out.js';
import { wordsIn } from './words.js';
import { checkOutputs, writeOutputs } from './write-outputs.js';

interface PrintOptions extends Asked {
  readonly json?: boolean;
  readonly sheet?: string;
}

/** `paperhinge print PATTERN --paper a4 -o FILE.pdf`, `--projector dark`, `-o FILE.dxf`. @returns the exit code @throws PatternError, SheetFaults */
export async function printCommand(file: string, options: PrintOptions, io: Io): Promise<number> {
  const { output, json = false, sheet: sheetPath } = options;
  const way = wayOut(options);
  const { say, end } = progress(io);
  try {
    const folder = dirname(output);
    const sheet = sheetPath === undefined ? undefined : await loadSheet(sheetPath);
    await checkOutputs(
      folder,
      way.names,
      [file, sheetPath, options.before].filter(path => path !== undefined),
    );
    say('Reading the pattern');
    const { pattern, findings } = await loadPattern(file, sheet);
    const before = options.before === undefined ? undefined : (await loadPattern(options.before)).pattern;
    say(way.doing);
    const { files, json: told, words, findings: ofPages = [] } = await way.put(pattern, before);
    say('Writing');
    await writeOutputs(folder, files);
    end();
    const all = [...findings, ...ofPages].map(wordsIn(pattern.unit).finding);
    for (const finding of all) io.stderr(`${findingLine(finding)}\n`);
    io.stdout(
      json
        ? `${JSON.stringify(told, null, 2)}\n`
        : `${words} in ${way.names.map(name => join(folder, name)).join(', ')}\n`,
    );
    return codeFor(all);
  } finally {
    end();
  }
}
