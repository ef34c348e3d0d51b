import { basename, dirname } from 'node:path';
import { printPattern } from '@paperhinge/print';
import { codeFor } from './exit-codes.js';
import { fonts } from './fonts.js';
import type { Io } from './io.js';
import { loadPattern, loadSheet } from './load.js';
import { findingLine } from './one-line.js';
import { progress } from './progress.js';
import { checkOutputs, writeOutputs } from './write-outputs.js';

interface PrintOptions {
  readonly output: string;
  readonly paper: string;
  readonly json?: boolean;
  readonly sheet?: string;
}

/** `paperhinge print PATTERN --paper a4 -o FILE.pdf`. @returns the exit code @throws PatternError, SheetFaults */
export async function printCommand(file: string, options: PrintOptions, io: Io): Promise<number> {
  const { output, paper, json = false, sheet: sheetPath } = options;
  const { say, end } = progress(io);
  try {
    const folder = dirname(output),
      name = basename(output);
    const sheet = sheetPath === undefined ? undefined : await loadSheet(sheetPath);
    await checkOutputs(folder, [name], [file, ...(sheetPath === undefined ? [] : [sheetPath])]);
    say('Reading the pattern');
    const { pattern, findings } = await loadPattern(file, sheet);
    say(`Laying out the pages on ${paper}`);
    const { pdf, pages } = await printPattern(pattern, { paper, fonts });
    say('Writing');
    await writeOutputs(folder, [{ name, content: pdf }]);
    end();
    for (const finding of findings) io.stderr(`${findingLine(finding)}\n`);
    const count = pages.pages.length;
    io.stdout(
      json
        ? `${JSON.stringify(pages, null, 2)}\n`
        : `${count} ${count === 1 ? 'page' : 'pages'} of ${paper} in ${output}\n`,
    );
    return codeFor(findings);
  } finally {
    end();
  }
}
