import { apply, mirror } from '../../affine.js';
import { requireDistance, requirePoint } from '../../curve/sound.js';
import type { Finding } from '../../telling.js';

import { coincidenceTolerance } from '../../tolerance.js';
import { distance, type Point, subtract } from '../../vector.js';
import { finding, refusal } from './tellings.js';
import { pointFromDistances } from './triangulate.js';
import type { MeasuredPoint, MirroredPoint, PointByDistances } from './types.js';

/** Where each point lies, and what did not agree. */
export interface PlacedPoints {
  /** @throws PatternError `point-not-named` */
  readonly placeOf: (name: string) => Point;
  readonly findings: readonly Finding[];
}

/**
 * Points in the order in which they hang on one another, whatever the order they are given in.
 * @throws PatternError `point-not-named`, `points-in-a-round`, `mirror-line-missing`, and those of triangulation
 */
export function placedPoints(points: Readonly<Record<string, MeasuredPoint>>): PlacedPoints {
  const names = Object.keys(points);
  const places = new Map<string, Point>();
  const findings: Finding[] = [];
  const place = (name: string, waiting: readonly string[]): Point => {
    const known = places.get(name);
    if (known) return known;
    if (!Object.hasOwn(points, name)) throw refusal('point-not-named', { name, names });
    if (waiting.includes(name))
      throw refusal('points-in-a-round', { names: waiting.slice(waiting.indexOf(name)) });
    const at = placed(name, points[name]!, {
      of: other => place(other, [...waiting, name]),
      tell: found => findings.push(found),
    });
    places.set(name, at);
    return at;
  };
  for (const name of names) place(name, []);
  return { placeOf: name => place(name, []), findings };
}

interface Around {
  readonly of: (name: string) => Point;
  readonly tell: (found: Finding) => void;
}

function placed(name: string, point: MeasuredPoint, around: Around): Point {
  if ('from' in point) return byDistances(name, point, around);
  if ('mirror' in point) return mirrored(name, point, around);
  requirePoint(point);
  return point;
}

function byDistances(name: string, { from, towards }: PointByDistances, { of, tell }: Around): Point {
  const known = Object.entries(from).map(([other, mm]) => {
    requireDistance(mm, 'length');
    return { name: other, at: of(other), mm };
  });
  const { at, worst } = pointFromDistances(name, known, towards);
  if (worst)
    tell(finding(worst.grave ? 'warning' : 'note', 'point-measured-over', {}, { name, ...worst.facts }));
  return at;
}

function mirrored(name: string, { mirror: other, over }: MirroredPoint, { of }: Around): Point {
  const [a, b] = [of(over[0]), of(over[1])];
  if (distance(a, b) <= coincidenceTolerance) throw refusal('mirror-line-missing', { name });
  return apply(mirror(a, subtract(b, a)), of(other));
}
