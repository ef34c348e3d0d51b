import type { PatternError } from '@paperhinge/geometry';
import { refusal } from '../tellings.js';
import { english } from '../words/english.js';
import type { PaperWords } from '../words/page-words.js';

/** A sheet of paper, mm, upright. */
export interface Paper {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  /** Paper off a roll: as long as is needed; `height` is the most there is. */
  readonly roll?: true;
}

const inch = 25.4;
/** mm: what a copy shop's plotter feeds in one go. */
const longestRoll = 15_000;

/** ISO 216; the American sizes are exact in inches (612 × 792 pt and so on). */
export const papers: Readonly<Record<string, Paper>> = Object.fromEntries([
  ...(
    [
      ['a4', 210, 297],
      ['a3', 297, 420],
      ['a2', 420, 594],
      ['a1', 594, 841],
      ['a0', 841, 1189],
      ['letter', 8.5 * inch, 11 * inch],
      ['legal', 8.5 * inch, 14 * inch],
      ['tabloid', 11 * inch, 17 * inch],
      ['arch-e', 36 * inch, 48 * inch],
    ] as const
  ).map(([name, width, height]) => [name, { name, width, height }]),
  ...([24, 36, 42] as const).map(width => [
    `roll-${width}`,
    { name: `roll-${width}`, width: width * inch, height: longestRoll, roll: true },
  ]),
]);

/** mm: smaller sheets hold no test square, larger ones no printer feeds. */
const smallest = 90;
const largest = 100_000;
/** mm: the least that a page shows, with the usual margins round it. */
const smallestUsual = 140;

/**
 * A paper by its name ("a4", "Letter") or a size of one's own.
 * @throws PatternError `unknown-paper`; `paper-size` for a size that no printer has
 */
export function paperOf(paper: string | { readonly width: number; readonly height: number }): Paper {
  if (typeof paper !== 'string') {
    if (typeof paper !== 'object' || paper === null) throw unknownPaper('');
    const { width, height } = paper;
    if (![width, height].every(s => s >= smallest && s <= largest))
      throw refusal('paper-size', {
        widthMm: width,
        heightMm: height,
        leastMm: smallestUsual,
        mostMm: largest,
      });
    return { name: `${width}x${height}`, width, height };
  }
  const found = papers[paper.toLowerCase()];
  if (found && Object.hasOwn(papers, paper.toLowerCase())) return found;
  throw unknownPaper(paper);
}

const unknownPaper = (paper: string): PatternError =>
  refusal('unknown-paper', { paper, papers: Object.keys(papers) });

/** mm: papers at least this wide and high are sheets for a copy shop. */
const largeSheet = 500;

/** Whether a paper comes from a copy shop: nothing is glued, so length of paper is what is saved. */
export const isLarge = ({ width, height }: Paper): boolean => Math.min(width, height) >= largeSheet;

/** "A4", "US letter", "36 in roll": the name a maker asks for in a shop. */
export function paperName(name: string, words: PaperWords = english.paper): string {
  if (/^a\d$/.test(name)) return name.toUpperCase();
  if (name.startsWith('roll-')) return words.roll(name.slice(5));
  return ['letter', 'legal', 'tabloid'].includes(name) ? words.us(name) : name;
}
