import type { LookAround } from './around-corners.js';
import type { BodySide } from './front-and-back.js';
import { type Candidate, ofItself } from './seam-candidates.js';
import type { SewingLine } from './sewing-lines.js';

/** Odds that what runs on from the middle is sewn to its like; in front, and where it is faced, the garment may open. */
const runningOdds = 5,
  openOdds = 0.8;
const mostSure = 0.85;
/** rad: what runs on straight, give or take. */
const near = 0.4;

/**
 * The centre of a yoke above a seat, the ends of a band's two halves behind: a line that runs on, over a seam, from a
 * fold or from a line that is sewn to its own mirror image.
 */
export function centresRunningOn(
  all: readonly SewingLine[],
  isOpen: (line: SewingLine) => boolean,
  around: LookAround,
  sides: ReadonlyMap<string, BodySide>,
): readonly Candidate[] {
  const runsOn = (line: SewingLine, atStart: boolean): boolean => {
    const { isMiddle, seamsCrossed, cloth } = around({ line, atStart });
    return isMiddle && seamsCrossed > 0 && cloth !== undefined && Math.abs(cloth - Math.PI) < near;
  };
  return all
    .filter(line => line.piece.cutting.mirrored && isOpen(line))
    .filter(line => runsOn(line, true) || runsOn(line, false))
    .map(line => {
      const mayOpen = line.pieceRole === 'facing' || sides.get(line.piece.name)?.front;
      return ofItself(line, { name: 'centre', odds: mayOpen ? openOdds : runningOdds, most: mostSure });
    });
}
