import {
  at,
  type Dart,
  type EdgeRole,
  type Finding,
  type OutlinePart,
  type Path,
  type PatternError,
  type Piece,
  type PieceLine,
  type Point,
  pathLength,
  roleOf,
  type Segment,
} from '@paperhinge/geometry';
import { abs, max, min } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import {
  intersectPaths,
  nearestOnPath,
  pathEnd,
  pathStart,
  pointAlong,
  tangentAlong,
  transformedPath,
} from '@paperhinge/geometry/paths';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { add, cross, distance, rightOf, scale, subtract, translation } from '@paperhinge/geometry/plane';
import { containsPoint } from '@paperhinge/geometry/regions';
import { type Chain, chainsOf, chainThing, pieceOfChains, type Reshaped } from './chains.js';
import { withDartsRedrawn } from './dart-redrawn.js';
import { alongGrainTowards, grainOrVertical } from './grain.js';
import { reachOf, runOnBothWays } from './meet.js';
import { shearedTogether } from './shear.js';
import { finding, refusal } from './tellings.js';
import { requireSimple, tidied } from './tidy.js';

/** Moves the part of a piece away from its neck (or cap) by `by` mm towards it along the grain. See `shorten`. */
export function shortenAtLine(piece: Piece, name: string, by: number): Reshaped {
  const drawn = lineNamed(piece, name);
  const chains = chainsOf(piece);
  const cut = cutAlong(piece, drawn, chains);
  const { grain, findings } = grainOrVertical(piece);
  const stays = keptSide(chains, cut.crossings);
  // The first that the line crosses starts on one side of it and ends on the other.
  const first = cut.crossings[0]!.chain,
    { path } = chains[first]!;
  const keptSign = sideOf(cut.line, stays(first) ? pathStart(path) : pathEnd(path));
  const square = rightOf(tangentAlong(drawn.path, pathLength(drawn.path) / 2));
  const up = alongGrainTowards(piece, grain, at(0, 0), scale(square, keptSign));
  const shift = scale(up, by);
  const shifted = (path: Path): Path => transformedPath(path, translation(shift));
  const sheared = chains.map((chain, i): Chain => {
    const startStays = stays(i);
    const crossing = cut.crossings.find(c => c.chain === i);
    if (crossing && chain.part.type !== 'dart') {
      const whole = shearedTogether(chain, crossing.along, startStays, up, by);
      if (whole === undefined) throw beyond(piece, drawn, by, chain);
      return whole;
    }
    return startStays ? chain : { ...chain, path: shifted(chain.path) };
  });
  const crossed = new Set(cut.crossings.map(c => chains[c.chain]!.part));
  const redrawn = withDartsRedrawn(sheared, crossed, (point, i) => (stays(i) ? point : add(point, shift)));
  const carried = pieceOfChains(piece, redrawn);
  const move = (p: Point): Point => (sideOf(cut.line, p) === keptSign ? p : add(p, shift));
  const lines = piece.lines.map(l =>
    l === drawn ? { ...l, path: shifted(l.path) } : carriedByPoints(l, move),
  );
  const marks = piece.marks.map(mark => ({ ...mark, at: move(mark.at) }));
  const done = tidied(piece, { ...carried, piece: { ...carried.piece, lines, marks } });
  requireSimple(done.piece, () => beyond(piece, drawn, by));
  const told = [...crossed].flatMap(part => dartFinding(piece, part, done.piece));
  return { ...done, findings: [...findings, ...told, ...done.findings] };
}

function lineNamed(piece: Piece, name: string): PieceLine {
  const found = piece.lines.find(l => l.name === name);
  if (found) return found;
  const names = ['hem', ...piece.lines.map(l => l.name)];
  throw refusal('unknown-line', { piece: piece.name, name, names }, { piece: piece.name });
}

/** What became of a dart: crossed at a single leg its mouth is parted, and it takes in another amount. */
function dartFinding({ name, outline }: Piece, part: OutlinePart, after: Piece): readonly Finding[] {
  if (part.type !== 'dart') return [];
  const dart = { piece: name, dart: part.name };
  const wasMm = mouthMm(part),
    isMm = mouthMm(after.outline.parts[outline.parts.indexOf(part)] as Dart);
  return [
    abs(wasMm - isMm) > tolerances.coincidenceTolerance
      ? finding('warning', 'dart-mouth-parted', dart, { dart, wasMm, isMm })
      : finding('note', 'dart-redrawn', dart, { dart }),
  ];
}

const mouthMm = ({ legs }: Dart): number => distance(pathStart(legs[0]), pathEnd(legs[1]));

interface Crossing {
  readonly chain: number;
  /** mm from the chain's start. */
  readonly along: number;
}

/** The drawn line run on straight, and where it crosses the outline, in the outline's order. */
function cutAlong(piece: Piece, drawn: PieceLine, chains: readonly Chain[]) {
  const reach = reachOf(outlinePath(piece.outline)) + pathLength(drawn.path);
  const line = runOnBothWays(drawn.path, reach);
  const met = chains.flatMap((chain, i) =>
    intersectPaths(line, chain.path).map(m => ({ chain: i, along: m.alongB, onLine: m.alongA })),
  );
  // What the drawn line crosses, and where it ends within the piece, the first place its straight run meets.
  const from = reach + tolerances.joiningGap,
    to = reach + pathLength(drawn.path) - tolerances.joiningGap;
  const places = met.map(m => m.onLine);
  const before = max(-1, ...places.filter(place => place <= from)),
    after = min(3 * reach, ...places.filter(place => place >= to));
  const drawnOn = met.filter(m => m.onLine > from && m.onLine < to);
  const inside = (along: number): boolean =>
    containsPoint(outlinePath(piece.outline), pointAlong(drawn.path, along));
  const startsInside = inside(tolerances.joiningGap * 2),
    endsInside = inside(pathLength(drawn.path) - tolerances.joiningGap * 2);
  const crossings = [
    ...met.filter(m => startsInside && m.onLine === before),
    ...drawnOn,
    ...met.filter(m => endsInside && m.onLine === after),
  ].sort((a, b) => a.chain - b.chain || a.along - b.along);
  requireCleanCrossings(piece, drawn.name, chains, crossings);
  return { line, crossings };
}

function requireCleanCrossings(
  piece: Piece,
  name: string,
  chains: readonly Chain[],
  crossings: readonly Crossing[],
): void {
  const where = { piece: piece.name };
  const line = { ...where, line: name };
  const chainOf = (crossing: Crossing) => chainThing(piece, chains[crossing.chain]!);
  const atCorner = crossings.find(c => {
    const rest = pathLength(chains[c.chain]!.path) - c.along;
    return min(c.along, rest) <= tolerances.joiningGap;
  });
  if (atCorner) throw refusal('line-through-corner', { line, edge: chainOf(atCorner) }, where);
  if (crossings.length < 2 || crossings.length % 2 === 1) throw refusal('line-off-piece', { line }, where);
  const twice = crossings.find((c, i) => crossings[i + 1]?.chain === c.chain);
  if (twice) throw refusal('line-crosses-edge-twice', { line, edge: chainOf(twice) }, where);
}

/**
 * Which chains begin in the part that stays: the one with the neck or cap, else the one without the hem, else either,
 * since the piece comes out the same.
 */
function keptSide(chains: readonly Chain[], crossings: readonly Crossing[]) {
  const parity = (i: number): number => crossings.filter(c => c.chain < i).length % 2;
  const isWhole = (i: number): boolean => !crossings.some(c => c.chain === i);
  const ofRole = (...roles: readonly EdgeRole[]): number =>
    chains.findIndex(({ part }, i) => {
      const role = part.type === 'edge' ? roleOf(part) : undefined;
      return role !== undefined && roles.includes(role) && isWhole(i);
    });
  const top = ofRole('neck', 'cap'),
    hem = ofRole('hem', 'wrist');
  const wanted = top >= 0 ? parity(top) : hem >= 0 ? 1 - parity(hem) : 0;
  return (i: number): boolean => parity(i) === wanted;
}

/** On which side of a line a point lies: ±1. */
function sideOf(line: Path, p: Point): number {
  const { along, point } = nearestOnPath(line, p);
  return Math.sign(cross(tangentAlong(line, along), subtract(p, point))) || 1;
}

/** A line that lies across the cut is carried point by point: a straight grain line just changes its length. */
const carriedByPoints = (line: PieceLine, move: (p: Point) => Point): PieceLine => ({
  ...line,
  path: { segments: line.path.segments.map(s => s.map(move) as unknown as Segment) },
});

const beyond = (piece: Piece, line: PieceLine, by: number, chain?: Chain): PatternError =>
  refusal(
    'shorten-beyond-piece',
    {
      piece: { piece: piece.name },
      line: { line: line.name },
      byMm: by,
      ...(chain ? { meets: chainThing(piece, chain) } : {}),
    },
    { piece: piece.name, ...(chain?.part.type === 'edge' ? { edge: chain.part.name } : {}) },
  );
