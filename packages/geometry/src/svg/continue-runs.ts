import { neighboursOf } from '../pattern/outline.js';
import type { Piece } from '../pattern/types.js';
import type { OpenRun, OpenSeam } from './open-seam.js';

/** A corner of a piece: the end of one edge, told by the edge and by which of its ends. */
interface Corner {
  readonly piece: string;
  readonly edge: string;
  readonly atEnd: boolean;
}

/**
 * Gives direction to runs that continue the run before them in their list: on the same piece they go on from the
 * corner it ends at, directly or across a dart; on another piece from the corner that a seam lays on that one. Runs
 * that nothing settles are left open.
 */
export function continued(seams: readonly OpenSeam[], pieces: readonly Piece[]): readonly OpenSeam[] {
  let current = seams;
  // What one seam learns may settle the next; each round settles at least one run, or is the last.
  for (let before = openRuns(current) + 1; openRuns(current) < before; ) {
    before = openRuns(current);
    const known = current;
    current = current.map(seam => ({
      ...seam,
      a: continuedSide(seam.a, known, pieces),
      b: continuedSide(seam.b, known, pieces),
    }));
  }
  return current;
}

const openRuns = (seams: readonly OpenSeam[]): number =>
  seams.reduce((n, { a, b }) => n + [...a, ...b].filter(run => run.reversed === undefined).length, 0);

function continuedSide(
  runs: readonly OpenRun[],
  seams: readonly OpenSeam[],
  pieces: readonly Piece[],
): readonly OpenRun[] {
  const done: OpenRun[] = [];
  for (const run of runs) {
    const last = done.at(-1);
    done.push(
      run.reversed !== undefined || last?.reversed === undefined ? run : goingOn(last, run, seams, pieces),
    );
  }
  return done;
}

function goingOn(last: OpenRun, run: OpenRun, seams: readonly OpenSeam[], pieces: readonly Piece[]): OpenRun {
  const end: Corner = { piece: last.piece, edge: last.edge, atEnd: !last.reversed };
  const corners = [end, ...acrossSeams(end, seams, pieces)].flatMap(corner => edgesAt(corner, pieces));
  const met = corners.filter(corner => corner.piece === run.piece && corner.edge === run.edge);
  const ends = new Set(met.map(corner => corner.atEnd));
  return ends.size === 1 ? { ...run, reversed: [...ends][0]! } : run;
}

/** The other edge that meets at a corner, directly or with darts and pleats between. */
function edgesAt({ piece: name, edge, atEnd }: Corner, pieces: readonly Piece[]): readonly Corner[] {
  const piece = pieces.find(p => p.name === name)!;
  const { parts } = piece.outline;
  const step = atEnd ? 1 : -1;
  const own = parts.flatMap((part, i) => (part.type === 'edge' && part.name === edge ? [i] : []));
  const next = (i: number): number => (i + step + parts.length) % parts.length;
  const neighbour = neighboursOf(piece, edge)[atEnd ? 'end' : 'start'];
  return own.flatMap(i => {
    let j = next(i);
    if (parts[j]!.name !== neighbour) return [];
    while (parts[j]!.type !== 'edge' && j !== i) j = next(j);
    const part = parts[j]!;
    return part.type === 'edge' && part.name !== edge
      ? [{ piece: name, edge: part.name, atEnd: !atEnd }]
      : [];
  });
}

/** Where the seams lay a corner on other pieces: the corner's end of a whole side, on the same end of the other side. */
function acrossSeams(
  corner: Corner,
  seams: readonly OpenSeam[],
  pieces: readonly Piece[],
): readonly Corner[] {
  const here = [corner, ...edgesAt(corner, pieces)];
  const found: Corner[] = [];
  for (const { a, b } of seams)
    for (const [side, other] of [
      [a, b],
      [b, a],
    ] as const)
      for (const atFinish of [false, true]) {
        const mine = endOf(side, atFinish),
          theirs = endOf(other, atFinish);
        if (mine && theirs && here.some(c => same(c, mine))) found.push(theirs);
      }
  // A corner goes by the edge before it and by the edge after it; both names are offered.
  return found.flatMap(c => [c, ...edgesAt(c, pieces)]);
}

function endOf(side: readonly OpenRun[], atFinish: boolean): Corner | undefined {
  const run = atFinish ? side.at(-1) : side[0];
  if (run?.reversed === undefined) return undefined;
  return { piece: run.piece, edge: run.edge, atEnd: run.reversed !== atFinish };
}

const same = (a: Corner, b: Corner): boolean =>
  a.piece === b.piece && a.edge === b.edge && a.atEnd === b.atEnd;
