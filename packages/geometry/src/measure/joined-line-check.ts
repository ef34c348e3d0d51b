import type { Finding } from '../telling.js';
import { joinedCorner, seamTolerance } from '../tolerance.js';
import type { JoinedLine } from './joined-lines.js';
import { finding } from './tellings.js';

const degrees = (rad: number): number => (rad * 180) / Math.PI;

/**
 * A finding where a joined line bends by more than `joinedCorner` or steps by more than the tolerance. Where a seam
 * does not match, that is a fault of its own: the step at its end is not told again.
 */
export function joinedLineFinding(line: JoinedLine, toleranceMm = seamTolerance): readonly Finding[] {
  const { closed, first, second, cornerDeg, stepMm, takeMm, blendMm } = line;
  const corner = Math.abs(cornerDeg) > degrees(joinedCorner),
    step = Math.abs(stepMm) > toleranceMm && closed?.seam === undefined;
  if (!closed || (!corner && !step)) return [];
  const figures = { cornerDeg, stepMm, takeMm, blendMm };
  return [
    finding('warning', 'joined-line-broken', first, { closed, first, second, ...figures, corner, step }),
  ];
}

/**
 * A finding where the end of a piece that is turned back does not lie along what it lies on.
 * @param under which of the two edges is turned back
 */
export function turnedBackFinding(
  { closed, first, second, cornerDeg }: JoinedLine,
  under: 'first' | 'second',
): readonly Finding[] {
  if (!closed || Math.abs(cornerDeg) <= degrees(joinedCorner)) return [];
  const [below, over] = under === 'first' ? [first, second] : [second, first];
  return [
    finding('warning', 'turned-back-end-off', below, {
      seam: closed,
      under: below,
      over,
      piece: { piece: below.piece },
      angleDeg: Math.abs(cornerDeg),
    }),
  ];
}
