import { cautionsFor } from '@paperhinge/alter';
import { pageOptions, runSheet } from '@paperhinge/sheet';
import type { File, PagesPicture, TakeAway } from './view.js';
import type { Worked } from './work.js';

const text = new TextEncoder();

/** The file that was asked for, in the reader's language and unit; printing is loaded once it is asked for. */
export async function fileFor({ take, paper }: TakeAway, worked: Worked): Promise<File> {
  const { sheet, before, readFindings, words, language } = worked;
  const run = runSheet(sheet, before, { readFindings, words });
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
  const { printPattern, reportHtml } = await import('@paperhinge/print');
  const cautions = cautionsFor({ pattern: run.altered, wearer: sheet.wearer, derived: run.derived });
  const told = {
    before: run.before,
    record: run.record,
    cautions: cautions.map(words.sentence),
    language,
    unit: words.unit,
  };
  if (take === 'report')
    return {
      name: `${named}.html`,
      type: 'text/html',
      bytes: text.encode(reportHtml({ pattern: run.altered, ...told })),
    };
  const chosen = paper ?? sheet.print.paper[0] ?? 'a4';
  const { pdf } = await printPattern(run.altered, { ...pageOptions(sheet.print, chosen), ...told });
  return { name: `${named}-${chosen}.pdf`, type: 'application/pdf', bytes: pdf };
}

/** The pages of a paper as they will come out, for a picture of them. */
export async function pagesOf(paper: string, worked: Worked): Promise<PagesPicture> {
  const { sheet, before, states, language, words } = worked;
  const { printPattern } = await import('@paperhinge/print');
  const options = { ...pageOptions(sheet.print, paper), before, language, unit: words.unit };
  const { pages, findings } = await printPattern(states.at(-1)!.pattern, options);
  return {
    paper,
    pages: pages.pages.map(({ kind, label = '', windowMm }) => ({ kind, label, window: windowMm })),
    pieces: pages.pieces.map(({ piece, matrix }) => ({ piece, matrix })),
    findings: findings.map(words.finding),
  };
}
