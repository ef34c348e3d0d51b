import { copyFileSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { run } from '../../packages/cli/src/run.js';
import { built, command, demo } from './command.js';
import { folder } from './folders.js';

const pattern = demo('patterns/woven-shift.svg');

describe('paperhinge measure', () => {
  test('measures each piece once, as drawn', async () => {
    const { code, stdout } = await command('measure', pattern, '--json');
    expect(code).toBe(0);
    expect(JSON.parse(stdout)).toMatchObject({
      pattern: 'Woven shift',
      pieces: {
        front: {
          edges: { hem: { allowanceMm: 25.4 } },
          darts: { bust: { legMm: [expect.any(Number), expect.any(Number)] } },
        },
      },
      seams: { armhole: { easeWantedMm: 12, matches: true } },
    });
  });

  test('in plain words it is a table', async () => {
    const { stdout } = await command('measure', pattern);
    expect(stdout).toMatch(/front: [\d.]+ cm² within the stitching line\n {2}neck +7 in +allowance 5\/8 in/);
  });

  test('any other drawing is measured shape by shape', async () => {
    const file = join(folder(), 'square.svg');
    writeFileSync(
      file,
      '<svg xmlns="http://www.w3.org/2000/svg" width="10mm" height="10mm" viewBox="0 0 10 10"><rect id="r" width="4" height="3"/></svg>',
    );
    const { code, stdout } = await command('measure', file, '--json');
    expect(code).toBe(0);
    const { shapes } = JSON.parse(stdout);
    expect(shapes).toHaveLength(1);
    expect(shapes[0]).toMatchObject({ element: 'rect', id: 'r', closed: true });
    expect(shapes[0].lengthMm).toBeCloseTo(14, 9);
    expect(shapes[0].areaMm2).toBeCloseTo(12, 9);
    expect((await command('measure', file)).stdout).toMatch(/rect +r +14 mm +0\.12 cm²/);
  });

  test('what is doubted of any other drawing stands in the JSON, too', async () => {
    const file = join(folder(), 'unsure.svg');
    writeFileSync(
      file,
      '<svg xmlns="http://www.w3.org/2000/svg" width="10mm" height="10mm" viewBox="0 0 ten 10"><rect width="4" height="3"/></svg>',
    );
    const { stdout, stderr } = await command('measure', file, '--json');
    expect(JSON.parse(stdout).findings).toMatchObject([
      { severity: 'warning', message: expect.stringContaining('viewBox') },
    ]);
    expect(stderr).toContain('viewBox');
  });

  test('a drawing of closed paths is read as the sheet says', async () => {
    const home = folder();
    writeFileSync(
      join(home, 'p.svg'),
      '<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="100mm" viewBox="0 0 100 100"><path id="x1" d="M10,10 H60 V90 H10 Z"/></svg>',
    );
    writeFileSync(
      join(home, 's.yaml'),
      'pattern: p.svg\npieces: { front: { outline: x1, edges: [neck, side, hem, centre], kinds: { hem: hem, centre: fold }, allowance: 15 } }',
    );
    const { stdout, stderr } = await command(
      'measure',
      join(home, 'p.svg'),
      '--sheet',
      join(home, 's.yaml'),
      '--json',
    );
    expect(stderr).toBe('');
    const { edges } = JSON.parse(stdout).pieces.front;
    expect(edges.neck).toEqual({ lengthMm: 50, allowanceMm: 15 });
    expect(edges.centre).toEqual({ lengthMm: 80, allowanceMm: 0 });
  });
});

describe('paperhinge check', () => {
  test('a pattern that sews ends with 0', async () => {
    const { code, stdout } = await command('check', pattern);
    expect(code).toBe(0);
    expect(stdout).toContain('+1/2 in wanted, matches');
    expect(stdout).toContain('Nothing stands in the way of sewing it.');
  });

  test('a seam that does not match ends with 1 and says by how much', async () => {
    const file = join(folder(), 'shift.svg');
    writeFileSync(file, readFileSync(pattern, 'utf8').replace('"ease": "12 mm"', '"ease": "30 mm"'));
    const { code, stdout } = await command('check', file);
    expect(code).toBe(1);
    expect(stdout).toContain('DOES NOT MATCH');
    expect(stdout).toContain('It will not sew as it is.');
    const json = JSON.parse((await command('check', file, '--json')).stdout);
    expect(json.seams.armhole.matches).toBe(false);
    expect(json.findings.map((f: { code: string }) => f.code)).toContain('seam-does-not-match');
  });
});

describe('paperhinge print', () => {
  test('writes the pages and tells where everything lies', async () => {
    const out = folder(),
      file = join(out, 'below', 'pages.pdf');
    const { code, stdout } = await command('print', pattern, '--paper', 'letter', '-o', file, '--json');
    expect(code).toBe(0);
    expect(readFileSync(file, 'latin1').slice(0, 5)).toBe('%PDF-');
    expect(JSON.parse(stdout)).toMatchObject({
      paper: 'letter',
      testSquareMm: 50,
      pages: expect.any(Array),
      pieces: expect.any(Array),
    });
    expect(readdirSync(join(out, 'below'))).toEqual(['pages.pdf']);
  });

  test('an unknown paper and an output over the input are refused', async () => {
    const home = folder(),
      copy = join(home, 'shift.svg');
    copyFileSync(pattern, copy);
    const paper = await command('print', copy, '--paper', 'a99', '-o', join(home, 'p.pdf'));
    expect(paper.code).toBe(2);
    expect(paper.stderr).toMatch(/^[^\n]*"paper" is none of its choices[^\n]*a4[^\n]*\n$/);
    expect(readdirSync(home)).toEqual(['shift.svg']);
    const named = join(home, 'shift.pdf');
    copyFileSync(pattern, named);
    const over = await command('print', named, '-o', named);
    expect(over.code).toBe(2);
    expect(over.stderr).toContain('This output would overwrite an input');
  });
});

describe('arguments', () => {
  test('--help and --version end with 0', () => {
    const help = built(['--help']);
    expect(help.code).toBe(0);
    for (const word of ['alter', 'check', 'measure', 'print', 'Exit codes'])
      expect(help.stdout).toContain(word);
    expect(built(['--version']).stdout).toMatch(/^\d+\.\d+\.\d+\n$/);
    expect(built(['alter', '--help']).stdout).toContain('--output <folder>');
  });

  test.each([
    [['altr', 'x'], "paperhinge: Unknown command 'altr' (Did you mean alter?): See paperhinge --help.\n"],
    [
      ['alter', 'x'],
      "paperhinge: Required option '-o, --output <folder>' not specified: See paperhinge --help.\n",
    ],
    [
      ['alter', 'x', '-o', ''],
      'paperhinge: The output folder has no name: Name it after -o; "." is this folder.\n',
    ],
    [['measure'], "paperhinge: Missing required argument 'pattern': See paperhinge --help.\n"],
    [
      ['measure', 'a', 'b'],
      "paperhinge: Too many arguments for 'measure'. Expected 1 argument but got 2: See paperhinge --help.\n",
    ],
    [
      ['check', '--jsn', 'a'],
      "paperhinge: Unknown option '--jsn' (Did you mean --json?): See paperhinge --help.\n",
    ],
  ])('%j cannot be used', async (args, line) => {
    const { code, stderr, stdout } = await command(...args);
    expect(stderr).toBe(line);
    expect(stdout).toBe('');
    expect(code).toBe(2);
  });

  test('without any the help is shown, and it counts as unusable', async () => {
    const { code, stderr } = await command();
    expect(stderr).toContain('Usage: paperhinge');
    expect(code).toBe(2);
  });

  test('a failure of our own ends with 3 and says so', async () => {
    let stderr = '';
    const code = await run(['measure', pattern], {
      stdout: () => {
        throw new TypeError('full');
      },
      stderr: text => {
        stderr += text;
      },
      watched: false,
    });
    expect(code).toBe(3);
    expect(stderr).toMatch(
      /(^|\n)paperhinge failed; this is a fault of ours, not of your files\..*\nTypeError: full/,
    );
  });

  test('progress is shown to a person on stderr and wiped at the end', async () => {
    let stderr = '';
    await run(['print', pattern, '-o', join(folder(), 'p.pdf'), '--json'], {
      stdout: () => {},
      stderr: text => {
        stderr += text;
      },
      watched: true,
    });
    expect(stderr).toContain('Laying out the pages on a4 …');
    expect(stderr.endsWith('\r\u001b[K')).toBe(true);
  });
});
