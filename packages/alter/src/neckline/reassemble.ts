import {
  type Edge,
  edgeNames,
  type OutlinePart,
  type Path,
  type Piece,
  pathLength,
} from '@paperhinge/geometry';
import { joined, reversedPath, subpath } from '@paperhinge/geometry/paths';
import { carriedNotches, edgesBecame, keptWhole, type PartChange, shifted } from '../became/parts.js';
import type { Reshaped } from '../moved-edges/chains.js';
import { startingIn } from '../moved-edges/meet.js';
import type { RecutHalf } from './shapes.js';
import { refusal } from './tellings.js';

/** The name of the edge that an inset V adds. */
const insetName = 'inset';

/** Puts a piece with a recut neck together again; notches on what is left keep their distance from the outer ends. */
export function reassembled(piece: Piece, neck: Edge, halves: readonly RecutHalf[]): Reshaped {
  const inset = halves.every(h => h.rest !== undefined);
  if (inset && edgeNames(piece).includes(insetName))
    throw refusal(
      'name-taken',
      { edge: { piece: piece.name, edge: insetName } },
      { piece: piece.name, edge: insetName },
    );
  const changes = new Map<OutlinePart, { readonly parts: readonly Edge[]; readonly change: PartChange }>();
  for (const half of halves) changeAround(changes, half);
  changes.set(neck, inset ? besideInset(neck, halves) : replaced(neck, halves));
  const parts = piece.outline.parts.flatMap(
    (part): readonly OutlinePart[] => changes.get(part)?.parts ?? [part],
  );
  const became = {
    edges: edgesBecame(piece, edgeNames(piece), part => changes.get(part)?.change),
    things: [],
  };
  const notches = carriedNotches(piece, became);
  return { piece: { ...piece, outline: { parts }, notches }, became, findings: [] };
}

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
    const kept = shifted(keptWhole(length), against ? -depth : 0);
    changes.set(centre, {
      parts: [{ ...centre, path }],
      change: { before: length, after: pathLength(path), kept },
    });
  }
  if (half.beyondBy !== 0) {
    const path = clockwise(half, half.beyondOut);
    changes.set(beyond, {
      parts: [{ ...beyond, path }],
      change: {
        before: pathLength(beyond.path),
        after: pathLength(path),
        kept: shifted(keptWhole(pathLength(beyond.path)), against ? 0 : half.beyondBy),
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
    kept: 'redrawn',
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
  const atFirst = { from: 0, to: firstLength, by: 0 },
    atLast = { from: length - lastLength, to: length, by: firstLength + lastLength - length };
  const kept = [...(first ? [atFirst] : []), ...(last ? [atLast] : [])];
  return {
    parts: [...(first ? [first] : []), inset, ...(last ? [last] : [])],
    change: { before: length, after: firstLength + lastLength, kept },
  };
}

/** The new line clockwise: one half, or both with a corner or a joint at the centre. */
function throughCentre(halves: readonly RecutHalf[]): Path {
  const paths = halves.map(h => clockwise(h, h.fresh));
  return paths.length === 1 ? paths[0]! : joined(...paths);
}
