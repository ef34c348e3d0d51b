// Four garments more that nothing here was built on: a camisole on straps, a wrapped dress, pleated trousers with slant
// pockets drawn by hand. Sums are by the drafts' own figures, outside the product's code.

import { overTheHead } from '@paperhinge/alter';
import { at, checkPattern, type Finding, levelGirths, type PieceLine, polyline } from '@paperhinge/geometry';
import { hemSweep } from '@paperhinge/geometry/measure';
import { readSheet, runSheet } from '@paperhinge/sheet';
import { describe, expect, test } from 'vitest';
import { foundCheck, foundPattern, foundRun } from './found.js';

const openingMm = (findings: readonly Finding[], code: string) =>
  findings.find(f => f.code === code)?.figures?.openingMm;
const codes = (findings: readonly Finding[]) => findings.map(f => f.code);
type At = readonly [number, number];
/** Where a cubic passes a height, by halving; its heights run one way. */
function acrossAt(cubic: readonly [At, At, At, At], height: number): number {
  const placed = (t: number, i: 0 | 1) =>
    [1, 3, 3, 1].reduce((sum, n, k) => sum + n * (1 - t) ** (3 - k) * t ** k * cubic[k]![i], 0);
  const isDown = cubic[3][1] > cubic[0][1];
  let [low, high] = [0, 1];
  for (let n = 0; n < 60; n++) {
    const t = (low + high) / 2;
    if (placed(t, 1) < height === isDown) low = t;
    else high = t;
  }
  return placed(low, 0);
}

describe('a camisole on straps', () => {
  // The neck edges by 2000 chords each.
  const lengthOf = (...[from, c1, c2, to]: readonly [At, At, At, At]) => {
    const along = (t: number, i: 0 | 1) =>
      (1 - t) ** 3 * from[i] + 3 * (1 - t) ** 2 * t * c1[i] + 3 * (1 - t) * t * t * c2[i] + t ** 3 * to[i];
    return Array.from({ length: 2000 }, (_, k) =>
      Math.hypot(
        along((k + 1) / 2000, 0) - along(k / 2000, 0),
        along((k + 1) / 2000, 1) - along(k / 2000, 1),
      ),
    ).reduce((sum, mm) => sum + mm, 0);
  };
  const neckMm =
    2 * (lengthOf([0, 60], [45, 60], [88, 40], [95, 0]) + lengthOf([0, 110], [50, 110], [92, 90], [95, 40]));

  test('goes over the head between its straps, two of 400 mm', () => {
    expect(openingMm(foundRun('trial-camisole', 0).findings, 'head-passes')).toBeCloseTo(neckMm + 800, 2);
  });

  test('is open where its straps are sewn at one end only', () => {
    const { pattern } = foundPattern('trial-camisole');
    const seams = pattern.seams.filter(seam => seam.name !== 'strap back');
    const findings = overTheHead({
      pattern: { ...pattern, seams },
      wearer: { 'head girth': 560 },
      derived: [],
    });
    expect(codes(findings)).toEqual(['neck-opens-at-strap']);
  });

  test('is told of the neck and armholes that would be left raw; faced as the remedy says, it is told no longer', () => {
    const raw = foundCheck('trial-camisole').findings.filter(f => f.code === 'edges-left-raw');
    expect(raw.map(f => f.about)).toEqual(
      ['neck', 'armhole'].map(role => ({
        role,
        edges: ['front', 'back'].map(piece => ({ piece, edge: role })),
      })),
    );
    const { findings, altered } = foundRun('trial-camisole');
    expect(codes(findings)).not.toContain('edges-left-raw');
    expect(codes(checkPattern(altered))).not.toContain('edges-left-raw');
  });
});

describe('a wrapped dress', () => {
  test('is not measured round down its front edge, nor is that hung', () => {
    const { pattern } = foundPattern('trial-wrap-dress');
    expect(hemSweep(pattern).map(h => h.edges.map(e => `${e.piece}.${e.edge}`))).toEqual([
      ['skirt front.hem', 'skirt back.hem'],
      ['sleeve.hem'],
    ]);
    const jobs = foundRun('trial-wrap-dress').record.orderOfWork.map(j => j.job);
    expect(jobs).toContain('hang skirt front.hem + skirt back.hem');
    expect(jobs.filter(job => job.includes('hang') && job.includes('front-edge'))).toEqual([]);
  });
});

describe('a wrapped dress with its centre line drawn', () => {
  const { pattern } = foundPattern('trial-wrap-dress');
  const centred = {
    ...pattern,
    pieces: pattern.pieces.map(piece => {
      if (piece.name !== 'front') return piece;
      // The front is laid aside by 160 and 30; its centre is where x is 0.
      const line: PieceLine = {
        kind: 'style',
        name: 'centre front',
        path: polyline(at(160, 430), at(160, 170)),
      };
      return { ...piece, lines: [...piece.lines, line] };
    }),
  };

  test('counts what its fronts lap over one another once', () => {
    // At the bust, 140 above the wrap's end, the neck stands 120 − 140 × 190 / 380 beyond the centre on each front.
    const lapped = 2 * (120 - (140 * 190) / 380);
    expect(levelGirths(pattern).bust! - levelGirths(centred).bust!).toBeCloseTo(lapped, 6);
  });

  test('has its ties turned before they are sewn on; a belt hangs loose, and is no piece that a seam lacks', () => {
    const sheet = readSheet('pattern: p.svg\nsteps:\n  - draft tie: { name: sash, length: 900, width: 30 }', {
      file: 's.yaml',
    });
    const { findings, order } = runSheet(sheet, pattern);
    const jobs = order.map(j => j.job);
    expect(jobs).toContain('turn sash');
    expect(jobs.indexOf('turn tie')).toBeGreaterThanOrEqual(0);
    expect(jobs.indexOf('turn tie')).toBeLessThan(jobs.indexOf('seam tie'));
    expect(codes(findings)).not.toContain('piece-in-no-seam');
  });
});

describe('pleated trousers with slant pockets', () => {
  test('are measured round both legs at the hip, though it ends at a pocket', () => {
    // Behind the mouth, at 190 + 46 × 150 / 160, the side piece shows as far as the outseam.
    const outseam = acrossAt(
      [
        [215, 0],
        [225, 60],
        [231, 110],
        [236, 160],
      ],
      150,
    );
    const front =
      outseam -
      acrossAt(
        [
          [-45, 270],
          [-10, 262],
          [5, 200],
          [10, 0],
        ],
        150,
      );
    const back =
      acrossAt(
        [
          [240, -3],
          [262, 120],
          [284, 500],
          [235, 996.64292],
        ],
        150,
      ) -
      acrossAt(
        [
          [-85, 271.29113],
          [0, 263.29113],
          [40, 180],
          [60, -25],
        ],
        150,
      );
    expect(levelGirths(foundPattern('trial-pleated-trousers').pattern).hip).toBeCloseTo(
      2 * (front + back),
      2,
    );
  });

  test('open at the waist as wide as their waistband, the side pieces with it', () => {
    const { findings } = foundRun('trial-pleated-trousers', 0);
    // The band is drawn 608.552 mm between its ends; the slit of 180 mm opens it twice.
    expect(openingMm(findings, 'part-passes')).toBeCloseTo(608.5518 + 2 * 180, 2);
  });

  test('have a waistband, folded along its length, that is told by how much it is too long', () => {
    const { pattern } = foundPattern('trial-pleated-trousers');
    const sheet = readSheet(
      'pattern: p.svg\nsteps:\n  - take in: { seam: back crotch, by: 20, from: start, to: 1/2 }',
      { file: 's.yaml' },
    );
    // 10 mm go at the waist of each half, square to a seam that leans: 10 mm and a little.
    const off = runSheet(sheet, pattern).findings.find(f => f.code === 'seam-does-not-match');
    expect(Math.abs(off!.figures!.differenceMm!)).toBeGreaterThan(19.9);
    expect(Math.abs(off!.figures!.differenceMm!)).toBeLessThan(21);
  });

  test('have their pockets made before outseam and waistband close over them', () => {
    const jobs = foundRun('trial-pleated-trousers', 0).record.orderOfWork.map(j => j.job);
    const places = ['seam slant', 'seam bag', 'seam outseam', 'seam waist'].map(j => jobs.indexOf(j));
    expect(places).not.toContain(-1);
    expect(places.slice(0, 2)).toEqual([...places.slice(0, 2)].sort((a, b) => a - b));
    expect(Math.max(...places.slice(0, 2))).toBeLessThan(Math.min(...places.slice(2)));
  });

  test('have bags whose halves lie on one another, and run on into nothing', () => {
    const doubted = foundCheck('trial-pleated-trousers').findings.filter(
      f => f.code === 'joined-line-broken' && JSON.stringify(f.about).includes('pocket'),
    );
    expect(doubted).toEqual([]);
  });
});

test('a coat that is open down its whole front is faced there from end to end, and has no slit beside', () => {
  const { order, pattern } = (({ order, altered }) => ({ order, pattern: altered }))(
    foundRun('trial-hooded-coat', 0),
  );
  const front = pattern.pieces.find(p => p.name === 'front')!;
  expect(front.outline.parts.find(p => p.type === 'edge' && p.name === 'centre-front')).toMatchObject({
    opening: 355,
  });
  expect(order.map(j => j.job)).not.toContain('opening front.centre-front');
  // 40 mm longer it is open to its end still, and leaves nothing of it open to be sewn.
  const longer = foundRun('trial-hooded-coat');
  expect(
    longer.altered.pieces
      .find(p => p.name === 'front')!
      .outline.parts.find(p => p.type === 'edge' && p.name === 'centre-front'),
  ).toMatchObject({ opening: expect.closeTo(395, 3) });
  expect(longer.order.map(j => j.job)).not.toContain('opening front.centre-front');
  expect(JSON.stringify(longer.order.find(j => j.job === 'seam front edge'))).not.toContain('openMm');
  expect(JSON.stringify(order.find(j => j.job === 'seam front edge'))).not.toContain('openMm');
});
