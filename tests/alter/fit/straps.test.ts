// A halter drawn here: a front on the fold whose neck is 2 × 90 mm and whose straps go on from its ends. Sums by hand.
import { overTheHead } from '@paperhinge/alter';
import type { Fastening, Pattern, Piece, Seam } from '@paperhinge/geometry';
import { readSheet, runSheet } from '@paperhinge/sheet';
import { describe, expect, test } from 'vitest';
import { patternOf, pieceOf, run, seam, side } from '../../support/polygon-piece.js';

const roles = { neck: 'neck', armhole: 'armhole', side: 'side', hem: 'hem' } as const;
const part = (name: string, ...corners: Parameters<typeof side>[1]) => {
  const drawn = side(
    name,
    corners,
    name === 'hem' ? { kind: 'hem' } : name === 'centre' ? { kind: 'fold' } : {},
  );
  return name in roles ? { ...drawn, role: roles[name as keyof typeof roles] } : drawn;
};
const front: Piece = pieceOf('front', [
  part('neck', [0, 0], [90, 0]),
  part('strap end', [90, 0], [110, 0]),
  part('armhole', [110, 0], [230, 200]),
  part('side', [230, 200], [220, 500]),
  part('hem', [220, 500], [0, 500]),
  part('centre', [0, 500], [0, 0]),
]);
const back: Piece = pieceOf('back', [
  part('top', [0, 200], [230, 200]),
  part('side', [230, 200], [220, 500]),
  part('hem', [220, 500], [0, 500]),
  part('centre', [0, 500], [0, 200]),
]);
/** Folded along its length, `mm` long; its far end may lie on a fold. */
const strap = (mm: number, count: number, far: 'seam' | 'fold' = 'seam'): Piece =>
  pieceOf(
    'strap',
    [
      side('near', [
        [0, 0],
        [20, 0],
      ]),
      side('long', [
        [20, 0],
        [20, mm],
      ]),
      side(
        'far',
        [
          [20, mm],
          [0, mm],
        ],
        { kind: far },
      ),
      side('other long', [
        [0, mm],
        [0, 0],
      ]),
    ],
    { cutting: { count, mirrored: count > 1 } },
  );
const sides = seam('side', ['front.side'], ['back.side']);
const near = seam('strap', ['strap.near'], ['front.strap end']);
const halter = (piece: Piece, seams: readonly Seam[], fastenings: readonly Fastening[] = []): Pattern =>
  patternOf([front, back, piece], [sides, ...seams], { fastenings });
const found = (pattern: Pattern) =>
  overTheHead({ pattern, wearer: { 'head girth': 560 }, derived: [] }).filter(
    f => f.code !== 'passage-not-checked',
  );
const opensTo = (pattern: Pattern) => found(pattern).map(f => [f.code, f.figures?.openingMm]);

describe('a halter’s strap', () => {
  test('sewn on by one end is tied: the neck is open, and no head is held against it', () => {
    expect(found(halter(strap(450, 2), [near])).map(f => [f.severity, f.code])).toEqual([
      ['note', 'neck-opens-at-strap'],
    ]);
  });

  test.each([
    [
      'sewn on by both ends',
      halter(strap(420, 1), [near, seam('other end', ['strap.far'], ['front.strap end'])]),
      420,
    ],
    [
      'two, sewn to one another behind the neck',
      halter(strap(210, 2), [near, seam('behind', ['strap.far'], ['strap.far'])]),
      420,
    ],
    ['drawn half, on a fold behind the neck', halter(strap(210, 1, 'fold'), [near]), 420],
  ])('%s, closes the ring by its length', (_, pattern, mm) => {
    expect(opensTo(pattern)).toEqual([['head-passes', 180 + mm]]);
  });

  test('too short a ring is a fault, with what is missing', () => {
    const short = halter(strap(300, 1), [near, seam('other end', ['strap.far'], ['front.strap end'])]);
    expect(opensTo(short)).toEqual([['head-does-not-pass', 480]]);
    expect(found(short)[0]!.figures!.missingMm).toBeCloseTo(80, 9);
  });

  test('is checked by its length once the seam of its other end is listed, as the remedy says', () => {
    const pattern = halter(strap(300, 1), [near]);
    const done = (text: string) =>
      runSheet(
        readSheet(`pattern: p.svg\nwearer: { head girth: 560 }\n${text}steps: []`, { file: 's.yaml' }),
        pattern,
      ).findings.map(f => f.code);
    expect(done('')).toContain('neck-opens-at-strap');
    const listed = done('seams: { other end: { a: strap.far from long, b: front.strap end from neck } }\n');
    expect(listed).toContain('head-does-not-pass');
    expect(listed).not.toContain('neck-opens-at-strap');
  });

  test('in one with the front is open where it hooks', () => {
    const hooked: Fastening = { name: 'hook', kind: 'hooks', along: run('front.strap end') };
    const pattern = patternOf([front, back], [sides], { fastenings: [hooked] });
    expect(found(pattern).map(f => f.code)).toEqual(['neck-opens-at-strap']);
  });
});

test('a tie at a slit, or at the end of a wrap, opens no neck', () => {
  const slit = {
    ...front,
    outline: {
      parts: front.outline.parts.map(p => (p.name === 'strap end' ? { ...p, role: 'opening' as const } : p)),
    },
  };
  const tied = patternOf([slit, back, strap(450, 2)], [sides, near]);
  expect(found(tied).map(f => f.code)).not.toContain('neck-opens-at-strap');
});
