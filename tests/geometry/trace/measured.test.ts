import {
  definePattern,
  edgePath,
  measurePattern,
  type Piece,
  type Point,
  pathLength,
} from '@paperhinge/geometry';
import { nearestOnPath, tangentAlong } from '@paperhinge/geometry/paths';
import {
  type MeasuredPiece,
  type MeasuredPoint,
  measuredPiece,
  type Towards,
} from '@paperhinge/geometry/trace';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusalOf, toldFinding } from '../../support/told.js';

const A = { x: 0, y: 0 },
  B = { x: 300, y: 0 },
  C = { x: 0, y: 400 };
/** 300, 400 and 500 mm. */
const triangle: MeasuredPiece = {
  name: 'gusset',
  points: { A, B, C },
  edges: [
    { name: 'top', through: ['A', 'B'] },
    { name: 'long', through: ['B', 'C'] },
    { name: 'side', through: ['C', 'A'] },
  ],
};
const withPoint = (P: MeasuredPoint): MeasuredPiece => ({ ...triangle, points: { A, B, C, P } });
/** Where a point comes to lie, seen by a mark at it. */
const placeOf = (P: MeasuredPoint): Point =>
  measuredPiece({ ...withPoint(P), marks: [{ name: 'P', at: 'P' }] }).piece.marks[0]!.at;
const lengthOf = (piece: Piece, edge: string): number => pathLength(edgePath(piece, edge));

describe('edges through measured points', () => {
  it('keeps every point, and straight lines straight', () => {
    const { piece, findings } = measuredPiece(triangle);
    expect(findings).toEqual([]);
    expect(lengthOf(piece, 'top')).toBe(300);
    expect(lengthOf(piece, 'side')).toBe(400);
    expect(lengthOf(piece, 'long')).toBeCloseTo(500, 9);
  });

  it('goes round clockwise whichever way the maker went', () => {
    const back: MeasuredPiece = {
      ...triangle,
      edges: triangle.edges.map(e => ({ ...e, through: [...e.through].reverse() })).reverse(),
    };
    const { piece } = measuredPiece(back);
    const top = edgePath(piece, 'top').segments[0]!;
    expect([top[0], top.at(-1)]).toEqual([A, B]);
  });

  it('draws a quarter circle through three of its points within 0.05 mm, square at both ends', () => {
    const r = 100,
      k = r * Math.SQRT1_2;
    const { piece } = measuredPiece({
      name: 'neck',
      points: { O: { x: 0, y: 0 }, S: { x: r, y: 0 }, M: { x: k, y: k }, N: { x: 0, y: r } },
      edges: [
        { name: 'shoulder', through: ['O', 'S'] },
        { name: 'neck', through: ['S', 'M', 'N'], starts: 'square', ends: 'square' },
        { name: 'centre', through: ['N', 'O'] },
      ],
    });
    const neck = edgePath(piece, 'neck');
    expect(pathLength(neck)).toBeCloseTo((Math.PI * r) / 2, 1);
    expect(Math.abs(tangentAlong(neck, 0).x)).toBeLessThan(1e-12);
    expect(Math.abs(tangentAlong(neck, pathLength(neck)).y)).toBeLessThan(1e-12);
    for (let i = 0; i <= 40; i++) {
      const angle = (i * Math.PI) / 80;
      expect(nearestOnPath(neck, { x: r * Math.cos(angle), y: r * Math.sin(angle) }).distance).toBeLessThan(
        0.05,
      );
    }
  });

  it('runs on smooth from its neighbour', () => {
    const { piece } = measuredPiece({
      ...triangle,
      edges: [
        triangle.edges[0]!,
        { name: 'long', through: ['B', 'C'], starts: 'smooth' },
        triangle.edges[2]!,
      ],
    });
    const { x, y } = tangentAlong(edgePath(piece, 'long'), 0);
    expect(x).toBeCloseTo(1, 12);
    expect(y).toBeCloseTo(0, 12);
  });

  it('draws a curve fuller or flatter to the length on the tape', () => {
    for (const length of [525, 540, 560]) {
      const { piece, findings } = measuredPiece({
        ...triangle,
        edges: [
          triangle.edges[0]!,
          { name: 'long', through: ['B', 'C'], starts: 'square', length },
          triangle.edges[2]!,
        ],
      });
      expect(findings).toEqual([]);
      expect(lengthOf(piece, 'long')).toBeCloseTo(length, 7);
    }
  });

  it('says where a straight edge is not as long as the tape said, and what a curve cannot be', () => {
    const [top, , side] = triangle.edges;
    const { findings } = measuredPiece({
      ...triangle,
      edges: [top!, { name: 'long', through: ['B', 'C'], length: 520 }, side!],
    });
    expect(findings.map(f => toldFinding(f).message)).toEqual([
      'The long of the gusset comes to 500 mm by its points, and 520 mm was measured.',
    ]);
  });

  it('leaves a curve fair that would bulge or go straight for its length, and says so', () => {
    const [top, , side] = triangle.edges;
    for (const length of [450, 502, 900]) {
      const { piece, findings } = measuredPiece({
        ...triangle,
        edges: [top!, { name: 'long', through: ['B', 'C'], starts: 'square', length }, side!],
      });
      const fair = lengthOf(
        measuredPiece({
          ...triangle,
          edges: [top!, { name: 'long', through: ['B', 'C'], starts: 'square' }, side!],
        }).piece,
        'long',
      );
      expect(lengthOf(piece, 'long')).toBe(fair);
      expect(findings).toMatchObject([
        {
          code: 'edge-measured-otherwise',
          where: { piece: 'gusset', edge: 'long' },
          figures: { drawnMm: fair, givenMm: length },
        },
      ]);
    }
  });

  it('opens a dart in the edge that runs past its mouth, and keeps one within the piece as a line', () => {
    const { piece } = measuredPiece({
      ...triangle,
      points: {
        A,
        B,
        C,
        P: { x: 0, y: 160 },
        Q: { x: 0, y: 120 },
        R: { x: 80, y: 140 },
        S: { x: 60, y: 200 },
        T: { x: 70, y: 240 },
        U: { x: 60, y: 280 },
        V: { x: 50, y: 240 },
      },
      edges: [triangle.edges[0]!, triangle.edges[1]!, { name: 'side', through: ['C', 'P', 'Q', 'A'] }],
      darts: [
        { name: 'bust', points: ['Q', 'R', 'P'] },
        { name: 'waist', points: ['S', 'T', 'U', 'V'] },
      ],
    });
    const measures = measurePattern(definePattern({ name: 'p', pieces: [piece] }));
    const dart = measures.pieces.gusset!.darts.bust!;
    expect(dart.angleDeg).toBeCloseTo((2 * Math.atan(1 / 4) * 180) / Math.PI, 9);
    expect(lengthOf(piece, 'side')).toBeCloseTo(360, 9);
    expect(piece.lines).toMatchObject([{ kind: 'dart', name: 'waist' }]);
  });

  it('comes back to the stitching line where the paper shows the cutting line', () => {
    const { piece } = measuredPiece({ ...triangle, includedAllowance: 15, allowance: 15 });
    // The inscribed circle's radius is 100: moved in by 15, a triangle keeps 85 % of its sides.
    expect(lengthOf(piece, 'top')).toBeCloseTo(255, 6);
    expect(lengthOf(piece, 'side')).toBeCloseTo(340, 6);
    expect(lengthOf(piece, 'long')).toBeCloseTo(425, 6);
  });

  it('puts a notch on the edge nearest to its point', () => {
    const N = { x: 120, y: 1 };
    const { piece } = measuredPiece({
      ...triangle,
      points: { A, B, C, N },
      notches: [{ at: 'N', style: 'double' }],
    });
    expect(piece.notches).toMatchObject([{ edge: 'top', style: 'double' }]);
    expect(piece.notches[0]!.at).toBeCloseTo(120, 9);
  });
});

describe('points by their distances', () => {
  it('finds the corner of a triangle of 3, 4 and 5', () => {
    const at = placeOf({ from: { A: 400, B: 500 }, towards: 'down' });
    expect(at.x).toBeCloseTo(0, 9);
    expect(at.y).toBeCloseTo(400, 9);
  });

  it('needs no direction where three points are not in line', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -500, max: 900, noNaN: true }),
        fc.double({ min: -500, max: 900, noNaN: true }),
        (x, y) => {
          const far = (q: Point): number => Math.hypot(x - q.x, y - q.y);
          const at = placeOf({ from: { A: far(A), B: far(B), C: far(C) } });
          expect(Math.hypot(at.x - x, at.y - y)).toBeLessThan(1e-5);
        },
      ),
    );
  });

  it('chooses the side that is asked for', () => {
    const side = (towards: Towards): Point => placeOf({ from: { A: 250, C: 250 }, towards });
    expect(side('right').x).toBeCloseTo(150, 9);
    expect(side('left').x).toBeCloseTo(-150, 9);
  });

  it('takes the place that suits all of more distances than it takes, and says how they differ', () => {
    const P = { x: 120, y: 90 };
    const far = (q: Point): number => Math.hypot(P.x - q.x, P.y - q.y);
    const over = { from: { A: far(A) + 1, B: far(B) - 1, C: far(C) + 1 } };
    const at = placeOf(over);
    expect(Math.hypot(at.x - P.x, at.y - P.y)).toBeLessThan(2);
    // No place near it has a smaller sum of squares: sampled, not derived.
    const sum = (p: Point): number =>
      [A, B, C].reduce(
        (s, q, i) => s + (Math.hypot(p.x - q.x, p.y - q.y) - Object.values(over.from)[i]!) ** 2,
        0,
      );
    for (let i = 0; i < 360; i++)
      expect(sum({ x: at.x + 0.01 * Math.cos(i), y: at.y + 0.01 * Math.sin(i) })).toBeGreaterThan(sum(at));
    const [found] = measuredPiece(withPoint(over)).findings;
    expect(found).toMatchObject({
      severity: 'note',
      code: 'point-measured-over',
      where: { piece: 'gusset' },
    });
  });

  it('warns where one distance is far off', () => {
    const [found] = measuredPiece(withPoint({ from: { A: 250, B: 250, C: 270 } })).findings;
    expect(found).toMatchObject({ severity: 'warning', code: 'point-measured-over' });
  });

  it('forgives circles that miss by what a ruler leaves', () => {
    const at = placeOf({ from: { A: 100, B: 199 } });
    expect(at.x).toBeCloseTo(100.5, 6);
    expect(at.y).toBeCloseTo(0, 6);
    expect(placeOf({ from: { A: 401, C: 0.5 } }).y).toBeCloseTo(400.75, 6);
    expect(placeOf({ from: { A: 0.5, C: 401 } }).y).toBeCloseTo(-0.75, 6);
  });

  it('mirrors a point over the line through two others', () => {
    expect(placeOf({ mirror: 'B', over: ['A', 'C'] })).toEqual({ x: -300, y: 0 });
  });
});

describe('measures that cannot be', () => {
  const refused = (piece: MeasuredPiece) => refusalOf(() => measuredPiece(piece));
  it.each([
    ['point-not-named', withPoint({ from: { A: 1, Z: 2 } })],
    ['points-in-a-round', withPoint({ mirror: 'P', over: ['A', 'B'] })],
    ['distances-too-few', withPoint({ from: { A: 100 } })],
    ['distances-do-not-meet', withPoint({ from: { A: 100, B: 100 } })],
    ['point-in-two-places', withPoint({ from: { A: 250, C: 250 } })],
    ['point-in-two-places', withPoint({ from: { A: 250, C: 250 }, towards: 'down' })],
    ['mirror-line-missing', withPoint({ mirror: 'B', over: ['A', 'A'] })],
    ['not-a-number', withPoint({ from: { A: Number.NaN, B: 2 } })],
    ['too-few-measured-edges', { ...triangle, edges: triangle.edges.slice(0, 1) }],
    ['edges-do-not-meet', { ...triangle, edges: triangle.edges.slice(0, 2) }],
    [
      'edge-of-one-point',
      { ...triangle, edges: [{ name: 'top', through: ['A'] }, ...triangle.edges.slice(1)] },
    ],
    ['dart-of-wrong-points', { ...triangle, darts: [{ name: 'bust', points: ['A', 'B'] }] }],
    ['notch-point-off-edge', { ...withPoint({ x: 90, y: 90 }), notches: [{ at: 'P' }] }],
  ] as const)('tells %s', (code, piece) => {
    const { message, remedy, ...refusal } = refused(piece);
    expect(refusal).toMatchObject({ code, where: { piece: 'gusset' } });
    expect(message.length).toBeGreaterThan(20);
    expect(remedy.length).toBeGreaterThan(20);
  });

  it('says which way tells the two places apart', () => {
    expect(refused(withPoint({ from: { A: 250, C: 250 } })).remedy).toBe(
      'Say which is meant: towards: left, or towards: right.',
    );
  });

  it('tells a dart that no edge runs past', () => {
    const piece = withPoint({ x: 50, y: 50 });
    const { remedy } = refused({ ...piece, darts: [{ name: 'bust', points: ['A', 'C', 'P'] }] });
    expect(remedy).toContain('A');
  });

  it('refuses two edges that would each be square to the other', () => {
    const edges = [
      { name: 'top', through: ['A', 'B'], ends: 'square' as const },
      { name: 'long', through: ['B', 'C'], starts: 'square' as const },
      triangle.edges[2]!,
    ];
    expect(refused({ ...triangle, edges }).code).toBe('edges-wait-for-one-another');
  });
});
