// What is told of a drawing when it is read: mended as its remedy says, it is told no longer.
import { PatternError, type PatternReadOptions, readPattern, readShapes } from '@paperhinge/geometry';
import { english, wordsOf } from '@paperhinge/sheet/words';
import { expect, test } from 'vitest';
import { drawings } from '../../packages/sheet/src/words/english/drawings.js';
import { patternDrawings } from '../../packages/sheet/src/words/english/pattern-drawings.js';

/** Read as a pattern, or as the shapes of any drawing. */
type Options = PatternReadOptions | 'shapes';
interface Drawn {
  readonly text: string;
  readonly options?: Options;
}

/** What is told of a drawing: its code and its remedy, of findings or of the refusal. */
function told({ text, options }: Drawn): readonly { readonly code: string; readonly remedy: string }[] {
  const words = wordsOf(english, 'mm');
  try {
    const { findings } =
      options === 'shapes' ? readShapes(text) : readPattern(text, { file: 'p.svg', ...options });
    return findings.map(f => ({
      code: f.code,
      remedy: words.finding(f).remedy,
    }));
  } catch (error) {
    if (!(error instanceof PatternError)) throw error;
    return [{ code: error.code, remedy: words.error(error).remedy }];
  }
}
const codes = (drawn: Drawn) => told(drawn).map(t => t.code);

const size = 'width="400mm" height="100mm" viewBox="0 0 400 100"';
const seams = '{ "seams": { "side": { "a": "front.side from neck", "b": "back.side from neck" } } }';
const neck = '<path data-edge="neck" d="M20 20 H60"/>';
const front = `<g data-piece="front" data-allowance="10mm">${neck}<path data-edge="side" d="M60 20 V90"/><path data-edge="hem" data-kind="hem" d="M60 90 H20"/><path data-edge="cf" data-kind="fold" d="M20 90 V20"/></g>`;
const back = `<g data-piece="back" data-allowance="10mm"><path data-edge="neck" d="M220 20 H260"/><path data-edge="side" d="M260 20 V90"/><path data-edge="hem" data-kind="hem" d="M260 90 H220"/><path data-edge="cb" data-kind="fold" d="M220 90 V20"/></g>`;
const plain = `<svg xmlns="http://www.w3.org/2000/svg" ${size} data-paperhinge="2">
<metadata>${seams}</metadata>
${front}
${back}</svg>`;
const closed = '<path data-outline="" d="M300 20 H360 V80 H300 Z"/>';
const tab = (inside: string): string =>
  plain.replace('</svg>', `<g data-piece="tab" data-allowance="10mm">${inside}</g></svg>`);
const grain = '<path data-line="grain" d="M40 80 V40"/>';
const inFront = (element: string): string => plain.replace(neck, neck + element);

const withShape = plain.replace(
  '</svg>',
  '<path id="tab-line" d="M300 20 H330 V80 H300 Z"/><path id="other-line" d="M340 20 H360 V80 H340 Z"/></svg>',
);

const inSizes = plain.replace(
  /<g data-piece="front"[\s\S]*<\/svg>/,
  `<g data-size="12">${front}${back}</g><g data-size="14">${front}${back}</g></svg>`,
);

test('the drawing that the others are made from has nothing told that is to be done', () => {
  expect(codes({ text: plain }).filter(code => code !== 'role-guessed')).toEqual([]);
});

/** What is drawn, the same drawn as the remedy says, and a word that the remedy says it with. */
type Case = readonly [text: string, mended: string, word: string, options?: Options, mendedBy?: Options];
const cases: Readonly<Record<string, Case>> = {
  'attribute-misspelt': [plain.replaceAll('data-piece', 'data-peice'), plain, 'data-piece'],
  'also-cut-not-understood': [
    plain.replace('data-piece="front"', 'data-piece="front" data-also-cut="lining, twice"'),
    plain.replace('data-piece="front"', 'data-piece="front" data-also-cut="2 lining"'),
    '2 lining',
  ],
  'no-pieces': [
    plain.replaceAll(/ data-(piece|edge|kind|allowance)="[^"]*"/g, ''),
    tab(closed),
    'data-piece="name"',
  ],
  'piece-left-out': [tab(''), plain, 'remove it'],
  'outside-piece': [plain.replace(front, front + grain), inFront(grain), 'group of its piece'],
  'two-outlines': [inFront(closed), plain, 'data-edge'],
  'second-outline-left-out': [
    tab(closed + closed.replace('M300 20 H360', 'M300 20 H350')),
    plain.replace(
      '</svg>',
      `<g data-piece="tab" data-allowance="10mm">${closed}</g><g data-piece="other" data-allowance="10mm">${closed.replace('M300 20 H360', 'M300 20 H350')}</g></svg>`,
    ),
    'a piece of its own',
  ],
  'inner-outline-left-out': [
    tab(closed.replace('Z"', 'Z M320 40 H340 V60 Z"')),
    tab(`${closed}<path data-line="placement" d="M320 40 H340 V60 Z"/>`),
    'data-line="placement"',
  ],
  'nothing-drawn': [inFront('<path data-notch="single" d=""/>'), plain, 'remove it'],
  'not-displayed': [inFront(grain.replace('d=', 'display="none" d=')), inFront(grain), 'Show it'],
  'short-side-dropped': [tab(closed.replace('H300 Z', 'H300 V20.02 Z')), tab(closed), 'two last points'],
  'drawing-not-read': [
    inFront('<path d="M30 30 H50"/>'),
    inFront('<path data-line="placement" d="M30 30 H50"/>'),
    'data-line',
  ],
  'fold-not-straight': [plain.replace('M20 90 V20', 'M20 90 Q16 55 20 20'), plain, 'Draw it straight'],
  'metadata-not-json': [plain.replace('{ "seams"', '{ seams'), plain, 'remove the block'],
  'metadata-not-understood': [
    plain.replace('"front.side from neck"', '"front side"'),
    plain,
    'piece.edge from neighbour',
  ],
  'viewbox-empty': [plain.replace('0 0 400 100"', '0 0 400 0"'), plain, 'viewBox', 'shapes'],
  'reference-missing': [inFront('<use href="#gone"/>'), plain, 'Remove it'],
  'reference-outside': [inFront('<use href="other.svg#a"/>'), inFront(grain), 'Copy it'],
  'reference-loop': [
    plain.replace('</svg>', '<g id="a"><use href="#a"/></g></svg>'),
    plain.replace('</svg>', '<g id="a"/></svg>'),
    'Remove the inner clone',
  ],
  'path-data-broken': [
    inFront('<path data-line="grain" d="M40 80 V40 x"/>'),
    inFront(grain),
    'Draw the line again',
  ],
  'attribute-not-understood': [inFront('<rect width="-4" height="4"/>'), plain, 'remove it'],
  'shape-empty': [inFront('<path d="M5 5"/>'), plain, 'Remove it', 'shapes'],
  'hidden-left-out': [
    inFront('<path display="none" d="M30 30 H50"/>'),
    inFront('<path data-line="placement" d="M30 30 H50"/>'),
    'Show it',
    'shapes',
  ],
  'text-left-out': [
    inFront('<text x="30" y="40">front</text>'),
    inFront('<path data-line="placement" d="M30 30 H50"/>'),
    'paths',
    'shapes',
  ],
  'unit-not-known': [plain.replace('width="400mm"', 'width="400furlongs"'), plain, 'in mm, cm or in'],
  'size-out-of-proportion': [plain.replace('width="400mm"', 'width="200mm"'), plain, 'width="400mm"'],
  'scale-not-known': [
    plain.replace(' width="400mm" height="100mm"', ' width="100%" height="100%"'),
    plain,
    'in mm, cm or in',
  ],
  'scale-unsure': [plain.replace('height="100mm"', 'height="tall"'), plain, 'in mm, cm or in', 'shapes'],
  'piece-very-large': [
    plain
      .replace('width="400mm" height="100mm"', 'width="400m" height="100m"')
      .replaceAll('"400m"', '"40000mm"')
      .replaceAll('"100m"', '"10000mm"'),
    plain,
    'unit',
  ],
  'not-xml': [plain.replace('</g>', ''), plain, 'plain SVG'],
  'not-svg': ['<list xmlns="urn:list"/>', plain, 'plain SVG'],
  'scale-out-of-range': [plain, plain, 'scale: 1/4', { scale: { factor: -1 } }, { scale: { factor: 4 } }],
  'unknown-size': [inSizes, inSizes, 'its sizes: 12, 14', { size: '16' }, { size: '14' }],
  'size-not-chosen': [inSizes, inSizes, 'size: 12', {}, { size: '12' }],
  'duplicate-outline': [
    withShape,
    withShape,
    'an outline of its own',
    { pieces: { tab: { outline: 'tab-line' }, other: { outline: 'tab-line' } } },
    { pieces: { tab: { outline: 'tab-line' }, other: { outline: 'other-line' } } },
  ],
  'unknown-outline': [
    withShape,
    withShape,
    'tab-line',
    { pieces: { tab: { outline: 'tab-lin' } } },
    { pieces: { tab: { outline: 'tab-line' } } },
  ],
  'not-a-drawing': ['%PDF-1.7 and more', plain, 'plain SVG'],
};

test.each(Object.entries(cases))(
  '%s: done as it is said, it is told no longer',
  (code, [text, mended, word, options, mendedBy = options]) => {
    const drawn = { text, ...(options ? { options } : {}) };
    const found = told(drawn).find(t => t.code === code);
    expect(found, codes(drawn).join()).toBeDefined();
    expect(found!.remedy).toContain(word);
    expect(codes({ text: mended, ...(mendedBy ? { options: mendedBy } : {}) })).not.toContain(code);
  },
);

/** Followed here or in `followed-words`. */
const followed = [
  ...Object.keys(cases),
  'attribute-unknown',
  'attribute-misplaced',
  'allowance-not-given',
  'run-direction-not-given',
  'role-not-known',
  'metadata-not-read',
  'scale-assumed',
];
/** Limits that keep a reader safe, damage of bytes and packing: tried against files of that size in `hostile`. */
const limits = [
  'file-too-large',
  'too-many-elements',
  'too-many-instances',
  'too-many-segments',
  'too-many-edges',
  'too-many-notches',
  'reference-too-deep',
];
/** The file is saved anew by the program it came from: what that writes is that program's. */
const savedAnew = [
  'file-compressed',
  'encoding-unknown',
  'encoding-broken',
  'entity-not-expanded',
  'style-rule-left-out',
];
/** Another finding is to be read, a newer tool used, or nothing done. */
const nothingToWrite = [
  'version-not-known',
  'copies-count-now',
  'size-not-read',
  'more-of-a-kind',
  'name-not-writable',
];

test('every remedy of reading a drawing is followed in some test', () => {
  const left = [...limits, ...savedAnew, ...nothingToWrite];
  const all = [...Object.keys(patternDrawings), ...Object.keys(drawings)];
  expect(all.filter(code => ![...followed, ...left].includes(code))).toEqual([]);
  expect(left.filter(code => followed.includes(code) || !all.includes(code))).toEqual([]);
});
