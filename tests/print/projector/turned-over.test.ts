import { at, type Pattern, type Point, pathLength } from '@paperhinge/geometry';
import { projectorSheet } from '@paperhinge/print';
import { describe, expect, test } from 'vitest';
import { netLine } from '../../../packages/print/src/drawing/piece-shape.js';
import { mirrored, openedOut } from '../../../packages/print/src/drawing/turned-over.js';
import { shiftPattern } from '../../support/shift.js';
import { patternOf, polygonPiece } from '../simple-pieces.js';

/** A half with its fold on the left, x = 0: 60 wide at the top, 100 at the hem, 200 high. */
const half = polygonPiece('front', [at(0, 0), at(60, 0), at(100, 200), at(0, 200)], 10);
const onFold: Pattern = patternOf({
  ...half,
  outline: {
    parts: half.outline.parts.map((p, i) =>
      p.type === 'edge' && i === 3 ? { ...p, kind: 'fold' as const, allowance: 0 } : p,
    ),
  },
  notches: [{ edge: 'edge-2', at: 50, style: 'single' }],
});
/** mm², positive if the outline runs clockwise with y down. */
function signedArea(pattern: Pattern): number {
  const points = netLine(pattern.pieces[0]!).segments.map(s => s[0] as Point);
  return points.reduce((sum, p, i) => {
    const q = points[(i + 1) % points.length]!;
    return sum + (p.x * q.y - q.x * p.y) / 2;
  }, 0);
}

describe('a half piece opened out', () => {
  const { pattern } = openedOut(onFold);

  test('has twice the area and no fold, and still runs clockwise', () => {
    expect(signedArea(onFold)).toBeCloseTo(16_000, 9);
    expect(signedArea(pattern)).toBeCloseTo(32_000, 9);
    const edges = pattern.pieces[0]!.outline.parts.flatMap(p => (p.type === 'edge' ? [p] : []));
    expect(edges.map(e => e.kind)).not.toContain('fold');
    expect(new Set(edges.map(e => e.name)).size).toBe(edges.length);
  });

  test('has each notch on both halves, as far from the top', () => {
    const [own, other] = pattern.pieces[0]!.notches;
    expect(own).toMatchObject({ edge: 'edge-2', at: 50 });
    // The other half's side runs up, so that the notch stands as far from its end.
    expect(other!.edge).toBe('other edge-2');
    expect(other!.at).toBeCloseTo(Math.hypot(40, 200) - 50, 9);
  });
});

test('a piece turned over is as large, runs clockwise, and turned over again is itself', () => {
  const once = mirrored(onFold).pattern;
  expect(signedArea(once)).toBeCloseTo(16_000, 9);
  const twice = mirrored(once).pattern;
  expect(netLine(twice.pieces[0]!)).toEqual(netLine(onFold.pieces[0]!));
});

test('darts, levels and marks of a shift go with it', () => {
  const shift = shiftPattern();
  const over = mirrored(shift).pattern;
  for (const [i, piece] of shift.pieces.entries()) {
    const own = over.pieces[i]!;
    expect(pathLength(netLine(own))).toBeCloseTo(pathLength(netLine(piece)), 9);
    expect(own.marks.map(m => m.at.x)).toEqual(piece.marks.map(m => -m.at.x));
  }
});

test('the record carries a piece as drawn to where its mirror image is shown', async () => {
  const { pages } = await projectorSheet(onFold, { ground: 'dark', show: 'mirrored' });
  const [a, b, c, d] = pages.pieces[0]!.matrix;
  expect(a * d - b * c).toBeCloseTo(-1, 12);
});
