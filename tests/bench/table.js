// The page in Chromium: from a key to the drawing, and to all that is told of it once the hand rests, on the demo and on
// 40 pieces under 100 steps; frames while 40 pieces are panned; memory over 500 edits. By the clock, not the processor: what a maker waits. Needs `npm run viewer:build`.
// `node tests/bench/table.js`
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { readPattern, writePattern } from '../../packages/geometry/dist/index.js';
import { median, table } from './clock.js';
import { manifold, named } from './manifold.js';

const page = fileURLToPath(new URL('../../demos/viewer/dist/table.html', import.meta.url));
const drawing = readFileSync(new URL('../../demos/patterns/woven-shift.svg', import.meta.url));
/** The demo's four pieces ten times over. */
const copies = 10;
const edits = 500;

/** Ten steps to each front, back and sleeve: 100 in all, the last of which is changed. */
const stepsOf = k => [
  `shorten: { pieces: [${named('front', k)}, ${named('back', k)}], at: hem, by: 110 }`,
  `close dart: { piece: ${named('front', k)}, dart: bust, into: hem }`,
  `spread: { piece: ${named('back', k)}, from: { edge: hem, at: 1/2 }, to: { edge: shoulder, at: 1/2 }, by: 60 }`,
  `true: { edges: [${named('front', k)}.hem, ${named('back', k)}.hem] }`,
  `set allowance: { edges: [${named('front', k)}.hem], to: 20 }`,
  `set allowance: { edges: [${named('back', k)}.hem], to: 20 }`,
  `set allowance: { edges: [${named('sleeve', k)}.hem], to: 20 }`,
  `lengthen: { pieces: [${named('front', k)}, ${named('back', k)}], at: hem, by: 10 }`,
  `shorten: { pieces: [${named('sleeve', k)}], at: hem, by: 60 }`,
  `shorten: { pieces: [${named('sleeve', k)}], at: hem, by: 100 }`,
];
function fortyPieces() {
  const { pattern } = manifold(readPattern(drawing), copies);
  const steps = Array.from({ length: copies }, (_, k) => stepsOf(k)).flat();
  const sheet = `pattern: forty.svg\nunit: mm\nsteps:\n${steps.map(line => `  - ${line}`).join('\n')}\n`;
  return JSON.stringify({
    paperhinge: 'bundle',
    pattern: { name: 'forty.svg', text: writePattern(pattern) },
    sheet,
  });
}

const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] });
const tab = await browser.newPage({ viewport: { width: 1440, height: 900 } });
tab.setDefaultTimeout(120_000);
await tab.goto(`file://${page}`);
await tab.locator('.handle').first().waitFor();

/** ms from a key on a figure until the drawing is another; the next frame shows it. */
const keyToDrawing = (figure, times) =>
  figure.evaluate(async (blank, count) => {
    const pieces = document.querySelector('.table svg.lying');
    const taken = [];
    for (let i = 0; i < count; i++) {
      const begun = performance.now();
      const drawn = new Promise(done => {
        const watch = new MutationObserver(changes => {
          if (!changes.some(c => c.attributeName === 'd' && c.target.classList.contains('paper'))) return;
          watch.disconnect();
          done(undefined);
        });
        watch.observe(pieces, { subtree: true, attributes: true });
      });
      blank.dispatchEvent(
        new KeyboardEvent('keydown', { key: i % 2 ? 'ArrowDown' : 'ArrowUp', bubbles: true }),
      );
      await drawn;
      taken.push(performance.now() - begun);
      await new Promise(done => requestAnimationFrame(() => setTimeout(done, 30)));
    }
    return taken;
  }, times);

/** ms from a key on a figure until the verdict is told anew: the hand has rested, and all is worked out. */
const keyToVerdict = (figure, times) =>
  figure.evaluate(async (blank, count) => {
    const verdict = document.querySelector('.verdict');
    const taken = [];
    for (let i = 0; i < count; i++) {
      const begun = performance.now();
      const told = new Promise(done => {
        const watch = new MutationObserver(() => {
          if (verdict.getAttribute('aria-busy') === 'true') return;
          watch.disconnect();
          done(undefined);
        });
        watch.observe(verdict, { attributeFilter: ['aria-busy'] });
      });
      blank.dispatchEvent(
        new KeyboardEvent('keydown', { key: i % 2 ? 'ArrowDown' : 'ArrowUp', bubbles: true }),
      );
      await told;
      taken.push(performance.now() - begun);
    }
    return taken;
  }, times);

const engineMs = async () => Number(await tab.locator('.verdict').getAttribute('data-milliseconds'));
const heap = async () => {
  const cdp = await tab.context().newCDPSession(tab);
  await cdp.send('HeapProfiler.collectGarbage');
  const { usedSize } = await cdp.send('Runtime.getHeapUsage');
  return usedSize / 1e6;
};
const worst = list => [...list].sort((p, q) => p - q)[Math.floor(list.length * 0.95)];
const rows = [];
const row = (what, list, engine, told, bar) =>
  rows.push([
    what,
    median(list).toFixed(1),
    worst(list).toFixed(1),
    engine.toFixed(1),
    bar,
    median(told).toFixed(0),
  ]);

const share = tab.locator('.step').nth(1).locator('.blank .value').last();
await keyToDrawing(share, 30);
row(
  'the demo, its dart',
  await keyToDrawing(share, 100),
  await engineMs(),
  await keyToVerdict(share, 20),
  '16.7',
);
const before = await heap();
await keyToDrawing(share, edits);
const after = await heap();

await tab.locator('.corner button').first().click();
await tab
  .locator('.file input')
  .setInputFiles({ name: 'forty.json', mimeType: 'text/plain', buffer: Buffer.from(fortyPieces()) });
await tab.locator('.step').nth(99).waitFor();
await tab.waitForFunction(() => document.querySelectorAll('.table .paper').length === 40);
await tab
  .locator('.step')
  .nth(99)
  .locator('.sentence')
  .click({ position: { x: 3, y: 3 } });
const last = tab.locator('.step').nth(99).locator('.blank .value').last();
await keyToDrawing(last, 10);
row(
  '40 pieces, the last of 100 steps',
  await keyToDrawing(last, 40),
  await engineMs(),
  await keyToVerdict(last, 10),
  '33',
);

/** Frames a second while the table is dragged to and fro for two seconds. */
const box = await tab.locator('section.table').boundingBox();
const frames = tab.evaluate(
  () =>
    new Promise(done => {
      let count = 0;
      const begun = performance.now();
      const tick = () => {
        count++;
        if (performance.now() - begun < 2000) requestAnimationFrame(tick);
        else done((count * 1000) / (performance.now() - begun));
      };
      requestAnimationFrame(tick);
    }),
);
await tab.mouse.move(box.x + 60, box.y + 60);
await tab.mouse.down();
for (let i = 0; i < 120; i++) await tab.mouse.move(box.x + 60 + 200 * Math.sin(i / 6), box.y + 60 + i);
await tab.mouse.up();
const fps = await frames;
await browser.close();

console.log(
  table(
    'The page: ms by the clock from a key to the drawing',
    ['', 'median', '95 of 100', 'of it the engine', 'bar', 'to the verdict'],
    rows,
  ),
);
console.log(
  `\n40 pieces panned: ${fps.toFixed(0)} frames a second (bar: 50). Memory of the page over ${edits} edits: ${before.toFixed(1)} MB, then ${after.toFixed(1)} MB.`,
);
