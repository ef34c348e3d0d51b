import { runsOn } from '../curve/runs-on.js';
import { isLine } from '../curve/segment.js';
import { selfCrossing } from '../curve/self-crossing.js';
import { forEachNearPairWithin } from '../path/near-segments.js';
import type { Path } from '../path/path.js';

/** Whether it is plain to see that a closed path meets itself nowhere but at the joints of neighbours; false says nothing. */
export function isPlainlySimple(path: Path): boolean {
  const { segments } = path;
  let isPlain = segments.every(segment => isLine(segment) || selfCrossing(segment) === undefined);
  if (isPlain)
    forEachNearPairWithin(path, (i, k) => {
      const [first, second] = [segments[i]!, segments[k]!];
      isPlain = runsOn(first, second) || runsOn(second, first);
      return !isPlain;
    });
  return isPlain;
}
