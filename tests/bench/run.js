// Ratios against general-purpose libraries, on the same work, in one run. Processor time, best of three windows:
// on a shared machine trust the ratios, not the third digit. Run by `npm run bench`, after a build.
import { arcLength, pointAtLength } from './arc-length.js';
import { bundles } from './bundles.js';
import { table } from './clock.js';
import { cuttingLines } from './cutting-lines.js';
import { curveByCurve, selfCrossings, touches } from './intersections.js';
import { outlineOffsets, parallels } from './offsets.js';
import { bench as pathData } from './path-data.js';
import { bench as pages } from './print.js';
import { rerun } from './rerun.js';
import { traceBars } from './trace.js';
import { bench as wholeSheet } from './whole-sheet.js';

for (const row of [
  arcLength,
  pointAtLength,
  parallels,
  outlineOffsets,
  cuttingLines,
  curveByCurve,
  touches,
  selfCrossings,
  wholeSheet,
  rerun,
  bundles,
])
  console.log(await row());

const figure = value => (typeof value === 'number' && !Number.isInteger(value) ? value.toFixed(2) : value);
for (const row of [pathData, pages]) {
  const { title, rows } = await row();
  console.log(
    table(
      title,
      Object.keys(rows[0]),
      rows.map(one => Object.values(one).map(figure)),
    ),
  );
}

// One of the twelve scenes, the longest work of all; all of them by `node tests/bench/trace.js`.
console.log(await traceBars([0]));
