import { recutNeckline, setAllowance } from '@paperhinge/alter/edges';
import { draftBand } from '@paperhinge/alter/made';
import { unfold } from '@paperhinge/alter/seams';
import {
  at,
  cuttingLine,
  definePattern,
  definePiece,
  edgeNamed,
  edgePath,
  type Pattern,
  type Piece,
  pathLength,
  pieceNamed,
  polyline,
  readPattern,
  validatePattern,
  walkSeam,
  walkSeams,
  writePattern,
} from '@paperhinge/geometry';
import { boundsOfPath } from '@paperhinge/geometry/paths';
import { signedArea } from '@paperhinge/geometry/regions';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldDid } from '../../support/told.js';

const lengthOf = (pattern: Pattern, piece: string, edge: string): number =>
  pathLength(edgePath(pieceNamed(pattern, piece), edge));
const ref = (text: string) => ({ piece: text.split('.')[0]!, edge: text.split('.')[1]! });
const neck = [ref('front.neck'), ref('back.neck')];
const plain = {
  name: 'neckband',
  along: neck,
  ratio: 0.8,
  width: 56,
  join: 7,
  stretchedPart: 'whole',
} as const;

/** The shift with stretch cloth, an inset V in its front and allowances of 7 mm: the demo before its band. */
function top(): Pattern {
  const shift = shiftPattern();
  const cloth = {
    ...shift,
    fabrics: [
      { name: 'main', role: 'main' as const, stretch: { across: 40 } },
      { name: 'contrast', role: 'contrast' as const, stretch: { across: 45 } },
    ],
  };
  const cut = recutNeckline(cloth, { piece: 'front', shape: 'inset V', depth: 85, halfWidth: 45 }).pattern;
  return setAllowance(cut, { edges: 'all seams', to: 7 }).pattern;
}
const withGap = { ...plain, gap: ref('front.inset'), fabric: 'contrast' } as const;

describe('the length by hand', () => {
  test('without a gap it is ratio × the whole neck and two joins', () => {
    const pattern = setAllowance(shiftPattern(), { edges: 'all seams', to: 7 }).pattern;
    const whole = 2 * (lengthOf(pattern, 'front', 'neck') + lengthOf(pattern, 'back', 'neck'));
    const { derived } = draftBand(pattern, plain);
    expect(derived![0]!.edgeMm).toBeCloseTo(whole, 9);
    expect(derived![0]!.lengthMm).toBeCloseTo(0.8 * whole + 14, 9);
    expect(derived![0]!.figures).toMatchObject({ gapMm: 0, joinMm: 7, ratioPercent: 80 });
    expect(derived![0]!.figures.stretchPercent).toBeCloseTo(25, 9);
  });

  test('cut narrower than its two allowances, it is stitched a quarter of its width in, and says so', () => {
    const pattern = setAllowance(shiftPattern(), { edges: 'all seams', to: 15 }).pattern;
    const { pattern: after, findings } = draftBand(pattern, { ...plain, width: 28 });
    validatePattern(after);
    const band = pieceNamed(after, 'neckband');
    expect(edgeNamed(band, 'sewn').allowance).toBe(7);
    expect(lengthOf(after, 'neckband', 'join-start')).toBeCloseTo(14, 9);
    expect(findings.map(f => [f.severity, f.code])).toContainEqual(['warning', 'narrower-than-allowances']);
  });

  test('with a gap the ratio is of neck and gap, and the sewn part takes all the stretch', () => {
    const pattern = top();
    const e = 2 * (lengthOf(pattern, 'front', 'neck') + lengthOf(pattern, 'back', 'neck'));
    const band = draftBand(pattern, withGap).derived![0]!;
    expect(band.figures.gapMm).toBeCloseTo(90, 9);
    expect(band.lengthMm).toBeCloseTo(0.8 * (e + 90) + 14, 9);
    expect(band.figures.stretchPercent).toBeCloseTo((e / (0.8 * (e + 90) - 90) - 1) * 100, 9);
    expect(band.figures.quarterMm).toBeCloseTo((0.8 * (e + 90)) / 4, 9);
  });

  test('stretching the sewn part only leaves the gap its own length', () => {
    const pattern = top();
    const e = 2 * (lengthOf(pattern, 'front', 'neck') + lengthOf(pattern, 'back', 'neck'));
    const band = draftBand(pattern, { ...withGap, stretchedPart: 'sewn' }).derived![0]!;
    expect(band.lengthMm).toBeCloseTo(0.8 * e + 90 + 14, 9);
    expect(band.figures.stretchPercent).toBeCloseTo(25, 9);
  });

  // Rib band: 16 in of neck at three quarters is 12 in (Home Sewing Association) [read, check-values §4].
  test('inches are said to the nearest eighth, the exact figure stands in the record', () => {
    const square = oneRing(406.4 / 4);
    const done = draftBand(
      { ...square, unit: 'in' },
      { ...plain, along: [ref('half.neck')], ratio: 0.75, join: 0 },
    );
    expect(done.derived![0]!.lengthMm).toBeCloseTo(304.8, 9);
    expect(toldDid(done, 'in')).toContain('cut 12 in × 2 1/4 in (to the nearest 1/8 in)');
  });
});

/** A half piece on the fold whose neck, `quarter` × 2 long, closes into a ring with its mirror image. */
function oneRing(quarter: number): Pattern {
  const half = definePiece({
    name: 'half',
    outline: [
      { name: 'neck', allowance: 5, path: polyline(at(0, 0), at(quarter * 2, 0)) },
      { name: 'back', kind: 'fold', path: polyline(at(quarter * 2, 0), at(quarter * 2, 300)) },
      { name: 'hem', path: polyline(at(quarter * 2, 300), at(0, 300)) },
      { name: 'front', kind: 'seam', path: polyline(at(0, 300), at(0, 0)) },
    ],
  });
  return definePattern({ name: 'p', pieces: [half] });
}

describe('the band as a piece', () => {
  test('its cutting line is exactly length by width', () => {
    const { pattern, derived } = draftBand(top(), withGap);
    const band = pieceNamed(pattern, 'neckband');
    const line = cuttingLine(band).path;
    const { min, max } = boundsOfPath(line);
    expect(max.x - min.x).toBeCloseTo(derived![0]!.lengthMm, 6);
    expect(max.y - min.y).toBeCloseTo(56, 6);
    expect(signedArea(line)).toBeCloseTo(derived![0]!.lengthMm * 56, 4);
    expect(band.cutting).toMatchObject({ count: 1, fabric: 'contrast' });
    expect(band.madeFor).toEqual(neck);
    expect(edgeNamed(band, 'sewn').allowance).toBe(7);
    expect(edgeNamed(band, 'join-end').allowance).toBe(7);
  });

  test('is marked in halves and quarters, at the gap and at the shoulders, which fall where the stretch puts them', () => {
    const pattern = top();
    const { pattern: done, derived } = draftBand(pattern, withGap);
    const {
      finishedLengthMm: length,
      gapMm,
      stretchPercent,
    } = derived![0]!.figures as Record<string, number>;
    const marks = pieceNamed(done, 'neckband').notches.map(n => ({ name: n.name, at: n.at }));
    const shoulder = lengthOf(pattern, 'back', 'neck') / (1 + stretchPercent! / 100);
    expect(marks.map(m => m.name)).toEqual([
      'shoulder seam',
      'quarter',
      'gap end',
      'half',
      'gap end',
      'quarter',
      'shoulder seam',
    ]);
    const places = [
      shoulder,
      length! / 4,
      (length! - gapMm!) / 2,
      length! / 2,
      (length! + gapMm!) / 2,
      (length! * 3) / 4,
      length! - shoulder,
    ];
    for (const [i, place] of places.entries()) expect(marks[i]!.at).toBeCloseTo(place, 6);
  });

  test('the neck is marked where the quarters fall, once, however often the band is drafted', () => {
    const once = draftBand(top(), withGap).pattern;
    const twice = draftBand(once, withGap).pattern;
    const marks = (p: Pattern) =>
      p.pieces.flatMap(q =>
        q.notches.filter(n => n.name === 'neckband quarter').map(n => [q.name, n.edge, n.at]),
      );
    expect(marks(once)).toHaveLength(1);
    expect(marks(twice)).toEqual(marks(once));
    expect(twice.seams.map(s => s.name)).toEqual(once.seams.map(s => s.name));
  });

  test('it takes the place of the old neckband in its seam, and walks true', () => {
    const before = top();
    const done = draftBand(before, withGap);
    const { pattern, findings } = done;
    validatePattern(pattern);
    expect(pattern.pieces.map(p => p.name)).toEqual(before.pieces.map(p => p.name));
    expect(pattern.seams.map(s => s.name)).toEqual([
      'shoulder',
      'side',
      'underarm',
      'armhole',
      'neck',
      'neckband join',
    ]);
    expect(pattern.seams[4]!.b.map(r => `${r.piece}.${r.edge}${r.reversed ? ' reversed' : ''}`)).toEqual([
      'back.neck',
      'front.neck reversed',
      'front.neck',
      'back.neck reversed',
    ]);
    expect(walkSeams(pattern).flatMap(w => w.findings)).toEqual([]);
    expect(findings.map(f => f.code)).toEqual(['piece-replaced']);
    expect(toldDid(done)).toContain('takes the place');
  });

  test('with another name it is added, with a seam of that name', () => {
    const { pattern, findings } = draftBand(top(), { ...withGap, name: 'collar' });
    expect(pattern.pieces.map(p => p.name)).toContain('neckband');
    const seam = pattern.seams.find(s => s.name === 'collar')!;
    expect(walkSeam(pattern, seam).matches).toBe(true);
    expect(findings).toEqual([]);
  });

  test('written and read again it walks with the same figures', () => {
    const { pattern } = draftBand(top(), withGap);
    const again = readPattern(writePattern(pattern)).pattern;
    for (const [i, walk] of walkSeams(pattern).entries()) {
      expect(walkSeams(again)[i]!.aMm).toBeCloseTo(walk.aMm, 5);
      expect(walkSeams(again)[i]!.matches).toBe(walk.matches);
    }
  });

  test('a whole front gives the same band as one on the fold', () => {
    const shift = unfold(shiftPattern(), { piece: 'front' }).pattern;
    const cut = recutNeckline(shift, { piece: 'front', shape: 'inset V', depth: 85, halfWidth: 45 }).pattern;
    const pattern = setAllowance(cut, { edges: 'all seams', to: 7 }).pattern;
    const [one, other] = [draftBand(top(), withGap), draftBand(pattern, withGap)];
    expect(other.derived![0]!.lengthMm).toBeCloseTo(one.derived![0]!.lengthMm, 6);
    const places = (p: Pattern) => pieceNamed(p, 'neckband').notches.map(n => n.at);
    for (const [i, place] of places(one.pattern).entries())
      expect(places(other.pattern)[i]).toBeCloseTo(place, 6);
    expect(walkSeams(other.pattern).flatMap(w => w.findings)).toEqual([]);
  });

  test('any ratio, width and join give a sound piece whose seam walks', () => {
    const pattern = top();
    const share = fc.double({ min: 0.35, max: 2, noNaN: true });
    fc.assert(
      fc.property(
        share,
        fc.double({ min: 20, max: 200, noNaN: true }),
        fc.double({ min: 0, max: 30, noNaN: true }),
        (ratio, width, join) => {
          const { pattern: done, derived } = draftBand(pattern, { ...withGap, ratio, width, join });
          validatePattern(done);
          expect(walkSeam(done, done.seams[4]!).matches).toBe(true);
          const { edgeMm, lengthMm, figures } = derived![0]!;
          expect((1 + figures.stretchPercent! / 100) * (lengthMm - 2 * join - figures.gapMm!)).toBeCloseTo(
            edgeMm,
            6,
          );
        },
      ),
      { numRuns: 30 },
    );
  });
});

describe('what the maker must know', () => {
  test('a fault above the stretch of the cloth, a warning above 80 % of it', () => {
    const severity = (ratio: number) =>
      draftBand(top(), { ...withGap, ratio })
        .findings.filter(f => f.code.startsWith('band-'))
        .map(f => [f.severity, f.where.piece]);
    expect(severity(0.8)).toEqual([]);
    expect(severity(0.76)).toEqual([['warning', 'neckband']]);
    expect(severity(0.7)).toEqual([['fault', 'neckband']]);
  });

  test('edges with different allowances are a warning', () => {
    const pattern = setAllowance(top(), { edges: [ref('back.neck')], to: 10 }).pattern;
    expect(draftBand(pattern, withGap).findings.map(f => f.code)).toContain('allowances-differ');
  });

  test('edges that make a ring on either side get a pair, all figures those of one', () => {
    const before = top();
    const { derived, findings, pattern } = draftBand(before, {
      ...plain,
      name: 'armband',
      along: [ref('front.armhole'), ref('back.armhole')],
      ratio: 0.9,
    });
    const ring = lengthOf(before, 'front', 'armhole') + lengthOf(before, 'back', 'armhole');
    expect(derived![0]).toMatchObject({ count: 2, edgeMm: expect.closeTo(ring, 9) });
    expect(derived![0]!.lengthMm).toBeCloseTo(0.9 * ring + 14, 9);
    expect(pieceNamed(pattern, 'armband').cutting).toMatchObject({ count: 2, mirrored: true });
    expect(findings.map(f => f.code)).toContain('one-for-each');
    for (const name of ['armband', 'armband join'])
      expect(walkSeam(pattern, pattern.seams.find(s => s.name === name)!).matches).toBe(true);
  });

  test('the order of work is told how to sew it', () => {
    const [note] = draftBand(top(), withGap).making!;
    expect(note).toMatchObject({ job: 'band neckband', after: [] });
    expect(toldDid({ did: note!.text })).toMatch(/gap's ends first, stretch it evenly by 31 %/);
  });
});

describe('what cannot be drafted is refused', () => {
  test.each([
    ['edges-do-not-join', { along: [ref('front.neck'), ref('sleeve.hem')] }],
    ['edges-do-not-join', { along: [ref('front.neck'), ref('front.hem')] }],
    ['band-too-short', { ratio: 0.1, gap: ref('front.inset') }],
    ['field-out-of-range', { ratio: 0 }],
    ['field-out-of-range', { ratio: 2.5 }],
    ['field-out-of-range', { width: -3 }],
    ['field-out-of-range', { join: -1 }],
    ['field-not-usable', { along: [] }],
    ['gap-not-beside', { gap: ref('front.hem') }],
    ['gap-also-along', { gap: ref('front.neck') }],
    ['drafted-along-itself', { along: [ref('neckband.lower')] }],
    ['unknown-edge', { along: [ref('front.nek')] }],
    ['unknown-piece', { along: [ref('yoke.neck')] }],
  ] as const)('%s %j', (code, change) => {
    const error = refusalOf(() => draftBand(top(), { ...plain, ...change }));
    expect(error.code).toBe(code);
    expect(error.remedy).not.toBe('');
  });
});

test('a band along an open edge has no join with itself', () => {
  const front: Piece = definePiece({
    name: 'flap',
    outline: [
      { name: 'top', path: polyline(at(0, 0), at(100, 0)) },
      { name: 'right', path: polyline(at(100, 0), at(100, 80)) },
      { name: 'bottom', path: polyline(at(100, 80), at(0, 80)) },
      { name: 'left', path: polyline(at(0, 80), at(0, 0)) },
    ],
  });
  const pattern = definePattern({ name: 'p', pieces: [front] });
  const { pattern: done, derived } = draftBand(pattern, {
    ...plain,
    name: 'edging',
    along: [ref('flap.top'), ref('flap.right')],
    ratio: 1,
  });
  expect(derived![0]!.lengthMm).toBeCloseTo(180 + 14, 9);
  expect(done.seams.map(s => s.name)).toEqual(['edging']);
  expect(pieceNamed(done, 'edging').notches.map(n => n.name)).toContain('quarter');
});
