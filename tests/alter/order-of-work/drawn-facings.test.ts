// Facings that the maker drew herself go on as those that are drafted: joined to themselves, sewn, turned, understitched.
import { orderOfWork } from '@paperhinge/alter';
import type { Pattern } from '@paperhinge/geometry';
import { readSheet, runSheet } from '@paperhinge/sheet';
import { english, wordsOf } from '@paperhinge/sheet/words';
import { describe, expect, test } from 'vitest';
import { foundPattern } from '../../found/found.js';
import {
  back,
  backFacing,
  bodySeams,
  facedTop,
  facingSeam,
  front,
  frontFacing,
  neckSeam,
  onFold,
} from '../../support/faced-top.js';
import { patternOf, seam } from '../../support/polygon-piece.js';
import { sentence } from '../../support/told.js';

const jobsOf = (pattern: Pattern) => orderOfWork(pattern, [], []).order.map(line => line.job);
const notJoined = (pattern: Pattern) =>
  orderOfWork(pattern, [], []).findings.filter(f => f.code === 'facings-not-joined');
const inOrder = (jobs: readonly string[], ...wanted: readonly string[]) => {
  const places = wanted.map(name => jobs.indexOf(name));
  expect(places, jobs.join(', ')).not.toContain(-1);
  expect(places, jobs.join(', ')).toEqual(places.toSorted((p, q) => p - q));
};
const apart = [
  seam('front neck', ['front facing.neck'], ['front.neck']),
  seam('back neck', ['back facing.neck'], ['back.neck']),
];

describe('a neck faced by pieces of its maker’s own drawing', () => {
  test('is joined at the shoulders, sewn right sides together, turned and understitched', () => {
    const pattern = facedTop();
    inOrder(jobsOf(pattern), 'seam facing shoulder', 'seam neck', 'understitch front facing + back facing');
    const sewn = orderOfWork(pattern, [], []).order.find(line => line.job === 'seam neck')!;
    expect(sentence(sewn.text)).toBe(
      'Sew the front facing neck and the back facing neck to the front neck and the back neck, right sides together.',
    );
    expect(sewn.because.map(line => sentence(line))).toContain(
      'after the facing shoulder seam: facings are joined to one another before they are sewn on',
    );
    expect(notJoined(pattern)).toEqual([]);
  });

  test.each([
    ['in one seam', [neckSeam], ['seam neck']],
    ['front and back apart', apart, ['seam front neck', 'seam back neck']],
  ] as const)('is joined though no seam says so, sewn on %s', (_, sewingOn, jobs) => {
    const pattern = facedTop([...bodySeams, ...sewingOn]);
    for (const on of jobs) inOrder(jobsOf(pattern), 'seam front facing and back facing', on);
    expect(notJoined(pattern)).toHaveLength(1);
  });

  test('is told what to list, and told no more once it is listed', () => {
    const pattern = facedTop([...bodySeams, neckSeam]);
    const remedy = wordsOf(english, 'mm').finding(notJoined(pattern)[0]!).remedy;
    const written = /seams: \{.*\}/.exec(remedy)![0];
    const { findings, order, altered } = runSheet(
      readSheet(`pattern: p.svg\n${written}\nsteps: []`, { file: 's.yaml' }),
      pattern,
    );
    expect(findings.map(f => f.code)).not.toContain('facings-not-joined');
    expect(findings.map(f => f.code)).not.toContain('seam-does-not-match');
    expect(altered.seams.at(-1)).toMatchObject({
      a: [{ piece: 'front facing', edge: 'shoulder', reversed: false }],
      b: [{ piece: 'back facing', edge: 'shoulder', reversed: false }],
    });
    inOrder(
      order.map(line => line.job),
      'seam front facing and back facing',
      'seam neck',
    );
  });
});

describe('a back in two halves', () => {
  const halved = (piece: typeof back, opening?: number) => ({
    ...piece,
    cutting: { ...piece.cutting, count: 2, mirrored: true },
    outline: {
      parts: piece.outline.parts.map(part =>
        part.type === 'edge' && part.name === 'centre'
          ? { ...part, kind: 'seam' as const, allowance: 10, ...(opening === undefined ? {} : { opening }) }
          : part,
      ),
    },
  });
  const centreBack = seam('centre back', ['back.centre'], ['back.centre']);
  const topOf = (opening?: number) =>
    patternOf(
      [front, halved(back, opening), frontFacing, halved(backFacing)],
      [...bodySeams, centreBack, facingSeam, neckSeam],
    );

  test('has the two halves of its facing joined there', () => {
    expect(notJoined(topOf()).map(f => f.about!.edges)).toEqual([
      [
        { piece: 'back facing', edge: 'centre' },
        { piece: 'back facing', edge: 'centre' },
      ],
    ]);
  });

  test('ends its facing at the opening that is there', () => {
    expect(notJoined(topOf(200))).toEqual([]);
  });
});

test('a facing of neck and armhole at once is sewn on and turned before its sides are closed', () => {
  const combined = (name: string, depth: number) =>
    onFold(
      name,
      [
        ['neck', [0, depth], [80, 0]],
        ['shoulder', [80, 0], [160, 30]],
        ['armhole', [160, 30], [230, 220]],
        ['side', [230, 220], [229, 260]],
        ['inner', [229, 260], [0, 260]],
        ['centre', [0, 260], [0, depth]],
      ],
      'facing',
    );
  const seams = [
    ...bodySeams,
    seam('facing shoulder', ['facing front.shoulder'], ['facing back.shoulder']),
    seam('facing side', ['facing front.side'], ['facing back.side']),
    seam('neck', ['facing front.neck', '-facing back.neck'], ['front.neck', '-back.neck']),
    seam('armhole', ['facing front.armhole', '-facing back.armhole'], ['front.armhole', '-back.armhole']),
  ];
  const pattern = patternOf([front, back, combined('facing front', 100), combined('facing back', 30)], seams);
  inOrder(jobsOf(pattern), 'seam neck', 'seam facing side');
});

test('a facing that a lining hangs from is turned, too, where no lining is turned out with it', () => {
  inOrder(jobsOf(foundPattern('trial-hooded-coat').pattern), 'seam front edge', 'understitch front facing');
});
