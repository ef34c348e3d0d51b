import type { Layer, PrintOptions } from '@paperhinge/print';
import type { Hideable, PrintArguments, PrintWishes, SheetPaper } from '@paperhinge/sheet';

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

/** The words a file or a line of text has for a paper: "a4", "600x900". */
export const paperWord = (paper: SheetPaper): string =>
  typeof paper === 'string' ? paper : `${paper.width}x${paper.height}`;

type Present<T> = { [K in keyof T]?: Exclude<T[K], undefined> };
const present = <T extends object>(fields: T): Present<T> =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as Present<T>;

/** The options of `paperhinge print` about pages, as commander gives them. */
export interface PageArguments {
  readonly paper?: string;
  readonly orientation?: string;
  readonly margins?: string;
  readonly overlap?: string;
  readonly edgeToEdge?: boolean;
  readonly arrange?: string;
  readonly turn?: string;
  readonly measured?: string;
  readonly grid?: boolean;
  readonly tint?: boolean;
  readonly notches?: string;
  readonly hide?: string;
  readonly largeSheet?: boolean;
  readonly date?: string;
  readonly initials?: string;
}

/** As the fields of a sheet's `print` mapping: lists are parted by commas, words of a choice may be joined by hyphens. */
export function printArguments(given: PageArguments): PrintArguments {
  const list = (text: string | undefined) =>
    text?.includes(',') ? text.split(',').map(part => part.trim()) : text;
  const words = (text: string | undefined) => text?.replaceAll('-', ' ');
  return present({
    paper: list(given.paper ?? 'a4'),
    orientation: given.orientation,
    margins: list(given.margins),
    overlap: given.edgeToEdge ? 'edge to edge' : given.overlap,
    arrange: words(given.arrange),
    turn: given.turn,
    measured: list(given.measured),
    grid: given.grid,
    tint: given.tint,
    notches: given.notches,
    hide: list(words(given.hide)),
    'large sheet': given.largeSheet,
    date: given.date,
    initials: given.initials,
  }) as PrintArguments;
}
