import { recutNeckline } from '@paperhinge/alter/edges';
import { draftFacing } from '@paperhinge/alter/made';
import {
  at,
  definePattern,
  definePiece,
  edgeNamed,
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
import { copiesInGarment, foldEdgeOf, outlinePath } from '@paperhinge/geometry/pattern';
import { signedArea } from '@paperhinge/geometry/regions';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf } from '../../support/told.js';

const ref = (text: string) => ({ piece: text.split('.')[0]!, edge: text.split('.')[1]! });
const areaOf = (piece: Piece): number => signedArea(outlinePath(piece.outline));
const lengthOf = (piece: Piece, edge: string): number => pathLength(edgePath(piece, edge));
const along = [ref('front.neck'), ref('back.neck')];

/** Front and back on the fold, level shoulders from 60 to 200, square necks 100 and 40 deep, drawn alike. */
const half = (name: string, depth: number, turned = false): Piece => {
  const x = (mm: number) => (turned ? -mm : mm);
  const parts = [
    { name: 'neck', allowance: 6, path: [at(x(0), depth), at(x(60), depth), at(x(60), 0)] },
    { name: 'shoulder', allowance: 10, path: [at(x(60), 0), at(x(200), 0)] },
    { name: 'side', path: [at(x(200), 0), at(x(200), 500)] },
    { name: 'hem', path: [at(x(200), 500), at(x(0), 500)] },
    { name: `centre ${name}`, kind: 'fold' as const, path: [at(x(0), 500), at(x(0), depth)] },
  ];
  const outline = parts.map(({ path, ...rest }) => ({
    ...rest,
    path: polyline(...(turned ? [...path].reverse() : path)),
  }));
  return definePiece({ name, outline: turned ? outline.reverse() : outline });
};
const boxes = (turned: boolean): Pattern =>
  definePattern({
    name: 'boxes',
    pieces: [half('front', 100), half('back', 40, turned)],
    seams: [
      {
        name: 'shoulder',
        a: [{ ...ref('front.shoulder'), reversed: false }],
        b: [{ ...ref('back.shoulder'), reversed: turned }],
        ease: { mm: 0 },
      },
    ],
  });
const facing = { name: 'neck facing', along, width: 50 };

describe('facings of two pieces', () => {
  test('are sewn to one another where their pieces are', () => {
    const { pattern, findings } = draftFacing(boxes(false), facing);
    validatePattern(pattern);
    expect(findings).toEqual([]);
    const seam = pattern.seams.find(s => s.name === 'neck facing front and neck facing back at shoulder')!;
    expect(seam.a).toEqual([{ piece: 'neck facing front', edge: 'shoulder', reversed: false }]);
    expect(seam.b).toEqual([{ piece: 'neck facing back', edge: 'shoulder', reversed: false }]);
    expect(walkSeam(pattern, seam).matches).toBe(true);
  });
  test('are so too when each is drafted by a step of its own, and once when drafted again', () => {
    const one = draftFacing(boxes(true), { ...facing, name: 'a', along: [along[0]!] }).pattern;
    const both = draftFacing(one, { ...facing, name: 'b', along: [along[1]!] }).pattern;
    const again = draftFacing(both, { ...facing, name: 'b', along: [along[1]!] }).pattern;
    for (const pattern of [both, again])
      expect(pattern.seams.map(s => s.name)).toEqual(['shoulder', 'a', 'b', 'b and a at shoulder']);
  });
  test('of slanting shoulders are sewn as far as the shorter end goes', () => {
    const { pattern } = draftFacing(shiftPattern(), { ...facing, width: 60 });
    const seam = pattern.seams.find(s => s.name.endsWith('at shoulder'))!;
    expect([...seam.a, ...seam.b].filter(run => run.part).length).toBeLessThanOrEqual(1);
    expect(walkSeam(pattern, seam).matches).toBe(true);
  });
});

describe('joined: yes', () => {
  // Hand sum: the front's 60 × 50 + 50 × 150, the back's 60 × 50 + 50 × 90.
  test.each([false, true])('front and back in one piece on the fold (back turned over: %s)', turned => {
    const { pattern, derived, findings } = draftFacing(boxes(turned), { ...facing, joined: true, join: 12 });
    validatePattern(pattern);
    expect(findings).toEqual([]);
    const piece = pieceNamed(pattern, 'neck facing');
    expect(areaOf(piece)).toBeCloseTo(60 * 50 + 50 * 150 + 60 * 50 + 50 * 90, 6);
    expect([...edgeNames(piece)].sort()).toEqual([
      'centre back',
      'centre front',
      'inner',
      'neck',
      'neck-back',
    ]);
    expect(foldEdgeOf(piece)?.name).toBe('centre front');
    expect(edgeNamed(piece, 'centre back')).toMatchObject({ kind: 'seam', allowance: 12 });
    expect(lengthOf(piece, 'inner')).toBeCloseTo(110 + 150 + 110 + 90, 6);
    expect(copiesInGarment(piece)).toBe(2);
    expect(piece.madeFor).toEqual(along);
    expect(derived).toEqual([
      expect.objectContaining({ name: 'neck facing', lengthMm: expect.closeTo(160 + 100, 6), widthMm: 50 }),
    ]);
    for (const seam of pattern.seams) expect(walkSeam(pattern, seam).findings).toEqual([]);
    expect(pattern.seams.map(s => s.name)).toEqual(['shoulder', 'neck facing', 'neck facing join']);
  });
  test('the order in which the edges are named decides which fold is kept, and nothing else', () => {
    const other = { ...facing, along: [along[1]!, along[0]!], joined: true };
    const piece = pieceNamed(draftFacing(boxes(false), other).pattern, 'neck facing');
    expect(foldEdgeOf(piece)?.name).toBe('centre back');
    expect(areaOf(piece)).toBeCloseTo(60 * 50 + 50 * 150 + 60 * 50 + 50 * 90, 6);
  });
  test('any shift: as much cloth as the two by themselves, and seams that walk', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 80, max: 150, noNaN: true }),
        fc.double({ min: 20, max: 70, noNaN: true }),
        (depth, width) => {
          const shift = shiftPattern({ frontNeckDepth: depth });
          const apart = draftFacing(shift, { ...facing, width }).pattern;
          const { pattern } = draftFacing(shift, { ...facing, width, joined: true });
          validatePattern(pattern);
          const sum = ['front', 'back'].reduce(
            (s, n) => s + areaOf(pieceNamed(apart, `neck facing ${n}`)),
            0,
          );
          // Where the two ends differ in length a sliver is bridged.
          expect(Math.abs(areaOf(pieceNamed(pattern, 'neck facing')) - sum)).toBeLessThan(2);
          expect(walkSeam(pattern, pattern.seams.find(s => s.name === 'neck facing')!).matches).toBe(true);
        },
      ),
      { numRuns: 20 },
    );
  });
  test('pieces that no seam joins are refused, and without "joined" they are drafted', () => {
    const loose = { ...boxes(false), seams: [] };
    const error = refusalOf(() => draftFacing(loose, { ...facing, joined: true }));
    expect([error.code, error.remedy]).toEqual(['facings-do-not-join', 'Draft them without "joined".']);
    expect(draftFacing(loose, facing).derived).toHaveLength(2);
  });
});

describe('a seam between panels', () => {
  // A front in two panels, 60 and 140 mm of straight top edge.
  const panels = definePattern({
    name: 'panels',
    pieces: [
      definePiece({
        name: 'centre',
        outline: [
          { name: 'top', path: polyline(at(0, 0), at(60, 0)) },
          { name: 'panel', path: polyline(at(60, 0), at(60, 300)) },
          { name: 'hem', kind: 'hem', path: polyline(at(60, 300), at(0, 300)) },
          { name: 'fold', kind: 'fold', path: polyline(at(0, 300), at(0, 0)) },
        ],
      }),
      definePiece({
        name: 'side',
        cutting: { count: 2 },
        outline: [
          { name: 'top', path: polyline(at(500, 0), at(640, 0)) },
          { name: 'side', path: polyline(at(640, 0), at(640, 300)) },
          { name: 'hem', kind: 'hem', path: polyline(at(640, 300), at(500, 300)) },
          { name: 'panel', path: polyline(at(500, 300), at(500, 0)) },
        ],
      }),
    ],
    seams: [
      {
        name: 'panel',
        a: [{ ...ref('centre.panel'), reversed: false }],
        b: [{ ...ref('side.panel'), reversed: true }],
        ease: { mm: 0 },
      },
    ],
  });
  const top = { name: 'facing', along: [ref('centre.top'), ref('side.top')], width: 40 };
  test('stops the facing, which is sewn there too', () => {
    const { pattern } = draftFacing(panels, top);
    const seam = pattern.seams.find(s => s.name === 'facing centre and facing side at panel')!;
    expect(walkSeam(pattern, seam)).toMatchObject({ matches: true, aMm: 40 });
  });
  test('or is run over by it, joined', () => {
    const { pattern } = draftFacing(panels, { ...top, joined: true });
    const piece = pieceNamed(pattern, 'facing');
    expect(areaOf(piece)).toBeCloseTo(200 * 40, 6);
    expect(lengthOf(piece, 'inner')).toBeCloseTo(200, 6);
    expect([foldEdgeOf(piece)?.name, piece.cutting.count]).toEqual(['fold', 1]);
    expect(pattern.seams.map(s => s.name)).toEqual(['panel', 'facing']);
    expect(walkSeam(pattern, pattern.seams.at(-1)!).matches).toBe(true);
  });
});

// Found case deep-v-on-fold: a V steeper than 23.6° had a facing of half its front, without a fold.
describe('a steep V', () => {
  test.each([140, 200, 400])('%d mm deep: its facing runs down the fold as far as its width needs', depth => {
    const cut = recutNeckline(shiftPattern({ length: 1100 }), { piece: 'front', shape: 'V', depth }).pattern;
    const { pattern } = draftFacing(cut, { name: 'v', along: [ref('front.neck')], width: 60 });
    const piece = pieceNamed(pattern, 'v');
    expect(foldEdgeOf(piece)?.name).toBe('centre-front');
    const [p, q] = [
      edgePath(piece, 'neck').segments[0]![0],
      edgePath(piece, 'neck').segments.at(-1)!.at(-1)!,
    ];
    const half = Math.atan2(Math.abs(q.x - p.x), Math.abs(q.y - p.y));
    expect(lengthOf(piece, 'centre-front')).toBeCloseTo(60 / Math.sin(half), 6);
  });
});
