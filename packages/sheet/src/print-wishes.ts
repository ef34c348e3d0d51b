import { type LengthUnit, PatternError, parseLength } from '@paperhinge/geometry';
import { z } from 'zod';
import type { Tree } from './document.js';
import { refuse } from './faults.js';
import * as field from './fields.js';
import { faultsOf } from './issues.js';

const { mapping, tell } = field;

/** Papers by name; the first two are printed unless the sheet says otherwise. */
export const papers = [
  'a4',
  'letter',
  'a3',
  'a2',
  'a1',
  'a0',
  'legal',
  'tabloid',
  'arch-e',
  'roll-24',
  'roll-36',
  'roll-42',
] as const;
/** A paper by name, or a size of one's own in mm. */
export type SheetPaper = (typeof papers)[number] | { readonly width: number; readonly height: number };
const usualPapers: SheetPaper[] = ['a4', 'letter'];

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

/** The fields of a sheet's `print` mapping. */
export const printFields = (unit: LengthUnit) =>
  mapping({
    paper: field
      .oneOrMore(paper(unit))
      .transform(list => list.filter((p, i) => list.findIndex(q => same(p, q)) === i))
      .default(usualPapers),
    orientation: z.enum(['portrait', 'landscape', 'auto']).exactOptional(),
    margins: margins(unit).exactOptional(),
    overlap: overlap(unit).exactOptional(),
    arrange: z
      .enum(['fewest pages', 'reading order', 'own pages'])
      .transform(words => words.replace(' ', '-') as 'fewest-pages' | 'reading-order' | 'own-pages')
      .exactOptional(),
    turn: z.enum(['none', 'half', 'quarter', 'any']).exactOptional(),
    measured: measured(unit).exactOptional(),
    before: field.yesOrNo.exactOptional(),
    grid: field.yesOrNo.exactOptional(),
    tint: field.yesOrNo.exactOptional(),
    notches: z.enum(['inwards', 'outwards', 'snips']).exactOptional(),
    hide: field.oneOrMore(z.enum(hideable)).exactOptional(),
    'large sheet': field.yesOrNo.exactOptional(),
    date: field.name.exactOptional(),
    initials: field.name.exactOptional(),
  });
/** What a sheet asks of its pages. Lengths in mm. */
export type PrintWishes = z.output<ReturnType<typeof printFields>>;
export const usualPrint: { readonly paper: SheetPaper[] } = { paper: usualPapers };

const same = (a: SheetPaper, b: SheetPaper): boolean => JSON.stringify(a) === JSON.stringify(b);

/** "a4", or a size: "600 x 900 mm", "24 × 36 in". */
function paper(unit: LengthUnit) {
  const own = z.string().transform((text, context): SheetPaper => {
    const [first = '', second = '', ...rest] = text.split(/[x×]/i).map(part => part.trim());
    const sign = /[a-z"″]+\.?$/i.exec(second)?.[0] ?? '';
    const sides = rest.length > 0 ? [] : [/[a-z"″]$/i.test(first) ? first : `${first} ${sign}`, second];
    const [width, height] = sides.map(side => lengthOf(side, unit));
    if (width === undefined || height === undefined) return tell(context, 'paper-not-understood');
    return { width, height };
  });
  const isOwn = (value: unknown) => typeof value === 'string' && /^\s*\d/.test(value);
  return field.byForm(isOwn, own, z.enum(papers), {
    anyOf: [{ enum: papers }, { type: 'string', description: 'A size of your own: 600 x 900 mm.' }],
  });
}

/** One length, or four: top, right, bottom, left. */
function margins(unit: LengthUnit) {
  const sides = ['top', 'right', 'bottom', 'left'] as const;
  return z
    .unknown()
    .meta({
      anyOf: [
        { type: ['number', 'string'] },
        { type: 'array', minItems: 4, maxItems: 4, description: 'Top, right, bottom, left.' },
      ],
    })
    .transform((value, context) => {
      const list = Array.isArray(value) ? value : [value];
      const mm = list.map(side => lengthOf(side, unit));
      if ((mm.length !== 1 && mm.length !== 4) || mm.some(m => m === undefined))
        return tell(context, 'margins-not-understood');
      return mm.length === 1
        ? mm[0]!
        : (Object.fromEntries(sides.map((s, i) => [s, mm[i]!])) as Record<(typeof sides)[number], number>);
    });
}

/** How far pages lie over one another; 0 or "edge to edge": they are cut and laid edge to edge. */
const overlap = (unit: LengthUnit) =>
  field.byForm(
    value => value === 'edge to edge',
    z.literal('edge to edge').transform(() => 0),
    field.length(unit),
    {
      anyOf: [{ type: 'number' }, { type: 'string', description: '15 mm, or edge to edge.' }],
    },
  );

/** mm: the sides of the two test squares, 50 mm and 2 in. */
const [square, inchSquare] = [50, 50.8];

/**
 * What the printed square measured, across and down: the 50 mm square, or the 2 in square where it is told in inches.
 * Always given as what the 50 mm square would have measured.
 */
const measured = (unit: LengthUnit) =>
  z
    .unknown()
    .meta({
      type: 'array',
      minItems: 2,
      maxItems: 2,
      description: 'Across and down, of the 50 mm square; in inches, of the 2 in square.',
    })
    .transform((value, context) => {
      const sides = Array.isArray(value) ? value : [];
      const [across, down] = sides.map(side => {
        const mm = lengthOf(side, unit);
        const inInches = typeof side === 'string' && /in|"|″/.test(side);
        return mm === undefined
          ? undefined
          : inInches || (unit === 'in' && !/[a-z]/i.test(String(side)))
            ? (mm * square) / inchSquare
            : mm;
      });
      if (sides.length !== 2 || across === undefined || down === undefined)
        return tell(context, 'square-not-understood');
      return { across, down };
    });

function lengthOf(value: unknown, unit: LengthUnit): number | undefined {
  if (typeof value !== 'string' && typeof value !== 'number') return undefined;
  try {
    return parseLength(value, unit);
  } catch (error) {
    if (error instanceof PatternError) return undefined;
    throw error;
  }
}

/** What may be said of the pages outside of a sheet, by the names of its fields. */
export type PrintArguments = Readonly<Record<string, string | boolean | readonly string[]>>;

/**
 * The wishes for the pages as a command line gives them, in mm unless a unit is written.
 * @throws SheetFaults what no field can take
 */
export function readPrintWishes(given: PrintArguments): PrintWishes {
  const read = printFields('mm').safeParse(given);
  if (read.success) return read.data;
  const place = { line: 1, column: 1 };
  const scalar = (value: string | boolean): Tree => ({ kind: 'scalar', place, value });
  const tree: Tree = {
    kind: 'mapping',
    place,
    entries: new Map(
      Object.entries(given).map(([key, value]) => [
        key,
        {
          place,
          value:
            typeof value === 'object' ? { kind: 'list', place, items: value.map(scalar) } : scalar(value),
        },
      ]),
    ),
  };
  const faults = faultsOf(read.error.issues, tree, {});
  refuse(faults.map(({ code: of, message, remedy }) => new PatternError(of, { message, remedy })));
  return read.data!;
}
