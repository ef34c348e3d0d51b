import { type Affine, apply } from '../../affine.js';
import type { Point } from '../../vector.js';
import { codeCells, codeSide, targetCount } from './target-code.js';

/** mm. Side of one cell: nine dots of a twelve-megapixel photograph of a floor of 1.2 m, seen from 35 degrees. */
export const targetCell = 4.5;
/** mm. Side of a target with its black border. */
export const targetSide = (codeSide + 2) * targetCell;
/** mm. Side of the square on each sheet that shows whether the printer kept the scale. */
export const checkedSquare = 50;

/** The papers a photo frame comes on, mm; the targets lie alike on both, about the middle. */
export const framePapers = {
  a4: { width: 210, height: 297 },
  letter: { width: 215.9, height: 279.4 },
} as const;
/** A paper that a photo frame is printed on. */
export type FramePaper = keyof typeof framePapers;
const paperNames: readonly FramePaper[] = ['a4', 'letter'];

/** Sheets in a whole frame. */
export const sheetsInFrame = 9;
const columns = [0, 51, 102, 153],
  rows = [0, 55, 110, 165, 220];
/** mm. The field of targets, whose middle is the middle of the paper; it keeps clear of every printer's margins. */
const field = { width: columns.at(-1)! + targetSide, height: rows.at(-1)! + targetSide };

/** Upper left corners of the targets on a sheet, mm from the middle of the paper; the middle is left for the square. */
export const targetPlaces: readonly Point[] = rows.flatMap((y, row) =>
  columns
    .filter((_, column) => !(row === 2 && (column === 1 || column === 2)))
    .map(x => ({ x: x - field.width / 2, y: y - field.height / 2 })),
);

/** One printed sheet of a frame: its paper and its number, from 1. */
export interface FrameSheet {
  readonly paper: FramePaper;
  readonly number: number;
}

/** The number of the code of a sheet's target. */
export const targetIndex = ({ paper, number }: FrameSheet, place: number): number =>
  (paperNames.indexOf(paper) * sheetsInFrame + number - 1) * targetPlaces.length + place;

/** The sheet and the place on it of a code. */
export function targetAt(index: number): { readonly sheet: FrameSheet; readonly place: number } {
  const sheet = Math.floor(index / targetPlaces.length);
  return {
    sheet: { paper: paperNames[Math.floor(sheet / sheetsInFrame)]!, number: (sheet % sheetsInFrame) + 1 },
    place: index % targetPlaces.length,
  };
}

/** Corners of a target on its sheet, clockwise from the upper left, mm from the middle of the paper. */
export function targetCorners(place: number): readonly [Point, Point, Point, Point] {
  const { x, y } = targetPlaces[place]!,
    s = targetSide;
  return [
    { x, y },
    { x: x + s, y },
    { x: x + s, y: y + s },
    { x, y: y + s },
  ];
}

/** Corners of the paper of a sheet that lies on the floor as `map` says, `beyond` mm outside its edges. */
export function paperCorners(paper: FramePaper, map: Affine, beyond = 0): readonly Point[] {
  const x = framePapers[paper].width / 2 + beyond,
    y = framePapers[paper].height / 2 + beyond;
  return [
    { x: -x, y: -y },
    { x, y: -y },
    { x, y },
    { x: -x, y },
  ].map(p => apply(map, p));
}

/**
 * What is printed at a place of a sheet, mm from its middle: true for white, false for black, undefined where that
 * changes within `soft` mm, and where words stand.
 */
export function printedAt(sheet: FrameSheet, x: number, y: number, soft: number): boolean | undefined {
  if (Math.abs(x) < words.x && Math.abs(y) < words.y) return undefined;
  const here = exactlyPrintedAt(sheet, x, y);
  for (const [dx, dy] of around)
    if (exactlyPrintedAt(sheet, x + dx * soft, y + dy * soft) !== here) return undefined;
  return here;
}

/** mm from the middle to all sides: the square and the words beside it, and a little more. */
const words = { x: 56, y: 29 };
const around = [
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
  [0.7, 0.7],
  [-0.7, 0.7],
  [0.7, -0.7],
  [-0.7, -0.7],
] as const;

function exactlyPrintedAt(sheet: FrameSheet, x: number, y: number): boolean {
  const u = x + field.width / 2,
    v = y + field.height / 2;
  const column = columns.findIndex(c => u >= c && u < c + targetSide),
    row = rows.findIndex(r => v >= r && v < r + targetSide);
  if (column < 0 || row < 0) return true;
  const place = placeIn(column, row);
  if (place === undefined) return true;
  const i = Math.floor((u - columns[column]!) / targetCell) - 1,
    j = Math.floor((v - rows[row]!) / targetCell) - 1;
  if (i < 0 || j < 0 || i >= codeSide || j >= codeSide) return false;
  return cellsOf(targetIndex(sheet, place))[j * codeSide + i]!;
}

/** Targets are numbered row by row, the middle of the middle row left out. */
function placeIn(column: number, row: number): number | undefined {
  if (row === 2 && (column === 1 || column === 2)) return undefined;
  const before = row * columns.length + column;
  return before - (row > 2 || (row === 2 && column > 2) ? 2 : 0);
}

const allCells = Array.from({ length: targetCount }, (_, index) => codeCells(index));
const cellsOf = (index: number): readonly boolean[] => allCells[index]!;
