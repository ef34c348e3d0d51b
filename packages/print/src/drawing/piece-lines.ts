import { type Mark, type PieceLine, type Point, pathLength, polyline } from '@paperhinge/geometry';
import { endTangent, pathEnd, pathStart, startTangent } from '@paperhinge/geometry/paths';
import { add, leftOf, scale } from '@paperhinge/geometry/plane';
import type { Ink, Role } from './ink.js';
import { arrowhead, circle, closedStroke, directionOf, straight, stroke } from './shapes.js';

const roleOf: Readonly<Record<Exclude<PieceLine['kind'], 'grain' | 'lengthen-shorten'>, Role>> = {
  level: 'level',
  fold: 'fold-line',
  placement: 'placement',
  style: 'style-line',
  dart: 'stitch',
};

/** A line within a piece, without its name: grain with arrowheads at both ends, lengthen/shorten as a pair of lines. */
export function lineInks(line: PieceLine): readonly Ink[] {
  if (line.kind === 'grain') return grainInks(line);
  if (line.kind !== 'lengthen-shorten') return [stroke(roleOf[line.kind], line.path)];
  const from = pathStart(line.path),
    to = pathEnd(line.path);
  const apart = scale(leftOf(directionOf(from, to)), lineGap / 2);
  return [apart, scale(apart, -1)].map(v => stroke('lengthen-shorten', polyline(add(from, v), add(to, v))));
}

/** mm between the two lines of a lengthen/shorten mark. */
const lineGap = 2.4;

function grainInks({ path }: PieceLine): readonly Ink[] {
  const head = Math.min(6, pathLength(path) / 4);
  return [
    stroke('grain', path),
    arrowhead('grain', pathEnd(path), endTangent(path), head),
    arrowhead('grain', pathStart(path), scale(startTangent(path), -1), head),
  ];
}

/** A mark as a sign: button a crossed ring, drill hole a small ring with its centre, anything else a target. */
export function markInks({ kind, at }: Mark): readonly Ink[] {
  if (kind === 'button') return buttonInks(at);
  if (kind === 'drill') return [closedStroke('mark', circle(at, 1.2)), ...cross(at, 0.5)];
  return [closedStroke('mark', circle(at, 2)), ...cross(at, 3.4)];
}

/** A crossed ring. */
export function buttonInks(at: Point): readonly Ink[] {
  const d = 2.2;
  const { x, y } = at;
  return [
    closedStroke('mark', circle(at, 3)),
    straight('mark', { x: x - d, y: y - d }, { x: x + d, y: y + d }),
    straight('mark', { x: x - d, y: y + d }, { x: x + d, y: y - d }),
  ];
}

/** A small cross, for a hook or a snap. */
export const hookInks = (at: Point): readonly Ink[] => cross(at, 2.4);

const cross = ({ x, y }: Point, r: number): readonly Ink[] => [
  straight('mark', { x: x - r, y }, { x: x + r, y }),
  straight('mark', { x, y: y - r }, { x, y: y + r }),
];
