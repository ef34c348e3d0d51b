import { angleBetween, distance, lerp, type Point, subtract } from '../../vector.js';
import { drawnPath } from './drawn-path.js';
import { outlineStep } from './edge-of-patch.js';
import { cellAt, colourAt, dotAt, type FloorMap, type Shot } from './floor-map.js';
import { type InkMap, inkMap } from './ink-map.js';
import type { OutlineCorner } from './outline-corner.js';
import { edgesOfOutline } from './outline-edges.js';
import { type PenColour, type PenSeen, penColourOf } from './pen.js';
import { sharpened } from './sharpen.js';
import { refusal } from './tellings.js';
import type { TracedOutline } from './trace-floor.js';

/** mm to each side of the way found in which the line's own middle is looked for. */
const across = 1.6;
/** Of 255: a line so much darker than the paper beside it is a line. */
const leastInk = 14;
/** mm beside a clicked corner that does not count: lines cross there, and a click is not exact. */
const softCorner = 2.5;
/** mm: so exact is a click by hand. */
const clickReach = 4;

/** Ink as lines are followed on it, and as corners are looked for on it: a line that bends there looks like a dash. */
export interface DrawnInk {
  readonly lines: InkMap;
  readonly corners: InkMap;
  /** Which pens count, where several lie beside one another; absent = all. */
  readonly pens?: readonly PenColour[];
}

/**
 * The ink that the lines of a pen are followed on.
 * @param shared black lines count as well, as what all sizes have in common
 */
export function inkOfPen(map: FloorMap, { dashed, ...pen }: PenSeen, shared = false): DrawnInk {
  const corners = inkMap(map, pen, shared);
  const pens =
    pen.colour === undefined ? {} : { pens: [pen.colour, ...(shared ? (['black'] as const) : [])] };
  return {
    ...pens,
    corners,
    lines: dashed === undefined ? corners : inkMap(map, { ...pen, dashed }, shared),
  };
}

/**
 * A piece drawn on paper, from the corners that its maker clicked, in order and in floor mm: between each and the next
 * the drawn line is followed, the last to the first. Corners lie where the lines meet, not where she clicked.
 *
 * @param reach mm: a click this near to a line means the line
 * @throws PatternError `too-few-clicks`; `no-line-between`: no line leads from one click to the next
 */
export function drawnOutline(
  floor: { readonly map: FloorMap; readonly shots: readonly Shot[] },
  { lines, corners: inked, pens }: DrawnInk,
  clicks: readonly Point[],
  reach = clickReach,
): TracedOutline {
  if (clicks.length < 3) throw refusal('too-few-clicks', { clicks: clicks.length });
  const snapped = clicks.map(click => nearestInk(inked, click, reach));
  const points: Point[] = [];
  const corners: OutlineCorner[] = [];
  snapped.forEach((from, i) => {
    const to = snapped[(i + 1) % snapped.length]!;
    const way = drawnPath(lines, from, to);
    if (!way || !isDrawn(lines, way))
      throw refusal('no-line-between', { from: i + 1, to: ((i + 1) % snapped.length) + 1 });
    corners.push({ index: points.length, at: from, soft: softCorner });
    points.push(from, ...midline({ ...floor, ...(pens ? { pens } : {}) }, openly(softened(way))));
  });
  const clockwise = areaOf(points) > 0;
  const ring = clockwise ? points : [...points].reverse();
  const turned = clockwise
    ? corners
    : corners.map(c => ({ ...c, index: points.length - 1 - c.index })).reverse();
  const sharp = sharpened(ring, turned).map((corner, i) => heldOn(ring, turned[i]!, corner));
  return {
    edges: edgesOfOutline(ring, sharp),
    points: ring,
    area: Math.abs(areaOf(points)),
    isClear: true,
    onPaper: 0,
  };
}

/** Ink of a line at its faintest, above the noise of paper; and of a way, how much has to lie on ink to be a line. */
const faintest = 0.025,
  leastDrawn = 0.4;

/** Whether a way runs along a line at all: over bare paper a way is found, too. */
const isDrawn = (map: InkMap, way: readonly Point[]): boolean =>
  way.filter(p => map.ink[cellAt(map, p)]! >= faintest).length >= leastDrawn * way.length;

/** mm: lines that meet at a blunt corner meet on the line itself; what lies farther off was met by chance. */
const bluntOff = 0.6,
  bluntArm = 10;
/** rad (40 degrees) */
const bluntTurn = (40 * Math.PI) / 180;

/** A corner as it was sharpened; a blunt one that left the line as it was before. */
function heldOn(ring: readonly Point[], before: OutlineCorner, sharp: OutlineCorner): OutlineCorner {
  const off = Math.min(...ring.map(p => distance(p, sharp.at)));
  if (off <= bluntOff) return sharp;
  const reach = Math.round(bluntArm / outlineStep);
  const [a, p, b] = [-reach, 0, reach].map(
    k => ring[(((before.index + k) % ring.length) + ring.length) % ring.length]!,
  );
  const turn = Math.abs(angleBetween(subtract(p!, a!), subtract(b!, p!)));
  if (turn > bluntTurn) return sharp;
  const nearest = ring.reduce((q, r) => (distance(r, before.at) < distance(q, before.at) ? r : q));
  return { ...before, at: nearest };
}

function nearestInk(map: InkMap, click: Point, within: number): Point {
  const reach = Math.ceil(within / map.cell);
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
export const softened = (way: readonly Point[]): readonly Point[] =>
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
  { map, shots, pens }: { readonly map: FloorMap; readonly shots: readonly Shot[] } & Pick<DrawnInk, 'pens'>,
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
      const off = middleOfInk(shot, p, n, pens);
      return off === undefined ? [] : [{ x: p.x + n.x * off, y: p.y + n.y * off }];
    });
  return line.length > way.length / 6 ? line : way;
}

const paperOf = (levels: readonly number[]): number =>
  [...levels].sort((a, b) => a - b)[Math.floor(levels.length * 0.8)]!;

function middleOfInk(
  shot: Shot,
  p: Point,
  n: Point,
  pens: readonly PenColour[] | undefined,
): number | undefined {
  const { picture, view } = shot;
  const step = dotAt(shot) / 2,
    steps = Math.ceil(across / step);
  const dots: (readonly [number, number, number])[] = [];
  for (let k = -steps; k <= steps; k++) {
    const q = view.toPicture(p.x + n.x * k * step, p.y + n.y * k * step);
    if (!(q.x > 1 && q.y > 1 && q.x < picture.width - 1 && q.y < picture.height - 1)) return undefined;
    dots.push([
      colourAt(picture, q.x, q.y, 0),
      colourAt(picture, q.x, q.y, 1),
      colourAt(picture, q.x, q.y, 2),
    ]);
  }
  const levels = dots.map(dot => Math.min(...dot));
  const paper = paperOf(levels);
  if (pens) {
    // The ink of another pen is paper: where lines of two sizes run together, each is followed by its own.
    const papers = [0, 1, 2].map(c => paperOf(dots.map(dot => dot[c]!)));
    const taken = (dot: readonly number[], c: number): number =>
      Math.max(0, Math.log((papers[c]! + 1) / (dot[c]! + 1)));
    dots.forEach((dot, k) => {
      const colour = penColourOf([taken(dot, 0), taken(dot, 1), taken(dot, 2)]);
      if (paper - levels[k]! > leastInk && !pens.includes(colour)) levels[k] = paper;
    });
  }
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
