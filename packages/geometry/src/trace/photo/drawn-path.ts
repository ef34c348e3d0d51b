import type { Point } from '../../vector.js';
import { costQueue } from './cost-queue.js';
import { cellAt } from './floor-map.js';
import type { InkMap } from './ink-map.js';

/** Of the straight way between two clicks: how far beside it a drawn line may run; and mm at least. */
const beside = 0.45,
  leastBeside = 25;
/** What a step over bare paper costs, for one along a line: dashes are crossed, blank paper is not. */
const bare = 12;
/** Of a line's darkness: fainter ink than this is paper. */
const faint = 0.06;
/** What a turn of an eighth costs, in steps: a line that runs on straight is followed over one that crosses it. */
const turnCost = 2;

const ways = [
  [1, 0],
  [1, 1],
  [0, 1],
  [-1, 1],
  [-1, 0],
  [-1, -1],
  [0, -1],
  [1, -1],
] as const;

/**
 * The way from one point to another that runs most on ink and turns least (Dijkstra's shortest path, each cell taken
 * once for each of eight ways of arriving).
 * @returns cell middles in floor mm; undefined if the points lie outside the map
 */
export function drawnPath(map: InkMap, from: Point, to: Point): readonly Point[] | undefined {
  const room = Math.max(leastBeside, beside * Math.hypot(to.x - from.x, to.y - from.y));
  const left = Math.max(0, column(map, Math.min(from.x, to.x) - room)),
    right = Math.min(map.width - 1, column(map, Math.max(from.x, to.x) + room)),
    top = Math.max(0, row(map, Math.min(from.y, to.y) - room)),
    bottom = Math.min(map.height - 1, row(map, Math.max(from.y, to.y) + room));
  if (cellAt(map, from) < 0 || cellAt(map, to) < 0) return undefined;
  const width = right - left + 1,
    height = bottom - top + 1;
  const node = (p: Point) => (row(map, p.y) - top) * width + column(map, p.x) - left;
  const start = node(from),
    end = node(to);
  const cost = new Float32Array(8 * width * height).fill(Number.POSITIVE_INFINITY);
  const came = new Int8Array(8 * width * height).fill(-1);
  const queue = costQueue();
  for (let way = 0; way < 8; way++) {
    cost[8 * start + way] = 0;
    queue.put(8 * start + way, 0);
  }
  for (let next = queue.take(); next; next = queue.take()) {
    const [state, reached] = next;
    const at = state >> 3,
      arrived = state & 7;
    if (reached > cost[state]!) continue;
    if (at === end)
      return wayBack(state, came, start, width, index =>
        middle(map, left + (index % width), top + Math.floor(index / width)),
      );
    const x = at % width,
      y = Math.floor(at / width);
    for (let turn = -1; turn <= 1; turn++) {
      const way = (arrived + turn + 8) & 7;
      const [dx, dy] = ways[way]!;
      const u = x + dx,
        v = y + dy;
      if (u < 0 || v < 0 || u >= width || v >= height) continue;
      const darkness = map.ink[(top + v) * map.width + left + u]!;
      const each = 1 + bare * Math.exp(-Math.max(0, darkness - faint / 2) / faint);
      const beyond = 8 * (v * width + u) + way;
      // As the list of costs holds it, so that a state is known again.
      const sum = Math.fround(cost[state]! + each * Math.hypot(dx, dy) + (turn === 0 ? 0 : turnCost));
      if (sum >= cost[beyond]!) continue;
      cost[beyond] = sum;
      came[beyond] = arrived;
      queue.put(beyond, sum);
    }
  }
  return undefined;
}

type Grid = Pick<InkMap, 'origin' | 'cell'>;
const column = ({ origin, cell }: Grid, x: number): number => Math.floor((x - origin.x) / cell);
const row = ({ origin, cell }: Grid, y: number): number => Math.floor((y - origin.y) / cell);
const middle = ({ origin, cell }: Grid, i: number, j: number): Point => ({
  x: origin.x + (i + 0.5) * cell,
  y: origin.y + (j + 0.5) * cell,
});

function wayBack(
  last: number,
  came: Int8Array,
  start: number,
  width: number,
  place: (index: number) => Point,
): readonly Point[] {
  const points: Point[] = [];
  let state = last;
  while (state >> 3 !== start) {
    points.push(place(state >> 3));
    const [dx, dy] = ways[state & 7]!;
    state = 8 * ((state >> 3) - dy * width - dx) + came[state]!;
  }
  points.push(place(start));
  return points.reverse();
}
