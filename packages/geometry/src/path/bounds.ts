import { type Box, boundsOf, boxAround } from '../curve/bounds.js';
import type { Path } from './path.js';
import { requireSegments } from './sound.js';

/** The exact upright box of a path, in mm. */
export function boundsOfPath(path: Path): Box {
  requireSegments(path);
  return path.segments.map(boundsOf).reduce(boxAround);
}
