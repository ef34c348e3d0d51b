import { distance, lerp, type Point } from '../../vector.js';
import { drawnPath } from './drawn-path.js';
import { outlineStep } from './edge-of-patch.js';
import { cellAt, colourAt, dotAt, type FloorMap, type Shot } from './floor-map.js';
import type { InkMap } from './ink-map.js';
import type { OutlineCorner } from './outline-corner.js';
import { edgesOfOutline } from './outline-edges.js';
import { sharpened } from './sharpen.js';
import { refusal } from './tellings.js';
import type { TracedOutline } from './trace-floor.js';

/** mm to each side of the way found in which the line's own middle is looked for. */
const across = 1.6;
/** Of 255: a line so much darker than the paper beside it is a line. */
const leastInk = 14;
/** mm beside a clicked corner that does not count: lines cross there, and a click is not exact. */
const softCorner = 2.5;
/** mm: a click this near to a line means the line. */
const clickReach = 4;

/** Ink as lines are followed on it, and as corners are looked for on it: a line that bends there looks like a dash. */
export interface DrawnInk {
  readonly lines: InkMap;
  readonly corners: InkMap;
}

/**
 * A piece drawn on paper, from the corners that its maker clicked, in order and in floor mm: between each and the next
 * the drawn line is followed, the last to the first. Corners lie where the lines meet, not where she clicked.
 *
 * @throws PatternError `too-few-clicks`; `no-line-between`: nothing leads from one click to the next
 */
export function drawnOutline(
  floor: { readonly map: FloorMap; readonly shots: readonly Shot[] },
  { lines, corners: inked }: DrawnInk,
  clicks: readonly Point[],
): TracedOutline {
  if (clicks.length < 3) throw refusal('too-few-clicks', { clicks: clicks.length });
  const snapped = clicks.map(click => nearestInk(inked, click));
  const points: Point[] = [];
  const corners: OutlineCorner[] = [];
  snapped.forEach((from, i) => {
    const to = snapped[(i + 1) % snapped.length]!;
    const way = drawnPath(lines, from, to);
    if (!way) throw refusal('no-line-between', { from: i + 1, to: ((i + 1) % snapped.length) + 1 });
    corners.push({ index: points.length, at: from, soft: softCorner });
    points.push(from, ...midline(floor, openly(softened(way))));
  });
  const clockwise = areaOf(points) > 0;
  const ring = clockwise ? points : [...points].reverse();
  const turned = clockwise
    ? corners
    : corners.map(c => ({ ...c, index: points.length - 1 - c.index })).reverse();
  const sharp = sharpened(ring, turned);
  return {
    edges: edgesOfOutline(ring, sharp),
    points: ring,
    area: Math.abs(areaOf(points)),
    isClear: true,
    onPaper: 0,
  };
}

function nearestInk(map: InkMap, click: Point): Point {
  const reach = Math.ceil(clickReach / map.cell);
  let best = click,
    most = 0;
  for (let j = -reach; j <= reach; j++)
    for (let i = -reach; i <= reach; i++) {
      const p = { x: click.x + i * map.cell, y: click.y + j * map.cell };
      const cell = cellAt(map, p);
      // Dark, and near: a line half as dark right under the click is meant before another at the reach's end.
      const worth = cell < 0 ? 0 : map.ink[cell]! * (1 - Math.hypot(i, j) / (1.6 * reach));
      if (worth > most) [best, most] = [p, worth];
    }
  return best;
}

const areaOf = (points: readonly Point[]): number =>
  points.reduce((sum, p, i) => {
    const q = points[(i + 1) % points.length]!;
    return sum + p.x * q.y - p.y * q.x;
  }, 0) / 2;

/** A way over cells without its steps: each point the mean of its neighbours, the ends staying. */
const softened = (way: readonly Point[]): readonly Point[] =>
  way.map((p, i) => {
    const reach = Math.min(4, i, way.length - 1 - i);
    let [x, y] = [0, 0];
    for (let k = -reach; k <= reach; k++) {
      x += way[i + k]!.x;
      y += way[i + k]!.y;
    }
    return reach === 0 ? p : { x: x / (2 * reach + 1), y: y / (2 * reach + 1) };
  });

/** Points at even steps between the ends of an open way, the ends left out. */
function openly(way: readonly Point[]): readonly Point[] {
  const out: Point[] = [];
  let left = outlineStep;
  for (let i = 1; i < way.length; i++) {
    const a = way[i - 1]!,
      b = way[i]!;
    const length = distance(a, b);
    let at = left;
    for (; at < length; at += outlineStep) out.push(lerp(a, b, at / length));
    left = at - length;
  }
  return out;
}

/** Each point moved to the middle of the line's ink, square to the way; where there is no ink (a dash's gap) it goes. */
function midline(
  { map, shots }: { readonly map: FloorMap; readonly shots: readonly Shot[] },
  way: readonly Point[],
): readonly Point[] {
  let line = way;
  for (let round = 0; round < 2; round++)
    line = line.flatMap((p, i) => {
      const a = line[Math.max(0, i - 4)]!,
        b = line[Math.min(line.length - 1, i + 4)]!;
      const length = distance(a, b);
      const cell = cellAt(map, p);
      const shot = cell < 0 ? undefined : shots[map.from[cell]! - 1];
      if (!shot || length === 0) return [];
      const n = { x: -(b.y - a.y) / length, y: (b.x - a.x) / length };
      const off = middleOfInk(shot, p, n);
      return off === undefined ? [] : [{ x: p.x + n.x * off, y: p.y + n.y * off }];
    });
  return line.length > way.length / 6 ? line : way;
}

function middleOfInk(shot: Shot, p: Point, n: Point): number | undefined {
  const { picture, view } = shot;
  const step = dotAt(shot) / 2,
    steps = Math.ceil(across / step);
  const levels: number[] = [];
  for (let k = -steps; k <= steps; k++) {
    const q = view.toPicture(p.x + n.x * k * step, p.y + n.y * k * step);
    if (!(q.x > 1 && q.y > 1 && q.x < picture.width - 1 && q.y < picture.height - 1)) return undefined;
    levels.push(Math.min(...[0, 1, 2].map(c => colourAt(picture, q.x, q.y, c))));
  }
  const paper = [...levels].sort((a, b) => a - b)[Math.floor(levels.length * 0.8)]!;
  const darkest = Math.min(...levels);
  if (paper - darkest < leastInk) return undefined;
  // What is darker than half way counts, by how much: the middle of a line of any width, soft or sharp.
  const half = (paper + darkest) / 2;
  let sum = 0,
    weight = 0;
  levels.forEach((level, k) => {
    const w = Math.max(0, half - level);
    sum += w * (k - steps);
    weight += w;
  });
  return (sum / weight) * step;
}
