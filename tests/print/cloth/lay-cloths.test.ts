import { at, type Fabric, line, type Pattern, type Piece, pathOf } from '@paperhinge/geometry';
import { type ClothLay, type ClothWay, clothFindings, layCloths } from '@paperhinge/print/cloth';
import { describe, expect, test } from 'vitest';
import { toldFinding } from '../../support/told.js';
import { randomGarment } from '../pages/random-garments.js';
import { patternOf, polygonPiece, rectangle } from '../simple-pieces.js';
import { areaOf, overlapArea } from './polygon-judge.js';

const grain = (x: number, from: number, to: number): Piece['lines'][number] => ({
  name: 'grain',
  kind: 'grain',
  path: pathOf(line(at(x, from), at(x, to))),
});
const of = (piece: Piece, changes: Partial<Piece['cutting']>): Piece => ({
  ...piece,
  cutting: { count: 1, mirrored: false, fabric: 'main', ...changes },
});
const onFold = (piece: Piece, edge: string): Piece => ({
  ...piece,
  outline: {
    parts: piece.outline.parts.map(p =>
      p.name === edge ? { ...p, kind: 'fold', allowance: 0 } : p,
    ) as Piece['outline']['parts'],
  },
});
const cloth = (pattern: Pattern, changes: Partial<Fabric>, unit: Pattern['unit'] = 'mm'): Pattern => ({
  ...pattern,
  unit,
  fabrics: [{ name: 'main', role: 'main', ...changes }],
});
const lay = (pattern: Pattern, way: ClothWay): ClothLay =>
  layCloths(pattern)[0]!.lays.find(l => l.way === way)!;
const spanOf = ({ laid }: ClothLay, axis: 'x' | 'y') => {
  const all = laid.flatMap(l => l.outline.map(p => p[axis]));
  return [Math.min(...all), Math.max(...all)] as const;
};

/** mm of paper that the 5 mm cells and the gap between them may add for each piece in a row. */
const cellsOver = 12;

describe('what there is to buy', () => {
  test('two pieces side by side take their height, one over the other where the cloth is narrow', () => {
    const two = patternOf(of(rectangle('panel', 600, 700), { count: 2 }));
    const wide = lay(cloth(two, { width: 1300 }), 'open');
    expect(wide.lengthMm).toBeGreaterThanOrEqual(700);
    expect(wide.lengthMm).toBeLessThan(700 + cellsOver);
    const narrow = lay(cloth(two, { width: 1100 }), 'open');
    expect(narrow.lengthMm).toBeGreaterThanOrEqual(1400);
    expect(narrow.lengthMm).toBeLessThan(1400 + 2 * cellsOver);
  });

  test('two layers are cut at once: a pair, or two alike of a piece that is its own mirror image', () => {
    const slanted = polygonPiece('sleeve', [at(0, 0), at(300, 0), at(380, 500), at(0, 500)]);
    const counted = (piece: Piece, way: ClothWay) =>
      lay(cloth(patternOf(piece), { width: 1500 }), way).laid.length;
    expect(counted(of(slanted, { count: 2, mirrored: true }), 'folded')).toBe(1);
    expect(counted(of(slanted, { count: 2, mirrored: true }), 'open')).toBe(2);
    // Two alike, and not a pair: face to face one of them would come out turned over.
    expect(counted(of(slanted, { count: 2 }), 'folded')).toBe(2);
    expect(counted(of(rectangle('gore', 300, 500), { count: 4 }), 'folded')).toBe(2);
    expect(counted(of(rectangle('gore', 300, 500), { count: 3 }), 'folded')).toBe(2);
    expect(counted(of(rectangle('gore', 300, 500), { count: 2, rightSideUp: true }), 'folded')).toBe(2);
  });

  test('of a pair in one layer one is turned over', () => {
    const slanted = polygonPiece('sleeve', [at(0, 0), at(300, 0), at(380, 500), at(0, 500)]);
    const { laid } = lay(
      cloth(patternOf({ ...of(slanted, { count: 2, mirrored: true }), lines: [grain(100, 50, 450)] }), {
        width: 1500,
        nap: true,
      }),
      'open',
    );
    // The long level side of one reaches right of its short one, of the other left.
    const leans = laid.map(({ outline }) => {
      const top = Math.min(...outline.map(p => p.y)),
        bottom = Math.max(...outline.map(p => p.y));
      const right = (y: number) => Math.max(...outline.filter(p => Math.abs(p.y - y) < 1e-6).map(p => p.x));
      return Math.sign(Math.round(right(bottom) - right(top)));
    });
    expect(leans.sort()).toEqual([0, 1]);
  });

  test('a half piece lies with its fold on the fold, whichever side it is drawn at; opened out it is whole', () => {
    for (const edge of ['edge-2', 'edge-4']) {
      const half = onFold(of(rectangle('front', 250, 600), {}), edge);
      const pattern = cloth(patternOf({ ...half, lines: [grain(120, 50, 550)] }), { width: 1500 });
      const folded = lay(pattern, 'folded');
      expect(spanOf(folded, 'x')).toEqual([0, 250]);
      const [left, right] = spanOf(lay(pattern, 'open'), 'x');
      expect(right - left).toBeCloseTo(500, 6);
    }
  });

  test('the grain runs along the cloth, and with a nap every top to one end', () => {
    const across: Piece = {
      ...of(rectangle('band', 900, 100), { count: 3 }),
      lines: [{ name: 'grain', kind: 'grain', path: pathOf(line(at(100, 50), at(800, 50))) }],
    };
    const laid = lay(cloth(patternOf(across), { width: 500 }), 'open');
    expect(laid.lengthMm).toBeGreaterThanOrEqual(900);
    expect(laid.lengthMm).toBeLessThan(900 + cellsOver);
    const wedge: Piece = {
      ...of(polygonPiece('gore', [at(0, 0), at(20, 0), at(300, 800), at(0, 800)]), { count: 2 }),
      lines: [grain(10, 100, 700)],
    };
    // Heads and tails the two interlock within 500 mm; one way they cannot.
    const plain = lay(cloth(patternOf(wedge), { width: 400 }), 'open');
    const napped = lay(cloth(patternOf(wedge), { width: 400, nap: true }), 'open');
    expect(plain.lengthMm).toBeLessThan(850);
    expect(napped.lengthMm).toBeGreaterThan(900);
  });

  test('5 % over, a repeat for each piece, rounded up to 5 cm or an eighth of a yard', () => {
    const one = patternOf(of(rectangle('panel', 400, 980), { count: 2, mirrored: true }));
    const metric = lay(cloth(one, { width: 1500 }), 'open');
    // 980 to 992 mm and 5 % more: 1029 to 1042.
    expect(metric.buyMm).toBe(1050);
    // Two of 64 mm more: 1163 to 1176.
    expect(lay(cloth(one, { width: 1500, repeat: 64 }), 'open').buyMm).toBe(1200);
    // 1 1/8 yd = 1028.7 mm is too short, 1 1/4 yd = 1143 mm is not.
    expect(lay(cloth(one, { width: 1500 }, 'in'), 'open').buyMm).toBeCloseTo(1143, 6);
  });

  test('a piece wider than the cloth is told, and no length is made up', () => {
    const wide = cloth(patternOf(of(rectangle('cape', 1400, 900), {})), { width: 1400 });
    const [needed] = layCloths(wide);
    expect(needed!.lays).toEqual([]);
    expect(needed!.tooWide).toEqual([{ piece: 'cape', acrossMm: 1400 }]);
    const [finding] = clothFindings([needed!]);
    expect(finding).toMatchObject({
      code: 'wider-than-cloth',
      where: { piece: 'cape' },
      severity: 'warning',
    });
    expect(toldFinding(finding!, 'cm').message).toBe(
      'The piece is 140 cm across; the cloth "main" has 137 cm to cut from between its selvedges.',
    );
    // The remedy, followed: a wider cloth, or a seam in the piece.
    expect(
      layCloths(cloth(patternOf(of(rectangle('cape', 1400, 900), {})), { width: 1500 }))[0]!.lays,
    ).toHaveLength(1);
    expect(
      layCloths(cloth(patternOf(of(rectangle('cape', 700, 900), { count: 2 })), { width: 1400 }))[0]!.tooWide,
    ).toEqual([]);
    // Wide enough in one layer, not folded: one way is told.
    const opened = cloth(patternOf(of(rectangle('cape', 1000, 900), {})), { width: 1400 });
    expect(layCloths(opened)[0]!.lays.map(l => l.way)).toEqual(['open']);
    // A cloth of which the width is not known, and one that nothing is cut of.
    expect(layCloths(patternOf(rectangle('cape', 100, 90)))).toEqual([]);
  });
});

test('pieces of drawn garments never overlap, lie on the cloth, and take no less than their area', () => {
  for (const seed of [1, 5]) {
    const pattern = randomGarment(seed);
    for (const { lays, widthMm } of layCloths({
      ...pattern,
      fabrics: pattern.fabrics.map(f => ({ ...f, width: 1400 })),
    }))
      for (const { laid, lengthMm, acrossMm } of lays) {
        expect(acrossMm).toBeLessThan(widthMm);
        for (const { outline } of laid)
          for (const p of outline) {
            expect(p.x).toBeGreaterThanOrEqual(-1e-9);
            expect(p.x).toBeLessThanOrEqual(acrossMm + 1e-9);
            expect(p.y).toBeLessThanOrEqual(lengthMm + 1e-9);
          }
        const outlines = laid.map(l => l.outline);
        expect(overlapArea(outlines)).toBeLessThan(1);
        expect(outlines.reduce((sum, o) => sum + areaOf(o), 0)).toBeLessThan(acrossMm * lengthMm);
      }
  }
});
