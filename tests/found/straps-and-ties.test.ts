// Three garments drawn for this: a top on straps at their full width, a child's pinafore with a bib that its straps are caught
// in, a wrapped skirt with a tie at each end of its waistband. Sums are by the drafts' own figures.
import { cautionsFor } from '@paperhinge/alter';
import { at, levelGirths, type Pattern, type PieceLine, polyline, walkSeams } from '@paperhinge/geometry';
import { readSheet, runSheet } from '@paperhinge/sheet';
import { english, wordsOf } from '@paperhinge/sheet/words';
import { describe, expect, test } from 'vitest';
import { foundCheck, foundPattern, foundRun } from './found.js';

type At = readonly [number, number];
/** Length of a cubic by 4000 chords. */
function lengthOf(...cubic: readonly [At, At, At, At]): number {
  const placed = (t: number, i: 0 | 1) =>
    [1, 3, 3, 1].reduce((sum, n, k) => sum + n * (1 - t) ** (3 - k) * t ** k * cubic[k]![i], 0);
  return Array.from({ length: 4000 }, (_, k) =>
    Math.hypot(...([0, 1] as const).map(i => placed((k + 1) / 4000, i) - placed(k / 4000, i))),
  ).reduce((sum, mm) => sum + mm, 0);
}
/** Where a cubic whose heights run downwards passes a height, by halving. */
function acrossAt(cubic: readonly [At, At, At, At], height: number): number {
  const placed = (t: number, i: 0 | 1) =>
    [1, 3, 3, 1].reduce((sum, n, k) => sum + n * (1 - t) ** (3 - k) * t ** k * cubic[k]![i], 0);
  let [low, high] = [0, 1];
  for (let n = 0; n < 60; n++) {
    const t = (low + high) / 2;
    if (placed(t, 1) < height) low = t;
    else high = t;
  }
  return placed(low, 0);
}
const withLine = (pattern: Pattern, name: string, line: PieceLine): Pattern => ({
  ...pattern,
  pieces: pattern.pieces.map(piece =>
    piece.name === name ? { ...piece, lines: [...piece.lines, line] } : piece,
  ),
});
const runOf = (pattern: Pattern, text = '') =>
  runSheet(readSheet(`pattern: p.svg\n${text}steps: []`, { file: 's.yaml' }), pattern);
const inOrder = (jobs: readonly string[], ...wanted: readonly string[]) => {
  const places = wanted.map(name => jobs.indexOf(name));
  expect(places, jobs.join(', ')).not.toContain(-1);
  expect(places, jobs.join(', ')).toEqual(places.toSorted((p, q) => p - q));
};

describe('a top on straps that are drawn at their full width', () => {
  const { pattern, findings } = foundCheck('own-strap-top');
  // The strap lies at 640, 40; its middle is 15 mm in.
  const fold: PieceLine = { kind: 'fold', name: 'fold', path: polyline(at(655, 40), at(655, 430)) };

  test('is told to draw their fold, and then each end is sewn on half as broad', () => {
    const told = findings.filter(f => f.code === 'seam-does-not-match');
    expect(told.map(f => f.where)).toEqual([
      { piece: 'shoulder strap', edge: 'near' },
      { piece: 'shoulder strap', edge: 'far' },
    ]);
    expect(wordsOf(english, 'mm').finding(told[0]!).remedy).toContain('data-line="fold"');
    const walks = walkSeams(withLine(pattern, 'shoulder strap', fold)).filter(w =>
      w.seam.startsWith('strap'),
    );
    expect(walks.map(w => [w.aMm, w.bMm, w.matches])).toEqual([
      [15, 15, true],
      [15, 15, true],
    ]);
  });

  test('has no line that would run on from a strap into a neck or an armhole', () => {
    const lines = findings.filter(f => f.code === 'joined-line-broken').map(f => JSON.stringify(f.about));
    expect(lines.filter(about => about.includes('strap'))).toEqual([]);
  });

  test('goes over the head between its straps, which are turned before they are sewn on', () => {
    const { findings: found, record } = foundRun('own-strap-top');
    const neck =
      lengthOf([0, 60], [40, 60], [80, 45], [95, 0]) + lengthOf([0, 110], [40, 110], [85, 95], [95, 40]);
    expect(found.find(f => f.code === 'head-passes')!.figures!.openingMm).toBeCloseTo(2 * (neck + 390), 2);
    const jobs = record.orderOfWork.map(j => j.job);
    inOrder(jobs, 'turn shoulder strap', 'seam strap front');
    inOrder(jobs, 'turn shoulder strap', 'seam strap back');
    expect(found.map(f => f.code)).not.toContain('ends-hang-loose');
  });
});

test('a drafted tie, twice as broad on paper, is sewn to an edge as broad as it is when turned', () => {
  const { pattern } = foundPattern('own-wrap-skirt');
  const sheet = readSheet(
    'pattern: p.svg\nseams: { sash: { a: sash.end from long, b: waistband.end left from upper } }\nsteps:\n  - draft tie: { name: sash, length: 700, width: 35 }',
    { file: 's.yaml' },
  );
  const bare = { ...pattern, seams: pattern.seams.filter(s => s.name !== 'long tie') };
  const walk = walkSeams(runSheet(sheet, bare).altered).find(w => w.seam === 'sash')!;
  expect([walk.aMm, walk.bMm, walk.matches]).toEqual([expect.closeTo(35, 6), expect.closeTo(35, 6), true]);
});

describe('a child’s pinafore with a bib', () => {
  const { record, findings } = foundRun('own-pinafore');
  const jobs = record.orderOfWork.map(j => j.job);

  test('has its straps caught in the bib, which is faced and turned before it is sewn into the waistband', () => {
    inOrder(jobs, 'turn strap', 'seam strap', 'seam bib edge', 'understitch bib facing', 'seam bib waist');
    expect(jobs.filter(job => job.startsWith('understitch'))).toEqual(['understitch bib facing']);
    const edge = record.orderOfWork.find(j => j.job === 'seam bib edge')!;
    expect(edge.because).toContain('after the strap seam: it catches in the end of the strap');
  });

  test('opens at its waistband and zip for the hips: its bib is no part of that ring', () => {
    const passes = findings.find(f => f.code === 'part-passes')!;
    // The band is 2 × 310 mm between its ends, the zip 150 mm.
    expect(passes.figures!.openingMm).toBeCloseTo(2 * 310 + 2 * 150, 6);
  });

  test('has its carriers sewn on where they are marked, and its straps told to hang loose', () => {
    inOrder(jobs, 'seam skirt waist', 'sew on carrier');
    const loose = findings.filter(f => f.code === 'ends-hang-loose');
    expect(loose.map(f => [f.about!.things, f.about!.guessed])).toEqual([[[{ piece: 'strap' }], true]]);
    expect(cautionsFor({ pattern: foundPattern('own-pinafore').pattern }).map(c => c.code)).toContain(
      'cords',
    );
  });

  test('is clean but for the corners at its sides', () => {
    expect(findings.filter(f => f.severity !== 'note').map(f => f.code)).toEqual([
      'joined-line-broken',
      'joined-line-broken',
    ]);
  });
});

describe('a wrapped skirt with ties', () => {
  const { pattern } = foundPattern('own-wrap-skirt');
  const wearer = 'wearer: { hip girth: 980 }\n';
  // The front is drawn at 340, 40, its centre 110 mm from its edge.
  const centre: PieceLine = {
    kind: 'style',
    name: 'centre front',
    path: polyline(at(450, 36), at(450, 660)),
  };
  const front = acrossAt(
    [
      [300, -8],
      [325, 90],
      [345, 190],
      [350, 620],
    ],
    190,
  );
  const back = acrossAt(
    [
      [190, -8],
      [215, 90],
      [235, 190],
      [240, 620],
    ],
    190,
  );

  test('is measured to its edges, and told so: how far it laps nobody has said', () => {
    expect(levelGirths(pattern).hip).toBeCloseTo(2 * (front + back), 4);
    const told = runOf(pattern, wearer).findings.find(f => f.code === 'lap-not-known')!;
    expect(told.about!.edge).toEqual({ piece: 'skirt front', edge: 'front edge' });
    expect(runOf(pattern).findings.map(f => f.code)).not.toContain('lap-not-known');
  });

  test('with its centre drawn, as the remedy says, counts what laps once', () => {
    const centred = withLine(pattern, 'skirt front', centre);
    expect(levelGirths(centred).hip).toBeCloseTo(2 * (front - 110 + back), 4);
    expect(runOf(centred, wearer).findings.map(f => f.code)).not.toContain('lap-not-known');
  });

  test('has its ties turned before they are sewn to the ends of the band', () => {
    const jobs = runOf(pattern).order.map(j => j.job);
    inOrder(jobs, 'turn tie long', 'seam long tie');
    inOrder(jobs, 'turn tie short', 'seam short tie');
    inOrder(jobs, 'front skirt front.front edge', 'seam waist');
  });
});

describe('a halter dress with half belts', () => {
  const { record, findings } = foundRun('own-halter-dress');
  const jobs = record.orderOfWork.map(j => j.job);
  const text = (job: string) => record.orderOfWork.find(j => j.job === job)!.text;

  test('is tied behind the neck: open there, its straps and belts told to hang loose', () => {
    expect(findings.map(f => f.code)).toContain('neck-opens-at-strap');
    const loose = findings.find(f => f.code === 'ends-hang-loose')!;
    expect(loose.about!.things).toEqual([{ piece: 'neck strap' }, { piece: 'half belt' }]);
  });

  test('has its straps caught in its facing, its belts in its sides', () => {
    inOrder(jobs, 'turn neck strap', 'seam strap', 'seam front edge', 'understitch front facing');
    inOrder(jobs, 'turn half belt', 'seam belt', 'seam side');
  });

  test('has an elastic along its back alone, whose ends are sewn fast; a waist all of a kind has it joined', () => {
    expect(text('elastic back elastic')).toBe(
      'Thread the back elastic, 280 mm long, into the top of the bodice back and sew both its ends fast.',
    );
    const { pattern } = foundPattern('own-halter-dress');
    const along = { piece: 'skirt front', edge: 'hem', reversed: false };
    const round = { ...pattern, fastenings: [{ name: 'hem elastic', kind: 'elastic' as const, along }] };
    const said = runOf(round).order.find(j => j.job === 'elastic hem elastic')!;
    expect(wordsOf(english, 'mm').sentence(said.text)).toContain('and join its ends');
  });

  test('is gathered to its bodice as its figures say', () => {
    // Half the front waist of the bodice without its dart, by the draft's corners.
    const half = Math.hypot(70, 3) + Math.hypot(104, 2);
    const gathers = text('gather skirt front.waist');
    expect(gathers).toContain(`from 600 mm to ${(2 * half).toFixed(1)} mm`);
  });
});
