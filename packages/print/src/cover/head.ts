import { at } from '@paperhinge/geometry';
import type { TypeMeasure } from '../drawing/ink.js';
import type { PageFormat } from '../pages/format.js';
import { paperName } from '../pages/papers.js';
import type { Page } from '../pages/plan.js';
import type { ReportSource } from '../report/source.js';
import { factsOf, titleOf } from '../report/written.js';
import type { Reader } from '../words/reader.js';
import { rulerInks, squaresSlab, squaresWidth } from './scale-check.js';
import { beside, body, type Slab, space, stacked, textSlab } from './stack.js';

/** mm: a narrower cover sets squares and advice, map and list below one another. */
export const roomForTwo = 150;

export interface Head {
  readonly source: ReportSource;
  readonly format: PageFormat;
  readonly pages: readonly Page[];
  /** Pages that the pieces' area alone would fill. */
  readonly leastPages: number;
  readonly reader: Reader;
}

/** Title, facts, the test squares with what to do about them, and a ruler. */
export function headSlabs(head: Head, width: number, measure: TypeMeasure): readonly Slab[] {
  const { source, format, pages, leastPages, reader } = head;
  const { words } = reader;
  const tiles = pages.filter(p => p.kind === 'tile');
  const blank = tiles.filter(p => p.blank).length;
  const count =
    pages.length === 1
      ? words.cover.oneSheet
      : words.cover.pages(pages.length, tiles.length, leastPages, blank);
  const facts = [...factsOf(source), `${paperName(format.paper.name, words.paper)}, ${count}`].join(' · ');
  const squares = squaresSlab(measure, words.cover);
  const side = width - squaresWidth - 6;
  return [
    textSlab(measure, titleOf(source), { width, size: 9, weight: 'bold', most: 2 }),
    textSlab(measure, facts, { width, size: body.size }),
    space(4),
    ...(width >= roomForTwo
      ? [beside([0, squares], [squaresWidth + 6, advice(head, side, measure)])]
      : [squares, space(2), advice(head, width, measure)]),
    space(3),
    { height: 10, draw: (x, y) => rulerInks(measure, at(x + 0.2, y + 5), at(1, 0), width - 2) },
  ];
}

function advice({ format, pages, reader }: Head, width: number, measure: TypeMeasure): Slab {
  const { field, stretch } = format;
  const words = reader.words.cover;
  const tiles = pages.filter(p => p.kind === 'tile');
  const several = pages.length > 1;
  const corrected = stretch.across !== 1 || stretch.down !== 1;
  const joined = tiles.some(t => t.neighbours.right || t.neighbours.below);
  const said = [
    words.printFirst(several),
    words.measureSquare(several),
    corrected
      ? words.corrected(reader.percent(stretch.across), reader.percent(stretch.down))
      : words.notQuite,
    ...(joined ? [field.overlap > 0 ? words.joinOverlapping : words.joinEdgeToEdge] : []),
    ...(tiles.some(t => t.blank) ? [words.blanks] : []),
    ...(tiles.length > 1 ? [words.onePiece] : []),
  ];
  return stacked(
    textSlab(measure, words.checkScale, { width, size: 4.3, weight: 'bold' }),
    space(1),
    ...said.map(text => stacked(textSlab(measure, text, { width, size: 2.9 }), space(0.9))),
  );
}
