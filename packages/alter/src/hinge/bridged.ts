import { type Path, type Point, pathOf } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { joined, pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { distance } from '@paperhinge/geometry/plane';

/** Two runs of a line as one chain, with a straight segment across what opened between them. */
export const bridged = (first: Path, second: Path): Path =>
  joined(first, ...across(pathEnd(first), pathStart(second)), second);

/** A chain that ends where it begins, as a double-pointed dart does. */
export const closedRing = (path: Path): Path => joined(path, ...across(pathEnd(path), pathStart(path)));

const across = (from: Point, to: Point): readonly Path[] =>
  distance(from, to) <= tolerances.coincidenceTolerance ? [] : [pathOf([from, to])];
