import { type Path, type Piece, pathLength } from '@paperhinge/geometry';
import { intersectPaths, pathEnd, pathStart, subpath } from '@paperhinge/geometry/paths';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { subtract } from '@paperhinge/geometry/plane';
import { middleOf } from '../moved-edges/grain.js';
import { lineThrough, reachOf } from '../moved-edges/meet.js';

/** A piece with a grain line of the way of another's, through its middle, where it has none of its own. */
export function withGrainOf(piece: Piece, other: Piece): Piece {
  const grain = other.lines.find(l => l.kind === 'grain');
  if (!grain || piece.lines.some(l => l.kind === 'grain')) return piece;
  const path = acrossMiddle(piece, subtract(pathEnd(grain.path), pathStart(grain.path)));
  return path ? { ...piece, lines: [...piece.lines, { ...grain, path }] } : piece;
}

/** Share of the way across a piece that its grain line is left clear of the edges on either side. */
const clear = 0.15;

function acrossMiddle(piece: Piece, way: { readonly x: number; readonly y: number }): Path | undefined {
  const outline = outlinePath(piece.outline);
  const reach = reachOf(outline);
  const size = Math.hypot(way.x, way.y);
  const whole = lineThrough(middleOf(piece), { x: way.x / size, y: way.y / size }, reach);
  const middle = pathLength(whole) / 2;
  const places = intersectPaths(whole, outline).map(m => m.alongA);
  const before = Math.max(...places.filter(p => p < middle)),
    after = Math.min(...places.filter(p => p > middle));
  // The middle of a bent piece may lie beside it.
  if (!Number.isFinite(before) || !Number.isFinite(after)) return undefined;
  const room = (after - before) * clear;
  return subpath(whole, before + room, after - room);
}
