import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, test } from 'vitest';

// The command's compiled folder as it stands in a checkout, each file with its time in minutes.
const compiled = fileURLToPath(new URL('../../packages/cli/dist/fresh-bundle.js', import.meta.url));
const root = mkdtempSync(join(tmpdir(), 'paperhinge-bundle-'));
afterAll(() => rmSync(root, { recursive: true }));

let folders = 0;
/** What `run` of the bundle is, asked of a process as the command is: `undefined` where there is none to take. */
function bundleAmong(files: Readonly<Record<string, number>>): string {
  const folder = join(root, String(folders++));
  mkdirSync(join(folder, 'dist'), { recursive: true });
  writeFileSync(join(folder, 'package.json'), '{ "type": "module" }');
  copyFileSync(compiled, join(folder, 'dist/fresh-bundle.js'));
  for (const [name, minutes] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), 'export const run = "put together";\n');
    utimesSync(join(folder, name), minutes * 60, minutes * 60);
  }
  const ask = `const { freshBundle } = await import('./dist/fresh-bundle.js'); console.log((await freshBundle())?.run)`;
  const { stdout, stderr } = spawnSync(process.execPath, ['--input-type=module', '-e', ask], {
    cwd: folder,
    encoding: 'utf8',
  });
  return stdout.trim() || stderr;
}

const ours = 'dist/.tsbuildinfo';
const geometry = 'node_modules/@paperhinge/geometry/dist/.tsbuildinfo';

test('a bundle made after everything was compiled is the command', () => {
  const files = { 'dist/bundled.js': 3, [ours]: 2, [geometry]: 1 };
  expect(bundleAmong(files)).toBe('put together');
});
test('as it is published, without a record of when it was compiled, too', () => {
  expect(bundleAmong({ 'dist/bundled.js': 3 })).toBe('put together');
});
test.each([ours, geometry])('once %s is newer, it is not', record => {
  expect(bundleAmong({ 'dist/bundled.js': 3, [ours]: 2, [geometry]: 1, [record]: 4 })).toBe('undefined');
});
test('where none was made there is none', () => {
  expect(bundleAmong({ [ours]: 2 })).toBe('undefined');
});
