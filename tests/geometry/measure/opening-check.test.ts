import { checkPattern } from '@paperhinge/geometry';
import { expect, test } from 'vitest';
import { patternOf, pieceOf, side } from '../../support/polygon-piece.js';
import { toldFinding } from '../../support/told.js';

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

const found = (opening: number) =>
  checkPattern(withOpening(opening)).filter(f => f.code === 'opening-longer-than-edge');

test('an opening longer than its edge is a warning with both lengths', () => {
  expect(found(510)).toMatchObject([
    {
      severity: 'warning',
      code: 'opening-longer-than-edge',
      where: { piece: 'skirt', edge: 'left' },
      figures: { openingMm: 510, edgeMm: 500 },
    },
  ]);
  expect(toldFinding(found(510)[0]!).message).toBe(
    'The opening of 510 mm is longer than the left of the skirt, which has 500 mm.',
  );
});
test('an opening as long as its edge is none', () => {
  expect(found(500)).toEqual([]);
});
