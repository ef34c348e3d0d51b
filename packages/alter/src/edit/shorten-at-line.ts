import {
  add,
  containsPoint,
  cross,
  edgeNamed,
  intersectPaths,
  nearestOnPath,
  outlinePath,
  type Path,
  PatternError,
  type Piece,
  type PieceLine,
  type Point,
  pathLength,
  pointAlong,
  type Segment,
  scale,
  subtract,
  tangentAlong,
  tolerances,
  transformedPath,
  translation,
} from '@paperhinge/geometry';
import { type Chain, chainLabel, chainsOf, pieceOfChains, type Reshaped } from './chains.js';
import { alongGrainTowards, grainOrVertical } from './grain.js';
import { reachOf, runOnBothWays } from './meet.js';
import { shearedTogether } from './shear.js';
import { requireSimple, tidied } from './tidy.js';

/** Moves the part of a piece away from its neck (or cap) by `by` mm towards it along the grain. See `shorten`. */
export function shortenAtLine(piece: Piece, name: string, by: number): Reshaped {
  const drawn = lineNamed(piece, name);
  const chains = chainsOf(piece);
  const cut = cutAlong(piece, drawn, chains);
  const { grain, findings } = grainOrVertical(piece);
  const kept = keptSide(piece, chains, cut.crossings);
  const middle = pointAlong(drawn.path, pathLength(drawn.path) / 2);
  const up = alongGrainTowards(piece, grain, middle, kept.point);
  const shift = scale(up, by);
  const changed = chains.map((chain, i): Chain => {
    const startStays = kept.holds(i);
    const crossing = cut.crossings.find(c => c.chain === i);
    if (crossing) {
      const sheared = shearedTogether(chain, crossing.along, startStays, up, by);
      if (sheared === undefined) throw tooFar(piece, name, by, chain);
      return sheared;
    }
    return startStays ? chain : { ...chain, path: transformedPath(chain.path, translation(shift)) };
  });
  const carried = pieceOfChains(piece, changed);
  const keptSign = sideOf(cut.line, kept.point);
  const move = (p: Point): Point => (sideOf(cut.line, p) === keptSign ? p : add(p, shift));
  const lines = piece.lines.map(l => (l === drawn ? carriedWhole(l, shift) : carriedByPoints(l, move)));
  const marks = piece.marks.map(mark => ({ ...mark, at: move(mark.at) }));
  const done = tidied(piece, { ...carried, piece: { ...carried.piece, lines, marks } });
  const message = `Shortening "${piece.name}" by ${by.toFixed(1)} mm at "${name}" would make its outline cross itself.`;
  requireSimple(done.piece, 'shorten-beyond-piece', message, 'Move it by less.');
  return { ...done, findings: [...findings, ...done.findings] };
}

function lineNamed(piece: Piece, name: string): PieceLine {
  const found = piece.lines.find(l => l.name === name);
  if (found) return found;
  throw new PatternError('unknown-line', {
    message: `Piece "${piece.name}" has no line "${name}".`,
    remedy: `Use hem, or one of its lines: ${piece.lines.map(l => l.name).join(', ') || '(none)'}.`,
    where: { piece: piece.name },
  });
}

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
  const before = met.filter(m => m.onLine <= from).reduce((last, m) => Math.max(last, m.onLine), -1);
  const after = met.filter(m => m.onLine >= to).reduce((next, m) => Math.min(next, m.onLine), 3 * reach);
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
  const atCorner = crossings.find(c => {
    const rest = pathLength(chains[c.chain]!.path) - c.along;
    return Math.min(c.along, rest) <= tolerances.joiningGap;
  });
  if (atCorner)
    throw new PatternError('line-through-corner', {
      message: `The line "${name}" runs through the end of ${chainLabel(chains[atCorner.chain]!)}, so that it cannot be sheared there.`,
      remedy: 'Draw the line a little away from that corner.',
      where,
    });
  if (crossings.length < 2 || crossings.length % 2 === 1)
    throw new PatternError('line-off-piece', {
      message: `The line "${name}" does not part the piece "${piece.name}" in two.`,
      remedy: 'Draw it across the whole piece.',
      where,
    });
  const twice = crossings.find((c, i) => crossings[i + 1]?.chain === c.chain);
  if (twice)
    throw new PatternError('line-crosses-edge-twice', {
      message: `The line "${name}" crosses ${chainLabel(chains[twice.chain]!)} twice.`,
      remedy: 'Draw the line where it crosses each edge once.',
      where,
    });
}

/** Which chains begin in the part that stays: the one with the neck or cap, else the one without the hem. */
function keptSide(piece: Piece, chains: readonly Chain[], crossings: readonly Crossing[]) {
  const parity = (i: number): number => crossings.filter(c => c.chain < i).length % 2;
  const named = (test: (name: string) => boolean): number =>
    chains.findIndex(
      (c, i) => c.part.type === 'edge' && test(c.part.name) && !crossings.some(x => x.chain === i),
    );
  const top = [named(n => n === 'neck' || n === 'cap'), named(n => /neck|\bcap\b/i.test(n))].find(
    i => i >= 0,
  );
  const hem = named(n => n === 'hem' || edgeNamed(piece, n).kind === 'hem');
  const chain = top ?? hem;
  if (chain === -1)
    throw new PatternError('no-neck-no-hem', {
      message: `It is not clear which part of "${piece.name}" stays: it has neither neck, cap nor hem on one side of the line.`,
      remedy: 'Name its upper edge neck or cap, or its lower one hem.',
      where: { piece: piece.name },
    });
  const wanted = top === undefined ? 1 - parity(chain) : parity(chain);
  const holds = (i: number): boolean => parity(i) === wanted;
  const whole = chains.filter((_, i) => holds(i) && !crossings.some(c => c.chain === i));
  const longest = whole.reduce<Chain | undefined>(
    (best, c) => (best && pathLength(best.path) >= pathLength(c.path) ? best : c),
    undefined,
  );
  const seen = top === undefined ? (longest ?? chains[chain]!) : chains[chain]!;
  return { holds, point: pointAlong(seen.path, pathLength(seen.path) / 2) };
}

/** On which side of a line a point lies: ±1. */
function sideOf(line: Path, p: Point): number {
  const { along, point } = nearestOnPath(line, p);
  return Math.sign(cross(tangentAlong(line, along), subtract(p, point))) || 1;
}

const carriedWhole = (line: PieceLine, shift: Point): PieceLine => ({
  ...line,
  path: transformedPath(line.path, translation(shift)),
});

/** A line that lies across the cut is carried point by point: a straight grain line just changes its length. */
const carriedByPoints = (line: PieceLine, move: (p: Point) => Point): PieceLine => ({
  ...line,
  path: { segments: line.path.segments.map(s => s.map(move) as unknown as Segment) },
});

const tooFar = (piece: Piece, name: string, by: number, chain: Chain): PatternError =>
  new PatternError('shorten-beyond-piece', {
    message: `Shortening "${piece.name}" by ${by.toFixed(1)} mm at "${name}" takes more than ${chainLabel(chain)} has above the line.`,
    remedy: 'Shorten by less, or at a lower line.',
    where: { piece: piece.name, ...(chain.part.type === 'edge' ? { edge: chain.part.name } : {}) },
  });
