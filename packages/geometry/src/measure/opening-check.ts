import type { Finding } from '../errors.js';
import { pathLength } from '../path/length.js';
import { edgeNamed, edgeNames, edgePath } from '../pattern/outline.js';
import type { Piece } from '../pattern/types.js';
import { coincidenceTolerance } from '../tolerance.js';

/** Openings (placket, zip) that are longer than the edge they lie in, as drawn or once the edge was shortened. */
export const openingFindings = (piece: Piece): readonly Finding[] =>
  edgeNames(piece).flatMap((edge): readonly Finding[] => {
    const openingMm = edgeNamed(piece, edge).opening ?? 0;
    const edgeMm = pathLength(edgePath(piece, edge));
    if (openingMm <= edgeMm + coincidenceTolerance) return [];
    return [
      {
        severity: 'warning',
        code: 'opening-longer-than-edge',
        where: { piece: piece.name, edge },
        message: `The opening of ${openingMm.toFixed(1)} mm is longer than its edge, which has ${edgeMm.toFixed(1)} mm.`,
        figures: { openingMm, edgeMm },
        remedy: 'Give a length within the edge; an opening over two edges is given for each.',
      },
    ];
  });
