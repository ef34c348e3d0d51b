import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { command, demo } from './command.js';
import { folder } from './folders.js';

test('a DXF file of ours goes through trace and name to a pattern whose seams match', async () => {
  const dir = folder();
  const [dxf, pattern, sheet] = ['t.dxf', 't.svg', 't.yaml'].map(name => join(dir, name));
  await command('print', demo('patterns/trousers.svg'), '-o', dxf!);
  const { code, stdout } = await command('trace', dxf!, '-o', pattern!);
  expect([code, stdout]).toEqual([0, `4 pieces in ${pattern}\n`]);
  await command('name', pattern!, '-o', sheet!);
  const checked = JSON.parse((await command('check', pattern!, '--sheet', sheet!, '--json')).stdout);
  expect(Object.keys(checked.seams).sort()).toEqual(['crotch', 'front crotch', 'inseam', 'outseam', 'waist']);
  expect(Object.values<{ matches: boolean }>(checked.seams).every(seam => seam.matches)).toBe(true);
});

test('a drawing of any other program becomes a pattern with its lines told apart', async () => {
  const dir = folder();
  const [drawing, pattern] = ['d.svg', 'p.svg'].map(name => join(dir, name));
  writeFileSync(
    drawing!,
    '<svg xmlns="http://www.w3.org/2000/svg" width="50cm" height="50cm" viewBox="0 0 500 500"><path d="M85 85h230v355h-230z"/><path d="M100 100h200v300h-200z"/></svg>',
  );
  const { code, stdout, stderr } = await command('trace', drawing!, '-o', pattern!, '--json');
  expect(code).toBe(0);
  expect(stderr).toContain('two lines beside one another');
  // The same figures as of a photograph, whatever was traced.
  const { pieces, findings, ...how } = JSON.parse(stdout);
  expect(how).toEqual({ residualMm: null, worstMm: null, scale: { by: 'svg' } });
  expect(pieces).toHaveLength(1);
  expect(pieces[0]).toMatchObject({ piece: 'piece-1', sizeMm: [200, 300] });
  expect(pieces[0].areaMm2).toBeCloseTo(60_000, 6);
  expect(pieces[0].lengthMm).toBeCloseTo(1000, 6);
  expect(findings.map((found: { code: string }) => found.code)).toEqual(['lines-told-apart']);
  expect(readFileSync(pattern!, 'utf8')).toContain('data-allowance="40 mm"');
});

test.each([
  [['--gap', '5 mm'], 'Ends of lines that lie so far apart do not meet'],
  [['--unit', 'furlong'], 'This is no unit'],
  [['--dpi', '300'], 'has its scale in its own figures'],
  [['--layer', 'nowhere'], 'Nothing is drawn in'],
])('%j is refused for a DXF drawing', async (options, said) => {
  const dir = folder();
  const dxf = join(dir, 't.dxf');
  await command('print', demo('patterns/yoke-skirt.svg'), '-o', dxf);
  const { code, stderr } = await command('trace', dxf, '-o', join(dir, 't.svg'), ...options);
  expect(code).toBe(2);
  expect(stderr).toContain(said);
});

test('a DXF file given as a pattern is told to be traced first', async () => {
  const dir = folder();
  const dxf = join(dir, 't.dxf');
  await command('print', demo('patterns/yoke-skirt.svg'), '-o', dxf);
  const { code, stderr } = await command('check', dxf);
  expect(code).toBe(2);
  expect(stderr).toContain('paperhinge trace FILE.dxf -o PATTERN.svg');
});

test('a nest of sizes becomes one pattern in every size, chosen and blended by a sheet', async () => {
  const dir = folder();
  const [drawing, pattern, sheet] = ['n.svg', 'p.svg', 's.yaml'].map(name => join(dir, name));
  const size = (more: number, colour: string): string =>
    `<path fill="none" stroke="${colour}" d="M50 100 h${180 + more} l110 500 h-${290 + more} Z"/>`;
  writeFileSync(
    drawing!,
    `<svg xmlns="http://www.w3.org/2000/svg" width="600mm" height="700mm" viewBox="0 0 600 700">${size(0, 'red')}${size(20, 'green')}</svg>`,
  );
  const { code } = await command('trace', drawing!, '-o', pattern!, '--sizes', 'S=red, M=green');
  expect(code).toBe(0);
  const top = async (wanted: string): Promise<number> => {
    writeFileSync(sheet!, `pattern: p.svg\nsize: ${wanted}\nsteps: []\n`);
    const { stdout } = await command('measure', pattern!, '--sheet', sheet!, '--json');
    return JSON.parse(stdout).pieces['piece-1'].edges['edge-1'].lengthMm;
  };
  expect(await top('S')).toBeCloseTo(180, 6);
  expect(await top('M')).toBeCloseTo(200, 6);
  expect(await top('{ between: [S, M], share: 50 % }')).toBeCloseTo(190, 6);
});
