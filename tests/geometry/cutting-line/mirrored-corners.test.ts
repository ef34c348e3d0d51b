import {
  cuttingLine,
  type Edge,
  type Path,
  type Pattern,
  type Piece,
  type Point,
} from '@paperhinge/geometry';
import type { Stretch } from '@paperhinge/geometry/cutting-line';
import { describe, expect, test } from 'vitest';
import { distanceTo, sampled } from './independent.js';
import { arc, at, edge, pieceOf, straightEdge } from './pieces.js';

const radians = Math.PI / 180;

/** Folds the paper along the line through `on`: the image of a point, worked out from its distance to that line. */
function folded(p: Point, on: Point, degrees: number): Point {
  const u = at(Math.cos(degrees * radians), Math.sin(degrees * radians));
  const along = (p.x - on.x) * u.x + (p.y - on.y) * u.y;
  const foot = at(on.x + along * u.x, on.y + along * u.y);
  return at(2 * foot.x - p.x, 2 * foot.y - p.y);
}

/** The corner stretches of an edge that end, on the far side of the line through `on`, on the crossing edge's line. */
const endOf = (stretches: readonly Stretch[], of: string): readonly Path[] =>
  stretches.filter(s => s.of === of && s.shape === 'corner').map(s => s.path);

/** A sleeve-like piece: sides lean by `lean` degrees to each other below, hem level at y = 200. */
const tube = (lean: number, hem = 25, side = 15): Piece => {
  const shift = 200 * Math.tan(lean * radians);
  return pieceOf([
    straightEdge('top', at(0, 0), at(200, 0)),
    straightEdge('right', at(200, 0), at(200 + shift, 200), { allowance: side }),
    straightEdge('hem', at(200 + shift, 200), at(-shift, 200), { kind: 'hem', allowance: hem }),
    straightEdge('left', at(-shift, 200), at(0, 0), { allowance: side }),
  ]);
};

describe('turned-up', () => {
  test.each([-12, -5, 0, 8, 20])(
    'with sides that lean by %d° the hem, turned up, lies on the sides',
    lean => {
      const { path, stretches } = cuttingLine(tube(lean));
      const ends = endOf(stretches, 'hem');
      expect(ends).toHaveLength(2);
      for (const end of ends) {
        for (const { point } of sampled(end, 20)) {
          if (point.y <= 200 || point.y > 225 - 1e-9) continue; // above the fold; along the hem's own edge
          const turnedUp = folded(point, at(0, 200), 0);
          expect(distanceTo(path, turnedUp).distance).toBeLessThan(1e-9);
        }
      }
      // At the hem's edge the width is that of the piece, allowances included, as far above the fold.
      const shift = Math.tan(lean * radians),
        out = 15 / Math.cos(lean * radians);
      const depth = path.segments.flat().filter(p => Math.abs(p.y - 225) < 1e-9);
      const width = Math.max(...depth.map(p => p.x)) - Math.min(...depth.map(p => p.x));
      expect(width).toBeCloseTo(200 + 2 * (175 * shift + out), 9);
    },
  );
  test('a curved side is mirrored as it curves', () => {
    const side = arc(at(-100, 100), 300, 0, 20);
    const foot = side.at(-1)![3];
    const { path, stretches } = cuttingLine(
      pieceOf([
        straightEdge('top', at(0, 100), at(200, 100)),
        edge('right', side, { allowance: 15 }),
        straightEdge('hem', foot, at(0, foot.y), { kind: 'hem', allowance: 30 }),
        straightEdge('left', at(0, foot.y), at(0, 100), { kind: 'fold' }),
      ]),
    );
    const [end] = endOf(stretches, 'hem').filter(p => p.segments[0]![0].x > 100);
    expect(end!.segments.some(s => s.length === 4)).toBe(true);
    for (const { point } of sampled(end!, 12))
      if (point.y > foot.y && point.y < foot.y + 30 - 1e-9)
        expect(distanceTo(path, folded(point, foot, 0)).distance).toBeLessThan(1e-9);
  });
  test('a raw side is turned up on itself', () => {
    const { path } = cuttingLine(tube(10, 25, 0));
    const shift = Math.tan(10 * radians);
    const depth = path.segments.flat().filter(p => Math.abs(p.y - 225) < 1e-9);
    expect(Math.max(...depth.map(p => p.x))).toBeCloseTo(200 + 175 * shift, 9);
  });
  test('asked for on the hem or on the side, it is the hem that is shaped', () => {
    const asked = (on: 'hem' | 'right') => {
      const { outline, ...rest } = tube(20);
      const parts = outline.parts.map(p =>
        p.type === 'edge' && p.name === on
          ? { ...p, corners: on === 'hem' ? { start: 'turned-up' as const } : { end: 'turned-up' as const } }
          : p,
      );
      return cuttingLine({ ...rest, outline: { parts } }).path;
    };
    expect(asked('hem')).toEqual(cuttingLine(tube(20)).path);
    expect(asked('right')).toEqual(cuttingLine(tube(20)).path);
  });
  test('a mitre asked for overrides the default', () => {
    const { outline, ...rest } = tube(20);
    const parts = outline.parts.map(p =>
      p.type === 'edge' && p.name === 'hem'
        ? { ...p, corners: { start: 'mitre' as const, end: 'mitre' as const } }
        : p,
    );
    const { path } = cuttingLine({ ...rest, outline: { parts } });
    const depth = path.segments.flat().filter(p => Math.abs(p.y - 225) < 1e-9);
    expect(Math.max(...depth.map(p => p.x))).toBeCloseTo(
      200 + 225 * Math.tan(20 * radians) + 15 / Math.cos(20 * radians),
      9,
    );
  });
});

/** A yoke-like piece whose right corner has the interior angle phi between `shoulder` (level, above) and `armhole`. */
const yoke = (phi: number, corners: { readonly end?: 'pressed-open' | 'mitre' } = {}): Piece => {
  const foot = at(200 - 150 * Math.cos(phi * radians), 150 * Math.sin(phi * radians));
  return pieceOf([
    straightEdge('shoulder', at(0, 0), at(200, 0), { allowance: 15, ...corners }),
    straightEdge('armhole', at(200, 0), foot, { allowance: 10 }),
    straightEdge('foot', foot, at(0, foot.y), { allowance: 10 }),
    straightEdge('centre', at(0, foot.y), at(0, 0), { kind: 'fold' }),
  ]);
};

describe('pressed-open', () => {
  test.each([55, 70, 110, 125])(
    'at %d° the allowance, pressed back, ends on the edge it is caught in',
    phi => {
      const { path, stretches } = cuttingLine(yoke(phi, { end: 'pressed-open' }));
      const [end] = endOf(stretches, 'shoulder').filter(p => p.segments[0]![0].x > 100);
      const beyond = sampled(end!, 20).filter(s => s.point.y < -1e-9 && s.point.y > -15 + 1e-9);
      expect(beyond.length).toBeGreaterThan(5);
      for (const { point } of beyond)
        expect(distanceTo(path, folded(point, at(0, 0), 0)).distance).toBeLessThan(1e-9);
    },
  );

  /** The yoke sewn to its mirror image along both shoulders; the armhole runs on across them if `runsOn`. */
  const sewn = (phi: number, runsOn: boolean): Pattern => {
    const front = { ...yoke(phi), name: 'front' },
      back = { ...yoke(phi), name: 'back' };
    const run = (piece: string, edge: string, reversed = false) => ({ piece, edge, reversed });
    return {
      name: 'yokes',
      unit: 'mm',
      pieces: [front, back],
      seams: [
        { name: 'shoulder', a: [run('front', 'shoulder')], b: [run('back', 'shoulder')], ease: { mm: 0 } },
        ...(runsOn
          ? [
              {
                name: 'armhole',
                a: [run('front', 'armhole', true), run('back', 'armhole')],
                b: [run('front', 'armhole', true), run('back', 'armhole')],
                ease: { mm: 0 },
              },
            ]
          : [
              {
                name: 'front armhole',
                a: [run('front', 'armhole')],
                b: [run('front', 'foot')],
                ease: { mm: 0 },
              },
            ]),
      ],
      fabrics: [],
    };
  };
  test.each([70, 120])('it is the default at %d° where an armhole runs on across the shoulder', phi => {
    const pattern = sewn(phi, true);
    const front = pattern.pieces[0]!;
    expect(cuttingLine(front, pattern).path).toEqual(cuttingLine(yoke(phi, { end: 'pressed-open' })).path);
    expect(cuttingLine(front).path).not.toEqual(cuttingLine(front, pattern).path);
  });
  test.each([70, 120])(
    'at %d° it is so on both pieces, drawn in a mirror with edges of the same names',
    phi => {
      const front = { ...yoke(phi), name: 'front' };
      const acrossX = (p: Point): Point => at(-p.x, p.y);
      const parts = front.outline.parts as readonly Edge[];
      const back = {
        ...pieceOf(
          [...parts].reverse().map(e => {
            const [from, to] = e.path.segments[0] as readonly [Point, Point];
            return straightEdge(e.name, acrossX(to), acrossX(from), { kind: e.kind, allowance: e.allowance });
          }),
        ),
        name: 'back',
      };
      const run = (piece: string, reversed: boolean) => ({ piece, edge: 'shoulder', reversed });
      const pattern: Pattern = {
        name: 'yokes',
        unit: 'mm',
        pieces: [front, back],
        seams: [{ name: 'shoulder', a: [run('front', false)], b: [run('back', true)], ease: { mm: 0 } }],
        fabrics: [],
      };
      // The armhole starts at the front's shoulder and ends at the back's: at its other end it runs on nowhere.
      const asked = cuttingLine(yoke(phi, { end: 'pressed-open' })).path;
      expect(cuttingLine(front, pattern).path).toEqual(asked);
      const there = cuttingLine(back, pattern).path;
      for (const { point } of sampled(asked, 4))
        expect(distanceTo(there, acrossX(point)).distance).toBeLessThan(1e-9);
      for (const { point } of sampled(there, 4))
        expect(distanceTo(asked, acrossX(point)).distance).toBeLessThan(1e-9);
    },
  );
  test.each([80, 100, 155])('at %d° the corner is mitred all the same', phi => {
    const pattern = sewn(phi, true);
    expect(cuttingLine(pattern.pieces[0]!, pattern).path).toEqual(
      cuttingLine(yoke(phi, { end: 'mitre' })).path,
    );
  });
  test('where no neighbour runs on the corner is mitred', () => {
    const pattern = sewn(120, false);
    expect(cuttingLine(pattern.pieces[0]!, pattern).path).toEqual(
      cuttingLine(yoke(120, { end: 'mitre' })).path,
    );
  });
});

describe('hems', () => {
  const flared = (depth: number) => {
    // A quarter of a circle skirt: waist radius 100, hem radius 400.
    const hem = arc(at(0, 0), 400, 0, 90),
      waist = arc(at(0, 0), 100, 90, 0);
    return pieceOf([
      straightEdge('right', at(100, 0), at(400, 0), { allowance: 15 }),
      edge('hem', hem, { kind: 'hem', allowance: depth }),
      straightEdge('left', at(0, 400), at(0, 100), { kind: 'fold' }),
      edge('waist', waist, { allowance: 10 }),
    ]);
  };
  test('a curved hem deeper than 15 mm is reported with its excess: depth × angle', () => {
    const found = cuttingLine(flared(25)).findings.find(f => f.code === 'curved-hem');
    expect(found?.where).toEqual({ piece: 'piece', edge: 'hem' });
    expect(found?.figures?.excessMm).toBeCloseTo((25 * Math.PI) / 2, 2);
  });
  test('one of 15 mm, and a straight one, are not', () => {
    expect(cuttingLine(flared(15)).findings).toEqual([]);
    expect(cuttingLine(tube(0, 40)).findings).toEqual([]);
  });
  test('the fold of a turned-up hem is given for drawing', () => {
    const { foldLines } = cuttingLine(tube(5));
    expect(foldLines).toHaveLength(1);
    // One without an allowance is not turned up.
    expect(cuttingLine(tube(5, 0)).foldLines).toEqual([]);
  });
});

// An edge that slants down by 45 degrees, run on up over its corner, meets a line 25 mm above that corner 25 mm beside it.
describe.each(['turned-up', 'pressed-open'] as const)('an end that is %s', rule => {
  test.each([
    [24.9, false],
    [25, false],
    [25.1, true],
  ])(
    'in the line of a neighbour %d mm long, where 25 mm of it are wanted, is shaped: %s',
    (length, isShaped) => {
      const slant = (end?: typeof rule) =>
        straightEdge('slant', at(-110, 110), at(0, 0), { allowance: 10, ...(end && { end }) });
      const cut = (first: Edge) =>
        cuttingLine(
          pieceOf([
            first,
            straightEdge('short', at(0, 0), at(length, 0), { allowance: 25 }),
            straightEdge('right', at(length, 0), at(length, 200)),
            straightEdge('foot', at(length, 200), at(-110, 200)),
            straightEdge('left', at(-110, 200), at(-110, 110)),
          ]),
        );
      const { path, findings } = cut(slant(rule));
      expect(findings.map(f => [f.severity, f.code])).toEqual(
        isShaped ? [] : [['note', 'corner-not-shaped']],
      );
      // Its outer corner: 10 mm square above the slant's line, run on to beside where the two lines met.
      const tip = at(25, -25 - 10 * Math.SQRT2);
      const isThere = path.segments.some(([p]) => Math.hypot(p.x - tip.x, p.y - tip.y) < 1e-6);
      expect(isThere).toBe(isShaped);
      if (!isShaped) expect(path).toEqual(cut(slant()).path);
    },
  );
});
