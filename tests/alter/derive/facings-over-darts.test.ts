import { orderOfWork } from '@paperhinge/alter';
import { draftCombinedFacing, draftFacing, draftStay, refresh } from '@paperhinge/alter/made';
import {
  at,
  checkPattern,
  definePattern,
  definePiece,
  edgeNames,
  edgePath,
  type Pattern,
  type Piece,
  pathLength,
  pieceNamed,
  polyline,
  validatePattern,
  walkSeam,
} from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { dartsOf, foldEdgeOf, outlinePath } from '@paperhinge/geometry/pattern';
import { distance, subtract } from '@paperhinge/geometry/plane';
import { signedArea } from '@paperhinge/geometry/regions';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoPattern } from '../../support/demo-pattern.js';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldFinding } from '../../support/told.js';

const ref = (text: string) => ({ piece: text.split('.')[0]!, edge: text.split('.')[1]! });
const lengthOf = (pattern: Pattern, text: string): number =>
  pathLength(edgePath(pieceNamed(pattern, ref(text).piece), ref(text).edge));
const areaOf = (piece: Piece): number => signedArea(outlinePath(piece.outline));
const allWalk = (pattern: Pattern, name: RegExp) =>
  pattern.seams.filter(s => name.test(s.name)).map(s => [s.name, walkSeam(pattern, s).matches]);

/** A skirt front on the fold, its level waist 200 wide and broken by a dart of `mouth` mm, 100 long, in its middle. */
const skirt = (mouth: number): Pattern => {
  const [a, b] = [100 - mouth / 2, 100 + mouth / 2];
  return definePattern({
    name: 'skirt',
    pieces: [
      definePiece({
        name: 'front',
        outline: [
          { name: 'waist', role: 'waist', allowance: 10, path: polyline(at(0, 0), at(a, 0)) },
          {
            type: 'dart',
            name: 'dart',
            legs: [polyline(at(a, 0), at(100, 100)), polyline(at(100, 100), at(b, 0))],
            apex: at(100, 100),
          },
          { name: 'waist', role: 'waist', allowance: 10, path: polyline(at(b, 0), at(200, 0)) },
          { name: 'side', allowance: 10, path: polyline(at(200, 0), at(200, 600)) },
          { name: 'hem', kind: 'hem', allowance: 30, path: polyline(at(200, 600), at(0, 600)) },
          { name: 'centre-front', kind: 'fold', path: polyline(at(0, 600), at(0, 0)) },
        ],
        lines: [{ kind: 'grain', name: 'grain', path: polyline(at(40, 500), at(40, 200)) }],
      }),
    ],
  });
};
const waist = { name: 'waist facing', along: [ref('front.waist')], width: 50 };

describe('a facing over a dart', () => {
  // Hand sum: closed, the two halves of the waist meet at the angle of the dart, 2 atan(mouth / 200); the inner line is
  // parallel to both, shorter than the waist by 2 × 50 tan(half that) at the corner, and neither half is skewed.
  test('lies flat: as long as the waist without the dart, bent by the angle of the dart', () => {
    const { pattern, findings } = draftFacing(skirt(30), waist);
    validatePattern(pattern);
    const piece = pieceNamed(pattern, 'waist facing');
    expect(dartsOf(piece)).toEqual([]);
    expect(lengthOf(pattern, 'waist facing.waist')).toBeCloseTo(170, 6);
    const half = Math.atan(30 / 200);
    const ends = distance(pathStart(edgePath(piece, 'waist')), pathEnd(edgePath(piece, 'waist')));
    // 85 and 85 at an angle of 180° less the dart's.
    expect(ends).toBeCloseTo(2 * 85 * Math.cos(half), 6);
    // The dart widens the far side of the corner: the inner line is longer by it.
    expect(lengthOf(pattern, 'waist facing.inner')).toBeCloseTo(170 + 2 * 50 * Math.tan(half), 6);
    expect(findings.map(f => toldFinding(f).message)).toEqual([
      'The waist facing was traced with the dart of the front closed, so that it lies flat.',
    ]);
  });

  // Property: whatever the dart takes up, the facing is as long as what is left of the waist, and the walk proves it.
  test('is sewn to the waist with its darts sewn', () => {
    fc.assert(
      fc.property(fc.integer({ min: 4, max: 60 }), fc.integer({ min: 20, max: 80 }), (mouth, width) => {
        const before = skirt(mouth);
        const { pattern } = draftFacing(before, { ...waist, width });
        validatePattern(pattern);
        expect(lengthOf(pattern, 'waist facing.waist')).toBeCloseTo(200 - mouth, 6);
        expect(allWalk(pattern, /./)).toEqual([['waist facing', true]]);
        expect(pieceNamed(pattern, 'front')).toEqual(pieceNamed(before, 'front'));
        expect(foldEdgeOf(pieceNamed(pattern, 'waist facing'))?.name).toBe('centre-front');
      }),
      { numRuns: 25 },
    );
  });

  test('is drafted again when the dart has become another, and sewn on after it', () => {
    const drafted = draftFacing(skirt(30), waist);
    const narrower = skirt(20);
    const now = {
      ...drafted.pattern,
      pieces: drafted.pattern.pieces.map(p => (p.name === 'front' ? pieceNamed(narrower, 'front') : p)),
    };
    expect(lengthOf(refresh(now).pattern, 'waist facing.waist')).toBeCloseTo(180, 6);
    const jobs = orderOfWork(drafted.pattern, drafted.derived!, []).order.map(o => o.job);
    expect(jobs.indexOf('dart dart')).toBeLessThan(jobs.indexOf('facing waist facing'));
  });

  test('of a darted dress has no step where the darts were', () => {
    const along = [ref('skirt front.waist'), ref('skirt back.waist')];
    const { pattern } = draftFacing(demoPattern('darted-dress'), { name: 'facing', along, width: 60 });
    const own = checkPattern(pattern).filter(f => f.where.piece?.startsWith('facing'));
    expect(own.filter(f => f.severity !== 'note')).toEqual([]);
    expect(allWalk(pattern, /facing/).every(([, matches]) => matches)).toBe(true);
  });

  test('where no edge lies beyond the dart is refused, as is a stay: close the dart first', () => {
    const all = { ...waist, along: ['waist', 'side', 'hem'].map(edge => ref(`front.${edge}`)) };
    const error = refusalOf(() => draftFacing(skirt(30), all));
    expect(error).toMatchObject({ code: 'dart-in-facing', remedy: expect.stringContaining('Close') });
    expect(refusalOf(() => draftStay(skirt(30), waist)).remedy).toContain('close the darts');
  });
});

const combined = {
  name: 'facing',
  along: ['front.neck', 'front.armhole', 'back.neck', 'back.armhole'].map(ref),
};

describe('a combined facing', () => {
  // Property: neck, shoulder and armhole are the piece's own; it reaches as far down as asked; every seam walks.
  test('takes neck and armhole in one, and is sewn to the next at shoulder and side', () => {
    fc.assert(
      fc.property(fc.integer({ min: 40, max: 90 }), fc.integer({ min: 20, max: 42 }), (width, side) => {
        const before = shiftPattern();
        const { pattern, derived } = draftCombinedFacing(before, { ...combined, width, side });
        validatePattern(pattern);
        expect(derived!.map(d => d.name)).toEqual(['facing front', 'facing back']);
        for (const piece of ['front', 'back'])
          for (const edge of ['neck', 'shoulder', 'armhole'])
            expect(lengthOf(pattern, `facing ${piece}.${edge}`)).toBeCloseTo(
              lengthOf(before, `${piece}.${edge}`),
              9,
            );
        expect(lengthOf(pattern, 'facing back.side')).toBeCloseTo(side, 9);
        expect(foldEdgeOf(pieceNamed(pattern, 'facing front'))!.path).toSatisfy(
          path => Math.abs(pathLength(path as never) - width) < 1e-9,
        );
        expect(allWalk(pattern, /facing/)).toEqual([
          ['facing front', true],
          ['facing back', true],
          ['facing front and facing back at shoulder', true],
          ['facing front and facing back at side', true],
        ]);
        for (const piece of ['front', 'back'])
          expect(areaOf(pieceNamed(pattern, `facing ${piece}`))).toBeLessThan(
            areaOf(pieceNamed(before, piece)),
          );
      }),
      { numRuns: 15 },
    );
  });

  // Closed form: the lower line leaves the side and reaches the fold square to both.
  test('runs square to the fold and the side', () => {
    const { pattern } = draftCombinedFacing(shiftPattern(), combined);
    const piece = pieceNamed(pattern, 'facing back');
    const inner = edgePath(piece, 'inner').segments;
    const [first, last] = [inner[0]!, inner.at(-1)!];
    const away = subtract(first[1]!, first[0]!),
      to = subtract(last.at(-1)!, last.at(-2)!);
    const side = edgePath(piece, 'side'),
      fold = foldEdgeOf(piece)!.path;
    const square = (one: { x: number; y: number }, path: typeof side) => {
      const along = subtract(pathEnd(path), pathStart(path));
      return (
        Math.abs(one.x * along.x + one.y * along.y) / Math.hypot(along.x, along.y) / Math.hypot(one.x, one.y)
      );
    };
    expect(square(away, side)).toBeLessThan(0.02);
    expect(square(to, fold)).toBeLessThan(1e-6);
  });

  test('drafted one piece at a time is sewn to the other all the same, once at the shoulder', () => {
    const one = draftCombinedFacing(shiftPattern(), {
      ...combined,
      name: 'a',
      along: [ref('front.neck'), ref('front.armhole')],
    }).pattern;
    const both = draftCombinedFacing(one, {
      ...combined,
      name: 'b',
      along: [ref('back.armhole'), ref('back.neck')],
    }).pattern;
    expect(allWalk(both, / at /)).toEqual([
      ['b and a at shoulder', true],
      ['b and a at side', true],
    ]);
  });

  test('of a dress is traced with its shoulder dart closed, and drafted again', () => {
    const dress = demoPattern('darted-dress');
    const done = draftCombinedFacing(dress, { ...combined, side: 30 });
    validatePattern(done.pattern);
    expect(done.findings.map(f => f.code)).toEqual(['facing-over-darts']);
    // The dart's legs are drawn a thousandth apart.
    expect(lengthOf(done.pattern, 'facing back.shoulder')).toBeCloseTo(lengthOf(dress, 'back.shoulder'), 2);
    expect(allWalk(done.pattern, /facing/).map(([, matches]) => matches)).toEqual([true, true, true, true]);
    const again = refresh(done.pattern).pattern;
    expect(edgeNames(pieceNamed(again, 'facing back'))).toEqual(
      edgeNames(pieceNamed(done.pattern, 'facing back')),
    );
    expect(again.seams.length).toBe(done.pattern.seams.length);
  });

  test.each([
    ['no-shoulder-between', { along: [ref('front.neck')] }, {}],
    ['no-shoulder-between', { along: [ref('front.neck'), ref('front.hem')] }, {}],
    ['facing-end-too-wide', { width: 900 }, { width: 80 }],
    ['facing-too-wide', { width: 700, side: 5 }, { width: 90, side: 30 }],
  ] as const)('%s is refused, and what is said mends it', (code, wrong, right) => {
    const error = refusalOf(() => draftCombinedFacing(shiftPattern(), { ...combined, ...wrong }));
    expect([error.code, error.remedy === '']).toEqual([code, false]);
    expect(draftCombinedFacing(shiftPattern(), { ...combined, ...right }).derived).toHaveLength(2);
  });
});

describe('facings in the order of work', () => {
  const ordered = (pattern: Pattern, drafted: ReturnType<typeof draftFacing>) => {
    const { order, findings } = orderOfWork(pattern, drafted.derived!, []);
    expect(findings).toEqual([]);
    return order.map(o => o.job);
  };
  const follow = (jobs: readonly string[], ...names: readonly string[]) => {
    const places = names.map(name => jobs.indexOf(name));
    expect(places, jobs.join(', ')).not.toContain(-1);
    expect(places, jobs.join(', ')).toEqual([...places].sort((a, b) => a - b));
  };

  test('are joined to one another before they are sewn on', () => {
    const along = [ref('front.neck'), ref('back.neck')];
    const drafted = draftFacing(shiftPattern(), { name: 'neck facing', along, width: 60 });
    const joint = 'seam neck facing front and neck facing back at shoulder';
    follow(
      ordered(drafted.pattern, drafted),
      joint,
      'facing neck facing front',
      'understitch neck facing front',
    );
  });

  test('of neck and armhole in one are closed at the sides once they are turned', () => {
    const drafted = draftCombinedFacing(demoPattern('darted-dress'), { ...combined, side: 30 });
    const jobs = ordered(drafted.pattern, drafted);
    follow(
      jobs,
      'seam facing front and facing back at shoulder',
      'facing facing front',
      'seam facing front and facing back at side',
    );
    follow(jobs, 'facing facing back', 'seam facing front and facing back at side');
  });
});
