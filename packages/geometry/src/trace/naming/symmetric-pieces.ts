import type { Piece } from '../../pattern/types.js';
import { type Candidate, edgesTaken } from './seam-candidates.js';
import type { SewingLine } from './sewing-lines.js';

/** mm and rad: lines and corners of a piece that is alike on both sides differ by less. */
const alikeMm = 0.5,
  alikeCorner = 0.03;

/**
 * Without the seams that are others seen in a mirror: where two pieces are alike on both their sides, as plain skirt
 * panels are, it does not matter which side is sewn to which. The right side of one is sewn to the left of the next.
 */
export function withoutMirrorImages(
  candidates: readonly Candidate[],
  lines: readonly SewingLine[],
): readonly Candidate[] {
  const twins = twinsOf(lines);
  return candidates.filter(({ a, b }) => {
    if (a.length > 1 || b.length > 1 || a[0]!.piece === b[0]!.piece) return true;
    const [one, other] = [twins.get(a[0]!), twins.get(b[0]!)];
    if (one && other) return one.isFirst !== other.isFirst;
    // A pair is sewn to both sides of a piece that is drawn whole: told of the one.
    const isPair = ({ piece }: SewingLine): boolean => piece.cutting.count > 1;
    return !((one && !one.isFirst && isPair(b[0]!)) || (other && !other.isFirst && isPair(a[0]!)));
  });
}

/**
 * Whether one side of a seam is the second of two closed lines that are alike, as the armholes of pieces drawn whole are,
 * or is one of these and the other side is cut once.
 */
export function isSecondOfTwo({ a, b }: Candidate, twins: Twins): boolean {
  return [
    [a, b],
    [b, a],
  ].some(([side, other]) => {
    const own = side!.map(line => twins.get(line));
    // Lines that have their twins beside them on the same side are one line round the body.
    const isOneOfTwo = side!.length > 1 && own.every(twin => twin && !side!.includes(twin.line));
    return isOneOfTwo && (!own[0]!.isFirst || other!.every(({ piece }) => piece.cutting.count === 1));
  });
}

/** The edges that a seam takes up: with those of the other side, where a pair is sewn to a piece that is drawn whole. */
export function takenWithTwins(one: Candidate, twins: Twins): readonly string[] {
  const isPair = (side: readonly SewingLine[]): boolean => side.every(({ piece }) => piece.cutting.count > 1);
  const others = [
    [one.a, one.b],
    [one.b, one.a],
  ].flatMap(([side, other]) =>
    isPair(other!) && !isPair(side!) ? side!.flatMap(line => twins.get(line)?.line ?? []) : [],
  );
  return [...edgesTaken(one), ...edgesTaken({ a: others, b: [] })];
}

type Twins = ReadonlyMap<SewingLine, Twin>;

/** A line's mirror image in its own piece, and whether the line itself is the one met first, clockwise. */
export interface Twin {
  readonly line: SewingLine;
  readonly isFirst: boolean;
}

/** Of every line that has one its twin on the other side of its piece. */
export function twinsOf(lines: readonly SewingLine[]): ReadonlyMap<SewingLine, Twin> {
  const pieces = new Map<Piece, SewingLine[]>();
  for (const line of lines) pieces.set(line.piece, [...(pieces.get(line.piece) ?? []), line]);
  return new Map([...pieces.values()].flatMap(twinsIn));
}

/**
 * By the way round backwards under which every line falls on one like it; where there are several, as in a rectangle, by
 * the one that leaves left and right beside one another.
 */
function twinsIn(ring: readonly SewingLine[]): readonly (readonly [SewingLine, Twin])[] {
  if (ring[0]!.onFold) return [];
  const count = ring.length;
  const ways = ring
    .map((_, sum) => sum)
    .filter(sum => ring.every((line, i) => isMirror(line, ring[(sum - i + count) % count]!)))
    .map(sum => {
      // Counted from the axis on, what is met later lies on the other side.
      const fromAxis = (i: number): number => (i + 2 * count - Math.floor(sum / 2) - 1) % count;
      return ring.flatMap((line, i) => {
        const to = (sum - i + count) % count;
        const twin = { line: ring[to]!, isFirst: fromAxis(i) < fromAxis(to) };
        return to === i ? [] : [[line, twin] as const];
      });
    })
    .filter(pairs => pairs.length > 0);
  const tilt = (pairs: (typeof ways)[number]): number =>
    Math.max(...pairs.map(([line, twin]) => Math.abs(line.middle.y - twin.line.middle.y)));
  return [...ways].sort((a, b) => tilt(a) - tilt(b))[0] ?? [];
}

function isMirror(a: SewingLine, b: SewingLine): boolean {
  const corner = (one: number | undefined, other: number | undefined): boolean =>
    one === undefined || other === undefined ? one === other : Math.abs(one - other) < alikeCorner;
  return (
    Math.abs(a.lengthMm - b.lengthMm) < alikeMm &&
    corner(a.corners[0], b.corners[1]) &&
    corner(a.corners[1], b.corners[0])
  );
}
