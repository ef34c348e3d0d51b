import { oncePerAll } from '../once-per.js';
import { nearestOnPath } from '../path/nearest.js';
import { pieceNamed } from '../pattern/outline.js';
import { isCentreEdge, isCentreLine, pieceRoleOf } from '../pattern/roles/roles.js';
import type { Edge, EdgeRun, Pattern, Piece, Seam } from '../pattern/types.js';
import { joiningGap } from '../tolerance.js';
import { type Corner, type EdgeEnd, endCorner, endOfTravel, reachesEnd } from './corner.js';
import { runsTaken } from './runs-taken.js';
import { isTie } from './ties.js';
import { turnsBack } from './turns-back.js';

/** One end of one edge, in clockwise order. */
export interface PlacedEnd {
  readonly piece: string;
  readonly edge: string;
  readonly end: EdgeEnd;
}

/** An end of one side of a seam: the run there, and the corner where it meets its neighbour. */
export interface SeamEnd {
  readonly piece: Piece;
  readonly run: EdgeRun;
  readonly corner: Corner;
}

/** What comes together at an end of a seam once it is sewn: both sides, and the edges beside them. */
export interface Meeting {
  readonly at: EdgeEnd;
  readonly a: SeamEnd;
  readonly b: SeamEnd;
  /** The end of the neighbouring edge that lies there on side a, and on side b. */
  readonly first: PlacedEnd;
  readonly second: PlacedEnd;
}

/**
 * What comes together at the two ends of a seam; nothing where an end lies within an edge, or where a dart or a pleat
 * begins.
 * @throws PatternError `unknown-piece`, `unknown-edge`, `empty-seam`
 */
export const meetingsAtEnds: (pattern: Pattern, seam: Seam) => readonly Meeting[] =
  /* @__PURE__ */ oncePerAll(
    (pattern, seam) => [pattern, seam],
    (pattern: Pattern, seam: Seam): readonly Meeting[] => {
      const sides = runsTaken(pattern, seam);
      return (['start', 'end'] as const).flatMap(at => {
        const a = seamEnd(pattern, sides.a, at),
          b = seamEnd(pattern, sides.b, at);
        if (a?.corner.neighbour.type !== 'edge' || b?.corner.neighbour.type !== 'edge') return [];
        const first = { piece: a.piece.name, edge: a.corner.neighbour.name, end: a.corner.neighbourEnd };
        const second = { piece: b.piece.name, edge: b.corner.neighbour.name, end: b.corner.neighbourEnd };
        return [{ at, a, b, first, second }];
      });
    },
  );

function seamEnd(pattern: Pattern, runs: readonly EdgeRun[], at: EdgeEnd): SeamEnd | undefined {
  const run = at === 'start' ? runs[0]! : runs.at(-1)!;
  const piece = pieceNamed(pattern, run.piece);
  const corner = endCorner(piece, run, at);
  return corner && { piece, run, corner };
}

/** The edges that come together at the ends of a seam once it is sewn: the neighbour on side a, and on side b. */
export const neighboursAtEnds = (
  pattern: Pattern,
  seam: Seam,
): readonly { readonly first: PlacedEnd; readonly second: PlacedEnd }[] => meetingsAtEnds(pattern, seam);

/**
 * The meetings at which the neighbours must run on across the seam (trade-notes §4): both are unsewn, or they follow
 * one another in one side of one seam; never at the garment's centre line, nor where one of the pieces is turned back
 * under the other, or lies on it as the halves of a pocket's bag do, nor where a strap's end is caught in.
 */
export const runningOn = (pattern: Pattern, seam: Seam): readonly Meeting[] =>
  meetingsAtEnds(pattern, seam).filter(
    ({ a, b, first, second }) =>
      turnsBack(a.piece) === turnsBack(b.piece) &&
      !areBag(pattern, a.piece, b.piece) &&
      !(isTie(pattern, a.piece) || isTie(pattern, b.piece)) &&
      !isAtCentre(a, b) &&
      (areUnsewn(pattern, first, second) || followEachOther(pattern, first, second)),
  );

/** Whether two pieces are the halves of a bag that hangs from the garment: they lie on one another, right sides together. */
const areBag = (pattern: Pattern, ...halves: readonly Piece[]): boolean => {
  const isPocket = (name: string) => pieceRoleOf(pieceNamed(pattern, name)) === 'pocket';
  return (
    halves.every(half => isPocket(half.name)) &&
    pattern.seams.some(
      ({ a, b }) =>
        [...a, ...b].some(run => halves.some(half => half.name === run.piece)) &&
        [...a, ...b].some(run => !isPocket(run.piece)),
    )
  );
};

/** The neighbours at the ends of a seam that must run on across it, each as the end of its edge that lies there. */
export const neighboursRunningOn = (
  pattern: Pattern,
  seam: Seam,
): readonly { readonly first: PlacedEnd; readonly second: PlacedEnd }[] => runningOn(pattern, seam);

/** An edge sewn to its own mirror image lies on the centre line, and so does any corner of a fold or centre edge. */
function isAtCentre(a: SeamEnd, b: SeamEnd): boolean {
  if (a.run.piece === b.run.piece && a.run.edge === b.run.edge) return true;
  return [a, b].some(
    ({ piece, run, corner }) =>
      isCentreEdge(corner.neighbour as Edge) ||
      piece.outline.parts.some(p => p.type === 'edge' && p.name === run.edge && isCentreEdge(p)) ||
      piece.lines.some(
        line => isCentreLine(line) && nearestOnPath(line.path, corner.point).distance <= joiningGap,
      ),
  );
}

/** Whether no seam takes in either of two ends of edges. */
export const areUnsewn = (pattern: Pattern, ...ends: readonly PlacedEnd[]): boolean =>
  ends.every(
    ({ piece, edge, end }) =>
      !pattern.seams.some(s =>
        [...s.a, ...s.b].some(
          r => r.piece === piece && r.edge === edge && reachesEnd(pieceNamed(pattern, piece), r, end),
        ),
      ),
  );

/**
 * Whether two ends of edges meet along one side of a seam: the end of one run and the start of the next. A side
 * whose last run meets its first is a ring (an armhole, or a sleeve cap with itself).
 */
export function followEachOther(pattern: Pattern, first: PlacedEnd, second: PlacedEnd): boolean {
  const isEnd = (run: EdgeRun, at: EdgeEnd, placed: PlacedEnd) =>
    run.piece === placed.piece &&
    run.edge === placed.edge &&
    endOfTravel(run, at) === placed.end &&
    reachesEnd(pieceNamed(pattern, run.piece), run, placed.end);
  return pattern.seams.some(seam =>
    [seam.a, seam.b].some(side =>
      side.some((run, i) => {
        const next = side[(i + 1) % side.length]!;
        return (
          (isEnd(run, 'end', first) && isEnd(next, 'start', second)) ||
          (isEnd(run, 'end', second) && isEnd(next, 'start', first))
        );
      }),
    ),
  );
}
