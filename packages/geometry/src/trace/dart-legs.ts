import { endTangent, type Path, pathOf, pathStart, startTangent } from '../path/path.js';
import { refusal } from '../pattern/tellings.js';
import { angleBetween, type Point } from '../vector.js';

/**
 * A drawn dart as its two legs: the apex is the sharpest joint within the stroke.
 * @throws PatternError `dart-without-apex` where the stroke has no joint
 */
export function dartLegs(path: Path): { readonly legs: readonly [Path, Path]; readonly apex: Point } {
  const { segments } = path;
  let apexAt = 0,
    sharpest = -1;
  for (let i = 1; i < segments.length; i++) {
    const turn = Math.abs(
      angleBetween(endTangent(pathOf(segments[i - 1]!)), startTangent(pathOf(segments[i]!))),
    );
    if (turn > sharpest) [apexAt, sharpest] = [i, turn];
  }
  if (apexAt === 0) throw refusal('dart-without-apex', {});
  const legs = [{ segments: segments.slice(0, apexAt) }, { segments: segments.slice(apexAt) }] as const;
  return { legs, apex: pathStart(legs[1]) };
}
