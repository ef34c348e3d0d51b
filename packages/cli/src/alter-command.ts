import { readdir } from 'node:fs/promises';
import { cautionsFor, runSheet } from '@paperhinge/alter';
import { PatternError } from '@paperhinge/geometry';
import { printPattern, reportHtml } from '@paperhinge/print';
import { codeFor } from './exit-codes.js';
import { fonts } from './fonts.js';
import type { Io } from './io.js';
import { loadPatternOf, loadSheet, patternPath } from './load.js';
import { progress } from './progress.js';
import { summary } from './summary.js';
import { checkOutputs, type Output, writeOutputs } from './write-outputs.js';

/** `paperhinge alter SHEET -o DIR`. @returns the exit code @throws PatternError, SheetFaults */
export async function alterCommand(
  sheetPath: string,
  { output: folder, json = false }: { readonly output: string; readonly json?: boolean },
  io: Io,
): Promise<number> {
  // A name left empty (a variable of a script, say) would be the folder one happens to stand in.
  if (folder.trim() === '')
    throw new PatternError('arguments', {
      message: 'the output folder has no name',
      remedy: 'Name it after -o; "." is this folder.',
    });
  const { say, end } = progress(io);
  try {
    say('Reading the sheet');
    const sheet = await loadSheet(sheetPath);
    const pages = sheet.print.paper.map(paper => `pages-${paper}.pdf`);
    const names = ['altered.svg', ...pages, 'report.html', 'record.json'];
    await checkOutputs(folder, names, [sheetPath, patternPath(sheet)]);
    say('Reading the pattern');
    const { pattern, findings } = await loadPatternOf(sheet);
    say('Altering');
    const run = runSheet(sheet, pattern, findings);
    const { altered, before, derived, record } = run;
    const cautions = cautionsFor({ pattern: altered, wearer: sheet.wearer, derived }).map(c => c.text);
    const printed = [];
    for (const paper of sheet.print.paper) {
      say(`Laying out the pages on ${paper}`);
      printed.push(await printPattern(altered, { paper, fonts, before, record, cautions }));
    }
    say('Writing');
    const recordText = `${JSON.stringify({ ...record, pages: printed.map(p => p.pages) }, null, 2)}\n`;
    const contents: readonly Output['content'][] = [
      run.svg,
      ...printed.map(p => p.pdf),
      reportHtml({ pattern: altered, before, record, cautions }),
      recordText,
    ];
    await writeOutputs(
      folder,
      names.map((name, i) => ({ name, content: contents[i]! })),
    );
    end();
    io.stdout(json ? recordText : summary(run, folder, names, await otherPages(folder, pages)));
    return codeFor(run.findings);
  } finally {
    end();
  }
}

/** Pages that stand in the folder and were not written now: an earlier run's, not to be cut from by mistake. */
const otherPages = async (folder: string, written: readonly string[]): Promise<readonly string[]> =>
  (await readdir(folder)).filter(name => /^pages-.*\.pdf$/.test(name) && !written.includes(name)).sort();
