import type { Point } from '@paperhinge/geometry';
import { dot } from '@paperhinge/geometry/plane';
import { chords } from '../plane/polygon.js';
import { type Cells, emptyCells, markAlong, markMiddlesInside } from '../plane/raster.js';
import type { Room } from './room.js';

/** Where blocks of text may go in a piece: a grid of cells in a frame of reading directions, as running sums of blocked cells. */
export interface BlockGrid {
  readonly cell: number;
  readonly columns: number;
  readonly rows: number;
  readonly along: Point;
  readonly across: Point;
  /** Frame coordinates of the grid's first corner. */
  readonly origin: Point;
  /** blocked cells above and left of a grid point: (columns + 1) × (rows + 1). */
  readonly sums: Int32Array;
  /** Middle of the free cells, in frame coordinates: where a block looks best. */
  readonly middle: Point;
}

/**
 * Cells of the room in the frame of `along` (unit); a cell is blocked if it is not wholly inside or has ink within
 * `gap` mm. Conservative: a block of free cells keeps at least `gap` from everything.
 */
export function blockGrid(room: Room, along: Point, gap: number): BlockGrid {
  const across = { x: -along.y, y: along.x };
  const toFrame = (p: Point) => ({ x: dot(p, along), y: dot(p, across) });
  const inside = room.inside.map(toFrame);
  const min = { x: Math.min(...inside.map(p => p.x)), y: Math.min(...inside.map(p => p.y)) };
  const max = { x: Math.max(...inside.map(p => p.x)), y: Math.max(...inside.map(p => p.y)) };
  const short = Math.min(max.x - min.x, max.y - min.y),
    long = Math.max(max.x - min.x, max.y - min.y);
  // Fine enough for the short side of a narrow piece, few enough cells for a 3 m train.
  const cell = Math.max(Math.min(short / 60, 2), long / 900, 0.25);
  const columns = Math.max(Math.ceil((max.x - min.x) / cell), 1),
    rows = Math.max(Math.ceil((max.y - min.y) / cell), 1);
  const cells = emptyCells(cell, columns, rows, min);
  markMiddlesInside(cells, inside);
  const blocked = { value: 0, reach: gap + cell } as const;
  for (const [a, b] of [...room.ink, ...chords(room.inside, true)])
    markAlong(cells, toFrame(a), toFrame(b), blocked);
  const { sums, middle } = summed(cells);
  return { cell, columns, rows, along, across, origin: min, sums, middle };
}

/** Running sums of the blocked cells, and the middle of the free ones. */
function summed({ cell, columns, rows, origin, bytes }: Cells): Pick<BlockGrid, 'sums' | 'middle'> {
  const sums = new Int32Array((columns + 1) * (rows + 1));
  let count = 0,
    sumX = 0,
    sumY = 0;
  for (let r = 0; r < rows; r++) {
    let line = 0;
    for (let c = 0; c < columns; c++) {
      const open = bytes[r * columns + c]!;
      line += 1 - open;
      sums[(r + 1) * (columns + 1) + c + 1] = sums[r * (columns + 1) + c + 1]! + line;
      if (open) {
        count++;
        sumX += c;
        sumY += r;
      }
    }
  }
  const middle =
    count === 0
      ? origin
      : { x: origin.x + (sumX / count + 0.5) * cell, y: origin.y + (sumY / count + 0.5) * cell };
  return { sums, middle };
}

export interface BlockWish {
  /** What the block should be nearest to, in piece coordinates; else the middle of all that is free. */
  readonly near?: Point;
  /** Whether a place will do, by its middle in piece coordinates. */
  readonly accept?: (middle: Point) => boolean;
}

/** The middle (in piece coordinates) of the free place for a block of `width` × `height` that best meets the wish. */
export function placeForBlock(
  grid: BlockGrid,
  width: number,
  height: number,
  { near, accept }: BlockWish = {},
): Point | undefined {
  const { cell, columns, rows, sums, origin } = grid;
  const middle = near ? { x: dot(near, grid.along), y: dot(near, grid.across) } : grid.middle;
  const inPiece = (c: number, r: number): Point => {
    const x = origin.x + (c + w / 2) * cell,
      y = origin.y + (r + h / 2) * cell;
    return { x: x * grid.along.x + y * grid.across.x, y: x * grid.along.y + y * grid.across.y };
  };
  const w = Math.ceil(width / cell) + 1,
    h = Math.ceil(height / cell) + 1,
    stride = columns + 1;
  if (w > columns || h > rows) return undefined;
  let best: { c: number; r: number } | undefined;
  let nearest = Number.POSITIVE_INFINITY;
  for (let r = 0; r + h <= rows; r++) {
    for (let c = 0; c + w <= columns; c++) {
      const dx = origin.x + (c + w / 2) * cell - middle.x,
        dy = origin.y + (r + h / 2) * cell - middle.y;
      const away = dx * dx + dy * dy;
      if (away >= nearest) continue;
      const a = r * stride + c,
        b = (r + h) * stride + c;
      if (sums[b + w]! - sums[b]! - sums[a + w]! + sums[a]! !== 0) continue;
      if (accept && !accept(inPiece(c, r))) continue;
      nearest = away;
      best = { c, r };
    }
  }
  return best && inPiece(best.c, best.r);
}
