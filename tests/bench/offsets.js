import { Bezier } from 'bezier-js';
import { offsetSegment } from '../../packages/geometry/dist/public/curves.js';
import { offsetOutline } from '../../packages/geometry/dist/public/cutting-line.js';
import { median, rate, small, table } from './clock.js';
import { outlines } from './inputs.js';
import { chordsOf, judgeOf, nearest, placesOn, trueParallel } from './offset-judge.js';
import { clipperPeer, paperPeer } from './offset-peers.js';

const distances = [6.35, -6.35, 15.875, -15.875, 25, -25];

/** As the trade has it, and the peers are asked for the same; past it each ends its corners in its own way. */
const mitres = { limit: 2.5, isCut: false };

/** The farthest that a true parallel lies from what a peer made of it, and that from the true one. */
function farthest({ blocks, places }, parts) {
  if (parts.length === 0) return Number.POSITIVE_INFINITY;
  const made = chordsOf(parts, 500);
  return Math.max(
    ...places.map(q => nearest(made, q).far),
    ...parts.flatMap(placesOn).map(p => nearest(blocks, p).far),
  );
}

/** The curved edges of twelve closed outlines by six distances: untrimmed parallels. */
export function parallels() {
  const cases = Object.values(outlines()).flatMap(ring =>
    distances.map(d => ({ d, curves: ring.filter(s => s.length === 4) })).filter(c => c.curves.length > 0),
  );
  const truths = cases.map(({ d, curves }) => curves.map(c => trueParallel(c, d)));
  const peers = {
    paperhinge: (c, d) => offsetSegment(c, d),
    'bezier-js': (c, d) => new Bezier(c).offset(-d).map(b => b.points),
  };
  const rows = Object.entries(peers).map(([name, offset]) => {
    const worst = cases.map(({ d, curves }, i) =>
      Math.max(...curves.map((c, k) => farthest(truths[i][k], offset(c, d)))),
    );
    const count = cases.map(({ d, curves }) => curves.reduce((n, c) => n + offset(c, d).length, 0));
    const speed = rate(cases.length, () => {
      for (const { d, curves } of cases) for (const c of curves) offset(c, d);
    });
    return { name, worst, count, speed };
  });
  return table(
    `Parallels of the curves of ${Object.keys(outlines()).length} outlines at 6.35, 15.875 and 25 mm on both sides, untrimmed: ${cases.length} cases`,
    [
      '',
      'within 0.005',
      'within 0.1',
      'median, mm',
      'worst, mm',
      'cubics, median',
      'most',
      'ms a case',
      'ours over theirs',
    ],
    rows.map(({ name, worst, count, speed }) => [
      name,
      worst.filter(w => w <= 0.005).length,
      worst.filter(w => w <= 0.1).length,
      small(median(worst)),
      small(Math.max(...worst)),
      median(count),
      Math.max(...count),
      (1000 / speed).toFixed(3),
      (rows[0].speed / speed).toFixed(2),
    ]),
  );
}

/** Twelve whole outlines by six distances, trimmed: how true, how complete, how many pieces, how fast. */
export function outlineOffsets() {
  const rings = Object.entries(outlines());
  const judges = rings.map(([, ring]) => judgeOf(ring, mitres));
  const ours = ring => ({
    offset: d => offsetOutline({ segments: ring }, d),
    loops: made => made.loops.map(l => l.path.segments),
  });
  const peers = {
    'paperhinge, names kept': ours,
    'paperjs-offset': paperPeer,
    'js-angusj-clipper, mitres, chords of 0.004 mm': clipperPeer(0.004, 'Miter'),
    'js-angusj-clipper, mitres, chords of 0.001 mm': clipperPeer(0.001, 'Miter'),
    'js-angusj-clipper, round, chords of 0.004 mm': clipperPeer(0.004, 'Round'),
  };
  const rows = Object.entries(peers).map(([name, peerOf]) => {
    const cases = rings.flatMap(([, ring], i) => {
      const { offset, loops } = peerOf(ring);
      return distances.map(d => ({ d, offset, loops, judge: judges[i] }));
    });
    // All cases to and fro before the first is timed: what an engine compiles meanwhile is no case's own work.
    rate(1, () => cases.map(({ d, offset }) => offset(d)), 300);
    const times = cases.map(({ d, offset }) => 1000 / rate(1, () => offset(d), 5));
    const figures = cases.map(({ d, offset, loops, judge }, i) => {
      const made = loops(offset(d));
      return { ...judge.judged(made, d), count: made.flat().length, ms: times[i] };
    });
    const worst = figures.map(f => Math.max(f.near, f.far, f.uncovered));
    return { name, figures, worst, ms: median(figures.map(f => f.ms)) };
  });
  return table(
    `Whole outlines, trimmed, by 6.35, 15.875 and 25 mm to both sides: ${rows[0].figures.length} cases; true within, by distance and by coverage`,
    [
      '',
      '0.005 mm',
      '0.02 mm',
      '0.1 mm',
      '0.005 mm but for corners',
      'too near, worst',
      'too far, worst',
      'uncovered, worst',
      'pieces, median',
      'most',
      'ms, median',
      'ms, worst',
      'ours over theirs',
    ],
    rows.map(({ name, figures, worst, ms }) => [
      name,
      worst.filter(w => w <= 0.005).length,
      worst.filter(w => w <= 0.02).length,
      worst.filter(w => w <= 0.1).length,
      figures.filter(f => f.parallels <= 0.005).length,
      small(Math.max(...figures.map(f => f.near))),
      small(Math.max(...figures.map(f => f.far))),
      small(Math.max(...figures.map(f => f.uncovered))),
      median(figures.map(f => f.count)),
      Math.max(...figures.map(f => f.count)),
      ms.toFixed(3),
      Math.max(...figures.map(f => f.ms)).toFixed(2),
      (ms / rows[0].ms).toFixed(2),
    ]),
  );
}
