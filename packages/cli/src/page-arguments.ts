import type { PrintArguments } from '@paperhinge/sheet';

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
