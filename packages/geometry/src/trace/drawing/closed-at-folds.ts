import { isLine, line } from '../../curve/segment.js';
import { nearestOnPath } from '../../path/nearest.js';
import { type Path, pathEnd, pathOf, pathStart } from '../../path/path.js';
import type { DrawnLine } from './drawing.js';
import type { Loop } from './loops.js';

/**
 * Ways that begin and end on one and the same fold, as the stitching line of a half does: shut along it. A fold is a
 * line that is said to be one, or a straight side of an outline that the way begins and ends on. The others stay open.
 */
export function closedAtFolds(
  { loops, open }: { readonly loops: readonly Loop[]; readonly open: readonly Loop[] },
  told: readonly DrawnLine[],
  reach: number,
): { readonly loops: readonly Loop[]; readonly open: readonly Loop[] } {
  const sides = loops.flatMap(({ path, lines }) =>
    path.segments.filter(isLine).map((side): DrawnLine => ({ ...lines[0]!, path: pathOf(side) })),
  );
  const foldOf = ({ path, lines }: Loop): DrawnLine | undefined =>
    path.segments.length < 3
      ? undefined
      : [...told, ...sides].find(fold => fold.group === lines[0]!.group && endsOn(fold.path, path, reach));
  const shut = open.flatMap((loop): readonly Loop[] => {
    const fold = foldOf(loop);
    if (!fold) return [];
    const closing = line(pathEnd(loop.path), pathStart(loop.path));
    const own: DrawnLine = { ...fold, path: pathOf(closing), is: 'fold' };
    return [{ path: { segments: [...loop.path.segments, closing] }, lines: [...loop.lines, own] }];
  });
  return { loops: shut, open: open.filter(loop => !foldOf(loop)) };
}

const endsOn = (fold: Path, path: Path, reach: number): boolean =>
  [pathStart(path), pathEnd(path)].every(p => nearestOnPath(fold, p).distance <= reach);
