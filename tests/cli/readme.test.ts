import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { readSheet } from '@paperhinge/sheet';
import { expect, test } from 'vitest';

const root = new URL('../../', import.meta.url);
const readme = readFileSync(new URL('README.md', root), 'utf8');
const blocks = (language: string): readonly string[] =>
  [...readme.matchAll(new RegExp(`\`\`\`${language}\n([\\s\\S]*?)\`\`\``, 'g'))].map(m => m[1]!);

/** Where a door of a package leads once it is built. */
function builtDoor(name: string, door: string): string {
  const folder = new URL(`packages/${name}/`, root);
  const { exports } = JSON.parse(readFileSync(new URL('package.json', folder), 'utf8')) as {
    readonly exports: Readonly<Record<string, { readonly default: string }>>;
  };
  return new URL(exports[door]!.default, folder).href;
}

test('the library example of the README runs as it stands and sews', () => {
  const [example] = blocks('ts');
  const folder = mkdtempSync(join(tmpdir(), 'readme-'));
  try {
    const file = join(folder, 'example.mjs');
    const built = example!.replace(
      /'@paperhinge\/(\w+)(\/\w+)?'/g,
      (_, name: string, door = '') => `'${builtDoor(name, `.${door}`)}'`,
    );
    writeFileSync(file, built);
    const said = execFileSync('node', [file], { cwd: fileURLToPath(root), encoding: 'utf8' });
    expect(said).toMatch(/^The bust dart of the front \(11\.9°\) was closed into the hem/);
    expect(said).toMatch(/shoulder 0\.00 sews/);
    expect(said).not.toContain('undefined');
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

test('the library example of the README compiles under our own strictest settings', () => {
  // Where all packages are found as a user finds them: by their built declarations.
  const cli = fileURLToPath(new URL('packages/cli/', root));
  const folder = mkdtempSync(join(cli, 'readme-'));
  try {
    writeFileSync(join(folder, 'example.ts'), blocks('ts')[0]!);
    const compilerOptions = {
      composite: false,
      declaration: false,
      declarationMap: false,
      noEmit: true,
      types: ['node'],
    };
    writeFileSync(
      join(folder, 'tsconfig.json'),
      JSON.stringify({ extends: '../../../tsconfig.base.json', compilerOptions, include: ['example.ts'] }),
    );
    execFileSync('npx', ['tsc', '-p', folder], { cwd: fileURLToPath(root), stdio: 'pipe' });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

test('the sheet shown in the README is a sound sheet', () => {
  const [sheet] = blocks('yaml');
  expect(readSheet(sheet!, { file: 'readme.yaml' }).steps.length).toBeGreaterThan(3);
});

test('every file the README points to is there', () => {
  const links = [...readme.matchAll(/\]\(((?!https?:)[^)#]+)\)/g)].map(m => m[1]!);
  expect(links.length).toBeGreaterThan(4);
  expect(links.filter(link => !existsSync(new URL(link, root)))).toEqual([]);
});

test('the picture of before and after is what the demo gives today', () => {
  const folder = mkdtempSync(join(tmpdir(), 'picture-'));
  try {
    const file = join(folder, 'before-after.svg');
    execFileSync('node', [fileURLToPath(new URL('demos/pictures/draw.js', root)), file]);
    const shown = new URL('demos/pictures/before-after.svg', root);
    expect(readFileSync(file, 'utf8')).toBe(readFileSync(shown, 'utf8'));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});
