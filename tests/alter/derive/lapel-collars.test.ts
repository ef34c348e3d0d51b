import { orderOfWork, overTheHead } from '@paperhinge/alter';
import { cutLapel, draftShawlCollar } from '@paperhinge/alter/edges';
import { draftFrontFacing, draftNotchedCollar, refresh } from '@paperhinge/alter/made';
import {
  at,
  checkPattern,
  definePattern,
  definePiece,
  edgeNamed,
  edgeNames,
  edgePath,
  type Pattern,
  type Piece,
  type Point,
  pathLength,
  pieceNamed,
  polyline,
  validatePattern,
  walkSeam,
} from '@paperhinge/geometry';
import { nearestOnPath, pathEnd, pathStart, pointAlong } from '@paperhinge/geometry/paths';
import { foldEdgeOf, outlinePath } from '@paperhinge/geometry/pattern';
import { angleBetween, distance, dot, scale, subtract, unit } from '@paperhinge/geometry/plane';
import { signedArea } from '@paperhinge/geometry/regions';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { refusalOf, sentence } from '../../support/told.js';

const ref = (text: string) => ({ piece: text.split('.')[0]!, edge: text.split('.')[1]! });

/** Every point on the other side: the front drawn with its edge to the right. */
const overleaf = (turned: boolean, points: readonly Point[]): readonly Point[] =>
  turned ? points.map(({ x, y }) => at(-x, y)).toReversed() : points;

/** A boxy jacket: front edge 0, neck from (0, 120) to (80, 0), shoulder level; half the back neck 90 long, on the fold. */
const jacket = (turned = false): Pattern => {
  const ring = (edges: Parameters<typeof definePiece>[0]['outline']) => (turned ? edges.toReversed() : edges);
  const path = (...points: readonly Point[]) => polyline(...overleaf(turned, points));
  return definePattern({
    name: 'jacket',
    pieces: [
      definePiece({
        name: 'front',
        cutting: { count: 2, mirrored: true, fabric: 'main' },
        outline: ring([
          { name: 'neck', allowance: 10, path: path(at(0, 120), at(80, 0)) },
          { name: 'shoulder', allowance: 10, path: path(at(80, 0), at(200, 0)) },
          { name: 'side', allowance: 10, path: path(at(200, 0), at(260, 250), at(260, 700)) },
          { name: 'hem', kind: 'hem', allowance: 40, path: path(at(260, 700), at(0, 700)) },
          { name: 'front-edge', role: 'opening', allowance: 10, path: path(at(0, 700), at(0, 120)) },
        ]),
        lines: [
          {
            kind: 'grain',
            name: 'grain',
            path: polyline(at(turned ? -120 : 120, 600), at(turned ? -120 : 120, 300)),
          },
        ],
      }),
      definePiece({
        name: 'back',
        outline: [
          { name: 'neck', allowance: 10, path: polyline(at(0, 1000), at(90, 1000)) },
          { name: 'shoulder', allowance: 10, path: polyline(at(90, 1000), at(210, 1000)) },
          { name: 'side', allowance: 10, path: polyline(at(210, 1000), at(260, 1250), at(260, 1700)) },
          { name: 'hem', kind: 'hem', allowance: 40, path: polyline(at(260, 1700), at(0, 1700)) },
          { name: 'centre-back', kind: 'fold', path: polyline(at(0, 1700), at(0, 1000)) },
        ],
        lines: [{ kind: 'grain', name: 'grain', path: polyline(at(120, 1600), at(120, 1300)) }],
      }),
    ],
    seams: [
      {
        name: 'shoulder',
        a: [{ piece: 'front', edge: 'shoulder', reversed: turned }],
        b: [{ piece: 'back', edge: 'shoulder', reversed: false }],
        ease: { mm: 0 },
      },
    ],
  });
};
const onFront = { piece: 'front', neck: 'neck', edge: 'front-edge' } as const;
const lapel = { ...onFront, break: { mm: 180, from: 'neck' } } as const;
const shawl = { ...lapel, name: 'shawl collar', along: [ref('back.neck')] };
const faced = {
  name: 'front facing',
  along: ['front-edge', 'lapel', 'lapel-top', 'neck'].map(edge => ref(`front.${edge}`)),
  rolling: [ref('front.lapel'), ref('front.lapel-top')],
};
const collar = { name: 'collar', along: [ref('back.neck'), ref('front.neck')] };

const pathOn = (pattern: Pattern, text: string) =>
  edgePath(pieceNamed(pattern, ref(text).piece), ref(text).edge);
const lengthOf = (pattern: Pattern, text: string): number => pathLength(pathOn(pattern, text));
const walked = (pattern: Pattern, name: string) =>
  walkSeam(pattern, pattern.seams.find(s => s.name === name)!);
const areaOf = (piece: Piece): number => signedArea(outlinePath(piece.outline));
const near = (point: Point, x: number, y: number) => expect(distance(point, at(x, y))).toBeLessThan(1e-6);

describe('a lapel', () => {
  // Hand sum. Stand 30: the shoulder is run on by 25 to (55, 0). Break point (0, 300): the roll line runs (55, -300) / 305.
  // The point lies 61 down it and 91.5 out: (55 - 11 - 90, 60 - 16.5). The neck turns 61 below (80, 0): (69, 60).
  const measured = { ...lapel, stand: 30, width: 91.5, down: 61, gorge: 61, notch: 40 };
  test.each([false, true])('has its points where they are drawn on paper, front edge right: %s', turned => {
    const side = turned ? -1 : 1;
    const { pattern, findings } = cutLapel(jacket(turned), measured);
    validatePattern(pattern);
    expect(findings).toEqual([]);
    const front = pieceNamed(pattern, 'front');
    const ends = (edge: string) => {
      const path = edgePath(front, edge);
      return turned ? [pathEnd(path), pathStart(path)] : [pathStart(path), pathEnd(path)];
    };
    near(ends('lapel')[0]!, 0, 300);
    near(ends('lapel')[1]!, side * -46, 43.5);
    // From the point 40 towards the turn, (115, 16.5) away.
    const along = 40 / Math.hypot(115, 16.5);
    near(ends('lapel-top')[1]!, side * (-46 + 115 * along), 43.5 + 16.5 * along);
    near(ends('neck')[1]!, side * 80, 0);
    expect(lengthOf(pattern, 'front.neck')).toBeCloseTo(Math.hypot(115, 16.5) - 40 + 61, 6);
    expect(lengthOf(pattern, 'front.front-edge')).toBeCloseTo(400, 9);
    for (const edge of ['shoulder', 'side', 'hem'])
      expect(lengthOf(pattern, `front.${edge}`)).toBeCloseTo(lengthOf(jacket(), `front.${edge}`), 9);
    const roll = front.lines.find(l => l.name === 'roll line')!;
    near(pathStart(roll.path), 0, 300);
  });

  test('leaves the front edge without a kink', () => {
    const { pattern } = cutLapel(jacket(), lapel);
    const kinked = checkPattern(pattern).filter(f => f.code === 'edge-kinked');
    expect(kinked.filter(f => f.where.edge !== 'side')).toEqual([]);
  });

  const refused: readonly (readonly [
    string,
    Parameters<typeof cutLapel>[1],
    Parameters<typeof cutLapel>[1],
  ])[] = [
    ['front-edge-not-at-neck', { ...lapel, edge: 'hem', break: { mm: 60 } }, lapel],
    ['lapel-on-fold', { piece: 'back', neck: 'neck', edge: 'centre-back', break: { mm: 200 } }, lapel],
    [
      'break-at-neck',
      { ...lapel, break: { mm: 0, from: 'neck' } },
      { ...lapel, break: { mm: 150, from: 'neck' } },
    ],
    [
      'break-at-hem',
      { ...lapel, break: { mm: 0, from: 'hem' } },
      { ...lapel, break: { mm: 150, from: 'neck' } },
    ],
    ['break-at-shoulder-level', { ...lapel, stand: 4 }, { ...lapel, stand: 28 }],
    ['notch-beyond-gorge', { ...lapel, notch: 150 }, { ...lapel, notch: 60 }],
    ['lapel-crosses', { ...lapel, break: { mm: 60, from: 'neck' }, down: 400 }, { ...lapel, down: 120 }],
  ];
  test.each(refused)('%s is refused, and what is said mends it', (code, wrong, right) => {
    const error = refusalOf(() => cutLapel(jacket(), wrong));
    expect(error.code).toBe(code);
    expect(error.remedy).not.toBe('');
    expect(() => validatePattern(cutLapel(jacket(), right).pattern)).not.toThrow();
  });
});

describe('a notched collar', () => {
  // Property: its neck edge is the back neck and the front's; the upper collar is larger; all seams walk.
  test('is sewn to the whole neck, upper and under, and the walk proves it', () => {
    fc.assert(
      fc.property(
        fc.boolean(),
        fc.integer({ min: 120, max: 300 }),
        fc.integer({ min: 60, max: 100 }),
        fc.integer({ min: 0, max: 35 }),
        fc.integer({ min: 1, max: 4 }),
        (turned, mm, width, lay, turn) => {
          const cut = cutLapel(jacket(turned), { ...lapel, break: { mm, from: 'neck' } }).pattern;
          const { pattern, derived } = draftNotchedCollar(cut, { ...collar, width, lay, turn });
          validatePattern(pattern);
          expect(derived!.map(d => d.name)).toEqual(['under collar', 'collar']);
          const neck = 90 + lengthOf(cut, 'front.neck');
          for (const piece of ['collar', 'under collar']) {
            expect(lengthOf(pattern, `${piece}.neck`)).toBeCloseTo(neck, 6);
            expect(walked(pattern, piece).matches).toBe(true);
          }
          const edge = walked(pattern, 'collar edge');
          expect(edge.matches).toBe(true);
          expect(edge.aMm).toBeGreaterThan(edge.bMm);
          expect(lengthOf(pattern, 'under collar.centre-back')).toBeCloseTo(width, 9);
          expect(lengthOf(pattern, 'collar.centre-back')).toBeCloseTo(width + turn, 6);
        },
      ),
      { numRuns: 25 },
    );
  });

  // Closed form: the swing is a chord; square ends at the centre back; grain of the under-collar at 45° to it.
  test('lies with its back swung out by the chord, square at the centre back, the under-collar on the bias', () => {
    const cut = cutLapel(jacket(), lapel).pattern;
    const lines = (lay: number) => {
      const piece = pieceNamed(draftNotchedCollar(cut, { ...collar, lay }).pattern, 'under collar');
      const neck = edgePath(piece, 'neck'),
        back = edgePath(piece, 'centre-back');
      // The notch stays where it is: places are told from there.
      const end = pathEnd(neck);
      return {
        piece,
        nape: subtract(pathStart(neck), end),
        square: subtract(pathStart(back), pathEnd(back)),
      };
    };
    const [upright, swung] = [lines(0), lines(27)];
    expect(distance(upright.nape, swung.nape)).toBeCloseTo(27, 6);
    expect(Math.abs(angleBetween(upright.square, swung.square))).toBeCloseTo(2 * Math.asin(27 / 180), 9);
    const grain = swung.piece.lines.find(l => l.kind === 'grain')!.path;
    const way = unit(subtract(pathEnd(grain), pathStart(grain)));
    expect(Math.abs(dot(way, unit(swung.square)))).toBeCloseTo(Math.SQRT1_2, 9);
  });

  test('carries its notch at the shoulder, its cloth and its cut: the upper on the fold, the under as a pair, interfaced', () => {
    const { pattern } = draftNotchedCollar(cutLapel(jacket(), lapel).pattern, {
      ...collar,
      fabric: 'velvet',
    });
    const upper = pieceNamed(pattern, 'collar'),
      under = pieceNamed(pattern, 'under collar');
    expect(upper.notches).toEqual([{ edge: 'neck', at: 90, style: 'single', name: 'shoulder' }]);
    expect(foldEdgeOf(upper)?.name).toBe('centre-back');
    expect(upper.cutting).toEqual({ count: 1, mirrored: false, fabric: 'velvet' });
    expect(under.cutting).toEqual({ count: 2, mirrored: true, fabric: 'velvet' });
    expect(under.alsoCut).toEqual([{ count: 2, mirrored: true, fabric: 'interfacing' }]);
    expect([upper.role, under.role]).toEqual(['collar', 'collar']);
    expect(edgeNamed(under, 'neck').allowance).toBe(10);
  });

  test('is sewn together round its edge before it is sewn on, and before the facing covers it', () => {
    const cut = cutLapel(jacket(), lapel).pattern;
    const drafted = draftNotchedCollar(cut, collar);
    const done = draftFrontFacing(drafted.pattern, faced);
    const { order, findings } = orderOfWork(done.pattern, [...drafted.derived!, ...done.derived!], []);
    expect(findings).toEqual([]);
    const jobs = order.map(o => o.job);
    const follow = ['fuse under collar', 'seam collar edge', 'seam collar', 'facing front facing'].map(j =>
      jobs.indexOf(j),
    );
    expect(follow, jobs.join(', ')).not.toContain(-1);
    expect(follow, jobs.join(', ')).toEqual([...follow].sort((a, b) => a - b));
    for (const { text } of order) expect(sentence(text)).not.toMatch(/[a-z]\.[a-z]|undefined/);
  });

  test('is drafted again with the lapel and the back neck as they are', () => {
    const cut = cutLapel(jacket(), lapel).pattern;
    const done = draftFrontFacing(draftNotchedCollar(cut, collar).pattern, faced).pattern;
    const back = pieceNamed(done, 'back');
    const wider = {
      ...done,
      pieces: done.pieces.map(p =>
        p === back
          ? {
              ...back,
              outline: {
                parts: back.outline.parts.map(part =>
                  part.name === 'neck' && part.type === 'edge'
                    ? { ...part, path: polyline(at(0, 1000), at(45, 1020), at(90, 1000)) }
                    : part,
                ),
              },
            }
          : p,
      ),
    };
    const again = refresh(wider).pattern;
    validatePattern(again);
    const neck = 2 * Math.hypot(45, 20) + lengthOf(cut, 'front.neck');
    expect(lengthOf(again, 'collar.neck')).toBeCloseTo(neck, 6);
    expect(walked(again, 'collar').matches).toBe(true);
    expect(again.seams.map(s => s.name).toSorted()).toEqual(done.seams.map(s => s.name).toSorted());
  });

  test('needs a roll line, and the back neck', () => {
    const bare = refusalOf(() => draftNotchedCollar(jacket(), collar));
    expect(bare).toMatchObject({ code: 'no-roll-line', remedy: expect.stringContaining('cut lapel') });
    const cut = cutLapel(jacket(), lapel).pattern;
    for (const [along, code] of [
      [[ref('front.neck')], 'edges-not-halved'],
      [[ref('back.neck')], 'gorge-not-last'],
    ] as const) {
      const error = refusalOf(() => draftNotchedCollar(cut, { ...collar, along }));
      expect(error.code).toBe(code);
      expect(error.remedy).not.toBe('');
    }
    expect(draftNotchedCollar(cut, collar).derived).toHaveLength(2);
  });
});

describe('a shawl collar', () => {
  // Property: sewn to half the back neck, as deep as asked at the centre back and square there.
  test('is cut in one with the front, seamed at the centre back, and its seams walk', () => {
    fc.assert(
      fc.property(
        fc.boolean(),
        fc.integer({ min: 120, max: 320 }),
        fc.integer({ min: 60, max: 100 }),
        fc.integer({ min: 0, max: 40 }),
        (turned, mm, width, lay) => {
          const before = jacket(turned);
          const { pattern } = draftShawlCollar(before, { ...shawl, break: { mm, from: 'neck' }, width, lay });
          validatePattern(pattern);
          expect(edgeNames(pieceNamed(pattern, 'front')).toSorted()).toEqual(
            [
              'collar-centre-back',
              'collar-neck',
              'front-edge',
              'hem',
              'lapel',
              'shoulder',
              'side',
            ].toSorted(),
          );
          expect(lengthOf(pattern, 'front.collar-neck')).toBeCloseTo(90, 9);
          expect(lengthOf(pattern, 'front.collar-centre-back')).toBeCloseTo(width, 9);
          for (const seam of ['shawl collar', 'shawl collar centre back'])
            expect(walked(pattern, seam).matches).toBe(true);
          for (const edge of ['shoulder', 'side', 'hem'])
            expect(lengthOf(pattern, `front.${edge}`)).toBeCloseTo(lengthOf(before, `front.${edge}`), 9);
        },
      ),
      { numRuns: 25 },
    );
  });

  // Hand sum: parallel to the roll line, (55, -300) / 305, from (80, 0): 90 further up without a lay.
  test('runs beside the roll line without a lay, and is swung away from it by the chord', () => {
    const nape = (lay: number) =>
      pathStart(
        pathOn(draftShawlCollar(jacket(), { ...shawl, stand: 30, lay }).pattern, 'front.collar-neck'),
      );
    near(nape(0), 80 + (90 * 55) / 305, (-90 * 300) / 305);
    expect(distance(nape(0), nape(24))).toBeCloseTo(24, 9);
    expect(nape(24).x).toBeGreaterThan(nape(0).x);
  });

  test('has its widest place where it was asked', () => {
    const { pattern } = draftShawlCollar(jacket(), { ...shawl, stand: 30, lapel: 80 });
    const up = scale({ x: 55, y: -300 }, 1 / 305);
    const place = at(0.6 * 55 - 80 * -up.y, 300 - 0.6 * 300 - 80 * up.x);
    expect(nearestOnPath(pathOn(pattern, 'front.lapel'), place).distance).toBeLessThan(0.01);
  });

  test('takes its upper side from the front facing, closed at the centre back as the front is', () => {
    const cut = draftShawlCollar(jacket(), shawl).pattern;
    const wish = {
      name: 'upper shawl',
      along: ['front-edge', 'lapel', 'collar-centre-back', 'collar-neck'].map(edge => ref(`front.${edge}`)),
      rolling: [ref('front.lapel')],
      turn: 3,
    };
    const { pattern } = draftFrontFacing(cut, wish);
    validatePattern(pattern);
    expect(walked(pattern, 'upper shawl').matches).toBe(true);
    expect(walked(pattern, 'upper shawl').aMm).toBeGreaterThan(walked(pattern, 'upper shawl').bMm);
    expect(walked(pattern, 'upper shawl join').matches).toBe(true);
    expect(lengthOf(pattern, 'upper shawl.collar-centre-back')).toBeCloseTo(78, 6);
    expect(lengthOf(pattern, 'upper shawl.front-edge')).toBeCloseTo(lengthOf(cut, 'front.front-edge'), 9);
  });

  test('that a back neck is left out of, or a fold, is refused with what mends it', () => {
    const error = refusalOf(() => draftShawlCollar(jacket(), { ...shawl, along: [ref('back.hem')] }));
    expect(['edges-do-not-join', 'neck-not-whole', 'edges-not-halved']).toContain(error.code);
    expect(error.remedy).not.toBe('');
    const fold = refusalOf(() =>
      draftShawlCollar(jacket(), {
        ...shawl,
        piece: 'back',
        edge: 'centre-back',
        along: [ref('front.neck')],
        break: { mm: 200 },
      }),
    );
    expect(fold).toMatchObject({
      code: 'lapel-on-fold',
      remedy: expect.stringContaining('add button stand'),
    });
  });
});

describe('a front facing', () => {
  // Hand sum: flush with the front but where the lapel rolls: there 2 outside it, nothing at break point and notch.
  test('is the front along its edge, larger where the lapel rolls', () => {
    const cut = cutLapel(jacket(), lapel).pattern;
    const { pattern } = draftFrontFacing(cut, faced);
    validatePattern(pattern);
    for (const edge of ['front-edge', 'neck'])
      expect(lengthOf(pattern, `front facing.${edge}`)).toBeCloseTo(lengthOf(cut, `front.${edge}`), 6);
    expect(lengthOf(pattern, 'front facing.hem')).toBeCloseTo(70, 9);
    expect(lengthOf(pattern, 'front facing.shoulder')).toBeCloseTo(45, 9);
    const [own, of] = [pathOn(pattern, 'front facing.lapel'), pathOn(cut, 'front.lapel')];
    const shift = subtract(pathStart(pathOn(pattern, 'front facing.front-edge')), at(0, 700));
    const middle = subtract(pointAlong(own, 0.7 * pathLength(own)), shift);
    expect(nearestOnPath(of, middle).distance).toBeCloseTo(2, 2);
    expect(walked(pattern, 'front facing').matches).toBe(true);
    expect(pieceNamed(pattern, 'front facing')).toMatchObject({
      role: 'facing',
      cutting: { count: 2, mirrored: true },
    });
  });

  // Property: with nothing that rolls it is a part of the front itself.
  test('that nothing rolls on lies within the front', () => {
    fc.assert(
      fc.property(
        fc.boolean(),
        fc.integer({ min: 40, max: 120 }),
        fc.integer({ min: 20, max: 80 }),
        (turned, width, shoulder) => {
          const before = jacket(turned);
          const along = ['front-edge', 'neck'].map(edge => ref(`front.${edge}`));
          const { pattern } = draftFrontFacing(before, { name: 'facing', along, width, shoulder });
          validatePattern(pattern);
          expect(walked(pattern, 'facing')).toMatchObject({ matches: true, easeWantedMm: 0 });
          expect(areaOf(pieceNamed(pattern, 'facing'))).toBeLessThan(areaOf(pieceNamed(before, 'front')));
        },
      ),
      { numRuns: 15 },
    );
  });

  test('is refused with what mends it', () => {
    const cut = cutLapel(jacket(), lapel).pattern;
    const refused = (change: object) => refusalOf(() => draftFrontFacing(cut, { ...faced, ...change }));
    expect(refused({ along: [ref('front.front-edge')], rolling: undefined })).toMatchObject({
      code: 'no-shoulder-beside',
      remedy: expect.stringContaining('shoulder'),
    });
    expect(refused({ width: 400 }).code).toBe('facing-end-too-wide');
    expect(refused({ rolling: [ref('front.side')] })).toMatchObject({
      code: 'rolling-not-along',
      remedy: expect.stringContaining('rolling'),
    });
    expect(refused({ along: [ref('front.front-edge'), ref('front.neck')], rolling: undefined }).code).toBe(
      'edges-not-in-one-run',
    );
    expect(refused({ along: [ref('front.front-edge'), ref('back.neck')], rolling: undefined }).code).toBe(
      'edges-not-in-one-run',
    );
    expect(draftFrontFacing(cut, { ...faced, width: 120 }).derived).toHaveLength(1);
  });
});

// The front edge that opens no longer touches the neck: a lapel, or the collar's centre back, lies between.
test.each([
  ['a lapel', (pattern: Pattern) => cutLapel(pattern, lapel).pattern],
  ['a shawl collar', (pattern: Pattern) => draftShawlCollar(pattern, shawl).pattern],
])('a front with %s still opens to let the head through', (_, done) => {
  const along = { ...ref('front.front-edge'), reversed: true };
  const buttoned: Pattern = {
    ...jacket(),
    fastenings: [{ name: 'front', kind: 'buttons', along, count: 3 }],
  };
  const pattern = done(buttoned);
  const findings = overTheHead({ pattern, derived: [], wearer: { 'head girth': 570 } });
  expect(findings.map(f => f.code)).toContain('head-passes');
  const slit = findings.find(f => f.code === 'head-passes')!.figures!.slitMm;
  const free = edgeNames(pieceNamed(pattern, 'front')).filter(
    edge => edge === 'front-edge' || edge.startsWith('lapel'),
  );
  expect(slit).toBeCloseTo(
    free.reduce((sum, edge) => sum + lengthOf(pattern, `front.${edge}`), 0),
    6,
  );
});
