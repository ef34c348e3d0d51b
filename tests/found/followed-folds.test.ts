import { at, type Pattern, polyline } from '@paperhinge/geometry';
import { became } from '../../packages/sheet/src/words/english/became.js';
import { darts } from '../../packages/sheet/src/words/english/darts.js';
import { unfold } from '../../packages/sheet/src/words/english/unfold.js';
import { level, patternOf, run } from '../support/polygon-piece.js';
import { shiftPattern } from '../support/shift.js';
import { lengthsIn, withEdge } from './followed.js';
import {
  completeOver,
  demo,
  type FollowedCase,
  followAll,
  panel,
  type Said,
  steps,
  withPiece,
} from './followed-steps.js';

const shift = shiftPattern();
const dress = demo('darted-dress');
const one = patternOf([panel()]);

const bothFolds = withEdge(one, 'panel', 'right', e => ({ ...e, kind: 'fold', allowance: 0 }));
const bowed = withEdge(one, 'panel', 'left', e => ({
  ...e,
  path: polyline(at(0, 400), at(1, 200), at(0, 0)),
}));

const opened: Readonly<Record<string, FollowedCase>> = {
  'unfolded-overlaps': [
    steps(
      shift,
      'draft circle skirt: { name: skirt, part: full, waist: 700, length: 600, panels: 1 }',
      'unfold: { piece: skirt }',
    ),
    'more panels',
    steps(
      shift,
      'draft circle skirt: { name: skirt, part: full, waist: 700, length: 600, panels: 2 }',
      'unfold: { piece: skirt }',
    ),
  ],
  'no-fold': [
    steps(
      withEdge(one, 'panel', 'left', e => ({ ...e, kind: 'seam' })),
      'unfold: { piece: panel }',
    ),
    'Make its centre edge a fold',
    steps(one, 'unfold: { piece: panel }'),
  ],
  'several-folds': [
    steps(bothFolds, 'unfold: { piece: panel }'),
    'Leave one fold',
    steps(one, 'unfold: { piece: panel }'),
  ],
  'unfold-not-straight': [
    steps(bowed, 'unfold: { piece: panel }'),
    'Draw the fold straight',
    steps(bowed, 'true: { edges: [panel.left], straight: yes }', 'unfold: { piece: panel }'),
  ],
};

const eaten = 'recut neckline: { piece: front, shape: drawn, line: new }';
const higher = 'recut neckline: { piece: front, shape: drawn, line: new }';
const slit = withEdge(one, 'panel', 'right', e => ({ ...e, opening: 150 }));
const longer = 'lengthen: { pieces: [panel], at: hem, by: 30 }';
const zipped = (edge: string): Pattern => ({
  ...drawnNeck([0, 120], [255, 130]),
  fastenings: [{ name: 'zip', kind: 'zip', along: run(`front.${edge}`) }],
});
const below = (y: number): Pattern =>
  withPiece(one, 'panel', piece => ({
    ...piece,
    notches: [{ edge: 'right', at: y, style: 'single' }],
    lines: [...piece.lines, level('pocket', [20, y], [120, y])],
    marks: [{ kind: 'point', name: 'pocket corner', at: at(60, y) }],
  }));
const cutOff = 'shorten: { pieces: panel, at: hem, by: 150 }';

const cutAway: Readonly<Record<string, FollowedCase>> = {
  'edge-cut-away': [
    steps(drawnNeck([0, 120], [255, 130]), eaten),
    'Cut off less',
    steps(drawnNeck([0, 120], [80, 100], [161, -30.43]), higher),
  ],
  'notch-cut-away': [steps(below(300), cutOff), 'mark both anew', steps(below(150), cutOff)],
  'line-cut-away': [steps(below(300), cutOff), 'Draw it anew', steps(below(150), cutOff)],
  'mark-cut-away': [steps(below(300), cutOff), 'Mark it anew', steps(below(150), cutOff)],
  'seam-gone': [
    steps(drawnNeck([0, 120], [255, 130]), eaten),
    'say to what',
    steps(
      drawnNeck([0, 120], [255, 130]),
      'seams: { shoulder: { a: front.neck from shoulder, b: back.shoulder from armhole } }',
      eaten,
    ),
  ],
  'seam-run-gone': [
    steps(drawnNeck([0, 120], [280, 240]), eaten),
    'what is sewn to the edges that are left',
    steps(
      drawnNeck([0, 120], [280, 240]),
      'seams: { shoulder: { a: front.neck from shoulder, b: back.shoulder from armhole }, armhole: { a: sleeve.cap from underarm-back, b: back.armhole from side } }',
      eaten,
    ),
  ],
  'opening-kept': [
    steps(slit, longer),
    'opening: { panel.right: 400 mm }',
    steps(slit, 'opening: { panel.right: 400 mm }', longer),
  ],
  'fastening-gone': [steps(zipped('shoulder'), eaten), 'Put one in anew', steps(zipped('side-lower'), eaten)],
};
function drawnNeck(...points: readonly (readonly [number, number])[]): Pattern {
  return withPiece(shift, 'front', piece => ({ ...piece, lines: [...piece.lines, level('new', ...points)] }));
}

const move = (fields: string) => `move dart: { piece: front, dart: bust, ${fields} }`;
const open = (fields: string) => `open dart: { piece: back, ${fields} }`;
const uneven = (at: string) =>
  `open dart: { piece: front, edge: hem, at: ${at}, intake: 24, to: bust point, name: waist }`;
const dartCases: Readonly<Record<string, FollowedCase>> = {
  'unknown-mark': [
    steps(shift, move('to: { edge: shoulder }, pivot: bust pont')),
    '"bust point"',
    steps(shift, move('to: { edge: shoulder }, pivot: bust point')),
  ],
  'dart-name-taken': [
    steps(dress, open('edge: neck, at: 1/2, intake: 6, depth: 60, name: back-waist')),
    'another name',
    steps(dress, open('edge: neck, at: 1/2, intake: 6, depth: 60, name: neck dart')),
  ],
  'dart-points-meet': [
    steps(shift, move('to: { edge: shoulder }, share: 50 %, name: new')),
    'point back: 20 mm',
    steps(shift, move('to: { edge: shoulder }, share: 50 %, name: new, point back: 20 mm')),
  ],
  'dart-off-edge': [
    steps(shift, open('edge: shoulder, at: 2 mm, intake: 12, depth: 80, name: new')),
    'farther from the ends',
    steps(shift, open('edge: shoulder, at: 1/2, intake: 12, depth: 80, name: new')),
  ],
  'dart-uneven-there': [
    steps(shift, uneven('20 %')),
    'from the start of the edge',
    () => {
      const [{ remedy }] = steps(shift, uneven('20 %'))().filter(f => f.code === 'dart-uneven-there') as [
        Said,
      ];
      return steps(shift, uneven(`${lengthsIn(remedy)[0]} mm`))();
    },
  ],
  'dart-leaves-piece': [
    steps(shift, open('edge: shoulder, at: 1/2, intake: 12, depth: 1500, name: new')),
    'less deep',
    steps(shift, open('edge: shoulder, at: 1/2, intake: 12, depth: 80, name: new')),
  ],
  'dart-too-deep': [
    steps(shift, 'move dart point: { piece: front, dart: bust, deeper: -400 }'),
    'Shorten it by less',
    steps(shift, 'move dart point: { piece: front, dart: bust, deeper: -40 }'),
  ],
  'dart-beside-nothing': [
    steps(shift, 'resize dart: { piece: front, dart: bust, to: 420 }'),
    'Let it take in less',
    steps(shift, 'resize dart: { piece: front, dart: bust, to: 40 }'),
  ],
  'dart-into-itself': [
    steps(dress, 'join darts: { piece: front, dart: bust, into: bust }'),
    'the dart that is to stay',
    steps(dress, 'join darts: { piece: front, dart: bust, into: under-bust, pivot: bust point }'),
  ],
  'contour-dart-leaves-piece': [
    steps(
      shift,
      'add contour dart: { piece: back, name: waist, line: waist, out: 260, intake: 30, above: 150, below: 140 }',
    ),
    'nearer to the middle of the piece',
    steps(
      shift,
      'add contour dart: { piece: back, name: waist, line: waist, out: 130, intake: 30, above: 150, below: 140 }',
    ),
  ],
  'dart-is-true': [
    steps(shift, 'true dart: { piece: front, dart: bust }'),
    'Leave the step out',
    steps(shift),
  ],
  'dart-edges-unsewn': [
    steps(
      dress,
      'remove piece: { piece: skirt front }',
      'change dart: { piece: front, dart: under-bust, into: gathers }',
    ),
    'Gather it to a band or facing',
    steps(
      dress,
      'remove piece: { piece: skirt front }',
      'change dart: { piece: front, dart: under-bust, into: gathers }',
      'draft strip: { name: band, along: [front.waist], width: 60 }',
    ),
  ],
};

followAll(opened);
followAll(cutAway);
followAll(dartCases);
// A note of which nothing is to be done, and a ring that is to be looked at.
completeOver([unfold], opened, ['seam-followed', 'seam-to-check']);
// A note: what was open from end to end is so still.
completeOver([became], cutAway, ['opening-follows']);
// A note: the leg was made as long as the other already.
completeOver([darts], dartCases, ['dart-end-redrawn']);
