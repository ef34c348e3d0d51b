import type { Finding } from '../errors.js';
import { pathLength } from '../path/length.js';
import { nearestOnPath } from '../path/nearest.js';
import { endTangent, startTangent } from '../path/path.js';
import { dartsOf, edgePath, pieceNamed } from '../pattern/outline.js';
import { isCentreEdge, isCentreLine } from '../pattern/roles/roles.js';
import type { Edge, EdgeRun, Pattern, Piece, Seam } from '../pattern/types.js';
import { blendReach, joinedCorner, joiningGap, seamTolerance } from '../tolerance.js';
import {
  besides,
  type Corner,
  type EdgeEnd,
  endCorner,
  endOfTravel,
  interiorAngle,
  reachesEnd,
} from './corner.js';
import { runsTaken } from './runs-taken.js';

/** Two edges that become one line where something between them is sewn shut. */
export interface JoinedLine {
  /** What is sewn shut: `seam side`, `dart bust`; empty where the two meet as they are drawn. */
  readonly closed: string;
  readonly first: { readonly piece: string; readonly edge: string };
  readonly second: { readonly piece: string; readonly edge: string };
  /** Degrees: 180 − (angle on one side + angle on the other). Positive is a peak, negative a dip. */
  readonly cornerDeg: number;
  /** mm by which the first edge's end stands out beyond the second's along what is sewn shut. */
  readonly stepMm: number;
  /** mm to take off at the corner (a peak) or to add (negative: a dip), blended out within `blendMm` to both sides. */
  readonly takeMm: number;
  readonly blendMm: number;
}

/**
 * The lines that must run on across the ends of a seam (trade-notes §4): with side b laid on side a, the neighbours
 * at an end are compared if both are unsewn, or if they follow one another in one side of one seam; never at the
 * garment's centre line. `stepMm` is what the walk leaves over at the seam's end beyond the ease wanted.
 */
export function joinedLinesOf(pattern: Pattern, seam: Seam, remainderMm: number): readonly JoinedLine[] {
  return runningOn(pattern, seam).map(({ at, a, b, first, second }) => {
    const reach = [first, second].map(({ piece, edge }) =>
      pathLength(edgePath(pieceNamed(pattern, piece), edge)),
    );
    const angle = a.corner.interior + b.corner.interior;
    return joinedLine(`seam ${seam.name}`, first, second, angle, at === 'end' ? remainderMm : 0, reach);
  });
}

/** The neighbours at the ends of a seam that must run on across it, each as the end of its edge that lies there. */
export const neighboursRunningOn = (
  pattern: Pattern,
  seam: Seam,
): readonly { readonly first: PlacedEnd; readonly second: PlacedEnd }[] => runningOn(pattern, seam);

const runningOn = (pattern: Pattern, seam: Seam) =>
  meetingsAtEnds(pattern, seam).filter(({ a, b, first, second }) => {
    const bothUnsewn = !isSewn(pattern, first) && !isSewn(pattern, second);
    return !isAtCentre(a, b) && (bothUnsewn || followEachOther(pattern, first, second));
  });

/** The edges that come together at the ends of a seam once it is sewn: the neighbour on side a, and on side b. */
export const neighboursAtEnds = (
  pattern: Pattern,
  seam: Seam,
): readonly { readonly first: PlacedEnd; readonly second: PlacedEnd }[] => meetingsAtEnds(pattern, seam);

function meetingsAtEnds(pattern: Pattern, seam: Seam) {
  const sides = runsTaken(pattern, seam);
  return (['start', 'end'] as const).flatMap(at => {
    const a = seamEnd(pattern, sides.a, at),
      b = seamEnd(pattern, sides.b, at);
    if (a?.corner.neighbour.type !== 'edge' || b?.corner.neighbour.type !== 'edge') return [];
    const first = { piece: a.piece.name, edge: a.corner.neighbour.name, end: a.corner.neighbourEnd };
    const second = { piece: b.piece.name, edge: b.corner.neighbour.name, end: b.corner.neighbourEnd };
    return [{ at, a, b, first, second }];
  });
}

/** The lines that must run on across the mouths of a piece's darts, each dart folded shut. */
export function joinedLinesAcrossDarts(pattern: Pattern, piece: Piece): readonly JoinedLine[] {
  return dartsOf(piece).flatMap(dart => {
    const before = besides(piece.outline, dart, 'start'),
      after = besides(piece.outline, dart, 'end');
    if (before.type !== 'edge' || after.type !== 'edge') return [];
    const first = { piece: piece.name, edge: before.name, end: 'end' as const };
    const second = { piece: piece.name, edge: after.name, end: 'start' as const };
    const bothUnsewn = !isSewn(pattern, first) && !isSewn(pattern, second);
    if (before.name !== after.name && !bothUnsewn && !followEachOther(pattern, first, second)) return [];
    const angle =
      interiorAngle(endTangent(before.path), startTangent(dart.legs[0])) +
      interiorAngle(endTangent(dart.legs[1]), startTangent(after.path));
    const stepMm = pathLength(dart.legs[0]) - pathLength(dart.legs[1]);
    const reach = [pathLength(before.path), pathLength(after.path)];
    return [joinedLine(`dart ${dart.name}`, first, second, angle, stepMm, reach)];
  });
}

/**
 * Pairs of edges of one piece that meet directly and make one line: they follow one another in one side of a seam, or
 * are both unsewn hems. A closed dart leaves such a pair where it lay.
 */
export function weldedLines(pattern: Pattern, piece: Piece): readonly JoinedLine[] {
  return piece.outline.parts.flatMap(before => {
    const after = besides(piece.outline, before, 'end');
    if (before.type !== 'edge' || after.type !== 'edge' || before.name === after.name) return [];
    const first = { piece: piece.name, edge: before.name, end: 'end' as const };
    const second = { piece: piece.name, edge: after.name, end: 'start' as const };
    const hems =
      [before, after].every(e => e.kind === 'hem') && ![first, second].some(e => isSewn(pattern, e));
    if (!hems && !followEachOther(pattern, first, second)) return [];
    const angle = interiorAngle(endTangent(before.path), startTangent(after.path));
    return [joinedLine('', first, second, angle, 0, [pathLength(before.path), pathLength(after.path)])];
  });
}

/** A finding where a joined line bends by more than `joinedCorner` or steps by more than `seamTolerance`. */
export function joinedLineFinding(line: JoinedLine): readonly Finding[] {
  const { closed, first, second, cornerDeg, stepMm, takeMm, blendMm } = line;
  const corner = Math.abs(cornerDeg) > (joinedCorner * 180) / Math.PI,
    step = Math.abs(stepMm) > seamTolerance;
  if (!corner && !step) return [];
  const [one, two] = [`${first.piece}.${first.edge}`, `${second.piece}.${second.edge}`];
  const together = one === two ? `${one} makes` : `${one} and ${two} make`;
  const seen: string[] = [],
    todo: string[] = [];
  if (corner) {
    seen.push(`${cornerDeg > 0 ? 'a peak' : 'a dip'} of ${Math.abs(cornerDeg).toFixed(1)}°`);
    const amount = `${Math.abs(takeMm).toFixed(1)} mm`;
    todo.push(
      `${cornerDeg > 0 ? `Take ${amount} off` : `Add ${amount}`} at the corner, blended out within ` +
        `${blendMm.toFixed(0)} mm to both sides: true: { edges: [${[...new Set([one, two])].join(', ')}] }.`,
    );
  }
  if (step) {
    const amount = `${Math.abs(stepMm).toFixed(1)} mm`;
    seen.push(`a step of ${amount}`);
    const [longer, shorter] = stepMm > 0 ? [one, two] : [two, one];
    todo.push(`Take ${amount} off ${longer} there, or add it to ${shorter}.`);
  }
  return [
    {
      severity: 'warning',
      code: 'joined-line-broken',
      where: first,
      message: `With ${closed} sewn, ${together} ${seen.join(' and ')}.`,
      figures: { cornerDeg, stepMm, takeMm, blendMm },
      remedy: todo.join(' '),
    },
  ];
}

interface SeamEnd {
  readonly piece: Piece;
  readonly run: EdgeRun;
  readonly corner: Corner;
}

function seamEnd(pattern: Pattern, runs: readonly EdgeRun[], at: EdgeEnd): SeamEnd | undefined {
  const run = at === 'start' ? runs[0]! : runs.at(-1)!;
  const piece = pieceNamed(pattern, run.piece);
  const corner = endCorner(piece, run, at);
  return corner && { piece, run, corner };
}

/** One end of one edge, in clockwise order. */
export interface PlacedEnd {
  readonly piece: string;
  readonly edge: string;
  readonly end: EdgeEnd;
}

/** An edge sewn to its own mirror image lies on the centre line, and so does any corner of a fold or centre edge. */
function isAtCentre(a: SeamEnd, b: SeamEnd): boolean {
  if (a.run.piece === b.run.piece && a.run.edge === b.run.edge) return true;
  return [a, b].some(
    ({ piece, run, corner }) =>
      isCentreEdge(corner.neighbour as Edge) ||
      piece.outline.parts.some(p => p.type === 'edge' && p.name === run.edge && isCentreEdge(p)) ||
      piece.lines.some(l => isCentreLine(l) && nearestOnPath(l.path, corner.point).distance <= joiningGap),
  );
}

const isSewn = (pattern: Pattern, { piece, edge, end }: PlacedEnd): boolean =>
  pattern.seams.some(s =>
    [...s.a, ...s.b].some(
      r => r.piece === piece && r.edge === edge && reachesEnd(pieceNamed(pattern, piece), r, end),
    ),
  );

/**
 * Whether two ends of edges meet along one side of a seam: the end of one run and the start of the next. A side
 * whose last run meets its first is a ring (an armhole, or a sleeve cap with itself).
 */
function followEachOther(pattern: Pattern, first: PlacedEnd, second: PlacedEnd): boolean {
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

/**
 * The fair curve that leaves both lines `blend` mm from the corner stands blend × sin(corner / 2) / 2 from it:
 * the quadratic with its control point in the corner passes half way between the corner and its own chord.
 */
function joinedLine(
  closed: string,
  first: { readonly piece: string; readonly edge: string },
  second: { readonly piece: string; readonly edge: string },
  angle: number,
  stepMm: number,
  lengths: readonly number[],
): JoinedLine {
  const corner = Math.PI - angle;
  const blendMm = Math.min(blendReach, ...lengths);
  return {
    closed,
    first: { piece: first.piece, edge: first.edge },
    second: { piece: second.piece, edge: second.edge },
    cornerDeg: (corner * 180) / Math.PI,
    stepMm,
    takeMm: (blendMm * Math.sin(corner / 2)) / 2,
    blendMm,
  };
}
