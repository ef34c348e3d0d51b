import { readPattern } from '@paperhinge/geometry';
import { factsOf } from '@paperhinge/geometry/sayings';
import { describe, expect, test } from 'vitest';
import {
  exampleFile,
  examples,
  metadataExample,
  referenceText,
} from '../../../packages/geometry/src/svg/reference-text.js';
import {
  fabricKeys,
  fasteningKeys,
  metadataKeys,
  ourAttributes,
  seamKeys,
} from '../../../packages/geometry/src/svg/vocabulary.js';

const folder = '../../../packages/geometry/';

// `npx vitest run tests/geometry/svg/reference.test.ts -u` writes the page and its drawings anew.
test('the reference on disk is the one of the vocabulary', async () => {
  await expect(referenceText()).toMatchFileSnapshot(`${folder}pattern-svg.md`);
});

describe('every attribute has a drawn example', () => {
  test.each(examples())(
    '%s: on disk, with the attribute in it, read without a word',
    async (name, drawing) => {
      await expect(drawing).toMatchFileSnapshot(folder + exampleFile(name));
      if (name !== 'metadata') expect(drawing).toContain(`data-${name}=`);
      const { findings } = readPattern(drawing);
      // An example of several sizes is read in its first, which is said.
      expect(
        findings.filter(found => found.code !== 'size-not-chosen').map(found => [found.code, factsOf(found)]),
      ).toEqual([]);
    },
  );

  test('the examples are those of the vocabulary, no more and no fewer', () => {
    expect(examples().map(([name]) => name)).toEqual([...ourAttributes, 'metadata']);
  });

  // An attribute that the reader passed over would read the same without it.
  test.each(examples().filter(([name]) => !['paperhinge', 'metadata', 'derived', 'on'].includes(name)))(
    '%s says something: without it the pattern is another, or none',
    (name, drawing) => {
      const without = drawing.replaceAll(new RegExp(` data-${name}="[^"]*"`, 'g'), '');
      const read = (source: string): unknown => {
        try {
          return readPattern(source).pattern;
        } catch (error) {
          return (error as { code: string }).code;
        }
      };
      expect(read(without)).not.toEqual(read(drawing));
    },
  );
});

test('the block of metadata shows every key', () => {
  for (const key of [...metadataKeys, ...seamKeys, ...fabricKeys, ...fasteningKeys])
    expect(metadataExample.metadata).toContain(`"${key}":`);
});
