import { pathEnd, pathStart } from '../../path/path.js';
import { distance, dot, type Point, subtract, unit } from '../../vector.js';
import { edgeNames, edgePath, neighboursOf } from '../outline.js';
import type { Edge, Piece } from '../types.js';

// Common practice, no source: cosines of angles to the grain.

/** A front edge runs within 18 degrees of the grain. */
const along = 0.95;
/** The hem that it goes down to runs at 60 degrees to it at least. */
const across = 0.5;

/**
 * Whether an edge that is turned like a hem runs down the grain to the piece's hem, as the front edge of a wrapped skirt
 * does: it closes the garment and does not go round it.
 */
export function isFrontEdge(piece: Piece, { name, kind }: Edge): boolean {
  const grain = piece.lines.find(line => line.kind === 'grain')?.path;
  if (kind !== 'hem' || !grain) return false;
  const down = heading(pathStart(grain), pathEnd(grain));
  const toGrain = (edge: string): number => {
    const path = edgePath(piece, edge);
    const runs = heading(pathStart(path), pathEnd(path));
    return down && runs ? Math.abs(dot(down, runs)) : Number.NaN;
  };
  const { start, end } = neighboursOf(piece, name);
  return (
    toGrain(name) > along &&
    [start, end].some(
      beside => edgeNames(piece).includes(beside) && isHem(piece, beside) && toGrain(beside) < across,
    )
  );
}

const isHem = ({ outline }: Piece, name: string): boolean =>
  outline.parts.some(part => part.type === 'edge' && part.name === name && part.kind === 'hem');

const heading = (from: Point, to: Point): Point | undefined =>
  distance(from, to) > 0 ? unit(subtract(to, from)) : undefined;
