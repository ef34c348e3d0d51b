// Edges moved, and necklines recut: a step that is refused, done as its remedy says.
import { unfold } from '@paperhinge/alter/seams';
import type { Pattern } from '@paperhinge/geometry';
import { movedEdges } from '../../packages/sheet/src/words/english/moved-edges.js';
import { neckline } from '../../packages/sheet/src/words/english/neckline.js';
import { dart, level, patternOf, pieceOf, seam, side } from '../support/polygon-piece.js';
import { shiftPattern } from '../support/shift.js';
import { withEdge } from './followed.js';
import { completeOver, type FollowedCase, followAll, panel, steps, withPiece } from './followed-steps.js';
import { neckEndingAtDart } from './neck-ending-at-dart.js';

const shift = shiftPattern();
const one = patternOf([panel()]);

const recut = (fields: string) => `recut neckline: { piece: front, ${fields} }`;
const drawnLine = (...points: readonly (readonly [number, number])[]): Pattern =>
  withPiece(shift, 'front', piece => ({ ...piece, lines: [...piece.lines, level('new', ...points)] }));
const twoHems = withEdge(one, 'panel', 'top', e => ({ ...e, kind: 'hem' }));
const grain = (...points: readonly (readonly [number, number])[]): Pattern =>
  withPiece(one, 'panel', piece => ({
    ...piece,
    lines: [
      ...piece.lines.filter(line => line.kind !== 'grain'),
      ...(points.length > 0 ? [{ ...level('grain', ...points), kind: 'grain' as const }] : []),
    ],
  }));
const lined = (...points: readonly (readonly [number, number])[]): Pattern =>
  withPiece(one, 'panel', piece => ({ ...piece, lines: [...piece.lines, level('new', ...points)] }));
const shorter = (at: string, by = '10') => `shorten: { pieces: panel, at: ${at}, by: ${by} }`;
/** Two half moons, sewn along their round edges: what lies beside both ends of the seam is one edge. */
const moons = (() => {
  const moon = (name: string) =>
    pieceOf(name, [
      side('mouth', [
        [0, 0],
        [200, 0],
      ]),
      side('round', [
        [200, 0],
        [180, 150],
        [20, 150],
        [0, 0],
      ]),
    ]);
  return patternOf([moon('front'), moon('back')], [seam('round', ['front.round'], ['back.round'])]);
})();
/** A panel whose right side steps back and comes out again, so that a level crosses it twice. */
const notched = patternOf([
  pieceOf(
    'panel',
    [
      side('top', [
        [0, 0],
        [300, 0],
      ]),
      side('right', [
        [300, 0],
        [300, 300],
        [200, 150],
        [100, 300],
        [300, 400],
      ]),
      side(
        'bottom',
        [
          [300, 400],
          [0, 400],
        ],
        { kind: 'hem' },
      ),
      side(
        'left',
        [
          [0, 400],
          [0, 0],
        ],
        { kind: 'fold' },
      ),
    ],
    {
      lines: [
        level('low', [-10, 250], [310, 250]),
        level('high', [-10, 60], [310, 60]),
        { ...level('grain', [40, 300], [40, 50]), kind: 'grain' },
      ],
    },
  ),
]);
/** A panel whose hem slants and has a dart square to it: cut off along the grain, its legs come out unlike. */
const slantedHem = patternOf([
  pieceOf(
    'panel',
    [
      side('top', [
        [0, 0],
        [300, 0],
      ]),
      side('right', [
        [300, 0],
        [300, 385],
      ]),
      side(
        'hem',
        [
          [300, 385],
          [165, 385],
        ],
        { kind: 'hem' },
      ),
      dart('low', [165, 385], [101.053, 306.755], [140, 400]),
      side(
        'hem',
        [
          [140, 400],
          [0, 400],
        ],
        { kind: 'hem' },
      ),
      side(
        'left',
        [
          [0, 400],
          [0, 0],
        ],
        { kind: 'fold' },
      ),
    ],
    { lines: [{ ...level('grain', [40, 300], [40, 50]), kind: 'grain' }] },
  ),
]);
/** A panel with a dart from its side, a line that runs out between its legs, and one that runs out below. */
const sideDart = patternOf([
  pieceOf(
    'panel',
    [
      side('top', [
        [0, 0],
        [220, 0],
      ]),
      side('right', [
        [220, 0],
        [220, 134],
      ]),
      dart('bust', [220, 134], [100, 150], [220, 166]),
      side('right', [
        [220, 166],
        [220, 400],
      ]),
      side(
        'hem',
        [
          [220, 400],
          [0, 400],
        ],
        { kind: 'hem' },
      ),
      side(
        'left',
        [
          [0, 400],
          [0, 0],
        ],
        { kind: 'fold' },
      ),
    ],
    {
      lines: [
        level('across', [0, 145], [210, 152]),
        level('below', [0, 250], [210, 250]),
        { ...level('grain', [40, 300], [40, 50]), kind: 'grain' },
      ],
    },
  ),
]);

const moves: Readonly<Record<string, FollowedCase>> = {
  'no-hem': [
    steps(moons, 'shorten: { pieces: front, at: hem, by: 10 }'),
    'data-kind="hem"',
    steps(
      withEdge(moons, 'front', 'mouth', edge => ({ ...edge, kind: 'hem' })),
      'shorten: { pieces: front, at: hem, by: 10 }',
    ),
  ],
  'several-hems': [
    steps(twoHems, shorter('hem')),
    'Name the one that is meant "hem"',
    steps(
      withPiece(twoHems, 'panel', piece => ({
        ...piece,
        outline: {
          parts: piece.outline.parts.map(part => (part.name === 'bottom' ? { ...part, name: 'hem' } : part)),
        },
      })),
      shorter('hem'),
    ),
  ],
  'no-grain-line': [steps(grain(), shorter('hem')), 'Draw its grain line', steps(one, shorter('hem'))],
  'grain-across': [
    steps(grain([40, 200], [260, 200]), shorter('hem')),
    'which way its grain line is drawn',
    steps(one, shorter('hem')),
  ],
  'shorten-beyond-piece': [steps(one, shorter('hem', '500')), 'Take less', steps(one, shorter('hem', '50'))],
  'unknown-line': [steps(one, shorter('wiast')), '"waist"', steps(one, shorter('waist'))],
  'line-through-corner': [
    steps(lined([0, 0], [310, 200]), shorter('new')),
    'a little away from that corner',
    steps(lined([-10, 20], [310, 200]), shorter('new')),
  ],
  'line-off-piece': [
    steps(lined([20, 600], [200, 600]), shorter('new')),
    'across the whole piece',
    steps(lined([-10, 100], [310, 100]), shorter('new')),
  ],
  'line-crosses-edge-twice': [
    steps(notched, shorter('low')),
    'crosses each edge once',
    steps(notched, shorter('high')),
  ],
  'dart-mouth-parted': [
    steps(sideDart, 'lengthen: { pieces: panel, at: across, by: 20 }'),
    'resize dart: { piece: panel, dart: bust, to: 32 mm }',
    steps(
      sideDart,
      'lengthen: { pieces: panel, at: across, by: 20 }',
      'resize dart: { piece: panel, dart: bust, to: 32 mm }',
    ),
  ],
  'dart-mouth-parted beside it': [
    steps(sideDart, 'lengthen: { pieces: panel, at: across, by: 20 }'),
    'Or draw the line above or below the dart',
    steps(sideDart, 'lengthen: { pieces: panel, at: below, by: 20 }'),
  ],
  'dart-left-uneven': [
    steps(slantedHem, shorter('hem', '40')),
    'Close or move the dart first',
    steps(slantedHem, 'close dart: { piece: panel, dart: low, into: right }', shorter('hem', '40')),
  ],
  'take-in-too-much': [
    steps(shift, 'take in: { seam: side, by: 1600 }'),
    'Move the seam by less',
    steps(shift, 'take in: { seam: side, by: 40 }'),
  ],
  'unknown-seam': [
    steps(shift, 'take in: { seam: sdie, by: 20 }'),
    '"side"',
    steps(shift, 'take in: { seam: side, by: 20 }'),
  ],
  'position-off-seam': [
    steps(shift, 'take in: { seam: side, by: 20, from: 900 mm }'),
    'within the seam',
    steps(shift, 'take in: { seam: side, by: 20, from: 100 mm }'),
  ],
  'seam-end-ambiguous': [
    steps(moons, 'take in: { seam: round, by: 4, from: 10 % from mouth, to: end }'),
    '"from start" or "from end"',
    steps(moons, 'take in: { seam: round, by: 4, from: 10 % from start, to: end }'),
  ],
  'seam-end-unknown': [
    steps(shift, 'take in: { seam: side, by: 10, from: 10 % from neck }'),
    '"from armhole"',
    steps(shift, 'take in: { seam: side, by: 10, from: 10 % from armhole }'),
  ],
};

const necklines: Readonly<Record<string, FollowedCase>> = {
  'no-neck': [
    steps(renamed('neck', 'upper curve'), recut('shape: V, depth: 60')),
    'data-role="neck"',
    steps(
      withEdge(renamed('neck', 'upper curve'), 'front', 'upper curve', edge => ({ ...edge, role: 'neck' })),
      recut('shape: V, depth: 60'),
    ),
  ],
  'neck-interrupted': [
    steps(
      shift,
      'open dart: { piece: front, edge: neck, at: 1/2, intake: 10, depth: 60, name: neck dart }',
      recut('shape: V, depth: 60'),
    ),
    'Close or move the dart first',
    steps(
      shift,
      'open dart: { piece: front, edge: neck, at: 1/2, intake: 10, depth: 60, name: neck dart }',
      'close dart: { piece: front, dart: neck dart, into: hem }',
      recut('shape: V, depth: 60'),
    ),
  ],
  'neck-not-at-centre': [
    steps(shift, recut('shape: inset V, depth: 85, half width: 45'), recut('shape: round, depth: 20')),
    'before an inset is cut into it',
    steps(shift, recut('shape: round, depth: 20'), recut('shape: inset V, depth: 85, half width: 45')),
  ],
  'no-shoulders': [
    steps(
      patternOf([
        pieceOf('front', [
          {
            ...side('oval', [
              [0, 0],
              [200, 0],
            ]),
            role: 'neck',
          },
          side('rest', [
            [200, 0],
            [200, 300],
            [0, 300],
            [0, 0],
          ]),
        ]),
      ]),
      recut('shape: V, depth: 60'),
    ),
    'Part the outline into neck, shoulders and the rest',
    steps(unfolded(), recut('shape: V, depth: 160')),
  ],
  'no-centre-line': [
    steps(
      withPiece(unfolded(), 'front', piece => ({ ...piece, lines: [] })),
      recut('shape: V, depth: 160'),
    ),
    'Draw its centre line, or its grain line',
    steps(unfolded(), recut('shape: V, depth: 160')),
  ],
  'dart-in-neck': [
    steps(neckEndingAtDart('front', 60, 55), recut('shape: V, depth: 60')),
    'Close or move it first',
    steps(
      neckEndingAtDart('front', 60, 55),
      'close dart: { piece: front, dart: end, into: hem }',
      recut('shape: V, depth: 60'),
    ),
  ],
  'neckline-too-deep': [
    steps(shift, recut('shape: round, depth: 2000')),
    'less deep',
    steps(shift, recut('shape: round, depth: 40')),
  ],
  'half-width-off-neck': [
    steps(shift, recut('shape: inset V, depth: 85, half width: 200')),
    'narrower than the neck',
    steps(shift, recut('shape: inset V, depth: 85, half width: 45')),
  ],
  'half-width-beyond-shoulder': [
    steps(shift, recut('shape: V, depth: 60, half width: 500')),
    'Make the neck narrower',
    steps(shift, recut('shape: V, depth: 60, half width: 140')),
  ],
  'shoulder-out-of-reach': [
    steps(shift, recut('shape: V, depth: 60, shoulder: 900')),
    'a length over 0 that the shoulder can have',
    steps(shift, recut('shape: V, depth: 60, shoulder: 90')),
  ],
  'name-taken': [
    steps(renamed('side-lower', 'inset'), recut('shape: inset V, depth: 85, half width: 45')),
    'give that edge another name',
    steps(renamed('side-lower', 'lower side'), recut('shape: inset V, depth: 85, half width: 45')),
  ],
  'line-ends-off-outline': [
    steps(drawnLine([0, 120], [90, 60]), recut('shape: drawn, line: new')),
    'from outline to outline',
    steps(drawnLine([0, 120], [80, 100], [161, -30.43]), recut('shape: drawn, line: new')),
  ],
  'line-crosses-dart': [
    steps(drawnLine([0, 120], [230, 270]), recut('shape: drawn, line: new')),
    'Close or move it first',
    steps(
      drawnLine([0, 120], [80, 100], [161, -30.43]),
      'move dart: { piece: front, dart: bust, to: { edge: hem } }',
      recut('shape: drawn, line: new'),
    ),
  ],
  'neckline-too-shallow': [
    steps(shift, 'recut neckline: { piece: back, shape: V, depth: 0, half width: 200 }'),
    'deeper',
    steps(shift, 'recut neckline: { piece: back, shape: V, depth: 90, half width: 200 }'),
  ],
  'neckline-leaves-piece': [
    steps(shift, recut('shape: sweetheart, depth: 700, half width: 210')),
    'narrower, or less deep',
    steps(shift, recut('shape: sweetheart, depth: 40, half width: 120')),
  ],
};

/** The shift's front opened out. */
function unfolded(): Pattern {
  return unfold(shift, { piece: 'front' }).pattern;
}
/** The shift with an edge of its front called otherwise, unsewn. */
function renamed(edge: string, name: string): Pattern {
  const called = withPiece(shift, 'front', piece => ({
    ...piece,
    outline: { parts: piece.outline.parts.map(part => (part.name === edge ? { ...part, name } : part)) },
    notches: [],
  }));
  return { ...called, seams: [] };
}
followAll(moves);
followAll(necklines);
// A note: the legs were drawn anew, and nothing is to be done.
completeOver([movedEdges], moves, ['dart-redrawn']);
completeOver([neckline], necklines, []);
