import { closeDart, moveDart } from '@paperhinge/alter/darts';
import { draftCasing } from '@paperhinge/alter/made';
import { divide, joinPieces, matchEdge } from '@paperhinge/alter/seams';
import {
  at,
  edgeNames,
  edgePath,
  line,
  type Pattern,
  type Piece,
  pathLength,
  pathOf,
  pieceNamed,
  polyline,
  validatePattern,
  walkSeams,
} from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { dartsOf, foldEdgeOf } from '@paperhinge/geometry/pattern';
import { distance } from '@paperhinge/geometry/plane';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pieceOf, patternOf as polygons, seam as sewn, side } from '../../support/polygon-piece.js';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldDid, toldFinding } from '../../support/told.js';
import {
  anyBodice,
  areaOf,
  block,
  depth,
  expectClosed,
  lengthOf,
  only,
  patternOf,
  refusal,
} from '../hinge/pieces.js';

const cut = (pattern: Pattern, changes: Partial<Parameters<typeof divide>[1]> = {}) =>
  divide(pattern, {
    piece: 'block',
    name: 'yoke',
    from: { edge: 'side-upper', at: { mm: 80 } },
    to: { edge: 'centre', at: { mm: 100, from: 'top' } },
    ...changes,
  });
const parts = ({ pattern }: { readonly pattern: Pattern }) =>
  [only(pattern), pieceNamed(pattern, 'yoke')] as const;

describe('dividing', () => {
  test('gives two pieces whose areas add up, with equal edges sewn to one another', () => {
    const done = cut(patternOf(block()));
    const [kept, off] = parts(done);
    const width = 100 + depth;
    expect(areaOf(off)).toBeCloseTo((width * (80 + 100)) / 2, 6);
    expect(areaOf(kept) + areaOf(off)).toBeCloseTo(areaOf(block()), 6);
    expect(lengthOf(kept, 'yoke')).toBeCloseTo(Math.hypot(width, 20), 9);
    const [seam] = walkSeams(done.pattern);
    expect(seam).toMatchObject({ seam: 'yoke', matches: true });
    expect(Math.abs(seam!.differenceMm)).toBeLessThan(1e-9);
    validatePattern(done.pattern);
    expectClosed(kept);
    expectClosed(off);
  });
  test('keeps names, allowances, notches and marks on whichever part has them', () => {
    const notched: Piece = { ...block(), notches: [{ edge: 'side-upper', at: 30, style: 'single' }] };
    const [kept, off] = parts(cut(patternOf(notched)));
    expect(edgeNames(off)).toEqual(['centre', 'top', 'side-upper', 'yoke']);
    expect(off.notches).toEqual([{ edge: 'side-upper', at: 30, style: 'single' }]);
    expect(kept.notches).toEqual([]);
    expect(kept.marks.map(m => m.name)).toEqual(['bust point']);
    expect(off.title).toBe('Yoke');
  });
  test('gives each part a grain line of the same way', () => {
    for (const piece of parts(cut(patternOf(block())))) {
      const [grain] = piece.lines.filter(l => l.kind === 'grain');
      const [from, to] = [grain!.path.segments[0]![0], grain!.path.segments[0]!.at(-1)!];
      expect(from.x).toBeCloseTo(to.x, 9);
      expect(to.y).toBeGreaterThan(from.y);
    }
  });
  test('along a drawn line does the same', () => {
    const style = { kind: 'style' as const, name: 'yoke line', path: pathOf(line(at(0, 100), at(300, 80))) };
    const drawn = { ...block(), lines: [...block().lines, style] };
    const done = divide(patternOf(drawn), { piece: 'block', name: 'yoke', line: 'yoke line', allowance: 12 });
    expect(areaOf(done.pattern.pieces[0]!) + areaOf(done.pattern.pieces[1]!)).toBeCloseTo(areaOf(block()), 6);
    expect(only(done.pattern).outline.parts.find(p => p.name === 'yoke')).toMatchObject({ allowance: 12 });
  });
  test('a seam of an edge that is cut in two follows on to both pieces', () => {
    const before = shiftPattern();
    const done = divide(before, {
      piece: 'back',
      name: 'back yoke',
      from: { edge: 'armhole', at: { mm: 90, from: 'shoulder' } },
      to: { edge: 'centre-back', at: { mm: 100, from: 'neck' } },
    });
    validatePattern(done.pattern);
    expect(walkSeams(done.pattern).filter(w => !w.matches)).toEqual([]);
    const armhole = done.pattern.seams.find(s => s.name === 'armhole')!;
    expect([...armhole.a, ...armhole.b].map(r => r.piece)).toEqual(['sleeve', 'front', 'back yoke', 'back']);
    expect(toldDid(done)).toMatch(
      /^The back was divided; the back yoke is a piece of its own, sewn to it in the back yoke seam/,
    );
  });
});

describe('a princess line', () => {
  /** The bust dart half in the shoulder, half in the hem, then cut through both and the bust point. */
  function princess() {
    const pivot = { piece: 'front', dart: 'bust', pivot: 'bust point' } as const;
    const split = moveDart(shiftPattern(), {
      ...pivot,
      to: { edge: 'shoulder' },
      share: 0.5,
      name: 'upper',
      pointBack: 20,
    });
    const down = moveDart(split.pattern, { ...pivot, to: { edge: 'hem' }, pointBack: 20, name: 'lower' });
    return {
      whole: down.pattern,
      done: divide(down.pattern, {
        piece: 'front',
        name: 'side front',
        from: { dart: 'upper' },
        through: 'bust point',
        to: { dart: 'lower' },
      }),
    };
  }
  test('takes up both darts in its seam, and the pieces lose nothing but their wedges', () => {
    const { whole, done } = princess();
    const [front, side] = ['front', 'side front'].map(name => pieceNamed(done.pattern, name));
    expect([...dartsOf(front!), ...dartsOf(side!)]).toEqual([]);
    expect(areaOf(front!) + areaOf(side!)).toBeCloseTo(areaOf(pieceNamed(whole, 'front')), 6);
    expect(walkSeams(done.pattern).filter(w => !w.matches)).toEqual([]);
    validatePattern(done.pattern);
  });
  test('leaves the panel without the fold to be cut as a pair, and says so', () => {
    const { done } = princess();
    const side = pieceNamed(done.pattern, 'side front');
    expect(foldEdgeOf(side)).toBeUndefined();
    expect(side.cutting).toMatchObject({ count: 2, mirrored: true });
    expect(done.findings.map(f => toldFinding(f).message)).toContain(
      'The side front is no longer on the fold: it is cut 2 times, as a pair.',
    );
  });
  test('joined again at its seam is refused: it does not lie flat any more', () => {
    const { done } = princess();
    expect(() => joinPieces(done.pattern, { seam: 'side front' })).toThrow(
      expect.objectContaining({ code: 'join-not-flat' }),
    );
  });
});

test('what is divided and joined again is as it was', () => {
  fc.assert(
    fc.property(
      anyBodice,
      fc.double({ min: 0.1, max: 0.9, noNaN: true }),
      fc.double({ min: 0.05, max: 0.25, noNaN: true }),
      (piece, armhole, centre) => {
        const pattern = patternOf(piece);
        const done = divide(pattern, {
          piece: 'block',
          name: 'yoke',
          from: { edge: 'armhole', at: { share: armhole } },
          to: { edge: 'centre', at: { share: centre, from: 'neck' } },
        });
        validatePattern(done.pattern);
        const [kept, off] = parts(done);
        expect(areaOf(kept) + areaOf(off)).toBeCloseTo(areaOf(piece), 4);
        expect(lengthOf(kept, 'armhole') + lengthOf(off, 'armhole')).toBeCloseTo(
          lengthOf(piece, 'armhole'),
          6,
        );
        const again = joinPieces(done.pattern, { seam: 'yoke' });
        validatePattern(again.pattern);
        expect(again.findings.map(f => f.code)).toEqual([]);
        const [joined] = again.pattern.pieces;
        expect(areaOf(joined!)).toBeCloseTo(areaOf(piece), 4);
        expect([...edgeNames(joined!)].sort()).toEqual([...edgeNames(piece)].sort());
        for (const name of edgeNames(piece))
          expect(lengthOf(joined!, name)).toBeCloseTo(lengthOf(piece, name), 5);
        const places = (p: Piece) => p.notches.map(n => [n.edge, Math.round(n.at * 1e4)]).sort();
        expect(places(joined!)).toEqual(places(piece));
      },
    ),
    { numRuns: 40 },
  );
});

describe('joining pieces', () => {
  test('turns one over where both outlines run the same way, and its edges with it', () => {
    // Both shoulders of the shift run from the neck: front and back lie on the same side of their folds.
    const before = shiftPattern();
    const closed = closeDart(before, { piece: 'front', dart: 'bust', into: 'hem' }).pattern;
    const done = joinPieces(closed, { seam: 'shoulder' });
    validatePattern(done.pattern);
    const front = pieceNamed(done.pattern, 'front');
    expect(lengthOf(front, 'armhole')).toBeCloseTo(
      lengthOf(pieceNamed(closed, 'front'), 'armhole') + lengthOf(pieceNamed(closed, 'back'), 'armhole'),
      6,
    );
    expect(areaOf(front)).toBeCloseTo(
      areaOf(pieceNamed(closed, 'front')) + areaOf(pieceNamed(closed, 'back')),
      1,
    );
    expect(walkSeams(done.pattern).filter(w => !w.matches)).toEqual([]);
    expect(done.findings.map(f => f.code)).toContain('edge-renamed');
  });
});

describe('what is refused', () => {
  const pattern = patternOf(block());
  test('names that are taken', () => {
    expect(() => cut(pattern, { name: 'block' })).toThrow(refusal('piece-name-taken', /another name/));
    expect(() => cut(pattern, { seam: 'hem' })).toThrow(refusal('edge-name-taken', /seam: NAME/));
    const twice = cut(pattern).pattern;
    expect(() => cut(twice, { name: 'two', seam: 'yoke' })).toThrow(
      expect.objectContaining({ code: 'seam-name-taken' }),
    );
  });
  test('an end that is nowhere, or in two places', () => {
    expect(() => cut(pattern, { from: {} })).toThrow(refusal('division-end-unclear', /not both/));
    expect(() => cut(pattern, { from: { edge: 'top', dart: 'bust' } })).toThrow(
      refusal('division-end-unclear'),
    );
    expect(() => divide(pattern, { piece: 'block', name: 'x' })).toThrow(
      expect.objectContaining({ code: 'field-missing' }),
    );
  });
  test('seams that cannot be joined', () => {
    const shift = shiftPattern();
    expect(() => joinPieces(shift, { seam: 'side' })).toThrow(
      expect.objectContaining({ code: 'seam-not-of-two-edges' }),
    );
    expect(() => joinPieces(shift, { seam: 'underarm' })).toThrow(
      expect.objectContaining({ code: 'seam-of-one-piece' }),
    );
  });
  test('a line across a dart', () => {
    expect(() =>
      cut(pattern, { from: { edge: 'side-lower', at: { mm: 10 } }, to: { edge: 'top', at: { share: 0.4 } } }),
    ).toThrow(refusal('slash-crosses-dart'));
  });
});

test('an edge keeps its path to the last digit on the part that has all of it', () => {
  const [kept] = parts(cut(patternOf(block())));
  expect(edgePath(kept, 'hem')).toEqual(edgePath(block(), 'hem'));
});

// Found by random sequences: a drawn line with a loop left a piece that crossed itself; without the loop it is cut.
test('along a line that crosses itself nothing is cut', () => {
  const through = (...places: readonly (readonly [number, number])[]) => ({
    kind: 'style' as const,
    name: 'loop',
    path: polyline(...places.map(([x, y]) => at(x, y))),
  });
  const drawn = (line: ReturnType<typeof through>) =>
    patternOf({ ...block(), lines: [...block().lines, line] });
  const wish = { piece: 'block', name: 'yoke', line: 'loop' };
  const looped = through([0, 100], [120, 100], [120, 60], [60, 60], [60, 130], [300, 90]);
  expect(refusalOf(() => divide(drawn(looped), wish))).toMatchObject({
    code: 'cut-crosses-itself',
    remedy: 'Draw a line without a loop, or make what is cut off narrower.',
  });
  validatePattern(divide(drawn(through([0, 100], [120, 100], [300, 90])), wish).pattern);
});

// Found by random sequences: joined beside a dart, what was 0.05 mm off its mouth had nothing to bridge it.
test('an edge that follows a dart begins where that ends, though it was joined some way off', () => {
  const cased = draftCasing(patternOf(block()), {
    name: 'casing',
    along: [{ piece: 'block', edge: 'side-lower' }],
    elastic: 5,
    length: 5,
    room: 5,
    fabric: 'main',
    allowance: 5,
  }).pattern;
  validatePattern(joinPieces(cased, { seam: cased.seams.at(-1)!.name, within: 5 }).pattern);
});

describe('joined up to a place', () => {
  // Hand-worked: two rectangles 300 mm high, the second one's edge bent back by atan(30/100) for its last 100 mm.
  const panels = (bend: number): Pattern =>
    polygons(
      [
        pieceOf('left', [
          side('top', [
            [0, 0],
            [100, 0],
          ]),
          side('edge', [
            [100, 0],
            [100, 300],
          ]),
          side('hem', [
            [100, 300],
            [0, 300],
          ]),
          side('back', [
            [0, 300],
            [0, 0],
          ]),
        ]),
        pieceOf('right', [
          side('top', [
            [400, 0],
            [500, 0],
          ]),
          side('back', [
            [500, 0],
            [500, 300],
          ]),
          side('hem', [
            [500, 300],
            [400 + bend, 200 + Math.sqrt(1e4 - bend * bend)],
          ]),
          side('edge', [
            [400 + bend, 200 + Math.sqrt(1e4 - bend * bend)],
            [400, 200],
            [400, 0],
          ]),
        ]),
      ],
      [sewn('panel', ['left.edge'], ['-right.edge'])],
    );
  const wish = { seam: 'panel', upTo: { mm: 200 }, dart: 'below' } as const;

  test('what opens beyond is a dart of both lines, from where they part', () => {
    const { pattern } = joinPieces(panels(30), wish);
    validatePattern(pattern);
    const [piece] = pattern.pieces;
    const [dart] = dartsOf(piece!);
    expect(dart!.name).toBe('below');
    expect(dart!.apex.x).toBeCloseTo(100, 9);
    expect(dart!.apex.y).toBeCloseTo(200, 9);
    expect(dart!.legs.map(leg => pathLength(leg))).toEqual([expect.closeTo(100, 6), expect.closeTo(100, 6)]);
    // The mouth: the chord of an angle whose sine is 0.3 about the point, at 100 mm.
    const mouth = distance(pathStart(dart!.legs[0]), pathEnd(dart!.legs[1]));
    expect(mouth).toBeCloseTo(200 * Math.sin(Math.asin(0.3) / 2), 6);
    expect(lengthOf(piece!, 'top')).toBeCloseTo(200, 9);
    expect(pattern.seams).toEqual([]);
  });

  test('a panel joined as far as the bust point has its dart back, and closes flat again', () => {
    const { pattern } = joinPieces(panels(30), wish);
    const closed = closeDart(pattern, { piece: 'left', dart: 'below', into: 'top' }).pattern;
    validatePattern(closed);
  });

  test('what would lie on itself, or has legs of other lengths, is refused and mended', () => {
    expect(refusalOf(() => joinPieces(panels(-30), wish)).code).toBe('joined-overlapping');
    const unlike = panels(30);
    const right = unlike.pieces[1]!;
    const longer = {
      ...unlike,
      pieces: [
        unlike.pieces[0]!,
        pieceOf('right', [
          ...right.outline.parts.slice(0, 2),
          side('hem', [
            [500, 300],
            [430, 300],
          ]),
          side('edge', [
            [430, 300],
            [400, 200],
            [400, 0],
          ]),
        ]),
      ],
    };
    const { code, remedy } = refusalOf(() => joinPieces(longer, { ...wish, upTo: { mm: 195 } }));
    expect([code, remedy]).toEqual([
      'rest-legs-unlike',
      'Make both sides of the seam equally long first, with "match edge".',
    ]);
    const edge = { piece: 'right', edge: 'edge' };
    const matched = matchEdge(longer, { edge, at: 'start' }).pattern;
    validatePattern(joinPieces(matched, wish).pattern);
    expect(refusalOf(() => joinPieces(panels(30), { ...wish, dart: 'top' })).code).toBe('edge-name-taken');
    expect(refusalOf(() => joinPieces(panels(30), { seam: 'panel', upTo: { mm: 200 } })).code).toBe(
      'field-missing',
    );
  });
});
