import { closeDart } from '@paperhinge/alter/darts';
import { draftCircleSkirt } from '@paperhinge/alter/fullness';
import { unfold } from '@paperhinge/alter/seams';
import {
  at,
  type EdgeRun,
  edgeNames,
  edgePath,
  levelGirths,
  line,
  type Path,
  type Pattern,
  type Piece,
  pathOf,
  pieceNamed,
  walkSeams,
} from '@paperhinge/geometry';
import { boundsOfPath, pathEnd, pathStart, pointAlong, transformedPath } from '@paperhinge/geometry/paths';
import { copiesInGarment, dartsOf, edgeParts, outlinePath } from '@paperhinge/geometry/pattern';
import { translation } from '@paperhinge/geometry/plane';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf } from '../../support/told.js';
import {
  areaOf,
  begunAt,
  block,
  dart,
  edge,
  expectClosed,
  lengthOf,
  only,
  patternOf,
  pieceOf,
  refusal,
} from '../hinge/pieces.js';

const opened = (piece: Piece) => only(unfold(patternOf(piece), { piece: 'block' }).pattern);
const front = () => pieceNamed(shiftPattern(), 'front');
const unfoldAll = (pattern: Pattern, ...pieces: string[]) =>
  pieces.reduce((p, piece) => unfold(p, { piece }).pattern, pattern);
const labels = (runs: readonly EdgeRun[]) =>
  runs.map(r => `${r.piece}.${r.edge}${r.reversed ? ' back' : ''}`);

describe('the whole piece', () => {
  test('has exactly twice the area', () => {
    expect(areaOf(opened(block()))).toBeCloseTo(2 * areaOf(block()), 6);
    const whole = pieceNamed(unfold(shiftPattern(), { piece: 'front' }).pattern, 'front');
    expect(Math.abs(areaOf(whole) / areaOf(front()) - 2)).toBeLessThan(1e-12);
  });
  test('has no fold, is cut as often as before and not mirrored, and stands half as often in the garment', () => {
    const half = { ...block(), cutting: { count: 2, mirrored: false, fabric: 'main' } };
    const whole = opened(half);
    expect(edgeParts(whole).some(e => e.kind === 'fold')).toBe(false);
    expect(whole.cutting).toEqual({ count: 2, mirrored: false, fabric: 'main' });
    expect(copiesInGarment(half)).toBe(4);
    expect(copiesInGarment(whole)).toBe(2);
  });
  test('keeps edges that met the fold as one edge each, and mirrors the others under names of their own', () => {
    const whole = opened(block());
    expect(edgeNames(whole)).toEqual([
      'top',
      'side-upper',
      'side-lower',
      'hem',
      'other side-lower',
      'other side-upper',
    ]);
    expect(lengthOf(whole, 'hem')).toBeCloseTo(2 * lengthOf(block(), 'hem'), 9);
    expect(lengthOf(whole, 'other side-lower')).toBeCloseTo(lengthOf(block(), 'side-lower'), 9);
    expectClosed(whole);
  });
  test('runs clockwise from any beginning of the list', () => {
    for (let k = 0; k < 6; k++) {
      const whole = opened(begunAt(block(), k));
      expect(areaOf(whole)).toBeCloseTo(2 * areaOf(block()), 6);
      expectClosed(whole);
    }
  });
  test('keeps an edge between fold and fold apart from its copy', () => {
    const half = pieceOf([
      edge('rim', 'seam', [at(0, 0), at(100, 0), at(100, 200), at(0, 200)]),
      edge('middle', 'fold', line(at(0, 200), at(0, 0))),
    ]);
    expect(edgeNames(opened(half))).toEqual(['rim', 'other rim']);
    expect(areaOf(opened(half))).toBeCloseTo(2 * areaOf(half), 6);
  });
  test('keeps an edge that a dart interrupts one edge, round both darts', () => {
    const half = pieceOf([
      edge('top', 'seam', line(at(0, 0), at(200, 0))),
      edge('side', 'seam', line(at(200, 0), at(200, 300))),
      edge('hem', 'hem', line(at(200, 300), at(115, 300))),
      dart('waist', at(115, 300), at(100, 200), at(85, 300)),
      edge('hem', 'hem', line(at(85, 300), at(0, 300))),
      edge('middle', 'fold', line(at(0, 300), at(0, 0))),
    ]);
    const whole = opened(half);
    expect(whole.outline.parts.map(p => p.name)).toEqual([
      'top',
      'side',
      'hem',
      'waist',
      'hem',
      'other waist',
      'hem',
      'other side',
    ]);
    expect(lengthOf(whole, 'hem')).toBeCloseTo(340, 9);
    expectClosed(whole);
  });
});

describe('what lies on it', () => {
  test('darts are mirrored, and pressed the mirrored way', () => {
    const parts = block().outline.parts.map(p =>
      p.type === 'dart' ? { ...p, pressed: 'start' as const } : p,
    );
    const darts = dartsOf(opened({ ...block(), outline: { parts } }));
    expect(darts.map(d => [d.name, d.pressed])).toEqual([
      ['bust', 'start'],
      ['other bust', 'end'],
    ]);
    expect(darts[1]!.apex.x).toBeCloseTo(-100, 9);
  });
  test('notches keep their places and gain their mirror images, but for one on the centre line', () => {
    const half = {
      ...block(),
      notches: [
        { edge: 'hem', at: 30, style: 'single' as const },
        { edge: 'hem', at: lengthOf(block(), 'hem'), style: 'single' as const },
        { edge: 'top', at: 50, style: 'single' as const },
        { edge: 'side-upper', at: 40, style: 'double' as const },
      ],
    };
    const whole = opened(half);
    const places = whole.notches.map(n => pointAlong(edgePath(whole, n.edge), n.at));
    const expected = half.notches.flatMap(n => {
      const p = pointAlong(edgePath(half, n.edge), n.at);
      return Math.abs(p.x) < 1e-9 ? [p] : [p, at(-p.x, p.y)];
    });
    expect(places).toHaveLength(7);
    for (const [i, p] of places.entries()) {
      expect(p.x).toBeCloseTo(expected[i]!.x, 9);
      expect(p.y).toBeCloseTo(expected[i]!.y, 9);
    }
  });
  test('levels run on across the fold, marks and other lines are mirrored, the fold stays as the centre line', () => {
    const half = {
      ...block(),
      lines: [
        ...block().lines,
        { kind: 'level' as const, name: 'waist', path: pathOf(line(at(5, 300), at(150, 300))) },
        { kind: 'placement' as const, name: 'pocket', path: pathOf(line(at(60, 400), at(140, 400))) },
      ],
    };
    const whole = opened(half);
    expect(whole.lines.map(l => `${l.kind} ${l.name}`)).toEqual([
      'grain grain',
      'level waist',
      'placement pocket',
      'placement other pocket',
      'placement centre',
    ]);
    const waist = whole.lines[1]!.path;
    expect([pathStart(waist).x, pathEnd(waist).x]).toEqual([-150, 150]);
    expect(whole.marks.map(m => [m.name, m.at.x])).toEqual([
      ['bust point', 75],
      ['other bust point', -75],
    ]);
  });
  test('corner rules change ends with their edge', () => {
    const parts = block().outline.parts.map(p =>
      p.name === 'side-lower' ? { ...p, corners: { end: 'mitre' as const } } : p,
    );
    const whole = opened({ ...block(), outline: { parts: parts as Piece['outline']['parts'] } });
    expect(edgeParts(whole).find(e => e.name === 'other side-lower')!.corners).toEqual({ start: 'mitre' });
  });
});

describe('the seams', () => {
  test('a seam away from the fold is sewn twice, each half to the partner that stands twice', () => {
    const { seams } = unfold(shiftPattern(), { piece: 'front' }).pattern;
    const twice = seams.find(s => s.name === 'other side')!;
    expect(labels(twice.a)).toEqual(['front.other side-upper back', 'front.other side-lower back']);
    expect(labels(twice.b)).toEqual(['back.side']);
  });
  test('opening the partner too uses the second seam instead of adding a third', () => {
    const { seams } = unfoldAll(shiftPattern(), 'front', 'back');
    expect(seams.map(s => s.name)).toEqual([
      'shoulder',
      'other shoulder',
      'side',
      'other side',
      'underarm',
      'armhole',
      'other armhole',
      'neck',
    ]);
    // Both right sides up, the front's drawn side lies on the right of the page and so does the back's: left and right.
    expect(labels(seams.find(s => s.name === 'side')!.b)).toEqual(['back.other side back']);
    expect(labels(seams.find(s => s.name === 'other side')!.b)).toEqual(['back.side']);
    const armholes = seams.filter(s => s.name.includes('armhole')).map(s => labels(s.b));
    expect(armholes).toEqual([
      ['front.armhole back', 'back.other armhole back'],
      ['front.other armhole', 'back.armhole'],
    ]);
  });
  test('a seam that ends at the fold runs on across it, its other runs listed twice', () => {
    const neck = unfold(shiftPattern(), { piece: 'front' }).pattern.seams.find(s => s.name === 'neck')!;
    expect(labels(neck.a)).toEqual(['neckband.lower back', 'neckband.lower']);
    expect(labels(neck.b)).toEqual(['back.neck', 'front.neck back', 'back.neck back']);
  });
  test.each([
    ['front'],
    ['back'],
    ['neckband'],
    ['front', 'back'],
    ['neckband', 'front'],
    ['front', 'back', 'neckband'],
    ['neckband', 'back', 'front'],
  ])('match after opening %s %s %s', (...pieces) => {
    const pattern = unfoldAll(shiftPattern(), ...pieces.filter(p => p !== undefined));
    for (const walk of walkSeams(pattern)) expect([walk.seam, walk.matches]).toEqual([walk.seam, true]);
  });
  test('the girths of the garment stay as they were', () => {
    const before = levelGirths(shiftPattern());
    const after = levelGirths(unfoldAll(shiftPattern(), 'front', 'back'));
    for (const [level, girth] of Object.entries(before)) expect(after[level]).toBeCloseTo(girth, 6);
  });
  test('ease in millimetres doubles with a seam that runs on across the fold', () => {
    const shift = shiftPattern();
    const seams = shift.seams.map(s => (s.name === 'neck' ? { ...s, ease: { mm: 3 } } : s));
    const { pattern } = unfold({ ...shift, seams }, { piece: 'back' });
    expect(pattern.seams.find(s => s.name === 'neck')!.ease).toEqual({ mm: 6 });
  });
});

describe('seams of other forms', () => {
  const run = (piece: string, edge: string, reversed = false): EdgeRun => ({ piece, edge, reversed });
  const half = (name: string): Piece => ({ ...block(), name });
  const sewn = (a: readonly EdgeRun[], b: readonly EdgeRun[]): Pattern => ({
    ...patternOf(half('front'), half('back')),
    seams: [{ name: 's', a, b, ease: { mm: 0 } }],
  });
  const sides = (pattern: Pattern) =>
    pattern.seams.map(s => `${labels(s.a).join(' + ')} = ${labels(s.b).join(' + ')}`);
  test('two edges that both meet their folds run on across both', () => {
    const yoke = sewn([run('front', 'hem')], [run('back', 'hem')]);
    expect(sides(unfoldAll(yoke, 'front'))).toEqual(['front.hem = back.hem + back.hem back']);
    expect(sides(unfoldAll(yoke, 'front', 'back'))).toEqual(['front.hem = back.hem']);
  });
  test('a side that lists both halves of the garment keeps one run across the fold', () => {
    const ring = sewn(
      [run('back', 'hem', true), run('front', 'hem'), run('front', 'hem', true), run('back', 'hem')],
      [run('back', 'top')],
    );
    expect(sides(unfoldAll(ring, 'front'))).toEqual(['back.hem back + front.hem + back.hem = back.top']);
  });
  test('a ring that began at the fold begins at the edge across it, and is to be checked', () => {
    const ring = sewn(
      [run('back', 'hem', true), run('front', 'side-lower'), run('back', 'hem')],
      [run('front', 'top')],
    );
    const { pattern, findings } = unfold(ring, { piece: 'back' });
    expect(sides(pattern)).toEqual(['back.hem + front.side-lower = front.top']);
    expect(findings.map(f => [f.severity, f.code])).toEqual([['warning', 'seam-to-check']]);
  });
  test('a piece sewn to itself has that seam on both halves', () => {
    const self = sewn([run('front', 'side-upper')], [run('front', 'side-lower', true)]);
    expect(sides(unfoldAll(self, 'front'))).toEqual([
      'front.side-upper = front.side-lower back',
      'front.other side-upper back = front.other side-lower',
    ]);
  });
  test('both halves listed in one seam keep to it, the second under its new name', () => {
    const both = sewn([run('front', 'side-upper'), run('front', 'side-upper', true)], [run('back', 'hem')]);
    expect(sides(unfoldAll(both, 'front'))).toEqual(['front.side-upper + front.other side-upper = back.hem']);
  });
});

describe('afterwards', () => {
  test('one of the two darts can be closed alone, about the centre line that stays', () => {
    const whole = unfold(patternOf(block()), { piece: 'block' }).pattern;
    const after = only(
      closeDart(whole, { piece: 'block', dart: 'other bust', into: 'hem', share: 1 }).pattern,
    );
    expect(lengthOf(after, 'hem')).toBeCloseTo(2 * lengthOf(block(), 'hem') + 100, 9);
    expect(dartsOf(after).map(d => d.name)).toEqual(['bust']);
  });
});

describe('room in the drawing', () => {
  const boxOf = (piece: Piece) => boundsOfPath(outlinePath(piece.outline));
  test('a half that would open out over its neighbour is laid apart, otherwise it stays', () => {
    const left = {
      ...block(),
      name: 'left',
      outline: {
        parts: block().outline.parts.map(part =>
          part.type === 'dart'
            ? {
                ...part,
                legs: [moved(part.legs[0]), moved(part.legs[1])] as const,
                apex: at(part.apex.x - 400, part.apex.y),
              }
            : part.type === 'edge'
              ? { ...part, path: moved(part.path) }
              : part,
        ),
      },
      marks: [],
      lines: [],
    };
    const { pattern } = unfold(patternOf(block(), left), { piece: 'block' });
    const [whole, other] = pattern.pieces.map(boxOf);
    expect(whole!.min.y).toBeGreaterThan(other!.max.y);
    expect(areaOf(only({ ...pattern, pieces: [pattern.pieces[0]!] }))).toBeCloseTo(2 * areaOf(block()), 6);
    expectClosed(pattern.pieces[0]!);
    const alone = unfold(patternOf(block()), { piece: 'block' }).pattern.pieces[0]!;
    expect(boxOf(alone).max).toEqual(boxOf(block()).max);
  });
  const moved = (path: Path): Path => transformedPath(path, translation(at(-400, 0)));
});

describe('what is refused', () => {
  test('a piece without a fold', () => {
    const parts = block().outline.parts.map(p => (p.name === 'centre' ? { ...p, kind: 'seam' as const } : p));
    const piece = { ...block(), outline: { parts: parts as Piece['outline']['parts'] } };
    expect(() => opened(piece)).toThrow(refusal('no-fold', /fold/));
  });
  test('a fold that is not straight', () => {
    const parts = block().outline.parts.map(p =>
      p.name === 'centre'
        ? edge('centre', 'fold', line(at(0, 600), at(1, 300)), line(at(1, 300), at(0, 0)))
        : p,
    );
    expect(() => opened({ ...block(), outline: { parts } })).toThrow(
      refusal('unfold-not-straight', /straight/),
    );
  });
  test('a piece with two folds', () => {
    const parts = block().outline.parts.map(p => (p.name === 'top' ? { ...p, kind: 'fold' as const } : p));
    const piece = { ...block(), outline: { parts: parts as Piece['outline']['parts'] } };
    expect(() => opened(piece)).toThrow(refusal('several-folds'));
  });
});

test('a whole circle drawn on the fold is refused: its halves would touch away from it', () => {
  const { pattern } = draftCircleSkirt(shiftPattern(), {
    name: 'skirt',
    part: 'full',
    waist: 700,
    length: 600,
    panels: 1,
  });
  expect(refusalOf(() => unfold(pattern, { piece: 'skirt' }))).toMatchObject({
    code: 'unfolded-overlaps',
    remedy: expect.stringContaining('more panels'),
  });
});
