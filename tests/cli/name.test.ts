import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { edgeNames, readPattern, writePattern } from '@paperhinge/geometry';
import { renamed } from '@paperhinge/geometry/pattern';
import { expect, test } from 'vitest';
import { command, demo } from './command.js';
import { folder } from './folders.js';

/** A demo as a tracing leaves it: pieces and edges under numbers, no seams. */
function numbered(name: string, path: string): void {
  const { pattern } = readPattern(readFileSync(demo(`patterns/${name}.svg`)));
  const names = Object.fromEntries(
    pattern.pieces.map((piece, i) => [
      piece.name,
      { name: `piece-${i + 1}`, edges: edgeNames(piece).map((_, k) => `edge-${k + 1}`) },
    ]),
  );
  const { fastenings: _, ...plain } = renamed({ ...pattern, seams: [] }, names);
  writeFileSync(
    path,
    writePattern({ ...plain, pieces: plain.pieces.map(piece => ({ ...piece, title: piece.name })) }),
  );
}

test.each(['shirt', 'trousers', 'smock', 'waistcoat', 'darted-dress'])(
  'the sheet that is proposed for the %s under numbers is read, and every seam in it matches',
  async name => {
    const dir = folder();
    const [drawing, sheet, picture] = ['traced.svg', 'names.yaml', 'named.svg'].map(file => join(dir, file));
    numbered(name, drawing!);
    const { code, stdout } = await command('name', drawing!, '-o', sheet!, '--picture', picture!);
    expect(code).toBe(0);
    expect(stdout).toMatch(/^\d of \d pieces named, \d+ seams proposed in .*names\.yaml\n$/);
    expect(readFileSync(picture!, 'utf8')).toContain('hem');
    const checked = await command('check', drawing!, '--sheet', sheet!, '--json');
    const { seams, findings } = JSON.parse(checked.stdout);
    expect(Object.keys(seams).length).toBeGreaterThan(3);
    expect(Object.values<{ matches: boolean }>(seams).every(seam => seam.matches)).toBe(true);
    expect(findings.filter((found: { severity: string }) => found.severity === 'fault')).toEqual([]);
  },
);

test('every proposal says how sure it is and why, and no one is certain', async () => {
  const dir = folder();
  const [drawing, sheet] = ['traced.svg', 'names.yaml'].map(file => join(dir, file));
  numbered('trousers', drawing!);
  await command('name', drawing!, '-o', sheet!);
  const text = readFileSync(sheet!, 'utf8');
  expect(text).toMatch(
    /piece-1: {2}# \d\d % sure: trouser leg, by its outline; the front, as its crotch is the shorter of the two/,
  );
  expect(text).toMatch(
    /outseam: \{ a: \[front\.outseam from waist\], b: \[back\.outseam from waist\] \} {2}# \d\d % sure: 1048\.7 mm to 1048\.7 mm/,
  );
  expect(text).not.toContain('100 %');
  const german = await command('name', drawing!, '-o', join(dir, 'namen.yaml'), '--language', 'de');
  expect(german.stdout).toContain('4 von 4 Teilen benannt');
});

test('a sheet that calls too few edges is told where', async () => {
  const dir = folder();
  const [drawing, sheet] = ['traced.svg', 'names.yaml'].map(file => join(dir, file));
  numbered('trousers', drawing!);
  writeFileSync(sheet!, 'pattern: traced.svg\npieces:\n  piece-1: { name: front, edges: [waist, side] }\n');
  const { code, stderr } = await command('check', drawing!, '--sheet', sheet!);
  expect(code).toBe(2);
  expect(stderr).toContain('names.yaml:3:');
});
