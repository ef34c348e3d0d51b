import type { Pattern } from '@paperhinge/geometry';
import { dart, patternOf, pieceOf, side } from '../support/polygon-piece.js';

/** Half a piece whose neck begins so many mm down its fold, passes a place so far down, and ends at a dart beside the shoulder. */
export function neckEndingAtDart(name: string, fromDown: number, throughDown: number): Pattern {
  return patternOf([
    pieceOf(name, [
      {
        ...side('neck', [
          [0, fromDown],
          [40, throughDown],
          [80, 0],
        ]),
        role: 'neck',
      },
      dart('end', [80, 0], [90, 80], [100, 0]),
      {
        ...side('shoulder', [
          [100, 0],
          [200, 20],
        ]),
        role: 'shoulder',
      },
      side('side', [
        [200, 20],
        [200, 400],
      ]),
      side(
        'hem',
        [
          [200, 400],
          [0, 400],
        ],
        { kind: 'hem' },
      ),
      side(
        'centre',
        [
          [0, 400],
          [0, fromDown],
        ],
        { kind: 'fold' },
      ),
    ]),
  ]);
}
