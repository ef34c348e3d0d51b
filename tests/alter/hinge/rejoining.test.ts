import { type Cut, cutApart, dartMouth, sectionAt, swing } from '@paperhinge/alter/hinge';
import {
  at,
  type Edge,
  edgePath,
  line,
  type PatternError,
  type Piece,
  type Point,
  pathLength,
} from '@paperhinge/geometry';
import { subpath } from '@paperhinge/geometry/paths';
import { dartsOf } from '@paperhinge/geometry/pattern';
import { type Affine, identity, rotation, translation } from '@paperhinge/geometry/plane';
import { describe, expect, test } from 'vitest';
import { endingAt, startingAt } from '../../../packages/alter/src/hinge/ends.js';
import { withLegsTo } from '../../../packages/alter/src/hinge/redrawn-legs.js';
import { areaOf, block, dart, depth, edge, expectClosed, lengthOf, pieceOf, refusal } from './pieces.js';

/** 200 wide, 300 high. */
const panel = (): Piece =>
  pieceOf(
    [
      edge('top', 'seam', line(at(0, 0), at(200, 0))),
      edge('right', 'seam', line(at(200, 0), at(200, 300))),
      edge('hem', 'hem', line(at(200, 300), at(0, 300))),
      edge('left', 'fold', line(at(0, 300), at(0, 0))),
    ],
    { lines: [] },
  );
const down: Cut = { from: { edge: 'top', along: 100 }, to: { edge: 'hem', along: 100 } };

test('a piece without a cut is one section, and comes back as it was', () => {
  const cut = cutApart(panel(), []);
  expect(cut.sections.map(s => s.stretches)).toEqual([[0, 1, 2, 3]]);
  expect(cut.sectionOf).toEqual([0, 0, 0, 0]);
  expect(swing(cut, [identity], 0).piece.outline).toEqual(panel().outline);
});

test('what stays keeps its points to the last bit, where what moved only comes back to them', () => {
  const piece = pieceOf(
    [
      edge('top', 'seam', line(at(0, 0.1), at(200.3, 0.7))),
      edge('right', 'seam', line(at(200.3, 0.7), at(200, 300))),
      edge('hem', 'hem', line(at(200, 300), at(0, 300))),
      edge('left', 'fold', line(at(0, 300), at(0, 0.1))),
    ],
    { lines: [] },
  );
  for (const along of [33.3, 70.07, 111.1]) {
    const cut = cutApart(piece, [{ from: { edge: 'top', along }, to: { edge: 'hem', along: 100 } }]);
    const { left, right } = cut.beside[0]!;
    const hinge = cut.nodes.find(n => n.gap === 0)!.point;
    for (const [stays, moves, sense] of [
      [right, left, -1],
      [left, right, 1],
    ] as const) {
      const motions = cut.sections.map((_, i) => (i === moves ? rotation(0.3 * sense, hinge) : identity));
      const { segments } = edgePath(swing(cut, motions, stays).piece, 'top');
      const whole = edgePath(piece, 'top');
      const kept = stays === right ? subpath(whole, 0, along) : subpath(whole, along, pathLength(whole));
      expect(stays === right ? segments[0] : segments.at(-1)).toEqual(kept.segments[0]);
    }
  }
});

test('the rules of both corners of an edge outlive a slash through it', () => {
  const ruled = panel().outline.parts.map(part =>
    part.name === 'hem'
      ? { ...(part as Edge), corners: { start: 'pressed-open', end: 'mitred' } as const }
      : part,
  );
  const cut = cutApart({ ...panel(), outline: { parts: ruled as Piece['outline']['parts'] } }, [down]);
  const motions = cut.sections.map((_, i) => (i === cut.beside[0]!.left ? translation(at(30, 0)) : identity));
  const { piece } = swing(cut, motions, cut.beside[0]!.right);
  const cornersOf = (name: string) => (piece.outline.parts.find(p => p.name === name) as Edge).corners;
  expect(cornersOf('hem')).toStrictEqual({ start: 'pressed-open', end: 'mitred' });
  expect(cornersOf('top')).toStrictEqual({});
});

test('two openings of one slash become two darts, each with its own name and point', () => {
  const cut = cutApart(panel(), [down]);
  const { left, right } = cut.beside[0]!;
  const motions = cut.sections.map((_, i) => (i === left ? translation(at(30, 0)) : identity));
  const darts = [
    { cut: 0, end: 'from' as const, name: 'upper', apex: at(115, 90) },
    { cut: 0, end: 'to' as const, name: 'lower', apex: at(115, 210) },
  ];
  const { piece } = swing(cut, motions, right, { mouths: darts.map(dartMouth) });
  expect(dartsOf(piece).map(d => [d.name, d.apex])).toEqual([
    ['upper', at(115, 90)],
    ['lower', at(115, 210)],
  ]);
  expect(areaOf(piece)).toBeCloseTo(230 * 300 - 2 * 0.5 * 30 * 90, 9);
  expectClosed(piece);
});

test('an opening that is no dart is bridged, though the other end of its slash becomes one', () => {
  const cut = cutApart(panel(), [down]);
  const { left, right } = cut.beside[0]!;
  const motions = cut.sections.map((_, i) => (i === left ? translation(at(30, 0)) : identity));
  const swung = swing(cut, motions, right, {
    mouths: [dartMouth({ cut: 0, end: 'from', name: 'upper', apex: at(115, 90) })],
  });
  expect(swung.openings.map(o => [o.edge, o.fate])).toEqual([
    ['top', 'dart'],
    ['hem', 'bridged'],
  ]);
  expect(dartsOf(swung.piece).map(d => d.name)).toEqual(['upper']);
});

test('what an overlap cut off has no place any more', () => {
  const cut = cutApart(panel(), [down]);
  const { left, right } = cut.beside[0]!;
  const motions = cut.sections.map((_, i) => (i === left ? translation(at(-30, 0)) : identity));
  const { places } = swing(cut, motions, right);
  const near = (mm: number) => expect.closeTo(mm, 9);
  expect(places.filter(p => p.edge === 'top').map(p => [p.from, p.to, p.newFrom])).toEqual([
    [near(0), near(85), near(0)],
    [near(115), near(200), near(85)],
  ]);
  expect(places.filter(p => p.edge === 'hem').map(p => [p.from, p.to, p.newFrom])).toEqual([
    [near(0), near(85), near(0)],
    [near(115), near(200), near(85)],
  ]);
});

describe('a dart that closes between two parts of an edge', () => {
  // Legs of 100 and 98.5 mm about (100, 100).
  const seconds = at(100 + 98.5 * Math.sin(0.2), 100 - 98.5 * Math.cos(0.2));
  const darted = pieceOf(
    [
      { ...edge('top', 'seam', line(at(0, 0), at(100, 0))), corners: { start: 'pressed-open' } },
      dart('d', at(100, 0), at(100, 100), seconds),
      { ...edge('top', 'seam', line(seconds, at(200, 30))), corners: { end: 'mitre' } },
      edge('right', 'seam', line(at(200, 30), at(200, 300))),
      edge('hem', 'hem', line(at(200, 300), at(0, 300))),
      edge('left', 'fold', line(at(0, 300), at(0, 0))),
    ],
    { lines: [] },
  );
  const cut = cutApart(darted, [{ from: { dart: 'd' }, to: { edge: 'hem', along: 100 } }]);
  const moves = sectionAt(cut, 0, 'to', 'before');
  const motions = cut.sections.map((_, i) => (i === moves ? rotation(-0.2, at(100, 100)) : identity));
  const swung = swing(cut, motions, 1 - moves, { closing: ['d'] });
  const top = swung.piece.outline.parts.find(p => p.name === 'top') as Edge;
  test('leaves one edge with the step of its legs, and the rules of both its corners', () => {
    expect(swung.closed).toEqual([{ dart: 'd', stepMm: expect.closeTo(1.5, 9) }]);
    expect(dartsOf(swung.piece)).toEqual([]);
    expect(top.corners).toStrictEqual({ start: 'pressed-open', end: 'mitre' });
    expectClosed(swung.piece);
  });
  test('the step lies where the legs came together, straight down the leg', () => {
    expect(top.path.segments.slice(0, 2).map(([p, q]) => [p.x, p.y, q!.x, q!.y])).toEqual([
      [0, 0, 100, 0],
      [100, 0, expect.closeTo(100, 9), expect.closeTo(1.5, 9)],
    ]);
  });
});

test('the step of a dart that closes beside another goes to the edge before both', () => {
  const piece = pieceOf(
    [
      edge('top', 'seam', line(at(0, 0), at(100, 0))),
      dart('first', at(100, 0), at(110, 80), at(120, 0)),
      dart('second', at(120, 0), at(120, 100), at(140, 2)),
      edge('rest', 'seam', line(at(140, 2), at(200, 0))),
      edge('right', 'seam', line(at(200, 0), at(200, 300))),
      edge('hem', 'hem', line(at(200, 300), at(0, 300))),
      edge('left', 'fold', line(at(0, 300), at(0, 0))),
    ],
    { lines: [] },
  );
  const cut = cutApart(piece, [{ from: { dart: 'second' }, to: { edge: 'hem', along: 80 } }]);
  const moves = sectionAt(cut, 0, 'to', 'before');
  const turn = Math.atan2(20, 98);
  const motions = cut.sections.map((_, i) => (i === moves ? rotation(-turn, at(120, 100)) : identity));
  const { piece: after, closed } = swing(cut, motions, 1 - moves, { closing: ['second'] });
  expect(closed).toEqual([{ dart: 'second', stepMm: expect.closeTo(Math.abs(100 - Math.hypot(20, 98)), 9) }]);
  expect(after.outline.parts.map(p => p.name)).toEqual([
    'top',
    'first',
    'top',
    'rest',
    'right',
    'hem',
    'left',
  ]);
  expectClosed(after);
});

test('a piece that is all one edge may be cut, and comes back as one', () => {
  const rim = pieceOf(
    [
      edge(
        'rim',
        'seam',
        line(at(0, 0), at(200, 0)),
        line(at(200, 0), at(200, 300)),
        line(at(200, 300), at(0, 300)),
        line(at(0, 300), at(0, 0)),
      ),
    ],
    { lines: [] },
  );
  expect(swing(cutApart(rim, []), [identity], 0).piece.outline.parts).toHaveLength(1);
  const cut = cutApart(rim, [{ from: { edge: 'rim', along: 100 }, to: { edge: 'rim', along: 600 } }]);
  const { left, right } = cut.beside[0]!;
  const motions = cut.sections.map((_, i) => (i === left ? translation(at(30, 0)) : identity));
  const { piece } = swing(cut, motions, right);
  expect(piece.outline.parts.map(p => p.name)).toEqual(['rim']);
  expect(areaOf(piece)).toBeCloseTo(230 * 300, 9);
});

test('an outline that does not close is refused, not welded', () => {
  const open = pieceOf(
    [
      edge('top', 'seam', line(at(0, 0), at(200, 0))),
      edge('right', 'seam', line(at(200, 0.2), at(200, 300))),
      edge('hem', 'hem', line(at(200, 300), at(0, 300))),
      edge('left', 'fold', line(at(0, 300), at(0, 0))),
    ],
    { lines: [] },
  );
  const cut = cutApart(open, [down]);
  expect(() =>
    swing(
      cut,
      cut.sections.map(() => identity),
      0,
    ),
  ).toThrow(refusal('outline-open'));
});

test('an edge in whose middle the list of parts begins comes back in one', () => {
  const { parts } = panel().outline;
  const halves = [
    edge('top', 'seam', line(at(120, 0), at(200, 0))),
    ...parts.slice(1),
    edge('top', 'seam', line(at(0, 0), at(120, 0))),
  ];
  const { piece } = swing(cutApart({ ...panel(), outline: { parts: halves } }, []), [identity], 0);
  expect(piece.outline.parts.map(p => p.name)).toEqual(['top', 'right', 'hem', 'left']);
  expect((piece.outline.parts[0] as Edge).path.segments).toEqual([
    [at(0, 0), at(120, 0)],
    [at(120, 0), at(200, 0)],
  ]);
});

test('the end of a path is set on a point, the rest of it left alone', () => {
  const path = {
    segments: [line(at(0, 0), at(10, 0)), line(at(10, 0), at(10, 10)), line(at(10, 10), at(0, 10))],
  };
  expect(startingAt(path, at(1, 2)).segments).toEqual([
    [at(1, 2), at(10, 0)],
    [at(10, 0), at(10, 10)],
    [at(10, 10), at(0, 10)],
  ]);
  expect(endingAt(path, at(1, 2)).segments).toEqual([
    [at(0, 0), at(10, 0)],
    [at(10, 0), at(10, 10)],
    [at(10, 10), at(1, 2)],
  ]);
});

test('an outline that would cross itself is refused, unless it was drawn so', () => {
  const cut = cutApart(panel(), [down]);
  const { left, right } = cut.beside[0]!;
  const motions = cut.sections.map((_, i) => (i === left ? translation(at(-60, -500)) : identity));
  expect(() => swing(cut, motions, right)).toThrow(refusal('outline-tangled'));
});

describe('a dart whose legs are redrawn to another point', () => {
  // Its mouth runs from (100 + depth, 185) to 30 mm below, its point lies 120 mm inwards of both.
  const piece = block();
  const [bust] = dartsOf(piece);
  const x = 100 + depth;
  test('keeps its mouth and all else, its legs straight', () => {
    const moved = withLegsTo(piece, bust!, at(60, 203));
    expect(dartsOf(moved)).toEqual([dart('bust', at(x, 185), at(60, 203), at(x, 215))]);
    for (const [i, part] of moved.outline.parts.entries())
      if (part.type === 'edge') expect(part).toBe(piece.outline.parts[i]);
  });
  test('may be off its axis until one leg is longer by half the mouth', () => {
    // Legs that differ by 15 mm end on a hyperbola about the two mouth ends: 7.5² = 15² sin²: 30 degrees off, far away.
    const differ = (y: number) => Math.hypot(x - 130, y - 185) - Math.hypot(x - 130, y - 215);
    let low = 200,
      high = 400;
    for (let i = 0; i < 60; i++) {
      const middle = (low + high) / 2;
      if (differ(middle) < 15) low = middle;
      else high = middle;
    }
    expect(() => withLegsTo(piece, bust!, at(130, low - 0.01))).not.toThrow();
    expect(() => withLegsTo(piece, bust!, at(130, 400 - low + 0.01))).not.toThrow();
    for (const y of [low + 0.01, 400 - low - 0.01])
      expect(() => withLegsTo(piece, bust!, at(130, y))).toThrow(
        expect.objectContaining({ code: 'pivot-out-of-reach' }),
      );
  });
  test('is refused beyond an edge, and outside its mouth', () => {
    for (const point of [at(-20, 200), at(x + 40, 200)])
      expect(() => withLegsTo(piece, bust!, point)).toThrow(
        expect.objectContaining({
          code: 'pivot-out-of-reach',
          facts: { dart: { piece: 'block', dart: 'bust' } },
        }),
      );
  });
});

test('a dart that would tear is named with its piece', () => {
  const cut = cutApart(block(), [{ from: { edge: 'hem', along: 100 }, to: { dart: 'bust' } }]);
  const motions = cut.sections.map((_, i) => (i === 0 ? translation(at(10, 0)) : identity));
  const refused = (() => {
    try {
      return swing(cut, motions, 1);
    } catch (error) {
      return error as PatternError;
    }
  })();
  expect(refused).toMatchObject({ code: 'dart-torn', facts: { dart: { piece: 'block', dart: 'bust' } } });
});

describe('slashes that leave the outline at one place', () => {
  // A fan of two slashes from the middle of one side; the strip between them turned, the far one turned twice as far.
  const fan = (edge: string, length: number, ends: readonly [Point, Point]) => {
    const from = { edge, along: length / 2 };
    const to = ends.map(p => ({
      edge: ['top', 'right', 'hem', 'left'].find(name => {
        const [a, b] = edgePath(panel(), name).segments[0]!;
        return Math.abs((b!.x - a!.x) * (p.y - a!.y) - (b!.y - a!.y) * (p.x - a!.x)) < 1e-9;
      })!,
      p,
    }));
    const along = (name: string, p: Point) => {
      const [a] = edgePath(panel(), name).segments[0]!;
      return Math.hypot(p.x - a!.x, p.y - a!.y);
    };
    return cutApart(
      panel(),
      to.map(({ edge: name, p }) => ({ from, to: { edge: name, along: along(name, p) } })),
    );
  };
  test.each<[string, number, [Point, Point]]>([
    ['top', 200, [at(200, 100), at(150, 300)]],
    ['right', 300, [at(120, 300), at(0, 200)]],
    ['hem', 200, [at(0, 150), at(60, 0)]],
    ['left', 300, [at(50, 0), at(200, 40)]],
  ])('are met in order from the edge that arrives there: %s', (name, length, ends) => {
    for (const [first, second] of [ends, [...ends].reverse() as [Point, Point]]) {
      const cut = fan(name, length, [first, second]);
      expect(cut.sections).toHaveLength(3);
      // Between the two lies one section: after the one that is met last, before the one that is met first.
      const spokes = cut.nodes.find(n => n.spokes.length === 2)!.spokes;
      const between = sectionAt(cut, spokes[0]!.cut, 'from', 'after');
      expect(sectionAt(cut, spokes[1]!.cut, 'from', 'before')).toBe(between);
      // Turned apart about the far ends' common side: each opens by its own motion.
      const away: Record<string, Point> = {
        top: at(1, 0),
        right: at(0, 1),
        hem: at(-1, 0),
        left: at(0, -1),
      };
      const { x, y } = away[name]!;
      const beyond = sectionAt(cut, spokes[1]!.cut, 'from', 'after');
      const motions = cut.sections.map(
        (_, i): Affine =>
          i === between
            ? translation(at(12 * x, 12 * y))
            : i === beyond
              ? translation(at(32 * x, 32 * y))
              : identity,
      );
      const swung = swing(cut, motions, sectionAt(cut, spokes[0]!.cut, 'from', 'before'));
      expect(swung.openings.filter(o => o.edge === name).map(o => [o.fate, o.openedMm, o.bridgeMm])).toEqual([
        ['bridged', expect.closeTo(12, 9), expect.closeTo(12, 9)],
        ['bridged', expect.closeTo(20, 9), expect.closeTo(20, 9)],
      ]);
      expect(lengthOf(swung.piece, name)).toBeCloseTo(length + 32, 9);
      expectClosed(swung.piece);
    }
  });
});
