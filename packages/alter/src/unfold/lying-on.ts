import {
  type Edge,
  edgeNames,
  edgePath,
  type Mark,
  type Notch,
  type Piece,
  type PieceLine,
  pathLength,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { nearestOnPath, pathEnd, pathStart, reversedPath, transformedPath } from '@paperhinge/geometry/paths';
import { isCentreLine } from '@paperhinge/geometry/pattern';
import { apply, distance } from '@paperhinge/geometry/plane';
import type { Became, SpanBecame } from '../became/became.js';
import { follow } from '../became/follow.js';
import { bridged } from '../hinge/bridged.js';
import { type OpenedOutline, unusedOther } from './mirrored-outline.js';

/** Points this near the fold line are on it: what a drawing joins, it also means. */
const onFold = tolerances.joiningGap;

/** What became of the edges: each lies where it did and, but for the fold, as its mirror image as well. */
export function openedEdges(piece: Piece, { fates }: OpenedOutline): readonly SpanBecame[] {
  return edgeNames(piece).flatMap((edge): readonly SpanBecame[] => {
    const fate = fates.get(edge);
    const length = pathLength(edgePath(piece, edge));
    const was = { piece: piece.name, edge, from: 0, to: length };
    if (!fate) return [{ was }];
    if ('other' in fate)
      return [
        { was, now: was },
        { was, now: { ...was, edge: fate.other, from: length, to: 0 } },
      ];
    const first = { ...was, from: 0, to: length },
      second = { ...was, from: length, to: 2 * length };
    return fate.crossing === 'end'
      ? [
          { was, now: first },
          { was, now: { ...second, from: 2 * length, to: length } },
        ]
      : [
          { was, now: second },
          { was, now: { ...first, from: length, to: 0 } },
        ];
  });
}

/** Notches of the opened piece: each edge's own, and their mirror images, which have names of their own on one edge. */
export const openedNotches = (piece: Piece, became: Became): readonly Notch[] =>
  piece.notches.flatMap(notch =>
    follow(became, { piece: piece.name, edge: notch.edge, at: notch.at }).map(({ edge, at }, i) => {
      const name =
        notch.name === undefined || i === 0 || edge !== notch.edge ? {} : { name: `other ${notch.name}` };
      return { ...notch, ...name, edge, at };
    }),
  );

/**
 * Lines of the opened piece. One grain line is enough; a line along the fold is its own mirror image; a line that
 * reaches the fold, and every level, runs on across it; any other gets a mirrored copy. The fold itself stays as a
 * line named `centre ...`, by which later steps know what holds the piece.
 */
export function openedLines(piece: Piece, { map, fold }: OpenedOutline): readonly PieceLine[] {
  const taken = new Set(piece.lines.map(l => l.name));
  const lines = piece.lines.flatMap((line): readonly PieceLine[] => {
    const points = line.path.segments.flatMap(s => [...s]);
    const off = (p: (typeof points)[number]) => distance(p, apply(map, p)) / 2;
    if (line.kind === 'grain' || points.every(p => off(p) <= onFold)) return [line];
    const start = pathStart(line.path),
      end = pathEnd(line.path);
    const touches = Math.min(off(start), off(end)) <= onFold;
    const closes = distance(start, end) <= tolerances.coincidenceTolerance;
    const across = line.kind === 'level' || line.kind === 'lengthen-shorten';
    if (!closes && (touches || across)) {
      const outward = off(start) <= off(end) ? line.path : reversedPath(line.path);
      return [{ ...line, path: bridged(reversedPath(transformedPath(outward, map)), outward) }];
    }
    return [line, { ...line, name: unusedOther(line.name, taken), path: transformedPath(line.path, map) }];
  });
  const name = centreLineOf(fold);
  const centre = taken.has(name) ? [] : [{ kind: 'placement' as const, name, path: fold.path }];
  return [...lines, ...centre];
}

/** The name of the line that a fold becomes. */
export const centreLineOf = ({ name, path }: Edge): string =>
  isCentreLine({ kind: 'fold', name, path }) ? name : 'centre';

/** Marks of the opened piece, those off the fold twice. */
export function openedMarks(piece: Piece, { map, fold }: OpenedOutline): readonly Mark[] {
  const taken = new Set(piece.marks.map(m => m.name));
  return piece.marks.flatMap((mark): readonly Mark[] =>
    nearestOnPath(fold.path, mark.at).distance <= onFold
      ? [mark]
      : [mark, { ...mark, name: unusedOther(mark.name, taken), at: apply(map, mark.at) }],
  );
}
