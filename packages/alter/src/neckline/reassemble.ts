import {
  type Edge,
  edgeNames,
  joined,
  type OutlinePart,
  type Path,
  PatternError,
  type Piece,
  partsOfEdge,
  pathLength,
  reversedPath,
  subpath,
} from '@paperhinge/geometry';
import { carryNotches, type PartChange, type Reshaped } from '../edit/chains.js';
import { startingIn } from '../edit/meet.js';
import type { RecutHalf } from './shapes.js';

/** The name of the edge that an inset V adds. */
export const insetName = 'inset';

/** Puts a piece with a recut neck together again; notches on what is left keep their distance from the outer ends. */
export function reassembled(piece: Piece, neck: Edge, halves: readonly RecutHalf[]): Reshaped {
  const inset = halves.every(h => h.rest !== undefined);
  if (inset && edgeNames(piece).includes(insetName))
    throw new PatternError('name-taken', {
      message: `Piece "${piece.name}" already has an edge "${insetName}".`,
      remedy: 'Cut one inset only, or rename that edge.',
      where: { piece: piece.name, edge: insetName },
    });
  const changes = new Map<OutlinePart, { readonly parts: readonly Edge[]; readonly change: PartChange }>();
  for (const half of halves) changeAround(changes, half);
  changes.set(neck, inset ? besideInset(neck, halves) : replaced(neck, halves));
  const parts = piece.outline.parts.flatMap(
    (part): readonly OutlinePart[] => changes.get(part)?.parts ?? [part],
  );
  const { notches, findings } = carryNotches(piece, edge =>
    partsOfEdge(piece, edge).map(part => changes.get(part)?.change ?? unchanged(part)),
  );
  return { piece: { ...piece, outline: { parts }, notches }, findings };
}

const unchanged = (part: Edge): PartChange => {
  const length = pathLength(part.path);
  return { before: length, after: length, carry: at => at };
};

/** A path that leads outwards, in the outline's own direction. */
const clockwise = (half: RecutHalf, path: Path): Path => (half.frame.against ? reversedPath(path) : path);

/** The centre edge cut at the depth, the edge beyond the neck cut at the half width. */
function changeAround(
  changes: Map<OutlinePart, { readonly parts: readonly Edge[]; readonly change: PartChange }>,
  half: RecutHalf,
): void {
  const { centre, beyond, against, centrePoint } = half.frame;
  if (centre) {
    const length = pathLength(centre.path);
    const down = against ? centre.path : reversedPath(centre.path);
    const { depth } = half.frame;
    const cut = depth === 0 ? down : startingIn(subpath(down, depth, length), centrePoint);
    const path = against ? cut : reversedPath(cut);
    const carry = (at: number): number => (against ? at - depth : at);
    changes.set(centre, {
      parts: [{ ...centre, path }],
      change: { before: length, after: pathLength(path), carry },
    });
  }
  if (half.beyondBy !== 0) {
    const path = clockwise(half, half.beyondOut);
    changes.set(beyond, {
      parts: [{ ...beyond, path }],
      change: {
        before: pathLength(beyond.path),
        after: pathLength(path),
        carry: at => (against ? at : at + half.beyondBy),
      },
    });
  }
}

/** The whole neck replaced by the new line under its name; its notches go. */
function replaced(neck: Edge, halves: readonly RecutHalf[]) {
  const path = throughCentre(halves);
  const change: PartChange = {
    before: pathLength(neck.path),
    after: pathLength(path),
    carry: () => undefined,
  };
  return { parts: [{ ...neck, path }], change };
}

/**
 * The inset and what is left of the neck at its outer end, or at both: then the neck is still one edge of that name,
 * which the inset interrupts as a dart would.
 */
function besideInset(neck: Edge, halves: readonly RecutHalf[]) {
  const { opening: _, ...plain } = neck;
  const { start, end } = neck.corners;
  const lower = halves.find(h => h.frame.against),
    upper = halves.find(h => !h.frame.against);
  const atStart = start === undefined ? {} : { start },
    atEnd = end === undefined ? {} : { end };
  // An outer end keeps the corner rule of the neck's end; where the neck met the centre line the inset takes it over.
  const inset: Edge = {
    ...plain,
    name: insetName,
    path: throughCentre(halves),
    corners: { ...(lower ? {} : atStart), ...(upper ? {} : atEnd) },
  };
  const first = lower && { ...neck, path: clockwise(lower, lower.rest!), corners: atStart };
  const last = upper && { ...neck, path: clockwise(upper, upper.rest!), corners: atEnd };
  const length = pathLength(neck.path);
  const firstLength = first ? pathLength(first.path) : 0,
    lastLength = last ? pathLength(last.path) : 0;
  const carry = (at: number): number | undefined => {
    if (first && at <= firstLength) return at;
    return last && at >= length - lastLength ? at - length + lastLength + firstLength : undefined;
  };
  return {
    parts: [...(first ? [first] : []), inset, ...(last ? [last] : [])],
    change: { before: length, after: firstLength + lastLength, carry },
  };
}

/** The new line clockwise: one half, or both with a corner or a joint at the centre. */
function throughCentre(halves: readonly RecutHalf[]): Path {
  const paths = halves.map(h => clockwise(h, h.fresh));
  return paths.length === 1 ? paths[0]! : joined(...paths);
}
