// Names and figures in drawings and sheets, and pieces by measured points: what is told of them, written as it is said.
import {
  blendSizes,
  definePattern,
  definePiece,
  type EdgeSpec,
  type PatternReadOptions,
  type PieceSpec,
  polyline,
  readPattern,
  validatePiece,
} from '@paperhinge/geometry';
import { parsePosition } from '@paperhinge/geometry/pattern';
import { type MeasuredPiece, type MeasuredPoint, measuredPiece } from '@paperhinge/geometry/trace';
import { command } from '../../packages/sheet/src/words/english/command.js';
import { curve } from '../../packages/sheet/src/words/english/curve.js';
import { measured } from '../../packages/sheet/src/words/english/measured.js';
import { pattern } from '../../packages/sheet/src/words/english/pattern.js';
import { sheet } from '../../packages/sheet/src/words/english/sheet.js';
import { sheetFields } from '../../packages/sheet/src/words/english/sheet-fields.js';
import { sheetText } from '../../packages/sheet/src/words/english/sheet-text.js';
import { sheetValues } from '../../packages/sheet/src/words/english/sheet-values.js';
import { level, run, seam } from '../support/polygon-piece.js';
import { shiftPattern } from '../support/shift.js';
import { completeOver, type Doing, type FollowedCase, followAll, steps, work } from './followed-steps.js';

const at = (x: number, y: number) => ({ x, y });
const shift = shiftPattern();

/** A front on the fold, its side sewn to a back; each line of it may be drawn otherwise. */
const lines = {
  piece: 'data-piece="front" data-allowance="10mm"',
  neck: '<path data-edge="neck" d="M20 20 H60"/>',
  side: '<path data-edge="side" d="M60 20 V90"/>',
  hem: '<path data-edge="hem" data-kind="hem" d="M60 90 H20"/>',
  cf: '<path data-edge="cf" data-kind="fold" d="M20 90 V20"/>',
  more: '',
  seams: '"side": { "a": "front.side from neck", "b": "back.side from neck" }',
  facts: '',
};
const back =
  '<g data-piece="back" data-allowance="10mm"><path data-edge="neck" d="M220 20 H260"/><path data-edge="side" d="M260 20 V90"/><path data-edge="hem" data-kind="hem" d="M260 90 H220"/><path data-edge="cb" data-kind="fold" d="M220 90 V20"/></g>';
const moon = {
  side: '',
  hem: '<path data-edge="round" d="M60 20 L58 80 L22 80 L20 20"/>',
  cf: '',
};
const drawing = (otherwise: Partial<typeof lines> = {}): string => {
  const l = { ...lines, ...otherwise };
  return `<svg xmlns="http://www.w3.org/2000/svg" width="400mm" height="100mm" viewBox="0 0 400 100" data-paperhinge="2">
<metadata>{ "seams": { ${l.seams} }${l.facts} }</metadata>
<g ${l.piece}>${l.neck}${l.side}${l.hem}${l.cf}${l.more}</g>
${back}</svg>`;
};
const read = (text: string, options: PatternReadOptions = {}): Doing =>
  work(() => readPattern(text, { file: 'p.svg', ...options }));
const drawn = (otherwise: Partial<typeof lines>): Doing => read(drawing(otherwise));
const asDrawn = drawn({});
const sewn = (a: string): Doing => drawn({ seams: `"side": { "a": "${a}", "b": "back.side from neck" }` });
const withDart = (dart: string): Doing =>
  drawn({
    side: `<path data-edge="side" d="M60 20 V50"/>${dart}<path data-edge="side-low" d="M60 60 V90"/>`,
  });
const closed = '<path id="tab" d="M300 20 H330 V80 H300 Z"/>';
const tab = (edges: readonly string[]): Doing =>
  read(drawing().replace('</svg>', `${closed}</svg>`), {
    pieces: { tab: { outline: 'tab', edges, allowance: 10 } },
  });

/** A box of four edges, as a program hands it over. */
const corners = [at(0, 0), at(100, 0), at(100, 80), at(0, 80)] as const;
const sides = ['top', 'right', 'bottom', 'left'].map(
  (name, i): EdgeSpec => ({ name, path: polyline(corners[i]!, corners[(i + 1) % 4]!) }),
);
const box = (change: Partial<PieceSpec> = {}): PieceSpec => ({ name: 'box', outline: sides, ...change });
const boxed = (i: number, change: Partial<EdgeSpec>): Doing =>
  work(() =>
    validatePiece(definePiece(box({ outline: sides.map((s, j) => (i === j ? { ...s, ...change } : s)) }))),
  );
const asIs: Doing = work(() => void definePiece(box()));
const together = (change: Partial<Parameters<typeof definePattern>[0]>): Doing =>
  work(
    () =>
      void definePattern({
        name: 'p',
        unit: 'mm',
        pieces: [definePiece(box())],
        seams: [],
        fabrics: [],
        ...change,
      }),
  );
const alone = together({});
const larger = { ...shift, size: '14' };
const sized = { ...shift, size: '12' };
const blended = (share: Parameters<typeof blendSizes>[2], other = larger): Doing =>
  work(() => void blendSizes(sized, other, share));

const read_: Readonly<Record<string, FollowedCase>> = {
  'length-not-understood': [drawn({ piece: 'data-piece="front" data-allowance="wide"' }), '12 mm', asDrawn],
  'length-out-of-range': [drawn({ piece: 'data-piece="front" data-allowance="200000 mm"' }), 'unit', asDrawn],
  'percent-not-understood': [
    drawn({ facts: ', "fabrics": { "main": { "stretch": "35" } }' }),
    '35 %',
    drawn({ facts: ', "fabrics": { "main": { "stretch": "35 %" } }' }),
  ],
  'position-not-understood': [
    work(() => void parsePosition('0.5', 'mm')),
    '50 %',
    work(() => void parsePosition('50 %', 'mm')),
  ],
  'position-off-edge': [
    sewn('front.side from neck, 10 mm to 900 mm'),
    'within the edge',
    sewn('front.side from neck, 10 mm to 60 mm'),
  ],
  'ambiguous-end': [
    drawn({ ...moon, seams: '"side": { "a": "front.round from neck", "b": "back.side from neck" }' }),
    '"from start"',
    drawn({ ...moon, seams: '"side": { "a": "front.round from start", "b": "back.side from neck" }' }),
  ],
  'not-a-neighbour': [sewn('front.side from cf'), '"from neck"', sewn('front.side from neck')],
  'unknown-piece': [sewn('frnt.side from neck'), '"front"', asDrawn],
  'unknown-edge': [sewn('front.sied from neck'), '"side"', asDrawn],
  'name-missing': [
    drawn({ piece: 'data-piece="" data-allowance="10mm"', seams: '' }),
    'a name',
    drawn({ seams: '' }),
  ],
  'duplicate-piece': [
    drawn({ piece: 'data-piece="back" data-allowance="10mm"' }),
    'a name of its own',
    asDrawn,
  ],
  'duplicate-seam': [
    together({ seams: [seam('s', ['box.top'], ['box.bottom']), seam('s', ['box.left'], ['box.right'])] }),
    'a name of its own',
    together({ seams: [seam('s', ['box.top'], ['box.bottom']), seam('t', ['box.left'], ['box.right'])] }),
  ],
  'duplicate-fabric': [
    together({
      fabrics: [
        { name: 'main', role: 'main' },
        { name: 'main', role: 'lining' },
      ],
    }),
    'a name of its own',
    together({
      fabrics: [
        { name: 'main', role: 'main' },
        { name: 'lining', role: 'lining' },
      ],
    }),
  ],
  'duplicate-edge': [
    withDart('<path data-dart="neck" d="M60 50 L40 55 L60 60"/>'),
    'a name of its own',
    withDart('<path data-dart="bust" d="M60 50 L40 55 L60 60"/>'),
  ],
  'cut-count': [
    drawn({ piece: 'data-piece="front" data-allowance="10mm" data-cut="0"' }),
    '2 for a pair',
    drawn({ piece: 'data-piece="front" data-allowance="10mm" data-cut="2"' }),
  ],
  'piece-without-outline': [work(() => void definePiece(box({ outline: [] }))), 'data-edge', asIs],
  'edge-without-length': [boxed(0, { path: polyline(at(0, 0), at(0, 0)) }), 'Remove it', asIs],
  'open-outline': [
    drawn({ side: '<path data-edge="side" d="M60 24 V90"/>' }),
    'where the last one ends',
    asDrawn,
  ],
  'outline-in-parts': [
    drawn({
      more: '<path data-edge="a" d="M100 20 H120"/><path data-edge="b" d="M120 20 V50"/><path data-edge="c" d="M120 50 L100 20"/>',
    }),
    'a piece of its own',
    asDrawn,
  ],
  'edge-names-do-not-fit': [
    tab(['top', 'right']),
    'Name every edge',
    tab(['top', 'right', 'bottom', 'left']),
  ],
  'dart-without-apex': [
    withDart('<path data-dart="bust" d="M60 50 C40 50 40 60 60 60"/>'),
    'to the point and back',
    withDart('<path data-dart="bust" d="M60 50 L40 55 L60 60"/>'),
  ],
  'self-crossing': [
    drawn({ side: '<path data-edge="side" d="M60 20 L10 55 L60 90"/>' }),
    'meet only at their ends',
    asDrawn,
  ],
  'edge-in-parts': [boxed(1, { name: 'top' }), 'a name of its own', asIs],
  'allowance-out-of-range': [
    drawn({ piece: 'data-piece="front" data-allowance="40 in"' }),
    'sign and its unit',
    asDrawn,
  ],
  'allowance-on-fold': [
    boxed(0, { kind: 'fold', allowance: 5 }),
    'allowance to 0',
    boxed(0, { kind: 'fold', allowance: 0 }),
  ],
  'opening-out-of-range': [boxed(0, { opening: 0 }), 'leave it out', asIs],
  'dart-legs-differ': [
    withDart('<path data-dart="bust" d="M60 50 L40 58 L60 60"/>'),
    'equally long',
    withDart('<path data-dart="bust" d="M60 50 L40 55 L60 60"/>'),
  ],
  'outline-without-area': [
    work(
      () =>
        void definePiece(
          box({
            outline: [
              { name: 'there', path: polyline(at(0, 0), at(100, 0)) },
              { name: 'back', path: polyline(at(100, 0), at(0, 0)) },
            ],
          }),
        ),
    ),
    'not drawn on top of each other',
    asIs,
  ],
  'outline-anticlockwise': [
    work(
      () =>
        void definePiece(
          box({
            outline: sides
              .toReversed()
              .map(s => ({ ...s, path: polyline(...s.path.segments.flatMap(([p, q]) => [q, p])) })),
          }),
        ),
    ),
    'clockwise as seen on the page',
    asIs,
  ],
  'notch-off-edge': [
    work(() => void definePiece(box({ notches: [{ edge: 'top', at: 300, style: 'single' }] }))),
    'onto the edge',
    work(() => void definePiece(box({ notches: [{ edge: 'top', at: 30, style: 'single' }] }))),
  ],
  'word-not-understood': [
    drawn({ hem: '<path data-edge="hem" data-kind="hemm" d="M60 90 H20"/>' }),
    '"hem"',
    asDrawn,
  ],
  'length-not-positive': [
    drawn({ hem: '<path data-edge="hem" data-kind="hem" data-topstitch="0" d="M60 90 H20"/>' }),
    'leave it out',
    drawn({ hem: '<path data-edge="hem" data-kind="hem" data-topstitch="20 mm" d="M60 90 H20"/>' }),
  ],
  'stretch-out-of-range': [
    drawn({ facts: ', "fabrics": { "main": { "stretch": "900 %" } }' }),
    'figure',
    drawn({ facts: ', "fabrics": { "main": { "stretch": "90 %" } }' }),
  ],
  'sizes-differ': [blended(0.5, { ...larger, seams: [] }), 'same names', blended(0.5)],
  'share-out-of-range': [blended(1.4), '50 %', blended(0.5)],
  'unknown-level': [blended([{ level: 'hips', share: 1 }]), '"hip"', blended([{ level: 'hip', share: 1 }])],
  'empty-seam': [
    together({ seams: [{ name: 's', a: [run('box.top')], b: [], ease: { mm: 0 } }] }),
    'both sides',
    alone,
  ],
};

const points = { A: at(0, 0), B: at(300, 0), C: at(0, 400) };
const triangle: MeasuredPiece = {
  name: 'gusset',
  points,
  edges: [
    { name: 'top', through: ['A', 'B'] },
    { name: 'long', through: ['B', 'C'] },
    { name: 'side', through: ['C', 'A'] },
  ],
};
const made = (piece: Partial<MeasuredPiece>): Doing => work(() => measuredPiece({ ...triangle, ...piece }));
const with_ = (P: MeasuredPoint, more: Partial<MeasuredPiece> = {}): Doing =>
  made({ points: { ...points, P }, ...more });
const [top, long, left] = triangle.edges;
const dartIn = (through: readonly string[]): Doing =>
  made({
    points: { ...points, P: at(100, 0), Q: at(110, 60), R: at(120, 0) },
    edges: [{ name: 'top', through: [...through] }, long!, left!],
    darts: [{ name: 'bust', points: ['P', 'Q', 'R'] }],
  });

const byPoints: Readonly<Record<string, FollowedCase>> = {
  'point-not-named': [
    with_({ from: { A: 100, Z: 220 } }),
    '"A"',
    with_({ from: { A: 100, B: 220 }, towards: 'down' }),
  ],
  'points-in-a-round': [with_({ mirror: 'P', over: ['A', 'B'] }), 'across and down', with_(at(20, 30))],
  'distances-too-few': [
    with_({ from: { A: 100 } }),
    'a second point',
    with_({ from: { A: 100, B: 220 }, towards: 'down' }),
  ],
  'distances-do-not-meet': [
    with_({ from: { A: 100, B: 100 } }),
    'Measure both again',
    with_({ from: { A: 200, B: 150 }, towards: 'down' }),
  ],
  'point-in-two-places': [
    with_({ from: { A: 250, C: 250 } }),
    'towards: left, or towards: right',
    with_({ from: { A: 250, C: 250 }, towards: 'right' }),
  ],
  'mirror-line-missing': [
    with_({ mirror: 'B', over: ['A', 'A'] }),
    'two points that lie apart',
    with_({ mirror: 'B', over: ['A', 'C'] }),
  ],
  'too-few-measured-edges': [made({ edges: [top!] }), 'once round the piece', made({})],
  'edge-of-one-point': [
    made({ edges: [{ name: 'top', through: ['A'] }, long!, left!] }),
    'from its beginning to its end',
    made({}),
  ],
  'edges-do-not-meet': [made({ edges: [top!, long!] }), 'in their order round the piece', made({})],
  'dart-off-its-edge': [dartIn(['A', 'B']), '"P" and "R" one after the other', dartIn(['A', 'P', 'R', 'B'])],
  'dart-of-wrong-points': [
    made({ darts: [{ name: 'bust', points: ['A', 'B'] }] }),
    'Give three',
    dartIn(['A', 'P', 'R', 'B']),
  ],
  'edges-wait-for-one-another': [
    made({ edges: [{ ...top!, ends: 'square' }, { ...long!, starts: 'square' }, left!] }),
    'end without square or smooth',
    made({ edges: [top!, { ...long!, starts: 'square' }, left!] }),
  ],
  'edge-measured-otherwise': [
    made({ edges: [{ ...top!, length: 320 }, long!, left!] }),
    'Measure its points again',
    made({ edges: [{ ...top!, length: 300 }, long!, left!] }),
  ],
  'notch-point-off-edge': [
    with_(at(90, 90), { notches: [{ at: 'P' }] }),
    'lies on an edge',
    with_(at(90, 0), { notches: [{ at: 'P' }] }),
  ],
};

const band = (more: string) =>
  `draft band: { name: neckband, along: [front.neck, back.neck], ratio: 80 %, width: 56, join: 7${more} }`;
const lower = 'recut neckline: { piece: back, shape: round, depth: 60 }';
const armholeFacing = 'draft facing: { name: facing, along: [back.armhole], width: 40 }';
/** A slash from the hem that hinges on the armhole, which keeps its length and bends. */
const swung = 'spread: { piece: back, from: { edge: hem, at: 1/3 }, to: { edge: armhole, at: 1/2 }, by: 60 }';
const eaten = {
  ...shift,
  pieces: shift.pieces.map(piece =>
    piece.name === 'front'
      ? { ...piece, lines: [...piece.lines, level('new', [0, 120], [255, 130])] }
      : piece,
  ),
};
const cutAway = 'recut neckline: { piece: front, shape: drawn, line: new }';
const named: Readonly<Record<string, FollowedCase>> = {
  'unknown-line': [
    steps(shift, 'shorten: { pieces: front, at: wiast, by: 10 }'),
    '"waist"',
    steps(shift, 'shorten: { pieces: front, at: waist, by: 10 }'),
  ],
  'unknown-neighbour': [
    steps(shift, 'close dart: { piece: front, dart: bust, into: hem, at: 1/3 from centre-frnt }'),
    '"centre-front"',
    steps(shift, 'close dart: { piece: front, dart: bust, into: hem, at: 1/3 from centre-front }'),
  ],
  'unknown-fabric': [
    steps(shift, 'fabrics: { rib: { stretch: 40 % } }', band(', fabric: ribb')),
    '"rib"',
    steps(shift, 'fabrics: { rib: { stretch: 40 % } }', band(', fabric: rib')),
  ],
  'opening-too-long': [
    steps(shift, 'opening: { front.neck: 900 }'),
    'within the edge',
    steps(shift, 'opening: { front.neck: 90 }'),
  ],
  'wearer-figure-doubted': [
    steps(shift, 'wearer: { bust girth: 40 }'),
    '40 in',
    steps(shift, 'wearer: { bust girth: 40 in }'),
  ],
  'unknown-dart': [
    steps(shift, 'close dart: { piece: front, dart: bsut, into: hem }'),
    '"bust"',
    steps(shift, 'close dart: { piece: front, dart: bust, into: hem }'),
  ],
  'unknown-mark': [
    steps(shift, 'move dart: { piece: front, dart: bust, to: { edge: shoulder }, pivot: bust pont }'),
    '"bust point"',
    steps(shift, 'move dart: { piece: front, dart: bust, to: { edge: shoulder }, pivot: bust point }'),
  ],
  'unknown-seam': [
    steps(shift, 'take in: { seam: sdie, by: 20 }'),
    '"side"',
    steps(shift, 'take in: { seam: side, by: 20 }'),
  ],
  'made-for-edge-gone': [
    steps(eaten, 'draft stay: { name: stay, along: front.shoulder, width: 18 }', cutAway),
    'or remove it',
    steps(
      eaten,
      'draft stay: { name: stay, along: front.shoulder, width: 18 }',
      cutAway,
      'remove piece: { piece: stay }',
    ),
  ],
  'made-for-edge-reshaped': [
    steps(shift, armholeFacing, swung),
    'after the step',
    steps(shift, armholeFacing, swung, armholeFacing),
  ],
  'made-for-edge-changed': [
    steps(shift, band(''), lower),
    'after the step',
    steps(shift, band(''), lower, band('')),
  ],
};

followAll(read_);
followAll(byPoints);
followAll(named);
// The guess of a role is followed in `followed-words`, a pattern that is none in `followed-wishes`.
completeOver([pattern], read_, ['role-guessed', 'pattern-not-usable']);
// How well measures agree is told whatever they are; the other needs a dart at the very end of an edge.
completeOver([measured], byPoints, ['nothing-to-meet', 'point-measured-over']);
const elsewhere = [sheetText, sheetFields, sheetValues, command, pattern].flatMap(table =>
  Object.keys(table),
);
completeOver(
  [Object.fromEntries(Object.entries(sheet).filter(([code]) => !elsewhere.includes(code)))],
  named,
  // No verb of ours names a pleat or a notch that is there.
  ['unknown-pleat', 'unknown-notch'],
);
// Told to a program that hands over curves; a drawing with such a point is refused by its unit in `followed-reading`.
completeOver([curve], {}, Object.keys(curve));
