import { expect, test } from 'vitest';
import { pressedTowards } from '../../../packages/geometry/src/cutting-line/pressing.js';
import { at, dart, pieceOf, straightEdge } from './pieces.js';

// Down the page there is no grain line: of a dart in a side seam the mouth's end that lies lower is pressed to, however
// its apex lies to both.
test.each([-60, -40, -5, 0, 5, 40, 60])(
  'a dart from a side, its apex %d mm below the middle of its mouth',
  below => {
    const side = (x: number, apexX: number, isUp: boolean) => {
      const mouth = isUp ? [at(x, 210), at(x, 190)] : [at(x, 190), at(x, 210)];
      const taken = dart('d', mouth[0]!, at(apexX, 200 + below), mouth[1]!);
      return { taken, piece: pieceOf([taken, straightEdge('s', mouth[1]!, mouth[0]!)]) };
    };
    const left = side(0, 100, true),
      right = side(300, 200, false);
    expect(pressedTowards(left.taken, left.piece)).toBe('start');
    expect(pressedTowards(right.taken, right.piece)).toBe('end');
  },
);

// Of a dart that points along the grain, it is the end nearer to the centre.
test.each([-30, 0, 30])('a dart from a waist, its apex %d mm beside the middle of its mouth', beside => {
  const taken = dart('d', at(90, 0), at(100 + beside, 120), at(110, 0));
  const outline = [taken, straightEdge('waist', at(110, 0), at(90, 0))];
  const withFold = (x: number) =>
    pieceOf([...outline, straightEdge('fold', at(x, 300), at(x, -50), { kind: 'fold' })]);
  expect(pressedTowards(taken, withFold(0))).toBe('start');
  expect(pressedTowards(taken, withFold(200))).toBe('end');
});
