import { at, type Pattern, type Piece, polyline } from '@paperhinge/geometry';
import { dividing } from '../../packages/sheet/src/words/english/dividing.js';
import { patternOf, pieceOf, rectangle, seam, side } from '../support/polygon-piece.js';
import { shiftPattern } from '../support/shift.js';
import { withEdge } from './followed.js';
import {
  completeOver,
  demo,
  type FollowedCase,
  followAll,
  panel,
  steps,
  withPiece,
} from './followed-steps.js';

const shift = shiftPattern();
const dress = demo('darted-dress');
const one = patternOf([panel()]);

const divide = (fields: string) =>
  `divide: { piece: back, name: back yoke, from: { edge: armhole, at: 1/3 }, to: { edge: centre-back, at: 9/10 }${fields} }`;
/** Two strips that lie against one another, the first bowed by so many mm where they are sewn. */
const strips = (bow: number, counts: readonly [number, number] = [1, 1]): Pattern => {
  const [left, right] = [rectangle('left', 120, 300), rectangle('right', 120, 300)];
  const bowed = polyline(at(120, 0), at(120 - bow, 150), at(120, 300));
  const cut = (piece: Piece, count: number): Piece => ({
    ...piece,
    cutting: { ...piece.cutting, count, mirrored: count === 2 },
  });
  return withEdge(
    patternOf(
      [cut(left, counts[0]), cut(right, counts[1])],
      [seam('middle', ['left.right'], ['-right.left'])],
    ),
    'left',
    'right',
    edge => ({ ...edge, path: bowed }),
  );
};
/** A slot 60 mm wide, and a tongue that goes in at its bottom and widens at once to so much. */
const slotted = (wide: number): Pattern =>
  patternOf(
    [
      pieceOf('cup', [
        side('left', [
          [0, 200],
          [0, 0],
        ]),
        side('rim', [
          [0, 0],
          [70, 0],
        ]),
        side('down', [
          [70, 0],
          [70, 150],
        ]),
        side('floor', [
          [70, 150],
          [130, 150],
        ]),
        side('up', [
          [130, 150],
          [130, 0],
        ]),
        side('other rim', [
          [130, 0],
          [200, 0],
        ]),
        side('right', [
          [200, 0],
          [200, 200],
        ]),
        side('foot', [
          [200, 200],
          [0, 200],
        ]),
      ]),
      pieceOf('tongue', [
        side('end', [
          [60, 200],
          [0, 200],
        ]),
        side('widens', [
          [0, 200],
          [30 - wide / 2, 180],
          [30 - wide / 2, 0],
        ]),
        side('top', [
          [30 - wide / 2, 0],
          [30 + wide / 2, 0],
        ]),
        side('narrows', [
          [30 + wide / 2, 0],
          [30 + wide / 2, 180],
          [60, 200],
        ]),
      ]),
    ],
    [seam('floor', ['cup.floor'], ['-tongue.end'])],
  );
/** A piece with an arm that reaches 10 mm above the one it is sewn to, which rises away from their seam. */
const overhung: Pattern = patternOf(
  [
    pieceOf('left', [
      side('top', [
        [0, -80],
        [120, 0],
      ]),
      side('right', [
        [120, 0],
        [120, 300],
      ]),
      side('bottom', [
        [120, 300],
        [0, 300],
      ]),
      side('left', [
        [0, 300],
        [0, -80],
      ]),
    ]),
    pieceOf('right', [
      side('arm', [
        [0, -10],
        [-100, -10],
        [-100, -60],
        [120, -60],
      ]),
      side('right', [
        [120, -60],
        [120, 300],
      ]),
      side('bottom', [
        [120, 300],
        [0, 300],
      ]),
      side('left', [
        [0, 300],
        [0, 0],
      ]),
      side('step', [
        [0, 0],
        [0, -10],
      ]),
    ]),
  ],
  [seam('middle', ['left.right'], ['-right.left'])],
);
const pair = (count: number): Pattern =>
  withEdge(
    withPiece(one, 'panel', piece => ({
      ...piece,
      cutting: { ...piece.cutting, count, mirrored: count === 2 },
    })),
    'panel',
    'left',
    edge => ({ ...edge, kind: 'seam', allowance: 10 }),
  );
const ontoFold = 'seam to fold: { piece: panel, edge: left }';

const yokeFrom = (from: string) =>
  `divide: { piece: back, name: back yoke, from: { ${from} }, to: { edge: centre, at: 90 mm from neck } }`;
const divided: Readonly<Record<string, FollowedCase>> = {
  'piece-name-taken': [
    steps(shift, divide('').replace('back yoke', 'front')),
    'another name',
    steps(shift, divide('')),
  ],
  'seam-name-taken': [
    steps(shift, 'fold to seam: { piece: back, seam: side }'),
    'seam: NAME',
    steps(shift, 'fold to seam: { piece: back, seam: centre back }'),
  ],
  'edge-name-taken': [
    steps(shift, divide(', seam: hem')),
    'seam: NAME',
    steps(shift, divide(', seam: yoke seam')),
  ],
  'division-end-unclear': [
    steps(dress, yokeFrom('edge: armhole, at: 1/3, dart: shoulder-blade')),
    'not both',
    steps(dress, yokeFrom('edge: armhole, at: 1/3')),
  ],
  'seam-not-of-two-edges': [
    steps(shift, 'join pieces: { seam: side }'),
    'a seam of two whole edges',
    steps(shift, 'join pieces: { seam: shoulder }'),
  ],
  'seam-of-one-piece': [
    steps(shift, 'fold to seam: { piece: back }', 'join pieces: { seam: centre-back }'),
    '"seam to fold"',
    steps(shift, 'fold to seam: { piece: back }', 'seam to fold: { piece: back, edge: centre-back }'),
  ],
  'seam-not-of-piece': [
    steps(shift, 'move seam: { seam: shoulder, into: sleeve, by: 10 }'),
    'one of the two pieces',
    steps(shift, 'move seam: { seam: shoulder, into: front, by: 10 }'),
  ],
  'join-through-dart': [
    steps(dress, 'join pieces: { seam: shoulder }'),
    'Close or move it',
    steps(
      dress,
      'close dart: { piece: back, dart: shoulder-blade, into: waist }',
      'join pieces: { seam: shoulder, within: 10 mm }',
    ),
  ],
  'join-not-flat': [
    steps(strips(6), 'join pieces: { seam: middle }'),
    'allow more with "within"',
    steps(strips(6), 'join pieces: { seam: middle, within: 8 mm }'),
  ],
  'joined-overlapping': [
    steps(slotted(100), 'join pieces: { seam: floor }'),
    'Keep this seam',
    steps(slotted(58), 'join pieces: { seam: floor }'),
  ],
  'joined-cut-unlike': [
    steps(strips(0, [2, 1]), 'join pieces: { seam: middle }'),
    'how often the joined piece is to be cut',
    steps(strips(0, [2, 2]), 'join pieces: { seam: middle }'),
  ],
  'fold-there-already': [
    steps(one, 'seam to fold: { piece: panel, edge: right }'),
    'fold to seam: { piece: panel }',
    steps(one, 'fold to seam: { piece: panel }', 'seam to fold: { piece: panel, edge: right }'),
  ],
  'edge-not-for-fold': [
    steps(
      withEdge(pair(2), 'panel', 'left', edge => ({
        ...edge,
        path: polyline(at(0, 400), at(1, 200), at(0, 0)),
      })),
      ontoFold,
    ),
    'straight: yes',
    steps(
      withEdge(pair(2), 'panel', 'left', edge => ({
        ...edge,
        path: polyline(at(0, 400), at(1, 200), at(0, 0)),
      })),
      'true: { edges: [panel.left], straight: yes }',
      ontoFold,
    ),
  ],
  'fold-needs-pair': [steps(pair(1), ontoFold), 'data-cut="2"', steps(pair(2), ontoFold)],
  'fold-sewn-elsewhere': [
    steps(
      {
        ...pair(2),
        pieces: [...pair(2).pieces, rectangle('other', 400, 20)],
        seams: [seam('s', ['panel.left'], ['other.top'])],
      },
      ontoFold,
    ),
    'sewn to itself, or to nothing',
    steps(
      {
        ...pair(2),
        pieces: [...pair(2).pieces, rectangle('other', 400, 20)],
        seams: [seam('s', ['panel.left'], ['other.top'])],
      },
      'seam to fold: { piece: panel, edge: right }',
    ),
  ],
  'no-fold-to-open': [
    steps(shift, 'fold to seam: { piece: sleeve }'),
    'Choose a piece that is',
    steps(shift, 'fold to seam: { piece: back }'),
  ],
  'seam-strip-too-wide': [
    steps(overhung, 'move seam: { seam: middle, into: left, by: 60 }'),
    'Move the seam by less',
    steps(overhung, 'move seam: { seam: middle, into: left, by: 6 }'),
  ],
};

followAll(divided);
// Notes of what the step did, and of what was lost along a seam: there is only the fit to look at.
completeOver([dividing], divided, ['cut-as-pair', 'edge-renamed', 'joined-apart', 'seam-sides-unlike']);
