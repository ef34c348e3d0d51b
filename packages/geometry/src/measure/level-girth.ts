import { line, pointAt, type Segment } from '../curve/segment.js';
import { oncePer } from '../once-per.js';
import { boundsOfPath } from '../path/bounds.js';
import { intersectPaths } from '../path/intersect.js';
import { pathLength } from '../path/length.js';
import { nearestOnPath } from '../path/nearest.js';
import { type Path, pathOf } from '../path/path.js';
import { outlinePath, pathsOfPart, timesInGarment } from '../pattern/outline.js';
import type { Dart, OutlinePart, Pattern, Piece } from '../pattern/types.js';
import { containsPoint } from '../region/contains.js';
import { coincidenceTolerance } from '../tolerance.js';
import { add, distance, dot, type Point, scale, subtract, unit } from '../vector.js';
import { bodyPieces } from './body-pieces.js';
import { centreOf } from './centre.js';
import { besides } from './corner.js';
import { closesIntoTube } from './tube.js';

/**
 * The girth of the whole garment at each level, in mm, by the name of its level lines: what `levelAcross` gives, as
 * often as the piece stands in the garment, over all pieces that have a level of that name. Where the pieces of a
 * level close into a tube of their own (a sleeve, a trouser leg), the girth is that of one of the pair. Linings,
 * facings and other pieces made for an edge do not count. Names in pattern order.
 */
export function levelGirths(pattern: Pattern): Readonly<Record<string, number>> {
  const pieces = bodyPieces(pattern);
  const levels = new Set(pieces.flatMap(levelNames));
  return Object.fromEntries(
    [...levels].map(level => {
      const across = pieces
        .filter(piece => levelNames(piece).includes(level))
        .map(piece => ({ piece, ...levelAcross(piece, level) }));
      const ends = across.flatMap(({ piece, ends }) => ends.map(edges => ({ piece: piece.name, edges })));
      const tube = closesIntoTube(pattern, ends);
      return [level, across.reduce((sum, a) => sum + (tube ? 1 : timesInGarment(a.piece)) * a.lengthMm, 0)];
    }),
  );
}

/** The names of a piece's level lines, each once. */
export const levelNames = (piece: Piece): readonly string[] => [
  ...new Set(piece.lines.filter(l => l.kind === 'level').map(l => l.name)),
];

/** A level as it runs across one piece: the length of cloth in mm, and the edges that meet each of its ends. */
export interface LevelAcross {
  readonly lengthMm: number;
  readonly ends: readonly (readonly string[])[];
}

/**
 * Length of cloth across a piece at a level, in mm: the straight line of that part of the level line which lies at
 * the centre, run on to the far sides of the outline. Intakes of darts are left out: where the line runs through a
 * dart it is taken up again beyond it; where it runs out of a dart's mouth it follows the dart's seam to its end.
 */
export const levelAcross = (piece: Piece, level: string): LevelAcross =>
  levelsAcross(piece).get(level) ?? nowhere;

const levelsAcross = oncePer(
  (piece: Piece): ReadonlyMap<string, LevelAcross> =>
    new Map(levelNames(piece).map(level => [level, runAcross(piece, level)])),
);

function runAcross(piece: Piece, level: string): LevelAcross {
  const segment = segmentAtCentre(piece, level);
  if (!segment) return nowhere;
  const from = pointAt(segment, 0),
    to = pointAt(segment, 1);
  const direction = unit(subtract(to, from));
  const outline = outlinePath(piece.outline);
  const box = boundsOfPath(outline);
  const reach = distance(box.min, box.max) + distance(from, box.min);
  const middle = pointAt(segment, 0.5);
  const across = pathOf(
    line(subtract(middle, scale(direction, reach)), add(middle, scale(direction, reach))),
  );
  const stops = crossings(piece, across, outline);
  const inside = stops.slice(1).map((stop, i) => {
    const centre = add(middle, scale(direction, (stop.at + stops[i]!.at) / 2 - reach));
    return containsPoint(outline, centre);
  });
  const home = nearestStretch(stops, inside, reach);
  if (home === undefined) return nowhere;
  const after = cloth(piece, stops, inside, home, 1),
    before = cloth(piece, stops, inside, home, -1);
  const length = stops[home + 1]!.at - stops[home]!.at + before.length + after.length;
  const taken = internalIntakes(piece, across, direction, before.at, after.at);
  return { lengthMm: length - taken, ends: [before.edges, after.edges] };
}

const nowhere: LevelAcross = { lengthMm: 0, ends: [[], []] };

/** A place where the level crosses the outline, in mm along it, and the parts of the outline that it meets there. */
interface Stop {
  readonly at: number;
  readonly edges: readonly string[];
  readonly darts: readonly MetLeg[];
}

/** A leg of a dart, met by a level `fromApex` mm from the dart's apex. */
interface MetLeg {
  readonly dart: Dart;
  readonly legMm: number;
  readonly fromApex: number;
}

function crossings(piece: Piece, across: Path, outline: Path): readonly Stop[] {
  const stops: { at: number; edges: string[]; darts: MetLeg[] }[] = [];
  const ranges = partRanges(piece);
  const whole = ranges.at(-1)!.end;
  for (const { alongA, alongB } of intersectPaths(across, outline)) {
    const last = stops.at(-1);
    const stop =
      last && alongA - last.at <= coincidenceTolerance ? last : { at: alongA, edges: [], darts: [] };
    if (stop !== last) stops.push(stop);
    // The place where the outline closes is given as its start, and lies on its last part as well.
    for (const along of alongB <= coincidenceTolerance ? [alongB, whole] : [alongB])
      for (const { part, leg, start, end } of ranges) {
        if (along < start - coincidenceTolerance || along > end + coincidenceTolerance) continue;
        const fromApex = Math.max(0, leg === 0 ? end - along : along - start);
        if (part.type === 'edge') stop.edges.push(part.name);
        else if (part.type === 'dart') stop.darts.push({ dart: part, legMm: end - start, fromApex });
      }
  }
  return stops;
}

/** Where the edges and the legs of darts lie along the outline, in mm from its start. */
function partRanges(piece: Piece) {
  const ranges: { part: OutlinePart; leg?: number; start: number; end: number }[] = [];
  let along = 0;
  for (const part of piece.outline.parts)
    for (const [leg, path] of pathsOfPart(part).entries()) {
      const end = along + pathLength(path);
      ranges.push({ part, leg, start: along, end });
      along = end;
    }
  return ranges;
}

/** Index of the stretch within the cloth that holds, or lies nearest to, a place along the level. */
function nearestStretch(stops: readonly Stop[], inside: readonly boolean[], at: number): number | undefined {
  const away = (i: number) => Math.max(stops[i]!.at - at, at - stops[i + 1]!.at, 0);
  const within = inside.flatMap((isIn, i) => (isIn ? [i] : []));
  return within.toSorted((i, k) => away(i) - away(k))[0];
}

/** Cloth beyond the stretch `home`, one way along the level, and where on the level it ends. */
function cloth(piece: Piece, stops: readonly Stop[], inside: readonly boolean[], home: number, way: 1 | -1) {
  let length = 0;
  let edge = way === 1 ? home + 1 : home;
  for (;;) {
    const next = way === 1 ? edge : edge - 1;
    const here = stops[edge]!,
      beyond = stops[edge + way];
    if (!beyond || next < 0) break;
    if (inside[next]) length += Math.abs(beyond.at - here.at);
    else if (!here.darts.some(d => beyond.darts.some(e => e.dart === d.dart))) break;
    edge += way;
  }
  const { at, edges, darts } = stops[edge]!;
  const out = darts[0];
  if (!out) return { length, at, edges };
  // Out of a dart's mouth: along its seam to the edges on either side of it.
  const beside = [besides(piece.outline, out.dart, 'start'), besides(piece.outline, out.dart, 'end')];
  return { length: length + out.legMm - out.fromApex, at, edges: beside.map(part => part.name) };
}

/** What double-pointed darts within the piece take up of the level between two places on it. */
function internalIntakes(piece: Piece, across: Path, direction: Point, from: number, to: number): number {
  const origin = pointAt(across.segments[0]!, 0);
  let taken = 0;
  for (const { path } of piece.lines.filter(l => l.kind === 'dart')) {
    const cuts = intersectPaths(across, path)
      .map(c => c.alongA)
      .filter(a => a >= from && a <= to);
    cuts.slice(1).forEach((cut, i) => {
      const middle = add(origin, scale(direction, (cut + cuts[i]!) / 2));
      if (containsPoint(path, middle)) taken += cut - cuts[i]!;
    });
  }
  return taken;
}

/** That segment of a level (which a hinge may have broken) that lies nearest the centre of the piece. */
function segmentAtCentre(piece: Piece, level: string): Segment | undefined {
  const segments = piece.lines
    .filter(l => l.kind === 'level' && l.name === level)
    .flatMap(l => l.path.segments)
    .filter(s => distance(pointAt(s, 0), pointAt(s, 1)) > coincidenceTolerance);
  const centre = centreOf(piece);
  if (!centre || segments.length < 2) return segments[0];
  const [first] = centre.segments;
  const run = unit(subtract(pointAt(first!, 1), pointAt(first!, 0)));
  return segments
    .map(segment => ({
      segment,
      away: Math.min(...[0, 0.5, 1].map(t => nearestOnPath(centre, pointAt(segment, t)).distance)),
      // Of two that touch the centre alike, the one that runs squarer to it: the other is a bridge along it.
      along: Math.abs(dot(unit(subtract(pointAt(segment, 1), pointAt(segment, 0))), run)),
    }))
    .sort((p, q) => p.away - q.away || p.along - q.along)[0]?.segment;
}
