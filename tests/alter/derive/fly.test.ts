import { readFileSync } from 'node:fs';
import { orderOfWork } from '@paperhinge/alter';
import { addFlyExtension, recutEdge } from '@paperhinge/alter/edges';
import { draftFly, refresh } from '@paperhinge/alter/made';
import {
  at,
  checkPattern,
  definePattern,
  definePiece,
  edgeNamed,
  edgePath,
  type Pattern,
  type Piece,
  type Point,
  pathLength,
  pieceNamed,
  polyline,
  readPattern,
  validatePattern,
  walkSeam,
} from '@paperhinge/geometry';
import { nearestOnPath, pathEnd, pathStart, pointAlong, reversedPath } from '@paperhinge/geometry/paths';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { signedArea } from '@paperhinge/geometry/regions';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { refusalOf, sentence } from '../../support/told.js';

const trousers: Pattern = readPattern(
  readFileSync(new URL('../../../demos/patterns/trousers.svg', import.meta.url)),
  { file: 'trousers' },
).pattern;
const seamOf = (pattern: Pattern, name: string) => pattern.seams.find(s => s.name === name)!;
const walked = (pattern: Pattern, name: string) => walkSeam(pattern, seamOf(pattern, name));
const lengthOf = (pattern: Pattern, piece: string, edge: string): number =>
  pathLength(edgePath(pieceNamed(pattern, piece), edge));
const areaOf = (piece: Piece): number => signedArea(outlinePath(piece.outline));

/** A trouser front, its centre front straight down for 240: as drawn the wearer's left one, or turned over the right one. */
const front = (turned = false): Pattern => {
  const path = (...points: readonly Point[]) =>
    polyline(...(turned ? points.map(({ x, y }) => at(-x, y)).toReversed() : points));
  const ring = [
    { name: 'waist', role: 'waist', allowance: 10, path: path(at(0, 0), at(200, 0)) },
    { name: 'outseam', role: 'outseam', allowance: 15, path: path(at(200, 0), at(240, 200), at(200, 1000)) },
    { name: 'hem', kind: 'hem', allowance: 40, path: path(at(200, 1000), at(20, 1000)) },
    { name: 'inseam', role: 'inseam', allowance: 15, path: path(at(20, 1000), at(-60, 300)) },
    {
      name: 'crotch',
      role: 'crotch',
      allowance: 12,
      path: path(at(-60, 300), at(-20, 280), at(0, 240), at(0, 0)),
    },
  ] as const;
  return definePattern({
    name: 'trousers',
    pieces: [
      definePiece({
        name: 'front',
        role: 'trouser',
        cutting: { count: 2, mirrored: true, fabric: 'main' },
        outline: turned ? ring.toReversed() : ring,
        lines: [{ kind: 'grain', name: 'grain', path: path(at(100, 800), at(100, 300)) }],
      }),
    ],
    seams: [
      {
        name: 'front crotch',
        a: [{ piece: 'front', edge: 'crotch', reversed: !turned }],
        b: [{ piece: 'front', edge: 'crotch', reversed: !turned }],
        ease: { mm: 0 },
      },
    ],
  });
};
const fly = { name: 'fly', piece: 'front', edge: 'crotch', length: 170 } as const;
const extension = { piece: 'front', edge: 'crotch', length: 170 } as const;

describe('a fly with a facing of its own', () => {
  // Hand sum: the facing is 40 wide and 170 + 15 long; above the round its inner line runs 40 beside the centre.
  test.each([false, true])(
    'has facing and shield by its measures, the front drawn turned over: %s',
    turned => {
      const before = front(turned);
      const { pattern, derived } = draftFly(before, fly);
      validatePattern(pattern);
      expect(derived!.map(d => d.name)).toEqual(['fly facing', 'fly shield']);
      expect(lengthOf(pattern, 'fly facing', 'centre')).toBeCloseTo(185, 9);
      expect(lengthOf(pattern, 'fly facing', 'waist')).toBeCloseTo(40, 9);
      const facing = pieceNamed(pattern, 'fly facing');
      const centre = edgePath(facing, 'centre'),
        waist = edgePath(facing, 'waist');
      const drawn = edgePath(facing, 'inner');
      const inner = nearestOnPath(waist, pathStart(drawn)).distance < 1e-6 ? drawn : reversedPath(drawn);
      for (const down of [0, 60, 125])
        expect(nearestOnPath(centre, pointAlong(inner, down)).distance).toBeCloseTo(40, 6);
      // 45 wide when folded.
      expect(areaOf(pieceNamed(pattern, 'fly shield'))).toBeCloseTo(2 * 45 * 185, 6);
      expect(edgeNamed(pieceNamed(pattern, 'front'), 'crotch').opening).toBe(170);
      for (const seam of ['fly facing', 'fly shield'])
        expect(walked(pattern, seam)).toMatchObject({ matches: true, aMm: 185, findings: [] });
      expect(areaOf(pieceNamed(pattern, 'front'))).toBeCloseTo(areaOf(pieceNamed(before, 'front')), 9);
    },
  );

  // Left and right differ: the same drawing gives one facing for either side, each the other turned over.
  test('is cut once, right side up, for the front that lies uppermost, and topstitched there alone', () => {
    const [right, left] = (['right', 'left'] as const).map(
      over => draftFly(front(), { ...fly, over }).pattern,
    );
    const facings = [right!, left!].map(pattern => pieceNamed(pattern, 'fly facing'));
    for (const { cutting } of facings)
      expect(cutting).toEqual({ count: 1, mirrored: false, rightSideUp: true, fabric: 'main' });
    // The drawn front is the wearer's left; the right one is it turned over, and its facing that turned over again.
    const side = (piece: Piece) =>
      Math.sign(middle(edgePath(piece, 'inner')) - middle(edgePath(piece, 'centre')));
    const middle = (path: ReturnType<typeof edgePath>) => pointAlong(path, pathLength(path) / 2).x;
    expect(facings.map(side)).toEqual([1, -1]);
    expect(
      [right!, left!].map(p =>
        pieceNamed(p, 'front')
          .lines.filter(l => l.kind === 'style')
          .map(l => l.name),
      ),
    ).toEqual([['fly topstitching, right front'], ['fly topstitching, left front']]);
    const stitched = pieceNamed(right!, 'front').lines.find(l => l.kind === 'style')!.path;
    expect(nearestOnPath(stitched, at(33, 80)).distance).toBeLessThan(1e-6);
    expect(pathEnd(stitched)).toEqual(at(0, 170));
  });

  // Property: any opening; both pieces are sewn to the centre front as far as they reach.
  test('walks on the centre front of trousers whose front is not straight', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 120, max: 220 }),
        fc.integer({ min: 0, max: 25 }),
        fc.integer({ min: 25, max: 60 }),
        fc.constantFrom('right' as const, 'left' as const),
        (length, below, width, over) => {
          const { pattern } = draftFly(trousers, { ...fly, length, below, width, over });
          validatePattern(pattern);
          for (const seam of ['fly facing', 'fly shield']) {
            expect(walked(pattern, seam).matches).toBe(true);
            expect(walked(pattern, seam).findings).toEqual([]);
          }
          expect(pattern.fastenings!.filter(f => f.kind === 'zip')).toMatchObject([{ name: 'fly', length }]);
          expect(checkPattern(pattern).filter(f => f.severity === 'fault')).toEqual([]);
        },
      ),
      { numRuns: 20 },
    );
  });

  test('is sewn facing, zip, shield, and before the legs are closed', () => {
    const { pattern, derived } = draftFly(trousers, fly);
    const { order, findings } = orderOfWork(pattern, derived!, []);
    expect(findings).toEqual([]);
    const jobs = order.map(o => o.job);
    const follow = [
      'fuse fly facing',
      'seam fly facing',
      'zip fly',
      'seam fly shield',
      'seam inseam',
      'seam waist',
    ];
    const places = follow.map(j => jobs.indexOf(j));
    expect(places, jobs.join(', ')).not.toContain(-1);
    expect(places, jobs.join(', ')).toEqual([...places].sort((a, b) => a - b));
    for (const { text } of order) expect(sentence(text)).not.toMatch(/[a-z]\.[a-z]|undefined/);
  });

  test('is drafted again on a centre front that has changed', () => {
    const drafted = draftFly(trousers, fly).pattern;
    const wider = recutEdge(drafted, { piece: 'front', edge: 'crotch', out: 6 }).pattern;
    const again = refresh(wider).pattern;
    validatePattern(again);
    expect(walked(again, 'fly facing').matches).toBe(true);
    const fresh = draftFly(wider, { ...fly, name: 'anew' }).pattern;
    expect(areaOf(pieceNamed(again, 'fly facing'))).toBeCloseTo(areaOf(pieceNamed(fresh, 'anew facing')), 6);
  });
});

describe('a fly in one with the fronts', () => {
  // Hand sum: folded back in the straight centre front it lies on the front: as wide, its end along the waist.
  test.each([false, true])(
    'stands beyond the centre front turned over, the front drawn turned over: %s',
    turned => {
      const before = front(turned);
      const { pattern, findings } = addFlyExtension(before, extension);
      validatePattern(pattern);
      expect(findings).toEqual([]);
      const side = turned ? 1 : -1;
      const piece = pieceNamed(pattern, 'front');
      expect(lengthOf(pattern, 'front', 'fly-waist')).toBeCloseTo(40, 9);
      const outer = edgePath(piece, 'fly');
      for (const y of [5, 60, 125])
        expect(nearestOnPath(outer, at(side * 40, y)).distance).toBeLessThan(1e-6);
      expect(nearestOnPath(outer, at(0, 185)).distance).toBeLessThan(1e-6);
      for (const edge of ['waist', 'outseam', 'hem', 'inseam'])
        expect(lengthOf(pattern, 'front', edge)).toBeCloseTo(lengthOf(before, 'front', edge), 9);
      expect(lengthOf(pattern, 'front', 'crotch')).toBeCloseTo(lengthOf(before, 'front', 'crotch') - 185, 9);
      // More cloth by 40 × 185 less what the round takes off.
      const grown = areaOf(piece) - areaOf(pieceNamed(before, 'front'));
      expect(grown).toBeGreaterThan(40 * 185 - 40 * 55);
      expect(grown).toBeLessThan(40 * 185);
      expect(walked(pattern, 'front crotch').matches).toBe(true);
      expect(pattern.fastenings).toMatchObject([{ kind: 'zip', length: 170, along: { edge: 'fly' } }]);
      expect(piece.lines.filter(l => l.kind === 'fold').map(l => l.name)).toEqual([
        'fly fold, right front',
        'fly fold, left front',
      ]);
      const fold = piece.lines.find(l => l.name === 'fly fold, left front')!.path;
      expect(nearestOnPath(fold, at(side * 8, 60)).distance).toBeLessThan(1e-6);
    },
  );

  test('takes a shield of its own, sewn to its free edge', () => {
    const grown = addFlyExtension(front(), extension).pattern;
    const { pattern, derived } = draftFly(grown, { ...fly, edge: 'fly', length: 140, facing: false });
    expect(derived!.map(d => d.name)).toEqual(['fly shield']);
    expect(walked(pattern, 'fly shield').matches).toBe(true);
    expect(pieceNamed(pattern, 'front').lines).toEqual(pieceNamed(grown, 'front').lines);
  });

  const refused: readonly (readonly [string, Pattern, object, Pattern, object])[] = [
    ['fly-not-at-waist', front(), { edge: 'hem' }, front(), {}],
    ['fly-beyond-edge', front(), { length: 320 }, front(), { length: 200 }],
    ['fly-edge-bent', trousers, {}, front(), {}],
    ['facing-end-too-wide', front(), { width: 260 }, front(), { width: 60 }],
  ];
  test.each(refused)('%s is refused, and what is said mends it', (code, pattern, wrong, sound, right) => {
    const error = refusalOf(() => addFlyExtension(pattern, { ...extension, ...wrong }));
    expect([error.code, error.remedy === '']).toEqual([code, false]);
    expect(() => addFlyExtension(sound, { ...extension, ...right })).not.toThrow();
  });

  test('on a fold is refused, also for a facing of its own; one may be given where the centre bends', () => {
    const folded = definePattern({
      name: 'skirt',
      pieces: [
        definePiece({
          name: 'front',
          outline: [
            { name: 'waist', role: 'waist', path: polyline(at(0, 0), at(200, 0)) },
            { name: 'side', path: polyline(at(200, 0), at(200, 600)) },
            { name: 'hem', kind: 'hem', path: polyline(at(200, 600), at(0, 600)) },
            { name: 'centre', kind: 'fold', path: polyline(at(0, 600), at(0, 0)) },
          ],
        }),
      ],
    });
    for (const work of [addFlyExtension, (p: Pattern, w: typeof extension) => draftFly(p, { ...fly, ...w })])
      expect(refusalOf(() => work(folded, { ...extension, edge: 'centre' } as never))).toMatchObject({
        code: 'fly-on-fold',
        remedy: expect.stringContaining('fold to seam'),
      });
    expect(refusalOf(() => addFlyExtension(trousers, extension)).remedy).toContain('draft fly');
    expect(draftFly(trousers, fly).derived).toHaveLength(2);
  });
});
