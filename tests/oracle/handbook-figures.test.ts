// Figures of published drafts and hand-worked rules, from outside the project: check-values §7, each with its source.
import { measured } from '@paperhinge/alter';
import { moveDart } from '@paperhinge/alter/darts';
import { adjust } from '@paperhinge/alter/fit';
import { spread } from '@paperhinge/alter/fullness';
import { matchEdge } from '@paperhinge/alter/seams';
import { edgePath, pathLength, pieceNamed } from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { dartsOf, outlinePath } from '@paperhinge/geometry/pattern';
import { distance } from '@paperhinge/geometry/plane';
import { signedArea } from '@paperhinge/geometry/regions';
import { expect, test } from 'vitest';
import { type Corner, patternOf, pieceOf, rectangle, side } from '../support/polygon-piece.js';
import { shiftPattern } from '../support/shift.js';

const inch = 25.4;

// I. Rosenfeld, The Practical Designer, New York 1911, Woman's First Foundation Lines, size 36 [read: en.wikisource.org]:
// A (0,0), waist 15½ down, breast line 12 across; neck point K (3,−1); the shoulder runs from K through (7½,0), 6 in long,
// so that it slopes by atan(1 / 4½) = 12.5288° and ends at (8.8571, 0.3016) [derived].
test('the shoulder of a draft of 1911, run on to its length, ends where its figures have it', () => {
  const inches = (...corners: readonly Corner[]): readonly Corner[] =>
    corners.map(([x, y]) => [x * inch, y * inch] as const);
  const back = pieceOf('back', [
    side('neck', inches([0, 0], [3, -1])),
    side('shoulder', inches([3, -1], [7.5, 0])),
    side('armhole', inches([7.5, 0], [12, 7])),
    side('side', inches([12, 7], [12, 15.5])),
    side('waist', inches([12, 15.5], [0, 15.5])),
    side('centre', inches([0, 15.5], [0, 0]), { kind: 'fold' }),
  ]);
  const edge = { piece: 'back', edge: 'shoulder' };
  const { pattern } = matchEdge(patternOf([back]), { edge, at: 'end', length: 6 * inch });
  const shoulder = edgePath(pieceNamed(pattern, 'back'), 'shoulder');
  const [from, tip] = [pathStart(shoulder), pathEnd(shoulder)];
  expect(tip.x / inch).toBeCloseTo(8.8571, 4);
  expect(tip.y / inch).toBeCloseTo(0.3016, 4);
  const slope = (Math.atan2(tip.y - from.y, tip.x - from.x) * 180) / Math.PI;
  expect(slope).toBeCloseTo(12.5288, 4);
});

// [derived]: a hem widened by 100 mm on a half piece adds 200 mm to the sweep.
test('what a half on the fold gains the garment gains twice', () => {
  const shift = shiftPattern();
  const sweep = { of: 'sweep', edge: { piece: 'back', edge: 'hem' } } as const;
  const wider = spread(shift, { piece: 'back', from: { edge: 'hem' }, to: { edge: 'shoulder' }, by: 100 });
  expect(measured(wider.pattern, sweep) - measured(shift, sweep)).toBeCloseTo(200, 6);
});

// [derived]: n slashes of g each, in parallel, add n g to the hem and n g × height to a panel's area.
test('parallel slashes add their amounts to the hem, and so many strips to the area', () => {
  const panel = patternOf([rectangle('panel', 300, 500)]);
  const { pattern } = spread(panel, {
    piece: 'panel',
    from: { edge: 'bottom' },
    to: { edge: 'top' },
    by: 4 * 15,
    slashes: 4,
    hinge: 'none',
  });
  const area = (of: typeof panel): number => signedArea(outlinePath(of.pieces[0]!.outline));
  expect(pathLength(edgePath(pattern.pieces[0]!, 'bottom'))).toBeCloseTo(360, 6);
  expect(area(pattern) - area(panel)).toBeCloseTo(60 * 500, 3);
});

// [derived]: moved to another place a dart keeps its angle; its intake there is 2 R sin(θ / 2).
test('a dart moved to another edge takes in by its distance there', () => {
  const shift = shiftPattern();
  const dartIn = (of: typeof shift) => dartsOf(pieceNamed(of, 'front'))[0]!;
  const { legs, apex } = dartIn(shift);
  const angle =
    2 * Math.asin(distance(pathStart(legs[0]), pathEnd(legs[1])) / (2 * distance(pathStart(legs[0]), apex)));
  const to = { edge: 'shoulder', at: { share: 0.5 } };
  const moved = dartIn(moveDart(shift, { piece: 'front', dart: 'bust', to }).pattern);
  const [a, b] = [pathStart(moved.legs[0]), pathEnd(moved.legs[1])];
  expect(distance(a, b)).toBeCloseTo(2 * distance(a, moved.apex) * Math.sin(angle / 2), 6);
});

// [derived]: for b more round the bust each half front spreads b / 2 at the bust point.
test('each half front gains half of what the bust does', () => {
  const shift = shiftPattern();
  const { pattern } = adjust(shift, { for: 'full bust', by: 50 });
  const hem = (of: typeof shift): number => pathLength(edgePath(pieceNamed(of, 'front'), 'hem'));
  expect(Math.abs(hem(pattern) - hem(shift) - 25)).toBeLessThan(0.5);
});
