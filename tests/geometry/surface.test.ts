import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const folder = new URL('../../packages/geometry/', import.meta.url);
const { exports } = JSON.parse(readFileSync(new URL('package.json', folder), 'utf8')) as {
  readonly exports: Readonly<Record<string, { readonly default: string }>>;
};
const doors = Object.entries(exports).map(([door, { default: built }]) => {
  const file = new URL(built.replace('./dist/', 'src/').replace(/\.js$/, '.ts'), folder);
  const text = readFileSync(file, 'utf8');
  const listed = [...text.matchAll(/export (?:type )?\{([^}]*)\} from/g)].flatMap(match =>
    match[1]!.split(','),
  );
  const spaces = [...text.matchAll(/export \* as (\w+) from/g)].map(match => match[1]!);
  const names = [...listed.map(name => name.trim()), ...spaces].filter(name => name !== '');
  return { door, file, names };
});

test('every door of the package leads somewhere', async () => {
  for (const { file, names } of doors) {
    const module = (await import(file.pathname)) as object;
    expect(names.length).toBeGreaterThan(0);
    for (const name of Object.keys(module)) expect(names).toContain(name);
  }
});
