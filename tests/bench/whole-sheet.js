// The whole demo sheet in a warm process: read, alter, check, cutting lines. Medians: processor time, as the machine may
// be busy, which counts the engine's own threads (collecting garbage, compiling) too; and time by the clock. Everything is made anew in each round, so that nothing known of the
// last one helps, but for the live run: there the pattern is read once and one parameter differs each time.
import { readFileSync } from 'node:fs';
import { readPattern } from '../../packages/geometry/dist/index.js';
import { readSheet, runSheet } from '../../packages/sheet/dist/index.js';
import { median, table } from './clock.js';
import { manifold, named } from './manifold.js';

const demos = new URL('../../demos/', import.meta.url);
const text = readFileSync(new URL('sheets/cellist-top.yaml', demos), 'utf8');
const drawing = readFileSync(new URL('patterns/woven-shift.svg', demos));
const [head, steps] = text.split(/(?<=^steps:\n)/m);
const stepLines = steps.match(/^ {2}- .*$/gm);

const readDrawing = () => readPattern(drawing, { file: 'woven-shift.svg' });
const read = sheet => readSheet(sheet, { file: 'cellist-top.yaml' });
const run = (sheet, { pattern, findings }) => runSheet(sheet, pattern, { readFindings: findings });

/** With what is written of it: the altered SVG and the record, which are worked out when they are asked for. */
const written = (sheet, known) => {
  const { svg, record } = run(sheet, known);
  return [svg, record];
};

/** Median processor time and time by the clock of a round, in ms. */
function time(work, rounds = 30, warmUp = 60) {
  for (let i = 0; i < warmUp; i++) work(i);
  const spent = Array.from({ length: rounds }, (_, i) => {
    const before = process.cpuUsage(),
      start = performance.now();
    work(warmUp + i);
    const clock = performance.now() - start;
    const { user, system } = process.cpuUsage(before);
    return { processor: (user + system) / 1000, clock };
  });
  return { processor: median(spent.map(s => s.processor)), clock: median(spent.map(s => s.clock)) };
}

/** The demo's steps, done to so many copies of its pieces. */
const stepsFor = times =>
  head +
  Array.from({ length: times }, (_, k) =>
    stepLines.map(line =>
      line.replace(/(?<=[[ ])(front|back|sleeve|neckband|inset stay)(?=[.,\]])/g, name => named(name, k)),
    ),
  )
    .flat()
    .join('\n');

export function wholeSheet() {
  const sheet = read(text),
    known = readDrawing();
  const changed = Array.from({ length: 90 }, (_, i) => read(text.replace('by: 60,', `by: ${40 + i / 10},`)));
  const rows = [
    ['read the pattern', time(readDrawing)],
    ['read the sheet', time(() => read(text))],
    ['whole: both read, altered, checked, cut and written', time(() => written(read(text), readDrawing()))],
    [
      'live: the spread by another width, all but written, the pattern read before',
      time(i => run(changed[i], known)),
    ],
    ['the same sheet again, written', time(() => written(sheet, known))],
  ];
  return table(
    `The demo sheet in a warm process (a 60 Hz frame is 16.7 ms): ${known.pattern.pieces.length} pieces, ${sheet.steps.length} steps`,
    ['', 'processor ms', 'clock ms'],
    rows.map(([name, { processor, clock }]) => [name, processor.toFixed(2), clock.toFixed(2)]),
  );
}

export function growth() {
  const rows = [
    [1, 1],
    [2, 1],
    [4, 1],
    [8, 1],
    [8, 2],
    [8, 4],
    [8, 8],
  ].map(([pieces, done]) => {
    const sheet = read(stepsFor(done));
    const patterns = Array.from({ length: 46 }, () => manifold(readDrawing(), pieces));
    const { record } = run(sheet, patterns[0]);
    const { processor, clock } = time(i => written(sheet, patterns[i]), 16, 30);
    return {
      pieces: patterns[0].pattern.pieces.length,
      steps: sheet.steps.length,
      cut: Object.keys(record.after.pieces).length,
      processor,
      clock,
    };
  });
  return table(
    'How it grows: the pattern of the demo several times over, the steps done to one or more of the copies',
    ['pieces', 'steps', 'pieces after', 'processor ms', 'clock ms', 'clock ms a piece'],
    rows.map(r => [
      r.pieces,
      r.steps,
      r.cut,
      r.processor.toFixed(1),
      r.clock.toFixed(1),
      (r.clock / r.cut).toFixed(2),
    ]),
  );
}

/** Both tables, one after the other. */
export const bench = () => `${wholeSheet()}\n${growth()}`;

if (process.argv[1]?.endsWith('bench/whole-sheet.js')) console.log(bench());
