import { cuttingLine } from '../../packages/geometry/dist/index.js';
import { median, rate, small, table } from './clock.js';
import { outlines } from './inputs.js';
import { judgeOf } from './offset-judge.js';

const distances = [6.35, 15.875, 25];
/** The trade's: past 2.5 allowances a corner is cut square to its bisector. */
const mitres = { limit: 2.5, isCut: true };

const pieceOf = (name, ring, allowance) => ({
  name,
  title: name,
  outline: {
    parts: ring.map((segment, i) => ({
      type: 'edge',
      name: `edge-${i + 1}`,
      path: { segments: [segment] },
      kind: 'seam',
      allowance,
      corners: { start: 'mitre', end: 'mitre' },
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
    return distances.map(d => ({ name, d, judge, piece: pieceOf(name, ring, d) }));
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
