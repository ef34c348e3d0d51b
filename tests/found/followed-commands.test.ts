// What the command tells of files, outputs, pages and pictures: done as its remedy says, it is told no longer.
import { copyFileSync, mkdirSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { PatternError, type Piece } from '@paperhinge/geometry';
import { printPattern } from '@paperhinge/print';
import { english, wordsOf } from '@paperhinge/sheet/words';
import { encode as encodePng } from 'fast-png';
import { PDFDocument } from 'pdf-lib';
import { expect, test } from 'vitest';
import { fonts } from '../../packages/cli/src/fonts.js';
import { command as words } from '../../packages/sheet/src/words/english/command.js';
import { foreign } from '../../packages/sheet/src/words/english/foreign.js';
import { photo } from '../../packages/sheet/src/words/english/photo.js';
import { print } from '../../packages/sheet/src/words/english/print.js';
import { command } from '../cli/command.js';
import { folder } from '../cli/folders.js';
import { level, patternOf, rectangle } from '../support/polygon-piece.js';
import { toldIn } from './followed-steps.js';

/** A flat scan of 100 dots to the inch: grey pieces on a white ground, each [left, top, right, bottom] in dots. */
function scan(...pieces: readonly (readonly [number, number, number, number])[]): Uint8Array {
  const [width, height] = [300, 240];
  const data = new Uint8Array(width * height * 4).fill(255);
  for (const [left, top, right, bottom] of pieces)
    for (let y = top; y < bottom; y++)
      for (let x = left; x < right; x++) data.fill(60, (y * width + x) * 4, (y * width + x) * 4 + 3);
  return encodePng({ width, height, data, channels: 4 });
}
const svg = (body: string, size = 'width="600mm" height="600mm" viewBox="0 0 600 600"'): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" ${size}>${body}</svg>`;
const outer = '<path d="M 85 85 H 315 V 440 H 85 Z"/>';
const sizes = (names: readonly string[]) =>
  names
    .map(
      (colour, i) =>
        `<path stroke="${colour}" d="M ${100 - 10 * i} ${100 - 10 * i} h ${200 + 20 * i} v ${300 + 20 * i} h ${-200 - 20 * i} Z"/>`,
    )
    .join('');
const dxfLine = (x: number, y: number, u: number, v: number) =>
  `0\nLINE\n8\n1\n10\n${x}\n20\n${y}\n11\n${u}\n21\n${v}\n`;
const dxf = (unit: number): string =>
  `0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n${unit}\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n${dxfLine(0, 0, 200, 0)}${dxfLine(200, 0, 200, 300)}${dxfLine(200, 300, 0, 300)}${dxfLine(0, 300, 0, 0)}0\nENDSEC\n0\nEOF\n`;
const panel = (more = '') =>
  svg(
    `<g data-piece="cuff" data-allowance="10mm"><path data-edge="a" d="M20 20 H220"/><path data-edge="b" d="M220 20 V120"/><path data-edge="c" d="M220 120 H20"/><path data-edge="d" d="M20 120 V20"/>${more}</g>`,
  );

/** The files that lie in the folder of each case. */
const files: Readonly<Record<string, string | Uint8Array>> = {
  'p.svg': panel('<path data-line="grain" d="M40 100 V40"/>'),
  'no-grain.svg': panel(),
  'huge.svg': panel().replace('width="600mm" height="600mm"', 'width="60000mm" height="60000mm"'),
  's.yaml': 'pattern: p.svg\nsteps: []\n',
  'empty.svg': '',
  'bytes.svg': Uint8Array.from([0x3c, 0xff, 0xfe]),
  'scan.png': scan([60, 60, 220, 180]),
  'empty.png': scan(),
  'cut.png': scan([60, 0, 220, 240]),
  'words.txt': 'no picture at all',
  'words.svg': svg('<text x="10" y="10">front</text>'),
  'broken.png': Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10]),
  'broken.pdf': '%PDF-1.4\nnothing else',
  'one.svg': svg(outer),
  'gap.svg': svg('<path d="M 85 85 H 315 V 440 H 85 V 86"/>'),
  'nest.svg': svg(sizes(['red', 'green', 'blue'])),
  'upright.svg': svg(`${outer}<path d="M 200 150 V 350"/>`),
  'arrow.svg': svg(
    `${outer}<path d="M 200 150 V 350"/><path d="M 196 340 L 200 350"/><path d="M 200 350 L 204 340"/>`,
  ),
  'open.dxf': dxf(0),
  'mm.dxf': dxf(4),
  'binary.dxf': 'AutoCAD Binary DXF\r\n',
};

interface Told {
  readonly code: string;
  readonly remedy: string;
}
/** What the command tells in a folder of its own: errors of what it refuses, else findings. */
async function told(line: string): Promise<{ readonly code: number; readonly told: readonly Told[] }> {
  const home = folder();
  for (const [name, content] of Object.entries(files)) writeFileSync(join(home, name), content);
  mkdirSync(join(home, 'taken', 'record.json'), { recursive: true });
  copyFileSync(join(home, 'p.svg'), join(home, 'p.pdf'));
  writeFileSync(join(home, 'large.svg'), 'x');
  truncateSync(join(home, 'large.svg'), 64_000_001);
  const page = await PDFDocument.create();
  page.addPage([300, 300]).drawText('Cut two');
  writeFileSync(join(home, 'words.pdf'), await page.save());
  const args = [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, plain]) => quoted ?? plain!);
  const { code, stdout } = await command(...args.map(arg => arg.replace(/^~/, home)), '--json');
  const answer = stdout === '' ? {} : JSON.parse(stdout);
  return { code, told: answer.errors ?? answer.findings ?? [] };
}

/** What is typed, a word of the remedy, and what is typed instead. */
type Case = readonly [bad: string, says: string, mended: string];
const long = 'a'.repeat(300);
const asked: Readonly<Record<string, Case>> = {
  'file-not-found': ['check ~/none.svg', 'its name', 'check ~/p.svg'],
  'not-a-file': ['check ~/taken', 'the file itself', 'check ~/p.svg'],
  'input-too-large': ['check ~/large.svg', 'far smaller', 'check ~/p.svg'],
  'file-empty': ['check ~/empty.svg', 'something in it', 'check ~/p.svg'],
  'not-utf-8': ['alter ~/bytes.svg -o ~/out', 'UTF-8', 'alter ~/s.yaml -o ~/out'],
  'not-a-pattern': ['check ~/s.yaml', 'after "pattern:"', 'check ~/p.svg'],
  'output-not-a-folder': ['alter ~/s.yaml -o ~/words.txt', 'the name of a folder', 'alter ~/s.yaml -o ~/out'],
  'output-is-a-folder': ['alter ~/s.yaml -o ~/taken', 'another output folder', 'alter ~/s.yaml -o ~/out'],
  'input-would-be-overwritten': ['print ~/p.pdf -o ~/p.pdf', 'another output', 'print ~/p.svg -o ~/new.pdf'],
  'output-not-written': [`print ~/p.svg -o ~/${long}.pdf`, 'shorter name', 'print ~/p.svg -o ~/a.pdf'],
  'output-unnamed': ['print ~/p.svg -o ""', 'such as pages.pdf', 'print ~/p.svg -o ~/pages.pdf'],
  'folder-unnamed': ['alter ~/s.yaml -o ""', 'Name it after -o', 'alter ~/s.yaml -o ~/out'],
  'output-of-another-kind of a sheet': [
    'name ~/p.svg -o ~/n.svg',
    'Call it n.yaml',
    'name ~/p.svg -o ~/n.yaml',
  ],
  'output-of-another-kind': ['print ~/p.svg -o ~/x.png', '-o x.pdf', 'print ~/p.svg -o ~/x.pdf'],
  'folder-named-as-file': ['alter ~/s.yaml -o ~/top.pdf', 'such as out', 'alter ~/s.yaml -o ~/out'],
  'dxf-has-no-paper': [
    'print ~/p.svg -o ~/x.dxf --paper a4',
    'Leave out --paper',
    'print ~/p.svg -o ~/x.dxf',
  ],
  'no-pattern-to-print': ['print -o ~/x.pdf', 'the pattern SVG', 'print ~/p.svg -o ~/x.pdf'],
  'photo-frame-of-no-pattern': [
    'print ~/p.svg --photo-frame -o ~/x.pdf',
    'Leave out the pattern',
    'print --photo-frame -o ~/x.pdf',
  ],
  arguments: ['check ~/p.svg --pages', '--help', 'check ~/p.svg'],
};
const traced: Readonly<Record<string, Case>> = {
  'not-a-picture': ['trace ~/words.txt -o ~/t.svg', 'JPEG or PNG', 'trace ~/scan.png --dpi 100 -o ~/t.svg'],
  'picture-damaged': [
    'trace ~/broken.png -o ~/t.svg',
    'Save it again',
    'trace ~/scan.png --dpi 100 -o ~/t.svg',
  ],
  'traced-line-unknown': [
    'trace ~/scan.png --dpi 100 --line dotted -o ~/t.svg',
    '--line cutting',
    'trace ~/scan.png --dpi 100 --line cutting -o ~/t.svg',
  ],
  'length-without-places': [
    'trace ~/scan.png --known "40 mm" -o ~/t.svg',
    '--between',
    'trace ~/scan.png --known "40 mm" --between "60,60 220,60" -o ~/t.svg',
  ],
  'known-length-out-of-range': [
    'trace ~/scan.png --known "40 mm" --between "60,60 60,60" -o ~/t.svg',
    'in dots',
    'trace ~/scan.png --known "40 mm" --between "60,60 220,60" -o ~/t.svg',
  ],
  'places-not-understood': [
    'trace ~/scan.png --known "40 mm" --between "60 60 220" -o ~/t.svg',
    '412,880 2950,905',
    'trace ~/scan.png --known "40 mm" --between "60,60 220,60" -o ~/t.svg',
  ],
  'several-scales': [
    'trace ~/scan.png --dpi 100 --measured 50 -o ~/t.svg',
    'one of --measured, --dpi and --known',
    'trace ~/scan.png --dpi 100 -o ~/t.svg',
  ],
  'several-scans': [
    'trace ~/scan.png ~/empty.png --dpi 100 -o ~/t.svg',
    'one scan at a time',
    'trace ~/scan.png --dpi 100 -o ~/t.svg',
  ],
  'dpi-out-of-range': [
    'trace ~/scan.png --dpi 7 -o ~/t.svg',
    '--dpi 300',
    'trace ~/scan.png --dpi 100 -o ~/t.svg',
  ],
  'no-piece-on-scan': [
    'trace ~/empty.png --dpi 100 -o ~/t.svg',
    'another colour',
    'trace ~/scan.png --dpi 100 -o ~/t.svg',
  ],
  'too-few-clicks': [
    'trace ~/scan.png --dpi 100 --at "60,60 220,60" -o ~/t.svg',
    'at least three',
    'trace ~/scan.png --dpi 100 --at "60,60 220,60 220,180 60,180" -o ~/t.svg',
  ],
  'click-outside': [
    'trace ~/scan.png --dpi 100 --at "60,60 900,60 220,180 60,180" -o ~/t.svg',
    'in dots of the first picture',
    'trace ~/scan.png --dpi 100 --at "60,60 220,60 220,180 60,180" -o ~/t.svg',
  ],
  'gap-out-of-range': [
    'trace ~/one.svg --gap "5 mm" -o ~/t.svg',
    '0.05 mm to 2 mm',
    'trace ~/one.svg --gap "2 mm" -o ~/t.svg',
  ],
  'unit-unknown': [
    'trace ~/open.dxf --unit yard -o ~/t.svg',
    '--unit cm',
    'trace ~/open.dxf --unit cm -o ~/t.svg',
  ],
  'unit-not-told': ['trace ~/open.dxf -o ~/t.svg', '--unit cm', 'trace ~/open.dxf --unit cm -o ~/t.svg'],
  'options-of-pictures': [
    'trace ~/mm.dxf --dpi 300 -o ~/t.svg',
    'for photographs and scans',
    'trace ~/mm.dxf -o ~/t.svg',
  ],
  'pdf-damaged': ['trace ~/broken.pdf -o ~/t.svg', 'Get the file again', 'trace ~/one.svg -o ~/t.svg'],
  'columns-out-of-range': [
    'trace ~/words.pdf --columns 0 -o ~/t.svg',
    '--columns 4',
    'trace ~/one.svg -o ~/t.svg',
  ],
  'page-overlap-out-of-range': [
    'trace ~/words.pdf --columns 2 --overlap "50 cm" -o ~/t.svg',
    '--overlap "10 mm"',
    'trace ~/one.svg -o ~/t.svg',
  ],
  'overlap-without-columns': [
    'trace ~/words.pdf --overlap "10 mm" -o ~/t.svg',
    '--columns 4 --overlap "10 mm"',
    'trace ~/one.svg -o ~/t.svg',
  ],
  'pages-without-lines': [
    'trace ~/words.pdf -o ~/t.svg',
    'trace PICTURE --dpi 300',
    'trace ~/scan.png --dpi 100 -o ~/t.svg',
  ],
  'no-outline-in-drawing': [
    'trace ~/gap.svg -o ~/t.svg',
    '--gap "1 mm"',
    'trace ~/gap.svg --gap "1 mm" -o ~/t.svg',
  ],
  'one-line-drawn': [
    'trace ~/one.svg -o ~/t.svg',
    '--line cutting',
    'trace ~/one.svg --line cutting -o ~/t.svg',
  ],
  'outlines-nested': [
    'trace ~/nest.svg -o ~/t.svg',
    '--layer "green"',
    'trace ~/nest.svg --layer green -o ~/t.svg',
  ],
  'outlines-nested all': [
    'trace ~/nest.svg -o ~/t.svg',
    '--sizes "S=red, M=green, L=blue"',
    'trace ~/nest.svg --sizes "S=red, M=green, L=blue" -o ~/t.svg',
  ],
  'sizes-alike': [
    'trace ~/nest.svg --sizes "S=red, S=green" -o ~/t.svg',
    '--sizes "S=red, M=green"',
    'trace ~/nest.svg --sizes "S=red, M=green" -o ~/t.svg',
  ],
  'size-not-told': [
    'trace ~/nest.svg --sizes "S=red, M=green" --size L -o ~/t.svg',
    'Choose from "S" and "M"',
    'trace ~/nest.svg --sizes "S=red, M=green" --size M -o ~/t.svg',
  ],
  'option-not-for-this': [
    'trace ~/nest.svg --layer red --columns 4 -o ~/t.svg',
    'Leave --columns away',
    'trace ~/nest.svg --layer red -o ~/t.svg',
  ],
  'layer-beside-sizes': [
    'trace ~/nest.svg --layer red --sizes "S=red, M=green" -o ~/t.svg',
    '--sizes for all',
    'trace ~/nest.svg --sizes "S=red, M=green" -o ~/t.svg',
  ],
  'sizes-too-few': [
    'trace ~/nest.svg --sizes "S=red" -o ~/t.svg',
    '--layer red',
    'trace ~/nest.svg --layer red -o ~/t.svg',
  ],
  'layer-not-there': [
    'trace ~/nest.svg --layer grean -o ~/t.svg',
    '"green"',
    'trace ~/nest.svg --layer green -o ~/t.svg',
  ],
  'grain-guessed': ['trace ~/upright.svg -o ~/t.svg', 'an arrow', 'trace ~/arrow.svg -o ~/t.svg'],
  'not-dxf': ['trace ~/binary.dxf -o ~/t.svg', 'DXF in ASCII', 'trace ~/mm.dxf -o ~/t.svg'],
};
const printed: Readonly<Record<string, Case>> = {
  'paper-size': [
    'print ~/p.svg --paper "20 x 30 mm" -o ~/x.pdf',
    'width and height',
    'print ~/p.svg --paper "140 x 200 mm" -o ~/x.pdf',
  ],
  'margins-too-wide': [
    'print ~/p.svg --margins 90 -o ~/x.pdf',
    '10 mm',
    'print ~/p.svg --margins 10 -o ~/x.pdf',
  ],
  'overlap-out-of-range': [
    'print ~/p.svg --overlap 120 -o ~/x.pdf',
    'quarter of the page',
    'print ~/p.svg --overlap 10 -o ~/x.pdf',
  ],
  'correction-out-of-range': [
    'print ~/p.svg --measured 30,50 -o ~/x.pdf',
    '100 %',
    'print ~/p.svg --measured 49.5,50 -o ~/x.pdf',
  ],
  'photo-frame-paper': [
    'print --photo-frame --paper a0 -o ~/x.pdf',
    '--paper letter',
    'print --photo-frame --paper letter -o ~/x.pdf',
  ],
  'photo-frame-sheets': [
    'print --photo-frame --sheets 12 -o ~/x.pdf',
    '--sheets 9',
    'print --photo-frame --sheets 9 -o ~/x.pdf',
  ],
  'too-many-pages': ['print ~/huge.svg -o ~/x.pdf', 'unit', 'print ~/p.svg -o ~/x.pdf'],
};

/** What the pages themselves tell, beside their figures. */
const pagesOf = async (options: object, pieces: readonly Piece[]): Promise<readonly Told[]> => {
  const said = wordsOf(english, 'mm');
  try {
    const { findings } = await printPattern(patternOf(pieces), { paper: 'a4', fonts, ...options });
    return findings.map(f => ({ code: f.code, remedy: said.finding(f).remedy }));
  } catch (error) {
    if (!(error instanceof PatternError)) throw error;
    return [{ code: error.code, remedy: said.error(error).remedy }];
  }
};
const grained = (width: number, height: number): Piece =>
  rectangle('panel', width, height, { lines: [{ ...level('grain', [40, 90], [40, 20]), kind: 'grain' }] });
test.each([
  ['nothing-to-print', {}, [], 'Add a piece', {}, [grained(100, 100)]],
  ['unknown-paper', { paper: 'a9' }, [grained(100, 100)], 'a4', { paper: 'a4' }, [grained(100, 100)]],
  ['no-grain-printed', {}, [rectangle('panel', 100, 100)], 'data-line="grain"', {}, [grained(100, 100)]],
  [
    'font-not-usable',
    { fonts: { regular: new Uint8Array([1, 2, 3]) } },
    [grained(100, 100)],
    '.ttf',
    { fonts },
    [grained(100, 100)],
  ],
] as const)(
  '%s: printed as it is said, it is told no longer',
  async (code, bad, pieces, says, good, better) => {
    const found = (await pagesOf(bad, pieces)).find(t => t.code === code);
    expect(found?.remedy).toContain(says);
    expect((await pagesOf(good, better)).map(t => t.code)).not.toContain(code);
  },
);

test('not-a-record: what is written from the record of a run is a sheet again', async () => {
  const home = folder();
  writeFileSync(join(home, 'p.svg'), files['p.svg']!);
  writeFileSync(join(home, 's.yaml'), files['s.yaml']!);
  const refused = await command('sheet', join(home, 's.yaml'), '-o', join(home, 't.yaml'));
  expect([refused.code, refused.stderr]).toEqual([
    2,
    expect.stringContaining('Give the record.json that alter wrote'),
  ]);
  await command('alter', join(home, 's.yaml'), '-o', join(home, 'out'));
  const done = await command('sheet', join(home, 'out', 'record.json'), '-o', join(home, 't.yaml'));
  expect([done.code, done.stderr]).toEqual([0, '']);
});

const cases = { ...asked, ...traced, ...printed };
test.each(Object.entries(cases))(
  '%s: done as it is said, it is told no longer',
  async (key, [bad, says, mended]) => {
    const code = key.split(' ')[0]!;
    const found = await told(bad);
    expect(found.told.map(t => t.code)).toContain(code);
    expect(found.told.find(t => t.code === code)!.remedy).toContain(says);
    const after = await told(mended);
    expect(after.code, JSON.stringify(after.told)).toBeLessThan(2);
    expect(after.told.map(t => t.code)).not.toContain(code);
  },
);

const followed = [
  ...Object.keys(cases).map(key => key.split(' ')[0]!),
  'nothing-to-print',
  'unknown-paper',
  'no-grain-printed',
  'font-not-usable',
  'not-a-record',
];
/**
 * Who may read a file, where answers and outputs go, how full a disk is, a key that stops the work: tried in `cli/landing`,
 * `cli/read-input` and `trace/photo`.
 */
const ofTheMachine = ['file-not-readable', 'answer-not-written', 'work-stopped'];
/** Another photograph is taken, or the sheets are laid otherwise: tried on pictures of floors in `trace/photo`. */
const takenAnew = Object.keys(photo).filter(code => !followed.includes(code));
/** Files of a size or kind that is not made here: tried in `trace-pdf`, `pages`, `trace` and `lay-cloths`. */
const ofOtherFiles = [
  'picture-too-large',
  'square-out-of-range',
  'pdf-locked',
  'pdf-too-long',
  'line-not-shut',
  'pages-not-joined',
  'wider-than-cloth',
];
/** Of lines drawn on a picture: refused in `cli/trace`, each kind of pen and nest followed in `trace/scan`. */
const onDrawnLines = ['pen-not-understood', 'sizes-of-picture-not-understood'];
/** Notes of what was taken, and how well: they are to be looked over, and nothing is to be written. */
const onlyLookedAt = [
  'lines-told-apart',
  'signs-taken',
  'lines-left-out',
  'pages-laid',
  'pages-laid-by-themselves',
  'pages-of-one-sheet',
  'no-test-square',
  'test-square-true',
  'test-square-off',
  'sliver-on-page',
];

test('every remedy of files, pages and pictures is followed, or left out for a reason', () => {
  const all = [words, foreign, print, photo].flatMap(table => Object.keys(table));
  const left = [...ofTheMachine, ...takenAnew, ...ofOtherFiles, ...onDrawnLines, ...onlyLookedAt];
  const answered = new Set([...followed, ...left, ...toldIn('geometry/trace', 'cli', 'print/cloth')]);
  expect(all.filter(code => !answered.has(code))).toEqual([]);
  expect(left.filter(code => followed.includes(code) || !all.includes(code))).toEqual([]);
});
