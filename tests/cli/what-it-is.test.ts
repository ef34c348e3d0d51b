import { copyFileSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { command, demo } from './command.js';
import { folder } from './folders.js';

const begins: Readonly<Record<string, Uint8Array>> = {
  'a PDF': Buffer.from('%PDF-1.7\n%hunter2'),
  'a picture': Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 1, 2, 3]),
  'a packed file': Buffer.from('PK\u0003\u0004hunter2'),
};

describe('a file given for another is told for what it is', () => {
  test.each(Object.entries(begins))('%s as a pattern and as a sheet', async (what, bytes) => {
    const home = folder(),
      file = join(home, 'given');
    writeFileSync(file, bytes);
    const pattern = await command('check', file);
    expect(pattern.stderr).toContain(`${file}:1:1: This is not a pattern but ${what}: `);
    expect(pattern.code).toBe(2);
    const sheet = await command('alter', file, '-o', join(home, 'out'));
    expect(sheet.stderr).toContain(`${file}:1:1: This is not an alteration sheet but ${what}: `);
    expect(sheet.code).toBe(2);
    expect(pattern.stderr + sheet.stderr).not.toContain('hunter2');
  });

  test('a drawing as a sheet, a sheet as a drawing, a record as either', async () => {
    const home = folder(),
      drawing = demo('patterns/woven-shift.svg'),
      sheet = demo('sheets/cellist-top.yaml');
    expect((await command('alter', drawing, '-o', join(home, 'out'))).stderr).toMatch(
      /not an alteration sheet but a drawing: Name the drawing after "pattern:" in a sheet/,
    );
    for (const of of ['check', 'measure'])
      expect((await command(of, sheet)).stderr).toMatch(/not a pattern but an alteration sheet: /);
    writeFileSync(join(home, 'record.json'), '{\n  "sheet": "a.yaml",\n  "steps": []\n}');
    expect((await command('check', join(home, 'record.json'))).stderr).toMatch(
      /not a pattern but the record of a run: Give altered\.svg from the same folder\./,
    );
  });

  test('the pattern that a sheet names is told at the line that names it', async () => {
    const home = folder();
    writeFileSync(join(home, 'p.svg'), begins['a PDF']!);
    writeFileSync(join(home, 's.yaml'), 'unit: mm\npattern: p.svg\nlanguage: de\n');
    const { stderr } = await command('alter', join(home, 's.yaml'), '-o', join(home, 'out'));
    expect(stderr).toMatch(/s\.yaml:2:10: Das ist kein Schnitt, sondern eine PDF-Datei: /);
  });
});

describe('what a person writes', () => {
  const told = async (line: string) => {
    const home = folder();
    copyFileSync(demo('patterns/woven-shift.svg'), join(home, 'shift.svg'));
    writeFileSync(join(home, 's.yaml'), `pattern: shift.svg\n${line}\n`);
    return (await command('alter', join(home, 's.yaml'), '-o', join(home, 'out'))).stderr.replace(home, '');
  };
  test.each([
    [
      'steps:\n  - shorten: { pieces: front, at: hem, by: 2,5 cm }',
      '/s.yaml:3:46: A comma stands within a figure (step 1): Write 2.5 cm, with a point.\n',
    ],
    [
      'steps:\n  - shorten:\n      pieces: front\n      at: hem\n      by: 2,5 cm',
      '/s.yaml:6:11: "by" is not a length (step 1): Write 2.5 cm, with a point.\n',
    ],
    [
      'steps:\n  - spread: { piece: back, from: hem, to: { edge: shoulder }, by: 20 }',
      '/s.yaml:3:34: "from" has no fields (step 1): Write from: { edge: hem }.\n',
    ],
    [
      'steps:\n  - draft band: { name: b, along: front.neck, ratio: 0.8, width: 50 }',
      '/s.yaml:3:54: "ratio" is not a percentage with its sign (step 1): Write 80 %, if that is what you mean.\n',
    ],
  ])('%s', async (line, expected) => {
    expect(await told(line)).toBe(expected);
  });

  test('a colon without its space', async () => {
    expect(await told('steps:\n  - shorten: { pieces: front, at:hem, by: 20 }')).toContain(
      'A space is missing after the colon (step 1): Write "at: hem".',
    );
    expect(await told('steps:\n  - unfold:{ piece: front }')).toContain(
      'A space is missing after the colon (step 1): Write "unfold: { piece: front }".',
    );
  });

  test('A4 is a4; an output without an ending is a PDF; one with another ending is told', async () => {
    const home = folder(),
      pattern = demo('patterns/woven-shift.svg');
    expect((await command('print', pattern, '--paper', 'A4', '-o', join(home, 'pages'))).stdout).toContain(
      `of a4 in ${join(home, 'pages.pdf')}`,
    );
    expect(readdirSync(home)).toEqual(['pages.pdf']);
    for (const ending of ['.png', '.SVG']) {
      const { code, stderr } = await command('print', pattern, '-o', join(home, `x${ending}`));
      expect(stderr).toBe(
        `paperhinge: A pattern is not printed as ${ending}: Write -o x.pdf, or a name that ends in .dxf for another program.\n`,
      );
      expect(code).toBe(2);
    }
    mkdirSync(join(home, 'a'));
    const { stderr } = await command(
      'alter',
      demo('sheets/cellist-top.yaml'),
      '-o',
      join(home, 'a', 'top.pdf'),
    );
    expect(stderr).toContain('the output is named like one file (.pdf): Give the name of a folder');
    expect(readdirSync(join(home, 'a'))).toEqual([]);
  });
});

test('a pattern that tells no seams is never said to sew', async () => {
  const file = join(folder(), 'square.svg');
  writeFileSync(
    file,
    `<svg xmlns="http://www.w3.org/2000/svg" width="200mm" height="200mm" viewBox="0 0 200 200">
<g data-piece="front" data-allowance="10"><path data-edge="top" d="M0,0 H100"/><path data-edge="right" d="M100,0 V100"/>
<path data-edge="bottom" d="M100,100 H0"/><path data-edge="left" d="M0,100 V0"/></g></svg>`,
  );
  const { stdout } = await command('check', file);
  expect(stdout).not.toContain('Nothing stands in the way');
  expect(stdout).toContain('it tells no seams');
});

test('a sheet that asks for German is answered in German, in the summary, the record and the errors', async () => {
  const home = folder();
  copyFileSync(demo('patterns/woven-shift.svg'), join(home, 'shift.svg'));
  const sheet = join(home, 's.yaml');
  writeFileSync(
    sheet,
    'language: de\npattern: shift.svg\nsteps:\n  - shorten: { pieces: [front, back], at: hem, by: 20 }\n',
  );
  const { stdout } = await command('alter', sheet, '-o', join(home, 'out'));
  expect(stdout).toContain('1 Schritt von s.yaml getan.');
  expect(stdout).toMatch(/Nähte: (\d) von \1 passen\./);
  writeFileSync(
    sheet,
    'language: de\npattern: shift.svg\nsteps:\n  - shorten: { pieces: frnt, at: hem, by: 20 }\n',
  );
  const refused = await command('alter', sheet, '-o', join(home, 'out'));
  expect(refused.stderr).toContain(
    'Der Schnitt hat kein Teil „frnt“ (Schritt 1, Teil frnt): Meinten Sie „front“?',
  );
  expect((await command('check', join(home, 'shift.svg'), '--language', 'de')).stdout).toContain('passt');
});

describe('a step written as one speaks it', () => {
  const told = async (step: string) => {
    const home = folder();
    copyFileSync(demo('patterns/woven-shift.svg'), join(home, 'shift.svg'));
    writeFileSync(join(home, 's.yaml'), `pattern: shift.svg\nsteps:\n${step}\n`);
    return command('alter', join(home, 's.yaml'), '-o', join(home, 'out'));
  };
  test.each(['- shorten: pieces: front, at: hem, by: 20', '- shorten { pieces: front, at: hem, by: 20 }'])(
    '%s is told the braces, and what is told is read',
    async step => {
      const { stderr } = await told(step);
      const written = /- shorten: \{[^}]*\}/.exec(stderr)![0];
      expect((await told(written)).code).toBeLessThan(2);
      expect(stderr).not.toMatch(/key|YAML|JSON/);
    },
  );
});
