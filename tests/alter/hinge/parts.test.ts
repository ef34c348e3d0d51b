import { type Cut, cutApart, dartMouth, holdingSection, type Opening, swing } from '@paperhinge/alter/hinge';
import {
  at,
  type Edge,
  edgePath,
  line,
  type Path,
  type Piece,
  type PieceLine,
  pathLength,
  pathOf,
  polyline,
} from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { dartsOf, pleatsOf } from '@paperhinge/geometry/pattern';
import { identity, rotation, translation } from '@paperhinge/geometry/plane';
import { describe, expect, test } from 'vitest';
import { bridged } from '../../../packages/alter/src/hinge/bridged.js';
import { carry, same } from '../../../packages/alter/src/hinge/carry.js';
import { grainCrossing } from '../../../packages/alter/src/hinge/grain-crossing.js';
import { linePartsOf } from '../../../packages/alter/src/hinge/line-parts.js';
import { openingFindings } from '../../../packages/alter/src/hinge/opening-findings.js';
import { overlapTrim } from '../../../packages/alter/src/hinge/overlap.js';
import { ringOf } from '../../../packages/alter/src/hinge/ring.js';
import { dart, edge, expectClosed, pieceOf, refusal } from './pieces.js';

const path = (...points: readonly (readonly [number, number])[]): Path =>
  polyline(...points.map(([x, y]) => at(x, y)));
const drawn = (kind: PieceLine['kind'], name: string, ...points: readonly (readonly [number, number])[]) => ({
  kind,
  name,
  path: path(...points),
});
/** 200 wide, 300 high; `centre` a seam, so that nothing but what a test draws says what holds. */
const panel = (rest: Partial<Piece> = {}, centre: 'fold' | 'seam' = 'seam', name = 'left'): Piece =>
  pieceOf(
    [
      edge('top', 'seam', line(at(0, 0), at(200, 0))),
      edge('right', 'seam', line(at(200, 0), at(200, 300))),
      edge('hem', 'hem', line(at(200, 300), at(0, 300))),
      edge(name, centre, line(at(0, 300), at(0, 0))),
    ],
    { lines: [], ...rest },
  );
/** Straight down at x, from top to hem. */
const down = (x: number): Cut => ({ from: { edge: 'top', along: x }, to: { edge: 'hem', along: 200 - x } });
const across = (y: number): Cut => ({
  from: { edge: 'right', along: y },
  to: { edge: 'left', along: 300 - y },
});
/** The index of the section with a place on its border. */
const withTop = (x: number, piece = panel()) => {
  const cut = cutApart(piece, [down(100)]);
  return { cut, left: cut.beside[0]!.right, right: cut.beside[0]!.left, x };
};

describe('where two sides overlap', () => {
  const inward = at(0, -1);
  test('along one another each loses half', () => {
    expect(overlapTrim(path([0, 0], [100, 0]), path([80, 0], [200, 0]), inward)).toEqual({
      before: 10,
      after: 10,
    });
  });
  test('crossing, both are cut at the crossing that costs least', () => {
    const before = path([0, 0], [100, 0]);
    const trim = overlapTrim(before, path([80, -30], [80, 20], [90, 20], [90, -40]), inward)!;
    expect([trim.before, trim.after]).toEqual([expect.closeTo(20, 9), expect.closeTo(30, 9)]);
  });
  test('touching at one end only is a crossing, not a lying along', () => {
    const trim = overlapTrim(path([0, 0], [100, 0]), path([60, 0], [60, 50]), inward)!;
    expect([trim.before, trim.after]).toEqual([expect.closeTo(40, 9), expect.closeTo(0, 9)]);
  });
  test('that do not cross, each is cut on the middle line', () => {
    const trim = overlapTrim(path([0, 0], [100, 0]), path([80, 5], [200, 5]), inward)!;
    expect([trim.before, trim.after]).toEqual([expect.closeTo(10, 9), expect.closeTo(10, 9)]);
  });
  test('where only one of the two ends lies on the other side it is no lying along', () => {
    // The end of the first lies on the second, whose start hangs 5 mm above the first: they cross there.
    const trim = overlapTrim(path([0, 0], [100, 0]), path([80, -5], [100, 0], [200, 40]), inward)!;
    expect([trim.before, trim.after]).toEqual([expect.closeTo(0, 9), expect.closeTo(Math.hypot(20, 5), 9)]);
  });
  test('that even the middle line misses, nothing is cut', () => {
    expect(overlapTrim(path([0, 0], [100, 0]), path([80, 5], [80, 50]), at(0, -1))).toBeUndefined();
  });
});

describe('what holds', () => {
  const holds = (piece: Piece) => {
    const cut = cutApart(piece, [down(120)]);
    return holdingSection(cut) === cut.beside[0]!.right ? 'left' : 'right';
  };
  test('the larger part, where nothing is drawn', () => {
    expect(holds(panel())).toBe('left');
    expect(holds(panel({ lines: [drawn('style', 'yoke', [150, 10], [150, 290])] }))).toBe('left');
  });
  test('before that the part with the longer piece of the grain', () => {
    expect(holds(panel({ lines: [drawn('grain', 'grain', [110, 150], [190, 150])] }))).toBe('right');
    expect(holds(panel({ lines: [drawn('grain', 'grain', [60, 150], [160, 150])] }))).toBe('left');
  });
  test('before the grain the centre line, before that the centre edge, before all the fold', () => {
    const grain = drawn('grain', 'grain', [20, 50], [20, 250]);
    const centre = drawn('placement', 'centre front', [180, 20], [180, 280]);
    expect(holds(panel({ lines: [grain, centre] }))).toBe('right');
    expect(holds(panel({ lines: [centre] }, 'seam', 'centre-back'))).toBe('left');
    expect(holds(panel({ lines: [centre] }, 'fold'))).toBe('left');
  });
});

describe('openings', () => {
  const openings = (motion: ReturnType<typeof rotation>, cuts: readonly Cut[] = [down(100)]) => {
    const cut = cutApart(panel(), cuts);
    const right = cut.beside[0]!.left;
    const motions = cut.sections.map((_, i) => (i === right ? motion : identity));
    return swing(cut, motions, cut.beside[0]!.right);
  };
  const of = (list: readonly Opening[], end: 'from' | 'to') => list.find(o => o.end === end)!;
  test('bridged on both sides: as wide as the motion, without a turn', () => {
    const swung = openings(translation(at(30, 0)));
    for (const end of ['from', 'to'] as const)
      expect(of(swung.openings, end)).toMatchObject({
        cut: 0,
        edge: end === 'from' ? 'top' : 'hem',
        fate: 'bridged',
        openedMm: expect.closeTo(30, 9),
        bridgeMm: expect.closeTo(30, 9),
        turn: 0,
      });
    expect(openingFindings('block', swung).map(f => [f.code, f.where.edge, f.figures])).toEqual([
      ['edge-bridged', 'top', { openedMm: expect.closeTo(30, 9), kinkDeg: 0 }],
      ['edge-bridged', 'hem', { openedMm: expect.closeTo(30, 9), kinkDeg: 0 }],
    ]);
  });
  test('overlapped along one line: cut half way, no step', () => {
    const swung = openings(translation(at(-30, 0)));
    expect(of(swung.openings, 'from')).toMatchObject({ fate: 'overlapped', openedMm: -30, bridgeMm: 0 });
    expect(pathLength(edgePath(swung.piece, 'top'))).toBeCloseTo(170, 9);
    expect(openingFindings('block', swung)[0]!.figures).toEqual({ openedMm: -30, kinkDeg: 0, stepMm: 0 });
  });
  test('of several that overlap, the largest step is told with the sum', () => {
    const cut = cutApart(panel(), [down(60), down(120)]);
    const motions = cut.sections.map((_, i) =>
      i === cut.beside[1]!.left
        ? translation(at(-20, 6))
        : i === cut.beside[0]!.left
          ? translation(at(-10, 2))
          : identity,
    );
    const [top] = openingFindings('block', swing(cut, motions, cut.beside[0]!.right));
    expect(top!.code).toBe('edge-overlapped');
    expect(top!.figures!.stepMm).toBeCloseTo(4, 9);
    expect(top!.figures!.openedMm).toBeCloseTo(-Math.hypot(10, 2) - Math.hypot(10, 4), 9);
  });
  test('a strip of which nothing would be left is refused, one of which a hair is left is not', () => {
    const cut = cutApart(panel(), [down(100), down(120)]);
    const closing = (by: number) => () => {
      const motions = cut.sections.map((_, i) =>
        i === cut.beside[1]!.left
          ? translation(at(-2 * by, 0))
          : i === cut.beside[0]!.left
            ? translation(at(-by, 0))
            : identity,
      );
      return swing(cut, motions, cut.beside[0]!.right);
    };
    expect(closing(20)).toThrow(refusal('overlap-too-wide'));
    expect(closing(25)).toThrow(refusal('overlap-too-wide'));
    expect(pathLength(edgePath(closing(19.9)().piece, 'top'))).toBeCloseTo(200 - 2 * 19.9, 6);
  });
  test('a dart that closed with a step is told, as more than can be sewn away or less', () => {
    const swung = openings(identity);
    const told = (stepMm: number) =>
      openingFindings('block', { ...swung, closed: [{ dart: 'd', stepMm }] }).map(f => [
        f.severity,
        f.code,
        f.where,
        f.about,
        f.figures,
      ]);
    const dart = { dart: { piece: 'block', dart: 'd' } };
    expect(told(0.9)).toEqual([['warning', 'dart-step', { piece: 'block' }, dart, { stepMm: 0.9 }]]);
    expect(told(0.7)).toEqual([['note', 'dart-step', { piece: 'block' }, dart, { stepMm: 0.7 }]]);
    expect(told(0)).toEqual([]);
  });
  test('what became of lines is told with the openings, and lines and marks are carried', () => {
    const cut = cutApart(
      panel({
        lines: [drawn('level', 'waist', [20, 100], [180, 100])],
        marks: [{ kind: 'point', name: 'm', at: at(150, 50) }],
      }),
      [down(100)],
    );
    const motions = cut.sections.map((_, i) =>
      i === cut.beside[0]!.left ? translation(at(30, 0)) : identity,
    );
    const swung = swing(cut, motions, cut.beside[0]!.right);
    expect(openingFindings('block', swung).map(f => f.code)).toEqual([
      'edge-bridged',
      'edge-bridged',
      'lines-parted',
    ]);
    expect(swung.piece.marks.map(m => m.at)).toEqual([at(180, 50)]);
    expect(pathEnd(swung.piece.lines[0]!.path)).toEqual(at(210, 100));
  });
  test('turned about the middle of the slash: one end opens by the chord, the other is cut on the line half way', () => {
    // 150 mm from the place turned about, the two sides of the end that closes are mirror images in the line between.
    const turn = 0.1;
    for (const [sense, closing, opening] of [
      [-1, 'from', 'to'],
      [1, 'to', 'from'],
    ] as const) {
      const swung = openings(rotation(sense * turn, at(100, 150)));
      const chord = 300 * Math.sin(turn / 2);
      expect(of(swung.openings, opening)).toMatchObject({
        fate: 'bridged',
        openedMm: expect.closeTo(chord, 9),
      });
      expect(of(swung.openings, closing)).toMatchObject({
        fate: 'overlapped',
        openedMm: expect.closeTo(-chord, 9),
        bridgeMm: expect.closeTo(0, 9),
      });
      const edge = closing === 'from' ? 'top' : 'hem';
      expect(pathLength(edgePath(swung.piece, edge))).toBeCloseTo(200 - 300 * Math.tan(turn / 2), 9);
    }
  });
  test('overlapped with a step: cut on the middle line and bridged', () => {
    const swung = openings(translation(at(-30, 4)));
    expect(of(swung.openings, 'from')).toMatchObject({ fate: 'overlapped', bridgeMm: expect.closeTo(4, 9) });
    expect(openingFindings('block', swung)[0]!.figures!.stepMm).toBeCloseTo(4, 9);
  });
  test('hinged: welded at the hinge with a turn, opened by its chord at the other end', () => {
    const turn = 0.1;
    const swung = openings(rotation(-turn, at(100, 0)));
    expect(of(swung.openings, 'from')).toMatchObject({ fate: 'welded', openedMm: 0, bridgeMm: 0 });
    // The right half turns anticlockwise as seen: so does the outline where it comes to it from the left.
    expect(of(swung.openings, 'from').turn).toBeCloseTo(-turn, 12);
    expect(of(swung.openings, 'to')).toMatchObject({ fate: 'bridged' });
    expect(of(swung.openings, 'to').openedMm).toBeCloseTo(600 * Math.sin(turn / 2), 9);
    const [kink] = openingFindings('block', swung);
    expect([kink!.code, kink!.figures]).toEqual([
      'hinge-kink',
      { kinkDeg: expect.closeTo((turn * 180) / Math.PI, 9) },
    ]);
  });
  test('made into a dart: no kink is told, though its two sides turn; a dart that stays is left the same', () => {
    const piece = pieceOf(
      [
        edge('top', 'seam', line(at(0, 0), at(200, 0))),
        edge('right', 'seam', line(at(200, 0), at(200, 300))),
        edge('hem', 'hem', line(at(200, 300), at(60, 300))),
        dart('old', at(60, 300), at(50, 250), at(40, 300)),
        edge('hem', 'hem', line(at(40, 300), at(0, 300))),
        edge('left', 'fold', line(at(0, 300), at(0, 0))),
      ],
      { lines: [] },
    );
    const cut = cutApart(piece, [{ from: { edge: 'top', along: 100 }, to: { edge: 'hem', along: 100 } }]);
    const { left, right } = cut.beside[0]!;
    const motions = cut.sections.map((_, i) => (i === left ? rotation(0.1, at(100, 300)) : identity));
    const mouths = [dartMouth({ cut: 0, end: 'from', name: 'new', apex: at(105, 60) })];
    const swung = swing(cut, motions, right, { mouths });
    expect(openingFindings('block', swung).map(f => [f.code, f.where.edge])).toEqual([['hinge-kink', 'hem']]);
    expect(dartsOf(swung.piece).map(d => d.name)).toEqual(['new', 'old']);
    expect(dartsOf(swung.piece)[1]).toBe(dartsOf(piece)[0]);
  });
  test('of several slashes one finding, with their number and the sum', () => {
    const cut = cutApart(panel(), [down(60), down(120)]);
    const at60 = cut.beside[0]!.left,
      at120 = cut.beside[1]!.left;
    const motions = cut.sections.map((_, i) =>
      i === at120 ? translation(at(50, 0)) : i === at60 ? translation(at(20, 0)) : identity,
    );
    const found = openingFindings('block', swing(cut, motions, cut.beside[0]!.right));
    expect(found.map(f => [f.code, f.figures])).toEqual([
      ['edge-bridged', { openedMm: expect.closeTo(50, 9), kinkDeg: 0, count: 2 }],
      ['edge-bridged', { openedMm: expect.closeTo(50, 9), kinkDeg: 0, count: 2 }],
    ]);
  });
  test('a fold that a slash bent is told, one that was bent as drawn is not', () => {
    const fold = cutApart(panel({}, 'fold'), [across(100)]);
    const below =
      fold.beside[0]!.right === holdingSection(fold) ? fold.beside[0]!.left : fold.beside[0]!.right;
    const motions = fold.sections.map((_, i) => (i === below ? rotation(0.05, at(200, 100)) : identity));
    const bent = openingFindings('block', swing(fold, motions, 1 - below)).filter(
      f => f.code === 'fold-bent',
    );
    expect(bent.map(f => [f.severity, f.where.edge])).toEqual([['warning', 'left']]);
    expect(bent[0]!.figures!.offMm).toBeGreaterThan(3);
    const crooked = pieceOf(
      [
        edge('top', 'seam', line(at(0, 0), at(200, 0))),
        edge('right', 'seam', line(at(200, 0), at(200, 300))),
        edge('hem', 'hem', line(at(200, 300), at(0, 300))),
        edge('left', 'fold', line(at(0, 300), at(5, 150)), line(at(5, 150), at(0, 0))),
      ],
      { lines: [] },
    );
    const cut = cutApart(crooked, [down(100)]);
    const moved = cut.sections.map((_, i) => (i === cut.beside[0]!.left ? translation(at(20, 0)) : identity));
    const codes = openingFindings('block', swing(cut, moved, cut.beside[0]!.right)).map(f => f.code);
    expect(codes).not.toContain('fold-bent');
  });
});

describe('what lies on the paper', () => {
  const { cut, left, right } = withTop(100);
  const motions = cut.sections.map((_, i) => (i === right ? translation(at(30, 0)) : identity));
  const carried = (rest: Partial<Piece>) =>
    carry({ ...cut, piece: { ...cut.piece, ...rest } }, motions, left);
  const points = (line: PieceLine) => line.path.segments.flatMap(s => [...s]).map(p => [p.x, p.y]);
  test('a line that a slash crosses is joined straight across, and told once with all others', () => {
    const lines = [
      drawn('level', 'waist', [20, 100], [180, 100]),
      drawn('style', 'yoke', [20, 50], [60, 50]),
      drawn('level', 'hip', [20, 200], [180, 200]),
    ];
    const done = carried({ lines });
    expect(points(done.lines[0]!)).toEqual([
      [20, 100],
      [100, 100],
      [100, 100],
      [130, 100],
      [130, 100],
      [210, 100],
    ]);
    expect(points(done.lines[1]!)).toEqual([
      [20, 50],
      [60, 50],
    ]);
    expect(done.findings.map(f => [f.code, f.about])).toEqual([
      ['lines-parted', { lines: ['waist', 'hip'].map(name => ({ piece: 'block', line: name })) }],
    ]);
  });
  test('a line that hangs over the outline goes with its end', () => {
    const done = carried({ lines: [drawn('level', 'waist', [-20, 100], [220, 100])] });
    expect(points(done.lines[0]!)[0]).toEqual([-20, 100]);
    expect(points(done.lines[0]!).at(-1)).toEqual([250, 100]);
  });
  test('a line off the paper goes with the nearest part', () => {
    const done = carried({ lines: [drawn('style', 'note', [210, 50], [210, 80])] });
    expect(points(done.lines[0]!)).toEqual([
      [240, 50],
      [240, 80],
    ]);
    expect(done.findings).toEqual([]);
  });
  test('of a grain line the longest run on the cloth that stays is kept, and its length told', () => {
    const done = carried({ lines: [drawn('grain', 'grain', [40, 150], [180, 150])] });
    expect(points(done.lines[0]!)).toEqual([
      [40, 150],
      [100, 150],
    ]);
    expect(done.findings.map(f => [f.code, f.figures])).toEqual([
      ['grain-line-shortened', { keptMm: expect.closeTo(60, 9) }],
    ]);
    const moved = carried({ lines: [drawn('grain', 'grain', [150, 20], [150, 200])] });
    expect(points(moved.lines[0]!)).toEqual([
      [150, 20],
      [150, 200],
    ]);
    expect(moved.findings.map(f => [f.code, f.about])).toEqual([
      ['grain-line-stays', { line: { piece: 'block', line: 'grain' } }],
    ]);
    expect(carried({ lines: [drawn('grain', 'grain', [50, 20], [50, 200])] }).findings).toEqual([]);
  });
  test('marks go with the part they lie on, off the paper with the nearest, on the cut with what stays', () => {
    const marks = [
      [50, 50],
      [150, 50],
      [-10, 100],
      [215, 100],
      [100, 100],
    ].map(([x, y], i) => ({ kind: 'point', name: `m${i}`, at: at(x!, y!) }));
    expect(carried({ marks }).marks.map(m => m.at.x)).toEqual([50, 180, -10, 245, 100]);
  });
  test('a notch on the cut stays with what stays, whichever side that is', () => {
    const notches = [{ edge: 'hem', at: 100, style: 'single' as const }];
    for (const holding of [left, right]) {
      const moving = cut.sections.map((_, i) =>
        i === holding ? identity : translation(at(i === right ? 30 : -30, 0)),
      );
      const { piece } = swing({ ...cut, piece: { ...cut.piece, notches } }, moving, holding);
      // The hem runs from right to left: what is right of the slash comes first.
      expect(piece.notches.map(n => n.at)).toEqual([expect.closeTo(holding === right ? 100 : 130, 9)]);
    }
  });
});

describe('a line over three parts of the paper', () => {
  // Cut down at 60 and at 120; what lies between moves 20 mm, what lies beyond 50.
  const cut = cutApart(panel(), [down(60), down(120)]);
  const motions = cut.sections.map((_, i) =>
    i === cut.beside[1]!.left
      ? translation(at(50, 0))
      : i === cut.beside[0]!.left
        ? translation(at(20, 0))
        : identity,
  );
  const carried = (line: PieceLine, piece = cut.piece) =>
    carry({ ...cut, piece: { ...piece, lines: [line] } }, motions, cut.beside[0]!.right).lines[0]!;
  const xs = (line: PieceLine) =>
    line.path.segments.flatMap(s => [...s]).map(p => Math.round(p.x * 1e6) / 1e6);
  test('is parted at both slashes, and each end goes with the part it hangs from', () => {
    expect(xs(carried(drawn('level', 'waist', [-20, 100], [220, 100])))).toEqual([
      -20, 0, 0, 60, 60, 80, 80, 140, 140, 170, 170, 250, 250, 270,
    ]);
    expect(xs(carried(drawn('level', 'waist', [220, 100], [-20, 100])))).toEqual([
      270, 250, 250, 170, 170, 140, 140, 80, 80, 60, 60, 0, 0, -20,
    ]);
  });
  test('ends where it runs out and hangs over by so much, at whichever end', () => {
    expect(xs(carried(drawn('level', 'waist', [20, 100], [220, 100]))).at(-1)).toBe(270);
    expect(xs(carried(drawn('level', 'waist', [-20, 100], [180, 100]))).slice(0, 4)).toEqual([-20, 0, 0, 60]);
  });
  test('is joined in its own order where only the middle part moves', () => {
    const middle = cut.sections.map((_, i) =>
      i === cut.beside[0]!.left && i !== cut.beside[1]!.left ? translation(at(0, 15)) : identity,
    );
    const line = drawn('level', 'waist', [20, 100], [180, 100]);
    const done = carry({ ...cut, piece: { ...cut.piece, lines: [line] } }, middle, cut.beside[0]!.right)
      .lines[0]!;
    expect(done.path.segments.flatMap(s => [...s]).map(p => [p.x, p.y])).toEqual(
      [
        [20, 100, 60, 100],
        [60, 100, 60, 115],
        [60, 115, 120, 115],
        [120, 115, 120, 100],
        [120, 100, 180, 100],
      ].flatMap(([a, b, c, d]) => [
        [a, b],
        [c, d],
      ]),
    );
  });
  test('over a mouth in the outline it is joined straight from bank to bank, though both move alike', () => {
    // A dart from the top, its mouth from 140 to 180 mm: the line crosses it 20 mm down.
    const darted = pieceOf(
      [
        edge('top', 'seam', line(at(0, 0), at(140, 0))),
        dart('d', at(140, 0), at(160, 100), at(180, 0)),
        edge('top', 'seam', line(at(180, 0), at(200, 0))),
        edge('right', 'seam', line(at(200, 0), at(200, 300))),
        edge('hem', 'hem', line(at(200, 300), at(0, 300))),
        edge('left', 'seam', line(at(0, 300), at(0, 0))),
      ],
      { lines: [drawn('style', 'yoke', [20, 50], [195, 50])] },
    );
    const parted = cutApart(darted, [down(60)]);
    const moving = parted.sections.map((_, i) =>
      i === parted.beside[0]!.left ? translation(at(20, 0)) : identity,
    );
    const done = carry(parted, moving, parted.beside[0]!.right);
    // The dart's sides 50 mm down lie at 150 and 170.
    expect(xs(done.lines[0]!)).toEqual([20, 60, 60, 80, 80, 170, 170, 190, 190, 215]);
  });
});

test('of a grain line that leaves the cloth that stays and comes back the longer run is kept', () => {
  // A wedge cut out of the hem, its point at (100, 100): at y = 200 it is 20 mm wide.
  const wedge = cutApart(panel({}, 'fold'), [
    { from: { edge: 'hem', along: 80 }, to: { pivot: at(100, 100) } },
    { from: { edge: 'hem', along: 120 }, to: { pivot: at(100, 100) } },
  ]);
  const holding = holdingSection(wedge);
  const motions = wedge.sections.map((_, i) => (i === holding ? identity : translation(at(0, 20))));
  const grain = (from: number, to: number) => {
    const line = drawn('grain', 'grain', [from, 200], [to, 200]);
    const { lines, findings } = carry(
      { ...wedge, piece: { ...wedge.piece, lines: [line] } },
      motions,
      holding,
    );
    expect(findings.map(f => f.code)).toEqual(['grain-line-shortened']);
    return lines[0]!.path.segments.flatMap(s => [...s]).map(p => Math.round(p.x * 1e6) / 1e6);
  };
  expect(grain(20, 150)).toEqual([20, 90]);
  expect(grain(60, 190)).toEqual([110, 190]);
});

test('motions are the same only if all of them is', () => {
  const motion = { a: 1, b: 2, c: 3, d: 4, e: 5, f: 6 };
  expect(same(motion, { ...motion })).toBe(true);
  for (const key of ['a', 'b', 'c', 'd', 'e', 'f'] as const)
    expect(same(motion, { ...motion, [key]: 9 })).toBe(false);
});

test('two runs of a line that touch are joined as they are, else by a straight between', () => {
  const points = (line: Path) => line.segments.map(s => [...s].map(p => [p.x, p.y]));
  expect(points(bridged(path([0, 0], [10, 0]), path([10, 0], [10, 10])))).toEqual([
    [
      [0, 0],
      [10, 0],
    ],
    [
      [10, 0],
      [10, 10],
    ],
  ]);
  expect(points(bridged(path([0, 0], [10, 0]), path([12, 0], [12, 10])))[1]).toEqual([
    [10, 0],
    [12, 0],
  ]);
});

describe('the ring', () => {
  test('a cut a rounding before the end of an edge is at its end', () => {
    const ring = ringOf(panel(), [{ edge: 'top', along: 200 - 5e-7 }]);
    expect(ring.stretches.map(s => (s.type === 'edge' ? [s.edge.name, s.from, s.to] : s.type))).toEqual([
      ['top', 0, 200],
      ['right', 0, 300],
      ['hem', 0, 200],
      ['left', 0, 300],
    ]);
  });
  test('what no cut touches is the very path that was drawn', () => {
    const piece = panel();
    for (const [i, stretch] of ringOf(piece, []).stretches.entries())
      expect(stretch.path).toBe((piece.outline.parts[i] as Edge).path);
    const cut = cutApart(piece, [down(100)]);
    const grain = path([20, 20], [20, 280]);
    expect(linePartsOf(cut, grain)).toEqual([{ section: cut.beside[0]!.right, path: grain }]);
    expect(linePartsOf(cut, grain)[0]!.path).toBe(grain);
  });
  test('stretches are counted along the whole edge, over darts', () => {
    const piece = pieceOf([
      edge('top', 'seam', line(at(0, 0), at(80, 0))),
      dart('d', at(80, 0), at(100, 90), at(120, 0)),
      edge('top', 'seam', line(at(120, 0), at(200, 0))),
      edge(
        'rest',
        'seam',
        line(at(200, 0), at(200, 300)),
        line(at(200, 300), at(0, 300)),
        line(at(0, 300), at(0, 0)),
      ),
    ]);
    const ends = [
      { edge: 'top', along: 30 },
      { edge: 'top', along: 80 },
      { edge: 'top', along: 100 },
      { edge: 'top', along: 0 },
      { edge: 'rest', along: 0 },
    ];
    const ring = ringOf(piece, ends);
    expect(ring.stretches.map(s => (s.type === 'edge' ? [s.edge.name, s.from, s.to] : s.type))).toEqual([
      ['top', 0, 30],
      ['top', 30, 80],
      'leg',
      'leg',
      ['top', 80, 100],
      ['top', 100, 160],
      ['rest', 0, 800],
    ]);
    // At 80 the dart's first mouth end is meant; at 0 the gap after the last stretch.
    expect(ends.map(end => ring.gapOf.get(end))).toEqual([0, 1, 4, 6, 5]);
  });
  test('what a drawing leaves open by less than a joining gap is welded to the last bit', () => {
    const gap = 0.02;
    const mouth = pathOf(line(at(80 + gap, 0), at(120 - gap, 0)));
    const pleat = {
      type: 'pleat' as const,
      name: 'p',
      kind: 'box' as const,
      mouth,
      towards: 'start' as const,
      stitched: 0,
    };
    const piece = pieceOf(
      [
        edge('top', 'seam', line(at(0, 0), at(80, 0))),
        pleat,
        edge('top', 'seam', line(at(120, 0), at(200, 0))),
        edge('right', 'seam', line(at(200, gap), at(200, 150))),
        dart('d', at(200, 150 + gap), at(150, 160), at(200, 170)),
        edge('right', 'seam', line(at(200, 170 + gap), at(200, 300))),
        edge('hem', 'hem', line(at(200, 300), at(0, 300))),
        edge('left', 'fold', line(at(0, 300 - gap), at(0, gap))),
      ],
      { lines: [] },
    );
    const cut = cutApart(piece, [{ from: { edge: 'top', along: 40 }, to: { edge: 'hem', along: 160 } }]);
    for (const holding of [0, 1]) {
      const motions = cut.sections.map((_, i) =>
        i === holding ? identity : translation(at(i === 1 ? 20 : -20, 0)),
      );
      const done = swing(cut, motions, holding).piece;
      expectClosed(done);
      expect(dartsOf(done)[0]!.name).toBe('d');
      expect(pleatsOf(done)).toMatchObject([{ ...pleat, mouth: expect.anything() }]);
    }
  });
});

describe('along the grain from a point', () => {
  const grained = panel({ lines: [drawn('grain', 'grain', [50, 20], [50, 200])] });
  test('the edge is met at its first place, up or down, not at the point itself', () => {
    expect(grainCrossing(grained, at(60, 100), 'hem')).toBeCloseTo(140, 9);
    expect(grainCrossing(grained, at(60, 100), 'top')).toBeCloseTo(60, 9);
    expect(grainCrossing(grained, at(60, 300), 'hem')).toBeUndefined();
    expect(grainCrossing(grained, at(60, 100), 'right')).toBeUndefined();
    expect(grainCrossing(panel(), at(60, 100), 'hem')).toBeUndefined();
  });
  test('of several meetings with a hem that doubles back the nearest', () => {
    const folded = pieceOf(
      [
        edge('top', 'seam', line(at(0, 0), at(200, 0))),
        edge('right', 'seam', line(at(200, 0), at(200, 300))),
        edge(
          'hem',
          'hem',
          line(at(200, 300), at(50, 250)),
          line(at(50, 250), at(150, 220)),
          line(at(150, 220), at(0, 200)),
        ),
        edge('left', 'fold', line(at(0, 200), at(0, 0))),
      ],
      { lines: [drawn('grain', 'grain', [50, 20], [50, 150])] },
    );
    const before = Math.hypot(150, 50) + Math.hypot(100, 30);
    expect(grainCrossing(folded, at(100, 50), 'hem')).toBeCloseTo(before + Math.hypot(150, 20) / 3, 9);
  });
  test('of two meetings the nearer', () => {
    const stepped = pieceOf(
      [
        edge('top', 'seam', line(at(0, 0), at(200, 0))),
        edge('right', 'seam', line(at(200, 0), at(200, 300))),
        edge(
          'hem',
          'hem',
          line(at(200, 300), at(0, 250)),
          line(at(0, 250), at(0, 200)),
          line(at(0, 200), at(-100, 200)),
        ),
        edge('left', 'fold', line(at(-100, 200), at(-100, 0)), line(at(-100, 0), at(0, 0))),
      ],
      { lines: [drawn('grain', 'grain', [50, 20], [50, 200])] },
    );
    expect(pathStart(edgePath(stepped, 'hem'))).toEqual(at(200, 300));
    expect(pathEnd(edgePath(stepped, 'hem'))).toEqual(at(-100, 200));
    expect(grainCrossing(stepped, at(100, 50), 'hem')).toBeCloseTo(Math.hypot(100, 25), 9);
  });
});
