// What a page carries of us: small programs bundled and minified as a bundler does it, in kB of 1000 bytes.
// Bars of the project: one length 3 kB, one operation 50 kB, reading a sheet 230 kB.
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { table } from './clock.js';

const programs = [
  ['one length', 3, `export { pathLength } from '@paperhinge/geometry'`],
  ['one operation: shorten', 50, `export { shorten } from '@paperhinge/alter/length'`],
  ['one operation: close a dart', 50, `export { closeDart } from '@paperhinge/alter/darts'`],
  ['reading a sheet, the verbs given', 230, `export { sheetReader } from '@paperhinge/sheet'`],
  ['reading a sheet, with every verb and what it does', 230, `export { readSheet } from '@paperhinge/sheet'`],
];

/** A program bundled: its size, and the modules that left something in it, as their paths from `packages/`. */
export async function bundle(contents) {
  const { outputFiles, metafile } = await build({
    stdin: { contents, resolveDir: fileURLToPath(new URL('../../packages/sheet/', import.meta.url)) },
    bundle: true,
    minify: true,
    format: 'esm',
    platform: 'browser',
    write: false,
    metafile: true,
    logLevel: 'error',
  });
  const [{ inputs }] = Object.values(metafile.outputs);
  const carried = Object.entries(inputs).filter(([, { bytesInOutput }]) => bytesInOutput > 0);
  return {
    bytes: outputFiles[0].contents.length,
    modules: carried.map(([path]) => path.replace(/^.*packages\//, '')),
  };
}

export async function bundles() {
  const rows = [];
  for (const [name, bar, program] of programs) {
    const kB = (await bundle(program)).bytes / 1000;
    rows.push([name, kB.toFixed(1), bar, kB <= bar ? 'within' : 'over']);
  }
  return table('Bundled and minified', ['', 'kB', 'bar', ''], rows);
}

if (process.argv[1]?.endsWith('bench/bundles.js')) console.log(await bundles());
