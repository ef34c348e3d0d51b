import { blendSizes, readPattern, writePattern } from '@paperhinge/geometry';
import { drawPattern } from '@paperhinge/print/drawing';
import { expect, test } from 'vitest';
import { factsOf } from '../../../packages/print/src/report/written.js';
import { patternOf, rectangle } from '../simple-pieces.js';

const measure = { width: (text: string, size: number) => text.length * size * 0.5 };
const sized = (size: string, width: number) => ({ ...patternOf(rectangle('front', width, 400, 10)), size });
const said = (pattern: ReturnType<typeof patternOf>, language: 'en' | 'de') => [
  ...factsOf({ pattern, language }),
  ...drawPattern(pattern, measure, { language })[0]!.drawing.inks.flatMap(i =>
    i.kind === 'text' ? [i.text] : [],
  ),
];

test('the size chosen stands on the report and on each piece', () => {
  expect(said(sized('14', 300), 'en')).toEqual(expect.arrayContaining(['size 14', 'Test · size 14']));
  expect(said(sized('12-14', 300), 'de')).toEqual(
    expect.arrayContaining(['Größe 12-14', 'Test · Größe 12-14']),
  );
});

test('what lies between two sizes says so, also once it was written and read again', () => {
  const blend = blendSizes(sized('12', 300), sized('14', 320), 0.5);
  const again = readPattern(writePattern(blend)).pattern;
  for (const pattern of [blend, again]) {
    expect(said(pattern, 'en')).toEqual(
      expect.arrayContaining(['between sizes 12 and 14', 'Test · between sizes 12 and 14']),
    );
    expect(said(pattern, 'de')).toEqual(
      expect.arrayContaining(['zwischen Größe 12 und 14', 'Test · zwischen Größe 12 und 14']),
    );
  }
});

test('at either end it is that size', () => {
  expect(said(blendSizes(sized('12', 300), sized('14', 320), 1), 'en')).toContain('size 14');
});
