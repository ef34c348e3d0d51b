import { changedSeams } from '@paperhinge/alter';
import { recutNeckline } from '@paperhinge/alter/edges';
import { spread } from '@paperhinge/alter/fullness';
import { lengthen, shorten } from '@paperhinge/alter/length';
import { draftBand, refresh } from '@paperhinge/alter/made';
import {
  at,
  definePattern,
  definePiece,
  edgePath,
  type Pattern,
  pathLength,
  pieceNamed,
  polyline,
  walkSeam,
} from '@paperhinge/geometry';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { toldFinding } from '../../support/told.js';

const lengthOf = (pattern: Pattern, piece: string, edge: string): number =>
  pathLength(edgePath(pieceNamed(pattern, piece), edge));

/** A panel 100 wide at the waist, 100 + flare at the hem, 400 long, its side on the right or, mirrored, on the left. */
const panel = (name: string, flare: number, way: 1 | -1) => {
  const spot = (x: number, y: number) => at(way * x, y);
  const outline = [
    { name: 'waist', path: polyline(spot(0, 0), spot(100, 0)) },
    { name: 'side', path: polyline(spot(100, 0), spot(100 + flare, 400)) },
    { name: 'hem', kind: 'hem' as const, path: polyline(spot(100 + flare, 400), spot(0, 400)) },
    { name: 'centre', kind: 'fold' as const, path: polyline(spot(0, 400), spot(0, 0)) },
  ];
  return definePiece({
    name,
    outline:
      way === 1
        ? outline
        : outline
            .map(e => ({ ...e, path: polyline(e.path.segments[0]!.at(-1)!, e.path.segments[0]![0]) }))
            .reverse(),
    lines: [
      { kind: 'grain', name: 'grain', path: polyline(spot(20, 50), spot(20, 350)) },
      { kind: 'level', name: 'knee', path: polyline(spot(0, 300), spot(100 + (flare * 3) / 4, 300)) },
    ],
  });
};
const run = (piece: string, edge: string, reversed = false) => ({ piece, edge, reversed });
const skirt = (flare: number, way: 1 | -1 = 1): Pattern =>
  definePattern({
    name: 'skirt',
    pieces: [panel('front', flare, 1), panel('back', flare, way)],
    seams: [
      { name: 'side', a: [run('front', 'side')], b: [run('back', 'side', way === -1)], ease: { mm: 0 } },
    ],
  });

describe('both sides of a seam', () => {
  // Property: whatever a step with matching takes off, every seam that matched still does.
  test('shortened or lengthened together, at the hem or at a line, they still match', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 80 }),
        fc.integer({ min: 5, max: 90 }),
        fc.constantFrom('hem', 'knee'),
        fc.boolean(),
        (flare, by, place, longer) => {
          const before = skirt(flare);
          const change = longer ? lengthen : shorten;
          const after = change(before, { pieces: ['front'], at: place, by, matching: true }).pattern;
          expect(walkSeam(after, after.seams[0]!).matches).toBe(true);
          expect(lengthOf(after, 'back', 'centre')).toBeCloseTo(400 + (longer ? by : -by), 9);
        },
      ),
    );
  });

  test('what is sewn to nothing that changed is left alone', () => {
    const before = shiftPattern();
    const { pattern } = shorten(before, { pieces: ['front'], at: 'hem', by: 50, matching: true });
    expect(pieceNamed(pattern, 'sleeve')).toBe(pieceNamed(before, 'sleeve'));
    expect(lengthOf(pattern, 'back', 'side')).toBeLessThan(lengthOf(before, 'back', 'side') - 45);
  });

  // A wedge of 30 at a hem of 100 + flare is bridged straight: the hem is 30 longer, on both pieces.
  test.each([1, -1] as const)('a hem is spread on both pieces, at mirrored places', way => {
    const { pattern } = spread(skirt(20, way), {
      piece: 'front',
      from: { edge: 'hem', at: { mm: 30, from: 'side' } },
      to: { edge: 'waist', at: { mm: 25, from: 'side' } },
      by: 30,
      matching: true,
    });
    for (const piece of ['front', 'back']) {
      expect(lengthOf(pattern, piece, 'hem')).toBeCloseTo(150, 9);
      expect(lengthOf(pattern, piece, 'waist')).toBeCloseTo(100, 9);
    }
    expect(walkSeam(pattern, pattern.seams[0]!).matches).toBe(true);
  });

  test('where nothing beside answers to the edges, that is told', () => {
    const { findings } = spread(shiftPattern(), {
      piece: 'sleeve',
      from: { edge: 'hem' },
      to: { edge: 'cap' },
      by: 10,
      matching: true,
    });
    expect(findings.map(f => f.code)).toContain('nothing-to-match');
  });
});

describe('a step that changes one side alone', () => {
  test('says so, and its remedy mends it', () => {
    const before = skirt(0);
    const alone = shorten(before, { pieces: ['front'], at: 'hem', by: 40 });
    const [told, ...others] = changedSeams(before, alone.pattern, { verb: 'shorten', canMatch: true });
    expect(others).toEqual([]);
    expect(toldFinding(told!)).toMatchObject({
      message:
        'This step made the side of the front 40 mm shorter in the seam, but not the side of the back, which it is sewn to.',
      remedy: 'Add matching: yes to this step, to change both sides.',
    });
    const both = shorten(before, { pieces: ['front'], at: 'hem', by: 40, matching: true });
    expect(changedSeams(before, both.pattern, { verb: 'shorten', canMatch: false })).toEqual([]);
  });

  test('is silent where a seam did not match before', () => {
    const before = shorten(skirt(0), { pieces: ['front'], at: 'hem', by: 40 }).pattern;
    const after = shorten(before, { pieces: ['front'], at: 'hem', by: 40 }).pattern;
    expect(changedSeams(before, after, { verb: 'shorten', canMatch: true })).toEqual([]);
  });

  test('names refresh where a step drafted what is sewn to it, and that mends it', () => {
    const along = [
      { piece: 'front', edge: 'neck' },
      { piece: 'back', edge: 'neck' },
    ];
    const banded = draftBand(shiftPattern(), {
      name: 'neckband',
      along,
      ratio: 0.8,
      width: 56,
      join: 7,
    }).pattern;
    const recut = recutNeckline(banded, { piece: 'front', shape: 'round', depth: 190 }).pattern;
    const told = changedSeams(banded, recut, { verb: 'recut neckline', canMatch: false }).map(
      f => toldFinding(f).remedy,
    );
    expect(told).toContain('Write refresh: { pieces: [neckband] } after this step.');
    const again = refresh(recut, { pieces: ['neckband'] }).pattern;
    expect(again.seams.filter(seam => !walkSeam(again, seam).matches).map(seam => seam.name)).not.toContain(
      'neck',
    );
  });
});
