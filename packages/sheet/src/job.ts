import { type AnyVerb, cautionsFor } from '@paperhinge/alter';
import {
  type Finding,
  type LengthUnit,
  type Pattern,
  PatternError,
  type ToldFinding,
} from '@paperhinge/geometry';
import { requireWhole } from '@paperhinge/geometry/internal';
import { locating } from '@paperhinge/geometry/sayings';
import {
  type PagesJson,
  type PrintOptions,
  printPattern,
  type ReportSource,
  reportHtml,
} from '@paperhinge/print';
import { clothFindings, layCloths } from '@paperhinge/print/cloth';
import { type ClothJson, clothJson } from './cloth-json.js';
import { pageOptions, paperWord } from './page-options.js';
import type { SheetPaper } from './print-wishes.js';
import type { RecordJson } from './record.js';
import { requireSheet } from './require-sheet.js';
import { type Run, runSheet } from './run-sheet.js';
import type { Sheet } from './sheet.js';
import { catalogueOf, type Language } from './words/languages.js';
import { type Words, wordsOf } from './words/words.js';

/** What a job may be told beside the sheet and its pattern. */
export interface JobWishes {
  /** What was found on reading the pattern. */
  readonly readFindings?: readonly Finding[];
  /** Without, a carried font that has the Latin letters. */
  readonly fonts?: PrintOptions['fonts'];
  /** Those the sheet was read with; absent = all there are. */
  readonly verbs?: readonly AnyVerb[];
  /** Who reads what is written; absent = the sheet's language, and its unit or else the pattern's. */
  readonly reader?: { readonly language: Language; readonly unit: LengthUnit };
  /** Called before the pages of each paper are laid out. */
  readonly onPaper?: (paper: string) => void;
}

/** What report and pages tell beside the altered pattern: whatever makes either gathers it here, that both say the same. */
export type JobTold = Required<Pick<ReportSource, 'before' | 'cloth' | 'cautions' | 'language' | 'unit'>> & {
  readonly record: RecordJson;
};

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
  const { language, unit } = wishes.reader ?? {
    language: sheet.language,
    unit: sheet.places.unit ? sheet.unit : pattern.unit,
  };
  const words = wordsOf(await catalogueOf(language), unit);
  const { readFindings = [], verbs, fonts, onPaper } = wishes;
  const run = runSheet(sheet, pattern, { readFindings, words, ...(verbs ? { verbs } : {}) });
  const told = jobTold(run, words, language);
  const printed: PrintedOn[] = [];
  for (const paper of sheet.print.paper) {
    onPaper?.(paperWord(paper));
    printed.push(await printedOn(paper, run, told, fonts));
  }
  const { record, cloth, cautions } = told;
  const pageFindings = printed.flatMap(p => p.findings);
  const findings = withPages(record.findings, [...clothFindings(cloth), ...pageFindings].map(words.finding));
  const pages = printed.map(p => p.pages);
  const whole = { ...record, findings, cloth: cloth.map(clothJson), pages: pages.map(p => p.pages) };
  const { initials, date } = sheet.print;
  const report = reportHtml({
    pattern: run.altered,
    ...told,
    record: whole,
    ...(initials === undefined ? {} : { wearer: initials }),
    ...(date === undefined ? {} : { date }),
  });
  return { run, words, cautions, pages, findings, report, record: whole };
}

/**
 * Gathers what report and pages tell of a run.
 * @throws PatternError what a piece's cutting line refuses
 */
export function jobTold(run: Run, words: Words, language: Language): JobTold {
  const { sheet, altered, before, derived, record } = run;
  return {
    before,
    record,
    cautions: cautionsFor({ pattern: altered, wearer: sheet.wearer, derived }).map(words.sentence),
    cloth: layCloths(altered),
    language,
    unit: words.unit,
  };
}

/** The pages of one paper, and what was found on laying them out. */
export interface PrintedOn {
  readonly pages: JobPages;
  readonly findings: readonly Finding[];
}

/**
 * Lays out the pages of one paper as the sheet wishes them.
 * @throws PatternError whatever `printPattern` refuses
 */
export async function printedOn(
  paper: SheetPaper,
  { sheet, altered }: Run,
  told: JobTold,
  fonts?: PrintOptions['fonts'],
): Promise<PrintedOn> {
  const options = { ...pageOptions(sheet.print, paper), ...told, ...(fonts ? { fonts } : {}) };
  const printed = await inFile(sheet.file, () => printPattern(altered, options));
  return {
    pages: {
      paper: paperWord(paper),
      pdf: printed.pdf,
      pages: printed.pages,
      ...(sheet.print['large sheet'] ? { sheetSvg: printed.sheetSvg() } : {}),
    },
    findings: printed.findings,
  };
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
