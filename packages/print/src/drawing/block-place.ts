import { dot, type Point } from '@paperhinge/geometry';
import { chords, type Polygon, type Room } from './room.js';

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
  const free = new Uint8Array(columns * rows);
  fillInside(free, columns, rows, cell, min, inside);
  const ink = [...room.ink, ...chords(room.inside, true)];
  for (const [a, b] of ink) blockAlong(free, columns, rows, cell, min, toFrame(a), toFrame(b), gap);
  const sums = new Int32Array((columns + 1) * (rows + 1));
  let count = 0,
    sumX = 0,
    sumY = 0;
  for (let r = 0; r < rows; r++) {
    let line = 0;
    for (let c = 0; c < columns; c++) {
      const open = free[r * columns + c]!;
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
    count === 0 ? min : { x: min.x + (sumX / count + 0.5) * cell, y: min.y + (sumY / count + 0.5) * cell };
  return { cell, columns, rows, along, across, origin: min, sums, middle };
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

/** Marks the cells whose middle lies inside (even-odd along each row of cells). */
function fillInside(
  free: Uint8Array,
  columns: number,
  rows: number,
  cell: number,
  min: Point,
  polygon: Polygon,
): void {
  for (let r = 0; r < rows; r++) {
    const y = min.y + (r + 0.5) * cell;
    const crossings: number[] = [];
    for (const [a, b] of chords(polygon, true))
      if (a.y > y !== b.y > y) crossings.push(a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y));
    crossings.sort((p, q) => p - q);
    for (let i = 0; i + 1 < crossings.length; i += 2) {
      const from = Math.max(Math.ceil((crossings[i]! - min.x) / cell - 0.5), 0);
      const to = Math.min(Math.floor((crossings[i + 1]! - min.x) / cell - 0.5), columns - 1);
      for (let c = from; c <= to; c++) free[r * columns + c] = 1;
    }
  }
}

/** Blocks the cells within `gap` of a chord, by squares round points closer together than a cell. */
function blockAlong(
  free: Uint8Array,
  columns: number,
  rows: number,
  cell: number,
  min: Point,
  a: Point,
  b: Point,
  gap: number,
): void {
  const reach = gap + cell;
  const steps = Math.max(Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / cell), 1);
  for (let i = 0; i <= steps; i++) {
    const x = a.x + ((b.x - a.x) * i) / steps - min.x,
      y = a.y + ((b.y - a.y) * i) / steps - min.y;
    const c0 = Math.max(Math.floor((x - reach) / cell), 0),
      c1 = Math.min(Math.floor((x + reach) / cell), columns - 1);
    const r0 = Math.max(Math.floor((y - reach) / cell), 0),
      r1 = Math.min(Math.floor((y + reach) / cell), rows - 1);
    if (c1 < c0) continue;
    for (let r = r0; r <= r1; r++) free.fill(0, r * columns + c0, r * columns + c1 + 1);
  }
}
