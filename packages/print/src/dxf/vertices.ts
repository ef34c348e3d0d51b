import type { Path, Point, Segment } from '@paperhinge/geometry';
import { isLine, pointAt, startOf, tangentAt } from '@paperhinge/geometry/curves';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { pathEnd } from '@paperhinge/geometry/paths';
import { angleBetween } from '@paperhinge/geometry/plane';
import { chordSteps } from '../drawing/chord-steps.js';

/** mm. Chords this near the curve: a tenth of what a blade or a needle keeps, and few enough points for old readers. */
export const chordError = 0.01;
/** mm: the same for lines whose curve points are not given, since nothing is cut along them. */
export const drawnChordError = 0.05;

/** A point of a flattened line: `turn` where it bends, a straight line begins or it ends; `curve` where a curve runs smoothly on. */
export interface Vertex {
  readonly at: Point;
  readonly kind: 'turn' | 'curve';
}

/**
 * A path as the points of a polyline; its chords stay within `error` mm of it. A closed path's end is its first
 * point, which is given once.
 */
export function verticesOf(path: Path, closed: boolean, error: number = chordError): readonly Vertex[] {
  const { segments } = path;
  const inside = segments.flatMap((segment, i): readonly Vertex[] => {
    const before = i > 0 || closed ? segments.at(i - 1) : undefined;
    const steps = chordSteps(segment, error);
    const first: Vertex = {
      at: startOf(segment),
      kind: before && runsOn(before, segment) ? 'curve' : 'turn',
    };
    const rest = Array.from(
      { length: steps - 1 },
      (_, k): Vertex => ({ at: pointAt(segment, (k + 1) / steps), kind: 'curve' }),
    );
    return [first, ...rest];
  });
  return closed ? inside : [...inside, { at: pathEnd(path), kind: 'turn' }];
}

const runsOn = (before: Segment, after: Segment): boolean =>
  !isLine(before) &&
  !isLine(after) &&
  Math.abs(angleBetween(tangentAt(before, 1), tangentAt(after, 0))) <= tolerances.kinkTurn;
