import { intersectPaths } from '../path/intersect.js';
import { pathEnd, pathStart } from '../path/path.js';
import { outlinePath } from '../pattern/outline.js';
import type { Piece } from '../pattern/types.js';
import { containsPoint } from '../region/contains.js';
import type { Finding } from '../telling.js';
import { joiningGap } from '../tolerance.js';
import { distance } from '../vector.js';
import { finding } from './tellings.js';

/** Double-pointed darts that an alteration cut: no longer closed, or no longer within their piece. */
export const contourDartFindings = (piece: Piece): readonly Finding[] =>
  piece.lines.flatMap(({ kind, name, path }) => {
    if (kind !== 'dart') return [];
    const outline = outlinePath(piece.outline);
    const isClosed = distance(pathStart(path), pathEnd(path)) <= joiningGap;
    const isWithin = containsPoint(outline, pathStart(path)) && intersectPaths(path, outline).length === 0;
    if (isClosed && isWithin) return [];
    return [
      finding(
        'warning',
        'contour-dart-cut',
        { piece: piece.name },
        { dart: { piece: piece.name, dart: name } },
      ),
    ];
  });
