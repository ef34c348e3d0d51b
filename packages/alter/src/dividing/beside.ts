import { type Pattern, pieceNamed } from '@paperhinge/geometry';
import type { CutEnd } from '../hinge/cut.js';
import { type Beside, counterpartOf } from '../matching/counterparts.js';
import { type DivisionEnd, type DivisionWish, divisionCut } from './course.js';

/** A division with the names of what it makes. */
export interface NamedDivision extends DivisionWish {
  readonly piece: string;
  readonly name: string;
  readonly seam?: string;
}

/**
 * The division of a piece beside that goes on from this one over the seam between them: along the line of the same name
 * there, or from the same place of the seam to what answers to the other end. Nothing where the cut does not end at
 * that seam, or nothing answers to its other end.
 */
export function divisionBeside<Wish extends NamedDivision>(
  pattern: Pattern,
  wish: Wish,
  beside: Beside,
): Wish | undefined {
  const cut = divisionCut(pieceNamed(pattern, wish.piece), wish);
  if (![cut.from, cut.to].some(end => isAtSeam(end, beside))) return undefined;
  const other = pieceNamed(pattern, beside.piece);
  const named = { ...wish, ...namesBeside(wish, beside.piece), piece: other.name };
  if (wish.line !== undefined) return other.lines.some(line => line.name === wish.line) ? named : undefined;
  const end = ({ edge, at, dart }: DivisionEnd): DivisionEnd | undefined => {
    if (edge !== undefined) return counterpartOf(pattern, wish.piece, { edge, at: at ?? middle }, beside);
    return other.outline.parts.some(part => part.type === 'dart' && part.name === dart)
      ? { dart: dart! }
      : undefined;
  };
  const from = end(wish.from!),
    to = end(wish.to!);
  if (!from || !to) return undefined;
  const { through, ...rest } = named;
  const isThere = other.marks.some(mark => mark.name === through);
  return { ...rest, from, to, ...(isThere ? { through } : {}) } as Wish;
}

const middle = { share: 0.5 };

const isAtSeam = (end: CutEnd, { own }: Beside): boolean => 'edge' in end && own.includes(end.edge);

/** A `front yoke` is a `back yoke` beside; any other name is given the other piece's before it. */
export function namesBeside(
  { piece, name, seam }: { readonly piece: string; readonly name: string; readonly seam?: string },
  beside: string,
): { readonly name: string; readonly seam?: string } {
  const there = (given: string): string =>
    given.includes(piece) ? given.replaceAll(piece, beside) : `${beside} ${given}`;
  return { name: there(name), ...(seam === undefined ? {} : { seam: there(seam) }) };
}
