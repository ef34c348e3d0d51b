import { closeDart, shorten, spread, trueEdges } from '@paperhinge/alter';
import {
  at,
  checkPattern,
  definePattern,
  definePiece,
  edgePath,
  type Path,
  type Pattern,
  type Piece,
  pathLength,
  pathOf,
  pieceNamed,
  polyline,
  validatePattern,
} from '@paperhinge/geometry';
import { edgeTruing, joinedLinesOf } from '@paperhinge/geometry/measure';
import {
  endTangent,
  nearestOnPath,
  pathEnd,
  pathStart,
  pointAlong,
  startTangent,
} from '@paperhinge/geometry/paths';
import { angleBetween, distance } from '@paperhinge/geometry/plane';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { toldDid, toldFinding } from '../../support/told.js';

/** A half skirt on the fold with the given hem from (200, y) to (0, 400). */
const panel = (hem: Path, name = 'panel'): Piece =>
  definePiece({
    name,
    outline: [
      { name: 'waist', path: polyline(at(0, 0), at(200, 0)) },
      { name: 'side', path: polyline(at(200, 0), pathStart(hem)) },
      { name: 'hem', kind: 'hem', path: hem },
      { name: 'centre', kind: 'fold', path: polyline(at(0, 400), at(0, 0)) },
    ],
    notches: [
      { edge: 'hem', at: 30, style: 'single' },
      { edge: 'hem', at: 170, style: 'single' },
    ],
  });
const patternOf = (...pieces: Piece[]): Pattern => definePattern({ name: 'test', pieces });
const hemOf = (pattern: Pattern, piece = 'panel'): Path => edgePath(pieceNamed(pattern, piece), 'hem');
const hem = { piece: 'panel', edge: 'hem' };
const farthest = (a: Path, b: Path): number =>
  Math.max(
    ...Array.from(
      { length: 401 },
      (_, i) => nearestOnPath(b, pointAlong(a, (i / 400) * pathLength(a))).distance,
    ),
  );
const degrees = (rad: number): number => (rad * 180) / Math.PI;

function opened(): Pattern {
  const short = shorten(shiftPattern(), { pieces: ['front', 'back'], at: 'hem', by: 210 }).pattern;
  const flared = closeDart(short, { piece: 'front', dart: 'bust', into: 'hem', share: 1 }).pattern;
  return spread(flared, {
    piece: 'back',
    from: { edge: 'hem', at: { share: 0.5 } },
    to: { edge: 'shoulder', at: { share: 0.5 } },
    by: 60,
    hinge: 'to',
    slashes: 1,
  }).pattern;
}

describe('what a hinge left broken', () => {
  const refs = ['front', 'back'].map(piece => ({ piece, edge: 'hem' }));
  test.each([0.5, 1, 2, 5])('is redrawn without a kink within %s mm, its ends in place', within => {
    const before = opened();
    expect(edgeTruing(pieceNamed(before, 'front'), 'hem').kinks).toHaveLength(2);
    const done = trueEdges(before, { edges: refs, within });
    const { pattern, findings } = done;
    validatePattern(pattern);
    expect(findings).toEqual([]);
    for (const piece of ['front', 'back']) {
      expect(edgeTruing(pieceNamed(pattern, piece), 'hem').kinks).toEqual([]);
      const [old, fresh] = [hemOf(before, piece), hemOf(pattern, piece)];
      expect(Math.max(farthest(old, fresh), farthest(fresh, old))).toBeLessThan(within + 0.01);
      expect(distance(pathStart(old), pathStart(fresh))).toBeLessThan(1e-9);
      expect(distance(pathEnd(old), pathEnd(fresh))).toBeLessThan(1e-9);
    }
    expect(toldDid(done)).toMatch(
      /^The hem of the front was trued; it moved by .* mm at most\. The hem of the back was trued; it moved by .* mm at most\.$/,
    );
  });

  test('is square to the fold and runs on across the side seam', () => {
    const { pattern } = trueEdges(opened(), { edges: refs, within: 2 });
    for (const piece of ['front', 'back'])
      expect(Math.abs(degrees(angleBetween(endTangent(hemOf(pattern, piece)), at(-1, 0))))).toBeLessThan(
        0.01,
      );
    const side = joinedLinesOf(pattern, pattern.seams.find(s => s.name === 'side')!, 0);
    for (const line of side) expect(Math.abs(line.cornerDeg)).toBeLessThan(1);
    expect(
      checkPattern(pattern).filter(f => /hem/.test(f.where.edge ?? '') && f.severity !== 'note'),
    ).toEqual([]);
  });
});

test('a smooth edge stays exactly what it was', () => {
  const before = shiftPattern();
  const edges = ['neck', 'armhole', 'hem', 'side-lower'].map(edge => ({ piece: 'front', edge }));
  const done = trueEdges(before, { edges, within: 2 });
  const { pattern } = done;
  expect(pieceNamed(pattern, 'front')).toBe(pieceNamed(before, 'front'));
  expect(toldDid(done)).toContain('The hem of the front was left as it was: it is fair already.');
});

test('a bend under one degree is left', () => {
  const before = patternOf(panel(polyline(at(200, 400), at(100, 399.3), at(0, 400))));
  expect(trueEdges(before, { edges: [hem], within: 2 }).pattern.pieces[0]).toBe(before.pieces[0]);
});

test('a step is drawn fair where the limit allows, and left with a finding where not', () => {
  const stepped = (by: number) =>
    patternOf(panel(polyline(at(200, 400 - by), at(100, 400 - by), at(96, 400), at(0, 400))));
  const small = trueEdges(stepped(3), { edges: [hem], within: 2 });
  expect(small.findings).toEqual([]);
  expect(edgeTruing(small.pattern.pieces[0]!, 'hem')).toEqual({ kinks: [], steps: [] });
  const large = trueEdges(stepped(30), { edges: [hem], within: 2 });
  expect(large.findings).toHaveLength(1);
  expect(large.findings[0]).toMatchObject({
    code: 'truing-left',
    severity: 'warning',
    where: { piece: 'panel', edge: 'hem' },
    figures: { withinMm: 2 },
    about: { what: 'step' },
  });
});

test('a corner drawn on purpose is left, and said', () => {
  const before = patternOf(panel(polyline(at(200, 400), at(100, 480), at(0, 400))));
  const { pattern, findings } = trueEdges(before, { edges: [hem], within: 2 });
  expect(pattern.pieces[0]).toBe(before.pieces[0]);
  expect(findings.map(f => toldFinding(f))).toEqual([
    expect.objectContaining({ code: 'truing-left', message: expect.stringContaining('corner') }),
  ]);
});

test('an edge that meets the fold out of square is drawn square, its end in place', () => {
  const slanting = polyline(at(200, 385), at(0, 400));
  const { pattern } = trueEdges(patternOf(panel(slanting)), { edges: [hem], within: 2 });
  const end = endTangent(hemOf(pattern));
  expect(Math.abs(degrees(angleBetween(end, at(-1, 0))))).toBeLessThan(1e-6);
  expect(Math.abs(degrees(angleBetween(startTangent(hemOf(pattern)), startTangent(slanting))))).toBeLessThan(
    1e-6,
  );
});

test('a corner across a seam is shared by both edges if both are named, else taken by the one', () => {
  // Each hem meets its side 5° short of square: sewn, the corner is 10°.
  const dip = Math.tan((5 * Math.PI) / 180) * 200;
  const slant = pathOf([at(200, 400 - dip), at(0, 400)] as const);
  const pieces = ['front', 'back'].map(name => panel(slant, name));
  const run = (piece: string) => [{ piece, edge: 'side', reversed: false }];
  const pattern = definePattern({
    name: 't',
    pieces,
    seams: [{ name: 'side', a: run('front'), b: run('back'), ease: { mm: 0 } }],
  });
  const corner = (p: Pattern) =>
    joinedLinesOf(p, p.seams[0]!, 0).find(l => l.first.edge === 'hem')!.cornerDeg;
  expect(Math.abs(corner(pattern))).toBeCloseTo(10, 6);
  const both = trueEdges(pattern, {
    edges: ['front', 'back'].map(piece => ({ piece, edge: 'hem' })),
    within: 5,
  });
  expect(corner(both.pattern)).toBeCloseTo(0, 6);
  const turned = (p: Pattern, piece: string) =>
    degrees(angleBetween(startTangent(slant), startTangent(hemOf(p, piece))));
  expect(Math.abs(turned(both.pattern, 'front'))).toBeCloseTo(5, 6);
  const one = trueEdges(pattern, { edges: [{ piece: 'front', edge: 'hem' }], within: 5 });
  expect(corner(one.pattern)).toBeCloseTo(0, 6);
  expect(Math.abs(turned(one.pattern, 'front'))).toBeCloseTo(10, 6);
  expect(hemOf(one.pattern, 'back')).toEqual(slant);
});

test('notches keep their distance from the nearer end', () => {
  const before = patternOf(panel(polyline(at(200, 400), at(100, 408), at(0, 400))));
  const { pattern } = trueEdges(before, { edges: [hem], within: 4 });
  const [first, second] = pattern.pieces[0]!.notches;
  expect(first!.at).toBe(30);
  expect(pathLength(hemOf(pattern)) - second!.at).toBeCloseTo(pathLength(hemOf(before)) - 170, 9);
});

test.each([
  ['field-out-of-range', { edges: [hem], within: 0 }],
  ['unknown-edge', { edges: [{ piece: 'panel', edge: 'hm' }], within: 2 }],
])('%s is refused', (code, parameters) => {
  const pattern = patternOf(panel(polyline(at(200, 400), at(0, 400))));
  expect(() => trueEdges(pattern, parameters)).toThrow(
    expect.objectContaining({ code, remedy: expect.any(String) }),
  );
});
