import { at } from '@paperhinge/geometry';
import type { TypeMeasure } from '../drawing/ink.js';
import { tidy } from '../drawing/widths.js';
import type { PageFormat } from '../pages/format.js';
import { paperName } from '../pages/papers.js';
import type { Page } from '../pages/plan.js';
import type { ReportSource } from '../report/source.js';
import { factsOf, titleOf } from '../report/written.js';
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
}

/** Title, facts, the test squares with what to do about them, and a ruler. */
export function headSlabs(
  { source, format, pages, leastPages }: Head,
  width: number,
  measure: TypeMeasure,
): readonly Slab[] {
  const tiles = pages.filter(p => p.kind === 'tile').length;
  const count =
    pages.length === 1
      ? 'one sheet'
      : `${pages.length} pages: ${tiles} to join (the pieces’ area alone would fill ${leastPages})`;
  const facts = [...factsOf(source), `${paperName(format.paper.name)}, ${count}`].join(' · ');
  const squares = squaresSlab(measure);
  const side = width - squaresWidth - 6;
  return [
    textSlab(measure, titleOf(source), { width, size: 9, weight: 'bold', most: 2 }),
    textSlab(measure, facts, { width, size: body.size }),
    space(4),
    ...(width >= roomForTwo
      ? [beside([0, squares], [squaresWidth + 6, advice(format, pages.length, tiles, side, measure)])]
      : [squares, space(2), advice(format, pages.length, tiles, width, measure)]),
    space(3),
    { height: 10, draw: (x, y) => rulerInks(measure, at(x + 0.2, y + 5), at(1, 0), width - 2) },
  ];
}

function advice(
  { field, stretch }: PageFormat,
  pages: number,
  tiles: number,
  width: number,
  measure: TypeMeasure,
): Slab {
  const corrected = stretch.across !== 1 || stretch.down !== 1;
  const said = [
    pages > 1
      ? 'Print page 1, this one, alone first, at 100 % (“actual size”): no fitting to the page.'
      : 'Have it printed at 100 % (“actual size”): no fitting to the page.',
    pages > 1
      ? 'Measure both sides of a square. Only if they are right, print the rest; else no piece will fit.'
      : 'Measure both sides of a square before you cut. If they are not right, no piece will fit.',
    corrected
      ? `The printer is corrected: ${tidy(stretch.across * 100, 2)} % across, ${tidy(stretch.down * 100, 2)} % down. The squares must now be right.`
      : 'Off by a little, and the printer has no setting for it? Print again with what the square measured, across and down, and the pages come out true.',
    ...(tiles > 1
      ? [howToJoin(field.overlap), 'One piece only? Print the pages that the cutting list names beside it.']
      : []),
  ];
  return stacked(
    textSlab(measure, 'Check the scale first', { width, size: 4.3, weight: 'bold' }),
    space(1),
    ...said.map(text => stacked(textSlab(measure, text, { width, size: 2.9 }), space(0.9))),
  );
}

const howToJoin = (overlap: number): string =>
  overlap > 0
    ? 'Cut each page on its left and upper edge, lay it over its neighbour’s strip to the dotted line; the diamonds close and carry one name.'
    : 'Cut each page on its edge and lay them edge to edge; the diamonds close and carry one name.';
