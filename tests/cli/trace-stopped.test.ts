// Work on pictures and nests that is stopped half way: by Ctrl-C at any moment, and by a token in the library.
import { spawn } from 'node:child_process';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { tracePhotos, traceScan } from '@paperhinge/geometry/trace';
import { encode as encodePng } from 'fast-png';
import { expect, test } from 'vitest';
import { run } from '../../packages/cli/src/run.js';
import { smallFloor } from '../geometry/trace/small-floor.js';
import { has } from '../print/rendered.js';
import { photograph } from '../support/photo-scene.js';
import { command } from './command.js';
import { folder } from './folders.js';

const builtCommand = fileURLToPath(new URL('../../packages/cli/dist/main.js', import.meta.url));

/** A dark rectangle on white, as a scanner gives it: 100 × 80 mm at 127 dpi. */
function scanned() {
  const [width, height] = [900, 700];
  const rgba = new Uint8Array(4 * width * height).fill(245);
  for (let y = 150; y < 550; y++)
    for (let x = 200; x < 700; x++) rgba.fill(90, 4 * (y * width + x), 4 * (y * width + x) + 3);
  return { width, height, rgba };
}
const pngOf = ({ width, height, rgba }: ReturnType<typeof scanned>): Uint8Array =>
  encodePng({ width, height, data: rgba, channels: 4 });

const nest = `<svg xmlns="http://www.w3.org/2000/svg" width="600mm" height="700mm" viewBox="0 0 600 700">${[
  'red',
  'green',
]
  .map(
    (colour, i) =>
      `<path fill="none" stroke="${colour}" d="M50 100 h${180 + 20 * i} l110 500 h-${290 + 20 * i} Z"/>`,
  )
  .join('')}</svg>`;

const works = [
  ['a scan', 'scan.png', () => pngOf(scanned()), ['--dpi', '127']],
  ['a nest', 'nest.svg', () => nest, ['--sizes', 'S=red, M=green']],
] as const;

test.each(works)(
  '%s that is stopped leaves what was there, or all that is new',
  async (_, name, made, how) => {
    const dir = folder();
    writeFileSync(join(dir, name), made());
    const before = '<svg>what was here before</svg>';
    for (const wait of [20, 150, 400, 900]) {
      writeFileSync(join(dir, 'p.svg'), before);
      const args = ['trace', join(dir, name), '-o', join(dir, 'p.svg'), ...how];
      const child = spawn(process.execPath, [builtCommand, ...args], { stdio: 'ignore' });
      const timer = setTimeout(() => child.kill('SIGINT'), wait);
      await new Promise(resolve => child.once('exit', resolve));
      clearTimeout(timer);
      expect(readdirSync(dir).sort()).toEqual([name, 'p.svg'].sort());
      const left = readFileSync(join(dir, 'p.svg'), 'utf8');
      if (left !== before)
        expect(left.trimEnd().endsWith('</svg>') && left.includes('data-piece')).toBe(true);
    }
  },
);

// Two files, of which either all is there or nothing; nothing is left waiting.
test.each(['SIGINT', 'SIGTERM'] as const)(
  '%s while files are being written leaves all or nothing',
  async signal => {
    const dir = folder();
    const paths = ['s.png', 'p.svg', 'seen.png'].map(name => join(dir, name));
    const [scan, pattern, picture] = paths as [string, string, string];
    writeFileSync(scan, pngOf(scanned()));
    const before = 'what was here before';
    for (const wait of [0, 2, 5]) {
      for (const path of [pattern, picture]) writeFileSync(path, before);
      const args = ['trace', scan, '-o', pattern, '--picture', picture, '--dpi', '127'];
      const child = spawn(process.execPath, [builtCommand, ...args], { stdio: 'ignore' });
      const ended = new Promise(resolve => child.once('exit', resolve));
      const looking = setInterval(() => {
        if (readdirSync(dir).length === paths.length) return;
        clearInterval(looking);
        setTimeout(() => child.kill(signal), wait);
      }, 1);
      await ended;
      clearInterval(looking);
      expect(readdirSync(dir).sort()).toEqual(['p.svg', 's.png', 'seen.png']);
      const isNew = [pattern, picture].map(path => readFileSync(path, 'latin1') !== before);
      expect(isNew[0]).toBe(isNew[1]);
      if (isNew[0]) {
        expect(readFileSync(pattern, 'utf8').trimEnd().endsWith('</svg>')).toBe(true);
        expect(readFileSync(picture).subarray(-8, -4).toString()).toBe('IEND');
      }
    }
  },
);

test('progress of a scan is told with its share, and a run to the end leaves picture and pattern', async () => {
  const dir = folder();
  const [scan, pattern, picture] = ['s.png', 'p.svg', 'seen.png'].map(name => join(dir, name));
  writeFileSync(scan!, pngOf(scanned()));
  let seen = '';
  const io = {
    stdout: () => {},
    stderr: (text: string) => {
      seen += text;
    },
    watched: true,
  };
  expect(await run(['trace', scan!, '-o', pattern!, '--picture', picture!, '--dpi', '127'], io)).toBe(0);
  for (const stage of ['Reading the pictures', 'Flattening the picture', 'Tracing the pieces'])
    expect(seen).toContain(stage);
  expect(seen).toMatch(/Tracing the pieces … 100 %/);
  expect(readdirSync(dir).sort()).toEqual(['p.svg', 's.png', 'seen.png']);
});

test('a picture that cannot be written leaves no pattern either', async () => {
  const dir = folder();
  writeFileSync(join(dir, 's.png'), pngOf(scanned()));
  writeFileSync(join(dir, 'file'), '');
  const picture = join(dir, 'file', 'seen.png');
  const { code } = await command(
    'trace',
    join(dir, 's.png'),
    '-o',
    join(dir, 'p.svg'),
    '--dpi',
    '127',
    '--picture',
    picture,
  );
  expect(code).toBe(2);
  expect(readdirSync(dir).sort()).toEqual(['file', 's.png']);
});

test('a scan, and the sizes drawn on one, stop at whatever share a token is turned', () => {
  const picture = scanned();
  const at = [
    [200, 150],
    [700, 150],
    [700, 550],
    [200, 550],
  ].map(([x, y]) => ({ x: x!, y: y! }));
  const sizes = [
    { size: 'S', pen: { colour: 'black' } },
    { size: 'M', pen: { colour: 'red' } },
  ] as const;
  for (const how of [{}, { at: [at] }, { at: [at], sizes }]) {
    const told: string[] = [];
    try {
      traceScan(picture, {
        dotsToMm: 5,
        ...how,
        onProgress: (stage, share) => void told.push(`${stage} ${share}`),
      });
    } catch {
      // There is no second size in this picture: that is told after the first is traced.
    }
    expect(told.length).toBeGreaterThan(1);
    for (let stop = 1; stop <= told.length; stop++) {
      let calls = 0;
      const signal = {
        get aborted() {
          return ++calls >= stop;
        },
      };
      expect(() => traceScan(picture, { dotsToMm: 5, ...how, signal })).toThrow(
        expect.objectContaining({ code: 'work-stopped' }),
      );
    }
  }
});

test.skipIf(!has('pdftoppm'))(
  'a photograph stops while the camera is measured and while the floor is flattened (needs pdftoppm)',
  async () => {
    const picture = photograph(await smallFloor());
    for (const wanted of ['camera', 'floor'] as const) {
      let asked = false;
      const work = () =>
        tracePhotos([picture], {
          onProgress: stage => {
            asked ||= stage === wanted;
          },
          signal: {
            get aborted() {
              return asked;
            },
          },
        });
      expect(work).toThrow(expect.objectContaining({ code: 'work-stopped' }));
    }
  },
);
