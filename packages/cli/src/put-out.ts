import { extname } from 'node:path';
import { type Pattern, PatternError } from '@paperhinge/geometry';
import {
  dxfBlocks,
  dxfLayers,
  type Ground,
  type PagesJson,
  patternDxf,
  printPattern,
  projectorSheet,
} from '@paperhinge/print';
import { fonts } from './fonts.js';

/** What a file for a maker holds, and what is said of it. */
export interface PutOut {
  readonly content: string | Uint8Array;
  readonly json: unknown;
  /** "9 pages of a4" */
  readonly words: string;
}

/** A way to put a pattern out: what is said while it is done, and the work. */
export interface WayOut {
  readonly doing: string;
  put(pattern: Pattern): Promise<PutOut>;
}

export interface Asked {
  readonly output: string;
  readonly paper?: string;
  readonly projector?: Ground;
}

/**
 * The way that the arguments ask for: the interchange file if the output ends in .dxf, one sheet for a projector, else
 * pages of paper.
 * @throws PatternError `arguments` if they ask for two things at once
 */
export function wayOut({ output, paper, projector }: Asked): WayOut {
  if (extname(output).toLowerCase() !== '.dxf')
    return projector ? onProjector(projector) : onPaper(paper ?? 'a4');
  if (paper === undefined && projector === undefined) return interchange;
  throw new PatternError('arguments', {
    message: 'A DXF file has neither paper nor projector',
    remedy: 'Leave out --paper and --projector, or give an output that ends in .pdf.',
  });
}

const onPaper = (paper: string): WayOut => ({
  doing: `Laying out the pages on ${paper}`,
  async put(pattern) {
    const { pdf, pages } = await printPattern(pattern, { paper, fonts });
    const count = pages.pages.length;
    return { content: pdf, json: pages, words: `${count} ${count === 1 ? 'page' : 'pages'} of ${paper}` };
  },
});

const onProjector = (ground: Ground): WayOut => ({
  doing: 'Laying out the sheet',
  async put(pattern) {
    const { pdf, pages } = await projectorSheet(pattern, { ground, fonts });
    return { content: pdf, json: pages, words: `1 page of ${sizeWords(pages)} for a projector` };
  },
});

const sizeWords = ({ paperMm }: PagesJson): string => `${paperMm.map(s => Math.round(s)).join(' × ')} mm`;

const interchange: WayOut = {
  doing: 'Flattening the lines',
  async put(pattern) {
    const pieces = dxfBlocks(pattern);
    return {
      content: patternDxf(pattern),
      json: { interchange: 'dxf', unit: 'mm', layers: dxfLayers, pieces },
      words: `${pieces.length} ${pieces.length === 1 ? 'piece' : 'pieces'}`,
    };
  },
};
