import { type Run, runSheet } from '@paperhinge/sheet';
import { commandSaying, type Words } from '@paperhinge/sheet/words';
import type { PagesPicture } from './pictures.js';
import type { File, TakeAway } from './questions.js';
import type { Tell } from './tell.js';
import type { Worked } from './work.js';

const text = new TextEncoder();

const runOf = ({ sheet, pattern, readFindings, words }: Worked): Run =>
  runSheet(sheet, pattern, { readFindings, words });

/** The file that was asked for, as the command writes it, for who reads here; printing is loaded once it is asked for. */
export async function fileFor(
  { take, paper = 'a4' }: Pick<TakeAway, 'take' | 'paper'>,
  worked: Worked,
  tell: Tell = () => undefined,
): Promise<File> {
  const { sheet, before } = worked;
  const named = (sheet.title ?? before.name).toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-');
  const file = (ending: string, type: string, content: string | Uint8Array): File => ({
    name: `${named}${ending}`,
    type,
    bytes: typeof content === 'string' ? text.encode(content) : content,
  });
  switch (take) {
    case 'svg':
      return file('.svg', 'image/svg+xml', runOf(worked).svg);
    case 'dxf': {
      const { patternDxf } = await import('@paperhinge/print/dxf');
      return file('.dxf', 'image/vnd.dxf', patternDxf(runOf(worked).altered));
    }
    case 'report':
      return file('.html', 'text/html', (await jobOf(worked, tell)).report);
    case 'record':
      return file(
        '.json',
        'application/json',
        `${JSON.stringify((await jobOf(worked, tell)).record, null, 2)}\n`,
      );
    case 'pdf':
      return file(`-${paper}.pdf`, 'application/pdf', (await printed(paper, worked, tell)).pages.pdf);
  }
}

/** The whole job of the sheet, its pages laid out too: report and record tell what was found on them. */
async function jobOf({ sheet, pattern, readFindings, words, language }: Worked, tell: Tell) {
  const { doJob } = await import('./job.js');
  return doJob(sheet, pattern, {
    readFindings,
    reader: { language, unit: words.unit },
    onPaper: paper => tell(layingOut(paper, words)),
  });
}

const layingOut = (paper: string, { sentence }: Words): string =>
  sentence(commandSaying('laying-out', { on: [paper.replace(/^[a-z]\d$/, name => name.toUpperCase())] }));

async function printed(paper: string, worked: Worked, tell: Tell = () => undefined) {
  tell(layingOut(paper, worked.words));
  const { jobTold, printedOn } = await import('./job.js');
  const run = runOf(worked);
  return printedOn(paper, run, jobTold(run, worked.words, worked.language));
}

/** The pages of a paper as they will come out, for a picture of them. */
export async function pagesOf(paper: string, worked: Worked): Promise<PagesPicture> {
  const { pages, findings } = await printed(paper, worked);
  return {
    paper,
    pages: pages.pages.pages.map(({ kind, label = '', windowMm }) => ({ kind, label, window: windowMm })),
    pieces: pages.pages.pieces.map(({ piece, matrix }) => ({ piece, matrix })),
    findings: findings.map(worked.words.finding),
  };
}
