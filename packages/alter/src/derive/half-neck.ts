import {
  type EdgeRef,
  type EdgeRun,
  edgePath,
  type Path,
  type Pattern,
  type Point,
  pathLength,
  pieceNamed,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import {
  endTangent,
  joined,
  pathEnd,
  pathStart,
  reversedPath,
  startTangent,
  transformedPath,
} from '@paperhinge/geometry/paths';
import { edgeParts, neighboursOf, partsOfEdge } from '@paperhinge/geometry/pattern';
import {
  type Affine,
  angleBetween,
  compose,
  rotation,
  scale,
  subtract,
  translation,
} from '@paperhinge/geometry/plane';
import { isBack } from '../fit/front-and-back.js';
import { startingIn } from '../moved-edges/meet.js';
import { type GarmentChain, type Lying, runsAlong } from './garment-chain.js';
import { laidAlong, requireOneStretch } from './laid-along.js';
import { refusal } from './tellings.js';

/** Half of a neck, from the centre back round to the centre front. */
export interface HalfNeck {
  readonly lying: readonly Lying[];
  readonly runs: readonly EdgeRun[];
  /** mm. */
  readonly lengthMm: number;
  /** Whether cloth runs on over the centre back, so that what is made for it may lie on a fold there. */
  readonly whole: boolean;
}

/**
 * The half of a neck from the centre back to the centre front.
 * @throws PatternError `edges-do-not-join`; `edges-not-halved`: its two halves are not alike
 */
export function halfNeck(pattern: Pattern, along: readonly EdgeRef[], name: string): HalfNeck {
  const laid = laidAlong(pattern, along);
  requireOneStretch(laid, name);
  const [chain] = laid.chains;
  const { lying, joints, closed } = chain!;
  const middle = lying.length / 2;
  const halves = [lying.slice(0, middle), lying.slice(middle)] as const;
  const [first, second] = halves.map(lengthOf) as [number, number];
  if (lying.length % 2 !== 0 || Math.abs(first - second) > tolerances.seamTolerance)
    throw refusal('edges-not-halved', { piece: name, edges: along.map(ref => ({ ...ref })) });
  const backFirst = isBack(pattern, pieceNamed(pattern, lying[0]!.piece));
  const half = backFirst ? halves[0] : halves[1];
  const chosen: GarmentChain = {
    lying: half,
    joints: backFirst ? joints.slice(0, middle - 1) : joints.slice(middle),
    closed: false,
  };
  return { lying: half, runs: runsAlong([chosen]), lengthMm: lengthOf(half), whole: closed || !backFirst };
}

const lengthOf = (lying: readonly Lying[]): number => lying.reduce((sum, l) => sum + l.lengthMm, 0);

/**
 * The line of half a neck as it lies when its pieces are laid seam to seam on the table, each overlapping the one
 * before at the far end of the seam between them by `overlap` mm: the cloth to its right.
 */
export function neckLine(pattern: Pattern, { lying }: HalfNeck, overlap: number): Path {
  let whole: Path | undefined;
  let seamWay: Point | undefined;
  for (const one of lying) {
    const own = ownLine(pattern, one);
    const from = pathStart(own.line);
    const turn = seamWay ? angleBetween(own.before, seamWay) + overlapTurn(overlap, own.beforeMm) : 0;
    const to = whole ? pathEnd(whole) : from;
    const map = compose(rotation(turn, from), translation(subtract(to, from)));
    const laid = transformedPath(own.line, map);
    whole = whole ? joined(whole, startingIn(laid, pathEnd(whole))) : laid;
    seamWay = turned(own.after, turn);
  }
  return whole!;
}

/** rad by which a seam of this length turns so that its far end moves back by the overlap. */
const overlapTurn = (overlap: number, seamMm: number): number =>
  2 * Math.asin(Math.min(1, overlap / (2 * seamMm)));

const turned = ({ x, y }: Point, angle: number): Point => ({
  x: x * Math.cos(angle) - y * Math.sin(angle),
  y: x * Math.sin(angle) + y * Math.cos(angle),
});

/** The edge as it is walked, its piece turned over where that is against the clock, and which way its neighbours lead away. */
function ownLine(pattern: Pattern, { piece: name, edge, part, reversed }: Lying) {
  const piece = pieceNamed(pattern, name);
  const path = partsOfEdge(piece, edge)[part]!.path;
  const beside = neighboursOf(piece, edge);
  const away = (neighbour: string, end: 'start' | 'end') => {
    const own = edgeParts(piece).some(e => e.name === neighbour) ? edgePath(piece, neighbour) : path;
    return end === 'start' ? scale(endTangent(own), -1) : startTangent(own);
  };
  const length = (neighbour: string) =>
    edgeParts(piece).some(e => e.name === neighbour)
      ? pathLength(edgePath(piece, neighbour))
      : pathLength(path);
  if (!reversed)
    return {
      line: path,
      before: away(beside.start, 'start'),
      beforeMm: length(beside.start),
      after: away(beside.end, 'end'),
    };
  const over = (point: Point): Point => ({ x: -point.x, y: point.y });
  return {
    line: transformedPath(reversedPath(path), overleaf),
    before: over(away(beside.end, 'end')),
    beforeMm: length(beside.end),
    after: over(away(beside.start, 'start')),
  };
}

const overleaf: Affine = { a: -1, b: 0, c: 0, d: 1, e: 0, f: 0 };
