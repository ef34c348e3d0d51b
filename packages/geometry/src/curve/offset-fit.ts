import { rootsInUnit } from '../polynomial.js';
import { restHair } from '../tolerance.js';
import { distance } from '../vector.js';
import { fitHandles, type HermiteFit, type Station } from './hermite-fit.js';
import { isParallel } from './offset-certificate.js';
import { directionAt, type Parallel, stationAt, stretchAt } from './parallel.js';
import { powerForm } from './power-form.js';
import { line, type Segment } from './segment.js';

/** Covers a stretch of a parallel that has no cusp within by few cubics, each proven to keep the tolerance. */
export function fitParallel(parallel: Parallel, t0: number, t1: number): readonly Segment[] {
  const sense = stretchAt(parallel, (t0 + t1) / 2) < 0 ? -1 : 1;
  const work: Work = { ...parallel, sense, inflections: rootsInUnit(parallel.turn), left: mostFits };
  return cover(work, { t0, t1, from: stationAt(work, t0, sense), to: stationAt(work, t1, sense) }, 0);
}

/** Halvings of a stretch; beyond this it is shorter than rounding. */
const deepest = 40;
/** Two handles do not follow more than this turn; in rad. */
const mostTurn = 2.2;
/** Share of the tolerance the fit aims at: the stations it is judged by miss its very largest distance. */
const aim = 0.9;

/**
 * Fits tried for one stretch. The longest curve of the library, 100 m, takes a few hundred; where rounding defeats the
 * proof (coordinates of 100 m and bends of a micrometre) the fits after these are taken as they come, unproven.
 */
const mostFits = 2000;

interface Work extends Parallel {
  /** −1 where the parallel runs against its curve, else 1. */
  readonly sense: number;
  readonly inflections: readonly number[];
  left: number;
}

/** A stretch of the parallel between two parameters of its curve, with its ends. */
interface Part {
  readonly t0: number;
  readonly t1: number;
  readonly from: Station;
  readonly to: Station;
}

function cover(p: Work, part: Part, depth: number): readonly Segment[] {
  const { t0, t1, from, to } = part;
  if (depth >= deepest) return [line(from.point, to.point)];
  const bends = bendsWithin(p, t0, t1);
  const turn = bends.length === 0 ? turnBetween(p, t0, t1) : 0;
  const probes = probesWithin(p, part, turn);
  if (depth > 0 && probes.length <= p.tolerance / 16) return [line(from.point, to.point)];
  let pieces = Math.ceil(Math.abs(turn) / mostTurn);
  if (pieces < 2) {
    const fit = fitHandles(from, to, probes.stations, p.tolerance);
    if (--p.left < 0 || (fit.deviation <= p.tolerance * aim && holds(p, fit, part))) return [fit.curve];
    // The error falls with the sixth power of the length.
    const ratio = fit.deviation / (p.tolerance * aim);
    pieces = Math.min(mostPieces, Math.max(2, Math.ceil(ratio ** (1 / 6) * 1.05)));
  }
  const stops = bends.length > 0 ? bends : evenStops(probes, part, pieces);
  const parts: Segment[] = [];
  let start = t0,
    first = from;
  for (let i = 0; i <= stops.length; i++) {
    const end = i === stops.length ? t1 : stops[i]!;
    const last = i === stops.length ? to : stationAt(p, end, p.sense);
    parts.push(...cover(p, { t0: start, t1: end, from: first, to: last }, depth + 1));
    start = end;
    first = last;
  }
  return parts;
}

const mostPieces = 6;
const holds = (p: Work, { curve }: HermiteFit, { t0, t1 }: Part): boolean =>
  isParallel(
    powerForm(curve),
    { curve: p.form, from: t0, to: t1 },
    { distance: p.d, sense: p.sense },
    p.tolerance,
  );

/** Inflections well within a stretch. */
function bendsWithin({ inflections }: Work, t0: number, t1: number): readonly number[] {
  const margin = (t1 - t0) * 0.02;
  return inflections.filter(t => t > t0 + margin && t < t1 - margin);
}

/** By how much a stretch without inflection turns, in rad, clockwise positive; it may be more than half a turn. */
function turnBetween(p: Parallel, t0: number, t1: number): number {
  const u = directionAt(p, t0),
    v = directionAt(p, t1);
  const angle = Math.atan2(u.x * v.y - u.y * v.x, u.x * v.x + u.y * v.y);
  const t = (t0 + t1) / 2;
  const clockwise = (p.turn[2] * t + p.turn[1]) * t + p.turn[0] >= 0;
  if (Math.abs(angle) < slightTurn) return angle;
  return clockwise && angle < 0 ? angle + 2 * Math.PI : !clockwise && angle > 0 ? angle - 2 * Math.PI : angle;
}

/** rad. Below this the sign of a turn is rounding, or an inflection at the very end. */
const slightTurn = 0.05;

interface Probes {
  readonly parameters: readonly number[];
  readonly stations: readonly Station[];
  /** mm, by chords. */
  readonly length: number;
}

/** Stations along a stretch: even in parameter, and where these lie unevenly also even in turn. */
function probesWithin(p: Work, part: Part, turn: number): Probes {
  const { t0, t1 } = part;
  const parameters: number[] = [];
  for (let i = 1; i < probes; i++) parameters.push(t0 + ((t1 - t0) * i) / probes);
  const plain = measured(p, parameters, part);
  if (Math.abs(turn) < slightTurn || plain.longest < (uneven * plain.length) / probes) return plain;
  for (let i = 1; i < probes; i++) {
    const t = turnedBy(p, t0, t1, (turn * i) / probes);
    if (t !== undefined) parameters.push(t);
  }
  return measured(
    p,
    parameters.sort((a, b) => a - b),
    part,
  );
}

const probes = 8;
/** Times the mean chord: a longer one shows a tight bend between two stations. */
const uneven = 2.5;

function measured(p: Work, parameters: readonly number[], { from, to }: Part) {
  const stations = parameters.map(t => stationAt(p, t, p.sense));
  let length = 0,
    longest = 0;
  for (let i = 0; i <= stations.length; i++) {
    const chord = distance((stations[i - 1] ?? from).point, (stations[i] ?? to).point);
    length += chord;
    longest = Math.max(longest, chord);
  }
  return { parameters, stations, length, longest };
}

/** From 0 at the start to 2 at the end: share of the length (by chords) plus share of the turn at each station. */
function progressOf({ stations, length }: Probes, { from, to }: Part): readonly number[] {
  const lengths = [0],
    turns = [0];
  for (let i = 0; i <= stations.length; i++) {
    const last = stations[i - 1] ?? from,
      next = stations[i] ?? to;
    lengths.push(lengths[i]! + distance(last.point, next.point));
    turns.push(turns[i]! + distance(last.direction, next.direction));
  }
  const turn = turns.at(-1)!;
  return stations.map((_, i) => {
    const share = lengths[i + 1]! / length;
    return share + (turn > slightTurn ? turns[i + 1]! / turn : share);
  });
}

/** Parameters that cut a stretch into pieces of like progress. */
function evenStops(probes: Probes, part: Part, pieces: number): readonly number[] {
  const { parameters } = probes,
    { t0, t1 } = part;
  const progress = progressOf(probes, part);
  const stops: number[] = [];
  let k = 0;
  for (let i = 1; i < pieces; i++) {
    const wanted = (2 * i) / pieces;
    while (k < progress.length && progress[k]! < wanted) k++;
    const before = k === 0 ? 0 : progress[k - 1]!,
      after = k === progress.length ? 2 : progress[k]!;
    const low = k === 0 ? t0 : parameters[k - 1]!,
      high = k === progress.length ? t1 : parameters[k]!;
    stops.push(low + ((high - low) * (wanted - before)) / (after - before));
  }
  return stops;
}

/** The parameter within a stretch by which the curve has turned by so much from its start. */
function turnedBy(p: Parallel, t0: number, t1: number, angle: number): number | undefined {
  const { x, y } = directionAt(p, t0);
  const c = Math.cos(angle),
    s = Math.sin(angle);
  const dx = x * c - y * s,
    dy = x * s + y * c;
  // Where B′ runs along (dx, dy): a quadratic, of whose roots one has the right sense.
  const f = p.form;
  const roots = quadraticRoots(
    3 * (f.x3 * dy - f.y3 * dx),
    2 * (f.x2 * dy - f.y2 * dx),
    f.x1 * dy - f.y1 * dx,
  );
  // Where the curve comes to rest every direction has a root: not within a hair of the ends.
  const hair = (t1 - t0) * restHair;
  return roots.find(
    t =>
      t > t0 + hair &&
      t < t1 - hair &&
      ((3 * f.x3 * t + 2 * f.x2) * t + f.x1) * dx + ((3 * f.y3 * t + 2 * f.y2) * t + f.y1) * dy > 0,
  );
}

function quadraticRoots(a: number, b: number, c: number): readonly number[] {
  const square = b * b - 4 * a * c;
  if (!(square >= 0)) return [];
  const q = -(b + (b < 0 ? -Math.sqrt(square) : Math.sqrt(square))) / 2;
  return [q / a, c / q];
}
