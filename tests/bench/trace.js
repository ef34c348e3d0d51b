// The bars of tracing photographs, on twelve scenes of known truth: floors of 1.2 x 1.0 m in twelve megapixels, slanted
// to 35 degrees, lenses with k1 to 0.1, blur, noise, uneven light, JPEG 80; rendered by a program of its own that
// shares no code with the solver, with the sheets as pdftoppm shows their PDF. `node tests/bench/trace.js` traces all
// twelve (four minutes of processor time, most of it rendering); numbers as arguments choose scenes. Seconds are of processor time.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import jpeg from 'jpeg-js';
import { tracePhotos } from '../../packages/geometry/dist/public/trace.js';
import { photoFrame } from '../../packages/print/dist/index.js';
import { strewn } from '../support/photo-floors.js';
import { judged } from '../support/photo-judge.js';
import { photograph } from '../support/photo-scene.js';
import { table } from './clock.js';
import { pointOf } from './reference.js';

const bars = { most: 0.5, worst: 1, length: 0.3, lengthShare: 0.001, corner: 0.7, seconds: 20 };
/** Dots to a mm that the sheets are rendered at. */
const perMm = 12;

/** The sheets of a frame as grey pixels. */
async function framePages() {
  const folder = mkdtempSync(join(tmpdir(), 'frame-'));
  try {
    const file = join(folder, 'frame.pdf');
    writeFileSync(file, await photoFrame({ paper: 'a4', sheets: 9 }));
    execFileSync('pdftoppm', ['-gray', '-r', String(25.4 * perMm), file, join(folder, 'p')]);
    return readdirSync(folder)
      .filter(name => name.endsWith('.pgm'))
      .sort()
      .map(name => greyMap(readFileSync(join(folder, name))));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** A portable grey map: "P5 width height 255" and the bytes. */
function greyMap(bytes) {
  const [, width, height] = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 64).toString('latin1'));
  return {
    width: Number(width),
    height: Number(height),
    grey: bytes.subarray(bytes.length - width * height),
    perMm,
  };
}

/** One scene: rendered, packed and unpacked as JPEG, traced, held against the truth. */
function tracedScene(number, pages) {
  const scene = strewn(number, pages, 12);
  const { width, height, rgba } = photograph(scene);
  const file = jpeg.encode({ width, height, data: rgba }, 80).data;
  const start = process.cpuUsage();
  const picture = jpeg.decode(file, { useTArray: true, maxMemoryUsageInMB: 4096 });
  const trace = tracePhotos([{ width, height, rgba: picture.data }]);
  const seconds = process.cpuUsage(start).user / 1e6;
  const pieces = scene.pieces.map(({ outline }) =>
    trace.pieces
      .map(({ edges }) =>
        judged(
          edges.flatMap(beads),
          edges.map(edge => pair(edge.segments[0][0])),
          outline,
        ),
      )
      .reduce((a, b) => (b.worst < a.worst ? b : a)),
  );
  return { number, seconds, pieces, found: trace.pieces.length, sheets: trace.sheets.length };
}

const pair = ({ x, y }) => [x, y];
/** Points of an edge, at most about 1 mm apart. */
const beads = edge =>
  edge.segments.flatMap(segment => {
    const curve = segment.length === 4 ? segment : [segment[0], ...segment, segment[1]];
    const reach = curve
      .slice(1)
      .reduce((sum, p, i) => sum + Math.hypot(p.x - curve[i].x, p.y - curve[i].y), 0);
    const at = t =>
      segment.length === 4
        ? pointOf(segment, t)
        : {
            x: segment[0].x + (segment[1].x - segment[0].x) * t,
            y: segment[0].y + (segment[1].y - segment[0].y) * t,
          };
    const n = Math.max(1, Math.ceil(1.5 * reach));
    return Array.from({ length: n }, (_, k) => pair(at(k / n)));
  });

/** The table of bars for some scenes. */
export async function traceBars(numbers) {
  const pages = await framePages();
  const scenes = numbers.map(number => tracedScene(number, pages));
  const most = (list, of) => Math.max(...list.map(of));
  const rows = scenes.map(({ number, seconds, pieces, found, sheets }) => {
    const figures = {
      most: most(pieces, p => p.most),
      worst: most(pieces, p => p.worst),
      length: most(pieces, p => Math.abs(p.lengthOff) / (bars.lengthShare * p.length + bars.length)),
      corner: most(pieces, p => Math.max(...p.cornersOff)),
    };
    const kept =
      found === pieces.length &&
      figures.most < bars.most &&
      figures.worst < bars.worst &&
      figures.length < 1 &&
      figures.corner < bars.corner &&
      seconds < bars.seconds;
    return [
      number,
      `${pieces.length} by ${sheets}`,
      figures.most.toFixed(3),
      figures.worst.toFixed(3),
      figures.corner.toFixed(3),
      `${Math.round(100 * figures.length)} %`,
      seconds.toFixed(1),
      kept ? 'kept' : 'NOT KEPT',
    ];
  });
  return table(
    'Photographs of 12 megapixels: mm within which 95 % of the outline lies (bar 0.5), worst (1), worst corner (0.7), length off of what is allowed, s (20)',
    ['scene', 'pieces, sheets', '95 %', 'worst', 'corner', 'length', 's', 'bars'],
    rows,
  );
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const asked = process.argv.slice(2).map(Number);
  console.log(await traceBars(asked.length > 0 ? asked : Array.from({ length: 12 }, (_, i) => i)));
}
