import type { Piece } from '@paperhinge/geometry';
import { segmentLength, tangentAt } from '@paperhinge/geometry/curves';
import { abs, oncePer } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { type PlaceOnEdge, pathsOfPart } from '@paperhinge/geometry/pattern';
import { angleBetween } from '@paperhinge/geometry/plane';
import { partOffsets } from '../hinge/ring.js';

/** A corner, by where it lies on the edge that comes and on the one that goes: within an edge one place, twice. */
export type SharpCorner = readonly [PlaceOnEdge, PlaceOnEdge];

/**
 * The corners over `cornerTurn` within a piece's edges and where two meet: those that are sharp enough to be meant.
 * What comes square to a fold runs straight on in the garment.
 */
export const sharpCorners: (piece: Piece) => readonly SharpCorner[] = /* @__PURE__ */ oncePer(
  (piece: Piece) => {
    const offsets = partOffsets(piece);
    const runs = piece.outline.parts.flatMap(part => {
      let to = offsets.get(part as never) ?? 0;
      return pathsOfPart(part)
        .flatMap(path => path.segments)
        .filter(segment => segmentLength(segment) > tolerances.joiningGap)
        .map(segment => {
          const from = to;
          to += segmentLength(segment);
          return { part, segment, from, to, isFold: part.type === 'edge' && part.kind === 'fold' };
        });
    });
    return runs.flatMap((run, i): readonly SharpCorner[] => {
      const next = runs[(i + 1) % runs.length]!;
      if (run.part.type !== 'edge' || next.part.type !== 'edge') return [];
      const turn = angleBetween(tangentAt(run.segment, 1), tangentAt(next.segment, 0));
      if (abs(turn - (run.isFold === next.isFold ? 0 : Math.PI / 2)) <= tolerances.cornerTurn) return [];
      const on = (edge: string, at: number): PlaceOnEdge => ({ piece: piece.name, edge, at });
      return [[on(run.part.name, run.to), on(next.part.name, next.from)]];
    });
  },
);
