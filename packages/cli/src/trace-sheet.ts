import { basename, dirname } from 'node:path';
import { writePattern } from '@paperhinge/geometry';
import { laidOver } from '@paperhinge/sheet';
import { commandSaying } from '@paperhinge/sheet/words';
import type { Io } from './io.js';
import { loadPatternOf, loadSheet, patternPath } from './load.js';
import { wordsFor } from './speech.js';
import { spokenIn } from './told.js';
import { answer, refusePictureOptions } from './trace-answer.js';
import { figuresOfPatterns } from './trace-figures.js';
import { refuseForeignOptions, type TraceArguments } from './trace-options.js';
import { checkOutputs, writeOutputs } from './write-outputs.js';

/** `paperhinge trace SHEET -o PATTERN.svg`: the pieces that a sheet gives by measured points, as a pattern. */
export async function traceSheet(path: string, options: TraceArguments, io: Io): Promise<number> {
  const { output, json = false } = options;
  refusePictureOptions(options);
  refuseForeignOptions('sheet', options);
  const sheet = await loadSheet(path);
  const spoken = { unit: sheet.unit, language: options.language ?? sheet.language };
  return spokenIn(spoken, async () => {
    const inputs = [path, patternPath(sheet)].filter(input => input !== undefined);
    await checkOutputs(dirname(output), [basename(output)], inputs);
    const words = await wordsFor(spoken);
    const read = await loadPatternOf(sheet);
    const { pattern, findings } = laidOver(read.pattern, sheet);
    await writeOutputs(dirname(output), [{ name: basename(output), content: writePattern(pattern) }]);
    const made = commandSaying('pieces-traced', { pieces: pattern.pieces.length, sheets: 0 });
    const record = figuresOfPatterns([pattern], { by: 'measured points' });
    return answer({ output, json, findings: [...read.findings, ...findings], made, record }, words, io);
  });
}
