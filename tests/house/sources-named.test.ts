// Each operation says in its docstring where it comes from: a handbook by author and year, or common practice.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const root = fileURLToPath(new URL('../../packages/alter/src/', import.meta.url));
const operations = ['operations', 'derive', 'fit/adjust'].flatMap(folder =>
  readdirSync(join(root, folder))
    .filter(file => file.endsWith('.ts'))
    .map(file => join(root, folder, file))
    .filter(file => /formOf<\w+>\(\)/.test(readFileSync(file, 'utf8'))),
);

test('every operation names its source', () => {
  expect(operations.length).toBeGreaterThan(70);
  const words = (file: string): string => readFileSync(file, 'utf8').replace(/\s*\n \* /g, ' ');
  expect(operations.filter(file => !/Source: |common practice/i.test(words(file)))).toEqual([]);
});
