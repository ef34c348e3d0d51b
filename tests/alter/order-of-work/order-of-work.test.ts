import { type Derived, type MakingNote, orderOfWork } from '@paperhinge/alter';
import type { Pattern } from '@paperhinge/geometry';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sorted } from '../../../packages/alter/src/order-of-work/sort.js';
import { dart, level, patternOf, pieceOf, rectangle, seam, side } from '../../support/polygon-piece.js';
import { shiftPattern } from '../../support/shift.js';
import { sentence, toldFinding } from '../../support/told.js';

const jersey = (pattern: Pattern): Pattern => ({
  ...pattern,
  fabrics: [{ name: 'main', role: 'main', stretch: { across: 40 } }],
});
const orderOf = (pattern: Pattern, derived: readonly Derived[] = [], notes: readonly MakingNote[] = []) =>
  orderOfWork(pattern, derived, notes).order.map(o => o.job);
const worded = (pattern: Pattern, derived: readonly Derived[] = [], notes: readonly MakingNote[] = []) =>
  orderOfWork(pattern, derived, notes).order.map(({ job, text, because }) => ({
    job,
    text: sentence(text),
    because: because.map(b => sentence(b)),
  }));
const made = (
  kind: Derived['kind'],
  name: string,
  along: string,
  figures: Record<string, number> = {},
): Derived => ({
  name,
  kind,
  lengthMm: 480,
  widthMm: 56,
  fabric: 'main',
  along: along.split(' ').map(ref => ({ piece: ref.split('.')[0]!, edge: ref.split('.')[1]! })),
  edgeMm: 600,
  figures,
});

// trade-notes §10, common practice, no source.
test('a woven shift is sewn darts, shoulders, sides, sleeves in the round, neck, hems', () => {
  expect(orderOf(shiftPattern())).toEqual([
    'dart bust',
    'seam shoulder',
    'seam side',
    'seam underarm',
    'seam armhole',
    'seam neck',
    'hem front.hem + back.hem',
    'hem sleeve.hem',
  ]);
});

test('in knits the sleeve goes in flat, and side and underarm are one pass', () => {
  const order = worded(jersey(shiftPattern()));
  const jobs = order.map(o => o.job);
  expect(jobs.indexOf('seam armhole')).toBeLessThan(jobs.indexOf('seam side'));
  expect(jobs.indexOf('seam armhole')).toBeLessThan(jobs.indexOf('seam underarm'));
  const sideSeam = order.find(o => o.job === 'seam side')!;
  expect(sideSeam.text).toBe(
    'Sew the front side upper and the front side lower to the back side, in one pass with the underarm seam.',
  );
  expect(sideSeam.because).toContain(
    'after the armhole seam: in knits the sleeve goes in flat, and side and underarm are closed in one pass after it',
  );
});

test('a shirt is sewn flat though its cloth is woven; a shift is no shirt', () => {
  const pattern = shiftPattern();
  const [front, ...others] = pattern.pieces;
  const buttoned = { ...front!, marks: [{ kind: 'button', name: 'button 1', at: { x: 5, y: 300 } }] };
  const collar = rectangle('collar', 200, 40);
  const shirt = orderOf({ ...pattern, pieces: [buttoned, ...others, collar] });
  expect(shirt.indexOf('seam armhole')).toBeLessThan(shirt.indexOf('seam side'));
});

test('every line has its reason', () => {
  const order = worded(shiftPattern(), [made('stay', 'neck stay', 'front.neck')]);
  for (const line of order) {
    expect(line.because.length, line.job).toBeGreaterThan(0);
    expect(line.text, line.job).toMatch(/\.$/);
  }
  expect(order.find(o => o.job === 'seam neck')!.because).toEqual([
    'after the neck stay: it keeps the neck of the front from growing, so it is there before anything is sewn to that edge',
    'after the shoulder seam: it crosses the front neck and the back neck',
  ]);
});

test('a hem waits for the seams that cross it though its partner is faced', () => {
  const facing = made('facing', 'hem facing', 'front.hem');
  const order = worded(shiftPattern(), [facing]);
  const because = (job: string) => order.find(o => o.job === job)!.because;
  expect(because('hem back.hem')).toEqual(['after the side seam: it crosses the front hem and the back hem']);
  expect(because('facing hem facing')).toEqual([
    'after the side seam: it crosses the front hem and the back hem',
  ]);
});

test('a hem waits for the seams that cross it', () => {
  const order = worded(shiftPattern());
  expect(order.find(o => o.job === 'hem sleeve.hem')!.because).toEqual([
    'after the underarm seam: it crosses the sleeve hem',
  ]);
});

test('a band over a gap is turned, then joined into a ring, then sewn on after all that crosses its edge', () => {
  const pattern = shiftPattern();
  const band = made('band', 'collar', 'front.neck back.neck', { joinMm: 7, gapMm: 90 });
  const jobs = orderOf(pattern, [band]);
  expect(jobs.filter(j => j.endsWith('collar'))).toEqual(['turn collar', 'ring collar', 'band collar']);
  expect(jobs.indexOf('seam shoulder')).toBeLessThan(jobs.indexOf('band collar'));
});

test('a drafted band takes over the seam that it is sewn by', () => {
  const band = made('band', 'neckband', 'front.neck back.neck', { joinMm: 7, gapMm: 0 });
  const jobs = orderOf(shiftPattern(), [band]);
  expect(jobs).not.toContain('seam neck');
  expect(jobs.filter(j => j.endsWith('neckband'))).toEqual(['ring neckband', 'band neckband']);
});

test('an inset is finished before the band round it, after its stay', () => {
  const front = pieceOf('front', [
    side('inset', [
      [0, 80],
      [40, 0],
    ]),
    side('neck', [
      [40, 0],
      [100, -40],
    ]),
    side('rest', [
      [100, -40],
      [100, 300],
      [0, 300],
    ]),
    side(
      'centre',
      [
        [0, 300],
        [0, 80],
      ],
      { kind: 'fold' },
    ),
  ]);
  const derived = [
    made('band', 'neckband', 'front.neck', { joinMm: 7, gapMm: 80 }),
    made('stay', 'inset stay', 'front.inset'),
  ];
  expect(orderOf(patternOf([front]), derived)).toEqual([
    'stay inset stay',
    'inset front.inset',
    'turn neckband',
    'ring neckband',
    'band neckband',
  ]);
});

test('darts of one name in two pieces are two jobs, and a note may speak of both', () => {
  const darted = (name: string) =>
    pieceOf(name, [
      side('waist', [
        [0, 0],
        [40, 0],
      ]),
      dart('waist dart', [40, 0], [50, 100], [60, 0]),
      side('waist', [
        [60, 0],
        [200, 0],
      ]),
      side('side', [
        [200, 0],
        [200, 300],
      ]),
      side('rest', [
        [200, 300],
        [0, 300],
        [0, 0],
      ]),
    ]);
  const pattern = patternOf([darted('front'), darted('back')], [seam('side', ['front.side'], ['back.side'])]);
  const notes = [
    {
      job: 'pockets',
      text: 'Sew on the pockets.',
      after: [{ job: 'dart waist dart', because: 'they lie over it' }],
    },
  ];
  const order = worded(pattern, [], notes);
  expect(order.map(o => o.job)).toEqual([
    'dart front.waist dart',
    'dart back.waist dart',
    'seam side',
    'pockets',
  ]);
  expect(order[3]!.because).toEqual([
    'after the waist dart of the front and the waist dart of the back: they lie over it',
  ]);
});

test('a note gives its job its own words', () => {
  const { order } = orderOfWork(
    shiftPattern(),
    [],
    [{ job: 'seam shoulder', text: 'Sew the shoulders over a tape.', after: [] }],
  );
  expect(order.find(o => o.job === 'seam shoulder')!.text).toBe('Sew the shoulders over a tape.');
});

test('a flared hem hangs for a day', () => {
  const flared = pieceOf(
    'skirt',
    [
      side('waist', [
        [0, 0],
        [200, 0],
      ]),
      side('side', [
        [200, 0],
        [400, 600],
      ]),
      side(
        'hem',
        [
          [400, 600],
          [0, 600],
        ],
        { kind: 'hem' },
      ),
      side(
        'centre',
        [
          [0, 600],
          [0, 0],
        ],
        { kind: 'fold' },
      ),
    ],
    { lines: [level('waist', [0, 10], [200, 10])] },
  );
  expect(orderOf(patternOf([flared]))).toEqual(['hang skirt.hem', 'hem skirt.hem']);
});

test('buttonholes come before buttons', () => {
  const front = rectangle('front', 100, 300, {
    marks: [
      { kind: 'button', name: 'b', at: { x: 5, y: 5 } },
      { kind: 'buttonhole', name: 'h', at: { x: 9, y: 5 } },
    ],
  });
  expect(orderOf(patternOf([front]))).toEqual(['buttonholes', 'buttons']);
});

test('jobs that trap each other are a fault that names them', () => {
  const notes = [
    { job: 'pocket', text: 'Sew the pocket.', after: [{ job: 'lining', because: 'it is caught in it' }] },
    { job: 'lining', text: 'Sew the lining.', after: [{ job: 'flap', because: 'it covers it' }] },
    { job: 'flap', text: 'Sew the flap.', after: [{ job: 'pocket', because: 'it closes it' }] },
  ];
  const { order, findings } = orderOfWork(shiftPattern(), [], notes);
  expect(order.map(o => o.job)).toEqual(expect.arrayContaining(['pocket', 'lining', 'flap']));
  expect(findings).toHaveLength(1);
  expect(findings[0]).toMatchObject({ severity: 'fault', code: 'order-trapped' });
  expect(toldFinding(findings[0]!).message).toContain('flap, lining, pocket');
});

test('any order that can be kept is kept, and free jobs keep their places', () => {
  const jobs = fc.array(fc.nat({ max: 11 }), { minLength: 12, maxLength: 12 }).map(after =>
    // Each job may wait for one listed anywhere, as long as its number is smaller: no cycles.
    [7, 2, 9, 0, 11, 4, 1, 10, 3, 6, 8, 5].map(n => ({
      job: `${n}`,
      after: after[n]! < n ? [`${after[n]}`] : [],
    })),
  );
  fc.assert(
    fc.property(jobs, list => {
      const { order, trapped } = sorted(list);
      expect(trapped).toEqual([]);
      const at = (name: string) => order.findIndex(j => j.job === name);
      for (const { job, after } of list) for (const a of after) expect(at(a)).toBeLessThan(at(job));
      const free = list.every(j => j.after.length === 0);
      if (free) expect(order).toEqual(list);
      expect(sorted(order).order).toEqual(order);
    }),
  );
});
