import { readPattern } from '@paperhinge/geometry';
import { readSheet, runSheet } from '@paperhinge/sheet';
import { describe, expect, test } from 'vitest';

// Patterns and sheets as a maker writes them, against figures worked out by hand: design §5, trade-notes §6 and §7.

const cos45 = Math.SQRT1_2;
/** Ways of placing a piece on its page; none changes a figure. */
const placings = [
  'translate(700 90)',
  'rotate(37 400 400)',
  'translate(1200 80) scale(-1 1)',
  `matrix(${cos45} ${cos45} ${-cos45} ${cos45} 900 60)`,
];

/**
 * Half a yoke: square neck 100 out and 40 deep, shoulder falling 40 over 120, side straight to (240, 400), centre on a
 * fold or of a mirrored pair.
 */
const yoke = (name: string, placing: string, fold = true): string =>
  `<g data-piece="${name}" data-cut="${fold ? 1 : 2}" data-allowance="10" transform="${placing}">
    <line data-edge="shoulder" x1="220" y1="40" x2="100" y2="0"/>
    <polyline data-edge="neck" points="0,40 100,40 100,0"/>
    <path data-edge="hem" data-kind="hem" d="M0 400h240"/>
    <path data-edge="side" d="M240 400L220 40"/>
    <path data-edge="centre-${name}" ${fold ? 'data-kind="fold"' : ''} d="M0 40V400"/>
    <path data-line="grain" d="M20 350V150"/>
    <path data-line="level" data-name="waist" d="M30 220H150"/>
  </g>`;

const seams = {
  shoulder: { a: 'front.shoulder from neck', b: 'back.shoulder from neck' },
  side: { a: 'front.side from shoulder', b: 'back.side from shoulder' },
};
const garment = (front: string, back: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="2000mm" height="2000mm" viewBox="0 0 2000 2000" data-pattern="Yoke">
  <metadata>${JSON.stringify({ seams, fabrics: { main: { stretch: '40 %' }, rib: { stretch: '45 %' } } })}</metadata>
  ${front}${back}</svg>`;

function run(svg: string, steps: readonly object[], more: object = {}) {
  const { pattern, findings } = readPattern(svg, { file: 'yoke.svg' });
  const sheet = readSheet(JSON.stringify({ pattern: 'yoke.svg', ...more, steps }), { file: 'sheet.json' });
  return runSheet(sheet, pattern, { readFindings: findings }).record;
}
const each = placings.flatMap(placing =>
  [true, false].map(fold => ({
    fold,
    svg: garment(yoke('front', placing, fold), yoke('back', 'translate(20 900)', fold)),
  })),
);
const edgeOf = (record: ReturnType<typeof run>, piece: string, edge: string): number =>
  record.after.pieces[piece]!.edges[edge]!.lengthMm;

describe('edits of straight-sided pieces', () => {
  test('at the hem the side is cut where the hem comes to lie, or runs on to it', () => {
    for (const { svg } of each)
      for (const [verb, by] of [
        ['shorten', 90],
        ['lengthen', -54],
      ] as const) {
        const record = run(svg, [{ [verb]: { pieces: ['front'], at: 'hem', by: Math.abs(by) } }]);
        const share = (360 - by) / 360;
        expect(edgeOf(record, 'front', 'side')).toBeCloseTo(share * Math.hypot(20, 360), 6);
        expect(edgeOf(record, 'front', 'hem')).toBeCloseTo(220 + 20 * share, 6);
      }
  });

  test('at a line a straight side stays straight between its two corners', () => {
    for (const { svg } of each) {
      const record = run(svg, [{ shorten: { pieces: ['front'], at: 'waist', by: 60 } }]);
      expect(edgeOf(record, 'front', 'side')).toBeCloseTo(Math.hypot(20, 300), 6);
      expect(edgeOf(record, 'front', 'hem')).toBeCloseTo(240, 6);
    }
  });

  test('a piece shortened by all of its length is refused as such', () => {
    expect(() => run(each[0]!.svg, [{ shorten: { pieces: ['front'], at: 'hem', by: 360 } }])).toThrow(
      expect.objectContaining({ code: 'shorten-beyond-piece' }),
    );
  });

  test('a side seam taken in gives a quarter on each of its four edges, square to them', () => {
    for (const { svg } of each) {
      const record = run(svg, [{ 'take in': { seam: 'side', by: 40 } }]);
      const out = 10 * Math.hypot(1, 20 / 360);
      for (const piece of ['front', 'back']) expect(edgeOf(record, piece, 'hem')).toBeCloseTo(240 - out, 6);
    }
  });

  test('necklines of each shape have their closed-form length, and cut the shoulder', () => {
    // At a half width of 130 the shoulder lies 10 below its neck end; the centre point 40 + 60 below it.
    const shoulder = Math.hypot(90, 30);
    for (const { svg } of each)
      for (const [shape, neck] of [
        ['V', Math.hypot(130, 90)],
        ['square', 130 + 90],
      ] as const) {
        const record = run(svg, [
          { 'recut neckline': { piece: 'front', shape, depth: 60, 'half width': 130 } },
        ]);
        expect(edgeOf(record, 'front', 'neck')).toBeCloseTo(neck, 6);
        expect(edgeOf(record, 'front', 'shoulder')).toBeCloseTo(shoulder, 6);
      }
  });

  // A circle of radius 130: depth 100 below the neck, whose end lies 40 above it, less the 10 the shoulder falls.
  test('a round neck whose two axes are equal is a quarter circle; one may be widened without deepening it', () => {
    const round = (depth: number) =>
      run(each[0]!.svg, [{ 'recut neckline': { piece: 'front', shape: 'round', depth, 'half width': 130 } }]);
    expect(Math.abs(edgeOf(round(100), 'front', 'neck') - 65 * Math.PI)).toBeLessThan(1e-3);
    expect(edgeOf(round(0), 'front', 'centre-front')).toBeCloseTo(360, 6);
  });

  test('an inset V leaves the rest of the neck', () => {
    for (const { svg } of each) {
      const record = run(svg, [
        { 'recut neckline': { piece: 'front', shape: 'inset V', depth: 80, 'half width': 60 } },
      ]);
      expect(edgeOf(record, 'front', 'inset')).toBeCloseTo(100, 6);
      expect(edgeOf(record, 'front', 'neck')).toBeCloseTo(80, 6);
    }
  });
});

describe('pieces made for an edge', () => {
  const band = {
    name: 'collar',
    along: ['front.neck', 'back.neck'],
    ratio: '80 %',
    width: 56,
    join: 7,
    fabric: 'rib',
  };

  test('a band over a gap takes its ratio of edge and gap, and the head passes the least of neck and band', () => {
    for (const { svg } of each) {
      const steps = [
        { 'recut neckline': { piece: 'front', shape: 'inset V', depth: 80, 'half width': 60 } },
        { 'draft band': { ...band, gap: 'front.inset' } },
      ];
      const record = run(svg, steps, { wearer: { 'head girth': 600 } });
      const edge = 2 * (80 + 140),
        gap = 120;
      const { lengthMm, stretchPercent } = record.derived.collar!;
      expect(lengthMm).toBeCloseTo(0.8 * (edge + gap) + 14, 6);
      expect(stretchPercent).toBeCloseTo(100 * (edge / (0.8 * (edge + gap) - gap) - 1), 6);
      const head = record.findings.find(f => f.code === 'head-passes')!;
      expect(head.figures!.openingMm).toBeCloseTo(Math.min(560 * 1.4, 448 * 1.45), 6);
    }
  });

  test('a band of its sewn part, cut as a rectangle, whose seam walks', () => {
    for (const { svg } of each) {
      const record = run(svg, [{ 'draft band': { ...band, 'stretched part': 'sewn' } }]);
      const length = 0.8 * 560 + 14;
      const { cuttingLine } = record.after.pieces.collar!;
      expect(cuttingLine.areaMm2).toBeCloseTo(length * 56, 4);
      expect(cuttingLine.lengthMm).toBeCloseTo(2 * (length + 56), 6);
      expect(record.after.seams.collar).toMatchObject({ matches: true });
    }
  });

  test('strip and binding are as long as their edge in the garment, and a binding is cut four times its width', () => {
    for (const { svg } of each) {
      const made = { name: 'trim', along: ['front.hem', 'back.hem'], width: 12, join: 5 };
      expect(run(svg, [{ 'draft strip': made }]).derived.trim).toMatchObject({
        lengthMm: expect.closeTo(970, 6),
        widthMm: 12,
      });
      expect(run(svg, [{ 'draft binding': made }]).derived.trim).toMatchObject({
        lengthMm: expect.closeTo(970, 6),
        widthMm: 48,
      });
    }
  });

  // Shoelace over the neck, its parallel 30 below and beside it, and the shoulder's first 30 across.
  const ring = [0, 40, 100, 40, 100, 0, 130, 10, 130, 70, 0, 70];
  const shoelace = (xy: readonly number[]): number =>
    Math.abs(
      xy.reduce((sum, n, i) => {
        const x = i % 2 === 0;
        const next = xy[(i + (x ? 3 : 1)) % xy.length]!;
        return sum + (x ? n * next : -n * next);
      }, 0),
    ) / 2;

  test('a facing is on the fold where its source is; a stay is whole and without allowance', () => {
    for (const { svg, fold } of each) {
      const made = { name: 'edging', along: 'front.neck', width: 30 };
      const facing = run(svg, [{ 'draft facing': made }]);
      expect(facing.derived.edging!.lengthMm).toBeCloseTo(140, 6);
      expect(facing.after.pieces.edging!.areaMm2).toBeCloseTo(shoelace(ring), 4);
      expect(facing.after.pieces.edging!.edges.neck!.allowanceMm).toBe(10);
      const stay = run(svg, [{ 'draft stay': made }]);
      const halves = fold ? 2 : 1;
      expect(stay.derived.edging!.lengthMm).toBeCloseTo(halves * 140, 6);
      expect(stay.after.pieces.edging!.areaMm2).toBeCloseTo(halves * shoelace(ring), 4);
      expect(stay.after.pieces.edging!.cuttingLine.areaMm2).toBeCloseTo(halves * shoelace(ring), 4);
    }
  });
});
