import type { CornerRule, Edge, EdgeKind, Pattern } from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';
import { cornerPlan } from '../../../packages/geometry/src/cutting-line/corner-rule.js';
import { runsOf } from '../../../packages/geometry/src/cutting-line/run.js';
import { at, edge, pieceOf, straightEdge } from './pieces.js';

// trade-notes §1: which rule turns a corner, by the kinds of its two edges, what they ask for, and its angle.

interface Sides {
  readonly kinds?: readonly [EdgeKind, EdgeKind];
  readonly asks?: readonly [CornerRule | undefined, CornerRule | undefined];
  readonly allowances?: readonly [number, number];
  /** The two are parts of one edge. */
  readonly isOne?: true;
}

/** An edge that comes along the x axis to (200, 0), and the next, with so many degrees of cloth between them. */
function corner(
  interior: number,
  { kinds = ['seam', 'seam'], asks = [undefined, undefined], allowances = [10, 10], isOne }: Sides = {},
) {
  const turn = ((180 - interior) * Math.PI) / 180;
  const end = at(200 + 150 * Math.cos(turn), 150 * Math.sin(turn));
  const [first, second] = [
    straightEdge('a', at(0, 0), at(200, 0), {
      kind: kinds[0],
      allowance: allowances[0],
      ...(asks[0] ? { end: asks[0] } : {}),
    }),
    straightEdge(isOne ? 'a' : 'b', at(200, 0), end, {
      kind: kinds[1],
      allowance: allowances[1],
      ...(asks[1] ? { start: asks[1] } : {}),
    }),
  ];
  return {
    first,
    second,
    piece: pieceOf([first, second, straightEdge('c', end, at(0, 0), { kind: 'raw' })]),
  };
}
function plan(interior: number, sides: Sides = {}, pattern?: Pattern): string {
  const { first, second, piece } = corner(interior, sides);
  const found = cornerPlan(runsOf(first)[0]!, runsOf(second)[0]!, piece, pattern);
  if (found.form === 'mirrored') return `${found.rule} ${found.shaped}`;
  return found.form === 'at-fold' ? `fold ${found.fold}` : found.form;
}

test('two parts of one edge are joined plainly, whatever it asks for at its ends', () => {
  expect(plan(60, { isOne: true, asks: ['pressed-open', 'turned-up'] })).toBe('plain');
  expect(plan(60, { isOne: true, kinds: ['hem', 'hem'] })).toBe('plain');
});

test('at a fold the other edge is run to its line, and two folds meet plainly', () => {
  for (const other of ['seam', 'hem', 'raw'] as const) {
    expect(plan(90, { kinds: ['fold', other] })).toBe('fold before');
    expect(plan(90, { kinds: [other, 'fold'] })).toBe('fold after');
  }
  expect(plan(90, { kinds: ['fold', 'fold'] })).toBe('plain');
  expect(plan(90, { kinds: ['seam', 'fold'], asks: ['pressed-open', 'mitre'] })).toBe('fold after');
});

describe('beside a hem', () => {
  test.each([30, 74, 90, 106, 149, 179])('at %d degrees its end is turned up', interior => {
    expect(plan(interior, { kinds: ['hem', 'seam'] })).toBe('turned-up before');
    expect(plan(interior, { kinds: ['seam', 'hem'] })).toBe('turned-up after');
    expect(plan(interior, { kinds: ['raw', 'hem'] })).toBe('turned-up after');
  });
  test('two hems are mitred, and an inner corner is plain', () => {
    expect(plan(90, { kinds: ['hem', 'hem'] })).toBe('plain');
    expect(plan(181, { kinds: ['hem', 'seam'] })).toBe('plain');
    expect(plan(181, { kinds: ['seam', 'hem'] })).toBe('plain');
  });
  test('of no depth there is no end to shape', () => {
    expect(plan(90, { kinds: ['hem', 'seam'], allowances: [0, 10] })).toBe('plain');
    expect(plan(90, { kinds: ['seam', 'hem'], allowances: [10, 0] })).toBe('plain');
    expect(plan(90, { kinds: ['hem', 'seam'], allowances: [10, 0] })).toBe('turned-up before');
    expect(plan(90, { kinds: ['seam', 'hem'], allowances: [0, 10] })).toBe('turned-up after');
  });
});

describe('what an edge asks for', () => {
  test.each<[CornerRule | undefined, CornerRule | undefined, string]>([
    ['pressed-open', undefined, 'pressed-open before'],
    [undefined, 'pressed-open', 'pressed-open after'],
    ['turned-up', undefined, 'turned-up before'],
    [undefined, 'turned-up', 'turned-up after'],
    ['mitre', undefined, 'plain'],
    [undefined, 'mitre', 'plain'],
    ['mitre', 'pressed-open', 'pressed-open after'],
    ['pressed-open', 'mitre', 'pressed-open before'],
    ['pressed-open', 'turned-up', 'pressed-open before'],
    ['turned-up', 'pressed-open', 'turned-up before'],
  ])('%s at its end and %s at the start of the next: %s', (first, second, expected) => {
    expect(plan(90, { asks: [first, second] })).toBe(expected);
    // Not at an inner corner, which is snipped.
    expect(plan(200, { asks: [first, second] })).toBe('plain');
  });
  test('turned up is always the hem, where one of the two is', () => {
    expect(plan(90, { kinds: ['seam', 'hem'], asks: ['turned-up', undefined] })).toBe('turned-up after');
    expect(plan(90, { kinds: ['hem', 'seam'], asks: [undefined, 'turned-up'] })).toBe('turned-up before');
    expect(plan(90, { kinds: ['hem', 'seam'], asks: [undefined, 'pressed-open'] })).toBe(
      'pressed-open after',
    );
    expect(plan(90, { kinds: ['seam', 'hem'], asks: ['pressed-open', undefined] })).toBe(
      'pressed-open before',
    );
  });
  test('a mitre stands against a hem', () => {
    expect(plan(90, { kinds: ['hem', 'seam'], asks: ['mitre', undefined] })).toBe('plain');
    expect(plan(90, { kinds: ['seam', 'hem'], asks: ['mitre', undefined] })).toBe('plain');
  });
  test('holds at the ends of the edge, not at corners within it', () => {
    const bent = edge(
      'bent',
      [
        [at(0, 0), at(100, 0)],
        [at(100, 0), at(100, 80)],
      ],
      { start: 'pressed-open', end: 'pressed-open' },
    );
    const [first, second] = runsOf(bent);
    const next: Edge = straightEdge('next', at(100, 80), at(0, 80), { start: 'turned-up' });
    const piece = pieceOf([bent, next]);
    expect(cornerPlan(first!, second!, piece, undefined).form).toBe('plain');
    expect(cornerPlan(first!, runsOf(next)[0]!, piece, undefined).form).toBe('plain');
    expect(cornerPlan(second!, runsOf(next)[0]!, piece, undefined)).toMatchObject({
      form: 'mirrored',
      shaped: 'before',
    });
  });
});

describe('between two seams', () => {
  /** The piece sewn to its like along one edge, across whose seam the other of the two runs on. */
  const sewn = (interior: number, along: 'a' | 'b', isTurned = false, sides: Sides = {}): string => {
    const across = along === 'a' ? 'b' : 'a';
    const { piece } = corner(interior, sides);
    const twin = { ...piece, name: 'twin' };
    const run = (name: string, of: string, reversed = false) => ({ piece: name, edge: of, reversed });
    // One seam holds `across` of both pieces one after the other, so that it runs on where `along` is sewn.
    const [one, other] = along === 'a' ? [true, false] : [false, true];
    const round = [run('piece', across, one), run('twin', across, other)];
    return plan(interior, sides, {
      name: 'pair',
      unit: 'mm',
      pieces: [piece, twin],
      seams: [
        isTurned
          ? { name: 'along', a: [run('twin', along)], b: [run('piece', along)], ease: { mm: 0 } }
          : { name: 'along', a: [run('piece', along)], b: [run('twin', along)], ease: { mm: 0 } },
        { name: 'across', a: round, b: round, ease: { mm: 0 } },
      ],
      fabrics: [],
    });
  };
  test.each([40, 74, 106, 149])('of %d degrees the one whose neighbour runs on is pressed open', interior => {
    expect(sewn(interior, 'a')).toBe('pressed-open before');
    expect(sewn(interior, 'b')).toBe('pressed-open after');
    // Whichever side of the seam it is on.
    expect(sewn(interior, 'a', true)).toBe('pressed-open before');
    expect(sewn(interior, 'b', true)).toBe('pressed-open after');
    expect(plan(interior)).toBe('plain');
  });
  test('it is both that are seams: beside a raw edge the corner is mitred', () => {
    for (const along of ['a', 'b'] as const) {
      expect(sewn(40, along, false, { kinds: ['seam', 'raw'], allowances: [10, 0] })).toBe('plain');
      expect(sewn(40, along, false, { kinds: ['raw', 'seam'], allowances: [0, 10] })).toBe('plain');
    }
  });
  test.each([76, 90, 104, 151, 170])('of %d degrees the corner is mitred', interior => {
    expect(sewn(interior, 'a')).toBe('plain');
    expect(sewn(interior, 'b')).toBe('plain');
  });
});
