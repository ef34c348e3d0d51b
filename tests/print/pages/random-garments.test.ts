import { type PrintOptions, papers, printPattern } from '@paperhinge/print';
import { describe, expect, test } from 'vitest';
import { grainsOnJoins } from './grains-on-joins.js';
import { randomGarment } from './random-garments.js';

// A thousand: PAPERHINGE_GARMENTS=1000 npx vitest run tests/print/pages/random-garments.test.ts
// The same from another seed on: PAPERHINGE_FIRST=1000.
const garments = Number(process.env.PAPERHINGE_GARMENTS ?? 5);
const first = Number(process.env.PAPERHINGE_FIRST ?? 0);
const names = Object.keys(papers);
/** A strap of it, 19 mm wide, once lay where two pages are glued: no room to move its grain line. */
const found = process.env.PAPERHINGE_GARMENTS ? [] : [651];
/** mm on either side of a strip that takes glue in which no grain line runs along it. */
const grainOff = 3;

const laid = (seed: number): Partial<PrintOptions> => {
  const turning = (['quarter', 'quarter', 'half', 'any'] as const)[seed % 4]!;
  return { turning, overlap: seed % 5 === 0 ? 0 : 10 };
};

describe('garments of 1 to 40 random pieces, equal and unequal', () => {
  const seeds = [...Array.from({ length: garments }, (_, i) => first + i), ...found];
  test.each(seeds)(
    'garment %i has its pages, every piece once, no grain line along a join',
    async seed => {
      const pattern = randomGarment(seed);
      const printed = await printPattern(pattern, { paper: names[seed % names.length]!, ...laid(seed) });
      expect(printed.pages.pieces.map(p => p.piece)).toEqual(pattern.pieces.map(p => p.name));
      for (const { windowMm } of printed.pages.pages)
        for (const side of windowMm) expect(side).toBeGreaterThanOrEqual(0);
      expect(grainsOnJoins(printed, grainOff)).toBe(0);
    },
    120_000,
  );
});
