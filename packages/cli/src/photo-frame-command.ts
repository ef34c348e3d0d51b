import { basename, dirname, join } from 'node:path';
import { PatternError } from '@paperhinge/geometry';
import { type FramePaper, framePapers, sheetsInFrame } from '@paperhinge/geometry/trace';
import { photoFrame } from '@paperhinge/print';
import { done } from './exit-codes.js';
import { fonts } from './fonts.js';
import type { Io } from './io.js';
import { checkOutputs, writeOutputs } from './write-outputs.js';

interface FrameOptions {
  readonly output: string;
  readonly paper?: string;
  readonly sheets?: string;
  readonly json?: boolean;
}

const fewest = 4;

/** `paperhinge print --photo-frame -o FILE.pdf`. @returns the exit code @throws PatternError */
export async function photoFrameCommand(options: FrameOptions, io: Io): Promise<number> {
  const { output, json = false } = options;
  const paper = paperOf(options.paper ?? 'a4'),
    sheets = countOf(options.sheets ?? String(sheetsInFrame));
  const folder = dirname(output),
    name = basename(output);
  await checkOutputs(folder, [name], []);
  await writeOutputs(folder, [{ name, content: await photoFrame({ paper, sheets, fonts }) }]);
  const { width, height } = framePapers[paper];
  const told = { paper, paperMm: [width, height], testSquareMm: 50, sheets };
  io.stdout(
    json
      ? `${JSON.stringify(told, null, 2)}\n`
      : `${sheets} sheets of ${paper} in ${join(folder, name)}: print at actual size, and measure the square on one\n`,
  );
  return done;
}

function paperOf(word: string): FramePaper {
  const paper = word.toLowerCase();
  if (Object.hasOwn(framePapers, paper)) return paper as FramePaper;
  throw new PatternError('arguments', {
    message: 'A photo frame is printed on A4 or US letter',
    remedy: 'Write --paper a4 or --paper letter.',
  });
}

function countOf(text: string): number {
  const count = Number(text);
  if (Number.isInteger(count) && count >= fewest && count <= sheetsInFrame) return count;
  throw new PatternError('arguments', {
    message: `A photo frame has ${fewest} to ${sheetsInFrame} sheets`,
    remedy: `Write --sheets ${fewest} to --sheets ${sheetsInFrame}.`,
  });
}
