import { basename, extname } from 'node:path';
import { type Finding, type Pattern, PatternError } from '@paperhinge/geometry';
import {
  dxfBlocks,
  dxfLayers,
  type Ground,
  type PagesJson,
  patternDxf,
  printPattern,
  projectorSheet,
} from '@paperhinge/print';
import { type PrintWishes, readPrintWishes } from '@paperhinge/sheet';
import { fonts } from './fonts.js';
import { type PageArguments, pageOptions, paperWord, printArguments } from './page-options.js';
import type { Output } from './write-outputs.js';

/** What files for a maker hold, and what is said of them. */
export interface PutOut {
  readonly files: readonly Output[];
  readonly json: unknown;
  /** "9 pages of a4" */
  readonly words: string;
  readonly findings?: readonly Finding[];
}

/** A way to put a pattern out: the files it writes, what is said while it is done, and the work. */
export interface WayOut {
  readonly names: readonly string[];
  readonly doing: string;
  put(pattern: Pattern, before?: Pattern): Promise<PutOut>;
}

export interface Asked extends PageArguments {
  readonly output: string;
  readonly projector?: Ground;
  /** A pattern to ghost under this one. */
  readonly before?: string;
}

/**
 * The way that the arguments ask for: the interchange file if the output ends in .dxf, one sheet for a projector, else
 * pages of paper.
 * @throws PatternError `arguments` if they ask for two things at once; SheetFaults what a page cannot be
 */
export function wayOut(asked: Asked): WayOut {
  const { output, paper, projector } = asked;
  const name = basename(output);
  if (extname(output).toLowerCase() !== '.dxf')
    return projector
      ? onProjector(projector, name)
      : onPaper(readPrintWishes(printArguments(asked)), name, asked.before !== undefined);
  if (paper === undefined && projector === undefined) return interchange(name);
  throw new PatternError('arguments', {
    message: 'A DXF file has neither paper nor projector',
    remedy: 'Leave out --paper and --projector, or give an output that ends in .pdf.',
  });
}

function onPaper(wishes: PrintWishes, name: string, showBefore: boolean): WayOut {
  const papers = wishes.paper.map(paper => ({ paper, word: paperWord(paper) }));
  const stem = name.slice(0, name.length - extname(name).length) || name;
  // One paper keeps the name that was asked for; several are told apart by theirs.
  const named = (word: string) => (papers.length === 1 ? stem : `${stem}-${word}`);
  const pdfOf = (word: string) => (papers.length === 1 ? name : `${named(word)}${extname(name) || '.pdf'}`);
  const drawn = wishes['large sheet'] ?? false;
  return {
    names: papers.flatMap(({ word }) => [pdfOf(word), ...(drawn ? [`${named(word)}.svg`] : [])]),
    doing: `Laying out the pages on ${papers.map(p => p.word).join(', ')}`,
    async put(pattern, before) {
      const printed = await Promise.all(
        papers.map(async ({ paper, word }) => ({
          word,
          ...(await printPattern(pattern, {
            ...pageOptions(wishes, paper),
            ...(before ? { before, showBefore } : {}),
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
        words: printed
          .map(
            ({ word, pages: { pages } }) =>
              `${pages.length} ${pages.length === 1 ? 'page' : 'pages'} of ${word}`,
          )
          .join(', '),
        findings: printed
          .flatMap(p => p.findings)
          .filter((f, i, all) => all.findIndex(g => JSON.stringify(g) === JSON.stringify(f)) === i),
      };
    },
  };
}

const onProjector = (ground: Ground, name: string): WayOut => ({
  names: [name],
  doing: 'Laying out the sheet',
  async put(pattern) {
    const { pdf, pages } = await projectorSheet(pattern, { ground, fonts });
    return {
      files: [{ name, content: pdf }],
      json: pages,
      words: `1 page of ${sizeWords(pages)} for a projector`,
    };
  },
});

const sizeWords = ({ paperMm }: PagesJson): string => `${paperMm.map(s => Math.round(s)).join(' × ')} mm`;

const interchange = (name: string): WayOut => ({
  names: [name],
  doing: 'Flattening the lines',
  async put(pattern) {
    const pieces = dxfBlocks(pattern);
    return {
      files: [{ name, content: patternDxf(pattern) }],
      json: { interchange: 'dxf', unit: 'mm', layers: dxfLayers, pieces },
      words: `${pieces.length} ${pieces.length === 1 ? 'piece' : 'pieces'}`,
    };
  },
});
