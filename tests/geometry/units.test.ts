import { formatLength, nearestEighth, PatternError, parseLength } from '@paperhinge/geometry';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { refusalOf } from '../support/told.js';

describe('lengths in text', () => {
  test.each([
    ['12', 12],
    ['12 mm', 12],
    ['1.2 cm', 12],
    ['.5cm', 5],
    ['1in', 25.4],
    ['3/8 in', 9.525],
    ['2 7/8"', 73.025],
    ['2-7/8 in', 73.025],
    ['2⅞ in', 73.025],
    ['⅝"', 15.875],
    ['1 ½ inches', 38.1],
    ['2 Zoll', 50.8],
    ['5/8 in', 15.875],
    ['-3 mm', -3],
    ['−1/2 in', -12.7],
    ['  40  mm ', 40],
  ])('%s is understood', (text, mm) => {
    expect(parseLength(text, 'mm')).toBeCloseTo(mm, 10);
  });

  test('a bare number takes the unit given, as text or as number', () => {
    expect(parseLength('2', 'in')).toBe(50.8);
    expect(parseLength(2, 'in')).toBe(50.8);
    expect(parseLength('5/8', 'in')).toBeCloseTo(15.875, 12);
    expect(parseLength(3, 'cm')).toBe(30);
  });

  test.each([
    '',
    'mm',
    'long',
    '12 furlongs',
    '1,5 cm',
    '1/0 in',
    '1e3',
    '12 mm 3',
    '5 %',
    'NaN',
    'Infinity',
    '0x10',
  ])('"%s" is refused with a remedy, and not quoted', text => {
    const refused = () => parseLength(text, 'mm');
    expect(refusalOf(refused)).toEqual(
      expect.objectContaining({ code: 'length-not-understood', remedy: expect.stringContaining('3/8 in') }),
    );
    if (text.length > 4) expect(refused).not.toThrow(new RegExp(text.replace(/[^a-z]/g, '.')));
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY, 1e308, '100000000 mm', '9'.repeat(60)])(
    'the absurd length %s is refused',
    text => {
      expect(() => parseLength(text, 'mm')).toThrow(PatternError);
    },
  );

  test('a megabyte of digits is refused', () => {
    expect(() => parseLength('1'.repeat(1e6), 'mm')).toThrow(PatternError);
  });

  test('what is formatted reads back to within half its last decimal', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -9000, max: 9000, noNaN: true }),
        fc.constantFrom('mm' as const, 'cm' as const, 'in' as const),
        (mm, unit) => {
          const slack = unit === 'mm' ? 0.05 : unit === 'cm' ? 0.05 : 0.127;
          expect(Math.abs(parseLength(formatLength(mm, unit), unit) - mm)).toBeLessThanOrEqual(slack + 1e-9);
        },
      ),
    );
  });
});

test('lengths are shown without idle decimals', () => {
  expect(formatLength(590, 'mm')).toBe('590 mm');
  expect(formatLength(372.44, 'mm')).toBe('372.4 mm');
  expect(formatLength(372.4, 'cm')).toBe('37.24 cm');
  expect(formatLength(25.4, 'in')).toBe('1 in');
  expect(formatLength(-0.01, 'mm')).toBe('0 mm');
});

describe('the nearest eighth of an inch', () => {
  test.each([
    [314.325, '12 3/8 in', 314.325],
    [315, '12 3/8 in', 314.325],
    [9.5, '3/8 in', 9.525],
    [304.8, '12 in', 304.8],
    [1, '0 in', 0],
    [-12.7, '−1/2 in', -12.7],
  ])('%d mm is %s', (mm, text, exact) => {
    const found = nearestEighth(mm);
    expect(found.text).toBe(text);
    expect(found.mm).toBeCloseTo(exact, 10);
  });

  test('is never more than a sixteenth away', () => {
    fc.assert(
      fc.property(fc.double({ min: -5000, max: 5000, noNaN: true }), mm => {
        expect(Math.abs(nearestEighth(mm).mm - mm)).toBeLessThanOrEqual(25.4 / 16 + 1e-9);
      }),
    );
  });
});
