import { at, type Pattern, polyline } from '@paperhinge/geometry';
import { operations } from '../../packages/sheet/src/words/english/operations.js';
import { redrawnEdges } from '../../packages/sheet/src/words/english/redrawn-edges.js';
import { block } from '../alter/hinge/pieces.js';
import { dart, level, patternOf, pieceOf, rectangle, seam, side } from '../support/polygon-piece.js';
import { shiftPattern } from '../support/shift.js';
import { withEdge } from './followed.js';
import { completeOver, type FollowedCase, followAll, panel, steps, withPiece } from './followed-steps.js';
import { neckEndingAtDart } from './neck-ending-at-dart.js';

const shift = shiftPattern();
const one = patternOf([panel()]);
const blocks = patternOf([{ ...block(), name: 'front' }]);

const armhole = (fields: string) => `recut armhole: { pieces: [front, back], ${fields} }`;
const hem = (piece: string, fields: string) => `shape hem: { piece: ${piece}, ${fields} }`;
const stand = (piece: string, edge: string, more: string) =>
  `add button stand: { piece: ${piece}, edge: ${edge}, ${more} }`;
const wrap = (edge: string, depth: number) =>
  `wrap over: { piece: front, edge: ${edge}, by: 90 mm, depth: ${depth} mm }`;
const keyhole = (piece: string, depth: number, width = 60) =>
  `cut keyhole: { piece: ${piece}, below: 20 mm, depth: ${depth}, width: ${width} }`;
const raise = (piece = 'back') => `raise neckline: { pieces: [${piece}], by: 45 }`;
const match = (edge: string) => `match edge: { edge: ${edge}, at: end }`;
/** Two rectangles whose sewn sides differ. */
const unequal = patternOf(
  [rectangle('left', 120, 312), rectangle('right', 120, 300)],
  [seam('middle', ['left.right'], ['-right.left'])],
);
const eased: Pattern = { ...unequal, seams: [seam('middle', ['left.right'], ['-right.left'], { mm: 12 })] };
/** A waist that ends at a dart, beside the side. */
const endDart = patternOf([
  pieceOf(
    'front',
    [
      {
        ...side('neck', [
          [0, 60],
          [40, 55],
          [80, 0],
        ]),
        role: 'neck',
      },
      {
        ...side('shoulder', [
          [80, 0],
          [180, 20],
        ]),
        role: 'shoulder',
      },
      {
        ...side('armhole', [
          [180, 20],
          [160, 120],
          [200, 180],
        ]),
        role: 'armhole',
      },
      dart('bust', [200, 180], [120, 190], [200, 200]),
      side('side', [
        [200, 200],
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
          [0, 60],
        ],
        { kind: 'fold' },
      ),
    ],
    { lines: [{ ...level('grain', [40, 300], [40, 100]), kind: 'grain' }] },
  ),
]);
const neckDart = neckEndingAtDart('back', 20, 18);
const bentCentre = withEdge(shift, 'front', 'centre-front', edge => ({
  ...edge,
  kind: 'seam',
  path: polyline(at(0, 880), at(1, 400), at(0, 72)),
}));
const unnamed = (piece: string, edge: string, role?: 'armhole' | 'cap'): Pattern => {
  const renamed = withPiece(shift, piece, p => ({
    ...p,
    outline: { parts: p.outline.parts.map(part => (part.name === edge ? { ...part, name: 'x' } : part)) },
    notches: [],
  }));
  const loose = { ...renamed, seams: [] };
  return role ? withEdge(loose, piece, 'x', e => ({ ...e, role })) : loose;
};

const redrawn: Readonly<Record<string, FollowedCase>> = {
  'corner-beside-dart': [
    steps(endDart, 'recut armhole: { pieces: [front], lower: 10 }'),
    'Close or move it first',
    steps(
      endDart,
      'close dart: { piece: front, dart: bust, into: hem }',
      'recut armhole: { pieces: [front], lower: 10 }',
    ),
  ],
  'corner-beyond-edge': [steps(shift, armhole('lower: 900')), 'by less', steps(shift, armhole('lower: 10'))],
  'edge-in-two-parts': [
    steps(
      shift,
      'open dart: { piece: back, edge: armhole, at: 1/2, intake: 8, depth: 60, name: d }',
      'recut armhole: { pieces: [back], in: 5 }',
    ),
    'Close or move it first',
    steps(
      shift,
      'open dart: { piece: back, edge: armhole, at: 1/2, intake: 8, depth: 60, name: d }',
      'close dart: { piece: back, dart: d, into: hem }',
      'recut armhole: { pieces: [back], in: 5 }',
    ),
  ],
  'redrawn-crosses': [steps(shift, keyhole('back', 110, 900)), 'by less', steps(shift, keyhole('back', 110))],
  'no-armhole': [
    steps(unnamed('front', 'armhole'), 'recut armhole: { pieces: [front], lower: 10 }'),
    'data-role="armhole"',
    steps(unnamed('front', 'armhole', 'armhole'), 'recut armhole: { pieces: [front], lower: 10 }'),
  ],
  'hem-not-at-centre': [
    steps(shift, hem('sleeve', 'side: 5')),
    'the hem of half a piece',
    steps(shift, hem('back', 'side: 5')),
  ],
  'edge-in-no-seam': [
    steps(unequal, match('left.top')),
    'an edge that is in a seam',
    steps(unequal, match('left.right')),
  ],
  'edge-matches-already': [steps(eased, match('left.right')), 'Leave the step out', steps(eased)],
  'stand-edge-bent': [
    steps(bentCentre, stand('front', 'centre-front', 'width: 15')),
    'straight: yes',
    steps(
      bentCentre,
      'true: { edges: [front.centre-front], straight: yes }',
      stand('front', 'centre-front', 'width: 15'),
    ),
  ],
  'grown-facing-too-wide': [
    steps(shift, stand('front', 'centre-front', 'width: 15, facing: 400')),
    'narrower',
    steps(shift, stand('front', 'centre-front', 'width: 15, facing: 60')),
  ],
  'wrap-not-at-neck': [
    steps(shift, wrap('shoulder', 20)),
    'the centre edge that comes up to the neck',
    steps(shift, wrap('centre-front', 220)),
  ],
  'wrap-too-deep': [
    steps(shift, wrap('centre-front', 900)),
    'less deep',
    steps(shift, wrap('centre-front', 220)),
  ],
  'neck-not-between': [
    steps(neckDart, raise()),
    'close or move a dart at its end first',
    steps(neckDart, 'close dart: { piece: back, dart: end, into: hem }', raise()),
  ],
  'keyhole-off-fold': [steps(shift, keyhole('back', 900)), 'less deep', steps(shift, keyhole('back', 110))],
  'keyhole-needs-fold': [
    steps(shift, keyhole('sleeve', 110)),
    'cut on the fold up to its neck',
    steps(shift, keyhole('back', 110)),
  ],
  'hem-curved-deep': [
    steps(shift, hem('back', 'side: 70')),
    '10 mm or less',
    steps(shift, hem('back', 'side: 70'), 'set allowance: { edges: [back.hem], to: 10 }'),
  ],
};

const spread = (fields: string) => `spread: { piece: panel, ${fields} }`;
const across = 'from: { edge: top }, to: { edge: bottom }';
const unlike = (mm: number): Pattern =>
  withPiece(blocks, 'front', piece => ({
    ...piece,
    outline: {
      parts: piece.outline.parts.map(part =>
        part.type === 'dart'
          ? { ...part, legs: [part.legs[0], moved(part, mm)] }
          : part.name === 'side-lower' && part.type === 'edge'
            ? { ...part, path: polyline(at(219.059, 215 + mm), at(219.059, 600)) }
            : part,
      ),
    },
  }));
function moved(part: { readonly apex: { readonly x: number; readonly y: number } }, mm: number) {
  return polyline(part.apex, at(219.059, 215 + mm));
}
const take = (fields: string) => `take in: { seam: side, by: 20, ${fields} }`;
const recut = (fields: string) => `recut neckline: { piece: front, ${fields} }`;
const band =
  'draft band: { name: neckband, along: [front.neck, back.neck], ratio: 80 %, width: 56, join: 7 }';
const facing = 'draft facing: { name: facing, along: [front.neck, back.neck], width: 60 }';

const done: Readonly<Record<string, FollowedCase>> = {
  'dart-legs-unlike': [
    steps(unlike(12), 'close dart: { piece: front, dart: bust, into: hem }'),
    'equally long, within 1 mm',
    steps(unlike(0), 'close dart: { piece: front, dart: bust, into: hem }'),
  ],
  'point-back-too-long': [
    steps(shift, 'move dart: { piece: front, dart: bust, to: { edge: shoulder }, point back: 900 }'),
    'less than that depth',
    steps(shift, 'move dart: { piece: front, dart: bust, to: { edge: shoulder }, point back: 20 }'),
  ],
  'range-needed': [
    steps(one, spread('from: { edge: top, at: 1/2 }, to: { edge: bottom }, by: 30, slashes: 3')),
    '[1/4, 3/4]',
    steps(one, spread('from: { edge: top, at: [1/4, 3/4] }, to: { edge: bottom }, by: 30, slashes: 3')),
  ],
  'spread-too-wide': [
    steps(one, spread(`${across}, by: 1300`)),
    'Spread by less',
    steps(one, spread(`${across}, by: 60`)),
  ],
  'spread-needs-length': [
    steps(one, spread(`${across}, angle: 5, hinge: none`)),
    'Give "by" as a length',
    steps(one, spread(`${across}, by: 30, hinge: none`)),
  ],
  'fold-needs-opening': [
    steps(one, spread(`${across}, by: -10, into: tucks, name: tuck, hinge: none`)),
    'leave "into" out',
    steps(one, spread(`${across}, by: -10, hinge: none`)),
  ],
  'pleat-name-taken': [
    steps(one, spread(`${across}, by: 20, into: tucks, name: top, hinge: none`)),
    'another name',
    steps(one, spread(`${across}, by: 20, into: tucks, name: tuck, hinge: none`)),
  ],
  'taper-with-between': [
    steps(shift, take('from: 100 mm, between: [start, end]')),
    'either "between"',
    steps(shift, take('between: [start, end]')),
  ],
  'taper-without-length': [
    steps(shift, take('from: 100 mm, to: 100 mm')),
    'two places that lie apart',
    steps(shift, take('from: 100 mm, to: 300 mm')),
  ],
  'inset-without-depth': [
    steps(shift, recut('shape: inset V, depth: 0, half width: 45')),
    'a depth over 0',
    steps(shift, recut('shape: inset V, depth: 85, half width: 45')),
  ],
  'half-width-or-shoulder': [
    steps(shift, recut('shape: V, depth: 60, half width: 130, shoulder: 90')),
    'Keep one of the two',
    steps(shift, recut('shape: V, depth: 60, shoulder: 90')),
  ],
  'shoulder-not-cut': [
    steps(shift, recut('shape: inset V, depth: 85, half width: 45, shoulder: 90')),
    'Leave "shoulder" out',
    steps(shift, recut('shape: inset V, depth: 85, half width: 45')),
  ],
  'no-allowance-there': [
    steps(shift, 'set allowance: { edges: [front.centre-front], to: 10 }'),
    'Unfold the piece first',
    steps(shift, 'set allowance: { edges: [front.neck], to: 10 }'),
  ],
  'not-drafted-here': [
    steps(shift, 'refresh: { pieces: [neckband] }'),
    'under the same name',
    steps(shift, band),
  ],
  'nothing-to-refresh': [
    steps(shift, 'refresh: {}', band),
    'after the drafts',
    steps(shift, band, 'refresh: {}'),
  ],
  'last-piece': [steps(one, 'remove piece: { piece: panel }'), 'Keep it', steps(one)],
  'made-for-removed-piece': [
    steps(shift, facing, 'remove piece: { piece: front }'),
    'remove piece: { piece: facing front }',
    steps(shift, facing, 'remove piece: { piece: front }', 'remove piece: { piece: facing front }'),
  ],
  'notches-already-there': [
    steps(shift, 'add notches: { seam: underarm, count: 2 }', 'add notches: { seam: underarm, count: 2 }'),
    'leave the step out',
    steps(shift, 'add notches: { seam: underarm, count: 2 }'),
  ],
};

followAll(redrawn);
followAll(done);
// A note: the piece beside was left as it was.
completeOver([redrawnEdges], redrawn, ['grown-on-alone']);
// The first is followed by its figure in `followed-figures`; the second is a note of a wish that ended with its place.
completeOver([operations], done, ['shoulder-cut', 'pressing-by-default']);
