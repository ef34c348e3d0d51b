import { type Dart, edgePath, type Path, pathLength } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { pathEnd, pathStart, subpath } from '@paperhinge/geometry/paths';
import type { Affine } from '@paperhinge/geometry/plane';
import { determinant, lerp } from '@paperhinge/geometry/plane';
import { endingAt, startingAt } from '../hinge/ends.js';
import { movedPath } from '../moved-edges/moved-part.js';
import type { RestDart } from './joined-ring.js';
import { refusal } from './tellings.js';
import type { TwoEdges } from './two-edges.js';

/**
 * What is left of a seam beyond the share of it that is joined, as a dart: both lines from where they part to the seam's
 * end are its legs.
 *
 * @param motion what lays the second piece on the first
 * @throws PatternError `rest-legs-unlike` where they are not equally long
 */
export function restDart({ seam, a, b }: TwoEdges, share: number, motion: Affine, name: string): RestDart {
  const first = edgePath(a.piece, a.run.edge);
  const second = movedPath(edgePath(b.piece, b.run.edge), motion);
  // Turned over, the second edge is met the other way round: its seam runs with its outline where it ran against it.
  const against = b.run.reversed !== determinant(motion) < 0;
  const restOf = (path: Path, reversed: boolean): Path => {
    const length = pathLength(path);
    return reversed
      ? subpath(path, 0, length * (1 - share))
      : subpath(path, length * share, Number.POSITIVE_INFINITY);
  };
  const [own, other] = [restOf(first, a.run.reversed), restOf(second, against)];
  const [firstMm, secondMm] = [pathLength(own), pathLength(other)];
  if (Math.abs(firstMm - secondMm) > tolerances.dartLegTolerance)
    throw refusal('rest-legs-unlike', { seam: { seam: seam.name }, firstMm, secondMm }, { seam: seam.name });
  const atStart = a.run.reversed;
  const [before, after] = atStart ? [own, other] : [other, own];
  const apex = lerp(pathEnd(before), pathStart(after), 1 / 2);
  const dart: Dart = { type: 'dart', name, legs: [endingAt(before, apex), startingAt(after, apex)], apex };
  return { dart, atStart };
}
