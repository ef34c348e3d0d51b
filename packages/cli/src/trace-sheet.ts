import { basename, dirname, join } from 'node:path';
import { measurePattern, writePattern } from '@paperhinge/geometry';
import { laidOver } from '@paperhinge/sheet';
import { commandRefusal, commandSaying } from '@paperhinge/sheet/words';
import { codeFor } from './exit-codes.js';
import type { Io } from './io.js';
import { loadPatternOf, loadSheet, patternPath } from './load.js';
import { findingLine } from './one-line.js';
import { wordsFor } from './speech.js';
import { spokenIn } from './told.js';
import type { TraceArguments } from './trace-options.js';
import { checkOutputs, writeOutputs } from './write-outputs.js';

/** `paperhinge trace SHEET -o PATTERN.svg`: the pieces that a sheet gives by measured points, as a pattern. */
export async function traceSheet(path: string, options: TraceArguments, io: Io): Promise<number> {
  const { output, json = false } = options;
  const ofPictures = [options.measured, options.dpi, options.known, options.at, options.picture];
  if (ofPictures.some(option => option !== undefined)) throw commandRefusal('options-of-pictures', {});
  const sheet = await loadSheet(path);
  const spoken = { unit: sheet.unit, language: options.language ?? sheet.language };
  return spokenIn(spoken, async () => {
    const inputs = [path, patternPath(sheet)].filter(input => input !== undefined);
    await checkOutputs(dirname(output), [basename(output)], inputs);
    const words = await wordsFor(spoken);
    const read = await loadPatternOf(sheet);
    const { pattern, findings } = laidOver(read.pattern, sheet);
    await writeOutputs(dirname(output), [{ name: basename(output), content: writePattern(pattern) }]);
    const told = [...read.findings, ...findings].map(words.finding);
    for (const finding of told) io.stderr(`${findingLine(finding, words)}\n`);
    const counts = { pieces: pattern.pieces.length, sheets: 0 };
    const what = [commandSaying('pieces-traced', counts)];
    const said = commandSaying('in-files', { what, files: [join(dirname(output), basename(output))] });
    const { pieces } = measurePattern(pattern);
    const record = { scale: { by: 'measured points' }, pieces, findings: told };
    io.stdout(json ? `${JSON.stringify(record, null, 2)}\n` : `${words.sentence(said)}\n`);
    return codeFor(told);
  });
}
