import { basename, extname } from 'node:path';
import type { Finding, Pattern, Saying } from '@paperhinge/geometry';
import { type Ground, printPattern, projectorSheet } from '@paperhinge/print';
import { dxfBlocks, dxfFindings, dxfLayers, patternDxf } from '@paperhinge/print/dxf';
import { type PrintWishes, pageOptions, paperWord, readPrintWishes } from '@paperhinge/sheet';
import { commandRefusal, commandSaying, type Language } from '@paperhinge/sheet/words';
import { fileToWrite } from './file-to-write.js';
import { fonts } from './fonts.js';
import { type PageArguments, printArguments } from './page-arguments.js';
import type { Output } from './write-outputs.js';

/** What files for a maker hold, and what is said of them. */
export interface PutOut {
  readonly files: readonly Output[];
  readonly json: unknown;
  /** "9 pages of a4" */
  readonly words: readonly Saying[];
  readonly findings?: readonly Finding[];
}

/** A way to put a pattern out: the files it writes, what is said while it is done, and the work. */
export interface WayOut {
  readonly names: readonly string[];
  readonly doing: Saying;
  put(pattern: Pattern, before?: Pattern): Promise<PutOut>;
}

export interface Asked extends PageArguments {
  /** What stands on the pages is in it; absent = English. */
  readonly language?: Language;
  readonly output: string;
  readonly projector?: Ground;
  readonly show?: 'opened-out' | 'mirrored';
  /** A pattern to ghost under this one. */
  readonly before?: string;
}

/**
 * The way that the arguments ask for: the interchange file if the output ends in .dxf, one sheet for a projector, else
 * pages of paper.
 * @throws PatternError `dxf-has-no-paper`, `output-of-another-kind`, `output-unnamed`; SheetFaults what a page cannot be
 */
export function wayOut(asked: Asked): WayOut {
  const { output, paper, projector } = asked;
  const name = basename(fileToWrite(output, 'pages'));
  if (extname(name).toLowerCase() !== '.dxf')
    return projector
      ? onProjector(projector, name, asked)
      : onPaper(readPrintWishes(printArguments(asked)), name, asked);
  if (paper === undefined && projector === undefined) return interchange(name);
  throw commandRefusal('dxf-has-no-paper', {});
}

function onPaper(wishes: PrintWishes, name: string, asked: Asked): WayOut {
  const showBefore = asked.before !== undefined;
  const language = asked.language === undefined ? {} : { language: asked.language };
  const papers = wishes.paper.map(paper => ({ paper, word: paperWord(paper) }));
  const stem = name.slice(0, name.length - extname(name).length) || name;
  // One paper keeps the name that was asked for; several are told apart by theirs.
  const named = (word: string) => (papers.length === 1 ? stem : `${stem}-${word}`);
  const pdfOf = (word: string) => (papers.length === 1 ? name : `${named(word)}${extname(name) || '.pdf'}`);
  const drawn = wishes['large sheet'] ?? false;
  return {
    names: papers.flatMap(({ word }) => [pdfOf(word), ...(drawn ? [`${named(word)}.svg`] : [])]),
    doing: commandSaying('laying-out', { on: papers.map(p => p.word) }),
    async put(pattern, before) {
      const printed = await Promise.all(
        papers.map(async ({ paper, word }) => ({
          word,
          ...(await printPattern(pattern, {
            ...pageOptions(wishes, paper),
            ...(before ? { before, showBefore } : {}),
            ...language,
            fonts,
          })),
        })),
      );
      return {
        files: printed.flatMap(({ word, pdf, sheetSvg }) => [
          { name: pdfOf(word), content: pdf },
          ...(drawn ? [{ name: `${named(word)}.svg`, content: sheetSvg() }] : []),
        ]),
        json: printed.length === 1 ? printed[0]!.pages : printed.map(p => p.pages),
        words: printed.map(({ word, pages: { pages } }) =>
          commandSaying('pages-of', { pages: pages.length, paper: word }),
        ),
        findings: printed
          .flatMap(p => p.findings)
          .filter((f, i, all) => all.findIndex(g => JSON.stringify(g) === JSON.stringify(f)) === i),
      };
    },
  };
}

const onProjector = (ground: Ground, name: string, { language, show }: Asked): WayOut => ({
  names: [name],
  doing: commandSaying('laying-out-one-sheet', {}),
  async put(pattern) {
    const { pdf, pages } = await projectorSheet(pattern, {
      ground,
      fonts,
      ...(show === undefined ? {} : { show: show === 'mirrored' ? show : 'opened out' }),
      ...(language === undefined ? {} : { language }),
    });
    return {
      files: [{ name, content: pdf }],
      json: pages,
      words: [commandSaying('projector-page', { widthMm: pages.paperMm[0], heightMm: pages.paperMm[1] })],
    };
  },
});

const interchange = (name: string): WayOut => ({
  names: [name],
  doing: commandSaying('flattening-lines', {}),
  async put(pattern) {
    const pieces = dxfBlocks(pattern);
    return {
      files: [{ name, content: patternDxf(pattern) }],
      json: { interchange: 'dxf', unit: 'mm', layers: dxfLayers, pieces },
      words: [commandSaying('pieces-written', { pieces: pieces.length })],
      findings: dxfFindings(pattern),
    };
  },
});
