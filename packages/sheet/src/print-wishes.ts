import { PatternError, parseLength } from '@paperhinge/geometry';
import { papers as paperSizes } from '@paperhinge/print';
import type { Tree } from './document.js';
import { refuse } from './faults.js';
import { length } from './fields/figures.js';
import { type At, type Kind, type Reading, tell } from './fields/kind.js';
import { choice, name, yesOrNo } from './fields/names.js';
import { byForm, mapping, oneOrMore, optional, type Read, turnedInto, usually } from './fields/shapes.js';

/** A paper by name, or a size of one's own in mm. */
export type SheetPaper = string | { readonly width: number; readonly height: number };
const usualPapers: readonly SheetPaper[] = ['a4', 'letter'];

/** What of the pages may be off when the file is opened. */
export const hideable = [
  'cutting lines',
  'stitching lines',
  'marks',
  'names',
  'before',
  'joining',
  'grid',
  'tint',
] as const;
/** A layer that may be off when the pages are opened. */
export type Hideable = (typeof hideable)[number];

/** "a4", "A4", or a size: "600 x 900 mm", "24 × 36 in". */
const ownPaper: Kind<SheetPaper> = {
  schema: { type: 'string', description: 'A size of your own: 600 x 900 mm.' },
  read: (tree, at) => {
    const text = tree.kind === 'scalar' ? String(tree.value) : '';
    const [first = '', second = '', ...rest] = text.split(/[x×]/i).map(part => part.trim());
    const sign = /[a-z"″]+\.?$/i.exec(second)?.[0] ?? '';
    const sides = rest.length > 0 ? [] : [/[a-z"″]$/i.test(first) ? first : `${first} ${sign}`, second];
    const [width, height] = sides.map(side => lengthOf(side, at));
    return width === undefined || height === undefined
      ? tell(at, 'paper-not-understood', {})
      : { width, height };
  },
};
const namedPaper: Kind<SheetPaper> = {
  schema: { enum: Object.keys(paperSizes) },
  read: (tree, at) => {
    const word = tree.kind === 'scalar' && typeof tree.value === 'string' ? tree.value.toLowerCase() : tree;
    const known = typeof word === 'string' && Object.hasOwn(paperSizes, word) ? word : undefined;
    return known ?? choice(Object.keys(paperSizes)).read(tree, at);
  },
};
const isOwn = (tree: Tree): boolean =>
  tree.kind === 'scalar' && typeof tree.value === 'string' && /^\s*\d/.test(tree.value);
const paper = byForm(isOwn, ownPaper, namedPaper);

const sides = ['top', 'right', 'bottom', 'left'] as const;
type Margins = number | Readonly<Record<(typeof sides)[number], number>>;

/** One length, or four: top, right, bottom, left. */
const margins: Kind<Margins> = {
  schema: {
    anyOf: [
      { type: ['number', 'string'] },
      { type: 'array', minItems: 4, maxItems: 4, description: 'Top, right, bottom, left.' },
    ],
  },
  read: (tree, at) => {
    const mm = (tree.kind === 'list' ? tree.items : [tree]).map(item => lengthIn(item, at));
    if ((mm.length !== 1 && mm.length !== 4) || mm.some(m => m === undefined))
      return tell(at, 'margins-not-understood', {});
    return mm.length === 1
      ? mm[0]
      : (Object.fromEntries(sides.map((side, i) => [side, mm[i]])) as Exclude<Margins, number>);
  },
};

/** How far pages lie over one another; 0 or "edge to edge": they are cut and laid edge to edge. */
const overlap: Kind<number> = byForm(
  tree => tree.kind === 'scalar' && tree.value === 'edge to edge',
  turnedInto(choice(['edge to edge']), () => 0),
  length(),
);

/** mm: the sides of the two test squares, 50 mm and 2 in. */
const [square, inchSquare] = [50, 50.8];

/**
 * What the printed square measured, across and down: the 50 mm square, or the 2 in square where it is told in inches.
 * Always given as what the 50 mm square would have measured.
 */
const measured: Kind<{ readonly across: number; readonly down: number }> = {
  schema: {
    type: 'array',
    minItems: 2,
    maxItems: 2,
    description: 'Across and down, of the 50 mm square; in inches, of the 2 in square.',
  },
  read: (tree, at) => {
    const items = tree.kind === 'list' ? tree.items : [];
    const [across, down] = items.map(item => {
      const mm = lengthIn(item, at);
      const text = item.kind === 'scalar' ? String(item.value) : '';
      const inInches = /in|"|″/.test(text) || (at.reading.unit === 'in' && !/[a-z]/i.test(text));
      return mm !== undefined && inInches ? (mm * square) / inchSquare : mm;
    });
    return items.length === 2 && across !== undefined && down !== undefined
      ? { across, down }
      : tell(at, 'square-not-understood', {});
  },
};

const lengthIn = (tree: Tree, at: At): number | undefined =>
  tree.kind === 'scalar' && (typeof tree.value === 'string' || typeof tree.value === 'number')
    ? lengthOf(tree.value, at)
    : undefined;

function lengthOf(value: string | number, { reading }: At): number | undefined {
  try {
    return parseLength(value, reading.unit);
  } catch (error) {
    if (error instanceof PatternError) return undefined;
    throw error;
  }
}

/** As the printing library names them. */
const arrangements = {
  'fewest pages': 'fewest-pages',
  'reading order': 'reading-order',
  'own pages': 'own-pages',
} as const;

const fields = {
  paper: usually(
    turnedInto(oneOrMore(paper), list => list.filter((p, i) => list.findIndex(q => same(p, q)) === i)),
    usualPapers,
  ),
  orientation: optional(choice(['portrait', 'landscape', 'auto'])),
  margins: optional(margins),
  overlap: optional(overlap),
  arrange: optional(
    turnedInto(choice(Object.keys(arrangements) as (keyof typeof arrangements)[]), how => arrangements[how]),
  ),
  turn: optional(choice(['none', 'half', 'quarter', 'any'])),
  measured: optional(measured),
  before: optional(yesOrNo),
  grid: optional(yesOrNo),
  tint: optional(yesOrNo),
  notches: optional(choice(['inwards', 'outwards', 'snips'])),
  hide: optional(oneOrMore(choice(hideable))),
  'large sheet': optional(yesOrNo),
  date: optional(name),
  initials: optional(name),
};
const same = (a: SheetPaper, b: SheetPaper): boolean => JSON.stringify(a) === JSON.stringify(b);

/** What a sheet asks of its pages. Lengths in mm. */
export type PrintWishes = Read<typeof fields>;
/** The fields of a sheet's `print` mapping. */
export const printKind: Kind<PrintWishes> = mapping(fields);
export const usualPrint: PrintWishes = { paper: usualPapers };

/** What may be said of the pages outside of a sheet, by the names of its fields. */
export type PrintArguments = Readonly<Record<string, string | boolean | readonly string[]>>;

/**
 * The wishes for the pages as a command line gives them, in mm unless a unit is written.
 * @throws SheetFaults what no field can take
 */
export function readPrintWishes(given: PrintArguments): PrintWishes {
  const reading: Reading = { unit: 'mm', where: {}, faults: [] };
  const place = { line: 1, column: 1 };
  const scalar = (value: string | boolean): Tree => ({ kind: 'scalar', place, value });
  const entries = Object.entries(given).map(([key, value]) => {
    const tree: Tree =
      typeof value === 'object' ? { kind: 'list', place, items: value.map(scalar) } : scalar(value);
    return [key, { place, value: tree }] as const;
  });
  const tree: Tree = { kind: 'mapping', place, entries: new Map(entries) };
  const wishes = printKind.read(tree, { reading, of: {}, place });
  refuse(reading.faults.map(withoutPlace));
  return wishes!;
}

/** Arguments stand on no line. */
const withoutPlace = ({ code, facts }: PatternError): PatternError => new PatternError(code, { facts });
