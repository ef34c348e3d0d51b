import { pathLength } from '../../path/length.js';
import { dot, type Point } from '../../vector.js';
import { edgePath, pieceNamed } from '../outline.js';
import { requireWhole } from '../require-whole.js';
import { refusal } from '../tellings.js';
import type { EdgeRun, Pattern, Piece, Seam } from '../types.js';
import { validatePattern } from '../validate.js';
import { blendedPiece, mix, type ShareBetween } from './blend-piece.js';
import { fairShare } from './fair-share.js';
import { downOf, laidOn, levelDown } from './laid-on.js';
import { sizeBetween } from './size-between.js';
import { sizeDifferences } from './size-differences.js';

/** How much of the second size is wanted at a level, from 0 (the first size) to 1 (the second). */
export interface LevelShare {
  /** The name of level lines of the pattern. */
  readonly level: string;
  readonly share: number;
}

/**
 * A pattern between two sizes of it: `share` of the way from the first to the second, everywhere alike or level by
 * level (a 12 at the bust, a 14 at the hip) and fair between. Above the highest and below the lowest level a piece
 * has, the share stays as it is there; a piece that has none of the levels takes the first one's.
 *
 * Sizes are laid on one another by grain, centre and the first level that they share; lines within `fitTolerance`.
 * At 0 and at 1 everywhere the sizes themselves are given back.
 *
 * @throws PatternError `sizes-differ` where they are not the same pattern (`sizeDifferences` lists all);
 *   `share-out-of-range`; `unknown-level`; those of `validatePattern` for sizes so unlike that nothing lies between
 */
export function blendSizes(a: Pattern, b: Pattern, share: number | readonly LevelShare[]): Pattern {
  requireWhole(a);
  requireWhole(b);
  const wanted = Array.isArray(share) ? (share as readonly LevelShare[]) : [];
  refuseBadShares(Array.isArray(share) ? wanted.map(s => s.share) : [share as number]);
  refuseUnknownLevels(a, wanted);
  const [unlike] = sizeDifferences(a, b);
  if (unlike)
    throw refusal(
      'sizes-differ',
      unlike.about as Parameters<typeof refusal<'sizes-differ'>>[1],
      unlike.where,
    );
  if (share === 0) return a;
  if (share === 1) return b;
  const pieces = a.pieces.map(piece => blended(piece, pieceNamed(b, piece.name), share));
  const size = a.size && b.size ? sizeBetween(a.size, b.size) : (a.size ?? b.size ?? '');
  const much = typeof share === 'number' ? share : wanted[0]!.share;
  const pattern: Pattern = {
    ...a,
    pieces,
    seams: a.seams.map(seam =>
      blendedSeam(seam, b.seams.find(s => s.name === seam.name)!, much, [a, b, { ...a, pieces }]),
    ),
    ...(size === '' ? {} : { size }),
  };
  validatePattern(pattern);
  return pattern;
}

function blended(a: Piece, b: Piece, share: number | readonly LevelShare[]): Piece {
  if (typeof share === 'number') return blendedPiece(a, laidOn(b, a, []), () => share);
  const levels = share.map(s => s.level);
  const laid = laidOn(b, a, levels);
  return blendedPiece(a, laid, shareBetween(a, laid, share));
}

/** The share that is wanted at the height of two corresponding places. */
function shareBetween(a: Piece, b: Piece, wanted: readonly LevelShare[]): ShareBetween {
  const down = downOf(a);
  const places = wanted.flatMap(({ level, share }) => {
    const [x, y] = [levelDown(a, level, down), levelDown(b, level, down)];
    return x === undefined || y === undefined ? [] : [{ down: (x + y) / 2, share }];
  });
  if (places.length === 0) return () => wanted[0]!.share;
  const fair = fairShare(places);
  return (p: Point, q: Point) => fair((dot(p, down) + dot(q, down)) / 2);
}

function blendedSeam(a: Seam, b: Seam, share: number, patterns: readonly [Pattern, Pattern, Pattern]): Seam {
  const side = (runs: readonly EdgeRun[], others: readonly EdgeRun[]): readonly EdgeRun[] =>
    runs.map((run, i) => blendedRun(run, others[i]!, share, patterns));
  const ease =
    'mm' in a.ease && 'mm' in b.ease
      ? { mm: mix(a.ease.mm, b.ease.mm, share) }
      : 'percent' in a.ease && 'percent' in b.ease
        ? { percent: mix(a.ease.percent, b.ease.percent, share) }
        : a.ease;
  return { ...a, a: side(a.a, b.a), b: side(a.b, b.b), ease };
}

/** A part of an edge keeps its shares of it. */
function blendedRun(
  a: EdgeRun,
  b: EdgeRun,
  share: number,
  [first, second, now]: readonly [Pattern, Pattern, Pattern],
): EdgeRun {
  if (!a.part) return a;
  const length = (pattern: Pattern): number => pathLength(edgePath(pieceNamed(pattern, a.piece), a.edge));
  const at = (end: 'from' | 'to'): number => {
    const x = a.part![end] / length(first);
    return (b.part ? mix(x, b.part[end] / length(second), share) : x) * length(now);
  };
  return { ...a, part: { from: at('from'), to: Math.min(at('to'), length(now)) } };
}

function refuseBadShares(shares: readonly number[]): void {
  if (shares.length === 0 || !shares.every(share => share >= 0 && share <= 1))
    throw refusal('share-out-of-range', {});
}

function refuseUnknownLevels({ pieces }: Pattern, wanted: readonly LevelShare[]): void {
  const lines = pieces.flatMap(piece => piece.lines).filter(line => line.kind === 'level');
  const names = [...new Set(lines.map(line => line.name))];
  const unknown = wanted.find(({ level }) => !names.includes(level));
  if (unknown) throw refusal('unknown-level', { level: unknown.level, names });
}
