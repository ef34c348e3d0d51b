import { expect, test } from 'vitest';
import { aligned } from '../../packages/cli/src/columns.js';

test('columns stand under each other', () => {
  expect(
    aligned([
      ['a', 'before', ''],
      ['long name', '1', 'new'],
    ]),
  ).toEqual(['a          before', 'long name  1       new']);
});
