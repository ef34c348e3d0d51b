// What a maker sees who starts the project where nothing can be fetched or kept: the quiet of npm's own talk must not
// swallow why it failed.
import { spawnSync } from 'node:child_process';
import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { folder } from '../cli/folders.js';

const project = fileURLToPath(new URL('../../', import.meta.url));

test('a setup that cannot keep what it fetches says why', () => {
  // Away from the project, so that nothing here is installed anew whatever comes of it.
  const away = folder();
  copyFileSync(join(project, 'package.json'), join(away, 'package.json'));
  const { status, stderr } = spawnSync('npm', ['run', '--silent', 'setup'], {
    cwd: away,
    env: { PATH: process.env.PATH, HOME: '/dev/null' },
    encoding: 'utf8',
  });
  expect(status).not.toBe(0);
  expect(stderr).toContain('npm error');
}, 30_000);
