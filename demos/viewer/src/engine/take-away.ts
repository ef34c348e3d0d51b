import { cautionsFor } from '@paperhinge/alter';
import type { Printed } from '@paperhinge/print';
import { pageOptions, type Run, runSheet } from '@paperhinge/sheet';
import type { PagesPicture } from './pictures.js';
import type { File, TakeAway } from './questions.js';
import type { Worked } from './work.js';

const text = new TextEncoder();

const runOf = ({ sheet, pattern, readFindings, words }: Worked): Run =>
  runSheet(sheet, pattern, { readFindings, words });

/** What report and pages tell beside the pattern, in the reader's language and unit. */
const toldOf = ({ sheet, words, language }: Worked, run: Run) => ({
  before: run.before,
  record: run.record,
  cautions: cautionsFor({ pattern: run.altered, wearer: sheet.wearer, derived: run.derived }).map(
    words.sentence,
  ),
  language,
  unit: words.unit,
});

/** The file that was asked for; printing is loaded once it is asked for. */
export async function fileFor({ take, paper }: TakeAway, worked: Worked): Promise<File> {
  const { sheet, before } = worked;
  const run = runOf(worked);
  const named = (sheet.title ?? before.name).toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-');
  if (take === 'svg') return { name: `${named}.svg`, type: 'image/svg+xml', bytes: text.encode(run.svg) };
  if (take === 'record')
    return {
      name: `${named}.json`,
      type: 'application/json',
      bytes: text.encode(JSON.stringify(run.record, null, 2)),
    };
  if (take === 'dxf') {
    const { patternDxf } = await import('@paperhinge/print/dxf');
    return { name: `${named}.dxf`, type: 'image/vnd.dxf', bytes: text.encode(patternDxf(run.altered)) };
  }
  if (take === 'report') {
    const { reportHtml } = await import('@paperhinge/print');
    const html = reportHtml({ pattern: run.altered, ...toldOf(worked, run) });
    return { name: `${named}.html`, type: 'text/html', bytes: text.encode(html) };
  }
  const chosen = paper ?? 'a4';
  const { pdf } = await printed(chosen, worked, run);
  return { name: `${named}-${chosen}.pdf`, type: 'application/pdf', bytes: pdf };
}

async function printed(paper: string, worked: Worked, run: Run): Promise<Printed> {
  const { printPattern } = await import('@paperhinge/print');
  return printPattern(run.altered, { ...pageOptions(worked.sheet.print, paper), ...toldOf(worked, run) });
}

/** The pages of a paper as they will come out, for a picture of them. */
export async function pagesOf(paper: string, worked: Worked): Promise<PagesPicture> {
  const { pages, findings } = await printed(paper, worked, runOf(worked));
  return {
    paper,
    pages: pages.pages.map(({ kind, label = '', windowMm }) => ({ kind, label, window: windowMm })),
    pieces: pages.pieces.map(({ piece, matrix }) => ({ piece, matrix })),
    findings: findings.map(worked.words.finding),
  };
}
