import { Bezier } from 'bezier-js';
import * as flo from 'flo-bezier3';
import paper from 'paper/dist/paper-core.js';
import { parameterAtLength, pointAt, segmentLength } from '../../packages/geometry/dist/public/curves.js';
import { median, per, rate, small, table } from './clock.js';
import { garmentCubics, nastyCubics } from './inputs.js';
import { referenceLength, referencePoint } from './reference.js';

const garment = garmentCubics();
const curves = [...garment, ...nastyCubics];
const asPaper = ([p, q, r, s]) =>
  new paper.Curve([p.x, p.y], [q.x - p.x, q.y - p.y], [r.x - s.x, r.y - s.y], [s.x, s.y]);

const asPairs = curve => curve.map(p => [p.x, p.y]);

export function arcLength() {
  const truth = curves.map(c => referenceLength(c));
  const papers = curves.map(asPaper),
    beziers = curves.map(c => new Bezier(c)),
    pairs = curves.map(asPairs);
  const peers = {
    paperhinge: { length: i => segmentLength(curves[i]) },
    // A paper curve keeps its length; it is made to forget it, so that the work is the same.
    paper: {
      length: i => {
        papers[i]._length = null;
        return papers[i].getLength();
      },
    },
    'bezier-js': { length: i => beziers[i].length() },
    'flo-bezier3': { length: i => flo.length([0, 1], pairs[i]) },
  };
  const rows = Object.entries(peers).map(([name, { length }]) => {
    const errors = curves.map((_, i) => Math.abs(length(i) - truth[i]));
    const speed = rate(curves.length * 20, () => {
      for (let k = 0; k < 20; k++) for (let i = 0; i < curves.length; i++) length(i);
    });
    return { name, errors, speed };
  });
  return table(
    'Arc length: 240 garment curves, 12 nasty; error in mm',
    ['', 'median', 'worst garment', 'worst nasty', 'curves', 'ours over theirs'],
    rows.map(({ name, errors, speed }) => [
      name,
      small(median(errors)),
      small(Math.max(...errors.slice(0, 240))),
      small(Math.max(...errors.slice(240))),
      per(speed),
      (rows[0].speed / speed).toFixed(2),
    ]),
  );
}

export function pointAtLength() {
  const shares = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9];
  const whole = curves.map(c => referenceLength(c));
  const truth = curves.map(c => shares.map(k => referencePoint(c, k)));
  const papers = curves.map(asPaper);
  const pairs = curves.map(asPairs);
  const look = curves.map(c => new Bezier(c).getLUT(1000));
  const peers = {
    paperhinge: (i, length) => pointAt(curves[i], parameterAtLength(curves[i], length)),
    paper: (i, length) => papers[i].getPointAt(length),
    'bezier-js, table of 1000': (i, length) => alongTable(look[i], length),
    'flo-bezier3': (i, length) => {
      const [x, y] = flo.evaluate(pairs[i], flo.getTAtLength(pairs[i], length));
      return { x, y };
    },
  };
  const rows = Object.entries(peers).map(([name, point]) => {
    const errors = curves.map((_, i) =>
      Math.max(...shares.map((k, j) => distance(point(i, whole[i] * k), truth[i][j]))),
    );
    const speed = rate(curves.length * 9, () => {
      for (let i = 0; i < curves.length; i++) for (const k of shares) point(i, whole[i] * k);
    });
    return { name, errors, speed };
  });
  return table(
    'Point at an arc length: nine on each curve; distance from the true point in mm',
    ['', 'median', 'worst garment', 'worst nasty', 'points', 'ours over theirs'],
    rows.map(({ name, errors, speed }) => [
      name,
      small(median(errors)),
      small(Math.max(...errors.slice(0, 240))),
      small(Math.max(...errors.slice(240))),
      per(speed),
      (rows[0].speed / speed).toFixed(2),
    ]),
  );
}

const distance = (p, q) => (p ? Math.hypot(p.x - q.x, p.y - q.y) : Number.POSITIVE_INFINITY);

function alongTable(points, length) {
  let rest = length;
  for (let i = 1; i < points.length; i++) {
    const step = distance(points[i - 1], points[i]);
    if (rest <= step) {
      const k = rest / step;
      return {
        x: points[i - 1].x + (points[i].x - points[i - 1].x) * k,
        y: points[i - 1].y + (points[i].y - points[i - 1].y) * k,
      };
    }
    rest -= step;
  }
  return points.at(-1);
}
