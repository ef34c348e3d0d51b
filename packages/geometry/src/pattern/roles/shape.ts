import { pathLength, pointAlong } from '../../path/length.js';
import { type Path, pathEnd, pathStart } from '../../path/path.js';
import { distance, dot, lerp, rightOf, subtract, unit } from '../../vector.js';
import { edgeNames, edgePath } from '../outline.js';
import type { EdgeRole, Piece } from '../types.js';

/** The roles of a piece's edges so far, by name. */
export type EdgeRoles = ReadonlyMap<string, EdgeRole>;

// Common practice, no source: shares of an edge's chord by which its middle lies off it.

/** A neck or armhole is hollowed at least this much. */
const hollow = 0.04;
/** A shoulder bows less than this. */
const plain = 0.08;
/** A cap rises at least this much. */
const rise = 0.1;
/** Lengths of a pair that is sewn together differ by less than this share. */
const pairs = 0.05;

/**
 * Roles that the shape of a piece tells of edges that nothing else told: the hollowed edge at the top of the centre is
 * a neck, the plain one after it a shoulder, the hollowed one after that an armhole; the edge that rises between two
 * equal seams opposite a hem is a cap.
 */
export function rolesByShape(piece: Piece, known: EdgeRoles): EdgeRoles {
  const ring = edgeNames(piece);
  if (ring.length < 4 || ring.every(name => known.has(name))) return known;
  const found =
    halfBodice(piece, ring, known) ?? wholeBodice(piece, ring, known) ?? sleeve(piece, ring, known);
  return found ? new Map([...found, ...known]) : known;
}

type Found = Map<string, EdgeRole>;

/** From the centre: neck, shoulder, armhole, sides, hem. */
function halfBodice(piece: Piece, ring: readonly string[], known: EdgeRoles): Found | undefined {
  const centres = ring.filter(name => known.get(name) === 'centre');
  if (centres.length !== 1) return undefined;
  const ways = [1, -1].flatMap(
    step => upperHalf(piece, turnedTo(ring, centres[0]!, step).slice(1), known) ?? [],
  );
  return ways.length === 1 ? ways[0] : undefined;
}

/** Between two shoulders alike: the neck; beyond each an armhole. */
function wholeBodice(piece: Piece, ring: readonly string[], known: EdgeRoles): Found | undefined {
  if (ring.length < 6) return undefined;
  for (const neck of ring) {
    const halves = [1, -1].map(step => turnedTo(ring, neck, step));
    const shoulders = halves.map(half => lengthOf(piece, half[1]!));
    if (!alike(shoulders[0]!, shoulders[1]!)) continue;
    const found = halves.map(half => upperHalf(piece, half.slice(0, Math.floor(ring.length / 2) + 1), known));
    if (found.every(half => half !== undefined)) return new Map(found.flatMap(half => [...half]));
  }
  return undefined;
}

function upperHalf(piece: Piece, names: readonly string[], known: EdgeRoles): Found | undefined {
  const [neck, shoulder, armhole, ...rest] = names;
  if (neck === undefined || shoulder === undefined || armhole === undefined) return undefined;
  const may = (name: string, role: EdgeRole): boolean => (known.get(name) ?? role) === role;
  if (!(may(neck, 'neck') && may(shoulder, 'shoulder') && may(armhole, 'armhole'))) return undefined;
  const [n, s, a] = [neck, shoulder, armhole].map(name => hollowness(edgePath(piece, name))) as [
    number,
    number,
    number,
  ];
  if (!(n > hollow && Math.abs(s) < plain && a > hollow)) return undefined;
  const hem = rest.findIndex(name => known.get(name) === 'hem' || known.get(name) === 'waist');
  const sides = rest.slice(0, Math.max(0, hem)).map((name): [string, EdgeRole] => [name, 'side']);
  return new Map([[neck, 'neck'], [shoulder, 'shoulder'], [armhole, 'armhole'], ...sides]);
}

/** Opposite the hem, between two seams of one length, an edge that rises away from it. */
function sleeve(piece: Piece, ring: readonly string[], known: EdgeRoles): Found | undefined {
  const hem = ring.find(name => known.get(name) === 'hem' || known.get(name) === 'wrist');
  if (hem === undefined || ring.length !== 4) return undefined;
  const [, right, cap, left] = turnedTo(ring, hem, 1) as [string, string, string, string];
  if ([right, cap, left].some(name => known.has(name) && !['cap', 'underarm'].includes(known.get(name)!)))
    return undefined;
  if (!alike(lengthOf(piece, left), lengthOf(piece, right))) return undefined;
  if (hollowness(edgePath(piece, cap)) > -rise) return undefined;
  return new Map([
    [cap, 'cap'],
    [left, 'underarm'],
    [right, 'underarm'],
  ]);
}

/** The ring from one name on, clockwise or the other way. */
function turnedTo(ring: readonly string[], name: string, step: number): readonly string[] {
  const at = ring.indexOf(name);
  return ring.map((_, i) => ring[(at + step * i + ring.length) % ring.length]!);
}

const lengthOf = (piece: Piece, name: string): number => pathLength(edgePath(piece, name));
const alike = (a: number, b: number): boolean => Math.abs(a - b) <= pairs * Math.max(a, b);

/** How far the middle lies inside its chord, as a share of the chord; negative where it bulges outwards. */
function hollowness(path: Path): number {
  const start = pathStart(path),
    end = pathEnd(path);
  const chord = distance(start, end);
  if (chord === 0) return 0;
  const off = subtract(pointAlong(path, pathLength(path) / 2), lerp(start, end, 1 / 2));
  return dot(off, rightOf(unit(subtract(end, start)))) / chord;
}
