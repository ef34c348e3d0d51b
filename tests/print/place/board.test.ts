import { at, type Point } from '@paperhinge/geometry';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { emptyBoard, firstFree, takeCells } from '../../../packages/print/src/place/board.js';
import { candidatesOf } from '../../../packages/print/src/place/candidates.js';
import { cell, shapeCells } from '../../../packages/print/src/place/shape-cells.js';
import { newSheet, touchedPages } from '../../../packages/print/src/place/sheet.js';

/** mm: three to five corners at random, so slender, bent and crossing shapes too, and now and then a second polygon. */
const anyPolygon = fc.array(
  fc.record({ x: fc.integer({ min: 0, max: 120 }), y: fc.integer({ min: 0, max: 160 }) }),
  { minLength: 3, maxLength: 5 },
);
const anyShape = fc.array(anyPolygon, { minLength: 1, maxLength: 2 }).map(polygons => {
  const all = polygons.flat();
  const [x0, y0] = [Math.min(...all.map(p => p.x)), Math.min(...all.map(p => p.y))];
  return polygons.map(polygon => polygon.map((p: Point) => at(p.x - x0, p.y - y0)));
});
const anyPlace = fc.tuple(fc.integer({ min: 0, max: 30 }), fc.integer({ min: 0, max: 60 }));

describe('a board of cells', () => {
  test('the first free row is the one that a look at every cell of every row finds', () => {
    fc.assert(
      fc.property(
        anyShape,
        fc.array(fc.tuple(anyShape, anyPlace), { maxLength: 4 }),
        fc.integer({ min: 0, max: 40 }),
        (polygons, lying, column) => {
          const board = emptyBoard(60, 120);
          for (const [other, [c, r]] of lying) takeCells(board, shapeCells(other), c, r, 1);
          const shape = shapeCells(polygons);
          expect(firstFree(board, shape, column, 0, board.rows)).toBe(byEveryCell(board, shape, column));
        },
      ),
    );
  });

  test('the pages a shape touches are those its cells lie on, one by one', () => {
    const field = { width: 43, height: 57, overlap: 10 };
    const plan = { field, columns: 12, rows: 12, shortest: false, enoughRows: 400, enoughColumns: 4000 };
    fc.assert(
      fc.property(anyShape, anyPlace, (polygons, [column, row]) => {
        const [candidate] = candidatesOf({ polygons }, 'none');
        const sheet = newSheet(plan, [candidate!]);
        const { rows } = candidate!.cells;
        const owners = new Set(
          rows.flatMap((runs, r) =>
            runs.flatMap(([from, to]) =>
              Array.from({ length: to - from }, (_, i) => {
                const across = owner((column + from + i + 0.5) * cell, 43),
                  down = owner((row + r + 0.5) * cell, 57);
                return down * sheet.pageColumns + across;
              }),
            ),
          ),
        );
        const touched = touchedPages(candidate!.cells, column, row, sheet);
        expect([...touched].sort((a, b) => a - b)).toEqual([...owners].sort((a, b) => a - b));
      }),
    );
  });
});

/** A band of 10 mm belongs to the page before it. */
const owner = (mm: number, window: number): number => Math.max(Math.ceil((mm - 10) / (window - 10)) - 1, 0);

function byEveryCell(
  { columns, rows, taken }: ReturnType<typeof emptyBoard>,
  shape: ReturnType<typeof shapeCells>,
  column: number,
): number | undefined {
  if (column + shape.columns > columns) return undefined;
  for (let row = 0; row + shape.rows.length <= rows; row++) {
    const meets = shape.rows.some((runs, r) =>
      runs.some(([from, to]) =>
        taken.subarray((row + r) * columns + column + from, (row + r) * columns + column + to).includes(1),
      ),
    );
    if (!meets) return row;
  }
  return undefined;
}
