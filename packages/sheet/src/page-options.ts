import type { Layer, PrintOptions } from '@paperhinge/print';
import type { Hideable, PrintWishes, SheetPaper } from './print-wishes.js';

const layerOf: Readonly<Record<Hideable, Layer>> = {
  'cutting lines': 'Cutting lines',
  'stitching lines': 'Stitching lines and darts',
  marks: 'Grain, levels and marks',
  names: 'Names and notes',
  before: 'Before the alteration',
  joining: 'Joining the pages',
  grid: 'Fine grid',
  tint: 'Tint',
};

/** What a maker wishes of the pages, as the printing library takes it. */
export function pageOptions(wishes: PrintWishes, paper: SheetPaper): Omit<PrintOptions, 'fonts' | 'before'> {
  const { orientation, margins, overlap, arrange, turn, measured, before, grid, tint, notches } = wishes;
  const { hide, date, initials } = wishes;
  const given = {
    orientation,
    margins,
    overlap,
    arrangement: arrange,
    turning: turn,
    printed: measured,
    showBefore: before,
    grid,
    tint,
    notches,
    hidden: hide?.map(h => layerOf[h]),
    date,
    wearer: initials,
  };
  return { paper, ...present(given) };
}

/** The word that a file or a line of text has for a paper: "a4", "600x900". */
export const paperWord = (paper: SheetPaper): string =>
  typeof paper === 'string' ? paper : `${paper.width}x${paper.height}`;

type Present<T> = { [K in keyof T]?: Exclude<T[K], undefined> };
const present = <T extends object>(fields: T): Present<T> =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as Present<T>;
