import { basename, dirname, join } from 'node:path';
import { checkedSquare, type FramePaper, framePapers, sheetsInFrame } from '@paperhinge/geometry/trace';
import { photoFrame } from '@paperhinge/print';
import { commandSaying, type Language } from '@paperhinge/sheet/words';
import { done } from './exit-codes.js';
import { fileToWrite } from './file-to-write.js';
import { fonts } from './fonts.js';
import type { Io } from './io.js';
import { wordsFor } from './speech.js';
import { spokenIn } from './told.js';
import { checkOutputs, writeOutputs } from './write-outputs.js';

interface FrameOptions {
  readonly output: string;
  readonly paper?: string;
  readonly sheets?: string;
  readonly json?: boolean;
  readonly language?: Language;
}

/** `paperhinge print --photo-frame -o FILE.pdf`. @returns the exit code @throws PatternError */
export const photoFrameCommand = (options: FrameOptions, io: Io): Promise<number> =>
  spokenIn({ language: options.language ?? 'en', unit: 'mm' }, async () => {
    const { json = false, language } = options;
    const output = fileToWrite(options.output, 'frame');
    const paper = (options.paper ?? 'a4').toLowerCase() as FramePaper,
      sheets = Number(options.sheets ?? sheetsInFrame);
    const folder = dirname(output),
      name = basename(output);
    await checkOutputs(folder, [name], []);
    const content = await photoFrame({ paper, sheets, fonts, ...(language ? { language } : {}) });
    await writeOutputs(folder, [{ name, content }]);
    const { width, height } = framePapers[paper];
    const told = { paper, paperMm: [width, height], testSquareMm: checkedSquare, sheets };
    const { sentence } = await wordsFor({ ...(language ? { language } : {}) });
    const what = [commandSaying('frame-printed', { sheets, paper })];
    const said = sentence(commandSaying('in-files', { what, files: [join(folder, name)] }));
    io.stdout(json ? `${JSON.stringify(told, null, 2)}\n` : `${said}\n`);
    return done;
  });
