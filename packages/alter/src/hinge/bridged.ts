import { type Path, pathOf } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { joined, pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { distance } from '@paperhinge/geometry/plane';

/** Two runs of a line as one chain, with a straight segment across what opened between them. */
export function bridged(first: Path, second: Path): Path {
  const from = pathEnd(first),
    to = pathStart(second);
  return distance(from, to) <= tolerances.coincidenceTolerance
    ? joined(first, second)
    : joined(first, pathOf([from, to]), second);
}
