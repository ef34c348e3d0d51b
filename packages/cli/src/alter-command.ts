import { readdir } from 'node:fs/promises';
import { extname } from 'node:path';
import { doJob, type Job, paperWord, type Sheet } from '@paperhinge/sheet';
import { commandRefusal, commandSaying } from '@paperhinge/sheet/words';
import { codeFor } from './exit-codes.js';
import { fonts } from './fonts.js';
import type { Io } from './io.js';
import { loadPatternOf, loadSheet, patternPath } from './load.js';
import { progress } from './progress.js';
import { wordsFor } from './speech.js';
import { summary } from './summary.js';
import { spokenIn } from './told.js';
import { checkOutputs, type Output, writeOutputs } from './write-outputs.js';

interface AlterOptions {
  readonly output: string;
  readonly json?: boolean;
}

/** `paperhinge alter SHEET -o DIR`. @returns the exit code @throws PatternError, SheetFaults */
export async function alterCommand(path: string, options: AlterOptions, io: Io): Promise<number> {
  refuseFileName(options.output);
  const sheet = await loadSheet(path);
  return spokenIn(sheet, () => altered(sheet, options, io));
}

async function altered(
  sheet: Sheet,
  { output: folder, json = false }: AlterOptions,
  io: Io,
): Promise<number> {
  const names = fileNames(sheet);
  const { sentence } = await wordsFor(sheet);
  const { say, end } = progress(io);
  try {
    await checkOutputs(folder, names.all, inputsOf(sheet));
    say(sentence(commandSaying('reading-pattern', {})));
    const { pattern, findings: readFindings } = await loadPatternOf(sheet);
    say(sentence(commandSaying('altering', {})));
    const job = await doJob(sheet, pattern, {
      readFindings,
      fonts,
      onPaper: paper => say(sentence(commandSaying('laying-out', { on: [paper] }))),
    });
    say(sentence(commandSaying('writing', {})));
    const record = `${JSON.stringify(job.record, null, 2)}\n`;
    await writeOutputs(folder, outputsOf(job, names, record));
    end();
    const earlier = await otherPages(folder, names.pages);
    io.stdout(json ? record : summary(job, folder, names.all, earlier));
    return codeFor(job.findings);
  } finally {
    end();
  }
}

/** The sheet, those that it includes, and its pattern. */
const inputsOf = (sheet: Sheet): readonly string[] => {
  const { file, stepPlaces } = sheet;
  const paths = [file, ...stepPlaces.map(place => place.file), patternPath(sheet)];
  return [...new Set(paths.filter(path => path !== undefined))];
};

/** A name left empty (a variable of a script, say) would be the folder one happens to stand in. */
function refuseFileName(folder: string): void {
  if (folder.trim() === '') throw commandRefusal('folder-unnamed', {});
  const ending = extname(folder).toLowerCase();
  if (fileEndings.has(ending)) throw commandRefusal('folder-named-as-file', { ending });
}
const fileEndings: ReadonlySet<string> = new Set(['.pdf', '.svg', '.png', '.jpg', '.html', '.json', '.dxf']);

interface FileNames {
  readonly pages: readonly string[];
  readonly sheets: readonly string[];
  readonly all: readonly string[];
}

function fileNames({ print }: Sheet): FileNames {
  const words = print.paper.map(paperWord);
  const pages = words.map(word => `pages-${word}.pdf`);
  const sheets = print['large sheet'] ? words.map(word => `sheet-${word}.svg`) : [];
  return { pages, sheets, all: ['altered.svg', ...pages, ...sheets, 'report.html', 'record.json'] };
}

/** In the order in which they land: the record last, so that what it tells of is there before it. */
const outputsOf = ({ run, pages, report }: Job, names: FileNames, record: string): readonly Output[] => [
  { name: 'altered.svg', content: run.svg },
  ...pages.map(({ pdf }, i) => ({ name: names.pages[i]!, content: pdf })),
  ...pages.flatMap(({ sheetSvg }, i) =>
    sheetSvg === undefined ? [] : [{ name: names.sheets[i]!, content: sheetSvg }],
  ),
  { name: 'report.html', content: report },
  { name: 'record.json', content: record },
];

/** Pages that stand in the folder and were not written now: an earlier run's, not to be cut from by mistake. */
const otherPages = async (folder: string, written: readonly string[]): Promise<readonly string[]> =>
  (await readdir(folder)).filter(name => /^pages-.*\.pdf$/.test(name) && !written.includes(name)).sort();
