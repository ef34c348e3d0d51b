import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

test('every public name of the libraries is explained on the API page', () => {
  const root = fileURLToPath(new URL('../../', import.meta.url));
  const { status, stdout, stderr } = spawnSync(process.execPath, ['.docs/write.js'], {
    cwd: root,
    encoding: 'utf8',
  });
  expect(stderr).toBe('');
  expect(stdout).toMatch(/^out\/docs\/index\.html: [1-9]\d{2,} names/);
  expect(status).toBe(0);
});
