import { readSheet, runSheet } from '@paperhinge/alter';
import { measurePattern, readPattern } from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';

// Patterns and sheets as a maker writes them, against figures worked out by hand: design §3 and §5.

const drawing = (...elements: string[]): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="900mm" height="900mm" viewBox="0 0 900 900" data-pattern="Panel">
  <g data-piece="panel" data-cut="1" data-allowance="10">${elements.join('')}</g></svg>`;

function altered(svg: string, ...steps: readonly object[]) {
  const { pattern, findings } = readPattern(svg, { file: 'panel.svg' });
  const sheet = readSheet(JSON.stringify({ pattern: 'panel.svg', steps }), { file: 'sheet.json' });
  const run = runSheet(sheet, pattern, findings);
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
