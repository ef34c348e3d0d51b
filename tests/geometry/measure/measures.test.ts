import { at, type Dart, measurePattern, type Point, pathOf, polyline } from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { expect, test } from 'vitest';
import { dart, patternOf, pieceOf, rectangle, run, seam, side } from '../../support/polygon-piece.js';

// A 200 × 300 rectangle with a dart 40 wide and 100 deep from the middle of its right side; by hand.
const darted = pieceOf('front', [
  side('top', [
    [0, 0],
    [200, 0],
  ]),
  side('side', [
    [200, 0],
    [200, 130],
  ]),
  dart('bust', [200, 130], [100, 150], [200, 170]),
  side('side', [
    [200, 170],
    [200, 300],
  ]),
  side(
    'hem',
    [
      [200, 300],
      [0, 300],
    ],
    { kind: 'hem', allowance: 25.4 },
  ),
  side(
    'centre-front',
    [
      [0, 300],
      [0, 0],
    ],
    { kind: 'fold' },
  ),
]);

test('the area of a piece leaves the intake of its open darts outside', () => {
  const { front } = measurePattern(patternOf([darted])).pieces;
  expect(front!.areaMm2).toBeCloseTo(200 * 300 - (40 * 100) / 2, 6);
});

test('an edge that a dart interrupts is measured once, as the sum of its parts', () => {
  const { front } = measurePattern(patternOf([darted])).pieces;
  expect(front!.edges).toEqual({
    top: { lengthMm: 200, allowanceMm: 10 },
    side: { lengthMm: 260, allowanceMm: 10 },
    hem: { lengthMm: 200, allowanceMm: 25.4 },
    'centre-front': { lengthMm: 300, allowanceMm: 0 },
  });
});

const legsTo = ({ legs: [first, second] }: Dart, apex: Point): Dart['legs'] => [
  pathOf([pathStart(first), apex]),
  pathOf([apex, pathEnd(second)]),
];

test('a dart is measured by the angle between its chords and its two legs', () => {
  const { bust } = measurePattern(patternOf([darted])).pieces.front!.darts;
  expect(bust!.angleDeg).toBeCloseTo((2 * Math.atan(0.2) * 180) / Math.PI, 9);
  expect(bust!.legMm[0]).toBeCloseTo(Math.hypot(100, 20), 9);
  expect(bust!.legMm[1]).toBeCloseTo(Math.hypot(100, 20), 9);
  // Legs that differ are given clockwise, that which is met first before the other.
  const uneven = {
    ...darted,
    outline: {
      parts: darted.outline.parts.map(part =>
        part.type === 'dart' ? { ...part, apex: at(120, 90), legs: legsTo(part, at(120, 90)) } : part,
      ),
    },
  };
  const [first, second] = darted.outline.parts.flatMap(part =>
    part.type === 'dart' ? [part.legs[0].segments[0]![0], part.legs[1].segments[0]![1]!] : [],
  );
  const { legMm } = measurePattern(patternOf([uneven])).pieces.front!.darts.bust!;
  expect(legMm).toEqual([
    expect.closeTo(Math.hypot(first!.x - 120, first!.y - 90), 9),
    expect.closeTo(Math.hypot(second!.x - 120, second!.y - 90), 9),
  ]);
  expect(Math.abs(legMm[0] - legMm[1])).toBeGreaterThan(1);
});

// Closed form: a convex polygon mitred, check-values.md §10 [derived]: 100 × 60 by 10 is 120 × 80.
test('the cutting line of a rectangle is the rectangle with its allowances', () => {
  const { box } = measurePattern(patternOf([rectangle('box', 100, 60)])).pieces;
  expect(box!.cuttingLine.lengthMm).toBeCloseTo(2 * (120 + 80), 6);
  expect(box!.cuttingLine.areaMm2).toBeCloseTo(120 * 80, 4);
});

test('the JSON has exactly the fields of the contract, in pattern order', () => {
  const pattern = patternOf(
    [rectangle('zebra', 100, 60), rectangle('ant', 100, 59)],
    [seam('join', ['zebra.right'], ['-ant.left'], { percent: 2 })],
  );
  const json = JSON.parse(JSON.stringify(measurePattern(pattern)));
  expect(Object.keys(json)).toEqual(['pattern', 'pieces', 'seams']);
  expect(Object.keys(json.pieces)).toEqual(['zebra', 'ant']);
  expect(Object.keys(json.pieces.zebra)).toEqual(['areaMm2', 'edges', 'darts', 'cuttingLine']);
  // An ease in per cent is one of b: 2 % of 59.
  expect(json.seams).toEqual({
    join: { aMm: 60, bMm: 59, differenceMm: 1, easeWantedMm: 1.18, matches: true },
  });
});

test('names that objects already have are keys like any other', () => {
  const hostile = pieceOf('__proto__', [
    side('constructor', [
      [0, 0],
      [100, 0],
    ]),
    side('__proto__', [
      [100, 0],
      [50, 80],
    ]),
    side('toString', [
      [50, 80],
      [0, 0],
    ]),
  ]);
  const text = JSON.stringify(
    measurePattern(
      patternOf([hostile], [seam('__proto__', ['__proto__.toString'], ['__proto__.__proto__'])]),
    ),
  );
  expect(text).toContain('"pieces":{"__proto__":{');
  expect(text).toContain('"edges":{"constructor":{');
  expect(text).toContain('"seams":{"__proto__":{"aMm"');
});

test('what is said of a seam, of pleats and of fastenings stands beside the figures, and nowhere where it is not said', () => {
  const pleated = pieceOf('skirt', [
    side('waist', [
      [0, 0],
      [100, 0],
    ]),
    {
      type: 'pleat',
      name: 'front',
      kind: 'knife',
      mouth: polyline(at(100, 0), at(140, 0)),
      towards: 'end',
      stitched: 55,
    },
    side('waist', [
      [140, 0],
      [240, 0],
    ]),
    side('rest', [
      [240, 0],
      [240, 500],
      [0, 500],
      [0, 0],
    ]),
  ]);
  const plain = patternOf(
    [pleated, rectangle('band', 150, 40)],
    [seam('waist', ['skirt.waist'], ['band.top'])],
  );
  const said = measurePattern({
    ...plain,
    tolerance: 2,
    seams: [{ ...plain.seams[0]!, ease: { mm: 50 }, takenUp: 'gathered', tolerance: 3 }],
    fastenings: [
      { name: 'zip', kind: 'zip', along: run('skirt.waist'), length: 180 },
      { name: 'elastic', kind: 'elastic', along: run('band.top'), relaxed: 120 },
    ],
  });
  expect(said.pieces.skirt!.pleats).toEqual({ front: { takenUpMm: 40, stitchedMm: 55 } });
  expect(said.pieces.skirt!.edges.waist!.lengthMm).toBe(200);
  expect(said.pieces.band).not.toHaveProperty('pleats');
  expect(said.seams.waist).toEqual({
    aMm: 200,
    bMm: 150,
    differenceMm: 50,
    easeWantedMm: 50,
    matches: true,
    takenUp: 'gathered',
    toleranceMm: 3,
  });
  expect(said.fastenings).toEqual({
    zip: { kind: 'zip', lengthMm: 180 },
    elastic: { kind: 'elastic', lengthMm: 150, relaxedMm: 120 },
  });
  const unsaid = measurePattern(plain);
  expect(unsaid).not.toHaveProperty('fastenings');
  expect(Object.keys(unsaid.seams.waist!)).toEqual(['aMm', 'bMm', 'differenceMm', 'easeWantedMm', 'matches']);
  expect(measurePattern({ ...plain, tolerance: 2, fastenings: [] })).toMatchObject({
    seams: { waist: { toleranceMm: 2 } },
  });
});
