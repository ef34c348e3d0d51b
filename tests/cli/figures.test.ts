import { expect, test } from 'vitest';
import { aligned, shownChange, shownLength } from '../../packages/cli/src/figures.js';

test('a length is shown in the maker’s unit, in inches beside its millimetres and to the nearest eighth', () => {
  expect(shownLength(372.44, 'mm')).toBe('372.4 mm');
  expect(shownLength(372.44, 'cm')).toBe('37.24 cm');
  expect(shownLength(372.44, 'in')).toBe('372.4 mm (14 5/8 in)');
});

test('a change has its sign', () => {
  expect(shownChange(-210, 'mm')).toBe('−210 mm');
  expect(shownChange(12, 'in')).toBe('+12 mm (1/2 in)');
});

test('columns stand under each other', () => {
  expect(
    aligned([
      ['a', 'before', ''],
      ['long name', '1', 'new'],
    ]),
  ).toEqual(['a          before', 'long name  1       new']);
});
