import { type AnyVerb, cautionsFor } from '@paperhinge/alter';
import { type Finding, type Pattern, PatternError, type ToldFinding } from '@paperhinge/geometry';
import { requireWhole } from '@paperhinge/geometry/internal';
import { locating } from '@paperhinge/geometry/sayings';
import { type PagesJson, type PrintOptions, printPattern, reportHtml } from '@paperhinge/print';
import { clothFindings, layCloths } from '@paperhinge/print/cloth';
import { type ClothJson, clothJson } from './cloth-json.js';
import { pageOptions, paperWord } from './page-options.js';
import type { RecordJson } from './record.js';
import { requireSheet } from './require-sheet.js';
import { type Run, runSheet } from './run-sheet.js';
import type { Sheet } from './sheet.js';
import { catalogueOf } from './words/languages.js';
import { type Words, wordsOf } from './words/words.js';

/** What a job may be told beside the sheet and its pattern. */
export interface JobWishes {
  /** What was found on reading the pattern. */
  readonly readFindings?: readonly Finding[];
  /** Without, a carried font that has the Latin letters. */
  readonly fonts?: PrintOptions['fonts'];
  /** Those the sheet was read with; absent = all there are. */
  readonly verbs?: readonly AnyVerb[];
  /** Called before the pages of each paper are laid out. */
  readonly onPaper?: (paper: string) => void;
}

/** The pages of one paper. */
export interface JobPages {
  /** "a4", "600x900". */
  readonly paper: string;
  readonly pdf: Uint8Array;
  readonly pages: PagesJson;
  /** The large sheet as a drawing, if the sheet asks for it. */
  readonly sheetSvg?: string;
}

/** All that a sheet is done for. */
export interface Job {
  readonly run: Run;
  readonly words: Words;
  readonly cautions: readonly string[];
  readonly pages: readonly JobPages[];
  /** Of the run and of the pages, in words. */
  readonly findings: readonly ToldFinding[];
  /** The report as a page for a browser. */
  readonly report: string;
  /** `record.json`. */
  readonly record: RecordJson & {
    readonly cloth: readonly ClothJson[];
    readonly pages: readonly PagesJson[];
  };
}

/**
 * Does the whole job of a sheet: alters the pattern, lays out its pages, writes report and record, in the sheet's
 * language. Reads and writes no files; same input, same output.
 *
 * @throws SheetFaults, PatternError whatever keeps it from being done, as `runSheet` and `printPattern` throw
 */
export async function doJob(sheet: Sheet, pattern: Pattern, wishes: JobWishes = {}): Promise<Job> {
  requireWhole(pattern);
  requireSheet(sheet);
  const unit = sheet.places.unit ? sheet.unit : pattern.unit;
  const words = wordsOf(await catalogueOf(sheet.language), unit);
  const { readFindings = [], verbs, fonts, onPaper } = wishes;
  const run = runSheet(sheet, pattern, { readFindings, words, ...(verbs ? { verbs } : {}) });
  const { altered, before, derived, record } = run;
  const cautions = cautionsFor({ pattern: altered, wearer: sheet.wearer, derived }).map(words.sentence);
  const { language } = sheet;
  const cloth = layCloths(altered);
  const told = { before, record, cautions, cloth, language, unit, ...(fonts ? { fonts } : {}) };
  const pages: JobPages[] = [];
  const pageFindings: Finding[] = [];
  for (const paper of sheet.print.paper) {
    onPaper?.(paperWord(paper));
    const printed = await inFile(sheet.file, () =>
      printPattern(altered, { ...pageOptions(sheet.print, paper), ...told }),
    );
    pageFindings.push(...printed.findings);
    pages.push({
      paper: paperWord(paper),
      pdf: printed.pdf,
      pages: printed.pages,
      ...(sheet.print['large sheet'] ? { sheetSvg: printed.sheetSvg() } : {}),
    });
  }
  const findings = withPages(record.findings, [...clothFindings(cloth), ...pageFindings].map(words.finding));
  const whole = { ...record, findings, cloth: cloth.map(clothJson), pages: pages.map(p => p.pages) };
  const { initials, date } = sheet.print;
  const report = reportHtml({
    pattern: altered,
    before,
    record: whole,
    cautions,
    cloth,
    language,
    unit,
    ...(initials === undefined ? {} : { wearer: initials }),
    ...(date === undefined ? {} : { date }),
  });
  return { run, words, cautions, pages, findings, report, record: whole };
}

/** What the pages found beside what is known; the same about the same piece once. */
function withPages(known: readonly ToldFinding[], pages: readonly ToldFinding[]): readonly ToldFinding[] {
  const said = (f: ToldFinding) => `${f.code} ${f.where.piece} ${f.where.edge} ${f.message}`;
  const have = new Set(known.map(said));
  const fresh = pages.filter((f, i) => !have.has(said(f)) && pages.findIndex(g => said(g) === said(f)) === i);
  return [...known, ...fresh];
}

async function inFile<T>(file: string, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    if (!(error instanceof PatternError)) throw error;
    return locating({ file }, () => {
      throw error;
    });
  }
}
