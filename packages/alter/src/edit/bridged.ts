import { distance, joined, type Path, pathEnd, pathOf, pathStart, tolerances } from '@paperhinge/geometry';

/** Two runs of a line as one chain, with a straight segment across what opened between them. */
export function bridged(first: Path, second: Path): Path {
  const from = pathEnd(first),
    to = pathStart(second);
  return distance(from, to) <= tolerances.coincidenceTolerance
    ? joined(first, second)
    : joined(first, pathOf([from, to]), second);
}
