import { type EdgeRun, type Pattern, type Piece, pieceNamed } from '@paperhinge/geometry';
import { edgesOfRole, neighboursOf } from '@paperhinge/geometry/pattern';
import { isBack } from '../fit/front-and-back.js';
import { refusal } from './tellings.js';

/** A sleeve's cap and the two edges of its underarm seam, by which of them lies in front. */
export interface EndsOfCap {
  readonly cap: string;
  /** Whether the cap's start, clockwise, is its end in front. */
  readonly frontAtStart: boolean;
  readonly front: string;
  readonly back: string;
}

/**
 * Which of a sleeve's underarm edges lies in front: the one beside the end of the cap that is sewn to the front.
 * @throws PatternError `no-cap`; `cap-not-sewn` where no seam sews the cap into an armhole
 */
export function endsOfCap(pattern: Pattern, piece: Piece): EndsOfCap {
  const [cap] = edgesOfRole(piece, 'cap');
  const where = { piece: piece.name };
  if (cap === undefined) throw refusal('no-cap', { piece: where }, where);
  const isCap = (run: EdgeRun): boolean => run.piece === piece.name && run.edge === cap;
  const seam = pattern.seams.find(({ a, b }) => [a, b].some(side => side.some(isCap)));
  const own = seam && [seam.a, seam.b].find(side => side.some(isCap))!;
  if (!seam || !own) throw refusal('cap-not-sewn', { piece: where }, { ...where, edge: cap });
  const armhole = own === seam.a ? seam.b : seam.a;
  const frontAtStart = frontFirst(pattern, armhole) !== own.find(isCap)!.reversed;
  const { start, end } = neighboursOf(piece, cap);
  const [front, back] = frontAtStart ? [start, end] : [end, start];
  return { cap, frontAtStart, front, back };
}

/** Whether an armhole is sewn from the front to the back: its pieces beside the neck tell, the others count for nothing. */
function frontFirst(pattern: Pattern, armhole: readonly EdgeRun[]): boolean {
  const backness = armhole.map((run): number => {
    const piece = pieceNamed(pattern, run.piece);
    if (edgesOfRole(piece, 'neck').length === 0) return 0;
    return isBack(pattern, piece) ? 1 : -1;
  });
  const half = (backness.length - 1) / 2;
  return backness.reduce((sum, one, i) => sum + one * (i - half), 0) >= 0;
}
