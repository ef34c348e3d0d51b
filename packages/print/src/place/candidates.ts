import type { Point } from '@paperhinge/geometry';
import { oncePer } from '@paperhinge/geometry/internal';
import { boxOf, type Polygon } from '../plane/polygon.js';
import type { Shape } from './arrangement.js';
import { carriedShaft, type Shaft } from './shafts.js';
import { type ShapeCells, shapeCells } from './shape-cells.js';
import { type Turn, type Turning, turnedPoint, turnsFor } from './turning.js';

/** A shape as it may lie: turned in one way, as cells. */
export interface Candidate {
  readonly turn: Turn;
  /** What turning it costs: as it stands nothing, half round a little, leaning more, so that a turn must save something. */
  readonly cost: number;
  readonly cells: ShapeCells;
  /** Its main polygon turned, with its box starting at (0, 0) of the cells. */
  readonly polygon: Polygon;
  /** Its shafts likewise. */
  readonly shafts: readonly Shaft[];
  /** What moves the shape's own coordinates so that its box starts at (0, 0), after the turn. */
  readonly home: Point;
  /** It may lie in the first column alone. */
  readonly atLeft: boolean;
}

/** The ways in which a shape may lie, the least turned first; one that looks the same when turned is not given twice. */
export function candidatesOf(shape: Shape, turning: Turning | 'sides'): readonly Candidate[] {
  const { lists, turned } = knownOf(shape);
  const allowed = shape.atLeft ? 'none' : turning;
  const known = lists.get(allowed);
  if (known) return known;
  const all = turnsFor(shape.polygons, allowed).map(turn => {
    const key = `${turn.x} ${turn.y}`;
    const before = turned.get(key) ?? candidate(shape, turn);
    turned.set(key, before);
    return before;
  });
  const looks = all.map(c => `${c.cells.columns}:${c.cells.probes}`);
  const list = all.filter((_, i) => looks.indexOf(looks[i]!) === i);
  lists.set(allowed, list);
  return list;
}

/** A shape is laid out on fields upright and on their sides, turned less and more: its cells are worked out once. */
const knownOf = oncePer((_shape: Shape) => ({
  lists: new Map<Turning | 'sides', readonly Candidate[]>(),
  turned: new Map<string, Candidate>(),
}));

/** mm: keeps the cutting line's own width on the page. */
const inset = 0.5;

function candidate({ polygons, atLeft, shafts = [] }: Shape, turn: Turn): Candidate {
  const turned = polygons.map(polygon => polygon.map(p => turnedPoint(p, turn)));
  const { x0, y0 } = boxOf(turned);
  const home = { x: atLeft ? -x0 : inset - x0, y: inset - y0 };
  const homed = (p: Point): Point => ({ x: p.x + home.x, y: p.y + home.y });
  const moved = turned.map(polygon => polygon.map(homed));
  const leaning = turn.x !== 0 && turn.y !== 0;
  const cost = turn.x === 1 ? 0 : leaning ? 15 : turn.x === -1 ? 5 : 8;
  return {
    turn,
    cost,
    cells: shapeCells(moved),
    polygon: moved[0]!,
    shafts: shafts.map(s => carriedShaft(s, p => homed(turnedPoint(p, turn)))),
    home,
    atLeft: atLeft === true,
  };
}
