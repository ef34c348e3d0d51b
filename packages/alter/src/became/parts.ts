import { type Edge, type Notch, type Piece, pathLength } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { partsOfEdge } from '@paperhinge/geometry/pattern';
import type { Became, SpanBecame } from './became.js';
import { followPlace } from './things.js';

/** A stretch of a path that an edit left, in mm from its former start, and how far along it lies now. */
export interface KeptStretch {
  readonly from: number;
  readonly to: number;
  readonly by: number;
}

/** How one part of an edge changed, lengths in mm. */
export interface PartChange {
  readonly before: number;
  readonly after: number;
  /** What of it is still the same cloth; `redrawn`: nothing, but a new line has its name. */
  readonly kept: readonly KeptStretch[] | 'redrawn';
}

/** All of a path where it was. */
export const keptWhole = (length: number): readonly KeptStretch[] => [{ from: 0, to: length, by: 0 }];

export const shifted = (kept: readonly KeptStretch[], by: number): readonly KeptStretch[] =>
  kept.map(stretch => ({ ...stretch, by: stretch.by + by }));

/** A part of an edge that nothing happened to. */
const unchangedPart = ({ path }: Edge): PartChange => {
  const length = pathLength(path);
  return { before: length, after: length, kept: keptWhole(length) };
};

/**
 * What became of a piece's edges whose parts changed in these ways.
 * @param changesOf of each part of an edge, in the edge's order of travel; nothing where the edge is as it was
 */
export function edgesBecame(
  piece: Piece,
  edges: readonly string[],
  changesOf: (part: Edge) => PartChange | undefined,
): readonly SpanBecame[] {
  return edges.flatMap(edge => {
    const parts = partsOfEdge(piece, edge);
    const changes = parts.map(part => changesOf(part));
    if (changes.every(change => change === undefined)) return [];
    return spansOfParts(
      { piece: piece.name, edge },
      parts.map((part, i) => changes[i] ?? unchangedPart(part)),
    );
  });
}

function spansOfParts(
  ref: { readonly piece: string; readonly edge: string },
  parts: readonly PartChange[],
): readonly SpanBecame[] {
  const spans: SpanBecame[] = [];
  let before = 0,
    after = 0;
  for (const part of parts) {
    const span = (from: number, to: number, newFrom: number, newTo: number) => ({
      was: { ...ref, from: before + from, to: before + to },
      now: { ...ref, from: after + newFrom, to: after + newTo },
    });
    if (part.kept === 'redrawn') spans.push({ ...span(0, part.before, 0, part.after), redrawn: true });
    else
      for (const { from, to, by } of part.kept) {
        // What an edit moved past the ends of the new path was cut off there.
        const low = Math.max(from, -by),
          high = Math.min(to, part.after - by);
        if (high - low > tolerances.coincidenceTolerance) spans.push(span(low, high, low + by, high + by));
      }
    before += part.before;
    after += part.after;
  }
  return spans.length > 0 ? spans : [{ was: { ...ref, from: 0, to: before } }];
}

/** The notches of a piece that are left, each where its place on the cloth lies now. */
export const carriedNotches = (piece: Piece, became: Became): readonly Notch[] =>
  piece.notches.flatMap(notch =>
    followPlace(became, { piece: piece.name, edge: notch.edge, at: notch.at }).map(({ edge, at }) =>
      at === notch.at && edge === notch.edge ? notch : { ...notch, edge, at },
    ),
  );
