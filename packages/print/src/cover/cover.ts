import { at } from '@paperhinge/geometry';
import type { Drawing, TypeMeasure } from '../drawing/ink.js';
import { tidy } from '../drawing/widths.js';
import type { PageFormat } from '../pages/format.js';
import type { Page } from '../pages/plan.js';
import type { ReportSource } from '../report/source.js';
import { factsOf, makersSections, titleOf } from '../report/written.js';
import { type MapPiece, mapSlab } from './page-map.js';
import { rulerInks, squaresSlab, squaresWidth } from './scale-check.js';
import { beside, body, dealt, type Slab, space, stacked, textSlab } from './stack.js';
import { sectionSlabs } from './written-slabs.js';

export interface CoverInput {
  readonly source: ReportSource;
  readonly format: PageFormat;
  readonly pages: readonly Page[];
  readonly pieces: readonly (MapPiece & { readonly piece: string })[];
  /** Which pages a piece is on, in words. */
  readonly pagesOf: (piece: string) => string;
}

/** mm at the right of the first page for the upright ruler. */
const rulerRoom = 13;

/** The cover pages, each in its window's coordinates: scale check and map first, then what the maker works by. */
export function coverPages(input: CoverInput, measure: TypeMeasure): readonly Drawing[] {
  const {
    format: { field },
    source,
  } = input;
  const first = field.width - rulerRoom;
  const sections = makersSections(source, input.pagesOf);
  const [cutting, ...rest] = sections;
  const mapWidth = first * 0.46,
    listWidth = first * 0.5;
  const list = cutting ? stacked(...sectionSlabs(measure, cutting, listWidth)) : space(0);
  const map = stacked(
    space(3.4),
    headed(measure, 'Page map', mapWidth),
    mapSlab(measure, input.pages, field.overlap, input.pieces, mapWidth, mapHeight(field.height)),
  );
  const sideBySide = list.height <= mapHeight(field.height) + 12;
  const slabs: readonly Slab[] = [
    ...headSlabs(input, first, measure),
    ...(sideBySide
      ? [beside([0, map], [first - listWidth, list])]
      : [map, ...(cutting ? sectionSlabs(measure, cutting, first) : [])]),
    ...rest.flatMap(s => sectionSlabs(measure, s, first)),
  ];
  return dealt(slabs, field.height).map((page, i): Drawing => {
    const stack = stacked(...page);
    const ruler = i === 0 ? rulerInks(measure, at(field.width - 5, 4), at(0, 1), field.height - 8) : [];
    return { inks: [...stack.draw(0, 0), ...ruler] };
  });
}

const mapHeight = (height: number): number => Math.min(height * 0.36, 100);

const headed = (measure: TypeMeasure, title: string, width: number): Slab =>
  stacked(textSlab(measure, title, { width, size: 4.3, weight: 'bold' }), space(1.6));

function headSlabs(
  { source, format, pages }: CoverInput,
  width: number,
  measure: TypeMeasure,
): readonly Slab[] {
  const { paper, stretch, field } = format;
  const facts = factsOf(source);
  const tiles = pages.filter(p => p.kind === 'tile').length;
  const corrected = stretch.across !== 1 || stretch.down !== 1;
  const advice = stacked(
    textSlab(measure, 'Check the scale first', {
      width: width - squaresWidth - 6,
      size: 4.3,
      weight: 'bold',
    }),
    space(1),
    ...[
      'Print this page alone, at 100 % (“actual size”): no fitting to the page.',
      'Measure both sides of a square. Only if they are right, print the rest; else no piece will fit.',
      corrected
        ? `The printer is corrected: ${tidy(stretch.across * 100, 2)} % across, ${tidy(stretch.down * 100, 2)} % down. The squares must now be right.`
        : 'Off by a little, and the printer has no setting for it? Print again with what the square measured, across and down, and the pages come out true.',
      field.overlap > 0
        ? 'Cut each page on its left and upper edge, lay it over its neighbour’s strip to the dotted line; the diamonds close and carry one name.'
        : 'Cut each page on its edge and lay them edge to edge; the diamonds close and carry one name.',
    ].map(text =>
      stacked(textSlab(measure, text, { width: width - squaresWidth - 6, size: 2.9 }), space(0.9)),
    ),
  );
  const ruler: Slab = {
    height: 10,
    draw: (x, y) => rulerInks(measure, at(x + 0.2, y + 5), at(1, 0), width - 2),
  };
  return [
    textSlab(measure, titleOf(source), { width, size: 9, weight: 'bold', most: 2 }),
    textSlab(
      measure,
      [...facts, `${paperName(paper.name)}, ${pages.length} pages: ${tiles} to join`].join(' · '),
      { width, size: body.size },
    ),
    space(4),
    beside([0, squaresSlab(measure)], [squaresWidth + 6, advice]),
    space(3),
    ruler,
  ];
}

/** "A4", "US letter": the name a maker asks for in a shop. */
export function paperName(name: string): string {
  if (/^a\d$/.test(name)) return name.toUpperCase();
  return ['letter', 'legal', 'tabloid'].includes(name) ? `US ${name}` : name;
}
