import { hasEdge } from '@paperhinge/alter/fit';
import {
  type EdgeRef,
  edgeNames,
  edgePath,
  type Finding,
  type Pattern,
  pathLength,
  pieceNamed,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { lengthInGarment } from '@paperhinge/geometry/measure';
import { pointAlong } from '@paperhinge/geometry/paths';
import { distance } from '@paperhinge/geometry/plane';
import { finding } from './tellings.js';

/**
 * What a band, facing, lining or stay was made for: its edges, how long they were in the garment, in mm, and of each
 * its shape.
 */
export interface MadeFor {
  readonly piece: string;
  readonly edges: readonly EdgeRef[];
  readonly lengthMm: number;
  readonly shapes: readonly EdgeShape[];
}

/** mm: the length of an edge as drawn, and how far places spread evenly along it lie from its two ends. */
interface EdgeShape {
  readonly lengthMm: number;
  readonly chordsMm: readonly number[];
}

/** What every piece made for edges was made for, as those edges are now. */
export const madeForNow = (pattern: Pattern): readonly MadeFor[] =>
  pattern.pieces.flatMap(piece =>
    piece.madeFor && piece.madeFor.length > 0
      ? [
          {
            piece: piece.name,
            edges: piece.madeFor,
            lengthMm: lengthOf(pattern, piece.madeFor) ?? Number.NaN,
            shapes: piece.madeFor.filter(ref => hasEdge(pattern, ref)).map(ref => shapeOf(pattern, ref)),
          },
        ]
      : [],
  );

/**
 * What pieces were made for, carried over a step: a piece that the step drafted (again) is made for the edges as
 * they are now; any other still for what its edges were, under the names they have now.
 */
export function madeForAfter(
  made: readonly MadeFor[],
  pattern: Pattern,
  drafted: readonly string[],
): readonly MadeFor[] {
  return madeForNow(pattern).map(now => {
    const before = made.find(m => m.piece === now.piece);
    return before && !drafted.includes(now.piece)
      ? { ...now, lengthMm: before.lengthMm, shapes: before.shapes }
      : now;
  });
}

/**
 * Pieces whose edges are no longer as long as those they were made for, which will not fit; and those cut to the shape
 * of their edges, where that alone changed.
 */
export const outgrown = (pattern: Pattern, made: readonly MadeFor[]): readonly Finding[] =>
  made.flatMap(madeFor => outgrownBy(pattern, madeFor) ?? []);

function outgrownBy(pattern: Pattern, madeFor: MadeFor): Finding | undefined {
  const { piece, edges, lengthMm } = madeFor;
  const now = lengthOf(pattern, edges);
  const where = { piece };
  if (now === undefined) return finding('fault', 'made-for-edge-gone', where, { piece, edges });
  const differenceMm = now - lengthMm;
  if (Number.isNaN(differenceMm)) return undefined;
  if (Math.abs(differenceMm) > tolerances.seamTolerance) {
    const facts = { piece, edges, madeForMm: lengthMm, nowMm: now, differenceMm };
    return finding('fault', 'made-for-edge-changed', where, facts);
  }
  const offMm = offShape(pattern, madeFor);
  if (offMm <= tolerances.seamTolerance) return undefined;
  return finding('warning', 'made-for-edge-reshaped', where, { piece, edges, offMm });
}

/** Whole-garment length in mm of edges that are all there. */
function lengthOf(pattern: Pattern, edges: readonly EdgeRef[]): number | undefined {
  const there = edges.every(ref => hasEdge(pattern, ref));
  return there ? edges.reduce((sum, ref) => sum + lengthInGarment(pattern, ref), 0) : undefined;
}

/** Eight stretches show a bend at one place as well as a new curve. */
const stretches = 8;

function shapeOf(pattern: Pattern, { piece, edge }: EdgeRef): EdgeShape {
  const path = edgePath(pieceNamed(pattern, piece), edge);
  const lengthMm = pathLength(path);
  const places = Array.from({ length: stretches + 1 }, (_, i) =>
    pointAlong(path, (lengthMm * i) / stretches),
  );
  return {
    lengthMm,
    chordsMm: [places[0]!, places[stretches]!].flatMap(end => places.map(place => distance(end, place))),
  };
}

/** mm by which chords of the edges that a piece was cut to the shape of changed; 0 for a straight piece. */
function offShape(pattern: Pattern, { piece, edges, shapes }: MadeFor): number {
  const own = edgeNames(pieceNamed(pattern, piece));
  // A facing has its edges' names, a stay has them as its outer line.
  if (!own.includes('outer') && !edges.some(ref => own.includes(ref.edge))) return 0;
  const off = edges.flatMap((ref, i): readonly number[] => {
    const now = shapeOf(pattern, ref),
      then = shapes[i];
    // Twice as long as drawn: the piece was unfolded, and the half is as it was.
    if (!then || Math.abs(now.lengthMm - then.lengthMm) > tolerances.seamTolerance) return [];
    return now.chordsMm.map((chord, k) => Math.abs(chord - then.chordsMm[k]!));
  });
  return Math.max(0, ...off);
}
