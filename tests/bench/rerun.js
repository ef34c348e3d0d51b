// A live change: the last of 20 steps is changed on a pattern of 40 pieces, and the run goes on from there. Processor
// time, and as a share of the whole run; everything before the changed step is known.
import { readFileSync } from 'node:fs';
import { readPattern } from '../../packages/geometry/dist/index.js';
import { readSheet, runSteps, stateOf } from '../../packages/sheet/dist/index.js';
import { median, table } from './clock.js';
import { manifold, named } from './manifold.js';

const drawing = readFileSync(new URL('../../demos/patterns/woven-shift.svg', import.meta.url));
/** The demo's four pieces ten times over. */
const copies = 10;

const stepsOf = k => [
  `shorten: { pieces: [${named('front', k)}, ${named('back', k)}], at: hem, by: 210 }`,
  `close dart: { piece: ${named('front', k)}, dart: bust, into: hem }`,
  `spread: { piece: ${named('back', k)}, from: { edge: hem, at: 1/2 }, to: { edge: shoulder, at: 1/2 }, by: 60 }`,
  `true: { edges: [${named('front', k)}.hem, ${named('back', k)}.hem] }`,
  `shorten: { pieces: [${named('sleeve', k)}], at: hem, by: 160 }`,
];
const lines = [0, 1, 2, 3].flatMap(stepsOf);
const text = `pattern: shift.svg\nsteps:\n${lines.map(line => `  - ${line}`).join('\n')}\n`;

const ms = work => {
  const start = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
};

export function rerun() {
  const { steps } = readSheet(text, { file: 'top.yaml' });
  const last = steps.at(-1);
  const fresh = () => manifold(readPattern(drawing), copies).pattern;
  const first = stateOf(fresh());
  runSteps(first, steps);
  const changed = i => [
    ...steps.slice(0, -1),
    { ...last, parameters: { ...last.parameters, by: 100 + i / 10 } },
  ];
  for (let i = 0; i < 200; i++) runSteps(first, changed(i));
  const again = median(Array.from({ length: 101 }, (_, i) => ms(() => runSteps(first, changed(200 + i)))));
  const whole = median(
    Array.from({ length: 9 }, () => {
      const start = stateOf(fresh());
      return ms(() => runSteps(start, steps));
    }),
  );
  return table(
    `A run resumed: the last of ${steps.length} steps changed, ${first.pattern.pieces.length} pieces (bar: 4 ms)`,
    ['', 'processor ms', 'of the whole'],
    [
      ['all steps', whole.toFixed(2), '1'],
      ['the last step again', again.toFixed(2), `1/${(whole / again).toFixed(0)}`],
    ],
  );
}

if (process.argv[1]?.endsWith('bench/rerun.js')) console.log(rerun());
