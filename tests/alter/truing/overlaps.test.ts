import { trueEdges } from '@paperhinge/alter/edges';
import type { Spread } from '@paperhinge/alter/fullness';
import { spread } from '@paperhinge/alter/fullness';
import {
  at,
  definePattern,
  definePiece,
  line,
  type Piece,
  type Point,
  pathOf,
  polyline,
} from '@paperhinge/geometry';
import { pointAt } from '@paperhinge/geometry/curves';
import { edgeTruing } from '@paperhinge/geometry/measure';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

const aLine = definePiece({
  name: 'p',
  outline: [
    { name: 'waist', path: pathOf([at(0, 12), at(60, 14), at(120, 6), at(180, 0)] as const) },
    { name: 'side', path: polyline(at(180, 0), at(290, 585)) },
    {
      name: 'hem',
      kind: 'hem',
      path: pathOf([at(290, 585), at(195, 605), at(95, 612), at(0, 612)] as const),
    },
    { name: 'centre', kind: 'fold', path: polyline(at(0, 612), at(0, 12)) },
  ],
});
const sleeve = definePiece({
  name: 'p',
  outline: [
    {
      name: 'cap',
      path: {
        segments: [
          [at(0, 140), at(60, 130), at(90, 0), at(160, 0)],
          [at(160, 0), at(240, 0), at(260, 135), at(330, 140)],
        ],
      },
    },
    { name: 'underarm-front', path: polyline(at(330, 140), at(280, 560)) },
    {
      name: 'hem',
      kind: 'hem',
      path: pathOf([at(280, 560), at(210, 568), at(120, 556), at(50, 560)] as const),
    },
    { name: 'underarm-back', path: polyline(at(50, 560), at(0, 140)) },
  ],
  lines: [{ kind: 'grain', name: 'grain', path: pathOf(line(at(160, 100), at(160, 400))) }],
});
const bodice = definePiece({
  name: 'p',
  outline: [
    { name: 'neck', path: pathOf([at(0, 80), at(40, 80), at(70, 50), at(75, 0)] as const) },
    { name: 'shoulder', path: polyline(at(75, 0), at(195, 45)) },
    { name: 'armhole', path: pathOf([at(195, 45), at(170, 120), at(180, 215), at(250, 225)] as const) },
    { name: 'side', path: polyline(at(250, 225), at(230, 420)) },
    { name: 'waist', path: pathOf([at(230, 420), at(150, 432), at(80, 430), at(0, 430)] as const) },
    { name: 'centre', kind: 'fold', path: polyline(at(0, 430), at(0, 80)) },
  ],
});
// Three garments that truing was not tried on when it was written.
const raglanSleeve = definePiece({
  name: 'p',
  outline: [
    { name: 'neck', path: pathOf([at(120, 22), at(150, 34), at(185, 30), at(205, 10)] as const) },
    { name: 'raglan-back', path: pathOf([at(205, 10), at(222, 90), at(262, 200), at(350, 262)] as const) },
    { name: 'underarm-back', path: polyline(at(350, 262), at(292, 655)) },
    {
      name: 'hem',
      kind: 'hem',
      path: pathOf([at(292, 655), at(215, 664), at(120, 660), at(48, 648)] as const),
    },
    { name: 'underarm-front', path: polyline(at(48, 648), at(0, 250)) },
    { name: 'raglan-front', path: pathOf([at(0, 250), at(70, 196), at(104, 110), at(120, 22)] as const) },
  ],
});
const wrapSkirt = definePiece({
  name: 'p',
  outline: [
    { name: 'waist', path: pathOf([at(-150, 22), at(-30, 24), at(110, 14), at(172, -6)] as const) },
    { name: 'side', path: pathOf([at(172, -6), at(214, 80), at(236, 160), at(244, 640)] as const) },
    {
      name: 'hem',
      kind: 'hem',
      path: pathOf([at(244, 640), at(120, 662), at(-60, 664), at(-170, 600)] as const),
    },
    { name: 'wrap', path: pathOf([at(-170, 600), at(-230, 420), at(-176, 200), at(-150, 22)] as const) },
  ],
});
const waistcoat = definePiece({
  name: 'p',
  outline: [
    { name: 'shoulder', path: polyline(at(62, 4), at(142, 34)) },
    { name: 'armhole', path: pathOf([at(142, 34), at(128, 96), at(146, 168), at(208, 182)] as const) },
    { name: 'side', path: polyline(at(208, 182), at(202, 396)) },
    { name: 'hem', path: pathOf([at(202, 396), at(150, 402), at(96, 410), at(48, 446)] as const) },
    { name: 'point', path: polyline(at(48, 446), at(0, 402)) },
    { name: 'front', path: polyline(at(0, 402), at(0, 196)) },
    { name: 'neck', path: pathOf([at(0, 196), at(14, 120), at(44, 66), at(62, 4)] as const) },
  ],
});
const pieces = { aLine, sleeve, bodice, raglanSleeve, wrapSkirt, waistcoat };
const slashes = [
  ['aLine', 'hem', 'waist'],
  ['aLine', 'waist', 'hem'],
  ['sleeve', 'hem', 'cap'],
  ['sleeve', 'cap', 'hem'],
  ['bodice', 'waist', 'shoulder'],
  ['bodice', 'waist', 'neck'],
  ['bodice', 'shoulder', 'waist'],
  ['raglanSleeve', 'hem', 'neck'],
  ['raglanSleeve', 'underarm-back', 'underarm-front'],
  ['wrapSkirt', 'hem', 'waist'],
  ['wrapSkirt', 'waist', 'hem'],
  ['wrapSkirt', 'side', 'wrap'],
  ['waistcoat', 'hem', 'shoulder'],
  ['waistcoat', 'side', 'front'],
] as const;

// By hand, without a word of the project's own measuring: outlines as polygons and the slash a straight line. Paper is
// folded with the slash in the middle of the fold: both sides come half the way towards it, and what passes it lies in
// the fold. (Sides laid over one another instead show a corner of the one beyond the edge of the other where the edge is
// steep: paper that a fold has no room for, and that a cutter trims away.)
type Polygon = readonly Point[];

interface Named {
  readonly edge: string;
  readonly points: Polygon;
}
const edgesOf = (piece: Piece): readonly Named[] =>
  piece.outline.parts.flatMap(part =>
    part.type !== 'edge'
      ? []
      : [
          {
            edge: part.name,
            points: part.path.segments.flatMap(segment =>
              Array.from({ length: 49 }, (_, i) => pointAt(segment, i / 48)),
            ),
          },
        ],
  );
const areaOf = (polygon: Polygon): number =>
  polygon.reduce((sum, p, i) => {
    const q = polygon[(i + 1) % polygon.length]!;
    return sum + (p.x * q.y - q.x * p.y) / 2;
  }, 0);
const lengthOf = (points: Polygon): number =>
  points.slice(1).reduce((sum, p, i) => sum + Math.hypot(p.x - points[i]!.x, p.y - points[i]!.y), 0);

/** The points of an edge up to a share of its length, and from there on. */
function cutAt(points: Polygon, share: number): readonly [Polygon, Polygon] {
  let left = share * lengthOf(points);
  for (let i = 1; i < points.length; i++) {
    const a = points[i - 1]!,
      b = points[i]!;
    const size = Math.hypot(b.x - a.x, b.y - a.y);
    if (size > 0 && left <= size) {
      const p = at(a.x + ((b.x - a.x) * left) / size, a.y + ((b.y - a.y) * left) / size);
      return [
        [...points.slice(0, i), p],
        [p, ...points.slice(i)],
      ];
    }
    left -= size;
  }
  return [points, []];
}

type Sides = readonly [readonly Named[], readonly Named[]];

/** What lies clockwise from the slash's one end to its other, and the rest. */
function slashed(piece: Piece, from: string, a: number, to: string, b: number): Sides {
  const ring = edgesOf(piece).flatMap(({ edge, points }): readonly Named[] => {
    if (edge !== from && edge !== to) return [{ edge, points }];
    return cutAt(points, edge === from ? a : b).map(own => ({ edge, points: own }));
  });
  const after = (edge: string): number => ring.findLastIndex(run => run.edge === edge);
  const run = (start: number, stop: number): readonly Named[] =>
    Array.from(
      { length: (stop - start + ring.length) % ring.length },
      (_, i) => ring[(start + i) % ring.length]!,
    );
  return [run(after(from), after(to)), run(after(to), after(from))];
}

/** How far a point lies to the right of the way from one place to another, in mm. */
const rightOf = (p: Point, [a, b]: readonly [Point, Point]): number =>
  ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) / Math.hypot(b.x - a.x, b.y - a.y);

/** What of a polygon lies on one side of a line: 1 to the right of it, -1 to the left. */
function beyond(polygon: Polygon, slash: readonly [Point, Point], side: number): Polygon {
  return polygon.flatMap((p, i) => {
    const q = polygon[(i + 1) % polygon.length]!;
    const [here, there] = [p, q].map(r => side * rightOf(r, slash)) as [number, number];
    const own = here >= 0 ? [p] : [];
    if (here >= 0 === there >= 0) return own;
    const t = here / (here - there);
    return [...own, at(p.x + (q.x - p.x) * t, p.y + (q.y - p.y) * t)];
  });
}

/** A side of the slash come half the way towards the other: 1 the one to the right of the slash, -1 the left. */
function halfWay(
  p: Point,
  [start, stop]: readonly [Point, Point],
  by: number,
  hinge: string,
  side: number,
): Point {
  const radius = Math.hypot(stop.x - start.x, stop.y - start.y);
  if (hinge === 'none')
    return at(
      p.x + (side * by * (stop.y - start.y)) / radius / 2,
      p.y - (side * by * (stop.x - start.x)) / radius / 2,
    );
  const turn = side * Math.asin(by / 2 / radius);
  const dx = p.x - stop.x,
    dy = p.y - stop.y;
  return at(
    stop.x + dx * Math.cos(turn) - dy * Math.sin(turn),
    stop.y + dx * Math.sin(turn) + dy * Math.cos(turn),
  );
}

/** mm² that are left of a piece once it is folded at the slash and these edges of it are drawn along a ruler again. */
function foldedArea(sides: Sides, by: number, hinge: string, straight: readonly string[]): number {
  const first = sides[0].flatMap(run => run.points);
  const slash = [first[0]!, first.at(-1)!] as const;
  const side = Math.sign(
    Math.max(...first.map(p => rightOf(p, slash))) + Math.min(...first.map(p => rightOf(p, slash))),
  );
  const moved = sides.map((runs, i) =>
    runs.map(({ edge, points }) => ({
      edge,
      points: points.map(p => halfWay(p, slash, by, hinge, i === 0 ? side : -side)),
    })),
  ) as unknown as Sides;
  const left = moved.reduce(
    (sum, runs, i) =>
      sum +
      areaOf(
        beyond(
          runs.flatMap(r => r.points),
          slash,
          i === 0 ? side : -side,
        ),
      ),
    0,
  );
  // Along a ruler a straight edge loses what lies outside the line from end to end over the step that the fold left.
  const ruled = (before: Named, after: Named): number => {
    if (!straight.includes(before.edge)) return 0;
    const [p, q] = [before.points[0]!, after.points.at(-1)!];
    return areaOf([p, onLine(p, before.points.at(-1)!, slash), onLine(after.points[0]!, q, slash), q]);
  };
  const [one, other] = moved;
  return left - ruled(one.at(-1)!, other[0]!) - ruled(other.at(-1)!, one[0]!);
}

const isStraight = ({ points }: Named): boolean =>
  lengthOf(points) - lengthOf([points[0]!, points.at(-1)!]) < 1e-6;

/** Where the straight line through two points meets another. */
function onLine(p: Point, q: Point, slash: readonly [Point, Point]): Point {
  const [a, b] = [rightOf(p, slash), rightOf(q, slash)];
  return at(p.x + ((q.x - p.x) * a) / (a - b), p.y + ((q.y - p.y) * a) / (a - b));
}

describe.each(slashes)('an overlap on the %s from %s to %s', (name, from, to) => {
  test('is step-free and without a kink once trued, within 0.5 mm of the folded paper', () => {
    const drawn = edgesOf(pieces[name]);
    const [fromMm, toMm] = [from, to].map(edge => lengthOf(drawn.find(e => e.edge === edge)!.points)) as [
      number,
      number,
    ];
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 40, noNaN: true }),
        fc.double({ min: 0.25, max: 0.75, noNaN: true }),
        fc.constantFrom('to', 'none'),
        (by, a, hinge) => {
          // Nobody folds away more than a quarter of an edge at one place, nor half of what lies beyond the slash.
          fc.pre(by <= Math.min(fromMm / 4, (Math.min(a, 1 - a) * fromMm) / 2));
          fc.pre(hinge === 'to' || by <= Math.min(toMm / 4, (Math.min(a, 1 - a) * toMm) / 2));
          // A plain overlap: the slash runs along the piece, at one share of both its edges.
          const b = 1 - a;
          const step = {
            piece: 'p',
            from: { edge: from, at: { share: a } },
            to: { edge: to, at: { share: b } },
            by: -by,
            hinge,
          } as Spread;
          const pattern = definePattern({ name: 't', pieces: [pieces[name]] });
          const over = spread(pattern, step).pattern;
          const edges = [from, to].map(edge => ({ piece: 'p', edge }));
          const once = trueEdges(over, { edges });
          // Steps of up to 15 mm are trued as they are; of larger ones the finding says what to allow.
          const needMm = Math.max(0, ...once.findings.map(f => f.figures?.needMm ?? 0));
          const done = needMm > 0 ? trueEdges(over, { edges, within: needMm * 1.05 + 1.6 }) : once;
          const piece = done.pattern.pieces[0]!;
          const label = JSON.stringify({ by, a, hinge, needMm });
          expect([label, done.findings]).toEqual([label, []]);
          for (const edge of [from, to]) {
            const { kinks, steps } = edgeTruing(piece, edge);
            expect([label, steps, kinks]).toEqual([label, [], []]);
          }
          const ring = edgesOf(piece);
          const redrawn = ring.filter(e => e.edge === from || e.edge === to);
          const sides = slashed(pieces[name], from, a, to, b);
          // A line that was straight is drawn so again where it may lie so far from what the fold left.
          const straight = redrawn
            .filter(e => isStraight(e) && isStraight(drawn.find(d => d.edge === e.edge)!))
            .map(e => e.edge);
          const off = Math.abs(areaOf(ring.flatMap(e => e.points)) - foldedArea(sides, by, hinge, straight));
          // On the two edges' length, and on the fold's.
          const both = redrawn.reduce((sum, e) => sum + lengthOf(e.points), 0);
          const fold = lengthOf([sides[0][0]!.points[0]!, sides[1][0]!.points[0]!]);
          const offMm = off / Math.min(both, fold);
          expect([label, offMm < 0.5 ? 'near' : offMm]).toEqual([label, 'near']);
        },
      ),
      { numRuns: 25, endOnFailure: true },
    );
  });
});
