import { curvatureAt } from '../curve/curvature.js';
import { hobbyCubic } from '../curve/hobby.js';
import type { Cubic } from '../curve/segment.js';
import { refusal } from '../curve/tellings.js';
import { rootsInUnit } from '../polynomial.js';
import { angleTolerance, coincidenceTolerance, crossRounding } from '../tolerance.js';
import { add, cross, distance, norm, type Point, scale, subtract } from '../vector.js';
import { endTangent, type Path, pathEnd, pathOf, pathStart, startTangent } from './path.js';
import { requirePath } from './sound.js';

/**
 * The curve from the end of one path to the start of another that runs on smoothly at both: in one `tangent`, or
 * also in one `curvature`. One cubic: the fair one; of those of the wanted curvatures the one nearest to the fair.
 *
 * Sources: Hobby, Smooth, easy to compute interpolating splines, 1986 (tangent); de Boor, Höllig, Sabin, High accuracy
 * geometric Hermite interpolation, 1987 (curvature: two quadratic equations for the two handles).
 * @throws PatternError `no-direction`: one of them ends at rest, as a single point does; `ends-meet`: there is no room
 *   for a curve; `no-curvature-join`: no cubic without a loop has these ends, directions and curvatures
 */
export function smoothJoin(before: Path, after: Path, continuity: 'tangent' | 'curvature' = 'tangent'): Path {
  requirePath(before);
  requirePath(after);
  requireContinuity(continuity);
  const from = pathEnd(before),
    to = pathStart(after);
  const u = endTangent(before),
    v = startTangent(after);
  if (norm(u) === 0 || norm(v) === 0) throw refusal('no-direction', {});
  if (distance(from, to) <= coincidenceTolerance) throw refusal('ends-meet', {});
  const fair = hobbyCubic(from, u, to, v);
  if (continuity === 'tangent') return pathOf(fair);
  const wanted = [curvatureAt(before.segments.at(-1)!, 1), curvatureAt(after.segments[0]!, 0)] as const;
  const a0 = distance(from, fair[1]),
    b0 = distance(fair[2], to);
  const unlike = ([a, b]: Handles): number => Math.abs(Math.log(a / a0)) + Math.abs(Math.log(b / b0));
  const best = handlesFor(subtract(to, from), u, v, wanted, [a0, b0]).reduce<Handles | undefined>(
    (least, h) => (least && unlike(least) <= unlike(h) ? least : h),
    undefined,
  );
  if (!best) throw refusal('no-curvature-join', {});
  const curve: Cubic = [from, add(from, scale(u, best[0])), subtract(to, scale(v, best[1])), to];
  return pathOf(curve);
}

/** @throws PatternError `unknown-continuity`: from plain JavaScript, where no type forbids it */
function requireContinuity(word: string): void {
  if (word === 'tangent' || word === 'curvature') return;
  throw refusal('unknown-continuity', {});
}

/** Lengths in mm of a cubic's two handles. */
type Handles = readonly [number, number];

/** Times the distance between the ends: longer handles make a loop or a bulge, never a join. */
const longestHandle = 2;

/**
 * All handle lengths a, b with (3/2) κ₀ a² = u × d − b (u × v) and (3/2) κ₁ b² = d × v − a (u × v), where d goes from
 * end to end: the curvatures of a cubic at its ends.
 */
function handlesFor(
  d: Point,
  u: Point,
  v: Point,
  [k0, k1]: readonly [number, number],
  fair: Handles,
): readonly Handles[] {
  const ud = cross(u, d),
    dv = cross(d, v),
    uv = cross(u, v);
  const longest = longestHandle * Math.hypot(d.x, d.y);
  const isHandle = (h: number): boolean => h > crossRounding * longest && h <= longest;
  const found: Handles[] = [];
  if (Math.abs(uv) <= angleTolerance) {
    // Parallel ends: each handle on its own; where an end is straight and in line it has no say.
    const alone = (side: number, k: number, otherwise: number): number =>
      Math.abs(side) <= angleTolerance * longest && k === 0 ? otherwise : Math.sqrt(side / (1.5 * k));
    found.push([alone(ud, k0, fair[0]), alone(dv, k1, fair[1])]);
  } else {
    // b from the first equation in the second: of fourth degree in a, here in shares of the longest.
    const p = ud / uv,
      q = (-1.5 * k0 * longest * longest) / uv;
    const c = 1.5 * k1;
    for (const share of rootsInUnit([c * p * p - dv, uv * longest, 2 * c * p * q, 0, c * q * q]))
      found.push([share * longest, p + q * share * share]);
  }
  return found.filter(([a, b]) => isHandle(a) && isHandle(b));
}
