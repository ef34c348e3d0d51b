import { bandStretch } from '@paperhinge/alter';
import { bandStretchFindings, stretchOfBand } from '@paperhinge/alter/fit';
import { catalogueOf, wordsOf } from '@paperhinge/sheet/words';
import { expect, test } from 'vitest';
import { patternOf, rectangle } from '../../support/polygon-piece.js';
import { toldFinding } from '../../support/told.js';

const band = (ratio: number, edgeMm = 600, gapMm = 0) => ({
  name: 'neckband',
  edgeMm,
  lengthMm: ratio * edgeMm + gapMm + 14,
  joinMm: 7,
  gapMm,
});

// check-values.md §5 [derived]: a band at 75 % must stretch 33.3 %, at 66.7 % 50 %, at 80 % 25 %, at 90 % 11.1 %.
test.each([
  [0.75, 100 / 3],
  [2 / 3, 50],
  [0.8, 25],
  [0.9, 100 / 9],
])('a band of %d of its edge stretches by %d %%', (ratio, percent) => {
  expect(stretchOfBand(band(ratio))).toBeCloseTo(percent, 9);
  expect(stretchOfBand(band(ratio, 600, 90))).toBeCloseTo(percent, 9);
});

// check-values.md §5 [derived]: a 75 % band on 25 % cloth is an error, on 40 % cloth is sound; 33.3 is above 0.8 × 40.
test('a band is a fault above the stretch of its cloth and a warning above four fifths of it', () => {
  expect(bandStretchFindings(band(0.75), 25)[0]).toMatchObject({
    severity: 'fault',
    code: 'band-beyond-stretch',
  });
  expect(bandStretchFindings(band(0.75), 40)[0]).toMatchObject({
    severity: 'warning',
    code: 'band-near-stretch',
  });
  expect(bandStretchFindings(band(0.75), 42)).toEqual([]);
});

test('a band at the very limit passes it', () => {
  expect(bandStretchFindings(band(0.8), 25)[0]!.severity).toBe('warning');
  expect(bandStretchFindings(band(0.8), 25 / 0.8)).toEqual([]);
});

test('a band longer than its edge needs no stretch', () => {
  expect(bandStretchFindings(band(1.02), 0)).toEqual([]);
});

test('the remedy is the shortest band that wears', () => {
  // 600 / 1.2 + 14 in cloth of 25 %, of which 80 % are 20 %.
  expect(toldFinding(bandStretchFindings(band(0.7), 25)[0]!).remedy).toContain('at least 514 mm long');
});

test('a drafted band is held against its edge as it is now', () => {
  const pattern = patternOf([rectangle('front', 600, 300)], [], {
    fabrics: [{ name: 'contrast', role: 'contrast', stretch: { across: 30 } }],
  });
  const derived = {
    name: 'neckband',
    kind: 'band' as const,
    lengthMm: 494,
    widthMm: 56,
    fabric: 'contrast',
    along: [{ piece: 'front', edge: 'top' }],
    edgeMm: 500,
    figures: { joinMm: 7, gapMm: 0 },
  };
  // 600 / 480 − 1 = 25 %, above 24.
  const [finding] = bandStretch(pattern, [derived]);
  expect(finding).toMatchObject({ severity: 'warning', where: { piece: 'neckband' } });
  expect(finding!.figures!.neededPercent).toBeCloseTo(25, 9);
});

// Common practice, no source: a knit that springs back by less than 90 % lets a band go slack.
test('a band of a knit that springs back little is warned of, and better cloth mends it', async () => {
  const bandOf = (stretch: number, recovery?: number) =>
    patternOf(
      [
        {
          ...rectangle('neckband', 480, 56),
          role: 'band',
          cutting: { count: 1, mirrored: false, fabric: 'rib' },
        },
      ],
      [],
      {
        fabrics: [
          {
            name: 'rib',
            role: 'contrast',
            stretch: { across: stretch },
            ...(recovery === undefined ? {} : { recovery }),
          },
        ],
      },
    );
  const [finding, ...more] = bandStretch(bandOf(60, 80), []);
  expect(more).toEqual([]);
  expect(finding).toMatchObject({
    severity: 'warning',
    code: 'band-recovers-little',
    where: { piece: 'neckband' },
  });
  expect(toldFinding(finding!)).toMatchObject({
    message: 'The neckband is cut from cloth that springs back by 80 % only: it grows slack in wear.',
    remedy: 'Cut it from cloth that springs back by 90 % or more.',
  });
  expect(wordsOf(await catalogueOf('de'), 'mm').finding(finding!)).toMatchObject({
    message: expect.stringContaining('nur zu 80 % zurückspringt'),
    remedy: expect.stringContaining('zu mindestens 90 %'),
  });
  expect(bandStretch(bandOf(60, 90), [])).toEqual([]);
  // Nothing is said of what is not known, nor of woven cloth, of which no band is stretched.
  expect(bandStretch(bandOf(60), [])).toEqual([]);
  expect(bandStretch(bandOf(0, 80), [])).toEqual([]);
});
