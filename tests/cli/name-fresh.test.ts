import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { writePattern } from '@paperhinge/geometry';
import { expect, test } from 'vitest';
import { freshGarments } from '../support/fresh/six-garments.js';
import { command } from './command.js';
import { folder } from './folders.js';

test('the sheets proposed for garments that nothing was built on are read and checked as they are', async () => {
  const dir = folder();
  const [drawing, sheet] = ['drawing.svg', 'names.yaml'].map(name => join(dir, name));
  for (const { title, pattern } of freshGarments()) {
    writeFileSync(drawing!, writePattern(pattern));
    const { code, stdout } = await command('name', drawing!, '-o', sheet!);
    expect(code, title).toBe(0);
    expect(stdout, title).toMatch(/\d+ seams proposed/);
    const checked = await command('check', drawing!, '--sheet', sheet!);
    expect(checked.code, `${title}: ${checked.stderr}`).toBe(0);
  }
});
