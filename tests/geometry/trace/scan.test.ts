import { PatternError, type Point, pathLength } from '@paperhinge/geometry';
import { pointAlong } from '@paperhinge/geometry/paths';
import { traceScan } from '@paperhinge/geometry/trace';
import { expect, test } from 'vitest';
import { dotsToMm, inColour, offRing, paper, penLine, scanned } from '../../support/drawn-scan.js';
import { shapes } from '../../support/photo-floors.js';
import { flattened, laid, type Outline } from '../../support/photo-scene.js';
import { judgedPiece } from './small-floor.js';

/** Fills an outline, every dot by the share of it that is covered. */
function cutPiece(sheet: ReturnType<typeof paper>, outline: Outline, colour: number): void {
  const points = flattened(outline);
  const parts = 4;
  for (let y = 0; y < sheet.height; y++)
    for (let part = 0; part < parts; part++) {
      const level = (y + (part + 0.5) / parts) / dotsToMm;
      const crossings = points
        .flatMap(([ax, ay], i) => {
          const [bx, by] = points[(i + 1) % points.length]!;
          return ay <= level === by <= level
            ? []
            : [(ax + ((level - ay) / (by - ay)) * (bx - ax)) * dotsToMm];
        })
        .sort((a, b) => a - b);
      for (let c = 0; c + 1 < crossings.length; c += 2)
        for (let x = Math.floor(crossings[c]!); x <= crossings[c + 1]!; x++) {
          const cover = Math.min(x + 1, crossings[c + 1]!) - Math.max(x, crossings[c]!);
          sheet.grey[y * sheet.width + x]! += ((colour - 245) * Math.max(0, cover)) / parts;
        }
    }
}

const pocket = laid(shapes.pocket, [28, 40], 0.06);

test('a cut piece in a scan of known dpi comes out within 0.1 mm', () => {
  const sheet = paper();
  cutPiece(sheet, pocket, 120);
  const trace = traceScan(scanned(sheet), { dotsToMm });
  expect(trace.pieces).toHaveLength(1);
  expect(trace.pieces[0]!.edges).toHaveLength(2);
  const { most, worst, lengthOff } = judgedPiece(trace.pieces[0]!, pocket);
  expect(most).toBeLessThan(0.1);
  expect(worst).toBeLessThan(0.15);
  expect(Math.abs(lengthOff)).toBeLessThan(0.3);
  expect(trace.residualMm).toBeUndefined();
  expect(trace.findings.map(f => f.code)).toEqual(['scan-scale', 'pieces-counted']);
});

test('a piece that runs out of the scan is told as that', () => {
  const sheet = paper();
  cutPiece(sheet, laid(shapes.pocket, [28, sheet.height / dotsToMm - 60], 0.06), 120);
  expect(() => traceScan(scanned(sheet), { dotsToMm })).toThrow(
    expect.objectContaining({ code: 'no-piece-on-scan', facts: { faint: 0, cutOff: 1 } }),
  );
});

test('a line drawn in dashes is followed from click to click, past lines that cross it', () => {
  const sheet = paper();
  const ring = flattened(pocket);
  penLine(sheet, [...ring, ring[0]!], [4, 2]);
  // Another size beside it, and a line across.
  penLine(sheet, [
    [10, 150],
    [190, 141],
  ]);
  penLine(sheet, [
    [11, 20],
    [11, 240],
  ]);
  const clicks = [pocket[0]![0]!, pocket[1]![0]!, pocket[3]![0]!].map(
    ([x, y], i): Point => ({ x: x * dotsToMm + [5, -4, 2][i]!, y: y * dotsToMm + [-4, 3, 5][i]! }),
  );
  const trace = traceScan(scanned(sheet), { dotsToMm, at: [clicks] });
  const [piece] = trace.pieces;
  expect(piece!.edges).toHaveLength(3);
  const { most, worst } = judgedPiece(piece!, pocket);
  expect(most).toBeLessThan(0.25);
  expect(worst).toBeLessThan(0.8);
  expect(piece!.edges.map(pathLength).reduce((a, b) => Math.min(a, b))).toBeCloseTo(150, 0);
});

test.each([
  ['colour', { colour: 'red' }, { colour: 'blue' }],
  ['dashes', { dashed: false }, { dashed: true }],
] as const)('lines of two sizes beside one another are told apart by %s', (by, first, second) => {
  // The next size, larger by 6 %.
  const larger = shapes.pocket.map(segment =>
    segment.map(([x, y]) => [75 + (x - 75) * 1.06, 85 + (y - 85) * 1.06]),
  ) as unknown as Outline;
  const other = laid(larger, [28, 40], 0.06);
  const sheets = [paper(), paper(), paper()];
  for (const [k, outline] of [pocket, other].entries()) {
    const ring = flattened(outline);
    // Red ink takes green and blue from the paper, blue ink red and green.
    for (const sheet of by === 'dashes' ? sheets : sheets.slice(1 - k, 3 - k))
      penLine(sheet, [...ring, ring[0]!], by === 'dashes' && k === 1 ? [4, 3] : undefined);
  }
  const picture = inColour(sheets);
  for (const [pen, outline] of [
    [first, pocket],
    [second, other],
  ] as const) {
    const clicks = [0, 1, 3].map((i): Point => {
      const [x, y] = outline[i]![0]!;
      return { x: (x + 1) * dotsToMm, y: (y - 0.8) * dotsToMm };
    });
    const { pieces } = traceScan(picture, { dotsToMm, at: [clicks], pen });
    const points = pieces[0]!.edges.flatMap(edge => {
      const length = pathLength(edge);
      return Array.from({ length: 60 }, (_, i) => pointAlong(edge, (length * i) / 60));
    });
    // Not laid on first: it must lie where its own size is drawn.
    const offs = points.map(p => offRing(p, flattened(outline))).sort((a, b) => a - b);
    expect(offs[Math.floor(offs.length * 0.9)]).toBeLessThan(0.35);
  }
});

test('scans that cannot be traced are refused with the reason', () => {
  const codeOf = (work: () => unknown): string | undefined => {
    try {
      work();
    } catch (error) {
      return error instanceof PatternError ? error.code : String(error);
    }
    return undefined;
  };
  const blank = scanned(paper());
  const at = (...points: readonly (readonly [number, number])[]) => [points.map(([x, y]) => ({ x, y }))];
  expect(codeOf(() => traceScan(blank, { dotsToMm }))).toBe('no-piece-on-scan');
  expect(codeOf(() => traceScan(blank, { dotsToMm: 100 }))).toBe('picture-too-small');
  expect(codeOf(() => traceScan(blank, { dotsToMm: 0 }))).toBe('scan-scale-out-of-range');
  expect(codeOf(() => traceScan(blank, { dotsToMm, at: at([10, 10], [300, 10]) }))).toBe('too-few-clicks');
  expect(codeOf(() => traceScan(blank, { dotsToMm, at: at([10, 10], [300, 10], [9000, 80]) }))).toBe(
    'click-outside',
  );
  // Between corners on bare paper no line is made up.
  expect(codeOf(() => traceScan(blank, { dotsToMm, at: at([100, 100], [800, 120], [500, 900]) }))).toBe(
    'no-line-between',
  );
});
