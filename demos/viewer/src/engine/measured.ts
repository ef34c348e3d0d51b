import { edgeNames, edgePath, type Pattern } from '@paperhinge/geometry';
import { nearestOnPath } from '@paperhinge/geometry/paths';
import { distance } from '@paperhinge/geometry/plane';
import type { Measured } from './pictures.js';
import type { AskMeasured } from './questions.js';

/** mm: a point so near to an edge lies on it. */
const onEdge = 0.5;

/** Straight from one point of a piece to another, and along the edge that both lie on. */
export function measured(
  pattern: Pattern,
  { piece: name, from: [x, y], to: [u, v] }: AskMeasured['measure'],
): Measured {
  const [from, to] = [
    { x, y },
    { x: u, y: v },
  ];
  const piece = pattern.pieces.find(p => p.name === name);
  const along = (piece ? edgeNames(piece) : []).flatMap(edge => {
    const path = edgePath(piece!, edge);
    const [p, q] = [nearestOnPath(path, from), nearestOnPath(path, to)];
    return p.distance <= onEdge && q.distance <= onEdge ? [{ edge, mm: Math.abs(p.along - q.along) }] : [];
  });
  return { straightMm: distance(from, to), along };
}
