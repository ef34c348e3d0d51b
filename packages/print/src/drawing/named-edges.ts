import {
  edgeNames,
  edgePath,
  type Path,
  type Pattern,
  type Piece,
  type Point,
  pathLength,
} from '@paperhinge/geometry';
import { requireWhole } from '@paperhinge/geometry/internal';
import { boundsOfPath, pointAlong, reversedPath, tangentAlong } from '@paperhinge/geometry/paths';
import { dartsOf, outlinePath, pleatsOf } from '@paperhinge/geometry/pattern';
import { add, rightOf, scale } from '@paperhinge/geometry/plane';
import { toPathData } from '@paperhinge/geometry/svg';
import { escaped } from './escape.js';

/** px to a mm, and px round each piece for the names that stand beside its edges. */
const enlargement = 0.5,
  room = 110;
/** px: a piece lower than this has no room for its name. */
const lowest = 90;
/** px: a letter of a piece's name, about. */
const letter = 9;
/** px: a row of pieces. */
const rowWidth = 1500;
/** px: how far inside its edge an arrow lies, and how far from the edge's start its point is. */
const arrowInset = 7,
  arrowReach = 26;

/**
 * Every piece with the names of its edges and darts, as a sheet writes them, and an arrow inside each edge at its start:
 * the end from which `1/3` or `60 mm` are counted. One SVG drawing, with its style unless it stands within a page.
 */
export function namedEdgesSvg(pattern: Pattern, { standsAlone = true } = {}): string {
  requireWhole(pattern);
  let x = 0,
    y = 0,
    deepest = 0,
    widest = 0;
  const figures = pattern.pieces.map(piece => {
    const { min, max } = boundsOfPath(outlinePath(piece.outline));
    const width = (max.x - min.x) * enlargement + 2 * room,
      height = (max.y - min.y) * enlargement + 2 * room * 0.45;
    if (x > 0 && x + width > rowWidth) [x, y, deepest] = [0, y + deepest, 0];
    const at = { x: x + room - min.x * enlargement, y: y + room * 0.45 - min.y * enlargement };
    x += width;
    deepest = Math.max(deepest, height);
    widest = Math.max(widest, x);
    // A piece too low or too narrow for its name within its lines has it above them.
    const isSmall =
      (max.y - min.y) * enlargement < lowest ||
      (max.x - min.x) * enlargement < piece.name.length * letter + 2 * arrowInset;
    const middle = { x: (min.x + max.x) / 2, y: isSmall ? min.y - 26 / enlargement : (min.y + max.y) / 2 };
    return pieceFigure(piece, at, middle);
  });
  const [w, h] = [Math.ceil(widest), Math.ceil(y + deepest)];
  const style = standsAlone ? `\n<style>${namedEdgesStyle}</style>` : '';
  return `<svg xmlns="http://www.w3.org/2000/svg" class="named" width="${w}" height="${h}" viewBox="0 0 ${w} ${h}" role="img" aria-label="${escaped(pattern.name)}">${style}
${figures.join('\n')}
</svg>
`;
}

/** How it is drawn; a page that holds the drawing within it has this among its own style. */
export const namedEdgesStyle = `
.named { background: #fffefb; font: 13px "Source Sans 3", "Helvetica Neue", sans-serif; color: #1d2330 }
.named path { fill: none; stroke: #1d2330; stroke-width: 1.2; vector-effect: non-scaling-stroke }
.named .pleat { stroke-width: 3 }
.named .fold { stroke-dasharray: 12 3 2 3 }
.named .start { fill: #b4552d; stroke: none }
.named text { fill: #1d2330 }
.named .title { font-weight: 600; font-size: 16px; text-anchor: middle }
.named .edge { fill: #2f5d62 }
`;

function pieceFigure(piece: Piece, at: Point, middle: Point): string {
  const path = (drawn: Path, kind = '') =>
    `<path${kind === '' ? '' : ` class="${kind}"`} transform="scale(${enlargement})" d="${toPathData(drawn)}"/>`;
  const folds = piece.outline.parts.filter(p => p.type === 'edge' && p.kind === 'fold').map(p => p.name);
  const px = (p: Point) => `${round(p.x * enlargement)} ${round(p.y * enlargement)}`;
  return [
    `<g transform="translate(${round(at.x)} ${round(at.y)})">`,
    ...edgeNames(piece).map(name => path(edgePath(piece, name), folds.includes(name) ? 'fold' : '')),
    ...dartsOf(piece).flatMap(dart => [
      ...dart.legs.map(leg => path(leg)),
      `<text class="edge" transform="translate(${px(dart.apex)})" dx="6" dy="4">${escaped(dart.name)}</text>`,
    ]),
    ...pleatsOf(piece).map(pleat => path(pleat.mouth, 'pleat')),
    ...edgeNames(piece).map(name => edgeLabel(edgePath(piece, name), name)),
    // A pleat lies in an edge whose name stands outside: its own stands within.
    ...pleatsOf(piece).map(({ mouth, name }) => nameBeside(reversedPath(mouth), name)),
    `<text class="title" transform="translate(${px(middle)})">${escaped(piece.name)}</text>`,
    '</g>',
  ].join('');
}

/** The name beside the middle of the edge, on the outside, and the arrow inside its start. */
function edgeLabel(path: Path, name: string): string {
  const length = pathLength(path);
  const on = (mm: number, off: number): Point =>
    add(scale(pointAlong(path, mm), enlargement), scale(rightOf(tangentAlong(path, mm)), off));
  const reach = Math.min(arrowReach / enlargement, length * 0.4);
  const tip = on(reach, arrowInset);
  const { x: u, y: v } = tangentAlong(path, reach);
  const back = (along: number, aside: number) =>
    `${round(tip.x - u * along - v * aside)} ${round(tip.y - v * along + u * aside)}`;
  return [
    `<path class="start" d="M${round(tip.x)} ${round(tip.y)} L${back(9, 3.6)} L${back(9, -3.6)} Z"/>`,
    nameBeside(path, name),
  ].join('');
}

/** A name at the middle of a path, on its left: outside the piece. */
function nameBeside(path: Path, name: string): string {
  const middle = pathLength(path) / 2;
  const outward = scale(rightOf(tangentAlong(path, middle)), -1);
  const { x, y } = add(scale(pointAlong(path, middle), enlargement), scale(outward, 8));
  const anchor = outward.x > 0.35 ? 'start' : outward.x < -0.35 ? 'end' : 'middle';
  const drop = outward.y > 0.35 ? 11 : outward.y < -0.35 ? -2 : 4;
  return `<text class="edge" x="${round(x)}" y="${round(y + drop)}" text-anchor="${anchor}">${escaped(name)}</text>`;
}

const round = (value: number): number => Math.round(value * 10) / 10;
