import type { Finding, Pattern, Point } from '@paperhinge/geometry';
import type { Box } from '@paperhinge/geometry/curves';
import { requireWhole } from '@paperhinge/geometry/internal';
import { locating } from '@paperhinge/geometry/sayings';
import { grainFindings } from '../pages/findings.js';
import { refusal } from '../tellings.js';
import { decimal, type Group, place, textEntity, written } from './entities.js';
import { colours, layerOf } from './layers.js';
import { type PieceBlock, pieceBlock } from './piece-block.js';
import { blockNames, dxfText, sizeText } from './text.js';

/**
 * A pattern as a file of the trade's open interchange standard: DXF R12 in ASCII, laid out as in ASTM D6673. One
 * style a file, a block for each piece with an insert of it, lengths in mm, the boundary's curves as polylines within 0.01 mm, others within 0.05 mm. Layers:
 * boundary 1, turn points 2, curve points 3, notches 4, mirror line 6, grain 7, internal lines 8, drill holes 13,
 * stitching lines 14, annotation 15. Seams and stretch have no place in the standard and stay in the pattern SVG.
 *
 * Blocks are in the pieces' own millimetres (y turned over). Inserts stand at the origin, so the pieces lie as drawn,
 * unless some would lie over one another: then they stand in a row.
 * @throws PatternError `nothing-to-print`; what a piece's cutting line refuses, naming the piece
 */
export function patternDxf(pattern: Pattern): string {
  requireWhole(pattern);
  if (pattern.pieces.length === 0) throw refusal('nothing-to-print', {});
  const names = blockNames(pattern.pieces.map(p => p.name));
  const blocks = pattern.pieces.map(piece =>
    locating({ piece: piece.name }, () => pieceBlock(piece, pattern)),
  );
  const shifts = shiftsOf(blocks.map(b => b.box));
  const box = around(blocks.map((b, i) => moved(b.box, shifts[i]!)));
  return written([
    ...header(box),
    ...tables,
    ...section(
      'BLOCKS',
      blocks.flatMap((block, i) => blockGroups(names[i]!, block)),
    ),
    ...section('ENTITIES', [
      ...names.flatMap((name, i) => insert(name, shifts[i]!)),
      ...styleText(pattern, { x: box.min.x, y: box.max.y + 40 }),
    ]),
    [0, 'EOF'],
  ]);
}

/** What the file lacks as a cutter needs it: a piece without a grain line lies as it happens to. */
export function dxfFindings(pattern: Pattern): readonly Finding[] {
  requireWhole(pattern);
  return grainFindings(pattern);
}

/** Which block holds which piece. */
export function dxfBlocks(pattern: Pattern): readonly { readonly piece: string; readonly block: string }[] {
  requireWhole(pattern);
  const pieces = pattern.pieces.map(p => p.name);
  const blocks = blockNames(pieces);
  return pieces.map((piece, i) => ({ piece, block: blocks[i]! }));
}

const section = (name: string, groups: readonly Group[]): readonly Group[] => [
  [0, 'SECTION'],
  [2, name],
  ...groups,
  [0, 'ENDSEC'],
];

/** `$INSUNITS` is younger than R12, which skips it; the programs of today ask it what a unit is. */
const millimetres = 4;

const header = ({ min, max }: Box): readonly Group[] => {
  const lowest = { x: min.x, y: max.y },
    highest = { x: max.x, y: min.y };
  return section('HEADER', [
    [9, '$ACADVER'],
    [1, 'AC1009'],
    [9, '$INSUNITS'],
    [70, millimetres],
    [9, '$EXTMIN'],
    ...place(lowest),
    [9, '$EXTMAX'],
    ...place(highest),
  ]);
};

const table = (name: string, entries: readonly (readonly Group[])[]): readonly Group[] => [
  [0, 'TABLE'],
  [2, name],
  [70, entries.length],
  ...entries.flat(),
  [0, 'ENDTAB'],
];

const tables = section('TABLES', [
  ...table('LTYPE', [
    [
      [0, 'LTYPE'],
      [2, 'CONTINUOUS'],
      [70, 0],
      [3, 'Solid line'],
      [72, 65],
      [73, 0],
      [40, decimal(0)],
    ],
  ]),
  ...table(
    'LAYER',
    [['0', 7] as const, ...colours].map(([layer, colour]): readonly Group[] => [
      [0, 'LAYER'],
      [2, layer],
      [70, 0],
      [62, colour],
      [6, 'CONTINUOUS'],
    ]),
  ),
  ...table('STYLE', [
    [
      [0, 'STYLE'],
      [2, 'STANDARD'],
      [70, 0],
      [40, decimal(0)],
      [41, decimal(1)],
      [50, decimal(0)],
      [71, 0],
      [42, decimal(3)],
      [3, 'txt'],
      [4, ''],
    ],
  ]),
]);

const blockGroups = (name: string, { groups }: PieceBlock): readonly Group[] => [
  [0, 'BLOCK'],
  [8, layerOf.boundary],
  [2, name],
  [70, 0],
  ...place({ x: 0, y: 0 }),
  [3, name],
  ...groups,
  [0, 'ENDBLK'],
  [8, layerOf.boundary],
];

const insert = (name: string, at: Point): readonly Group[] => [
  [0, 'INSERT'],
  [8, layerOf.boundary],
  [2, name],
  ...place(at),
];

/** What the standard says of the style as a whole [memory]. Patterns here are of one size, made to measure. */
const styleText = (pattern: Pattern, at: Point): readonly Group[] =>
  [
    `Style Name: ${pattern.name}`,
    'ANSI/AAMA Version: ASTM D6673',
    'Author: paperhinge',
    `Sample Size: ${sizeText(pattern)}`,
    'Units: METRIC',
  ].flatMap((line, i) => textEntity(layerOf.boundary, dxfText(line), { x: at.x, y: at.y + 8 * i }, 5));

/** mm between pieces in a row. */
const gap = 20;

/** Where each block is inserted: nowhere moved if none overlap, else side by side with their tops in line. */
function shiftsOf(boxes: readonly Box[]): readonly Point[] {
  const clear = boxes.every((a, i) => boxes.slice(i + 1).every(b => !overlap(a, b)));
  let x = 0;
  return boxes.map(({ min, max }) => {
    if (clear) return { x: 0, y: 0 };
    const shift = { x: x - min.x, y: -min.y };
    x += max.x - min.x + gap;
    return shift;
  });
}

const overlap = (a: Box, b: Box): boolean =>
  a.min.x < b.max.x && b.min.x < a.max.x && a.min.y < b.max.y && b.min.y < a.max.y;
const moved = ({ min, max }: Box, by: Point): Box => ({
  min: { x: min.x + by.x, y: min.y + by.y },
  max: { x: max.x + by.x, y: max.y + by.y },
});
const around = (boxes: readonly Box[]): Box => ({
  min: { x: Math.min(...boxes.map(b => b.min.x)), y: Math.min(...boxes.map(b => b.min.y)) },
  max: { x: Math.max(...boxes.map(b => b.max.x)), y: Math.max(...boxes.map(b => b.max.y)) },
});
