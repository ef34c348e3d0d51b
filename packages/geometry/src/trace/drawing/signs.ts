import { pathLength, pointAlong } from '../../path/length.js';
import { nearestOnPath } from '../../path/nearest.js';
import { endTangent, type Path, pathEnd, pathOf, pathStart, startTangent } from '../../path/path.js';
import { cornerTurn } from '../../tolerance.js';
import { angleBetween, distance, subtract } from '../../vector.js';

/** What a stroke within a piece seems to be. */
export type Sign =
  | { readonly is: 'dart'; readonly path: Path }
  | { readonly is: 'notch'; readonly path: Path }
  | { readonly is: 'grain'; readonly path: Path; readonly arrow: boolean }
  | { readonly is: 'line'; readonly path: Path };

// mm, of signs as they are drawn; common practice, no source.

/** A notch is a tick no longer than this. */
const longestNotch = 20;
/** A grain line is at least as long as this. */
const shortestGrain = 60;
/** The strokes of an arrow's head. */
const longestHead = 25;

/** What each stroke is, seen against the outline that it lies in; `reach`: how near an end counts as on it. */
export function signsWithin(outline: Path, strokes: readonly Path[], reach: number): readonly Sign[] {
  const onOutline = (path: Path, at: 'start' | 'end'): boolean =>
    nearestOnPath(outline, at === 'start' ? pathStart(path) : pathEnd(path)).distance <= reach;
  const signs = strokes.map((path): Sign => {
    const [start, end] = [onOutline(path, 'start'), onOutline(path, 'end')];
    const length = pathLength(path);
    if (length <= longestNotch && (start || end || crosses(outline, path))) return { is: 'notch', path };
    if (start && end && isWedge(path)) return { is: 'dart', path };
    return { is: 'line', path };
  });
  const heads = signs.filter(sign => sign.is === 'line' && pathLength(sign.path) <= longestHead);
  const candidates = signs.flatMap(sign => {
    if (sign.is !== 'line' || !isStraight(sign.path) || pathLength(sign.path) < shortestGrain) return [];
    if (onOutline(sign.path, 'start') || onOutline(sign.path, 'end')) return [];
    const tips = [pathStart(sign.path), pathEnd(sign.path)];
    const own = heads.filter(({ path }) =>
      tips.some(tip => [pathStart(path), pathEnd(path), middleOf(path)].some(p => distance(p, tip) <= 2)),
    );
    return [{ sign, heads: own, upright: upright(sign.path) }];
  });
  const [grain] = [...candidates].sort(
    (a, b) =>
      Number(b.heads.length > 0) - Number(a.heads.length > 0) ||
      b.upright - a.upright ||
      pathLength(b.sign.path) - pathLength(a.sign.path),
  );
  if (!grain || (grain.heads.length === 0 && grain.upright < 1)) return signs;
  return signs.flatMap((sign): readonly Sign[] => {
    if (sign === grain.sign) return [{ is: 'grain', path: sign.path, arrow: grain.heads.length > 0 }];
    return grain.heads.includes(sign as (typeof grain.heads)[number]) ? [] : [sign];
  });
}

/** One sharp turn between two nearly straight ways of about one length. */
function isWedge(path: Path): boolean {
  const { segments } = path;
  const turns = segments
    .slice(1)
    .map((segment, i) =>
      Math.abs(angleBetween(endTangent(pathOf(segments[i]!)), startTangent(pathOf(segment)))),
    );
  const sharpest = Math.max(0, ...turns);
  if (sharpest < sharpTurn) return false;
  const at = turns.indexOf(sharpest) + 1;
  const [a, b] = [segments.slice(0, at), segments.slice(at)].map(part => pathLength({ segments: part })) as [
    number,
    number,
  ];
  return Math.abs(a - b) <= 0.15 * Math.max(a, b);
}
/** rad: a dart's legs turn back by at least this. */
const sharpTurn = (100 * Math.PI) / 180;

const crosses = (outline: Path, path: Path): boolean =>
  nearestOnPath(outline, middleOf(path)).distance <= pathLength(path) / 2;
/** Half way along a stroke. */
export const middleOf = (path: Path) => pointAlong(path, pathLength(path) / 2);

const isStraight = (path: Path): boolean =>
  distance(pathStart(path), pathEnd(path)) >= 0.999 * pathLength(path) &&
  Math.abs(angleBetween(startTangent(path), endTangent(path))) < cornerTurn;

/** 1 where a line stands upright or lies level on its page, else 0. */
function upright(path: Path): number {
  const { x, y } = subtract(pathEnd(path), pathStart(path));
  const angle = Math.atan2(Math.abs(y), Math.abs(x));
  return Math.min(angle, Math.PI / 2 - angle) < (3 * Math.PI) / 180 ? 1 : 0;
}
