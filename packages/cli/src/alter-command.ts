import { readdir } from 'node:fs/promises';
import { cautionsFor } from '@paperhinge/alter';
import { PatternError, type ToldFinding } from '@paperhinge/geometry';
import { printPattern, reportHtml } from '@paperhinge/print';
import { runSheet } from '@paperhinge/sheet';
import { codeFor } from './exit-codes.js';
import { fonts } from './fonts.js';
import type { Io } from './io.js';
import { inFile, loadPatternOf, loadSheet, patternPath } from './load.js';
import { pageOptions, paperWord } from './page-options.js';
import { progress } from './progress.js';
import { summary } from './summary.js';
import { wordsIn } from './words.js';
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
    const { print } = sheet;
    const words = print.paper.map(paperWord);
    const pages = words.map(word => `pages-${word}.pdf`);
    const drawn = print['large sheet'] ? words.map(word => `sheet-${word}.svg`) : [];
    const names = ['altered.svg', ...pages, ...drawn, 'report.html', 'record.json'];
    await checkOutputs(folder, names, [sheetPath, patternPath(sheet)]);
    say('Reading the pattern');
    const { pattern, findings: onReading } = await loadPatternOf(sheet);
    say('Altering');
    const run = runSheet(sheet, pattern, { readFindings: onReading });
    const { altered, before, derived, record } = run;
    const cautions = cautionsFor({ pattern: altered, wearer: sheet.wearer, derived }).map(
      wordsIn(altered.unit).sentence,
    );
    const printed = [];
    for (const paper of print.paper) {
      say(`Laying out the pages on ${paperWord(paper)}`);
      const options = { ...pageOptions(print, paper), fonts, before, record, cautions };
      printed.push(await inFile(sheetPath, () => printPattern(altered, options)));
    }
    const findings = withPages(
      record.findings,
      printed.flatMap(p => p.findings.map(wordsIn(altered.unit).finding)),
    );
    const told = { ...record, findings };
    say('Writing');
    const recordText = `${JSON.stringify({ ...told, pages: printed.map(p => p.pages) }, null, 2)}\n`;
    const contents: readonly Output['content'][] = [
      run.svg,
      ...printed.map(p => p.pdf),
      ...(print['large sheet'] ? printed.map(p => p.sheetSvg()) : []),
      reportHtml({
        pattern: altered,
        before,
        record: told,
        cautions,
        ...(print.initials === undefined ? {} : { wearer: print.initials }),
        ...(print.date === undefined ? {} : { date: print.date }),
      }),
      recordText,
    ];
    await writeOutputs(
      folder,
      names.map((name, i) => ({ name, content: contents[i]! })),
    );
    end();
    io.stdout(
      json ? recordText : summary({ ...run, record: told }, folder, names, await otherPages(folder, pages)),
    );
    return codeFor(findings);
  } finally {
    end();
  }
}

/** What the pages found beside what is known; the same about the same piece once. */
function withPages(known: readonly ToldFinding[], pages: readonly ToldFinding[]): readonly ToldFinding[] {
  const said = (f: ToldFinding) => `${f.code} ${f.where.piece} ${f.where.edge} ${f.message}`;
  const have = new Set(known.map(said));
  const fresh = pages.filter((f, i) => !have.has(said(f)) && pages.findIndex(g => said(g) === said(f)) === i);
  return [...known, ...fresh];
}

/** Pages that stand in the folder and were not written now: an earlier run's, not to be cut from by mistake. */
const otherPages = async (folder: string, written: readonly string[]): Promise<readonly string[]> =>
  (await readdir(folder)).filter(name => /^pages-.*\.pdf$/.test(name) && !written.includes(name)).sort();
