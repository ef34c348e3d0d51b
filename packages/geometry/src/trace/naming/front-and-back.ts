import { pathLength } from '../../path/length.js';
import { pathEnd, pathStart } from '../../path/path.js';
import { dartsOf, edgePath, foldEdgeOf, pieceNamed } from '../../pattern/outline.js';
import type { Pattern, Piece } from '../../pattern/types.js';
import { distance } from '../../vector.js';
import type { PieceProposal } from './propose-pieces.js';

/** By what a front is told from a back. */
export type FrontSign =
  | 'deeper-neck'
  | 'open-down-front'
  | 'shorter-crotch'
  | 'more-darts'
  | 'fewer-darts'
  | 'drawn-first';

/** Which side of the body a piece covers, and by what that was seen. */
export interface BodySide {
  readonly front: boolean;
  readonly sign: FrontSign;
}

/** Which of two pieces that are sewn side to side lies in front. */
interface FrontFound {
  readonly front: string;
  readonly sign: FrontSign;
}

/** One is longer than the other by more than this share of it. */
const clearly = 1.08;

/**
 * Of two pieces that go round the body together, the front: its neck is cut deeper, or it is one of two that wrap over
 * where the other lies on a fold; its crotch is shorter; its darts take up more above the waist, for the bust, and less below it; common practice, no source. Where nothing tells, the
 * one drawn first.
 */
function frontOf(a: Described, b: Described): FrontFound {
  const compared = (
    of: (one: Described) => number,
    front: 'more' | 'less',
    sign: FrontSign,
  ): FrontFound | undefined => {
    const [first, second] = [of(a), of(b)];
    if (!(Math.max(first, second) > clearly * Math.min(first, second))) return undefined;
    if (!byDarts.has(sign) && Math.min(first, second) === 0) return undefined;
    const isFirst = front === 'more' ? first > second : first < second;
    return { front: (isFirst ? a : b).piece.name, sign };
  };
  return (
    compared(one => length(one, 'neck'), 'more', 'deeper-neck') ??
    opening(a, b) ??
    compared(one => length(one, 'crotch'), 'less', 'shorter-crotch') ??
    (isAbove(a) && isAbove(b)
      ? compared(intake, 'more', 'more-darts')
      : compared(intake, 'less', 'fewer-darts')) ?? { front: a.piece.name, sign: 'drawn-first' }
  );
}

/** Of two pieces above the waist, the one that is cut twice and has no neck of its own, beside one on a fold that has. */
function opening(a: Described, b: Described): FrontFound | undefined {
  const wraps = (one: Described, other: Described): boolean =>
    isAbove(one) &&
    isAbove(other) &&
    one.piece.cutting.count === 2 &&
    length(one, 'neck') === 0 &&
    length(other, 'neck') > 0 &&
    foldEdgeOf(other.piece) !== undefined;
  const front = wraps(a, b) ? a : wraps(b, a) ? b : undefined;
  return front && { front: front.piece.name, sign: 'open-down-front' };
}

const byDarts: ReadonlySet<FrontSign> = new Set(['more-darts', 'fewer-darts']);

/** A piece with what is proposed of it. */
interface Described {
  readonly piece: Piece;
  readonly proposal: PieceProposal;
}

const length = ({ piece, proposal }: Described, role: string): number =>
  [...proposal.edges].reduce(
    (sum, [name, own]) => (own === role ? sum + pathLength(edgePath(piece, name)) : sum),
    0,
  );

const isAbove = ({ proposal: { role } }: Described): boolean => role === 'bodice' || role === 'yoke';

const intake = ({ piece }: Described): number =>
  dartsOf(piece).reduce((sum, { legs }) => sum + distance(pathStart(legs[0]), pathEnd(legs[1])), 0);

const byLines: readonly FrontSign[] = ['deeper-neck', 'open-down-front', 'shorter-crotch'];

/** Two pieces by their names that are sewn to one another: from the front to the back, or on one side of the body. */
export interface BodyJoin {
  readonly pieces: readonly [string, string];
  readonly sameSide: boolean;
}

/** The side of the body of each of the pieces that are sewn to one another round it. */
export function bodySides(
  pattern: Pattern,
  proposals: readonly PieceProposal[],
  joins: readonly BodyJoin[],
): ReadonlyMap<string, BodySide> {
  const sides = new Map<string, BodySide>();
  const described = (name: string): Described => ({
    piece: pieceNamed(pattern, name),
    proposal: proposals.find(p => p.piece === name)!,
  });
  // What is told by a neck or a crotch comes before what is told by darts, and that before the order of the drawing: a
  // back whose neck is in its yoke is told by the neck of the yoke.
  for (const allowed of [
    byLines,
    byLines,
    [...byLines, ...byDarts],
    [...byLines, ...byDarts],
    undefined,
    undefined,
  ])
    for (const { pieces: pair, sameSide } of joins) {
      const known = pair.find(name => sides.has(name));
      const other = pair.find(name => !sides.has(name));
      if (pair[0] === pair[1] || other === undefined || (sameSide && known === undefined)) continue;
      if (known !== undefined) {
        const { front, sign } = sides.get(known)!;
        sides.set(other, { front: sameSide ? front : !front, sign });
        continue;
      }
      const [a, b] = pattern.pieces
        .filter(({ name }) => pair.includes(name))
        .map(({ name }) => described(name));
      const { front, sign } = frontOf(a!, b!);
      if (allowed && !allowed.includes(sign)) continue;
      for (const { piece } of [a!, b!]) sides.set(piece.name, { front: piece.name === front, sign });
    }
  return sides;
}
