import { type Edge, type Finding, type Pattern, type Piece, pathLength } from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { angleBetween, subtract } from '@paperhinge/geometry/plane';
import { selfCrossings } from '@paperhinge/geometry/regions';
import type { Became } from '../became/became.js';
import { laidAside } from '../derive/free-place.js';
import type { Cut } from '../hinge/cut.js';
import type { CutPiece } from '../hinge/cut-piece.js';
import { grainDirection } from '../hinge/grain-direction.js';
import { cutApart } from '../hinge/sections.js';
import { inTwo } from './in-two.js';
import { finding, refusal } from './tellings.js';
import { usualAllowance } from './usual-allowance.js';

/** What the part that is cut off is called, what the seam is, and mm of allowance on both its edges. */
export interface DividedWish {
  readonly name: string;
  readonly seam: string;
  readonly allowance: number | undefined;
}

/** A piece in two, the one that was cut off laid aside. */
export interface Divided {
  readonly pattern: Pattern;
  readonly off: Piece;
  readonly became: Became;
  readonly lengthMm: number;
  readonly findings: readonly Finding[];
}

/**
 * Cuts a piece in two with a new seam between the parts. Nothing moves but that the part cut off is laid aside.
 * The names are free: `requireFreeForDivision`.
 * @param keeping tells which section keeps the piece's name
 * @throws PatternError `cut-crosses-itself`; those of `cutApart`
 */
export function dividedAlong(
  pattern: Pattern,
  piece: Piece,
  cut: Cut,
  { name, seam, allowance }: DividedWish,
  keeping: (cutPiece: CutPiece) => number,
): Divided {
  const cutPiece = cutApart(piece, [cut]);
  const where = { piece: piece.name };
  if (selfCrossings(cutPiece.courses[0]!).length > 0)
    throw refusal('cut-crosses-itself', { piece: where }, where);
  const fresh = newEdge(piece, cutPiece, seam, allowance);
  const { kept, off, became } = inTwo(cutPiece, keeping(cutPiece), name, fresh);
  const pieces = pattern.pieces.flatMap(p => (p === piece ? [kept] : [p]));
  const laid = laidAside({ ...pattern, pieces }, off);
  const run = { edge: seam, reversed: false };
  const added = {
    name: seam,
    a: [{ ...run, piece: piece.name }],
    b: [{ ...run, piece: name, reversed: true }],
    ease: { mm: 0 },
  };
  const asPair = { piece: { piece: name }, count: laid.cutting.count };
  return {
    pattern: { ...pattern, pieces: [...pieces, laid], seams: [...pattern.seams, added] },
    off: laid,
    became,
    lengthMm: pathLength(cutPiece.courses[0]!),
    findings:
      off.cutting.count === piece.cutting.count
        ? []
        : [finding('note', 'cut-as-pair', { piece: name }, asPair)],
  };
}

/** Across the grain it is a yoke's seam, along it a panel's; otherwise like the seams of the piece. */
function newEdge(piece: Piece, { courses }: CutPiece, name: string, allowance: number | undefined): Edge {
  const grain = grainDirection(piece);
  const course = courses[0]!;
  const turn = grain ? Math.abs(angleBetween(grain, subtract(pathEnd(course), pathStart(course)))) : 0;
  const across = Math.abs(turn - Math.PI / 2) < Math.PI / 4;
  return {
    type: 'edge',
    name,
    path: course,
    kind: 'seam',
    role: across ? 'yoke' : 'panel',
    allowance: allowance ?? usualAllowance(piece),
    corners: {},
  };
}
