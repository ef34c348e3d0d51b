import { PatternError } from '@paperhinge/geometry';
import { parsePercent, parsePosition } from '@paperhinge/geometry/pattern';
import { expect, test } from 'vitest';
import { refusalOf } from '../../support/told.js';

test.each([
  ['1/3', { share: 1 / 3 }],
  ['40 %', { share: 0.4 }],
  ['40%', { share: 0.4 }],
  ['½', { share: 0.5 }],
  ['100 %', { share: 1 }],
  ['1/3 from side-upper', { share: 1 / 3, from: 'side-upper' }],
  ['40 % from centre front', { share: 0.4, from: 'centre front' }],
  ['60 mm from neck', { mm: 60, from: 'neck' }],
  ['1/2 in', { mm: 12.7 }],
  ['60', { mm: 60 }],
  [60, { mm: 60 }],
  [0, { mm: 0 }],
  ['2 1/2', { mm: 2.5 }],
])('the place %s is understood', (text, position) => {
  expect(parsePosition(text, 'mm')).toEqual(position);
});

test('a bare number counts in the unit of the sheet', () => {
  expect(parsePosition('2', 'in')).toEqual({ mm: 50.8 });
});

// 0.5 could be half the edge or half a millimetre; guessing would cut cloth wrongly.
test.each([0.5, '0.5', 1])('the bare number %s is refused, since it could be a share or a length', text => {
  expect(refusalOf(() => parsePosition(text, 'mm'))).toEqual(
    expect.objectContaining({ code: 'position-not-understood', remedy: expect.stringContaining('50 %') }),
  );
});

test.each(['3/2', '120 %', '-5 mm', '-10 %'])('the place %s off the edge is refused', text => {
  expect(() => parsePosition(text, 'mm')).toThrow(expect.objectContaining({ code: 'position-off-edge' }));
});

test.each(['', 'middle', '1/3 of neck', '60 mm from ', 'from neck'])('"%s" is refused', text => {
  expect(() => parsePosition(text, 'mm')).toThrow(PatternError);
});

test('a percentage needs its sign', () => {
  expect(parsePercent('80 %')).toBe(0.8);
  expect(parsePercent('33 1/3 %')).toBeCloseTo(1 / 3, 12);
  expect(refusalOf(() => parsePercent(80)).remedy).toBe('Write 80 %, if that is what you mean.');
  expect(refusalOf(() => parsePercent('0.8')).remedy).toBe('Write 80 %, if that is what you mean.');
  expect(refusalOf(() => parsePercent('lots')).remedy).toBe('Write a percentage such as 80 %.');
});
