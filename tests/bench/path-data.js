// Path data beside its peers: about 7 MB of icons, parsed, and parsed, carried by a map and written again; how many
// results are wrong by a reference that is none of them; and what each makes of damaged data.
import { SVGPathData } from 'svg-pathdata';
import svgpath from 'svgpath';
import {
  drawPathData,
  parsePathData,
  toPathData,
  transformPathData,
} from '../../packages/geometry/dist/public/svg.js';
import { icons, pathDataOf } from '../corpus/icons.js';
import { curvesOf, measureCurves } from '../corpus/path-reference.js';

const matrix = [1.1, 0.13, -0.2, 0.9, 3.7, -1.3];
const [a, b, c, d, e, f] = matrix;
const map = { a, b, c, d, e, f };

/**
 * `parse` gives how much it found, `carry` the new data, `curves` absolute lines and cubics carried by the map (as what
 * `inCurves` writes, which is not timed), `refuses` whether it said that data is damaged. Arcs the peers make cubics of
 * a quarter turn, off by 2.7e-4 of the radius; ours are of 7.5 degrees at most, off by 1e-10.
 */
const peers = [
  {
    name: 'this library (drawPathData, transformPathData, parsePathData)',
    parse: text => commandsOf(text).length,
    carry: text => transformPathData(text, map).data,
    curves: text => parsePathData(text, map).subpaths,
    inCurves: subpaths => subpaths.map(closedText).join(' '),
    refuses: text =>
      transformPathData(text, map).fault !== undefined && parsePathData(text).fault !== undefined,
  },
  {
    name: 'svgpath 2.6.0',
    parse: text => svgpath(text).segments.length,
    carry: text => svgpath(text).matrix(matrix).toString(),
    curves: text =>
      svgpath(text)
        .abs()
        .unshort()
        .matrix(matrix)
        .unarc()
        .iterate(() => {}),
    inCurves: drawn => drawn.toString(),
    refuses: text => svgpath(text).err !== '',
  },
  {
    name: 'svg-pathdata 7.2.0, normalizeHVZ first',
    parse: text => new SVGPathData(text).commands.length,
    carry: text =>
      new SVGPathData(text)
        .normalizeHVZ()
        .matrix(...matrix)
        .encode(),
    curves: text =>
      new SVGPathData(text)
        .toAbs()
        .normalizeHVZ()
        .normalizeST()
        .matrix(...matrix)
        .aToC(),
    inCurves: drawn => drawn.encode(),
    refuses: () => false,
  },
];

/** What the peers parse to: a list of commands, arcs as arcs; ours are absolute already. */
function commandsOf(text) {
  const list = [];
  drawPathData(text, {
    moveTo: (x, y) => list.push({ type: 'M', x, y }),
    lineTo: (x, y) => list.push({ type: 'L', x, y }),
    cubicTo: (x1, y1, x2, y2, x, y) => list.push({ type: 'C', x1, y1, x2, y2, x, y }),
    quadraticTo: (x1, y1, x, y) => list.push({ type: 'Q', x1, y1, x, y }),
    arcTo: arc => list.push({ type: 'A', ...arc }),
    close: () => list.push({ type: 'Z' }),
  });
  return list;
}

/** A stroke drawn shut may end in a line that the model holds and that text leaves to Z. */
const closedText = stroke => (stroke.segments.length > 0 ? toPathData(stroke) : '');

/** [data, the part before the error, which SVG 2 section 9.5.4 says to draw]. */
export const damaged = [
  ['M0,0 L10', 'M0,0'],
  ['M0 0 C1 1 2 2', 'M0 0'],
  ['M0 0 L1e400 0', 'M0 0'],
  ['M0 0 L5 5 L1e999999 3 L9 9', 'M0 0 L5 5'],
  ['M0 0 L5 5 x', 'M0 0 L5 5'],
  ['M0 0 L5 5 A4 4 0 2 0 9 9', 'M0 0 L5 5'],
  ['M0 0 L5 5,', 'M0 0 L5 5'],
  ['M0 0 L5 5 L 7 NaN', 'M0 0 L5 5'],
  ['L5 5 M0 0 L1 1', ''],
  ['M0 0 L5 5 L1..5.', 'M0 0 L5 5'],
  ['M0 0 L5 5 - 3 4', 'M0 0 L5 5'],
  ['M0 0 L5 5 A0 0 0 0 1 9 9', 'M0 0 L5 5 L9 9'],
];

const processorSeconds = work => {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1e6;
};

const works = ['parse', 'carry', 'curves'];

/** How much there is of what was made; of a text, a character is looked at, so that the engine puts its parts together. */
const amountOf = made =>
  typeof made === 'string'
    ? made.length + (made.charCodeAt(made.length >> 1) & 0)
    : made === undefined
      ? 0
      : 1;

/** Best of a few rounds, each peer in turn, so that a busy moment of the machine falls on all alike. */
function speeds(data, rounds) {
  const best = peers.map(() => Object.fromEntries(works.map(work => [work, Infinity])));
  for (let round = 0; round < rounds; round++)
    peers.forEach((peer, i) => {
      for (const work of works) {
        let amount = 0;
        const spent = processorSeconds(() => {
          for (const text of data) amount += amountOf(peer[work](text));
        });
        if (amount === 0) throw new Error(`${peer.name} made nothing`);
        best[i][work] = Math.min(best[i][work], spent);
      }
    });
  return best;
}

/** Of length and box, to a millionth of the drawing's size. */
function isWrong(text, out) {
  let wanted, got;
  try {
    wanted = measureCurves(curvesOf(text, matrix), 64);
    got = measureCurves(curvesOf(out), 64);
  } catch {
    return true;
  }
  const size = Math.max(1, wanted.length);
  return !(
    Math.abs(wanted.length - got.length) <= 1e-6 * size &&
    wanted.box.every((side, i) => side === got.box[i] || Math.abs(side - got.box[i]) <= 1e-6 * size)
  );
}

function faultyAt(peer, [text, before]) {
  try {
    if (peer.refuses(text)) return false;
    const out = peer.carry(text);
    return /NaN|Infinity/.test(out) || isWrong(before, out);
  } catch {
    return false; // it refuses, if without a word on where
  }
}

/** A row a peer: MB/s of processor time and ratios to the fastest peer, wrong results, damaged data taken for good. */
export async function bench({ rounds = 2, every = 28 } = {}) {
  const data = Array.from(icons(), ({ source }) => pathDataOf(source)).flat();
  const megabytes = data.reduce((sum, text) => sum + text.length, 0) / 1e6;
  const best = speeds(data, rounds);
  const sample = data.filter((_, i) => i % every === 0);
  const fastest = work => Math.min(...best.slice(1).map(one => one[work]));
  const figures = (one, work) => ({
    [`${work}MBs`]: megabytes / one[work],
    [`${work}ToBestPeer`]: fastest(work) / one[work],
  });
  return {
    title: `Path data: ${data.length} icon paths, ${megabytes.toFixed(1)} MB; read; carried by a map and written; read into lines and cubics in mm. Wrong of ${sample.length}, damaged of ${damaged.length}`,
    rows: peers.map((peer, i) => ({
      name: peer.name,
      ...Object.assign({}, ...works.map(work => figures(best[i], work))),
      carryWrong: sample.filter(text => isWrong(text, peer.carry(text))).length,
      curvesWrong: sample.filter(text => isWrong(text, peer.inCurves(peer.curves(text)))).length,
      damagedTakenForGood: damaged.filter(one => faultyAt(peer, one)).length,
    })),
  };
}

if (process.argv[1]?.endsWith('bench/path-data.js')) console.table((await bench()).rows);
