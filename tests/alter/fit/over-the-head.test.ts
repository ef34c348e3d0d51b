import { existsSync, readFileSync } from 'node:fs';
import { type Derived, overTheHead } from '@paperhinge/alter';
import { neckOpening } from '@paperhinge/alter/fit';
import type { Edge, Fabric, Pattern } from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';
import { patternOf, pieceOf, rectangle, seam, side } from '../../support/polygon-piece.js';
import { shiftPattern } from '../../support/shift.js';
import { toldFinding } from '../../support/told.js';

interface Neck {
  readonly stretch?: number;
  readonly opening?: number;
  readonly centreOpening?: number;
}
/** A body on a fold whose neck measures `neck` mm all round. */
function body(neck: number, { stretch = 0, opening, centreOpening }: Neck = {}): Pattern {
  const piece = pieceOf('body', [
    side(
      'neck',
      [
        [0, 0],
        [neck / 2, 0],
      ],
      opening === undefined ? {} : { opening },
    ),
    side('side', [
      [neck / 2, 0],
      [neck / 2, 300],
    ]),
    side(
      'hem',
      [
        [neck / 2, 300],
        [0, 300],
      ],
      { kind: 'hem' },
    ),
    side(
      'centre-back',
      [
        [0, 300],
        [0, 0],
      ],
      {
        kind: 'fold',
        ...(centreOpening === undefined ? {} : { opening: centreOpening }),
      },
    ),
  ]);
  const fabrics: Fabric[] = [
    { name: 'main', role: 'main', stretch: { across: stretch } },
    { name: 'contrast', role: 'contrast', stretch: { across: 45 } },
  ];
  return patternOf([piece], [], { fabrics });
}
const band = (lengthMm: number, figures: Record<string, number> = {}): Derived => ({
  name: 'neckband',
  kind: 'band',
  lengthMm,
  widthMm: 56,
  fabric: 'contrast',
  along: [{ piece: 'body', edge: 'neck' }],
  edgeMm: 0,
  figures: { joinMm: 7, ...figures },
});
const head = (pattern: Pattern, girth?: number, derived: Derived[] = []) =>
  overTheHead({ pattern, wearer: girth === undefined ? {} : { 'head girth': girth }, derived })[0]!;

// check-values.md §2 [derived]: 22¾ in = 577.85 mm head, neckline 420 mm, 40 % knit -> 588 mm, passes; 30 % -> 546,
// fails; no stretch -> fails.
test.each([
  [40, 588, true],
  [30, 546, false],
  [0, 420, false],
])('a neck of 420 mm in cloth of %d %% opens to %d mm for a head of 577.85', (stretch, opens, passes) => {
  const finding = head(body(420, { stretch }), 577.85);
  expect(finding.figures!.openingMm).toBeCloseTo(opens, 9);
  expect(finding).toMatchObject(
    passes ? { code: 'head-passes', severity: 'note' } : { code: 'head-does-not-pass', severity: 'fault' },
  );
  if (!passes) expect(finding.figures!.missingMm).toBeCloseTo(577.85 - opens, 9);
});

test('the tighter of neck and band decides', () => {
  // Neck 600 × 1.4 = 840; band (414 − 14) × 1.45 = 580.
  const finding = head(body(600, { stretch: 40 }), 572, [band(414)]);
  expect(finding).toMatchObject({ code: 'head-passes' });
  expect(finding.figures!.openingMm).toBeCloseTo(580, 9);
  expect(toldFinding(finding).message).toContain('the neckband opens to 580 mm');
});

test('a gap that the band bridges belongs to the neck', () => {
  const opening = neckOpening(body(400, { stretch: 10 }), [band(614, { gapMm: 90 })])!;
  expect(opening.neckMm).toBeCloseTo((400 + 90) * 1.1, 9);
});

test('an inset that no band bridges opens with the neck, one that a band bridges does not', () => {
  // A half front: 150 of neck beside an inset from (0, 120) to (50, 0), 130 long.
  const part = (name: string, a: [number, number], b: [number, number], kind?: 'fold' | 'hem') =>
    side(name, [a, b], kind ? { kind } : {});
  const front = pieceOf('front', [
    part('inset', [0, 120], [50, 0]),
    part('neck', [50, 0], [200, 0]),
    part('side', [200, 0], [200, 300]),
    part('hem', [200, 300], [0, 300], 'hem'),
    part('centre-front', [0, 300], [0, 120], 'fold'),
  ]);
  const pattern = patternOf([front]);
  expect(neckOpening(pattern, [])!.widestMm).toBeCloseTo(2 * (150 + 130), 9);
  const bridging = { ...band(2000, { gapMm: 100 }), along: [{ piece: 'front', edge: 'neck' }] };
  expect(neckOpening(pattern, [bridging])!.neckMm).toBeCloseTo(2 * 150 + 100, 9);
});

test('necks and their bands go by several names', () => {
  const renamed = (name: string, more: Partial<Edge> = {}): Pattern => {
    const pattern = body(420);
    const parts = pattern.pieces[0]!.outline.parts.map(p =>
      p.type === 'edge' && p.name === 'neck' ? { ...p, name, ...more } : p,
    );
    return { ...pattern, pieces: [{ ...pattern.pieces[0]!, outline: { parts } }] };
  };
  for (const name of ['neckline', 'front-neck', 'Halsausschnitt', 'encolure'])
    expect(neckOpening(renamed(name), [])!.neckMm).toBeCloseTo(420, 9);
  const collar = { ...band(314), name: 'collar', along: [{ piece: 'body', edge: 'throat' }] };
  expect(neckOpening(renamed('throat', { role: 'neck' }), [collar])!.bands[0]!.reachMm).toBeCloseTo(
    300 * 1.45,
    9,
  );
});

test('an opening in the neck, or one that ends at it, counts twice', () => {
  expect(head(body(420, { opening: 80 }), 577.85).figures!.openingMm).toBeCloseTo(580, 9);
  expect(head(body(420, { centreOpening: 80 }), 577.85).figures!.openingMm).toBeCloseTo(580, 9);
});

test('both sides of a shoulder speak of the same placket', () => {
  const half = (name: string) =>
    pieceOf(name, [
      side('neck', [
        [0, 0],
        [100, 0],
      ]),
      side(
        'shoulder',
        [
          [100, 0],
          [200, 40],
        ],
        { opening: 60 },
      ),
      side('rest', [
        [200, 40],
        [200, 300],
        [0, 300],
        [0, 0],
      ]),
    ]);
  const pattern = patternOf(
    [half('front'), half('back')],
    [seam('shoulder', ['front.shoulder'], ['back.shoulder'])],
  );
  expect(neckOpening(pattern, [])).toMatchObject({ neckMm: 200, openingMm: 60, widestMm: 320 });
});

// check-values.md §2 [derived, ANSUR II]: P99 611 mm women, 614 men; the larger serves both.
test('an unknown head is the adult 99th percentile, and what is missing is a warning', () => {
  expect(head(body(600))).toMatchObject({
    severity: 'warning',
    code: 'head-does-not-pass',
    figures: { headGirthMm: 614, missingMm: 14 },
  });
  expect(head(body(620)).severity).toBe('note');
});

test('the remedy says how long a placket would have to be', () => {
  expect(toldFinding(head(body(500), 572)).remedy).toContain('a slit of at least 36 mm');
});

test('the neckband that the pattern came with holds the neck in', () => {
  const shift = shiftPattern({});
  const opening = neckOpening(shift, [])!;
  expect(opening.edges.map(e => e.piece)).toEqual(['front', 'back']);
  expect(opening.bands.map(b => b.name)).toEqual(['neckband']);
  expect(opening.bands[0]!.reachMm).toBeCloseTo(opening.neckMm, 6);
});

test('a garment without a neck is not checked', () => {
  expect(
    overTheHead({ pattern: patternOf([rectangle('skirt', 500, 600)]), wearer: {}, derived: [] }),
  ).toEqual([]);
});

const file = new URL('../../../../shared/data/ansur2-female.csv', import.meta.url);
describe.skipIf(!existsSync(file))('with the ANSUR II rows beside the project', () => {
  // check-values.md §2: a woman's base-of-neck opening never passes her head in woven cloth, in any of 1,986 rows.
  test('every woman needs a placket in woven cloth, and passes with the one asked for', () => {
    const [names, ...rows] = readFileSync(file, 'utf8')
      .trim()
      .split(/\r?\n/)
      .map(l => l.split(','));
    const column = (name: string) => names!.findIndex(n => n.replace(/"/g, '').toLowerCase() === name);
    const neck = column('neckcircumferencebase'),
      girth = column('headcircumference');
    expect(rows).toHaveLength(1986);
    for (const row of rows) {
      const base = Number(row[neck]),
        around = Number(row[girth]);
      const finding = head(body(base), around);
      expect(finding.code).toBe('head-does-not-pass');
      expect(head(body(base, { opening: finding.figures!.missingMm! / 2 }), around).code).toBe('head-passes');
    }
  });
});
