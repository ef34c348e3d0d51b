import { type Dart, type Edge, type Path, type Piece, type Pleat, pathLength } from '@paperhinge/geometry';
import { infinite } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { subpath } from '@paperhinge/geometry/paths';
import { partsOfEdge } from '@paperhinge/geometry/pattern';
import { type CutEnd, onEdge } from './cut.js';

/** A run of an edge between two places at which the outline is cut or the edge ends. */
export interface EdgeStretch {
  readonly type: 'edge';
  readonly edge: Edge;
  readonly path: Path;
  /** mm along the whole edge, darts' mouths not counted. */
  readonly from: number;
  readonly to: number;
}

/** One leg of a dart, in outline direction. */
export interface LegStretch {
  readonly type: 'leg';
  readonly dart: Dart;
  readonly leg: 0 | 1;
  readonly path: Path;
}

/** The mouth of a pleat: no cut ends on it. */
export interface MouthStretch {
  readonly type: 'mouth';
  readonly pleat: Pleat;
  readonly path: Path;
}

export type Stretch = EdgeStretch | LegStretch | MouthStretch;

/** The outline as a ring of stretches, and after which of them each end of a cut on the outline stands. */
export interface Ring {
  readonly stretches: readonly Stretch[];
  readonly gapOf: ReadonlyMap<CutEnd, number>;
}

/** Splits the outline wherever a cut begins or ends on it; places within the coincidence tolerance are one place. */
export function ringOf(piece: Piece, ends: readonly CutEnd[]): Ring {
  const stretches: Stretch[] = [];
  const gapOf = new Map<CutEnd, number>();
  // What a cut meets at the outline's very first point stands after its last stretch.
  const beforeFirst: CutEnd[] = [];
  const offsets = partOffsets(piece);
  for (const part of piece.outline.parts) {
    if (part.type === 'dart') {
      stretches.push({ type: 'leg', dart: part, leg: 0, path: part.legs[0] });
      for (const end of ends)
        if ('dart' in end && end.dart === part.name) gapOf.set(end, stretches.length - 1);
      stretches.push({ type: 'leg', dart: part, leg: 1, path: part.legs[1] });
    } else if (part.type === 'pleat') stretches.push({ type: 'mouth', pleat: part, path: part.mouth });
    else
      for (const next of splitEdge(part, offsets.get(part)!, ends)) {
        if ('path' in next) stretches.push(next);
        else if (stretches.length > 0) gapOf.set(next, stretches.length - 1);
        else beforeFirst.push(next);
      }
  }
  for (const end of beforeFirst) gapOf.set(end, stretches.length - 1);
  return { stretches, gapOf };
}

/** A part of an edge as its stretches, with the ends of cuts where they stand between them, in order. */
function splitEdge(part: Edge, offset: number, ends: readonly CutEnd[]): readonly (EdgeStretch | CutEnd)[] {
  const length = pathLength(part.path);
  // The start of a later part of an edge is taken as the end of the part before: the dart's first mouth end.
  const own = ends
    .filter(onEdge)
    .filter(e => e.edge === part.name)
    .map(end => ({ end, local: end.along - offset }))
    .filter(({ local }) => local <= length + near && (offset === 0 ? local >= -near : local > near))
    .sort((a, b) => a.local - b.local);
  const result: (EdgeStretch | CutEnd)[] = [];
  let done = 0;
  const upTo = (to: number, path: Path): void => {
    result.push({ type: 'edge', edge: part, path, from: offset + done, to: offset + to });
    done = to;
  };
  for (const { end, local } of own) {
    const to = local >= length - near ? length : local;
    if (local > near && to > done + near) upTo(to, subpath(part.path, done, to));
    result.push(end);
  }
  if (done < length) upTo(length, done === 0 ? part.path : subpath(part.path, done, infinite));
  return result;
}

const near = tolerances.coincidenceTolerance;

/** mm along its whole edge at which each part of an edge begins. */
export function partOffsets(piece: Piece): ReadonlyMap<Edge, number> {
  const offsets = new Map<Edge, number>();
  for (const part of piece.outline.parts) {
    if (part.type !== 'edge') continue;
    let offset = 0;
    for (const own of partsOfEdge(piece, part.name)) {
      offsets.set(own, offset);
      offset += pathLength(own.path);
    }
  }
  return offsets;
}
