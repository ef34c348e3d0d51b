import { basename, dirname, relative } from 'node:path';
import { readPattern } from '@paperhinge/geometry';
import { renamed } from '@paperhinge/geometry/pattern';
import { type NamingProposal, proposeNames } from '@paperhinge/geometry/trace';
import { namingSheet } from '@paperhinge/sheet';
import { commandSaying, type Language } from '@paperhinge/sheet/words';
import { fileToWrite } from './file-to-write.js';
import type { Io } from './io.js';
import { drawingBytes, inFile } from './load.js';
import { wordsFor } from './speech.js';
import { spokenIn } from './told.js';
import { answer } from './trace-answer.js';
import { checkOutputs, writeOutputs } from './write-outputs.js';

interface NameArguments {
  readonly output: string;
  /** Where to draw the pieces with the names proposed for their edges. */
  readonly picture?: string;
  readonly json?: boolean;
  readonly language?: Language;
}

/** `paperhinge name PATTERN -o SHEET.yaml`: what its pieces, edges and seams seem to be. @returns the exit code */
export const nameCommand = (file: string, options: NameArguments, io: Io): Promise<number> =>
  spokenIn({ language: options.language ?? 'en', unit: 'mm' }, () => named(file, options, io));

async function named(file: string, options: NameArguments, io: Io): Promise<number> {
  const { json = false, language } = options;
  const output = fileToWrite(options.output, 'sheet'),
    picture = options.picture === undefined ? undefined : fileToWrite(options.picture, 'drawing');
  for (const path of [output, ...(picture === undefined ? [] : [picture])])
    await checkOutputs(dirname(path), [basename(path)], [file]);
  const { pattern, findings } = readPattern(await drawingBytes(file, { file }), { file });
  const words = await wordsFor({ ...(language ? { language } : {}), unit: pattern.unit });
  const proposal = await inFile(file, () => proposeNames(pattern));
  const text = namingSheet(pattern, proposal, {
    file: relative(dirname(output), file),
    sentence: words.sentence,
  });
  await writeOutputs(dirname(output), [{ name: basename(output), content: text }]);
  if (picture !== undefined) {
    const { namedEdgesSvg } = await import('@paperhinge/print/drawing');
    const content = namedEdgesSvg(renamed(pattern, newNames(proposal)));
    await writeOutputs(dirname(picture), [{ name: basename(picture), content }]);
  }
  const { pieces, seams } = proposal;
  const known = pieces.filter(piece => piece.role !== undefined).length;
  const made = commandSaying('names-written', { pieces: pieces.length, named: known, seams: seams.length });
  return answer({ output, json, findings, made, record: { pieces, seams } }, words, io);
}

const newNames = ({ pieces }: NamingProposal) =>
  Object.fromEntries(
    pieces.map(({ piece, name, edges }) => [piece, { name, edges: edges.map(edge => edge.name) }]),
  );
