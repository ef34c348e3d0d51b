import { basename, dirname } from 'node:path';
import { codeFor } from './exit-codes.js';
import type { Io } from './io.js';
import { loadPattern, loadSheet } from './load.js';
import { findingLine } from './one-line.js';
import { progress } from './progress.js';
import { type Asked, wayOut } from './put-out.js';
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
    const folder = dirname(output),
      name = basename(output);
    const sheet = sheetPath === undefined ? undefined : await loadSheet(sheetPath);
    await checkOutputs(folder, [name], [file, ...(sheetPath === undefined ? [] : [sheetPath])]);
    say('Reading the pattern');
    const { pattern, findings } = await loadPattern(file, sheet);
    say(way.doing);
    const { content, json: told, words } = await way.put(pattern);
    say('Writing');
    await writeOutputs(folder, [{ name, content }]);
    end();
    for (const finding of findings) io.stderr(`${findingLine(finding)}\n`);
    io.stdout(json ? `${JSON.stringify(told, null, 2)}\n` : `${words} in ${output}\n`);
    return codeFor(findings);
  } finally {
    end();
  }
}
