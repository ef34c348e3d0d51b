import { line, type Point } from '@paperhinge/geometry';
import { codeCells, codeSide, targetCell, targetCorners } from '@paperhinge/geometry/trace';
import type { Fill } from '../drawing/ink.js';

/**
 * A target as one shape: the sides of its black cells that have white beyond them, black to the right of travel. One
 * shape, since cells filled one by one show hairlines between them on many printers and screens.
 *
 * @param middle of the paper, mm on the page
 */
export function targetInk(index: number, place: number, middle: Point): Fill {
  const corner = targetCorners(place)[0];
  const at = (column: number, row: number): Point => ({
    x: middle.x + corner.x + column * targetCell,
    y: middle.y + corner.y + row * targetCell,
  });
  return {
    kind: 'fill',
    role: 'match-mark',
    path: {
      segments: blackRings(index).flatMap(ring =>
        ring.map(([column, row], i) => {
          const [c, r] = ring[(i + 1) % ring.length]!;
          return line(at(column, row), at(c, r));
        }),
      ),
    },
  };
}

type Corner = readonly [column: number, row: number];

const width = codeSide + 2;

/** The rings round a target's black, in cells. Where two black cells touch at a corner only, the rings pass it apart. */
function blackRings(index: number): readonly (readonly Corner[])[] {
  const code = codeCells(index);
  const black = (c: number, r: number): boolean => {
    if (c < 0 || r < 0 || c >= width || r >= width) return false;
    const inside = c > 0 && r > 0 && c <= codeSide && r <= codeSide;
    return !(inside && code[(r - 1) * codeSide + c - 1]);
  };
  const sides = new Map<string, { readonly from: Corner; readonly to: Corner }[]>();
  const side = (from: Corner, to: Corner) =>
    sides.set(String(from), [...(sides.get(String(from)) ?? []), { from, to }]);
  for (let r = 0; r < width; r++)
    for (let c = 0; c < width; c++) {
      if (!black(c, r)) continue;
      if (!black(c, r - 1)) side([c, r], [c + 1, r]);
      if (!black(c + 1, r)) side([c + 1, r], [c + 1, r + 1]);
      if (!black(c, r + 1)) side([c + 1, r + 1], [c, r + 1]);
      if (!black(c - 1, r)) side([c, r + 1], [c, r]);
    }
  const rings: Corner[][] = [];
  for (const starts of sides.values()) while (starts.length > 0) rings.push(ringFrom(starts[0]!.from, sides));
  return rings.map(straightened);
}

function ringFrom(
  start: Corner,
  sides: ReadonlyMap<string, { readonly from: Corner; readonly to: Corner }[]>,
): Corner[] {
  const ring: Corner[] = [];
  let at = start,
    going: Corner = [0, 0];
  do {
    const ways = sides.get(String(at))!;
    // At a corner that two cells share, a right turn stays with the cell.
    const right = ways.findIndex(w => going[0] * (w.to[1] - at[1]) - going[1] * (w.to[0] - at[0]) > 0);
    const [way] = ways.splice(Math.max(0, right), 1);
    ring.push(at);
    going = [way!.to[0] - at[0], way!.to[1] - at[1]];
    at = way!.to;
  } while (String(at) !== String(start));
  return ring;
}

/** Without the corners that the line runs straight through. */
const straightened = (ring: readonly Corner[]): readonly Corner[] =>
  ring.filter((at, i) => {
    const before = ring.at(i - 1)!,
      after = ring[(i + 1) % ring.length]!;
    return (at[0] - before[0]) * (after[1] - at[1]) !== (at[1] - before[1]) * (after[0] - at[0]);
  });
