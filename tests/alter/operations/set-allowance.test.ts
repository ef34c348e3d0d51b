import { setAllowance } from '@paperhinge/alter';
import { edgeParts, measurePattern, type Pattern } from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';

const allowances = (pattern: Pattern): Record<string, number> =>
  Object.fromEntries(
    pattern.pieces.flatMap(p => edgeParts(p).map(e => [`${p.name}.${e.name} (${e.kind})`, e.allowance])),
  );

function refusal(work: () => unknown): { code: string; remedy: string; where: object } {
  try {
    work();
  } catch (error) {
    return error as never;
  }
  throw new Error('nothing was refused');
}

test('all seams means every edge of kind seam, and only those', () => {
  const before = shiftPattern();
  const { pattern, did, findings } = setAllowance(before, { edges: 'all seams', to: 7 });
  for (const [edge, mm] of Object.entries(allowances(pattern)))
    expect(mm, edge).toBe(edge.endsWith('(seam)') ? 7 : allowances(before)[edge]);
  expect(did).toBe('set the allowance of all seams (15 edges) to 7 mm; before: 15.9 mm');
  expect(findings).toEqual([]);
});

test('all hems means every edge of kind hem', () => {
  const { pattern } = setAllowance(shiftPattern(), { edges: 'all hems', to: 40 });
  expect(
    Object.entries(allowances(pattern))
      .filter(([, mm]) => mm === 40)
      .map(([edge]) => edge),
  ).toEqual(['front.hem (hem)', 'back.hem (hem)', 'sleeve.hem (hem)']);
});

test('named edges change alone, and no stitching line moves', () => {
  const before = shiftPattern();
  const { pattern } = setAllowance(before, { edges: [{ piece: 'front', edge: 'neck' }], to: 10 });
  expect(allowances(pattern)['front.neck (seam)']).toBe(10);
  expect(allowances(pattern)['back.neck (seam)']).toBe(15.875);
  expect(measurePattern(pattern).pieces.front!.areaMm2).toBe(measurePattern(before).pieces.front!.areaMm2);
  expect(pattern.pieces[1]).toBe(before.pieces[1]);
});

describe('what cannot be cut is refused', () => {
  const front = (edge: string) => [{ piece: 'front', edge }];
  test.each([
    ['allowance-out-of-range', { edges: 'all seams', to: -1 }],
    ['allowance-out-of-range', { edges: 'all seams', to: 5000 }],
    ['allowance-out-of-range', { edges: 'all seams', to: Number.NaN }],
    ['allowance-on-fold', { edges: front('centre-front'), to: 10 }],
    ['unknown-edge', { edges: front('collar'), to: 10 }],
    ['unknown-piece', { edges: [{ piece: 'pocket', edge: 'top' }], to: 10 }],
  ] as const)('%s', (code, parameters) => {
    const error = refusal(() => setAllowance(shiftPattern(), parameters));
    expect(error.code).toBe(code);
    expect(error.remedy).not.toBe('');
  });

  test('though a fold may be told that it has none', () => {
    const before = shiftPattern();
    expect(allowances(setAllowance(before, { edges: front('centre-front'), to: 0 }).pattern)).toEqual(
      allowances(before),
    );
  });
});
