import { type Edge, type OutlinePart, type Pattern, type Piece, pathOf } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { joined, pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { copiesInGarment, foldEdgeOf, outlinePath } from '@paperhinge/geometry/pattern';
import { distance } from '@paperhinge/geometry/plane';
import { selfCrossings } from '@paperhinge/geometry/regions';
import { startingIn } from '../moved-edges/meet.js';
import { facingJoints } from './facing-joints.js';
import { type FacingEnd, type FacingOn, unusedNames } from './facing-piece.js';
import { laidTo } from './laid-to.js';
import { refusal } from './tellings.js';

/**
 * Facings of several pieces cut as one: each is laid to the next along the seam that joins their pieces, as the paper
 * is laid together before one traces round it. Of several folds the first stays; at the others the piece is sewn to
 * its own mirror image, with `join` mm of allowance.
 * @throws PatternError `facings-do-not-join`, `facings-overlap`
 */
export function joinedFacings(pattern: Pattern, facings: readonly FacingOn[], join: number): FacingOn {
  let whole = facings[0]!;
  let rest = facings.slice(1);
  while (rest.length > 0) {
    const found = rest.flatMap(other =>
      facingJoints(pattern, [whole, other])
        .filter(({ first, second }) => first.facing === whole && second.facing === other)
        .map(({ first, second }) => ({ other, own: first.end, its: second.end })),
    )[0];
    if (!found || copiesInGarment(whole.piece) !== copiesInGarment(found.other.piece))
      throw refusal('facings-do-not-join', { pieces: sourcesOf([whole, ...rest]) });
    const laid = renamed(whole.piece, laidTo(whole, found.own, found.other, found.its));
    whole = withoutEnd(whole, laid.facing, found.own, laid.nameOf(found.its.edge), join);
    rest = rest.filter(facing => facing !== found.other);
  }
  if (selfCrossings(outlinePath(whole.piece.outline)).length > 0)
    throw refusal('facings-overlap', { pieces: sourcesOf(facings) });
  return whole;
}

const sourcesOf = (facings: readonly FacingOn[]) =>
  [...new Set(facings.flatMap(f => f.faced.map(one => one.source.piece)))].map(piece => ({ piece }));

/** A facing whose edges have names that another has not: where one is taken, with that of its source. */
function renamed(beside: Piece, facing: FacingOn) {
  const taken = new Set(beside.outline.parts.map(p => p.name));
  const unused = unusedNames([...taken]);
  const source = facing.faced[0]!.source.piece;
  const names = new Map(
    facing.piece.outline.parts.map(({ name }) => [
      name,
      unused(taken.has(name) && name !== 'inner' ? `${name}-${source}` : name),
    ]),
  );
  const nameOf = (edge: string): string => names.get(edge)!;
  const { piece } = facing;
  return {
    nameOf,
    facing: {
      ...facing,
      piece: {
        ...piece,
        outline: { parts: piece.outline.parts.map(part => ({ ...part, name: nameOf(part.name) })) },
        notches: piece.notches.map(notch => ({ ...notch, edge: nameOf(notch.edge) })),
      },
      faced: facing.faced.map(one => ({ ...one, edge: nameOf(one.edge) })),
      ends: facing.ends.map(end => ({ ...end, edge: nameOf(end.edge) })),
    },
  };
}

/** Two facings that lie end on end as one: both ends go, and the two inner lines become one. */
function withoutEnd(base: FacingOn, other: FacingOn, own: FacingEnd, its: string, join: number): FacingOn {
  const folded = foldEdgeOf(base.piece) !== undefined;
  const closed = folded ? other.piece.outline.parts.filter(isFold).map(p => p.name) : [];
  const around = ringAfter(base.piece, own.edge),
    beyond = ringAfter(other.piece, its).map(part =>
      closed.includes(part.name) ? asSeam(part, join) : part,
    );
  const parts = own.corner === 'start' ? woven(beyond, around) : woven(around, beyond);
  const copies = copiesInGarment(base.piece);
  const count = parts.some(isFold) ? copies / 2 : copies;
  const { cutting, notches, madeFor = [] } = base.piece;
  return {
    piece: {
      ...base.piece,
      outline: { parts },
      notches: [...notches, ...other.piece.notches],
      cutting: { ...cutting, count, mirrored: !parts.some(isFold) && cutting.mirrored },
      madeFor: [...madeFor, ...(other.piece.madeFor ?? [])],
    },
    faced: own.corner === 'start' ? [...base.faced, ...other.faced] : [...other.faced, ...base.faced],
    ends: [...base.ends, ...other.ends].filter(end => end.edge !== own.edge && end.edge !== its),
    closed: [...base.closed, ...closed],
  };
}

const isFold = (part: OutlinePart): boolean => part.type === 'edge' && part.kind === 'fold';

const asSeam = (edge: Edge, allowance: number): Edge => ({ ...edge, kind: 'seam', allowance });

/** The outline clockwise from the end of an edge round to its start, without it. */
function ringAfter({ outline: { parts } }: Piece, edge: string): readonly Edge[] {
  const at = parts.findIndex(p => p.name === edge);
  return [...parts.slice(at + 1), ...parts.slice(0, at)] as readonly OutlinePart[] as readonly Edge[];
}

/** Two open rings as one: the inner lines at which they meet become one line, and the faced lines share their corner. */
function woven(first: readonly Edge[], second: readonly Edge[]): readonly Edge[] {
  const [a, b] = [first.at(-1)!, second[0]!];
  const ends = [pathEnd(a.path), pathStart(b.path)] as const;
  const path =
    distance(...ends) <= tolerances.joiningGap
      ? joined(a.path, startingIn(b.path, ends[0]))
      : joined(a.path, pathOf([...ends]), b.path);
  const corner = pathEnd(second.at(-1)!.path);
  const outer = { ...first[0]!, path: startingIn(first[0]!.path, corner) };
  return [outer, ...first.slice(1, -1), { ...a, name: 'inner', path }, ...second.slice(1)];
}
