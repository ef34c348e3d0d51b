import { checkPattern } from '@paperhinge/geometry';
import { expect, test } from 'vitest';
import { patternOf, pieceOf, side } from '../../support/polygon-piece.js';

const withOpening = (opening: number) =>
  patternOf([
    pieceOf('skirt', [
      side('waist', [
        [0, 0],
        [200, 0],
      ]),
      side('right', [
        [200, 0],
        [200, 500],
      ]),
      side('foot', [
        [200, 500],
        [0, 500],
      ]),
      side(
        'left',
        [
          [0, 500],
          [0, 0],
        ],
        { opening },
      ),
    ]),
  ]);

test('an opening longer than its edge is a warning with both lengths', () => {
  expect(checkPattern(withOpening(510))).toMatchObject([
    {
      severity: 'warning',
      code: 'opening-longer-than-edge',
      where: { piece: 'skirt', edge: 'left' },
      figures: { openingMm: 510, edgeMm: 500 },
    },
  ]);
});
test('an opening as long as its edge is none', () => {
  expect(checkPattern(withOpening(500))).toEqual([]);
});
