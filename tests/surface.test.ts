import { readFileSync } from 'node:fs';
import { verbs } from '@paperhinge/alter';
import { describe, expect, test } from 'vitest';

const packages = ['geometry', 'alter', 'print', 'sheet'] as const;

/** A door of a package, the names it lists and where each is declared. */
interface Door {
  readonly door: string;
  readonly file: URL;
  readonly names: readonly (readonly [name: string, module: string])[];
}

function doorsOf(short: string): readonly Door[] {
  const folder = new URL(`../packages/${short}/`, import.meta.url);
  const { exports } = JSON.parse(readFileSync(new URL('package.json', folder), 'utf8')) as {
    readonly exports: Readonly<Record<string, { readonly default: string } | string>>;
  };
  return Object.entries(exports).flatMap(([door, target]): readonly Door[] => {
    if (typeof target === 'string') return [];
    const file = new URL(target.default.replace('./dist/', 'src/').replace(/\.js$/, '.ts'), folder);
    const text = readFileSync(file, 'utf8');
    const lists = [...text.matchAll(/export (?:type )?\{([^}]*)\} from '([^']+)'/g)].flatMap(
      ([, names, module]) =>
        names!.split(',').map(name => [named(name), new URL(module!, file).pathname] as const),
    );
    const spaces = [...text.matchAll(/export \* as (\w+) from '([^']+)'/g)].map(
      ([, name, module]) => [name!, new URL(module!, file).pathname] as const,
    );
    return [
      { door: short + door.slice(1), file, names: [...lists, ...spaces].filter(([name]) => name !== '') },
    ];
  });
}

/** The public name of an item such as `type a as b`. */
const named = (item: string): string =>
  item
    .trim()
    .replace(/^type /, '')
    .split(' as ')
    .at(-1)!;

describe.each([
  { short: 'geometry', most: 90 },
  { short: 'alter', most: 60 },
  { short: 'print', most: 25 },
  { short: 'sheet', most: 60 },
] as const)('the surface of $short', ({ short, most }) => {
  const doors = doorsOf(short);

  test('has doors that lead somewhere, each name listed', async () => {
    for (const { file, names } of doors) {
      const module = (await import(file.pathname)) as object;
      expect(names.length).toBeGreaterThan(0);
      for (const name of Object.keys(module)) expect(names.map(([n]) => n)).toContain(name);
    }
  });

  test(`has at most ${most} names at its root`, () => {
    expect(doors.find(({ door }) => door === short)!.names.length).toBeLessThanOrEqual(most);
  });

  test('has every name at one door', () => {
    const all = doors.flatMap(({ door, names }) => names.map(([name]) => [name, door] as const));
    expect(all.filter(([name], i) => all.findIndex(([n]) => n === name) !== i)).toEqual([]);
  });
});

test('every verb is a function at the door of its family, beside what it is given', async () => {
  const families = ['darts', 'fullness', 'length', 'edges', 'seams', 'sleeves', 'made', 'fit'];
  const listed = doorsOf('alter').filter(({ door }) => families.some(family => door === `alter/${family}`));
  expect(listed).toHaveLength(families.length);
  const functions = Object.assign(
    {},
    ...(await Promise.all(listed.map(({ file }) => import(file.pathname)))),
  );
  const missing = verbs
    .map(({ verb }) => functionOf(verb))
    .filter(name => typeof functions[name] !== 'function');
  expect(missing).toEqual([]);
  const types = new Set(listed.flatMap(({ names }) => names.map(([name]) => name)));
  const given = verbs.map(({ verb }) => GIVEN_ALIKE[verb] ?? capital(functionOf(verb)));
  expect(given.filter(name => !types.has(name))).toEqual([]);
});

/** Verbs that take what another takes. */
const GIVEN_ALIKE: Readonly<Record<string, string>> = {
  lengthen: 'Shorten',
  'let out': 'TakeIn',
  'draft cuff': 'DraftWaistband',
  'draft binding': 'DraftStrip',
};

/** The function of a verb: `close dart` is `closeDart`; `true` cannot be a function's name. */
const functionOf = (verb: string): string =>
  verb === 'true' ? 'trueEdges' : verb.replace(/[ -](\w)/g, (_, letter: string) => letter.toUpperCase());

const capital = (name: string): string => name[0]!.toUpperCase() + name.slice(1);

test('no name is public in two packages with two meanings', () => {
  const all = packages.flatMap(short =>
    doorsOf(short).flatMap(({ names }) => names.map(([name, module]) => ({ name, short, module }))),
  );
  const twice = all.filter(({ name, short }) =>
    all.some(other => other.name === name && other.short !== short),
  );
  expect(twice.map(({ name, short }) => `${name} of ${short}`)).toEqual([]);
});
