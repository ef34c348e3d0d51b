import { at, type Path, type Point, polyline, type Segment } from '@paperhinge/geometry';
import { arcBetween, type Cubic } from '@paperhinge/geometry/curves';
import { offsetOutline } from '@paperhinge/geometry/cutting-line';
import { reversedPath, transformedPath } from '@paperhinge/geometry/paths';
import { lerp, rotation, translation } from '@paperhinge/geometry/plane';
import fc from 'fast-check';

/** Two sets of closed paths, and what about them is hard. */
export interface Case {
  readonly kind: string;
  readonly a: readonly Path[];
  readonly b: readonly Path[];
}

export const rectangle = (x: number, y: number, w: number, h: number): Path =>
  polyline(at(x, y), at(x + w, y), at(x + w, y + h), at(x, y + h), at(x, y));
export const disc = (x: number, y: number, r: number): Path => ({
  segments: arcBetween(at(x, y), at(r, 0), at(r, 0), true),
});

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const whole = (min: number, max: number) => fc.integer({ min, max });
const point = fc.tuple(number(-100, 100), number(-100, 100)).map(([x, y]) => at(x, y));
const gridPoint = fc.tuple(whole(0, 4), whole(0, 4)).map(([x, y]) => at(25 * x, 25 * y));

/** Curves and lines from corner to corner, crossing themselves as they like. */
const wild = fc.array(fc.tuple(point, fc.option(fc.tuple(point, point))), { minLength: 2, maxLength: 7 }).map(
  (corners): Path => ({
    segments: corners.map(([from, handles], i) => {
      const [to] = corners[(i + 1) % corners.length]!;
      return handles ? [from, handles[0], handles[1], to] : [from, to];
    }),
  }),
);

/** A ring of curves about a middle: simple, as pieces of a garment are. */
const petal = fc
  .tuple(
    point,
    fc.array(fc.tuple(number(20, 60), number(-0.4, 0.4), number(-0.4, 0.4)), { minLength: 3, maxLength: 8 }),
  )
  .map(([middle, corners]): Path => {
    const n = corners.length;
    const corner = (i: number): Point => {
      const [r] = corners[i % n]!,
        angle = (2 * Math.PI * i) / n;
      return at(middle.x + r * Math.cos(angle), middle.y + r * Math.sin(angle));
    };
    return {
      segments: corners.map(([, bow, sway], i): Cubic => {
        const p = corner(i),
          s = corner(i + 1);
        const off = (k: number, by: number): Point => {
          const m = lerp(p, s, k);
          return at(m.x + (s.y - p.y) * by, m.y - (s.x - p.x) * by);
        };
        return [p, off(1 / 3, bow / 2), off(2 / 3, sway / 2), s];
      }),
    };
  });

const gridBox = fc
  .tuple(gridPoint, whole(1, 3), whole(1, 3))
  .map(([p, w, h]) => rectangle(p.x, p.y, 25 * w, 25 * h));
const gridPolygon = fc
  .array(gridPoint, { minLength: 3, maxLength: 8 })
  .map(points => polyline(...points, points[0]!));

/** A bend that all but stops: the handles cross, up to a cusp. */
const nearCusp = fc.tuple(point, number(30, 90), whole(0, 9), number(0, 6)).map(([p, w, e, turn]): Path => {
  const curve: Cubic = [at(0, 0), at(w, w + 10 ** -e), at(0, w), at(w, 0)];
  const closed: Path = { segments: [curve, [at(w, 0), at(w / 2, -30)], [at(w / 2, -30), at(0, 0)]] };
  return transformedPath(transformedPath(closed, rotation(turn)), translation(p));
});

const of =
  (kind: string) =>
  ([a, b]: readonly [readonly Path[], readonly Path[]]): Case => ({ kind, a, b });
const one = <T>(path: T): readonly T[] => [path];

/** Edges shared by two shapes: one of them is the other with some corners moved. */
const shared = fc
  .tuple(petal, fc.array(fc.tuple(whole(0, 7), point), { minLength: 1, maxLength: 3 }))
  .map(([path, moves]): readonly [readonly Path[], readonly Path[]] => {
    const segments = [...path.segments] as Cubic[];
    for (const [i, p] of moves) {
      const k = i % segments.length,
        next = (k + 1) % segments.length;
      const [a, b, c] = segments[k]!,
        [, f, g, h] = segments[next]!;
      segments[k] = [a, b, c, p];
      segments[next] = [p, f, g, h];
    }
    return [[path], [{ segments }]];
  });

const hair = fc.tuple(number(0, 9), number(0, 2 * Math.PI)).map(([e, angle]) => {
  const by = 10 ** -e;
  return at(by * Math.cos(angle), by * Math.sin(angle));
});
const shifted = (p: Point, by: Point): Point => at(p.x + by.x, p.y + by.y);

/** The same curves twice, the handles of some moved by a hair: a needle along each. */
const needles = fc
  .tuple(fc.oneof(petal, wild), fc.array(fc.option(hair), { minLength: 8, maxLength: 8 }))
  .map(([path, hairs]): readonly [readonly Path[], readonly Path[]] => {
    const segments = path.segments.map((segment, i): Segment => {
      const by = hairs[i % hairs.length];
      if (!by || segment.length === 2) return segment;
      const [p, q, r, s] = segment as Cubic;
      return [p, shifted(q, by), shifted(r, at(by.y, -by.x)), s];
    });
    return [[path], [{ segments }]];
  });

/** A needle, straight or bent, and a shape with a corner beside its point or its belly. */
const needle = fc
  .tuple(
    point,
    point,
    hair,
    number(0.2, 0.8),
    hair,
    point,
    fc.boolean(),
    fc.oneof(petal, fc.constant(undefined)),
  )
  .map(([a, b, by, t, off, c, isBent, other]): readonly [readonly Path[], readonly Path[]] => {
    const belly = shifted(lerp(a, b, t), by);
    const thin: Path = isBent
      ? {
          segments: [
            [a, lerp(a, b, 1 / 3), lerp(a, b, 2 / 3), b],
            [b, shifted(lerp(b, a, 1 / 3), by), shifted(lerp(b, a, 2 / 3), by), a],
          ],
        }
      : polyline(a, b, belly, a);
    return [[thin], [other ?? polyline(a, shifted(isBent ? b : belly, off), c, a)]];
  });

/** A shape and the same shape, moved by next to nothing, or by nothing. */
const nearlyTheSame = fc
  .tuple(fc.oneof(petal, wild, gridPolygon), whole(0, 10), fc.boolean())
  .map(([path, e, isReversed]): readonly [readonly Path[], readonly Path[]] => {
    const by = e === 10 ? 0 : 10 ** -e;
    const moved = transformedPath(path, translation(at(by, by / 3)));
    return [[path], [isReversed ? reversedPath(moved) : moved]];
  });

/** Discs that touch from within or without, and boxes that touch them. */
const touching = fc
  .tuple(point, number(10, 50), number(10, 50), number(0, 6), whole(0, 2))
  .map(([p, r, q, angle, how]): readonly [readonly Path[], readonly Path[]] => {
    const apart = how === 0 ? r + q : Math.abs(r - q);
    const other =
      how === 2
        ? rectangle(p.x + r, p.y - q, q, 2 * q)
        : disc(p.x + apart * Math.cos(angle), p.y + apart * Math.sin(angle), q);
    return [[disc(p.x, p.y, r)], [other]];
  });

/** Nested rings, each a hole in or an island within the one before. */
const nested = fc
  .tuple(point, number(0, 20), whole(2, 4))
  .map(([p, shift, count]): readonly [readonly Path[], readonly Path[]] => {
    const rings = Array.from({ length: count }, (_, i) => disc(p.x, p.y, 80 - 15 * i));
    return [rings.map((ring, i) => (i % 2 === 0 ? ring : reversedPath(ring))), [disc(p.x + shift, p.y, 50)]];
  });

/** A shape and its own parallel. */
const parallel = fc
  .tuple(petal, number(-12, 12))
  .map(([path, by]): readonly [readonly Path[], readonly Path[]] => [
    [path],
    offsetOutline(path, by).loops.map(loop => loop.path),
  ]);

/** A spur out and back on the way round. */
const spurred = fc
  .tuple(petal, point, petal)
  .map(([path, tip, other]): readonly [readonly Path[], readonly Path[]] => {
    const p = path.segments[0]![0];
    return [[{ segments: [[p, tip], [tip, p], ...path.segments] }], [other]];
  });

export const anyCase: fc.Arbitrary<Case> = fc.oneof(
  fc.tuple(wild.map(one), wild.map(one)).map(of('wild')),
  fc.tuple(petal.map(one), petal.map(one)).map(of('petals')),
  fc
    .tuple(
      fc.array(gridBox, { minLength: 1, maxLength: 4 }),
      fc.array(gridBox, { minLength: 1, maxLength: 4 }),
    )
    .map(of('boxes on a grid')),
  fc.tuple(gridPolygon.map(one), gridPolygon.map(one)).map(of('polygons on a grid')),
  fc.tuple(nearCusp.map(one), fc.oneof(nearCusp, petal).map(one)).map(of('near-cusps')),
  shared.map(of('shared curves')),
  nearlyTheSame.map(of('nearly the same')),
  touching.map(of('touching')),
  nested.map(of('nested')),
  parallel.map(of('parallel')),
  spurred.map(of('spurs')),
  needles.map(of('needles along curves')),
  needle.map(of('a needle')),
);
