// Takings in, necklines, facings and trued lines of random pieces, against sums made here from their corners alone:
// lines crossed, polygons' areas, points sampled. Nothing of the project measures but what is under test.
import { cuttingLine, type Path, type Pattern, readPattern, type Saying } from '@paperhinge/geometry';
import { readSheet, runSheet } from '@paperhinge/sheet';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

type Corner = readonly [number, number];
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const minus = ([a, b]: Corner, [c, d]: Corner): Corner => [a - c, b - d];
const along = ([a, b]: Corner, [c, d]: Corner, by: number): Corner => [a + c * by, b + d * by];
const size = ([a, b]: Corner): number => Math.hypot(a, b);
const unit = (v: Corner): Corner => [v[0] / size(v), v[1] / size(v)];
/** Into the cloth: to the right of a clockwise outline, y down. */
const inwards = (v: Corner): Corner => [-unit(v)[1], unit(v)[0]];
/** Where the line through p and q crosses that through r and s. */
function crossing(p: Corner, q: Corner, r: Corner, s: Corner): Corner {
  const u = minus(q, p),
    v = minus(s, r);
  const t = ((r[0] - p[0]) * v[1] - (r[1] - p[1]) * v[0]) / (u[0] * v[1] - u[1] * v[0]);
  return along(p, u, t);
}
const areaOf = (corners: readonly Corner[]): number =>
  Math.abs(
    corners.reduce((sum, [x, y], i) => {
      const [u, v] = corners[(i + 1) % corners.length]!;
      return sum + (x * v - u * y) / 2;
    }, 0),
  );

const draw = (
  edges: readonly (readonly [name: string, more: string, d: string])[],
  name = 'front',
  at = 0,
): string =>
  `<g data-piece="${name}" data-cut="1" data-allowance="10" transform="translate(${at},0)">${edges
    .map(([edge, more, d]) => `<path data-edge="${edge}" ${more} d="${d}"/>`)
    .join('')}<path data-line="grain" d="M30 150 V60"/></g>`;
const drawing = (seams: object, ...pieces: readonly string[]): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="3000mm" height="2000mm" viewBox="0 0 3000 2000" data-paperhinge="2"><metadata>${JSON.stringify({ seams })}</metadata>${pieces.join('')}</svg>`;
const to = (p: Corner): string => `${p[0]} ${p[1]}`;

function run(svg: string, ...steps: readonly object[]) {
  const { pattern } = readPattern(svg, { file: 'p.svg' });
  return runSheet(readSheet(JSON.stringify({ pattern: 'p.svg', steps }), { file: 's.json' }), pattern);
}
const pathsOf = (pattern: Pattern, piece: string, edge: string): readonly Path[] =>
  pattern.pieces
    .find(p => p.name === piece)!
    .outline.parts.flatMap(part => (part.type === 'edge' && part.name === edge ? [part.path] : []));

/** A half panel on the fold with straight edges: waist to (a, b), side to (c, d), hem to the fold at (0, e). */
const panels = fc
  .tuple(number(80, 160), number(-15, 15), number(100, 300), number(380, 620), number(-20, 20))
  .map(([a, b, c, d, e]): readonly Corner[] => [
    [0, 0],
    [a, b],
    [c, d],
    [0, d + e],
  ]);
const panel = (corners: readonly Corner[], name: string, at: number): string => {
  const [p, q, r, s] = corners as readonly [Corner, Corner, Corner, Corner];
  return draw(
    [
      ['waist', '', `M${to(p)} L${to(q)}`],
      ['side', '', `M${to(q)} L${to(r)}`],
      ['hem', 'data-kind="hem"', `M${to(r)} L${to(s)}`],
      ['centre', 'data-kind="fold"', `M${to(s)} L${to(p)}`],
    ],
    name,
    at,
  );
};
const skirt = (corners: readonly Corner[]): string =>
  drawing(
    { side: { a: 'front.side from waist', b: 'back.side from waist' } },
    panel(corners, 'front', 0),
    panel(corners, 'back', 1000),
  );

/** The panel with its side through two points, its neighbours run on or cut to meet it. */
const sideMoved = ([p, q, r, s]: readonly Corner[], near: Corner, far: Corner): readonly Corner[] => [
  p!,
  crossing(p!, q!, near, far),
  crossing(r!, s!, near, far),
  s!,
];

describe('a side seam of four edges', () => {
  test('taken in or let out moves each by a quarter, parallel, and its neighbours meet it', () => {
    fc.assert(
      fc.property(panels, number(2, 60), fc.boolean(), (corners, by, out) => {
        const done = run(skirt(corners), { [out ? 'let out' : 'take in']: { seam: 'side', by } });
        const [, q, r] = corners as readonly [Corner, Corner, Corner, Corner];
        const off = along([0, 0], inwards(minus(r, q)), ((out ? -1 : 1) * by) / 4);
        const expected = areaOf(sideMoved(corners, along(q, off, 1), along(r, off, 1)));
        expect(done.record.after.pieces.front!.areaMm2).toBeCloseTo(expected, 3);
        expect(done.record.after.pieces.back!.areaMm2).toBeCloseTo(expected, 3);
      }),
      { numRuns: 14 },
    );
  });

  test('with an amount at each end runs straight from the one to the other', () => {
    fc.assert(
      fc.property(panels, number(2, 40), number(2, 40), (corners, atWaist, atHem) => {
        const done = run(skirt(corners), {
          'take in': { seam: 'side', by: [atWaist, atHem], from: 'start', to: 'end' },
        });
        const [, q, r] = corners as readonly [Corner, Corner, Corner, Corner];
        const n = inwards(minus(r, q));
        const expected = areaOf(sideMoved(corners, along(q, n, atWaist / 4), along(r, n, atHem / 4)));
        expect(done.record.after.pieces.front!.areaMm2).toBeCloseTo(expected, 3);
      }),
      { numRuns: 14 },
    );
  });

  test('full at one place and nothing at another loses the wedge between', () => {
    fc.assert(
      fc.property(panels, number(4, 40), number(0.3, 0.9), (corners, by, share) => {
        const done = run(skirt(corners), {
          'take in': { seam: 'side', by, from: 'start', to: `${share * 100} %` },
        });
        const [p, q, r, s] = corners as readonly [Corner, Corner, Corner, Corner];
        const stays = along(q, minus(r, q), share);
        const moved = along(q, inwards(minus(r, q)), by / 4);
        const expected = areaOf([p, crossing(p, q, moved, stays), stays, r, s]);
        expect(done.record.after.pieces.front!.areaMm2).toBeCloseTo(expected, 3);
      }),
      { numRuns: 14 },
    );
  });
});

describe('a V cut into a front on the fold', () => {
  /** Shoulder from (n, 0) to (s, f); the fold down x = 0 from `neck` to 600. */
  const tops = fc.tuple(number(60, 100), number(170, 230), number(20, 60), number(40, 90));
  const top = ([n, s, f, neck]: readonly [number, number, number, number]): string =>
    drawing(
      {},
      draw([
        ['neck', 'data-role="neck"', `M0 ${neck} L${n} 0`],
        ['shoulder', 'data-role="shoulder"', `M${n} 0 L${s} ${f}`],
        ['side', '', `M${s} ${f} L${s} 600`],
        ['hem', 'data-kind="hem"', `M${s} 600 L0 600`],
        ['centre', 'data-kind="fold"', `M0 600 L0 ${neck}`],
      ]),
    );

  test('from wide to 5 degrees: cutting line, facing and the whole piece agree', () => {
    fc.assert(
      fc.property(tops, number(5, 40), number(4, 12), (figures, degrees, allowance) => {
        const [n, , , neck] = figures;
        const half = (degrees * Math.PI) / 180;
        // The V's point lies n / tan(half) below the neck end; deep enough to lie below the neck there is.
        const y = n / Math.tan(half);
        fc.pre(y > neck + 15 && y < 560);
        const steps = [
          { 'recut neckline': { piece: 'front', shape: 'V', depth: y - neck } },
          { 'set allowance': { edges: 'front.neck', to: allowance } },
          { 'draft facing': { name: 'facing', along: 'front.neck', width: 20 } },
        ];
        const done = run(top(figures), ...steps);
        const front = done.altered.pieces.find(p => p.name === 'front')!;
        expect(done.record.after.pieces.front!.edges.neck!.lengthMm).toBeCloseTo(Math.hypot(n, y), 6);
        // The parallel of the V meets the fold allowance / sin(half) above its point, and nothing lies beyond the fold.
        const cut = cuttingLine(front, done.altered).path.segments.flat();
        expect(Math.min(...cut.map(p => p.x))).toBeGreaterThan(-1e-6);
        const onFold = cut.filter(p => Math.abs(p.x) < 1e-6).map(p => p.y);
        expect(Math.min(...onFold)).toBeCloseTo(y - allowance / Math.sin(half), 4);
        // The facing is on the fold, as long there as its width over the sine.
        const facing = done.record.after.pieces.facing!;
        const fold = 20 / Math.sin(half);
        if (y + fold < 590) expect(facing.edges.centre!.lengthMm).toBeCloseTo(fold, 4);
        // Opened out the piece is twice its half.
        const whole = run(top(figures), ...steps.slice(0, 2), { unfold: { piece: 'front' } });
        expect(whole.record.after.pieces.front!.areaMm2).toBeCloseTo(
          2 * done.record.after.pieces.front!.areaMm2,
          2,
        );
        expect(whole.record.after.pieces.front!.cuttingLine.areaMm2).toBeCloseTo(
          2 * done.record.after.pieces.front!.cuttingLine.areaMm2,
          1,
        );
      }),
      { numRuns: 14 },
    );
  });
});

describe('a trued hem', () => {
  const points = (path: Path): readonly Corner[] =>
    path.segments.flatMap(segment =>
      Array.from({ length: 161 }, (_, i): Corner => {
        const t = i / 160,
          u = 1 - t;
        const c = segment.map(({ x, y }): Corner => [x, y]);
        const w = c.length === 2 ? [u, t] : [u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t];
        return [
          c.reduce((sum, p, k) => sum + p[0] * w[k]!, 0),
          c.reduce((sum, p, k) => sum + p[1] * w[k]!, 0),
        ];
      }),
    );
  const toSegment = (p: Corner, a: Corner, b: Corner): number => {
    const v = minus(b, a);
    const square = v[0] * v[0] + v[1] * v[1];
    const t =
      square === 0 ? 0 : Math.min(1, Math.max(0, ((p[0] - a[0]) * v[0] + (p[1] - a[1]) * v[1]) / square));
    return size(minus(p, along(a, v, t)));
  };
  const oneWay = (ps: readonly Corner[], qs: readonly Corner[]): number =>
    Math.max(...ps.map(p => Math.min(...qs.slice(1).map((q, i) => toSegment(p, qs[i]!, q)))));
  const hausdorff = (a: Path, b: Path): number =>
    Math.max(oneWay(points(a), points(b)), oneWay(points(b), points(a)));

  test('is told to have moved by the greatest distance between the two lines', () => {
    const bent = fc.tuple(number(-7, 7), number(-7, 7), number(60, 140), number(180, 260));
    fc.assert(
      fc.property(bent, ([b, d, x, z]) => {
        const svg = drawing(
          {},
          draw([
            ['top', '', 'M0 0 L320 0'],
            ['side', '', 'M320 0 L320 400'],
            ['hem', 'data-kind="hem"', `M320 400 L${z} ${400 + b} L${x} ${400 + d} L0 400`],
            ['centre', 'data-kind="fold"', 'M0 400 L0 0'],
          ]),
        );
        const done = run(svg, { true: { edges: ['front.hem'], within: 6 } });
        const told = (done.steps[0]!.did as Saying).facts.edges as unknown as readonly {
          readonly facts: { readonly movedMm?: number };
        }[];
        const moved = told[0]!.facts.movedMm ?? 0;
        const [old] = pathsOf(done.before, 'front', 'hem'),
          [fresh] = pathsOf(done.altered, 'front', 'hem');
        expect(Math.abs(moved - hausdorff(old!, fresh!))).toBeLessThan(0.05);
        expect(moved).toBeLessThan(6 + 0.01);
      }),
      { numRuns: 8 },
    );
  });
});
