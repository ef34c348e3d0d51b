import { type Affine, apply, compose, rotationTo, translation } from '../../affine.js';
import { type Path, pathEnd, pathStart, transformedPath } from '../../path/path.js';
import { centroid } from '../../region/area.js';
import { angleTolerance } from '../../tolerance.js';
import { cross, dot, lerp, type Point, subtract, unit } from '../../vector.js';
import { edgePath, outlinePath } from '../outline.js';
import { centreEdgeOf, edgesOfRole, isCentreLine } from '../roles/roles.js';
import type { OutlinePart, Piece } from '../types.js';

/** Page down, where a piece has no grain line. */
const pageDown: Point = { x: 0, y: 1 };

/** The direction down a piece: along its grain towards its hem, however it lies on the page; without a hem, page down. */
export function downOf(piece: Piece): Point {
  const grain = piece.lines.find(line => line.kind === 'grain')?.path;
  if (!grain) return pageDown;
  const along = unit(subtract(pathEnd(grain), pathStart(grain)));
  const [hem] = edgesOfRole(piece, 'hem', 'wrist').map(name => edgePath(piece, name));
  const isDown = hem
    ? dot(subtract(middleOf(hem), centroid(outlinePath(piece.outline))), along) > 0
    : along.y > 0 || (along.y === 0 && along.x > 0);
  return isDown ? along : { x: -along.x, y: -along.y };
}

const middleOf = (path: Path): Point => lerp(pathStart(path), pathEnd(path), 1 / 2);

/** How far down a level lies, in mm; `undefined` where the piece does not have it. */
export function levelDown(piece: Piece, level: string, down: Point): number | undefined {
  const path = piece.lines.find(line => line.kind === 'level' && line.name === level)?.path;
  return path && dot(middleOf(path), down);
}

/**
 * A size of a piece laid on another: grain on grain, centre on centre (fold, centre edge or centre line, else the
 * grain line), and along it the first of the levels that both have, else the tops of the two centres.
 */
export function laidOn(piece: Piece, other: Piece, levels: readonly string[]): Piece {
  const from = downOf(piece),
    to = downOf(other);
  const isTurned = Math.abs(cross(from, to)) > angleTolerance;
  const turn: Affine = isTurned
    ? rotationTo(dot(from, to), cross(from, to), { x: 0, y: 0 })
    : translation({ x: 0, y: 0 });
  const here = apply(turn, anchorOf(piece, other, levels));
  const there = anchorOf(other, piece, levels);
  return moved(piece, compose(turn, translation(subtract(there, here))));
}

/** The place of the centre at the level that both pieces have, or at its top. */
function anchorOf(piece: Piece, other: Piece, levels: readonly string[]): Point {
  const down = downOf(piece);
  const across: Point = { x: down.y, y: -down.x };
  const centre = centrePath(piece);
  const ends = [pathStart(centre), pathEnd(centre)];
  const top = dot(ends[0]!, down) < dot(ends[1]!, down) ? ends[0]! : ends[1]!;
  const level = levels.find(
    name => levelDown(piece, name, down) !== undefined && levelDown(other, name, downOf(other)) !== undefined,
  );
  const depth = level === undefined ? dot(top, down) : levelDown(piece, level, down)!;
  const out = dot(top, across);
  return { x: across.x * out + down.x * depth, y: across.y * out + down.y * depth };
}

function centrePath(piece: Piece): Path {
  const edge = centreEdgeOf(piece);
  if (edge) return edgePath(piece, edge.name);
  const line = piece.lines.find(isCentreLine) ?? piece.lines.find(l => l.kind === 'grain');
  return line?.path ?? outlinePath(piece.outline);
}

function moved(piece: Piece, map: Affine): Piece {
  const path = (p: Path): Path => transformedPath(p, map);
  const part = (p: OutlinePart): OutlinePart =>
    p.type === 'edge'
      ? { ...p, path: path(p.path) }
      : p.type === 'dart'
        ? { ...p, legs: [path(p.legs[0]), path(p.legs[1])], apex: apply(map, p.apex) }
        : { ...p, mouth: path(p.mouth) };
  return {
    ...piece,
    outline: { parts: piece.outline.parts.map(part) },
    lines: piece.lines.map(line => ({ ...line, path: path(line.path) })),
    marks: piece.marks.map(mark => ({ ...mark, at: apply(map, mark.at) })),
  };
}
