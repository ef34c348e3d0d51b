import { Bezier } from 'bezier-js';
import * as flo from 'flo-bezier3';
import paper from 'paper/dist/paper-core.js';
import { intersectSegments, selfCrossing } from '../../packages/geometry/dist/public/curves.js';
import { per, rate, small, table } from './clock.js';
import { loops, pairs } from './inputs.js';
import { pointOf, referenceCrossings } from './reference.js';

const asPaper = ([p, q, r, s]) =>
  new paper.Curve([p.x, p.y], [q.x - p.x, q.y - p.y], [r.x - s.x, r.y - s.y], [s.x, s.y]);
const asPairs = curve => curve.map(p => [p.x, p.y]);
const distance = (p, q) => Math.hypot(p.x - q.x, p.y - q.y);

/** Counts what a peer missed, doubled and invented, and its worst distance from a true crossing. */
function judged(found, truth) {
  const score = { missed: 0, doubled: 0, invented: 0, worst: 0 };
  found.forEach((points, i) => {
    const hits = truth[i].map(() => 0);
    for (const p of points) {
      const near = truth[i].map(t => distance(p, t.point));
      const k = near.indexOf(Math.min(...near));
      if (k < 0 || near[k] > 0.05) score.invented++;
      else {
        hits[k]++;
        score.worst = Math.max(score.worst, near[k]);
      }
    }
    score.missed += hits.filter(h => h === 0).length;
    score.doubled += hits.reduce((sum, h) => sum + Math.max(0, h - 1), 0);
  });
  return score;
}

function rowsOf(peers, count, truth) {
  const rows = Object.entries(peers).map(([name, { find, run, window }]) => ({
    name,
    ...judged(
      Array.from({ length: count }, (_, i) => find(i)),
      truth,
    ),
    speed: rate(
      count,
      () => {
        for (let i = 0; i < count; i++) run(i);
      },
      window,
    ),
  }));
  return rows.map(r => [
    r.name,
    r.missed,
    r.doubled,
    r.invented,
    small(r.worst),
    per(r.speed),
    (rows[0].speed / r.speed).toFixed(2),
  ]);
}
const head = what => ['', 'missed', 'doubled', 'invented', 'worst, mm', what, 'ours over theirs'];

export function curveByCurve() {
  const all = pairs();
  const truth = all.map(([a, b]) => referenceCrossings(a, b));
  const papers = all.map(([a, b]) => [asPaper(a), asPaper(b)]),
    beziers = all.map(([a, b]) => [new Bezier(a), new Bezier(b)]);
  const ours = i => intersectSegments(all[i][0], all[i][1]);
  const theirs = i => papers[i][0].getIntersections(papers[i][1]);
  const pairsOf = all.map(([a, b]) => [asPairs(a), asPairs(b)]);
  const exact = i => flo.bezierBezierIntersection(pairsOf[i][0], pairsOf[i][1]);
  const js = i => beziers[i][0].intersects(beziers[i][1], 0.01);
  const rows = rowsOf(
    {
      paperhinge: { find: i => ours(i).map(m => m.point), run: ours },
      paper: { find: i => theirs(i).map(l => l.point), run: theirs },
      'bezier-js': {
        find: i => js(i).map(x => pointOf(all[i][0], Number(x.split('/')[0]))),
        run: js,
        window: 20,
      },
      'flo-bezier3': { find: i => exact(i).map(x => ({ x: x.p[0], y: x.p[1] })), run: exact },
    },
    all.length,
    truth,
  );
  const crossings = truth.reduce((sum, t) => sum + t.length, 0);
  return table(`Curve by curve: 500 pairs, ${crossings} crossings`, head('pairs'), rows);
}

export function selfCrossings() {
  const all = loops();
  const truth = all.map(c => referenceCrossings(c));
  const papers = all.map(asPaper);
  const ours = i => selfCrossing(all[i]);
  const theirs = i => papers[i].getIntersections(null);
  const pairsOf = all.map(asPairs);
  const exact = i => flo.bezierSelfIntersection(pairsOf[i]);
  const rows = rowsOf(
    {
      paperhinge: { find: i => (ours(i) ? [ours(i).point] : []), run: ours },
      paper: { find: i => theirs(i).map(l => l.point), run: theirs },
      'flo-bezier3': {
        find: i => (exact(i).length > 0 ? [pointOf(all[i], exact(i)[0])] : []),
        run: exact,
      },
    },
    all.length,
    truth,
  );
  return table(
    `Self-crossing: 200 cubics, ${truth.reduce((n, t) => n + t.length, 0)} loops`,
    head('curves'),
    rows,
  );
}

/** Touches, shared ends and near misses: how many meetings each finds, beside how many there are. */
export function touches() {
  const at = (x, y) => ({ x, y });
  const arch = [at(0, 0), at(0, 100), at(100, 100), at(100, 0)];
  const cup = dy => [at(0, 150 + dy), at(0, 50 + dy), at(100, 50 + dy), at(100, 150 + dy)];
  const level = dy => [at(0, 75 + dy), at(100 / 3, 75 + dy), at(200 / 3, 75 + dy), at(100, 75 + dy)];
  const cases = [
    ['two curves touch', arch, cup(0), 1],
    ['a line touches', arch, level(0), 1],
    ['overlap of 1 um', arch, cup(-1e-3), 2],
    ['gap of 1 um', arch, cup(1e-3), 0],
    ['overlap of 1 nm', arch, cup(-1e-6), 2],
    ['gap of 1 nm', arch, cup(1e-6), 0],
    ['ends shared, one crossing more', arch, [at(100, 0), at(60, 30), at(60, 60), at(140, 20)], 2],
    ['end on the other', arch, [at(50, 75), at(50, 100), at(60, 140), at(80, 200)], 1],
    ['ends run on smoothly', arch, [at(100, 0), at(100, -50), at(150, -80), at(200, -80)], 1],
  ];
  const count = {
    paperhinge: (a, b) => intersectSegments(a, b).length,
    paper: (a, b) => asPaper(a).getIntersections(asPaper(b)).length,
    'flo-bezier3': (a, b) => flo.bezierBezierIntersection(asPairs(a), asPairs(b)).length,
  };
  return table(
    'Touches, ends and near misses: meetings found',
    ['', 'true', ...Object.keys(count)],
    cases.map(([name, a, b, n]) => [name, n, ...Object.values(count).map(f => f(a, b))]),
  );
}
