import { type Cut, cutApart, swing } from '@paperhinge/alter/hinge';
import { at, type Piece, polyline } from '@paperhinge/geometry';
import { identity, rotation, translation } from '@paperhinge/geometry/plane';
import { openingFindings } from '../../packages/alter/src/hinge/opening-findings.js';
import { hinge } from '../../packages/sheet/src/words/english/hinge.js';
import { block } from '../alter/hinge/pieces.js';
import { patternOf } from '../support/polygon-piece.js';
import { shiftPattern } from '../support/shift.js';
import {
  completeOver,
  type FollowedCase,
  followAll,
  panel,
  steps,
  withPiece,
  work,
} from './followed-steps.js';

const shift = shiftPattern();
const one = patternOf([panel()]);

const cut = (piece: Piece, ...cuts: readonly Cut[]) => work(() => void cutApart(piece, cuts));
const down = (x: number): Cut => ({
  from: { edge: 'top', along: x },
  to: { edge: 'bottom', along: 300 - x },
});
/** The block cut from its hem to its dart, its side turned by so much about a point. */
const swung = (turn: number, about = at(100, 200)) =>
  work(() => {
    const done = cutApart(block(), [{ from: { edge: 'hem', along: 100 }, to: { dart: 'bust' } }]);
    const motions = done.sections.map((_, i) => (i === 0 ? rotation(turn, about) : identity));
    return openingFindings('block', swing(done, motions, 1));
  });
/** The panel cut down its middle and the left part moved. */
const moved = (piece: Piece, x: number, y: number) =>
  work(() => {
    const done = cutApart(piece, [down(100)]);
    const { left, right } = done.beside[0]!;
    const motions = done.sections.map((_, i) => (i === left ? translation(at(x, y)) : identity));
    return openingFindings('panel', swing(done, motions, right));
  });
const gaping: Piece = {
  ...panel(),
  outline: {
    parts: panel().outline.parts.map(part =>
      part.type === 'edge' && part.name === 'right'
        ? { ...part, path: polyline(at(300, 6), at(300, 400)) }
        : part,
    ),
  },
};

const slash = (from: string, to: string, by = '10') =>
  `spread: { piece: panel, from: { edge: ${from} }, to: { edge: ${to} }, by: ${by} }`;

const slashes: Readonly<Record<string, FollowedCase>> = {
  'unknown-dart': [
    steps(shift, 'close dart: { piece: front, dart: bsut, into: hem }'),
    '"bust"',
    steps(shift, 'close dart: { piece: front, dart: bust, into: hem }'),
  ],
  'slash-leaves-piece': [
    steps(
      shift,
      'spread: { piece: back, from: { edge: armhole, at: 10 % }, to: { edge: armhole, at: 90 % }, by: 5 }',
    ),
    'other places',
    steps(
      shift,
      'spread: { piece: back, from: { edge: armhole, at: 1/2 }, to: { edge: centre-back, at: 1/2 }, by: 5 }',
    ),
  ],
  'slash-crosses-dart': [
    steps(
      shift,
      'spread: { piece: front, from: { edge: hem, at: 5 % }, to: { edge: armhole, at: 90 % }, by: 10 }',
    ),
    'clear of the dart',
    steps(
      shift,
      'spread: { piece: front, from: { edge: hem, at: 80 % }, to: { edge: neck, at: 1/2 }, by: 10 }',
    ),
  ],
  'slash-crosses-dart closed first': [
    steps(
      shift,
      'spread: { piece: front, from: { edge: hem, at: 5 % }, to: { edge: armhole, at: 90 % }, by: 10 }',
    ),
    'close or move the dart first',
    steps(
      shift,
      'close dart: { piece: front, dart: bust, into: neck }',
      'spread: { piece: front, from: { edge: hem, at: 5 % }, to: { edge: armhole, at: 80 % }, by: 10 }',
    ),
  ],
  'slash-crosses-pleat': [
    steps(
      one,
      'spread: { piece: panel, from: { edge: top, at: 1/2 }, to: { edge: bottom, at: 1/2 }, by: 40, hinge: none, into: knife pleats, name: tuck, stitched: 80 }',
      slash('top, at: 45 %', 'right, at: 10 %'),
    ),
    'clear of the pleat',
    steps(
      one,
      'spread: { piece: panel, from: { edge: top, at: 1/2 }, to: { edge: bottom, at: 1/2 }, by: 40, hinge: none, into: knife pleats, name: tuck, stitched: 80 }',
      slash('top, at: 10 %', 'bottom, at: 95 %'),
    ),
  ],
  'slashes-cross': [
    cut(panel(), down(100), { from: { edge: 'right', along: 100 }, to: { edge: 'left', along: 300 } }),
    'meet at their ends only',
    cut(panel(), down(100), down(150)),
  ],
  'slash-twice': [cut(panel(), down(100), down(100)), 'Make one of them', cut(panel(), down(100))],
  'slashes-too-near': [
    cut(panel(), down(100), down(100.01)),
    '1 mm (1/16 in) apart',
    cut(panel(), down(100), down(101.6)),
  ],
  'slash-too-short': [
    cut(panel(), { from: { edge: 'top', along: 100 }, to: { pivot: at(100, 0) } }),
    'two ends apart',
    cut(panel(), { from: { edge: 'top', along: 100 }, to: { pivot: at(100, 50) } }),
  ],
  'slash-not-attached': [
    cut(panel(), { from: { pivot: at(60, 100) }, to: { pivot: at(120, 300) } }),
    'Begin it on an edge',
    cut(panel(), { from: { edge: 'top', along: 60 }, to: { pivot: at(120, 300) } }),
  ],
  'dart-torn': [swung(0.05, at(100, 260)), 'Turn about the point of the dart', swung(0.05)],
  'dart-overclosed': [swung(-0.4), 'less than the angle of the dart', swung(-0.1)],
  'pivot-out-of-reach': [
    steps(
      withPiece(shift, 'front', p => ({
        ...p,
        marks: [{ kind: 'point', name: 'bust point', at: at(20, 850) }],
      })),
      'move dart: { piece: front, dart: bust, to: { edge: shoulder, at: 1/2 }, pivot: bust point }',
    ),
    'that the dart points to',
    steps(
      shift,
      'move dart: { piece: front, dart: bust, to: { edge: shoulder, at: 1/2 }, pivot: bust point }',
    ),
  ],
  'overlap-too-wide': [
    steps(one, 'spread: { piece: panel, from: { edge: top }, to: { edge: bottom }, by: -280, slashes: 4 }'),
    'Overlap by less',
    steps(one, 'spread: { piece: panel, from: { edge: top }, to: { edge: bottom }, by: -40, slashes: 4 }'),
  ],
  'outline-tangled': [moved(panel(), -60, -500), 'Turn or overlap by less', moved(panel(), -20, 0)],
  'outline-open': [moved(gaping, 10, 0), 'Close the outline', moved(panel(), 10, 0)],
  'fold-bent': [
    steps(one, slash('left, at: 1/2', 'right, at: 1/2', '20')),
    'Draw it straight',
    steps(
      one,
      slash('left, at: 1/2', 'right, at: 1/2', '20'),
      'true: { edges: [panel.left], straight: yes, within: 20 }',
    ),
  ],
};

followAll(slashes);
/** What a step leaves for a later one: the check at the end tells what still stands, followed in `remedies` and in `truing/remedies`. */
const checkedAtTheEnd = ['edge-bridged', 'edge-overlapped', 'hinge-kink', 'dart-step'];
/** Notes of how a line was kept: it is drawn otherwise by hand, if it is wanted otherwise. */
const byHand = ['lines-parted', 'grain-line-shortened', 'grain-line-stays'];
completeOver([hinge], slashes, [...checkedAtTheEnd, ...byHand]);
