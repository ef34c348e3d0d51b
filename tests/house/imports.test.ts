// The map of the house (DEVELOPERS.md), held against every import line of the packages.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const packages = fileURLToPath(new URL('../../packages/', import.meta.url));
const names = ['geometry', 'alter', 'print', 'sheet', 'cli'] as const;
/** What each package may stand on. */
const below: Readonly<Record<(typeof names)[number], readonly string[]>> = {
  geometry: [],
  alter: ['geometry'],
  print: ['geometry'],
  sheet: ['geometry', 'alter', 'print'],
  cli: ['geometry', 'alter', 'print', 'sheet'],
};

const filesIn = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter(name => /\.ts$/.test(name) && !/\.d\.ts$/.test(name))
    .map(name => join(folder, name));

/** What a file imports or hands on, at once or when it is run; types too: a type that is needed is a thing that is known. */
const importsOf = (file: string): readonly string[] =>
  [
    ...readFileSync(file, 'utf8').matchAll(
      /^(?:import|export)\b[^;]*?\bfrom '([^']+)'|\bimport\('([^']+)'\)/gm,
    ),
  ].map(([, said, late]) => (said ?? late)!);

const fileOf = (from: string, said: string): string => resolve(dirname(from), said).replace(/\.js$/, '.ts');

/** The first circle that is found by following `next` from each place; empty where there is none. */
function circleAmong(
  places: readonly string[],
  next: (place: string) => readonly string[],
): readonly string[] {
  const done = new Set<string>();
  const way: string[] = [];
  const circleFrom = (place: string): readonly string[] => {
    const met = way.indexOf(place);
    if (met >= 0) return [...way.slice(met), place];
    if (done.has(place)) return [];
    way.push(place);
    for (const other of next(place)) {
      const circle = circleFrom(other);
      if (circle.length > 0) return circle;
    }
    way.pop();
    done.add(place);
    return [];
  };
  for (const place of places) {
    const circle = circleFrom(place);
    if (circle.length > 0) return circle;
  }
  return [];
}

describe.each(names)('%s', name => {
  const source = join(packages, name, 'src');
  const files = filesIn(source);

  test('stands only on what lies below it', () => {
    const ours = files.flatMap(importsOf).flatMap(said => /^@paperhinge\/([a-z]+)/.exec(said)?.[1] ?? []);
    expect([...new Set(ours)].filter(other => !below[name].includes(other))).toEqual([]);
  });

  test('has no file that leans on one that leans on it', () => {
    const within = (file: string): readonly string[] =>
      importsOf(file)
        .filter(said => said.startsWith('.'))
        .map(said => fileOf(file, said));
    expect(files.flatMap(within).filter(file => !existsSync(file))).toEqual([]);
    expect(circleAmong(files, within).map(file => relative(source, file))).toEqual([]);
  });
});

// Doors (`index.ts`, `public/`) and files beside the folders stand above or below them all.
test.each(['geometry', 'print'])('no folder of %s leans on one that leans on it', name => {
  const source = join(packages, name, 'src');
  const folderOf = (file: string): string => relative(source, file).split('/').slice(0, -1)[0] ?? '';
  const folders = new Map<string, Set<string>>();
  for (const file of filesIn(source)) {
    const folder = folderOf(file);
    if (folder === '' || folder === 'public' || file.endsWith('/index.ts')) continue;
    const others = folders.get(folder) ?? new Set();
    folders.set(folder, others);
    for (const said of importsOf(file).filter(s => s.startsWith('.'))) {
      const other = folderOf(fileOf(file, said));
      if (other !== '' && other !== folder) others.add(other);
    }
  }
  expect(circleAmong([...folders.keys()], folder => [...(folders.get(folder) ?? [])])).toEqual([]);
});
