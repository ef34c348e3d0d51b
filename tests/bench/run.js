// Ratios against general-purpose libraries, on the same work, in one run. Processor time, best of three windows:
// on a shared machine trust the ratios, not the third digit. Run by `npm run bench`, after a build. Each table is made
// by a process of its own: what an engine has learnt from one makes a library up to eight times slower in the next.
import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { table } from './clock.js';

const figure = value => (typeof value === 'number' && !Number.isInteger(value) ? value.toFixed(2) : value);
const tableOf = ({ title, rows }) =>
  table(
    title,
    Object.keys(rows[0]),
    rows.map(one => Object.values(one).map(figure)),
  );

const tables = {
  'arc length': async () => (await import('./arc-length.js')).arcLength(),
  'point at length': async () => (await import('./arc-length.js')).pointAtLength(),
  parallels: async () => (await import('./offsets.js')).parallels(),
  'whole outlines': async () => (await import('./offsets.js')).outlineOffsets(),
  'cutting lines': async () => (await import('./cutting-lines.js')).cuttingLines(),
  'cutting lines, unlike': async () => (await import('./cutting-lines.js')).unlikeCuttingLines(),
  'curve by curve': async () => (await import('./intersections.js')).curveByCurve(),
  touches: async () => (await import('./intersections.js')).touches(),
  'self-crossings': async () => (await import('./intersections.js')).selfCrossings(),
  'whole sheet': async () => (await import('./whole-sheet.js')).wholeSheet(),
  rerun: async () => (await import('./rerun.js')).rerun(),
  bundles: async () => (await import('./bundles.js')).bundles(),
  'path data': async () => tableOf(await (await import('./path-data.js')).bench()),
  pages: async () => tableOf(await (await import('./print.js')).bench()),
  // One of the twelve scenes, the longest work of all; all of them by `node tests/bench/trace.js`.
  trace: async () => (await import('./trace.js')).traceBars([0]),
};

const [asked] = process.argv.slice(2);
if (asked !== undefined && !Object.hasOwn(tables, asked)) {
  console.error(`There is no table "${asked}". Tables: ${Object.keys(tables).join(', ')}.`);
  process.exitCode = 2;
} else if (asked !== undefined) console.log(await tables[asked]());
else
  for (const name of Object.keys(tables))
    execFileSync(process.execPath, [fileURLToPath(import.meta.url), name], { stdio: 'inherit' });
