import {
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { built, command, demo, type Outcome } from './command.js';
import { folder } from './folders.js';

const sheet = demo('sheets/cellist-top.yaml');
const outputs = ['altered.svg', 'pages-a4.pdf', 'pages-letter.pdf', 'record.json', 'report.html'];
const json = (text: string) => JSON.parse(text);

describe('paperhinge alter', () => {
  const home = mkdtempSync(join(tmpdir(), 'paperhinge-')),
    out = join(home, 'new', 'out');
  let outcome: Outcome;
  beforeAll(() => {
    outcome = built(['alter', sheet, '-o', out]);
  }, 120_000);
  afterAll(() => rmSync(home, { recursive: true }));

  test('writes every output, says what it did, and leaves nothing else', () => {
    const { code, stdout, stderr } = outcome;
    expect(code, stderr).toBe(0);
    expect(readdirSync(out).sort()).toEqual(outputs);
    for (const name of outputs) expect(readFileSync(join(out, name)).length).toBeGreaterThan(1000);
    expect(stdout).toMatch(/\d+ steps of cellist-top\.yaml done\./);
    expect(stdout).toContain('neckband: cut ');
    expect(stdout).toMatch(/Seams: (\d+) of \1 match\./);
    expect(stdout.split('\n').length).toBeLessThan(40);
  });

  test('the record has the shape that the design binds', () => {
    const record = json(readFileSync(join(out, 'record.json'), 'utf8'));
    expect(record.sheet).toBe('cellist-top.yaml');
    expect(record.steps[0]).toEqual({
      step: 1,
      verb: 'shorten',
      fields: { pieces: ['front', 'back'], at: 'hem', by: '210 mm' },
      did: expect.any(String),
      findings: expect.any(Array),
    });
    expect(record.derived.neckband).toMatchObject({ lengthMm: expect.any(Number), widthMm: 56 });
    expect(record.girths.bust).toMatchObject({
      bodyMm: 1020,
      beforeMm: expect.any(Number),
      afterMm: expect.any(Number),
      easeMm: expect.any(Number),
    });
    for (const finding of record.findings)
      expect(finding).toMatchObject({
        severity: expect.stringMatching(/^(note|warning|fault)$/),
        code: expect.any(String),
        where: expect.any(Object),
        message: expect.any(String),
        remedy: expect.any(String),
      });
    expect(record.orderOfWork.length).toBeGreaterThan(5);
    expect(record.pages.map((p: { paper: string }) => p.paper)).toEqual(['a4', 'letter']);
    // No folder of this machine, no time of day.
    expect(JSON.stringify(record)).not.toMatch(/\/(demos|work|tmp)/);
  });

  test('what the record says after equals what measure says of the altered pattern, before that of the pattern', () => {
    const record = json(readFileSync(join(out, 'record.json'), 'utf8'));
    expect(json(built(['measure', '--json', join(out, 'altered.svg')]).stdout)).toEqual(record.after);
    expect(json(built(['measure', '--json', demo('patterns/woven-shift.svg')]).stdout)).toEqual(
      record.before,
    );
  });

  test('check finds of the altered pattern what the record found of it', () => {
    const record = json(readFileSync(join(out, 'record.json'), 'utf8'));
    const check = json(built(['check', '--json', join(out, 'altered.svg')]).stdout);
    expect(check.seams).toEqual(record.after.seams);
    const kinds = (findings: { severity: string; code: string }[]) =>
      findings.filter(f => f.severity !== 'note').map(f => f.code);
    for (const code of kinds(check.findings)) expect(kinds(record.findings)).toContain(code);
  });

  test('the same sheet writes the same bytes', () => {
    const other = folder();
    built(['alter', sheet, '-o', other]);
    for (const name of outputs)
      expect(readFileSync(join(out, name)).equals(readFileSync(join(other, name)))).toBe(true);
  });

  test('--json puts the record alone on stdout', async () => {
    const out = folder();
    const { stdout } = await command('alter', sheet, '-o', out, '--json');
    expect(stdout).toBe(readFileSync(join(out, 'record.json'), 'utf8'));
  });

  test('only the papers asked for are printed, and older pages are pointed out', async () => {
    const home = folder(),
      out = join(home, 'out');
    copyFileSync(demo('patterns/woven-shift.svg'), join(home, 'shift.svg'));
    writeFileSync(join(home, 'sheet.yaml'), 'pattern: shift.svg\nsteps:\nprint: { paper: a4 }\n');
    mkdirSync(out);
    writeFileSync(join(out, 'pages-letter.pdf'), 'old');
    const { code, stdout } = await command('alter', join(home, 'sheet.yaml'), '-o', out);
    expect(code).toBe(0);
    expect(readdirSync(out).sort()).toEqual(outputs);
    expect(readFileSync(join(out, 'pages-letter.pdf'), 'utf8')).toBe('old');
    expect(stdout).toContain('Not of this run: pages-letter.pdf');
  });

  test('a garment that will not sew ends with 1, its files written', async () => {
    const { home, out } = shift('steps:\n  - shorten: { pieces: front, at: hem, by: 30 }');
    const { code, stdout } = await command('alter', join(home, 'sheet.yaml'), '-o', out);
    expect(code).toBe(1);
    expect(stdout).toContain('fault: The side of the back is ');
    expect(readdirSync(out)).toContain('record.json');
  });

  test('in inches lengths are those of a ruler, never millimetres', async () => {
    const { home, out } = shift(
      'unit: in\nsteps:\n  - shorten: { pieces: [front, back], at: hem, by: 4 1/2 }',
    );
    const { stdout } = await command('alter', join(home, 'sheet.yaml'), '-o', out);
    expect(stdout).toMatch(/front centre front +31 3\/4 in +27 1\/4 in +−4 1\/2 in/);
    expect(stdout).not.toMatch(/\d mm/);
    expect(stdout).toContain('Inches are to the nearest 1/8; record.json has the exact millimetres.');
  });
});

/** A folder with the demo's pattern and a sheet for it. */
function shift(rest: string): { readonly home: string; readonly out: string } {
  const home = folder();
  copyFileSync(demo('patterns/woven-shift.svg'), join(home, 'shift.svg'));
  writeFileSync(join(home, 'sheet.yaml'), `pattern: shift.svg\n${rest}\n`);
  return { home, out: join(home, 'out') };
}

describe('bad input ends with 2 and one line, and an earlier output stays', () => {
  const onSheet = (step: string) => `steps:\n  - ${step}`;
  // Line and column are where the maker must look; the step stands on line 3.
  test.each([
    [
      'unknown verb',
      onSheet('shortn: { pieces: front }'),
      /^sheet\.yaml:3:5: There is no verb "shortn" \(step 1\): Did you mean "shorten"\?$/,
    ],
    [
      'wrong unit',
      'unit: feet',
      /^sheet\.yaml:2:7: "unit" is none of its choices: Write one of: mm, cm, in\.$/,
    ],
    [
      'wrong unit of a length',
      onSheet('shorten: { pieces: front, at: hem, by: 3 ft }'),
      /^sheet\.yaml:3:44: "by" is not a length \(step 1\): Write a length such as /,
    ],
    [
      'unknown piece',
      onSheet('unfold: { piece: frnt }'),
      /^sheet\.yaml:3:22: The pattern has no piece "frnt" \(step 1, piece frnt\): Did you mean "front"\?$/,
    ],
    [
      'unknown edge',
      onSheet('true: { edges: front.hemm }'),
      /^sheet\.yaml:3:20: The front has no edge "hemm" \(step 1, piece front, edge hemm\): Did you mean "hem"\?$/,
    ],
    [
      'a V deeper than the piece',
      onSheet('recut neckline: { piece: front, shape: V, depth: 1500 }'),
      /^sheet\.yaml:3:5: .+ \(step 1, piece front.*\): .+$/,
    ],
    [
      'a half width beyond the shoulder',
      onSheet('recut neckline: { piece: front, shape: square, depth: 80, half width: 400 }'),
      /^sheet\.yaml:3:5: .+ \(step 1, piece front.*\): .+$/,
    ],
    [
      'a band along edges that do not join',
      onSheet('draft band: { name: b, along: [front.neck, sleeve.hem], ratio: 90 %, width: 50 }'),
      /^sheet\.yaml:3:5: .+ \(step 1.*\): .+$/,
    ],
    [
      'a negative allowance',
      onSheet('set allowance: { edges: all seams, to: -7 }'),
      /^sheet\.yaml:3:44: "to" is negative \(step 1\): Give 0 or more\.$/,
    ],
    [
      'an absurd allowance',
      onSheet('set allowance: { edges: all seams, to: 2 m }'),
      /^sheet\.yaml:3:44: "to" is /,
    ],
    [
      'an allowance beyond all',
      onSheet('set allowance: { edges: all seams, to: 2000 }'),
      /^sheet\.yaml:3:44: "to" is over 300 mm \(step 1\): Give at most 300 mm; check its unit\.$/,
    ],
    [
      'a shortening longer than the piece',
      onSheet('shorten: { pieces: front, at: hem, by: 2000 }'),
      /^sheet\.yaml:3:5: .+ \(step 1, piece front.*\): .+$/,
    ],
    [
      'a share over 100 %',
      onSheet('close dart: { piece: front, dart: bust, into: hem, share: 101 % }'),
      /^sheet\.yaml:3:63: "share" is over 100 % \(step 1\): Give 0 % to 100 %\.$/,
    ],
    [
      'a ratio without its sign',
      onSheet('draft band: { name: b, along: front.neck, ratio: 80, width: 50 }'),
      /^sheet\.yaml:3:54: "ratio" is not a percentage with its sign \(step 1\): Write 80 %, if that is what you mean\.$/,
    ],
  ])('%s', async (_, rest, line) => {
    const { home, out } = shift(rest);
    mkdirSync(out);
    writeFileSync(join(out, 'record.json'), 'earlier');
    const { code, stdout, stderr } = await command('alter', join(home, 'sheet.yaml'), '-o', out);
    expect(stderr.replaceAll(`${home}/`, '')).toMatch(new RegExp(`${line.source.replace(/\$$/, '')}.*\\n$`));
    expect(stderr.trimEnd().split('\n')).toHaveLength(1);
    expect(stdout).toBe('');
    expect(code).toBe(2);
    expect(readdirSync(out)).toEqual(['record.json']);
    expect(readFileSync(join(out, 'record.json'), 'utf8')).toBe('earlier');
  });

  // One fault each in the drawing of a square; edges run clockwise from the top.
  const square = (changes: Partial<Record<'top' | 'right' | 'bottom' | 'left', string>>, more = '') => {
    const edges = {
      top: 'M0,0 H100',
      right: 'M100,0 V100',
      bottom: 'M100,100 H0',
      left: 'M0,100 V0',
      ...changes,
    };
    const paths = Object.entries(edges).map(([name, d]) => `<path data-edge="${name}" d="${d}"/>`);
    return `<svg xmlns="http://www.w3.org/2000/svg" width="200mm" height="200mm" viewBox="0 0 200 200">
<g data-piece="front" data-allowance="10">
${paths.join('\n')}
${more}
</g></svg>`;
  };
  test.each([
    ['an open outline', square({ top: 'M0,0 H90' })],
    ['a self-crossing outline', square({ right: 'M100,0 L-20,50 L100,100' })],
    [
      'a dart whose legs differ by more than 1 mm',
      square(
        { top: 'M0,0 H40' },
        '<path data-dart="waist" d="M40,0 L50,40 L70,0"/><path data-edge="top-2" d="M70,0 H100"/>',
      ),
    ],
    [
      'a negative allowance in the drawing',
      square({}).replace('data-allowance="10"', 'data-allowance="-10"'),
    ],
    [
      'an absurd allowance in the drawing',
      square({}).replace('data-allowance="10"', 'data-allowance="30 m"'),
    ],
  ])('%s', async (_, drawing) => {
    const home = folder();
    writeFileSync(join(home, 'shift.svg'), drawing);
    writeFileSync(join(home, 'sheet.yaml'), 'pattern: shift.svg\nsteps:\n');
    const { code, stderr } = await command('alter', join(home, 'sheet.yaml'), '-o', join(home, 'out'));
    expect(stderr.replaceAll(`${home}/`, '')).toMatch(
      /^shift\.svg:\d+:\d+: [^\n]+ \(piece front[^\n]*\): [^\n]+\n$/,
    );
    expect(code).toBe(2);
    expect(existsSync(join(home, 'out'))).toBe(false);
  });

  test('a missing sheet', async () => {
    const { code, stderr } = await command('alter', 'no/such/sheet.yaml', '-o', folder());
    expect(stderr).toBe('no/such/sheet.yaml:1:1: The sheet does not exist: Check its name and its folder.\n');
    expect(code).toBe(2);
  });

  test('a missing pattern is told at the line that names it', async () => {
    const home = folder();
    writeFileSync(join(home, 'sheet.yaml'), 'unit: mm\npattern: none.svg\n');
    const { code, stderr } = await command('alter', join(home, 'sheet.yaml'), '-o', join(home, 'out'));
    expect(stderr).toBe(
      `${home}/sheet.yaml:2:10: The pattern does not exist: Check its name and its folder.\n`,
    );
    expect(code).toBe(2);
  });

  test('a folder, an empty file and one that is no text', async () => {
    const home = folder();
    writeFileSync(join(home, 'empty.yaml'), '');
    writeFileSync(join(home, 'latin1.yaml'), Buffer.from('pattern: \xe4.svg', 'latin1'));
    const line = async (name: string) =>
      (await command('alter', join(home, name), '-o', join(home, 'out'))).stderr.replace(home, '');
    expect(await line('.')).toBe('/.:1:1: The sheet is a folder: Give the file itself.\n'.replace('/.', ''));
    expect(await line('empty.yaml')).toBe(
      '/empty.yaml:1:1: The sheet is empty: Give a sheet with something in it.\n',
    );
    expect(await line('latin1.yaml')).toBe(
      '/latin1.yaml:1:1: The sheet is not text in UTF-8: Save it as plain text in UTF-8.\n',
    );
  });

  test('several faults are told one a line, and as one JSON document', async () => {
    const { home, out } = shift('steps:\n  - unfold: { pice: front }\n  - shortn: {}');
    const { stderr, stdout, code } = await command('alter', join(home, 'sheet.yaml'), '-o', out, '--json');
    expect(code).toBe(2);
    expect(stderr.trimEnd().split('\n')).toHaveLength(2);
    expect(json(stdout).errors).toContainEqual({
      code: 'unknown-verb',
      where: { file: join(home, 'sheet.yaml'), line: 4, column: 5, step: 2 },
      message: 'There is no verb "shortn".',
      remedy: 'Did you mean "shorten"?',
    });
  });
});

describe('what lies outside the output folder is safe', () => {
  test('a sheet that points to any other file learns nothing of what it says', async () => {
    const home = folder();
    for (const secret of [
      'hunter2: swordfish',
      '<secret>hunter2</secret>',
      '{"key":"hunter2"}',
      '<svg data-pattern="x"><g data-piece="p"><path data-edge="e" d="M0 hunter2"/></g></svg>',
      '<svg xmlns="http://www.w3.org/2000/svg"><metadata>hunter2</metadata><g data-piece="p"/></svg>',
    ]) {
      writeFileSync(join(home, 'secret'), secret);
      writeFileSync(join(home, 'sheet.yaml'), 'pattern: secret\n');
      const told = await command('alter', join(home, 'sheet.yaml'), '-o', join(home, 'out'), '--json');
      expect(told.code).toBe(2);
      expect(told.stderr + told.stdout).not.toMatch(/hunter2|swordfish/);
      const direct = await command('alter', join(home, 'secret'), '-o', join(home, 'out'));
      expect(direct.code).toBe(2);
      expect(direct.stderr).not.toMatch(/hunter2|swordfish/);
    }
  });

  test('the pattern is not overwritten by the altered one, also not through a link', async () => {
    const home = folder();
    copyFileSync(demo('patterns/woven-shift.svg'), join(home, 'altered.svg'));
    symlinkSync(join(home, 'altered.svg'), join(home, 'link.svg'));
    const before = readFileSync(join(home, 'altered.svg'), 'utf8');
    for (const name of ['altered.svg', 'link.svg']) {
      writeFileSync(join(home, 'sheet.yaml'), `pattern: ${name}\n`);
      const { code, stderr } = await command('alter', join(home, 'sheet.yaml'), '-o', home);
      expect(stderr).toBe(
        `${home}/altered.svg:1:1: This output would overwrite an input: Give another output folder.\n`,
      );
      expect(code).toBe(2);
      expect(readFileSync(join(home, 'altered.svg'), 'utf8')).toBe(before);
    }
  });

  test('names in a sheet never name files', async () => {
    const { home, out } = shift(
      'title: ../../title\nsteps:\n  - draft strip: { name: ../../evil, along: front.hem, width: 30 }',
    );
    await command('alter', join(home, 'sheet.yaml'), '-o', out);
    expect(readdirSync(home).sort()).toEqual(['out', 'sheet.yaml', 'shift.svg']);
    expect(readdirSync(out).sort()).toEqual(outputs);
  });
});
