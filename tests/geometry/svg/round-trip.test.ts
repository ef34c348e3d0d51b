import {
  type Dart,
  definePattern,
  definePiece,
  edgeNames,
  edgePath,
  type Pattern,
  type Piece,
  type Point,
  pathLength,
  pathOf,
  readPattern,
  readShapes,
  type Segment,
  writePattern,
} from '@paperhinge/geometry';
import { reversedPath, transformedPath } from '@paperhinge/geometry/paths';
import { edgeParts, withRoles } from '@paperhinge/geometry/pattern';
import { type Affine, apply, compose, distance, rotation, translation } from '@paperhinge/geometry/plane';
import { toPathData } from '@paperhinge/geometry/svg';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { inMillimetres } from './in-millimetres.js';

/** mm: what writing and reading must keep (design §4). */
const kept = 1e-6;

function expectSamePoints(a: readonly Segment[], b: readonly Segment[]): void {
  expect(a.length).toBe(b.length);
  a.forEach((segment, i) => {
    expect(segment.length).toBe(b[i]!.length);
    segment.forEach((p: Point, j: number) => {
      expect(distance(p, b[i]![j]!)).toBeLessThan(kept);
    });
  });
}

function expectSamePiece(a: Piece, b: Piece): void {
  expect({ ...a, outline: 0, notches: 0, lines: 0, marks: 0 }).toEqual({
    ...b,
    outline: 0,
    notches: 0,
    lines: 0,
    marks: 0,
  });
  expect(a.outline.parts.map(p => [p.type, p.name])).toEqual(b.outline.parts.map(p => [p.type, p.name]));
  a.outline.parts.forEach((part, i) => {
    const other = b.outline.parts[i]!;
    if (part.type === 'edge' && other.type === 'edge') {
      expectSamePoints(part.path.segments, other.path.segments);
      expect({ ...part, path: 0, allowance: 0 }).toEqual({ ...other, path: 0, allowance: 0 });
      expect(Math.abs(part.allowance - other.allowance)).toBeLessThan(kept);
    } else {
      const [d, e] = [part as Dart, other as Dart];
      expect(d.pressed).toBe(e.pressed);
      for (const leg of [0, 1] as const) expectSamePoints(d.legs[leg].segments, e.legs[leg].segments);
    }
  });
  expect(a.notches.map(n => ({ ...n, at: 0 }))).toEqual(b.notches.map(n => ({ ...n, at: 0 })));
  a.notches.forEach((n, i) => {
    expect(Math.abs(n.at - b.notches[i]!.at)).toBeLessThan(kept);
  });
  // Lines that are darts come after the others.
  const order = (p: Piece) => [
    ...p.lines.filter(l => l.kind !== 'dart'),
    ...p.lines.filter(l => l.kind === 'dart'),
  ];
  expect(order(a).map(l => [l.kind, l.name])).toEqual(order(b).map(l => [l.kind, l.name]));
  order(a).forEach((l, i) => {
    expectSamePoints(l.path.segments, order(b)[i]!.path.segments);
  });
  a.marks.forEach((m, i) => {
    expect(distance(m.at, b.marks[i]!.at)).toBeLessThan(kept);
    expect({ ...m, at: 0 }).toEqual({ ...b.marks[i]!, at: 0 });
  });
}

function expectSamePattern(a: Pattern, b: Pattern): void {
  expect({ ...a, pieces: 0 }).toEqual({ ...b, pieces: 0 });
  expect(a.pieces.length).toBe(b.pieces.length);
  a.pieces.forEach((piece, i) => {
    expectSamePiece(piece, b.pieces[i]!);
  });
}

const roundTrip = (pattern: Pattern): Pattern => readPattern(writePattern(pattern)).pattern;

describe('writing and reading gives the same pattern', () => {
  test('for a shift with darts, sleeves, seams and ease', () => {
    expectSamePattern(withRoles(shiftPattern()), roundTrip(shiftPattern()));
  });

  test('twice over gives the same bytes', () => {
    const once = writePattern(roundTrip(shiftPattern()));
    expect(writePattern(readPattern(once).pattern)).toBe(once);
  });

  test('without findings', () => {
    expect(readPattern(writePattern(shiftPattern())).findings).toEqual([]);
  });

  test('for everything a piece can carry', () => {
    const dart: Dart = {
      type: 'dart',
      name: 'bust',
      legs: [
        pathOf([
          { x: 100, y: 30 },
          { x: 40, y: 40 },
        ]),
        pathOf([
          { x: 40, y: 40 },
          { x: 100, y: 50 },
        ]),
      ],
      apex: { x: 40, y: 40 },
      pressed: 'open',
    };
    const piece = definePiece({
      name: 'front',
      title: 'Front, left & right',
      outline: [
        {
          name: 'top',
          path: pathOf([
            { x: 0, y: 0 },
            { x: 30, y: -12.3456789 },
            { x: 70, y: -10 },
            { x: 100, y: 0 },
          ]),
          allowance: 15.875,
          opening: 120,
        },
        {
          name: 'side',
          path: pathOf([
            { x: 100, y: 0 },
            { x: 100, y: 30 },
          ]),
          allowance: 6.35,
          corners: { start: 'pressed-open', end: 'mitre' },
        },
        dart,
        {
          name: 'side',
          path: pathOf([
            { x: 100, y: 50 },
            { x: 100, y: 80 },
          ]),
          allowance: 6.35,
          corners: { start: 'pressed-open', end: 'mitre' },
        },
        {
          name: 'hem',
          path: pathOf([
            { x: 100, y: 80 },
            { x: 0, y: 80 },
          ]),
          kind: 'hem',
          allowance: 25.4,
        },
        {
          name: 'centre',
          path: pathOf([
            { x: 0, y: 80 },
            { x: 0, y: 0 },
          ]),
          kind: 'raw',
        },
      ],
      notches: [
        { edge: 'top', at: 0, style: 'single' },
        { edge: 'top', at: 50.123456, style: 'double', name: 'a' },
        { edge: 'side', at: 30, style: 'triple' },
        { edge: 'side', at: 1, style: 'double' },
        { edge: 'hem', at: 100, style: 'single', name: 'last' },
      ],
      lines: [
        {
          kind: 'dart',
          name: 'fish',
          path: pathOf(
            [
              { x: 20, y: 20 },
              { x: 25, y: 40 },
            ],
            [
              { x: 25, y: 40 },
              { x: 20, y: 60 },
            ],
            [
              { x: 20, y: 60 },
              { x: 15, y: 40 },
            ],
            [
              { x: 15, y: 40 },
              { x: 20, y: 20 },
            ],
          ),
        },
        {
          kind: 'grain',
          name: 'grain',
          path: pathOf([
            { x: 10, y: 70 },
            { x: 10, y: 10 },
          ]),
        },
        {
          kind: 'lengthen-shorten',
          name: 'here',
          path: pathOf([
            { x: 0, y: 60 },
            { x: 100, y: 60 },
          ]),
        },
      ],
      marks: [{ kind: 'button', name: 'top button', at: { x: 33.333333333, y: 44 } }],
      cutting: { count: 2, mirrored: true, fabric: 'contrast', note: 'cut on the bias' },
    });
    const band = definePiece({
      name: 'band',
      outline: [
        {
          name: 'a',
          path: pathOf([
            { x: -50, y: -50 },
            { x: -10, y: -50 },
          ]),
        },
        {
          name: 'b',
          path: pathOf([
            { x: -10, y: -50 },
            { x: -50, y: -30 },
          ]),
        },
        {
          name: 'c',
          path: pathOf([
            { x: -50, y: -30 },
            { x: -50, y: -50 },
          ]),
        },
      ],
    });
    const pattern = definePattern({
      name: 'All of it',
      unit: 'cm',
      pieces: [piece, { ...band, madeFor: [{ piece: 'front', edge: 'top' }] }],
      seams: [
        {
          name: '2',
          a: [{ piece: 'front', edge: 'top', reversed: true }],
          b: [
            { piece: 'band', edge: 'a', reversed: false },
            { piece: 'band', edge: 'a', reversed: true },
          ],
          ease: { mm: -3.25 },
        },
        {
          name: '1',
          a: [{ piece: 'front', edge: 'side', reversed: false }],
          b: [{ piece: 'band', edge: 'b', reversed: true }],
          ease: { percent: 7.5 },
        },
      ],
      fabrics: [
        {
          name: 'main',
          width: 1500,
          stretch: { across: 35, along: 20.5 },
          recovery: 92,
          nap: false,
          repeat: 101.6,
          role: 'main',
        },
        { name: 'jersey', stretch: { across: 40 }, role: 'contrast' },
      ],
    });
    expectSamePattern(pattern, roundTrip(pattern));
  });

  test('for names that try to break out of the file', () => {
    const hostile = [
      '"/><script>alert(1)</script>',
      "a' b",
      ']]>',
      '&amp;',
      '<!--',
      'a\nb\tc',
      '\u202eegde',
      '袖😀',
      '__proto__',
      '1',
      'a.b',
      'x from y',
      '\\u0022',
    ];
    const parts = hostile.map((name, i) => {
      const corner = (k: number) => ({
        x: 100 * Math.cos((k * 2 * Math.PI) / hostile.length),
        y: 100 * Math.sin((k * 2 * Math.PI) / hostile.length),
      });
      return { name, path: pathOf([corner(i), corner(i + 1 === hostile.length ? 0 : i + 1)] as const) };
    });
    for (const name of hostile) {
      const piece = definePiece({ name, title: name, outline: parts });
      const other = definePiece({ name: 'other', outline: parts });
      const seams = hostile.map(edge => ({
        name: edge,
        a: [{ piece: name, edge, reversed: true }],
        b: [{ piece: 'other', edge, reversed: false }],
        ease: { mm: 0 },
      }));
      const pattern = definePattern({
        name,
        pieces: [piece, other],
        seams,
        fabrics: [{ name, role: 'main' }],
      });
      expectSamePattern(pattern, roundTrip(pattern));
    }
  });

  test('a name with a control character is refused', () => {
    const pattern = shiftPattern();
    expect(() => writePattern({ ...pattern, name: 'a\u0000b' })).toThrow(
      expect.objectContaining({ code: 'name-not-writable' }),
    );
    expect(() => writePattern({ ...pattern, name: 'a\ud800b' })).toThrow(
      expect.objectContaining({ code: 'name-not-writable' }),
    );
  });
});

describe('what is written', () => {
  test('has one derived cutting line in each piece, closed, around its outline', () => {
    const source = writePattern(shiftPattern());
    expect(source.match(/data-derived="cutting-line"/g)).toHaveLength(4);
    for (const [, d] of source.matchAll(/data-derived="cutting-line"[^>]* d="([^"]*)"/g)) {
      const [shape] = readShapes(inMillimetres(`<path d="${d}"/>`)).shapes;
      expect(shape!.closed).toBe(true);
      expect(d!.match(/M/g)).toHaveLength(1);
    }
  });

  test('shows each piece’s lines to any reader of SVG, in millimetres', () => {
    const { shapes, findings } = readShapes(writePattern(shiftPattern()));
    expect(findings.map(f => f.code)).toEqual(['text-left-out']);
    const lengths = shapes.map(s => s.lengthMm);
    for (const edge of edgeParts(shiftPattern().pieces[0]!))
      expect(Math.min(...lengths.map(l => Math.abs(l - pathLength(edge.path))))).toBeLessThan(kept);
  });
});

// Property: a piece of 3 to 8 edges, straight or curved, drawn in any order, direction and place.
const anyPiece = fc
  .record({
    corners: fc.array(
      fc.record({
        turn: fc.double({ min: 0.4, max: 1, noNaN: true }),
        radius: fc.double({ min: 200, max: 300, noNaN: true }),
      }),
      { minLength: 3, maxLength: 8 },
    ),
    bows: fc.array(
      fc.option(
        fc.tuple(
          fc.double({ min: -0.04, max: 0.04, noNaN: true }),
          fc.double({ min: -0.04, max: 0.04, noNaN: true }),
        ),
      ),
      { minLength: 8, maxLength: 8 },
    ),
  })
  .map(({ corners, bows }) => {
    const whole = corners.reduce((sum, c) => sum + c.turn, 0);
    let angle = 0;
    const points = corners.map(({ turn, radius }) => {
      angle += (turn / whole) * 2 * Math.PI;
      return { x: 400 + radius * Math.cos(angle), y: 400 + radius * Math.sin(angle) };
    });
    return points.map((p, i): Segment => {
      const q = points[(i + 1) % points.length]!,
        bow = bows[i];
      if (!bow) return [p, q];
      const along = (t: number, b: number) => ({
        x: p.x + (q.x - p.x) * t + (q.y - p.y) * b,
        y: p.y + (q.y - p.y) * t - (q.x - p.x) * b,
      });
      return [p, along(1 / 3, bow[0]), along(2 / 3, bow[1]), q];
    });
  });
const anyMotion: fc.Arbitrary<Affine> = fc
  .tuple(
    fc.double({ min: -3, max: 3, noNaN: true }),
    fc.double({ min: -500, max: 500, noNaN: true }),
    fc.double({ min: -500, max: 500, noNaN: true }),
  )
  .map(([angle, x, y]) => compose(rotation(angle), translation({ x, y })));

const draw = (
  segments: readonly Segment[],
  order: readonly number[],
  turned: readonly boolean[],
  motion?: Affine,
) => {
  const back = motion && inverse(motion);
  const paths = order.map(i => {
    const path = turned[i] ? reversedPath(pathOf(segments[i]!)) : pathOf(segments[i]!);
    return `<path data-edge="e${i}" d="${toPathData(back ? transformedPath(path, back) : path)}"/>`;
  });
  const transform = motion
    ? ` transform="matrix(${motion.a} ${motion.b} ${motion.c} ${motion.d} ${motion.e} ${motion.f})"`
    : '';
  return inMillimetres(`<g data-piece="p" data-allowance="10"${transform}>${paths.join('')}</g>`);
};
/** The inverse of a turn and shift. */
function inverse(m: Affine): Affine {
  const turn: Affine = { a: m.a, b: m.c, c: m.b, d: m.d, e: 0, f: 0 };
  const shift = apply(turn, { x: m.e, y: m.f });
  return { ...turn, e: -shift.x, f: -shift.y };
}

describe('the drawing', () => {
  test('may list its edges in any order and direction, within any transform', () => {
    fc.assert(
      fc.property(
        anyPiece,
        fc.array(fc.nat(), { minLength: 8, maxLength: 8 }),
        fc.array(fc.boolean(), { minLength: 8, maxLength: 8 }),
        fc.option(anyMotion, { nil: undefined }),
        (segments, keys, turned, motion) => {
          const order = segments.map((_, i) => i).sort((a, b) => keys[a]! - keys[b]!);
          const piece = readPattern(draw(segments, order, turned, motion)).pattern.pieces[0]!;
          expect(new Set(edgeNames(piece))).toEqual(new Set(segments.map((_, i) => `e${i}`)));
          segments.forEach((segment, i) => {
            expectSamePoints(edgePath(piece, `e${i}`).segments, [segment]);
          });
        },
      ),
      { numRuns: 200 },
    );
  });

  test('survives writing and reading, whatever its outline', () => {
    fc.assert(
      fc.property(anyPiece, fc.double({ min: 0, max: 1, noNaN: true }), (segments, share) => {
        const outline = segments.map((segment, i) => ({
          name: `e${i}`,
          path: pathOf(segment),
          allowance: i * 3.3,
        }));
        const at = share * pathLength(pathOf(segments[0]!));
        const piece = definePiece({
          name: 'p',
          outline,
          notches: (['single', 'double', 'triple'] as const).map(style => ({ edge: 'e0', at, style })),
        });
        const pattern = definePattern({ name: 'any', pieces: [piece] });
        expectSamePattern(pattern, roundTrip(pattern));
      }),
      { numRuns: 100 },
    );
  });
});
