import {
  type EdgeRef,
  type EdgeRole,
  edgeNamed,
  type Pattern,
  pieceNamed,
  pieceRoleOf,
  roleOf,
  type Seam,
} from '@paperhinge/geometry';
import { oncePer } from '@paperhinge/geometry/internal';
import { neighboursAtEnds } from '@paperhinge/geometry/measure';
import { holdsEdge } from '../edge-refs.js';
import { isLining } from './pieces.js';

/** Two seams that run on into one another across two others, as the sides of a yoke and of the skirt below it do. */
export interface SeamsThrough {
  readonly seams: readonly [Seam, Seam];
  readonly across: readonly [Seam, Seam];
}

/**
 * The sides, legs and shoulders that run on across seams which are sewn apart, one to either side of them. Across one
 * seam that takes in both sides, as a waist in the round, each is closed first instead.
 */
export const seamsThrough = oncePer((pattern: Pattern): readonly SeamsThrough[] => {
  const sewing = seamsByEdge(pattern);
  const ends = pattern.seams
    .filter(seam => isClosing(pattern, seam))
    .map(seam => ({ seam, ends: neighboursAtEnds(pattern, seam) }));
  return ends.flatMap((one, i) =>
    ends.slice(i + 1).flatMap(other => {
      const across = one.ends
        .flatMap(p => other.ends.flatMap(q => [crossed(sewing, p, q), crossed(sewing, p, turned(q))]))
        .find(found => found !== undefined);
      return across && !areLayers(pattern, one.seam, other.seam)
        ? [{ seams: [one.seam, other.seam] as const, across }]
        : [];
    }),
  );
});

const closingRoles: ReadonlySet<EdgeRole | undefined> = new Set<EdgeRole>([
  'side',
  'outseam',
  'inseam',
  'underarm',
  'shoulder',
]);

const isClosing = (pattern: Pattern, { a, b }: Seam): boolean =>
  [...a, ...b].every(r => closingRoles.has(roleOf(edgeNamed(pieceNamed(pattern, r.piece), r.edge))));

/** A facing's seam ends where the garment's does, but is sewn by itself; into a lining's it runs on. */
function areLayers(pattern: Pattern, one: Seam, other: Seam): boolean {
  const isWithin = ({ piece: name }: EdgeRef) => {
    const piece = pieceNamed(pattern, name);
    return pieceRoleOf(piece) === 'facing' || isLining(pattern, piece);
  };
  const [first, second] = [one, other].map(({ a, b }) => [...a, ...b].every(isWithin));
  return first !== second;
}

interface Ends {
  readonly first: EdgeRef;
  readonly second: EdgeRef;
}
const turned = ({ first, second }: Ends): Ends => ({ first: second, second: first });

/**
 * The two seams that sew the edges at one seam's end to those at another's; none where one seam sews both, as an
 * armhole does, or its twin on the other side where a piece is drawn whole.
 */
function crossed(sewing: SeamsAt, one: Ends, other: Ends): SeamsThrough['across'] | undefined {
  const first = seamsBetween(sewing, one.first, other.first),
    second = seamsBetween(sewing, one.second, other.second);
  if (first.length === 0 || second.length === 0 || first.some(seam => second.includes(seam)))
    return undefined;
  return [first[0]!, second[0]!];
}

/** The seams that sew an edge. */
type SeamsAt = (edge: EdgeRef) => readonly Seam[];

function seamsByEdge({ seams }: Pattern): SeamsAt {
  const at = new Map<string, Map<string, Set<Seam>>>();
  for (const seam of seams)
    for (const { piece, edge } of [...seam.a, ...seam.b]) {
      const edges = at.get(piece) ?? new Map<string, Set<Seam>>();
      at.set(piece, edges.set(edge, (edges.get(edge) ?? new Set<Seam>()).add(seam)));
    }
  return ({ piece, edge }) => [...(at.get(piece)?.get(edge) ?? [])];
}

const seamsBetween = (sewing: SeamsAt, one: EdgeRef, other: EdgeRef): readonly Seam[] =>
  sewing(one).filter(
    ({ a, b }) => (holdsEdge(a, one) && holdsEdge(b, other)) || (holdsEdge(b, one) && holdsEdge(a, other)),
  );
