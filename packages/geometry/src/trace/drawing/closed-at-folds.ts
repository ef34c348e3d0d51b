import { line } from '../../curve/segment.js';
import { nearestOnPath } from '../../path/nearest.js';
import { pathEnd, pathStart } from '../../path/path.js';
import type { DrawnLine } from './drawing.js';
import type { Loop } from './loops.js';

/**
 * Ways that begin and end on one and the same fold, as the stitching line of a half does: shut along it. The others
 * stay open.
 */
export function closedAtFolds(
  open: readonly Loop[],
  folds: readonly DrawnLine[],
  reach: number,
): { readonly loops: readonly Loop[]; readonly open: readonly Loop[] } {
  const foldOf = ({ path, lines }: Loop): DrawnLine | undefined =>
    folds.find(
      fold =>
        fold.group === lines[0]!.group &&
        [pathStart(path), pathEnd(path)].every(p => nearestOnPath(fold.path, p).distance <= reach),
    );
  const shut = open.flatMap((loop): readonly Loop[] => {
    const fold = loop.path.segments.length > 1 && foldOf(loop);
    if (!fold) return [];
    const closing = line(pathEnd(loop.path), pathStart(loop.path));
    return [{ path: { segments: [...loop.path.segments, closing] }, lines: [...loop.lines, fold] }];
  });
  return { loops: shut, open: open.filter(loop => !foldOf(loop) || loop.path.segments.length < 2) };
}
