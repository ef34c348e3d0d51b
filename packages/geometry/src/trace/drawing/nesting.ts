import { pathLength, pointAlong } from '../../path/length.js';
import { nearestOnPath } from '../../path/nearest.js';
import { type Path, pathStart } from '../../path/path.js';
import { signedArea } from '../../region/area.js';
import { containsPoint } from '../../region/contains.js';
import type { Loop } from './loops.js';

/** A piece by its outermost line, with what lies in it. */
export interface Nest {
  readonly outer: Loop;
  /** A line that runs beside the outermost all round: the stitching line within the cutting line. */
  readonly inner?: Loop;
  /** Other closed lines within. */
  readonly others: readonly Loop[];
  /** How many lines run beside one another: more than two are sizes, not allowances. */
  readonly beside: number;
}

/** mm: an allowance is no wider. */
const widest = 80;
/** Of the outer line's area, that a stitching line keeps at least: a small cuff with wide allowances keeps half. */
const leastArea = 0.4;
const places = 48;

/** Closed lines by what lies within what. */
export function nestsOf(loops: readonly Loop[]): readonly Nest[] {
  const sized = loops
    .map(loop => ({ loop, area: Math.abs(signedArea(loop.path)) }))
    .filter(({ area }) => area > leastPiece)
    .sort((a, b) => b.area - a.area);
  const nests: { outer: Loop; area: number; within: { loop: Loop; area: number }[] }[] = [];
  for (const one of sized) {
    const owner = nests.find(nest => containsPoint(nest.outer.path, insideOf(one.loop.path)));
    if (owner) owner.within.push(one);
    else nests.push({ outer: one.loop, area: one.area, within: [] });
  }
  return nests.map(({ outer, area, within }) => {
    const beside = within.filter(one => one.area > leastArea * area && runsBeside(one.loop.path, outer.path));
    return {
      outer,
      ...(beside[0] ? { inner: beside[0].loop } : {}),
      others: within.filter(one => !beside.includes(one)).map(({ loop }) => loop),
      beside: 1 + beside.length,
    };
  });
}
/** mm²: smaller closed lines are signs. */
const leastPiece = 400;

/** A closed line's first point may lie on the other line: one in from it does not. */
const insideOf = (path: Path) =>
  path.segments.length > 0 ? pointAlong(path, pathLength(path) / 3) : pathStart(path);

/** Most of it: a dart in the stitching line leads away from the cutting line. */
function runsBeside(inner: Path, outer: Path): boolean {
  const length = pathLength(inner);
  const near = Array.from({ length: places }, (_, i) =>
    pointAlong(inner, (length * (i + 0.5)) / places),
  ).filter(p => nearestOnPath(outer, p).distance <= widest);
  return near.length >= mostOfIt * places;
}
const mostOfIt = 0.65;
