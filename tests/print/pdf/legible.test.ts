import { readFileSync } from 'node:fs';
import { type Pattern, readPattern } from '@paperhinge/geometry';
import { type PrintOptions, printPattern } from '@paperhinge/print';
import { decodePDFRawStream, PDFDocument, PDFRawStream } from 'pdf-lib';
import { expect, test } from 'vitest';
import { randomGarment } from '../pages/random-garments.js';

/** Points of an em that is 7 pt, and mm of a line that a photocopy keeps. */
const leastText = 7;
const leastLine = 0.25;
const pointsPerMm = 72 / 25.4;

interface Legibility {
  /** Points. */
  readonly texts: readonly number[];
  /** mm. */
  readonly lines: readonly number[];
}

/** The em of every text and the width of every line, from the operators alone; their unit is a hundredth of a mm. */
async function legibilityOf(pdf: Uint8Array): Promise<Legibility> {
  const doc = await PDFDocument.load(pdf, { updateMetadata: false });
  const contents = doc.context
    .enumerateIndirectObjects()
    .flatMap(([, object]) => (object instanceof PDFRawStream ? [object] : []))
    .map(stream => Buffer.from(decodePDFRawStream(stream).decode()).toString('latin1'))
    .filter(text => /\b(Tm|S|cm)\n/.test(text));
  const texts: number[] = [],
    lines: number[] = [];
  for (const content of contents) {
    for (const [, em, a, b] of content.matchAll(/\/\S+ (\S+) Tf (\S+) (\S+) \S+ \S+ \S+ \S+ Tm/g))
      texts.push((Number(em) / 100) * Math.hypot(Number(a), Number(b)) * pointsPerMm);
    for (const [, width] of content.matchAll(/(\S+) w \[/g)) lines.push(Number(width) / 100);
  }
  return { texts, lines };
}

const demo = (file: string) =>
  readPattern(readFileSync(new URL(`../../../demos/patterns/${file}`, import.meta.url), 'utf8')).pattern;
const german = { paper: 'letter', overlap: 0, printed: { across: 49.5, down: 50 }, language: 'de' } as const;

test.each<readonly [string, () => Pattern, PrintOptions]>([
  ['the shirt', () => demo('shirt.svg'), german],
  ['the smock', () => demo('smock.svg'), { paper: 'a4' }],
  ['the waistcoat', () => demo('waistcoat.svg'), { paper: 'roll-36', showBefore: true }],
  ['31 small and large pieces', () => randomGarment(4), { paper: 'a0' }],
  ['a random garment', () => randomGarment(17), { paper: 'a4' }],
])('no text under 7 pt and no line under 0.25 mm: %s', async (_, pattern, way) => {
  const { texts, lines } = await legibilityOf((await printPattern(pattern(), way)).pdf);
  expect(texts.length).toBeGreaterThan(20);
  expect(lines.length).toBeGreaterThan(4);
  expect(Math.min(...texts)).toBeGreaterThanOrEqual(leastText);
  expect(Math.min(...lines)).toBeGreaterThanOrEqual(leastLine);
});
