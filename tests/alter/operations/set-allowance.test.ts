import { setAllowance } from '@paperhinge/alter/edges';
import { measurePattern, type Pattern } from '@paperhinge/geometry';
import { edgeParts } from '@paperhinge/geometry/pattern';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldDid } from '../../support/told.js';

const allowances = (pattern: Pattern): Record<string, number> =>
  Object.fromEntries(
    pattern.pieces.flatMap(p => edgeParts(p).map(e => [`${p.name}.${e.name} (${e.kind})`, e.allowance])),
  );

test('all seams means every edge of kind seam, and only those', () => {
  const before = shiftPattern();
  const done = setAllowance(before, { edges: 'all seams', to: 7 });
  const { pattern, findings } = done;
  for (const [edge, mm] of Object.entries(allowances(pattern)))
    expect(mm, edge).toBe(edge.endsWith('(seam)') ? 7 : allowances(before)[edge]);
  expect(toldDid(done)).toBe('The allowance of all seams is 7 mm now; it was 15.9 mm.');
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
    ['field-out-of-range', { edges: 'all seams', to: -1 }],
    ['field-out-of-range', { edges: 'all seams', to: 5000 }],
    ['field-not-usable', { edges: 'all seams', to: Number.NaN }],
    ['no-allowance-there', { edges: front('centre-front'), to: 10 }],
    ['unknown-edge', { edges: front('collar'), to: 10 }],
    ['unknown-piece', { edges: [{ piece: 'pocket', edge: 'top' }], to: 10 }],
  ] as const)('%s', (code, parameters) => {
    const error = refusalOf(() => setAllowance(shiftPattern(), parameters));
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
