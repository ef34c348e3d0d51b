import { expect, test } from 'vitest';
import { bundle } from '../bench/bundles.js';

// kB of 1000 bytes, minified: bars of the project.
test.each([
  ['one length', 3, `export { pathLength } from '@paperhinge/geometry'`],
  ['shorten', 50, `export { shorten } from '@paperhinge/alter/length'`],
  ['close a dart', 50, `export { closeDart } from '@paperhinge/alter/darts'`],
  ['reading a sheet with every verb', 230, `export { readSheet } from '@paperhinge/sheet'`],
])('a bundle of %s is at most %d kB', async (_, most, program) => {
  const { bytes } = await bundle(program);
  expect(bytes / 1000).toBeLessThanOrEqual(most);
});

test('reading a sheet carries no geometry: the forms of verbs stand apart from their work', async () => {
  const { modules } = await bundle(`export { readSheet } from '@paperhinge/sheet'`);
  expect(
    modules.filter(name => /(geometry\/dist\/(curve|path|region)|alter\/dist\/hinge)\//.test(name)),
  ).toEqual([]);
  expect(modules.some(name => name.includes('alter/dist/operations/close-dart'))).toBe(true);
});
