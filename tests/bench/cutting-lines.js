import { cuttingLine, pathLength } from '../../packages/geometry/dist/index.js';
import { nearestOnPath, pointAlong } from '../../packages/geometry/dist/public/paths.js';
import { outlinePath } from '../../packages/geometry/dist/public/pattern.js';
import { containsPoint } from '../../packages/geometry/dist/public/regions.js';
import { median, rate, small, table } from './clock.js';
import { outlines } from './inputs.js';
import { pointOf } from './reference.js';

const distances = [6.35, 15.875, 25];

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

/** How near the cutting line comes to the outline, and how far the true trimmed parallel is from it. */
function judged(piece, d) {
  const outline = outlinePath(piece.outline),
    { path } = cuttingLine(piece);
  const length = pathLength(path);
  let inside = 0,
    uncovered = 0;
  for (let i = 0; i < 2000; i++)
    inside = Math.max(inside, d - nearestOnPath(outline, pointAlong(path, (length * i) / 2000)).distance);
  for (const segment of outline.segments)
    for (let i = 1; i < 200; i++) {
      const at = t =>
        segment.length === 2
          ? {
              x: segment[0].x + (segment[1].x - segment[0].x) * t,
              y: segment[0].y + (segment[1].y - segment[0].y) * t,
            }
          : pointOf(segment, t);
      const a = at(i / 200 - 1e-6),
        b = at(i / 200 + 1e-6),
        p = at(i / 200),
        n = Math.hypot(b.x - a.x, b.y - a.y);
      const q = { x: p.x + (d * (b.y - a.y)) / n, y: p.y - (d * (b.x - a.x)) / n };
      if (nearestOnPath(outline, q).distance < d - 1e-6 || containsPoint(outline, q)) continue;
      uncovered = Math.max(uncovered, nearestOnPath(path, q).distance);
    }
  return { inside, uncovered, count: path.segments.length };
}

/** Whole cutting lines, trimmed, with mitred corners. */
export function cuttingLines() {
  const cases = Object.entries(outlines()).flatMap(([name, ring]) =>
    distances.map(d => ({ name, d, piece: pieceOf(name, ring, d) })),
  );
  const figures = cases.map(({ name, d, piece }) => ({
    name,
    d,
    ...judged(piece, d),
    speed: rate(1, () => cuttingLine(piece), 20),
  }));
  const good = figures.filter(f => f.inside <= 0.005 && f.uncovered <= 0.005).length;
  const ms = figures.map(f => 1000 / f.speed);
  const worst = Object.keys(outlines()).map(name => {
    const own = figures.filter(f => f.name === name);
    return [
      name,
      small(Math.max(0, ...own.map(f => f.inside))),
      small(Math.max(...own.map(f => f.uncovered))),
      Math.max(...own.map(f => f.count)),
      median(own.map(f => 1000 / f.speed)).toFixed(3),
    ];
  });
  return table(
    `Cutting lines of 12 outlines at 6.35, 15.875 and 25 mm: ${good} of ${cases.length} within 0.005 mm; median ${median(ms).toFixed(3)} ms`,
    ['', 'inside the allowance, mm', 'true parallel uncovered, mm', 'most segments', 'ms'],
    worst,
  );
}
