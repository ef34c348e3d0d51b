import { statSync } from 'node:fs';

type Command = typeof import('./run.js');

/**
 * The command as `.build/command.js` put it together: the same code in a few files, which load in half the time.
 * Undefined where it was not made, or where any of our packages was compiled since: then its modules are right.
 */
export async function freshBundle(): Promise<Command | undefined> {
  const made = timeOf('./bundled.js');
  if (made === undefined) return undefined;
  const compiled = [
    '..',
    ...['alter', 'geometry', 'print', 'sheet'].map(of => `../node_modules/@paperhinge/${of}`),
  ];
  // A package that was published has no such record, and is as it was when the command was put together.
  if (compiled.some(folder => (timeOf(`${folder}/dist/.tsbuildinfo`) ?? 0) > made)) return undefined;
  const path: string = './bundled.js';
  return import(path) as Promise<Command>;
}

const timeOf = (path: string): number | undefined =>
  statSync(new URL(path, import.meta.url), { throwIfNoEntry: false })?.mtimeMs;
