// Remedies without a figure: the word, the line or the fact they ask for is given, and what they were told for is gone.
import { easeFindings, orderOfWork, overTheHead } from '@paperhinge/alter';
import {
  at,
  checkPattern,
  cuttingLine,
  type Finding,
  type Pattern,
  type PieceLine,
  readPattern,
} from '@paperhinge/geometry';
import { readSheet, runSheet } from '@paperhinge/sheet';
import { describe, expect, test } from 'vitest';
import { fit } from '../../packages/sheet/src/words/english/fit.js';
import { measure } from '../../packages/sheet/src/words/english/measure.js';
import { orderTellings } from '../../packages/sheet/src/words/english/order.js';
import { level, patternOf, pieceOf, rectangle, seam, side } from '../support/polygon-piece.js';
import { toldFinding } from '../support/told.js';
import { lengthsIn, withEdge, withPieces } from './followed.js';

const codes = (findings: readonly Finding[]) => findings.map(f => f.code);
const sheet = (...lines: readonly string[]) =>
  readSheet(['pattern: p.svg', ...lines].join('\n'), { file: 's.yaml' });

describe('what is asked of a drawing', () => {
  const drawn = (more: { readonly neck?: string; readonly piece?: string; readonly seams?: string } = {}) =>
    `<svg xmlns="http://www.w3.org/2000/svg" width="400mm" height="100mm" viewBox="0 0 400 100" data-paperhinge="2">
<metadata>{ "seams": { "side": { "a": "front.side${more.seams ?? ' from neck'}", "b": "back.side from neck" } } }</metadata>
<g data-piece="front" ${more.piece ?? 'data-allowance="10mm"'}>
<path ${more.neck ?? 'data-edge="neck"'} d="M20 20 H60"/><path data-edge="side" d="M60 20 V90"/><path data-edge="hem" data-kind="hem" d="M60 90 H20"/><path data-edge="cf" data-kind="fold" d="M20 90 V20"/></g>
<g data-piece="back" data-allowance="10mm"><path data-edge="neck" d="M220 20 H260"/><path data-edge="side" d="M260 20 V90"/><path data-edge="hem" data-kind="hem" d="M260 90 H220"/><path data-edge="cb" data-kind="fold" d="M220 90 V20"/></g></svg>`;
  const said = (text: string) => readPattern(text, { file: 'p.svg' }).findings;
  const plain = drawn();

  test.each([
    ['attribute-unknown', drawn({ piece: 'data-allowance="10mm" data-titel="Front"' }), 'data-title'],
    ['allowance-not-given', drawn({ piece: '' }), 'data-allowance'],
    ['run-direction-not-given', drawn({ seams: '' }), 'from neck'],
    ['role-not-known', drawn({ neck: 'data-edge="neck" data-role="nekc"' }), 'neck'],
    ['metadata-not-read', plain.replace('"b": "back', '"eese": "0 mm", "b": "back'), 'ease'],
    [
      'attribute-misplaced',
      plain.replace('<path data-edge="neck" d="M220', '<path data-edge="neck" data-cut="2" d="M220'),
      'piece',
    ],
  ])('%s: the remedy names what to write, and it is understood', (code, text, word) => {
    const found = said(text).find(f => f.code === code);
    expect(found, codes(said(text)).join()).toBeDefined();
    expect(toldFinding(found!).remedy).toContain(word);
    const followed = text
      .replace('data-titel', 'data-title')
      .replace('<g data-piece="front" >', '<g data-piece="front" data-allowance="10mm">')
      .replace('"front.side"', '"front.side from neck"')
      .replace('nekc', 'neck')
      .replace('eese', 'ease')
      .replace(' data-cut="2" d="M220', ' d="M220');
    expect(codes(said(followed))).not.toContain(code);
  });

  test('scale-assumed: a size in mm, or a scale in the sheet', () => {
    const px = plain.replace('width="400mm" height="100mm" ', '');
    const found = said(px).find(f => f.code === 'scale-assumed')!;
    expect(toldFinding(found).remedy).toMatch(/scale:/);
    const { scale } = sheet('scale: 1/4');
    expect(codes(readPattern(px, { file: 'p.svg', ...(scale ? { scale } : {}) }).findings)).not.toContain(
      'scale-assumed',
    );
    expect(codes(said(plain))).not.toContain('scale-assumed');
  });

  test('role-guessed: the role is written, and no guess is left', () => {
    const { pattern } = readPattern(plain, { file: 'p.svg' });
    const notes = (text: Pattern) => codes(checkPattern(text)).filter(c => c === 'role-guessed');
    const written = readPattern(plain.replaceAll('data-edge="neck"', 'data-edge="neck" data-role="neck"'), {
      file: 'p.svg',
    });
    expect(notes(written.pattern).length).toBeLessThanOrEqual(notes(pattern).length);
  });
});

const placement: PieceLine = {
  kind: 'placement',
  name: 'tab',
  path: { segments: [[at(10, 10), at(60, 10)]] },
};
const tube = (lines: { readonly front: readonly string[]; readonly back: readonly string[] }): Pattern => {
  const half = (name: 'front' | 'back') =>
    rectangle(name, 500, 400, { lines: lines[name].map(l => level(l, [0, 100], [500, 100])) });
  return patternOf(
    [half('front'), half('back')],
    [seam('side', ['front.right'], ['-back.left']), seam('other side', ['front.left'], ['-back.right'])],
  );
};

const notched = (bNotches: readonly number[], aNotches: readonly number[] = [106, 206]) =>
  patternOf(
    [
      rectangle('a', 50, 312, {
        notches: aNotches.map((at, i) => ({ edge: 'right', at, style: i === 0 ? 'single' : 'double' })),
      }),
      rectangle('b', 50, 300, {
        notches: bNotches.map((at, i) => ({ edge: 'right', at, style: i === 0 ? 'single' : 'double' })),
      }),
    ],
    [seam('s', ['a.right'], ['b.right'], { mm: 12 })],
  );

/** A front whose neck is drawn without a name or a role that tells it. */
const nameless = (role?: 'neck'): Pattern =>
  patternOf([
    pieceOf('front', [
      {
        ...side('oben', [
          [0, 0],
          [150, 0],
        ]),
        ...(role ? { role } : {}),
      },
      {
        ...side('seite oben', [
          [150, 0],
          [250, 30],
        ]),
        role: 'shoulder',
      },
      side('seite', [
        [250, 30],
        [250, 400],
      ]),
      side(
        'unten',
        [
          [250, 400],
          [0, 400],
        ],
        { kind: 'hem' },
      ),
      side(
        'mitte',
        [
          [0, 400],
          [0, 0],
        ],
        { kind: 'fold' },
      ),
    ]),
  ]);

interface Case {
  readonly pattern: Pattern;
  readonly check: (pattern: Pattern) => readonly Finding[];
  readonly follow: (pattern: Pattern, finding: Finding) => Pattern;
}
const hasWearer = (wearer: Record<string, number>) => (pattern: Pattern) => [
  ...easeFindings(pattern, wearer),
  ...overTheHead({ pattern, wearer, derived: [] }),
];
const band = (stretch: number, ratio: string, recovery = 95) =>
  runSheet(
    sheet(
      `fabrics: { rib: { stretch: ${stretch} %, recovery: ${recovery} % } }`,
      'steps:',
      `  - draft band: { name: band, along: [front.top, back.top], ratio: ${ratio}, width: 60, join: 10, fabric: rib }`,
    ),
    tube({ front: [], back: [] }),
  );

const cases: Readonly<Record<string, Case>> = {
  'no-seams': {
    pattern: { ...tube({ front: [], back: [] }), seams: [] },
    check: checkPattern,
    follow: pattern => ({ ...pattern, seams: tube({ front: [], back: [] }).seams }),
  },
  'piece-in-no-seam': {
    pattern: { ...notched([]), pieces: [...notched([]).pieces, rectangle('tab', 50, 20)] },
    check: checkPattern,
    follow: pattern =>
      withPieces(pattern, p => (p.name === 'a' ? { ...p, lines: [...p.lines, placement] } : p)),
  },
  'notch-without-partner': {
    pattern: notched([], [106]),
    check: checkPattern,
    follow: pattern => ({ ...notched([100], [106]), fabrics: pattern.fabrics }),
  },
  'ease-the-wrong-way': {
    pattern: notched([96, 200]),
    check: checkPattern,
    follow: (pattern, found) => {
      const [back] = lengthsIn(toldFinding(found).remedy);
      return withPieces(pattern, p =>
        p.name !== found.where.piece
          ? p
          : { ...p, notches: p.notches.map(n => (n.style === 'double' ? { ...n, at: n.at - back! } : n)) },
      );
    },
  },
  'level-not-all-round': {
    pattern: tube({ front: ['bust'], back: [] }),
    check: hasWearer({ 'bust girth': 900 }),
    follow: () => tube({ front: ['bust'], back: ['bust'] }),
  },
  'measures-without-level': {
    pattern: tube({ front: ['bust'], back: ['bust'] }),
    check: hasWearer({ 'bust girth': 900, 'waist girth': 700 }),
    follow: () => tube({ front: ['bust', 'waist'], back: ['bust', 'waist'] }),
  },
  'neck-not-found': {
    pattern: nameless(),
    check: hasWearer({ 'head girth': 560 }),
    follow: () => nameless('neck'),
  },
  'corner-not-shaped': {
    pattern: patternOf([
      pieceOf('front', [
        side('top', [
          [0, 0],
          [200, 0],
        ]),
        {
          ...side('right', [
            [200, 0],
            [400, 4],
          ]),
          corners: { start: 'pressed-open' },
        },
        side('bottom', [
          [400, 4],
          [200, 300],
        ]),
        side('left', [
          [200, 300],
          [0, 0],
        ]),
      ]),
    ]),
    check: pattern => pattern.pieces.flatMap(p => cuttingLine(p, pattern).findings),
    follow: pattern =>
      withEdge(pattern, 'front', 'right', edge => ({
        ...edge,
        corners: { ...edge.corners, start: 'mitre' },
      })),
  },
};

test.each(Object.entries(cases))(
  '%s: done as it is said, it is told no longer',
  (code, { pattern, check, follow }) => {
    const found = check(pattern).find(f => f.code === code);
    expect(found, codes(check(pattern)).join()).toBeDefined();
    expect(codes(check(follow(pattern, found!)))).not.toContain(code);
  },
);

describe('a band that its cloth does not stretch to', () => {
  test.each([
    ['band-beyond-stretch', 30, '70 %'],
    ['band-near-stretch', 30, '79 %'],
  ] as const)(
    '%s: made as long as is said, or cut from cloth that stretches more',
    (code, stretch, ratio) => {
      const run = band(stretch, ratio);
      const found = run.findings.find(f => f.code === code)!;
      expect(found, codes(run.findings).join()).toBeDefined();
      const [least] = lengthsIn(toldFinding(found).remedy);
      // 1000 mm of edge, two joins of 10 mm.
      const longer = band(stretch, `${((least! - 20) / 1000) * 100} %`);
      expect(codes(longer.findings).filter(c => c.startsWith('band-'))).toEqual([]);
      expect(codes(band(90, ratio).findings)).not.toContain(code);
    },
  );
});

test('band-recovers-little: cut from cloth that springs back as far as is said', () => {
  const found = band(90, '80 %', 70).findings.find(f => f.code === 'band-recovers-little')!;
  const wanted = Number(/(\d+) %/.exec(toldFinding(found).remedy)![1]);
  expect(codes(band(90, '80 %', wanted).findings)).not.toContain('band-recovers-little');
});

test('passage-not-checked: the measure that is asked for is one that a sheet takes, and it is checked', () => {
  const trousers = patternOf([
    {
      ...pieceOf(
        'leg',
        [
          {
            ...side('waist', [
              [0, 0],
              [400, 0],
            ]),
            role: 'waist',
          },
          {
            ...side('inseam', [
              [400, 0],
              [400, 900],
            ]),
            role: 'inseam',
          },
          side(
            'hem',
            [
              [400, 900],
              [0, 900],
            ],
            { kind: 'hem' },
          ),
          {
            ...side('outseam', [
              [0, 900],
              [0, 0],
            ]),
            role: 'outseam',
          },
        ],
        { cutting: { count: 2, mirrored: true } },
      ),
      role: 'trouser',
    },
  ]);
  const check = (wearer: Record<string, number>) => overTheHead({ pattern: trousers, wearer, derived: [] });
  const found = check({}).find(f => f.code === 'passage-not-checked')!;
  const { measures } = found.about as { readonly measures: readonly string[] };
  expect(measures).toEqual(['hip girth', 'heel girth']);
  const { wearer } = sheet(`wearer: { ${measures.map(m => `${m}: 350`).join(', ')} }`);
  expect(codes(check(wearer as Record<string, number>))).not.toContain('passage-not-checked');
});

test('turned-back-end-off: drafted again from the pattern as it is now', () => {
  const steps = [
    'draft facing: { name: facing, along: front.top, width: 50 }',
    'take in: { seam: side, by: 120, from: start, to: end }',
  ];
  const run = (...more: readonly string[]) =>
    runSheet(sheet('steps:', ...[...steps, ...more].map(s => `  - ${s}`)), tube({ front: [], back: [] }));
  const before = codes(run().findings);
  const after = codes(run('draft facing: { name: facing, along: front.top, width: 50 }').findings);
  for (const code of ['turned-back-end-off', 'made-for-edge-changed', 'made-for-edge-reshaped'])
    expect(after, before.join()).not.toContain(code);
  expect(before.some(c => c.startsWith('made-for') || c === 'turned-back-end-off')).toBe(true);
});

test('order-trapped: with one of them left open the others are ordered', () => {
  const note = (job: string, after: string) => ({
    job,
    text: job,
    after: [{ job: after, because: 'it must' }],
  });
  const pattern = tube({ front: [], back: [] });
  const trapped = [note('seam side', 'seam other side'), note('seam other side', 'seam side')];
  expect(codes(orderOfWork(pattern, [], trapped).findings)).toContain('order-trapped');
  const open = { ...pattern, seams: pattern.seams.filter(s => s.name !== 'other side') };
  expect(codes(orderOfWork(open, [], trapped.slice(0, 1)).findings)).not.toContain('order-trapped');
});

/** Followed here, in `followed-figures` or in `remedies`. */
const followed = [
  ...Object.keys(cases),
  'seam-does-not-match',
  'notches-do-not-meet',
  'notch-misses-seam',
  'crossing-seams-apart',
  'notches-wanted',
  'joined-line-broken',
  'turned-back-end-off',
  'edge-kinked',
  'edge-stepped',
  'fold-corner-not-square',
  'small-differences',
  'opening-longer-than-edge',
  'band-beyond-stretch',
  'band-near-stretch',
  'band-recovers-little',
  'girth-too-small',
  'ease-below-usual',
  'head-does-not-pass',
  'part-does-not-pass',
  'passage-not-checked',
  'order-trapped',
  'lining-cannot-be-turned',
];
/** Good news, of which nothing is to be done; and a refusal, which is no finding of a check. */
/** Followed in the tests of contour darts, of raw edges, of drawn facings, of straps, of ties and of wrapped fronts; of spurs and hooks. */
const inItsOwnTest = [
  'edge-turns-back',
  'edge-ends-hooked',
  'contour-dart-cut',
  'edges-left-raw',
  'lining-edges-loose',
  'facings-not-joined',
  'neck-opens-at-strap',
  'ends-hang-loose',
  'lap-not-known',
];
const nothingToDo = ['head-passes', 'part-passes', 'measurement-not-usable'];

test('every remedy of a check is followed in some test', () => {
  const told = [...Object.keys(measure), ...Object.keys(fit), ...Object.keys(orderTellings)];
  expect(told.filter(code => ![...followed, ...inItsOwnTest, ...nothingToDo].includes(code))).toEqual([]);
});
