import { type Became, follow, followThrough } from '@paperhinge/alter';
import { inTurn } from '@paperhinge/alter/became';
import { closeDart, moveDart } from '@paperhinge/alter/darts';
import { takeIn } from '@paperhinge/alter/edges';
import { spread } from '@paperhinge/alter/fullness';
import { shorten } from '@paperhinge/alter/length';
import { unfold } from '@paperhinge/alter/seams';
import {
  edgeNames,
  edgePath,
  type Pattern,
  PatternError,
  type Piece,
  pathLength,
  pieceNamed,
} from '@paperhinge/geometry';
import { pointAlong } from '@paperhinge/geometry/paths';
import { distance } from '@paperhinge/geometry/plane';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { anyBodice, lengthOf, only, patternOf } from '../hinge/pieces.js';

const side = (from: number, to: number) => ({ piece: 'front', edge: 'side', from, to });
/** A side of 300 mm: 20 mm cut off its start, 40 mm let in at 120, from 200 on now the edge `panel`, backwards. */
const became: Became = {
  edges: [
    { was: side(20, 120), now: side(0, 100) },
    { was: side(120, 200), now: side(140, 220) },
    { was: side(200, 300), now: { piece: 'front', edge: 'panel', from: 100, to: 0 } },
    {
      was: { piece: 'front', edge: 'neck', from: 0, to: 90 },
      now: { piece: 'front', edge: 'neck', from: 0, to: 70 },
      redrawn: true,
    },
    { was: { piece: 'front', edge: 'shoulder', from: 0, to: 90 } },
  ],
  things: [
    { was: { piece: 'front', dart: 'bust' } },
    { was: { piece: 'front', line: 'waist' }, now: { piece: 'front', line: 'waist-upper' } },
    { was: { piece: 'yoke' } },
    { was: { piece: 'back' }, now: { piece: 'lower back' } },
  ],
};
const at = (edge: string, place: number) => ({ piece: 'front', edge, at: place });

describe('following', () => {
  test('a place goes with its cloth, or is gone', () => {
    expect(follow(became, at('side', 50))).toEqual([at('side', 30)]);
    expect(follow(became, at('side', 150))).toEqual([at('side', 170)]);
    expect(follow(became, at('side', 230))).toEqual([at('panel', 70)]);
    expect(follow(became, at('side', 10))).toEqual([]);
    expect(follow(became, at('neck', 10))).toEqual([]);
    expect(follow(became, at('hem', 10))).toEqual([at('hem', 10)]);
  });
  test('a place on a cut goes with what is listed first', () => {
    expect(follow(became, at('side', 120))).toEqual([at('side', 100)]);
    const other = { ...became, edges: [...became.edges].reverse() };
    expect(follow(other, at('side', 120))).toEqual([at('side', 140)]);
  });
  test('an edge is where its stretches are, a redrawn one still there, one cut away not', () => {
    const edge = (name: string) => ({ piece: 'front', edge: name });
    expect(follow(became, edge('side'))).toEqual([edge('side'), edge('panel')]);
    expect(follow(became, edge('neck'))).toEqual([edge('neck')]);
    expect(follow(became, edge('shoulder'))).toEqual([]);
  });
  test('a corner goes with the nearest that is left of its edge', () => {
    const corner = (edge: string, end: 'start' | 'end') => ({ piece: 'front', edge, end });
    expect(follow(became, corner('side', 'start'))).toEqual([corner('side', 'start')]);
    expect(follow(became, corner('side', 'end'))).toEqual([corner('panel', 'start')]);
    expect(follow(became, corner('shoulder', 'end'))).toEqual([]);
  });
  test('a stretch takes with it what was let in between its ends', () => {
    expect(follow(became, side(50, 150))).toEqual([side(30, 170)]);
    expect(follow(became, side(150, 50))).toEqual([side(170, 30)]);
    expect(follow(became, side(0, 10))).toEqual([]);
  });
  test('darts, lines and pieces by their names', () => {
    expect(follow(became, { piece: 'front', dart: 'bust' })).toEqual([]);
    expect(follow(became, { piece: 'front', dart: 'waist' })).toEqual([{ piece: 'front', dart: 'waist' }]);
    expect(follow(became, { piece: 'front', line: 'waist' })).toEqual([
      { piece: 'front', line: 'waist-upper' },
    ]);
    expect(follow(became, { piece: 'yoke', mark: 'button' })).toEqual([]);
    expect(follow(became, { piece: 'yoke', edge: 'neck' })).toEqual([]);
    expect(follow(became, { piece: 'back', edge: 'neck', at: 7 })).toEqual([
      { piece: 'lower back', edge: 'neck', at: 7 },
    ]);
    expect(follow(became, { seam: 'side' })).toEqual([{ seam: 'side' }]);
  });
});

describe('unfolded', () => {
  const shift = shiftPattern();
  const done = unfold(shift, { piece: 'front' });
  test('an edge lies in two places, a corner at the fold in none', () => {
    expect(follow(done.became!, { piece: 'front', edge: 'side-upper' })).toEqual([
      { piece: 'front', edge: 'side-upper' },
      { piece: 'front', edge: 'other side-upper' },
    ]);
    const ends = (['start', 'end'] as const).map(end =>
      follow(done.became!, { piece: 'front', edge: 'hem', end }),
    );
    expect(ends.map(end => end.length).sort()).toEqual([0, 2]);
  });
  test('the fold is a line', () => {
    const fold = pieceNamed(shift, 'front').outline.parts.find(p => p.type === 'edge' && p.kind === 'fold')!;
    const [now] = follow<object>(done.became!, { piece: 'front', edge: fold.name }) as { line: string }[];
    expect(pieceNamed(done.pattern, 'front').lines.map(l => l.name)).toContain(now!.line);
  });
});

/** What came of a step, or nothing where it was refused. */
function orRefused<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch (error) {
    if (error instanceof PatternError) return undefined;
    throw error;
  }
}
const share = fc.double({ min: 0, max: 1, noNaN: true });
const anyEdge = fc.constantFrom('neck', 'shoulder', 'armhole', 'side-upper', 'side-lower', 'hem');
const piece = 'block';
const rigidStep = fc.oneof(
  fc
    .record({ into: anyEdge, at: share, share })
    .map(
      p => (pattern: Pattern) =>
        closeDart(pattern, { piece, dart: 'bust', into: p.into, at: { share: p.at }, share: p.share }),
    ),
  fc
    .record({ edge: anyEdge, at: share })
    .map(
      p => (pattern: Pattern) =>
        moveDart(pattern, { piece, dart: 'bust', to: { edge: p.edge, at: { share: p.at } }, pointBack: 0 }),
    ),
  fc
    .record({
      from: anyEdge,
      to: anyEdge,
      by: fc.double({ min: -25, max: 60, noNaN: true }),
      hinge: fc.constantFrom('from' as const, 'to' as const, 'none' as const),
      slashes: fc.integer({ min: 1, max: 3 }),
    })
    .map(
      ({ from, to, by, hinge, slashes }) =>
        (pattern: Pattern) =>
          spread(pattern, { piece, from: { edge: from }, to: { edge: to }, by, hinge, slashes }),
    ),
);

const spot = (of: Piece, { edge, at: along }: { edge: string; at: number }) =>
  pointAlong(edgePath(of, edge), along);

describe('any slash', () => {
  test('every place of an old edge lies on the new edge, as far from its neighbours as before', () => {
    fc.assert(
      fc.property(anyBodice, rigidStep, (bodice, step) => {
        const done = orRefused(() => step(patternOf(bodice)));
        if (!done) return;
        const after = only(done.pattern);
        for (const { was, now } of done.became!.edges) {
          const places = [0, 0.2, 0.5, 0.9, 1].map(s => ({ s, at: was.from + s * (was.to - was.from) }));
          const before = places.map(place => spot(bodice, { edge: was.edge, at: place.at }));
          const moved = places.map(({ s }) =>
            spot(after, { edge: now!.edge, at: now!.from + s * (now!.to - now!.from) }),
          );
          for (const i of places.keys())
            for (const k of places.keys())
              expect(
                Math.abs(distance(before[i]!, before[k]!) - distance(moved[i]!, moved[k]!)),
              ).toBeLessThan(2e-9); // 1e-9 for each of the two
        }
      }),
      { numRuns: 80 },
    );
  });
  test('what is not found again was cut away: no more than the overlaps took', () => {
    fc.assert(
      fc.property(anyBodice, rigidStep, (bodice, step) => {
        const done = orRefused(() => step(patternOf(bodice)));
        if (!done) return;
        const overlapped = done.findings.some(f => f.code === 'edge-overlapped');
        for (const name of edgeNames(bodice)) {
          const length = lengthOf(bodice, name);
          const lost = [0, 0.13, 0.5, 0.77, 1].filter(
            s => follow(done.became!, { piece, edge: name, at: s * length }).length === 0,
          );
          if (!overlapped) expect(lost).toEqual([]);
        }
      }),
      { numRuns: 60 },
    );
  });
  test('two steps followed one after the other are their composition', () => {
    fc.assert(
      fc.property(anyBodice, rigidStep, rigidStep, anyEdge, share, (bodice, one, two, edge, s) => {
        const first = orRefused(() => one(patternOf(bodice)));
        const second = first && orRefused(() => two(first.pattern));
        if (!first || !second) return;
        const place = { piece, edge, at: s * lengthOf(bodice, edge) };
        const apart = followThrough([first.became!, second.became!], place);
        const together = follow(inTurn(first.became!, second.became!), place);
        expect(together.map(p => p.edge)).toEqual(apart.map(p => p.edge));
        for (const [i, p] of together.entries()) expect(Math.abs(p.at - apart[i]!.at)).toBeLessThan(1e-6);
      }),
      { numRuns: 60 },
    );
  });
});

describe('moved edges', () => {
  const shift = shiftPattern();
  const front = pieceNamed(shift, 'front');
  test('what a shortened hem left of the side is where it was', () => {
    const done = shorten(shift, { pieces: ['front'], at: 'hem', by: 60 });
    const after = pieceNamed(done.pattern, 'front');
    const length = pathLength(edgePath(front, 'side-lower'));
    for (const place of [0, 50, length - 80]) {
      const [now] = follow(done.became!, { piece: 'front', edge: 'side-lower', at: place });
      expect(distance(spot(front, { edge: 'side-lower', at: place }), spot(after, now!))).toBeLessThan(1e-9);
    }
    expect(follow(done.became!, { piece: 'front', edge: 'side-lower', at: length })).toEqual([]);
  });
  test('a seam taken in is followed on both its pieces', () => {
    const done = takeIn(shift, { seam: 'side', by: 40 });
    for (const ref of [
      { piece: 'front', edge: 'side-lower' },
      { piece: 'back', edge: 'side' },
    ])
      expect(follow(done.became!, { ...ref, at: 100 })).toHaveLength(1);
  });
});
