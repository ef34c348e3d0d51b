import { cuttingLine } from '../../packages/geometry/dist/index.js';
import { median, rate, small, table } from './clock.js';
import { outlines } from './inputs.js';
import { judgeOf } from './offset-judge.js';
import { unlikeJudge } from './unlike-judge.js';

const distances = [6.35, 15.875, 25];
/** The trade's: past 2.5 allowances a corner is cut square to its bisector. */
const mitres = { limit: 2.5, isCut: true };

/** @param starts the rule asked for at the start of each edge */
const pieceOf = (name, ring, allowances, starts = []) => ({
  name,
  title: name,
  outline: {
    parts: ring.map((segment, i) => ({
      type: 'edge',
      name: `edge-${i + 1}`,
      path: { segments: [segment] },
      kind: 'seam',
      allowance: allowances[i],
      corners: { start: starts[i] ?? 'mitre', end: starts[(i + 1) % ring.length] ? undefined : 'mitre' },
    })),
  },
  notches: [],
  lines: [],
  marks: [],
  cutting: { count: 1, mirrored: false, fabric: 'main' },
});

/** Whole cutting lines, trimmed, with mitred corners. */
export function cuttingLines() {
  const cases = Object.entries(outlines()).flatMap(([name, ring]) => {
    const judge = judgeOf(ring, mitres);
    return distances.map(d => ({
      name,
      d,
      judge,
      piece: pieceOf(
        name,
        ring,
        ring.map(() => d),
      ),
    }));
  });
  const figures = cases.map(({ name, d, judge, piece }) => {
    const { segments } = cuttingLine(piece).path;
    return {
      name,
      ...judge.judged([segments], d),
      count: segments.length,
      speed: rate(1, () => cuttingLine(piece), 20),
    };
  });
  const good = figures.filter(f => Math.max(f.near, f.far, f.uncovered) <= 0.005).length;
  const ms = figures.map(f => 1000 / f.speed);
  const worst = Object.keys(outlines()).map(name => {
    const own = figures.filter(f => f.name === name);
    return [
      name,
      small(Math.max(...own.map(f => f.near))),
      small(Math.max(...own.map(f => f.far))),
      small(Math.max(...own.map(f => f.uncovered))),
      Math.max(...own.map(f => f.count)),
      median(own.map(f => 1000 / f.speed)).toFixed(3),
    ];
  });
  return table(
    `Cutting lines of 12 outlines at 6.35, 15.875 and 25 mm: ${good} of ${cases.length} within 0.005 mm; median ${median(ms).toFixed(3)} ms`,
    ['', 'too near, mm', 'too far, mm', 'true line uncovered, mm', 'most segments', 'ms'],
    worst,
  );
}

/** Allowances that edge after edge takes in turn, mm. */
const unlike = [
  [6.35, 15.875, 25],
  [15, 25, 10],
  [25, 6.35],
];

/** Corners that are neither flat nor sharp: there a pressed-open end meets its parallel within reach. */
const isPlain = degrees => degrees > 35 && degrees < 125;

/** Corners at which an end is asked to be shaped by the edge that crosses it: every second of those that can be. */
function shapedCorners(ring) {
  const turns = ring.map((segment, i) => {
    const before = ring[(i + ring.length - 1) % ring.length];
    const [a, b] = [before.at(-2), before.at(-1)],
      [c, d] = [segment[0], segment[1]];
    const u = Math.atan2(b.y - a.y, b.x - a.x),
      v = Math.atan2(d.y - c.y, d.x - c.x);
    return ((((v - u) * 180) / Math.PI + 540) % 360) - 180;
  });
  return new Map([...turns.keys()].filter(i => i % 2 === 1 && isPlain(turns[i])).map(i => [i, 'after']));
}

/** Cutting lines whose edges have unlike allowances, and with ends that are mirrored (pressed open). */
export function unlikeCuttingLines() {
  const rows = [false, true].map(shaped => {
    const cases = Object.entries(outlines()).flatMap(([name, ring]) =>
      unlike.map(set => {
        const allowances = ring.map((_, i) => set[i % set.length]);
        const mirrored = shaped ? shapedCorners(ring) : new Map();
        const starts = ring.map((_, i) => (mirrored.has(i) ? 'pressed-open' : undefined));
        const { segments } = cuttingLine(pieceOf(name, ring, allowances, starts)).path;
        return { name, corners: mirrored.size, ...unlikeJudge(ring, allowances, mirrored)(segments) };
      }),
    );
    const judged = shaped ? cases.filter(c => c.corners > 0) : cases;
    const worst = of => Math.max(...judged.map(of));
    const good = judged.filter(f => Math.max(f.near, f.far, f.uncovered) <= 0.005).length;
    return [
      shaped ? 'ends mirrored at some corners' : 'mitres',
      `${good} of ${judged.length}`,
      small(worst(f => f.near)),
      small(worst(f => f.far)),
      small(worst(f => f.uncovered)),
    ];
  });
  return table(
    'Cutting lines of edges with unlike allowances (6.35 to 25 mm), within 0.005 mm',
    ['', 'good', 'too near, mm', 'off its construction, mm', 'true line uncovered, mm'],
    rows,
  );
}
