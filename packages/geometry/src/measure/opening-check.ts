import { pathLength } from '../path/length.js';
import { edgeNamed, edgeNames, edgePath } from '../pattern/outline.js';
import type { Piece } from '../pattern/types.js';
import type { Finding } from '../telling.js';

import { coincidenceTolerance } from '../tolerance.js';
import { finding } from './tellings.js';

/** Openings (placket, zip) that are longer than the edge they lie in, as drawn or once the edge was shortened. */
export const openingFindings = (piece: Piece): readonly Finding[] =>
  edgeNames(piece).flatMap(name => {
    const edge = { piece: piece.name, edge: name };
    const openingMm = edgeNamed(piece, name).opening ?? 0;
    const edgeMm = pathLength(edgePath(piece, name));
    if (openingMm <= edgeMm + coincidenceTolerance) return [];
    return [finding('warning', 'opening-longer-than-edge', edge, { edge, openingMm, edgeMm })];
  });
