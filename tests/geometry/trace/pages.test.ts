import type { Point } from '@paperhinge/geometry';
import { signedArea } from '@paperhinge/geometry/regions';
import { type DrawnPage, joinedPages, piecesOfDrawing } from '@paperhinge/geometry/trace';
import { describe, expect, test } from 'vitest';
import { refusalOf } from '../../support/told.js';

/** A piece of six corners, 520 by 430 mm: it lies on three by two pages. */
const corners: readonly Point[] = [
  { x: 40, y: 30 },
  { x: 560, y: 60 },
  { x: 540, y: 300 },
  { x: 420, y: 460 },
  { x: 90, y: 440 },
  { x: 60, y: 200 },
];
const area =
  Math.abs(
    corners.reduce((sum, p, i) => sum + p.x * corners[(i + 1) % 6]!.y - p.y * corners[(i + 1) % 6]!.x, 0),
  ) / 2;
const size = { width: 210, height: 297 };
const window = { min: { x: 10, y: 10 }, max: { x: 200, y: 287 } };
const wide = 190,
  high = 277;

const line = (from: Point, to: Point) => ({
  path: { segments: [[from, to] as const] },
  closed: false,
  layer: 'black',
  dashed: false,
});
const moved = (p: Point, x: number, y: number): Point => ({ x: p.x - x + 10, y: p.y - y + 10 });

/** What of a line lies in a page's window (Liang and Barsky, 1984). */
function cut(from: Point, to: Point): readonly [Point, Point] | undefined {
  let low = 0,
    high = 1;
  const d = { x: to.x - from.x, y: to.y - from.y };
  for (const [p, q] of [
    [-d.x, from.x - window.min.x],
    [d.x, window.max.x - from.x],
    [-d.y, from.y - window.min.y],
    [d.y, window.max.y - from.y],
  ] as const) {
    if (p === 0 && q < 0) return undefined;
    if (p < 0) low = Math.max(low, q / p);
    if (p > 0) high = Math.min(high, q / p);
  }
  const at = (t: number): Point => ({ x: from.x + d.x * t, y: from.y + d.y * t });
  return low < high ? [at(low), at(high)] : undefined;
}

/** The pages in reading order: whole behind their windows, or cut off at them; each off its place by so much. */
function pages({
  clipped,
  overlap = 0,
  off = () => ({ x: 0, y: 0 }),
}: {
  clipped: boolean;
  overlap?: number;
  off?: (i: number) => Point;
}): readonly DrawnPage[] {
  return Array.from({ length: 8 }, (_, i): DrawnPage => {
    const x = (i % 4) * (wide - overlap) - off(i).x,
      y = Math.floor(i / 4) * (high - overlap) - off(i).y;
    const sides = corners.map((from, k) => [moved(from, x, y), moved(corners[(k + 1) % 6]!, x, y)] as const);
    const lines = clipped
      ? sides.flatMap(([from, to]) => {
          const part = cut(from, to);
          return part ? [line(...part)] : [];
        })
      : sides.map(([from, to]) => line(from, to));
    return { drawing: { lines, words: [] }, ...size, window };
  });
}
const found = (of: readonly DrawnPage[], grid?: { columns: number; overlap: number }) => {
  const joined = joinedPages(of, grid);
  const { pieces } = piecesOfDrawing('x', joined.drawing, { gap: 1 }).pattern;
  return {
    ...joined,
    areas: pieces.map(({ outline }) =>
      Math.abs(
        signedArea({
          segments: outline.parts.flatMap(part => (part.type === 'edge' ? part.path.segments : [])),
        }),
      ),
    ),
  };
};

describe('pages of a pattern in tiles', () => {
  test('that are windows onto one sheet are joined by the lines they share', () => {
    const { areas, findings, worstMm } = found(pages({ clipped: false }));
    expect(areas).toHaveLength(1);
    expect(areas[0]).toBeCloseTo(area, 6);
    expect(worstMm).toBeLessThan(1e-9);
    expect(findings.map(one => one.code)).toEqual(['no-test-square', 'pages-of-one-sheet']);
  });

  test.each([0, 12])('that are cut off are laid in the rows that are told, overlapping by %i mm', overlap => {
    const { areas, residualMm } = found(pages({ clipped: true, overlap }), { columns: 4, overlap });
    expect(residualMm).toBeLessThan(1e-9);
    expect(areas).toHaveLength(1);
    expect(areas[0]).toBeCloseTo(area, 4);
  });

  test.each([0, 10, 12])('that nobody tells of are laid so that lines run on, overlap %i mm', overlap => {
    const { areas, findings } = found(pages({ clipped: true, overlap }));
    expect(areas).toHaveLength(1);
    expect(Math.abs(areas[0]! / area - 1)).toBeLessThan(1e-6);
    expect(findings.at(-1)).toMatchObject({
      code: 'pages-laid-by-themselves',
      figures: { overlapMm: overlap },
    });
  });

  test('are moved so that lines run on across the joins, and say how truly', () => {
    const off = (i: number): Point =>
      i === 0 ? { x: 0, y: 0 } : { x: 1.2 * Math.sin(7 * i), y: 1.2 * Math.cos(5 * i) };
    const shaken = pages({ clipped: true, off });
    const { areas, residualMm, worstMm } = found(shaken, { columns: 4, overlap: 0 });
    expect(areas).toHaveLength(1);
    expect(Math.abs(areas[0]! - area) / area).toBeLessThan(0.005);
    expect(residualMm).toBeLessThan(0.6);
    expect(worstMm).toBeGreaterThanOrEqual(residualMm!);
  });

  test.each([
    ['too small an overlap', 12, { columns: 4, overlap: 0 }],
    ['too large an overlap', 0, { columns: 4, overlap: 10 }],
    ['too few columns', 12, { columns: 3, overlap: 12 }],
    ['too many columns', 12, { columns: 8, overlap: 12 }],
  ])('that are told with %s are not laid so: what lines run on with is said', (_, overlap, grid) => {
    const refused = refusalOf(() => joinedPages(pages({ clipped: true, overlap }), grid));
    expect(refused.code).toBe('pages-lie-otherwise');
    expect(refused.remedy).toContain(`--columns 4 --overlap "${overlap} mm"`);
    // As the remedy says it, it is laid.
    expect(found(pages({ clipped: true, overlap }), { columns: 4, overlap }).areas).toHaveLength(1);
  });

  test('are laid by an overlap that is none of the common ones', () => {
    const overlap = 7;
    const ring = [
      [30, 40],
      [330, 40],
      [345, 200],
      [340, 420],
      [60, 430],
      [40, 250],
    ].map(([x, y]): Point => ({ x: x!, y: y! }));
    const tiles = [0, 1, 2, 3].map((i): DrawnPage => {
      const [x, y] = [(i % 2) * (wide - overlap), Math.floor(i / 2) * (high - overlap)];
      const lines = ring.flatMap((from, k) => {
        const part = cut(moved(from, x, y), moved(ring[(k + 1) % 6]!, x, y));
        return part ? [line(...part)] : [];
      });
      return { drawing: { lines, words: [] }, ...size };
    });
    const { areas, findings } = found(tiles);
    const whole =
      ring.reduce((sum, p, k) => sum + p.x * ring[(k + 1) % 6]!.y - p.y * ring[(k + 1) % 6]!.x, 0) / 2;
    expect(areas).toHaveLength(1);
    // Laid by the nearest of the common overlaps it would be out by four thousandths.
    expect(Math.abs(areas[0]! / whole - 1)).toBeLessThan(5e-4);
    expect(Math.abs(Number(findings.at(-1)!.figures!.overlapMm) - overlap)).toBeLessThan(0.03);
  });

  test('that tell no window of their own lie in the one that all were cut off at', () => {
    const bare = pages({ clipped: true, overlap: 10 }).map(({ window: _, ...page }) => page);
    for (const grid of [undefined, { columns: 4, overlap: 10 }])
      expect(Math.abs(found(bare, grid).areas[0]! / area - 1)).toBeLessThan(1e-6);
  });

  test.each([
    ['a cover', [line({ x: 30, y: 40 }, { x: 150, y: 40 }), line({ x: 30, y: 60 }, { x: 150, y: 60 })]],
    ['a page of words', []],
    ['one that a short line is drawn on', [line({ x: 30, y: 40 }, { x: 60, y: 44 })]],
  ])('behind %s are laid without it, and that is said', (_, lines) => {
    const cover: DrawnPage = { drawing: { lines, words: [] }, ...size, window };
    const all = [cover, ...pages({ clipped: true, overlap: 10 })];
    for (const grid of [undefined, { columns: 4, overlap: 10 }]) {
      const { areas, findings } = found(all, grid);
      expect(Math.abs(areas[0]! / area - 1)).toBeLessThan(1e-6);
      expect(findings.at(-1)).toMatchObject({ figures: { pages: 8, others: 1 } });
    }
  });

  test('that are told where no line can run on are refused', () => {
    const own = pages({ clipped: true });
    const refused = refusalOf(() =>
      joinedPages(
        [0, 5, 2, 7, 4, 1, 6, 3].map(i => own[i]!),
        { columns: 1, overlap: 25 },
      ),
    );
    expect(['pages-do-not-run-on', 'pages-lie-otherwise']).toContain(refused.code);
  });

  test('that show one line of a whole sheet, going on beyond the paper, are windows onto it', () => {
    const ring = { segments: corners.map((from, k) => [from, corners[(k + 1) % 6]!] as const) };
    const whole = Array.from({ length: 6 }, (_, i): DrawnPage => {
      const by = { x: -(i % 3) * 198, y: -Math.floor(i / 3) * 285 };
      const segments = ring.segments.map(
        side => side.map(p => ({ x: p.x + by.x, y: p.y + by.y })) as unknown as typeof side,
      );
      return {
        drawing: { lines: [{ path: { segments }, closed: true, layer: 'black', dashed: false }], words: [] },
        ...size,
      };
    });
    expect(found(whole).areas.map(one => Math.round(one))).toEqual([Math.round(area)]);
    // The same where columns and overlap are typed: each page shows what lies on its paper, and no more.
    const typed = found(whole, { columns: 3, overlap: 12 });
    expect(typed.areas).toHaveLength(1);
    expect(Math.abs(typed.areas[0]! / area - 1)).toBeLessThan(1e-4);
  });

  test('that nothing tells how they lie are refused, with what to say', () => {
    // Of eight pages two far from one another: no line runs on.
    const eight = pages({ clipped: true });
    const refused = refusalOf(() => joinedPages([eight[0]!, eight[6]!]));
    expect(refused.code).toBe('pages-not-joined');
    expect(refused.remedy).toContain('--columns');
    const scan: DrawnPage = {
      drawing: { lines: [], words: [{ text: 'Front', at: { x: 1, y: 1 } }] },
      ...size,
    };
    expect(refusalOf(() => joinedPages([scan])).remedy).toContain('--dpi');
  });

  test('the test square is found by the length beside it, and measured', () => {
    const square = (side: number, said: string): DrawnPage => {
      const p = (x: number, y: number): Point => ({ x: 20 + x, y: 20 + y });
      const ring = [p(0, 0), p(side, 0), p(side, side), p(0, side)];
      const segments = ring.map((from, i) => [from, ring[(i + 1) % 4]!] as const);
      return {
        drawing: {
          lines: [{ path: { segments }, closed: true, layer: 'black', dashed: false }],
          words: [{ text: said, at: p(5, 5) }],
        },
        ...size,
      };
    };
    const codes = (page: DrawnPage): readonly string[] => joinedPages([page]).findings.map(one => one.code);
    expect(codes(square(50, 'Test square: 50 mm'))).toEqual(['test-square-true']);
    expect(codes(square(50.8, '2 in'))).toEqual(['test-square-true']);
    expect(codes(square(48.5, '5 cm'))).toEqual(['test-square-off']);
    expect(codes(square(48.5, 'pocket'))).toEqual(['no-test-square']);
  });
});
