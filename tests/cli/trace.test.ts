import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { encode as encodePng } from 'fast-png';
import jpeg from 'jpeg-js';
import { describe, expect, test } from 'vitest';
import { loadPicture } from '../../packages/cli/src/decode-picture.js';
import { smallFloor } from '../geometry/trace/small-floor.js';
import { has } from '../print/rendered.js';
import { photograph } from '../support/photo-scene.js';
import { command } from './command.js';
import { folder } from './folders.js';

interface Told {
  readonly residualMm: number;
  readonly worstMm: number;
  readonly scale: {
    readonly sheets: number;
    readonly mmPerDot: number;
    readonly squareMm: readonly number[];
  };
  readonly pieces: readonly { readonly piece: string; readonly lengthMm: number; readonly edges: object }[];
  readonly findings: readonly { readonly code: string; readonly message: string; readonly remedy: string }[];
}

const asJpeg = ({ width, height, rgba }: { width: number; height: number; rgba: Uint8Array }): Uint8Array =>
  jpeg.encode({ width, height, data: rgba }, 80).data;

describe.skipIf(!has('pdftoppm'))('tracing a photograph (needs pdftoppm)', { timeout: 300_000 }, () => {
  test('a JPEG becomes a pattern that reads back with the same edges, figures and a picture beside it', async () => {
    const dir = folder();
    const [photo, pattern, picture] = ['floor.jpg', 'traced.svg', 'seen.png'].map(name => join(dir, name));
    writeFileSync(photo!, asJpeg(photograph(await smallFloor())));
    const { code, stdout } = await command('trace', photo!, '-o', pattern!, '--picture', picture!, '--json');
    expect(code).toBe(0);
    const told = JSON.parse(stdout) as Told;
    expect(told.pieces.map(p => p.piece)).toEqual(['piece-1', 'piece-2']);
    expect(told.residualMm).toBeLessThan(0.15);
    expect(told.worstMm).toBeLessThan(0.5);
    expect(told.scale).toMatchObject({ sheets: 4, squareMm: [50, 50] });
    expect(told.findings.map(f => f.code)).toContain('trace-truth');
    const measured = JSON.parse((await command('measure', pattern!, '--json')).stdout);
    for (const { piece, edges } of told.pieces) {
      const again = measured.pieces[piece].edges;
      expect(Object.keys(again)).toEqual(Object.keys(edges));
      for (const [name, edge] of Object.entries(edges))
        expect(again[name].lengthMm).toBeCloseTo(edge.lengthMm, 4);
    }
    expect(readFileSync(pattern!, 'utf8')).not.toContain('data-allowance');
    const { width, height } = await loadPicture(picture!);
    expect(width * height).toBeGreaterThan(100_000);
  });

  test('a PNG serves as well, the line that was traced is said, and so is what the square measured', async () => {
    const dir = folder();
    const [photo, pattern] = ['floor.png', 'traced.svg'].map(name => join(dir, name));
    const { width, height, rgba } = photograph(await smallFloor());
    writeFileSync(photo!, encodePng({ width, height, data: rgba, channels: 4 }));
    const { code, stdout } = await command(
      ...['trace', photo!, '-o', pattern!, '--line', 'cutting', '--measured', '49.5,50', '--json'],
    );
    expect(code).toBe(0);
    expect((JSON.parse(stdout) as Told).scale.squareMm).toEqual([49.5, 50]);
    expect(readFileSync(pattern!, 'utf8')).toContain('data-line-drawn="cutting"');
  });

  test('a picture without the sheets is refused in words, and nothing is written', async () => {
    const dir = folder();
    const photo = join(dir, 'floor.jpg');
    writeFileSync(photo, asJpeg(photograph(await smallFloor({ sheets: [] }))));
    const { code, stderr } = await command('trace', photo, '-o', join(dir, 'traced.svg'));
    expect(code).toBe(2);
    expect(stderr).toContain('No sheet of a photo frame is to be seen in picture 1');
    expect(stderr).toContain('print --photo-frame');
    expect(() => readFileSync(join(dir, 'traced.svg'))).toThrow();
  });
});

test.each([
  ['a telephone picture in HEIC', [0, 0, 0, 24, ...Buffer.from('ftypheic')], 'HEIC'],
  ['a PDF that breaks off', [...Buffer.from('%PDF-1.7')], 'damaged'],
  ['words', [...Buffer.from('no picture at all')], 'not a picture'],
  ['a JPEG that breaks off', [0xff, 0xd8, 0xff, 0xe0, 0, 16], 'damaged'],
  ['a PNG that breaks off', [0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10], 'damaged'],
])('%s is refused with what to do', async (_, bytes, words) => {
  const dir = folder();
  const file = join(dir, 'given.jpg');
  writeFileSync(file, Uint8Array.from(bytes));
  const { code, stderr } = await command('trace', file, '-o', join(dir, 'traced.svg'));
  expect(code).toBe(2);
  expect(stderr).toContain(words);
  expect(stderr.trim().split('\n')).toHaveLength(1);
});

test('the arguments are checked before any picture is looked at', async () => {
  const dir = folder();
  const out = join(dir, 'traced.svg');
  for (const [args, words] of [
    [['trace', 'none.jpg', '-o', out, '--measured', '60'], '50 mm'],
    [['trace', 'none.jpg', '-o', out, '--line', 'dotted'], 'stitching line or its cutting line'],
    [['trace', 'none.jpg', '-o', out, '--dpi', '7'], 'from 50 to 2400 dots'],
    [['trace', 'none.jpg', '-o', out, '--known', '30 cm'], 'two places'],
    [['trace', 'none.jpg', '-o', out, '--dpi', '300', '--measured', '50'], 'Only one thing'],
    [['trace', 'a.jpg', 'b.jpg', '-o', out, '--dpi', '300'], 'by itself'],
    [['trace', 'none.jpg', '-o', out, '--at', '12,x 5,6 7,8'], 'two numbers'],
    [['trace', 'none.jpg', '-o', out, '--at', '1,2 3,4 5,6', '--pen', 'fuzzy'], 'red dashed'],
    [['trace', 'none.jpg', '-o', out, '--pen', 'red'], '--at'],
    [['trace', 'none.jpg', '-o', out, '--at', '1,2 3,4 5,6', '--sizes', 'S=red, M=red'], 'each otherwise'],
    [['trace', 'none.jpg', '-o', out, '--at', '1,2 3,4 5,6', '--sizes', 'S=red, M=fuzzy'], 'blue dashed'],
    [['print', '-o', join(dir, 'x.pdf')], 'no pattern'],
    [['print', '--photo-frame', '-o', join(dir, 'x.pdf'), '--paper', 'a0'], 'A4 or US letter'],
    [['print', '--photo-frame', '-o', join(dir, 'x.pdf'), '--sheets', '12'], '4 to 9'],
    [['print', 'p.svg', '--photo-frame', '-o', join(dir, 'x.pdf')], 'without a pattern'],
  ] as const) {
    const { code, stderr } = await command(...args);
    expect(code).toBe(2);
    expect(stderr).toContain(words);
  }
});

test('a scan is traced by its dpi, or by a length known between two places', async () => {
  const dir = folder();
  const [scan, pattern] = ['scan.png', 'traced.svg'].map(name => join(dir, name));
  const [width, height] = [900, 700];
  const data = new Uint8Array(4 * width * height).fill(245);
  for (let y = 150; y < 550; y++)
    for (let x = 200; x < 700; x++) data.fill(90, 4 * (y * width + x), 4 * (y * width + x) + 3);
  writeFileSync(scan!, encodePng({ width, height, data, channels: 4 }));
  const lengths = async (...how: readonly string[]) => {
    const { code, stdout } = await command('trace', scan!, '-o', pattern!, '--json', ...how);
    expect(code).toBe(0);
    const { pieces, residualMm } = JSON.parse(stdout) as Told;
    expect(residualMm).toBeNull();
    return Object.values(pieces[0]!.edges).map(edge => edge.lengthMm);
  };
  const byDpi = await lengths('--dpi', '127');
  expect(byDpi).toHaveLength(4);
  [100, 80, 100, 80].forEach((mm, i) => void expect(Math.abs(byDpi[i]! - mm)).toBeLessThan(0.06));
  const byLength = await lengths('--known', '10 cm', '--between', '200,150 700,150');
  [100, 80, 100, 80].forEach((mm, i) => void expect(Math.abs(byLength[i]! - mm)).toBeLessThan(0.06));
});

test('what is told comes in German where that is asked for', async () => {
  const dir = folder();
  const file = join(dir, 'given.jpg');
  writeFileSync(file, 'no picture at all');
  const { stderr } = await command('trace', file, '-o', join(dir, 'traced.svg'), '--language', 'de');
  expect(stderr).toContain('Das ist kein Bild');
});

test('a photo frame is printed without a pattern', async () => {
  const dir = folder();
  const out = join(dir, 'frame.pdf');
  const { code, stdout } = await command(
    'print',
    '--photo-frame',
    '-o',
    out,
    '--paper',
    'letter',
    '--sheets',
    '6',
    '--json',
  );
  expect(code).toBe(0);
  expect(JSON.parse(stdout)).toEqual({
    paper: 'letter',
    paperMm: [215.9, 279.4],
    testSquareMm: 50,
    sheets: 6,
  });
  expect(readFileSync(out).subarray(0, 5).toString()).toBe('%PDF-');
});

/** A JPEG of one light and three dark quarters, told to be stored turned. */
function turnedJpeg(orientation: number): Uint8Array {
  const data = new Uint8Array(4 * 32 * 16).fill(20);
  for (let y = 0; y < 8; y++)
    for (let x = 0; x < 16; x++) data.fill(235, 4 * (32 * y + x), 4 * (32 * y + x) + 4);
  const plain = jpeg.encode({ width: 32, height: 16, data }, 95).data;
  const exif = [
    ...[0xff, 0xe1, 0, 34, ...Buffer.from('Exif\0\0'), 0x4d, 0x4d, 0, 42, 0, 0, 0, 8, 0, 1],
    ...[0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0, 0, 0, 0, 0],
  ];
  return Uint8Array.from([...plain.subarray(0, 2), ...exif, ...plain.subarray(2)]);
}

// Which corner the light quarter is shown in, by the Exif standard's list of where row 0 and column 0 are.
test.each([
  [1, 32, 'top left'],
  [2, 32, 'top right'],
  [3, 32, 'bottom right'],
  [4, 32, 'bottom left'],
  [5, 16, 'top left'],
  [6, 16, 'top right'],
  [7, 16, 'bottom right'],
  [8, 16, 'bottom left'],
])('a picture stored in orientation %i stands upright', async (orientation, wide, corner) => {
  const file = join(folder(), 'turned.jpg');
  writeFileSync(file, turnedJpeg(orientation));
  const { width, height, rgba } = await loadPicture(file);
  expect(width).toBe(wide);
  const light = (x: number, y: number) =>
    rgba[4 * (Math.floor(y * height) * width + Math.floor(x * width))]! > 128;
  const corners = {
    'top left': [0.2, 0.2],
    'top right': [0.8, 0.2],
    'bottom right': [0.8, 0.8],
    'bottom left': [0.2, 0.8],
  };
  for (const [name, [x, y]] of Object.entries(corners)) expect(light(x!, y!)).toBe(name === corner);
});
