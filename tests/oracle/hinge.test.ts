import { measurePattern, readPattern } from '@paperhinge/geometry';
import { readSheet, runSheet } from '@paperhinge/sheet';
import { describe, expect, test } from 'vitest';

// Patterns and sheets as a maker writes them, against figures worked out by hand: design §3 and §5.

const drawing = (...elements: string[]): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="900mm" height="900mm" viewBox="0 0 900 900" data-pattern="Panel">
  <g data-piece="panel" data-cut="1" data-allowance="10">${elements.join('')}</g></svg>`;

function altered(svg: string, ...steps: readonly object[]) {
  const { pattern, findings } = readPattern(svg, { file: 'panel.svg' });
  const sheet = readSheet(JSON.stringify({ pattern: 'panel.svg', steps }), { file: 'sheet.json' });
  const run = runSheet(sheet, pattern, { readFindings: findings });
  const measured = run.record.after.pieces.panel!;
  // What is written reads back to the same figures.
  const again = measurePattern(readPattern(run.svg, { file: 'altered.svg' }).pattern);
  expect(again.pieces.panel!.areaMm2).toBeCloseTo(measured.areaMm2, 6);
  return { ...measured, run };
}

/** A skirt panel 400 × 600, its fold to the right; a dart 30 wide and 100 deep in the very middle of its waist. */
const skirt = drawing(
  '<path data-edge="waist" d="M0 0H185M215 0H400"/>',
  '<path data-dart="waist dart" d="M185 0L200 100L215 0"/>',
  '<path data-edge="side" d="M0 0V180M0 220V600"/>',
  '<path data-dart="side dart" d="M0 180L100 200L0 220"/>',
  '<path data-edge="hem" data-kind="hem" d="M0 600H400"/>',
  '<path data-edge="centre" data-kind="fold" d="M400 0V600"/>',
);

describe('a place in the very middle of an edge that a dart interrupts there', () => {
  test('is the first mouth end, from which the slash opens by what was asked', () => {
    const { edges, areaMm2 } = altered(skirt, {
      spread: {
        piece: 'panel',
        from: { edge: 'waist' },
        to: { edge: 'hem', at: '200 mm from side' },
        by: 40,
      },
    });
    expect(edges.waist!.lengthMm).toBeCloseTo(370 + 40, 7);
    // Wedge ½ R² sin θ with R the way from (185, 0) to (200, 600), 2 R sin(θ/2) = 40.
    const r = Math.hypot(15, 600);
    const wedge = (r * r * Math.sin(2 * Math.asin(20 / r))) / 2;
    expect(areaMm2).toBeCloseTo(400 * 600 - (30 * 100) / 2 - (40 * 100) / 2 + wedge, 4);
  });
  test('takes a second dart beside the first', () => {
    const { edges, darts } = altered(skirt, {
      'move dart': { piece: 'panel', dart: 'side dart', to: { edge: 'waist', at: '1/2' } },
    });
    // The mouth at (185, 0) opens about (100, 200) by the side dart's angle.
    const angle = 2 * Math.atan2(20, 100);
    expect(darts['side dart']!.angleDeg).toBeCloseTo((angle * 180) / Math.PI, 7);
    expect(darts['side dart']!.legMm[0]).toBeCloseTo(Math.hypot(85, 200), 7);
    expect(darts['waist dart']!.legMm[0]).toBeCloseTo(Math.hypot(15, 100), 7);
    expect(edges.waist!.lengthMm).toBeCloseTo(370, 7);
    expect(edges.side!.lengthMm).toBeCloseTo(560, 7);
  });
});

describe('what only moved', () => {
  test('is as long in the altered file as before, to 1e-9 mm', () => {
    const svg = drawing(
      '<path data-edge="top" d="M0 0L317.3 -21.7"/>',
      '<path data-edge="side" d="M317.3 -21.7C300 150 340 420 351.1 611.9"/>',
      '<path data-edge="hem" d="M351.1 611.9C240 620 110 600 0 600"/>',
      '<path data-edge="centre" data-kind="fold" d="M0 600V0"/>',
    );
    const { run } = altered(svg, {
      spread: { piece: 'panel', from: { edge: 'hem' }, to: { edge: 'top' }, by: 37, slashes: 3 },
    });
    const was = run.record.before.pieces.panel!.edges,
      now = run.record.after.pieces.panel!.edges;
    for (const edge of ['top', 'side', 'centre'])
      expect(Math.abs(now[edge]!.lengthMm - was[edge]!.lengthMm)).toBeLessThan(1e-9);
  });
});

/** 300 × 600 on the fold, nothing else on it. */
const plain = drawing(
  '<path data-edge="top" d="M300 0H0"/>',
  '<line data-edge="side" x1="300" y1="600" x2="300" y2="0"/>',
  '<polyline data-edge="hem" data-kind="hem" points="0,600 300,600"/>',
  '<path data-edge="centre" data-kind="fold" d="M0 0v600"/>',
);

describe('a rectangle slashed from hem to top', () => {
  const spread = (more: object) =>
    altered(plain, { spread: { piece: 'panel', from: { edge: 'hem' }, to: { edge: 'top' }, ...more } });
  const wedge = (by: number) => (600 * 600 * Math.sin(2 * Math.asin(by / 1200))) / 2;

  test.each([1, 2, 5])('in %i strips opens by the whole amount at the hem', slashes => {
    const { edges, areaMm2 } = spread({ by: 30, slashes });
    expect(edges.hem!.lengthMm).toBeCloseTo(330, 7);
    expect(edges.top!.lengthMm).toBeCloseTo(300, 7);
    expect(areaMm2).toBeCloseTo(300 * 600 + slashes * wedge(30 / slashes), 4);
  });
  test('overlapped loses the kite between its crossing sides', () => {
    const { edges, areaMm2 } = spread({ by: -30 });
    const half = Math.tan(Math.asin(30 / 1200));
    expect(edges.hem!.lengthMm).toBeCloseTo(300 - 2 * 600 * half, 7);
    expect(areaMm2).toBeCloseTo(300 * 600 - 600 * 600 * half, 4);
  });
  test('by an angle opens 2 R sin of half of each share', () => {
    const { edges } = spread({ angle: 6, slashes: 2 });
    expect(edges.hem!.lengthMm).toBeCloseTo(300 + 2 * 2 * 600 * Math.sin(Math.PI / 120), 7);
  });
  test('unhinged gains or loses a strip of the whole height', () => {
    expect(spread({ by: 30, hinge: 'none', slashes: 3 }).areaMm2).toBeCloseTo(330 * 600, 4);
    expect(spread({ by: -30, hinge: 'none', slashes: 2 }).areaMm2).toBeCloseTo(270 * 600, 4);
  });
  test('in inches takes bare numbers as inches', () => {
    const { pattern } = readPattern(plain, { file: 'panel.svg' });
    const steps = [{ spread: { piece: 'panel', from: { edge: 'hem' }, to: { edge: 'top' }, by: '1 3/8' } }];
    const sheet = readSheet(JSON.stringify({ pattern: 'panel.svg', unit: 'in', steps }), { file: 'a.json' });
    const { after } = runSheet(sheet, pattern).record;
    expect(after.pieces.panel!.edges.hem!.lengthMm).toBeCloseTo(300 + 1.375 * 25.4, 7);
  });
});

/** A bodice block on the fold; the dart's point 120 mm in, its mouth 30 wide. */
const bodice = drawing(
  '<path data-edge="top" d="M0 0H250"/>',
  '<path data-edge="side-upper" d="M250 0V200"/>',
  '<path data-dart="bust" d="M250 230L130 215L250 200"/>',
  '<path data-edge="side-lower" d="M250 630V230"/>',
  '<path data-edge="hem" data-kind="hem" d="M0 630H250"/>',
  '<path data-edge="centre" data-kind="fold" d="M0 0V630"/>',
  '<path data-line="grain" d="M40 600V200"/>',
  '<circle data-mark="point" data-name="bust point" cx="110" cy="215" r="3"/>',
);
const angle = 2 * Math.atan2(15, 120);
const open = 250 * 630 - (30 * 120) / 2;

describe('a dart closed into the hem', () => {
  test.each([
    ['by default straight along the grain', {}, 120],
    ['from a corner', { at: '60 mm from side-lower' }, 60],
    ['from the other corner', { at: '1/5 from centre' }, 200],
    ['at a share of the hem', { at: '40 %' }, 100],
    ['at the very corner', { at: '0 %' }, 0],
    ['at a place in inches', { at: '2 3/8 in from side-lower' }, 60.325],
  ])('%s opens it by 2 R sin(θ/2)', (_, where, along) => {
    const { edges, areaMm2, darts } = altered(bodice, {
      'close dart': { piece: 'panel', dart: 'bust', into: 'hem', ...where },
    });
    const r = Math.hypot(120 - along, 415);
    expect(edges.hem!.lengthMm).toBeCloseTo(250 + 2 * r * Math.sin(angle / 2), 7);
    expect(areaMm2).toBeCloseTo(open + (r * r * Math.sin(angle)) / 2, 4);
    expect(edges['side-upper']!.lengthMm).toBeCloseTo(200, 7);
    expect(edges['side-lower']!.lengthMm).toBeCloseTo(400, 7);
    expect(darts).toEqual({});
  });
  test('by a share leaves the rest of its angle', () => {
    const { edges, darts } = altered(bodice, {
      'close dart': { piece: 'panel', dart: 'bust', into: 'hem', share: '37.5%' },
    });
    expect(edges.hem!.lengthMm).toBeCloseTo(250 + 2 * 415 * Math.sin((0.375 * angle) / 2), 7);
    expect(darts.bust!.angleDeg).toBeCloseTo((0.625 * angle * 180) / Math.PI, 7);
  });
  test('that is moved keeps its angle at the bust point, its own point set back', () => {
    const { darts, edges } = altered(bodice, {
      'move dart': {
        piece: 'panel',
        dart: 'bust',
        to: { edge: 'hem', at: '3/5 from centre' },
        pivot: 'bust point',
        'point back': '2 cm',
      },
    });
    const r = Math.hypot(150 - 110, 630 - 215);
    const atPivot = Math.atan2(15, 140);
    const half = r * Math.sin(atPivot),
      deep = r * Math.cos(atPivot) - 20;
    expect(darts.bust!.angleDeg).toBeCloseTo((2 * Math.atan2(half, deep) * 180) / Math.PI, 7);
    expect(darts.bust!.legMm[0]).toBeCloseTo(Math.hypot(half, deep), 7);
    expect(edges.hem!.lengthMm).toBeCloseTo(250, 7);
  });
});
