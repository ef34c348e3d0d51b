import { type Pattern, type Piece, type Point, pathLength } from '@paperhinge/geometry';
import { pathEnd, pathStart, pointAlong, tangentAlong } from '@paperhinge/geometry/paths';
import { dartsOf } from '@paperhinge/geometry/pattern';
import { add, leftOf, scale } from '@paperhinge/geometry/plane';

/** A spot of a pattern that keeps its name while a figure changes. */
export interface Landmark {
  readonly piece: string;
  /** The edge, dart, notch, line or mark it belongs to. */
  readonly of: string;
  readonly at: Point;
  /** A corner, an end, a mark: a spot that another can be brought to. */
  readonly isPoint: boolean;
}

/** Spots of a pattern by keys that say which they are, so that two states of one pattern can be laid on one another. */
export function landmarksOf(pattern: Pattern): ReadonlyMap<string, Landmark> {
  const found = new Map<string, Landmark>();
  for (const piece of pattern.pieces)
    for (const [key, of, at, isPoint] of spotsOn(piece))
      found.set(`${piece.name} ${key}`, { piece: piece.name, of, at, isPoint });
  return found;
}

type Spot = readonly [key: string, of: string, at: Point, isPoint: boolean];

function* spotsOn(piece: Piece): Generator<Spot> {
  const counted = new Map<string, number>();
  for (const part of piece.outline.parts) {
    const nth = counted.get(part.name) ?? 0;
    counted.set(part.name, nth + 1);
    const key = `${part.type} ${part.name} ${nth}`;
    if (part.type === 'pleat') yield [`${key} start`, part.name, pathStart(part.mouth), true];
    if (part.type !== 'edge') continue;
    yield [`${key} start`, part.name, pathStart(part.path), true];
    yield [`${key} end`, part.name, pathEnd(part.path), true];
    const middle = pathLength(part.path) / 2;
    const at = pointAlong(part.path, middle);
    yield [`${key} middle`, part.name, at, false];
    // Where the cut runs: what an allowance moves.
    const outwards = leftOf(tangentAlong(part.path, middle));
    if (part.allowance > 0) yield [`${key} cut`, part.name, add(at, scale(outwards, part.allowance)), false];
  }
  for (const { name, apex } of dartsOf(piece)) yield [`apex ${name}`, name, apex, true];
  for (const { name, path } of piece.lines) {
    yield [`line ${name} start`, name, pathStart(path), true];
    yield [`line ${name} end`, name, pathEnd(path), true];
  }
  for (const { name, at } of piece.marks) yield [`mark ${name}`, name, at, true];
  const marked = new Map<string, number>();
  for (const { edge, at } of piece.notches) {
    const parts = piece.outline.parts.filter(p => p.type === 'edge' && p.name === edge);
    if (parts.length !== 1 || parts[0]!.type !== 'edge') continue;
    const nth = marked.get(edge) ?? 0;
    marked.set(edge, nth + 1);
    yield [`notch ${edge} ${nth}`, edge, pointAlong(parts[0]!.path, at), true];
  }
}
