import { copyFileSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { command, demo } from './command.js';
import { folder } from './folders.js';

test('paperhinge sheet turns a record back into its sheet, what was included in its place', async () => {
  const home = folder();
  const own = join(home, 'own.yaml');
  const record = join(home, 'first', 'record.json');
  writeFileSync(
    join(home, 'more.yaml'),
    'let: { more: 10 }\nsteps:\n  - lengthen: { pieces: [sleeve], at: hem, by: more / 2 }\n',
  );
  writeFileSync(
    own,
    `pattern: ${demo('patterns/woven-shift.svg')}\nprint: { paper: a4 }\nsteps:\n  - include: { sheet: more.yaml, let: { more: 60 } }\n`,
  );
  expect((await command('alter', own, '-o', join(home, 'first'))).code).toBeLessThan(2);
  const { code, stdout } = await command('sheet', record, '-o', join(home, 'again.yaml'));
  expect(code).toBe(0);
  expect(stdout).toContain('1 step in ');
  expect(readFileSync(join(home, 'again.yaml'), 'utf8')).toMatch(/lengthen:[\s\S]*by: 30 mm/);

  const kept = join(home, 'kept.yaml');
  copyFileSync(record, kept);
  const over = await command('sheet', kept, '-o', kept);
  expect(over.code).toBe(2);
  expect(over.stderr).toMatch(/overwrit/);
  const other = await command('sheet', own, '-o', join(home, 'other.yaml'));
  expect(other.code).toBe(2);
  expect(other.stderr).toMatch(/not the record of an alteration/);
});
