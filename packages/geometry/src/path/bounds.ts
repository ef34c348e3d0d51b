import { type Box, boundsOf, boxAround } from '../curve/bounds.js';
import type { Path } from './path.js';

/** The exact upright box of a path, in mm. */
export const boundsOfPath = (path: Path): Box => path.segments.map(boundsOf).reduce(boxAround);
