import { distance, type Point, subtract, unit } from '../../vector.js';
import { armThrough, meetingOfArms } from './arm.js';
import { cornersOfOutline } from './corners.js';
import { type DrawnInk, drawnOutline, inkOfPen, softened } from './drawn-outline.js';
import { drawnPath } from './drawn-path.js';
import { cellAt, type FloorMap, partOfMap, type Shot } from './floor-map.js';
import { type InkMap, inkMap } from './ink-map.js';
import type { SizeDrawn } from './pen.js';
import { refusal } from './tellings.js';
import type { TracedOutline } from './trace-floor.js';

/** mm: so far from its corner in the first size the same corner lies in another; common practice, no source. */
const gradedBy = 45;
/** Ink of at least so much of the darkest about is a line, if that is ink at all. */
const lineShare = 0.45,
  leastInk = 0.03;
/** mm along a line over which its direction at a corner is taken, beyond what the corner itself makes soft. */
const arm = 12,
  softCorner = 2;
/** mm: a corner so far off is as unlikely as one turned by a rad. */
const asUnlikely = 30;

interface Floor {
  readonly map: FloorMap;
  readonly shots: readonly Shot[];
}

/**
 * Every size of the pieces drawn on paper, size by size and piece by piece, each followed by its own pen. Corners are
 * clicked in the first size alone: in another they are where its own line turns as the first one's does.
 *
 * @param done told the share that is traced @throws PatternError `size-not-drawn-there`, and those of `drawnOutline`
 */
export function sizesDrawn(
  floor: Floor,
  sizes: readonly SizeDrawn[],
  pieces: readonly (readonly Point[])[],
  done: (share: number) => void,
): readonly (readonly TracedOutline[])[] {
  const sharesBlack = sizes.every(({ pen }) => pen.colour !== undefined && pen.colour !== 'black');
  const byPiece = pieces.map((clicks, k) => {
    // Lines are looked for no farther off than they may lie: on a whole floor that would take a minute.
    const near = { ...floor, map: partOfMap(floor.map, clicks, gradedBy + beyond) };
    const inks = sizes.map(({ pen }, i) => {
      done((k + i / sizes.length) / pieces.length);
      const ink = inkOfPen(near.map, pen, sharesBlack);
      return { ...ink, own: sharesBlack ? inkMap(near.map, pen) : ink.lines };
    });
    const model = drawnOutline(near, inks[0]!, clicks);
    return inks.map((ink, i) =>
      i === 0
        ? model
        : settled(
            near,
            ink,
            drawnOutline(near, ink, cornersLike(model, { size: sizes[i]!.size, ...ink }), found),
          ),
    );
  });
  return sizes.map((_, i) => byPiece.map(outlines => outlines[i]!));
}
/** mm beyond the farthest corner that a line may bow out. */
const beyond = 40;

/** An outline whose corners were about right, traced again from where its own line turns beside them. */
function settled(floor: Floor, ink: DrawnInk, about: TracedOutline): TracedOutline {
  const turns = cornersOfOutline(about.points, softCorner);
  const corners = about.edges.map(edge => {
    const from = edge.segments[0]![0];
    const near = turns.filter(({ at }) => distance(at, from) < farthestCorner);
    const [first] = near.sort((a, b) => distance(a.at, from) - distance(b.at, from));
    return first?.at ?? from;
  });
  return drawnOutline(floor, ink, corners, found);
}
/** mm: corners that were found lie this near to their lines; clicks do not. */
const found = 1.2;

interface SizeInk {
  readonly size: string;
  /** Where the lines of the size are followed, and where none but its own are drawn. */
  readonly lines: InkMap;
  readonly own: InkMap;
}

/** Where a size has the corners of another, in the same order. */
function cornersLike(model: TracedOutline, { size, lines, own }: SizeInk): readonly Point[] {
  const corners = model.edges.map(edge => edge.segments[0]![0]);
  const near = corners.map((corner, i) => {
    const found = nearestLine(own, corner);
    if (!found) throw refusal('size-not-drawn-there', { size, corner: i + 1 });
    return found;
  });
  const ways = near.map((from, i) => {
    const way = drawnPath(lines, from, near[(i + 1) % near.length]!);
    if (!way) throw refusal('size-not-drawn-there', { size, corner: i + 1 });
    return softened(way).slice(0, -1);
  });
  const ring = ways.flat();
  return corners.map(corner =>
    cornerOn(ring, corner, directionsAt(model.points, nearestIndex(model.points, corner))),
  );
}

/** The place of a ring that turns as a corner does: first about where, then where it turns most. */
function cornerOn(ring: readonly Point[], corner: Point, wanted: readonly [Point, Point]): Point {
  const odds = ring.map((p, i) => {
    const off = distance(p, corner);
    if (off > gradedBy) return Number.POSITIVE_INFINITY;
    const [back, forth] = directionsAt(ring, i);
    return angle(back, wanted[0]) + angle(forth, wanted[1]) + off / asUnlikely;
  });
  const about = odds.indexOf(Math.min(...odds));
  if (angle(wanted[0], wanted[1]) < leastTurn) return ring[about]!;
  const turns = ring.map((p, i) => {
    if (distance(p, ring[about]!) > arm) return 0;
    const [back, forth] = directionsAt(ring, i, 0);
    return angle(back, forth);
  });
  const most = Math.max(...turns);
  const at = turns.indexOf(most);
  // Lines that meet bluntly meet nowhere in particular.
  return most > wideTurn ? sharpCorner(ring, at) : ring[at]!;
}

/** Where the lines before and after a place meet: a way over cells cuts every corner. */
function sharpCorner(ring: readonly Point[], at: number): Point {
  const armOf = (step: 1 | -1) => {
    const points: Point[] = [];
    for (let k = 1; k < ring.length; k++) {
      const p = ring[(((at + step * k) % ring.length) + ring.length) % ring.length]!;
      const off = distance(p, ring[at]!);
      if (off > cutCorner + arm) break;
      if (off > cutCorner) points.push(p);
    }
    return points.length > 5 ? armThrough(points, true) : undefined;
  };
  const [back, forth] = [armOf(-1), armOf(1)];
  const meeting = back && forth && meetingOfArms(back, forth);
  return meeting && distance(meeting.at, ring[at]!) < farthestCorner ? meeting.at : ring[at]!;
}
/** mm: in a gap between dashes a corner is cut off farther than where the line is drawn. */
const farthestCorner = 6;
/** rad (45 degrees) */
const wideTurn = Math.PI / 4;
/** mm beside a corner that a way over cells cuts off. */
const cutCorner = 4;
/** rad (15 degrees). What turns less is no corner: the place that was clicked is as good as any beside it. */
const leastTurn = (15 * Math.PI) / 180;

const angle = (a: Point, b: Point): number =>
  Math.abs(Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y));

function nearestIndex(points: readonly Point[], to: Point): number {
  const far = points.map(p => distance(p, to));
  return far.indexOf(Math.min(...far));
}

/** Which way a ring comes to a place and leaves it. */
function directionsAt(ring: readonly Point[], at: number, soft = softCorner): readonly [Point, Point] {
  const away = (step: 1 | -1, mm: number): Point => {
    let left = mm;
    for (let i = at; ; i += step) {
      const [p, q] = [i, i + step].map(k => ring[((k % ring.length) + ring.length) % ring.length]!);
      left -= distance(p!, q!);
      if (left <= 0 || Math.abs(i - at) > ring.length) return mm === 0 ? p! : q!;
    }
  };
  const between = (from: Point, to: Point): Point =>
    distance(from, to) > 0 ? unit(subtract(to, from)) : { x: 1, y: 0 };
  return [between(away(-1, soft + arm), away(-1, soft)), between(away(1, soft), away(1, soft + arm))];
}

/** The nearest place of a line that is surely one: where a drawn line bends it looks like a dash. */
function nearestLine(map: InkMap, to: Point): Point | undefined {
  const reach = Math.ceil(gradedBy / map.cell);
  const inked: { readonly p: Point; readonly off: number; readonly ink: number }[] = [];
  for (let j = -reach; j <= reach; j++)
    for (let i = -reach; i <= reach; i++) {
      const off = Math.hypot(i, j) * map.cell;
      const p = { x: to.x + i * map.cell, y: to.y + j * map.cell };
      const cell = off <= gradedBy ? cellAt(map, p) : -1;
      if (cell >= 0 && map.ink[cell]! >= leastInk) inked.push({ p, off, ink: map.ink[cell]! });
    }
  const free = inked.filter(({ p }) => !isBesideDrawn(map, p));
  const least = lineShare * free.reduce((most, { ink }) => Math.max(most, ink), 0);
  return free.filter(({ ink }) => ink >= least).sort((a, b) => a.off - b.off)[0]?.p;
}

/** mm: a bend of a drawn line looks like dashes no farther from the line than this. */
const bendReach = 5.5;

function isBesideDrawn(map: InkMap, { x, y }: Point): boolean {
  const { drawn } = map;
  if (!drawn) return false;
  for (let v = -bendReach; v <= bendReach; v += map.cell)
    for (let u = -bendReach; u <= bendReach; u += map.cell) {
      const cell = cellAt(map, { x: x + u, y: y + v });
      if (cell >= 0 && drawn[cell] === 1) return true;
    }
  return false;
}
