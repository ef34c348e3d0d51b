import { oncePer } from '../once-per.js';
import { requireWhole } from '../pattern/require-whole.js';
import type { Pattern } from '../pattern/types.js';
import { bodyPieces } from './body-pieces.js';
import { levelAcross, levelNames, levelToCorners } from './level-across.js';
import { overlapAt } from './overlap-at.js';
import { allRound, type Round } from './rings.js';
import { isShownBehind, withShownBehind } from './shown-behind.js';

/** The girth of a garment at one level. */
export interface LevelGirth {
  readonly level: string;
  /** mm, all round the garment; at a level of a limb, round one of the pair. */
  readonly girthMm: number;
  readonly limb: boolean;
  /** The pieces that have the level. */
  readonly pieces: readonly string[];
}

/**
 * The girth of a garment at each of its levels, every copy counted: `levelAcross` of each piece that has it, and of a
 * limb that of one. Above the crotch that is the sum over left and right, below it one leg's. A level that was drawn
 * from the corner at the top of a limb's seam still runs round the limb where an alteration moved the corner away
 * from it: then the line is taken to the corner. What overlaps where the garment buttons counts once; behind the mouth
 * of a pocket the side piece counts as far as it shows. Linings, facings and other pieces made for an edge do not count.
 * Levels in pattern order.
 * @throws PatternError what `requireWhole` throws
 */
export const girthsAtLevels: (pattern: Pattern) => readonly LevelGirth[] = /* @__PURE__ */ oncePer(
  (pattern: Pattern) => {
    requireWhole(pattern);
    const pieces = bodyPieces(pattern);
    const levels = new Set(pieces.flatMap(levelNames));
    return [...levels].map(level => {
      const having = pieces.filter(piece => levelNames(piece).includes(level));
      const counted = having.filter(piece => !isShownBehind(pattern, piece, having));
      const across = counted.map(piece => ({
        piece,
        ...withShownBehind(pattern, piece, levelAcross(piece, level)),
      }));
      const straight = allRound(pattern, across);
      const cornered = allRound(
        pattern,
        counted.map(piece => ({ piece, ...withShownBehind(pattern, piece, levelToCorners(piece, level)) })),
      );
      const isRing = ({ limb, closed }: Round) => limb && closed;
      const { mm, limb } = !isRing(straight) && isRing(cornered) ? cornered : straight;
      const lapped = across.reduce((sum, run) => sum + overlapAt(pattern, run.piece, run), 0);
      return { level, girthMm: mm - (limb ? 0 : lapped), limb, pieces: having.map(p => p.name) };
    });
  },
);

/** The girths of `girthsAtLevels` in mm, by the names of the levels. @throws the same */
export const levelGirths = (pattern: Pattern): Readonly<Record<string, number>> =>
  Object.fromEntries(girthsAtLevels(pattern).map(({ level, girthMm }) => [level, girthMm]));
