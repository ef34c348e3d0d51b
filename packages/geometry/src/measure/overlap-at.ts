import { line } from '../curve/segment.js';
import { oncePer } from '../once-per.js';
import { intersectPaths } from '../path/intersect.js';
import { pathOf } from '../path/path.js';
import { copiesInGarment } from '../pattern/copies.js';
import { edgeNamed } from '../pattern/outline.js';
import { isCentreLine, roleOf } from '../pattern/roles/roles.js';
import type { Fastening, FasteningKind, Pattern, Piece } from '../pattern/types.js';
import { distance, type Point } from '../vector.js';
import type { LevelAcross } from './level-across.js';

/**
 * mm of a level's cloth that lie on one another when the garment is buttoned: what each copy of a piece has beyond its
 * drawn centre line, up to an edge that buttons or is an opening by its role, or to the neck of a front that is wrapped
 * over; without such a line what the fastening
 * says of its overlap and underlap. A band that buttons at the fold it is laid double along lies there twice.
 */
export function overlapAt(pattern: Pattern, piece: Piece, { ends, places }: LevelAcross): number {
  const lapped = ends.flatMap((edges, end) => {
    const [from, to] = places;
    const edge = edges.find(name => closes(pattern, piece, name));
    if (edge === undefined || !from || !to) return [];
    const beyond = beyondCentre(piece, from, to, end);
    if (edgeNamed(piece, edge).kind === 'fold') return [doubled(piece, distance(from, to), beyond)];
    return beyond === undefined ? [saidOf(pattern, piece, edge)] : [beyond * copiesInGarment(piece)];
  });
  return lapped.reduce((sum, mm) => sum + mm, 0);
}

/** A band that is folded along the edge it buttons at: its inner layer, and what lies beyond the centre, else half of it. */
function doubled(piece: Piece, widthMm: number, beyond = widthMm / 2): number {
  return (widthMm + beyond) * (copiesInGarment(piece) / 2);
}

const lapping: ReadonlySet<FasteningKind> = new Set<FasteningKind>(['buttons', 'hooks', 'snaps']);

const fasteningsOn = oncePer((pattern: Pattern): readonly Fastening[] =>
  (pattern.fastenings ?? []).filter(f => lapping.has(f.kind)),
);

function closes(pattern: Pattern, piece: Piece, edge: string): boolean {
  const isFastened = fasteningsOn(pattern).some(f => f.along.piece === piece.name && f.along.edge === edge);
  const role = roleOf(edgeNamed(piece, edge));
  return isFastened || role === 'opening' || role === 'neck';
}

/** mm from the piece's drawn centre line to that end of the level; undefined where the level crosses no such line. */
function beyondCentre(piece: Piece, from: Point, to: Point, end: number): number | undefined {
  const across = pathOf(line(from, to));
  const crossed = piece.lines
    .filter(isCentreLine)
    .flatMap(centre => intersectPaths(across, centre.path))
    .map(({ alongA }) => alongA);
  if (crossed.length === 0) return undefined;
  return end === 0 ? Math.min(...crossed) : distance(from, to) - Math.max(...crossed);
}

const saidOf = (pattern: Pattern, piece: Piece, edge: string): number =>
  fasteningsOn(pattern)
    .filter(f => f.along.piece === piece.name && f.along.edge === edge)
    .reduce((most, { overlap = 0, underlap = 0 }) => Math.max(most, overlap + underlap), 0);
