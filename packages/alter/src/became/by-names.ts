import {
  edgeNames,
  edgePath,
  type Path,
  type Pattern,
  type Piece,
  pathLength,
  type Thing,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { distance } from '@paperhinge/geometry/plane';
import { type Became, nothingBecame, type SpanBecame, type ThingBecame, together } from './became.js';

/**
 * What became of what, from the names and lengths before and after alone: for a step that does not say. An edge that
 * kept its length is carried whole; one that changed it is measured from the end that stayed where it was, and where
 * neither did, by shares.
 */
export function becameByNames(before: Pattern, after: Pattern): Became {
  const gone = before.seams
    .filter(seam => !after.seams.some(s => s.name === seam.name))
    .map(({ name }): ThingBecame => ({ was: { seam: name } }));
  const pieces = before.pieces.map(piece => {
    const now = after.pieces.find(p => p.name === piece.name);
    if (now === piece) return nothingBecame;
    return now ? pieceBecame(piece, now) : pieceGone(piece);
  });
  return together({ edges: [], things: gone }, ...pieces);
}

/** Everything on a piece is gone with it. */
export const pieceGone = (piece: Piece): Became => ({
  edges: edgeNames(piece).map(edge => ({ was: wholeOf(piece, edge) })),
  things: [{ piece: piece.name }, ...thingsOn(piece)].map(was => ({ was })),
});

function pieceBecame(before: Piece, after: Piece): Became {
  const there = new Set(edgeNames(after));
  const left = new Set(thingsOn(after).map(nameOf));
  return {
    edges: edgeNames(before).flatMap(edge =>
      there.has(edge) ? edgeBecame(before, after, edge) : [{ was: wholeOf(before, edge) }],
    ),
    things: thingsOn(before)
      .filter(thing => !left.has(nameOf(thing)))
      .map(was => ({ was })),
  };
}

const nameOf = ({ dart, pleat, line, mark }: Thing): string =>
  JSON.stringify([dart, pleat, line, mark].map(name => name ?? null));

const wholeOf = (piece: Piece, edge: string) => ({
  piece: piece.name,
  edge,
  from: 0,
  to: pathLength(edgePath(piece, edge)),
});

/** Darts, pleats, lines and marks of a piece. */
export const thingsOn = ({ name: piece, outline, lines, marks }: Piece): readonly Thing[] => [
  ...outline.parts.flatMap(({ type, name }): readonly Thing[] =>
    type === 'edge' ? [] : [type === 'dart' ? { piece, dart: name } : { piece, pleat: name }],
  ),
  ...lines.map(({ name }) => ({ piece, line: name })),
  ...marks.map(({ name }) => ({ piece, mark: name })),
];

function edgeBecame(before: Piece, after: Piece, edge: string): readonly SpanBecame[] {
  const was = wholeOf(before, edge),
    now = wholeOf(after, edge);
  const shorter = Math.min(was.to, now.to);
  if (Math.abs(was.to - now.to) <= tolerances.coincidenceTolerance) return [];
  const old = edgePath(before, edge),
    fresh = edgePath(after, edge);
  if (staysAt(pathStart, old, fresh)) return [{ was: { ...was, to: shorter }, now: { ...now, to: shorter } }];
  if (staysAt(pathEnd, old, fresh))
    return [{ was: { ...was, from: was.to - shorter }, now: { ...now, from: now.to - shorter } }];
  return [{ was, now }];
}

const staysAt = (end: typeof pathStart, a: Path, b: Path): boolean =>
  distance(end(a), end(b)) <= tolerances.joiningGap;
