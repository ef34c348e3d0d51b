import { type EdgeRun, edgeNames, edgePath, type Pattern, pathLength } from '@paperhinge/geometry';
import { proposeNames, type SeamProposal } from '@paperhinge/geometry/trace';
import type { Draft } from './twenty-drafts.js';

// What of the seams proposed for a drawing is right. A seam in several parts is right if its parts together are the seam,
// and so are several seams told as one.

/** The edges of the two sides of a seam, `piece.edge`. */
export type SeamSides = readonly [a: readonly string[], b: readonly string[]];

/** How many of the known seams were proposed, and what was proposed wrongly. */
export interface SeamTally {
  readonly seams: number;
  readonly right: number;
  /** Told with a confidence over 0.9. */
  readonly sureAndWrong: readonly string[];
  readonly missed: readonly string[];
}

/**
 * A side of a seam by its edges, each once; of the two long sides of a straight band either may be sewn, and of a piece
 * that is alike on its left and right either side.
 */
export const sideOf = (
  pattern: Pattern,
  runs: readonly Pick<EdgeRun, 'piece' | 'edge'>[],
): readonly string[] => [...new Set(runs.map(run => `${run.piece}.${twinOf(pattern, run)}`))].sort();

function twinOf(pattern: Pattern, { piece, edge }: Pick<EdgeRun, 'piece' | 'edge'>): string {
  const own = pattern.pieces.find(p => p.name === piece)!;
  const names = edgeNames(own);
  const length = (name: string): number => pathLength(edgePath(own, name));
  const isRectangle =
    names.length === 4 && [0, 1].every(i => Math.abs(length(names[i]!) - length(names[i + 2]!)) < 0.1);
  const opposite = names[(names.indexOf(edge) + 2) % 4];
  const twin = isRectangle ? opposite! : mirrored(names, length, edge);
  return [edge, twin].sort()[0]!;
}

/** The edge on the other side of a piece whose edges are as long backwards as forwards; itself where they are not. */
function mirrored(names: readonly string[], length: (name: string) => number, edge: string): string {
  const at = (i: number): string => names[(i + names.length) % names.length]!;
  const axis = names.findIndex((_, sum) =>
    names.every((name, i) => Math.abs(length(name) - length(at(sum - i))) < 0.1),
  );
  return axis < 0 ? edge : at(axis - names.indexOf(edge));
}

const keyOf = (sides: SeamSides): string =>
  sides
    .map(side => side.join(' + '))
    .sort()
    .join(' = ');

const isPartOf = ([a, b]: SeamSides, whole: SeamSides): boolean =>
  [whole, [whole[1], whole[0]] as const].some(
    ([c, d]) => a.every(edge => c.includes(edge)) && b.every(edge => d.includes(edge)),
  );

/** Whether seams together make one, each a part of it. */
const make = (whole: SeamSides, all: readonly SeamSides[]): boolean => {
  const parts = all.filter(one => isPartOf(one, whole));
  return whole.flat().every(edge => parts.some(part => part.flat().includes(edge)));
};

/** Proposals beside what is known. */
export function tally(
  pattern: Pattern,
  known: readonly SeamSides[],
  proposed: readonly SeamProposal[],
): SeamTally {
  const truth = [...new Map(known.map(sides => [keyOf(sides), sides])).values()];
  const told = proposed.map(({ seam }): SeamSides => [sideOf(pattern, seam.a), sideOf(pattern, seam.b)]);
  const isRight = (sides: SeamSides): boolean =>
    make(sides, truth) || truth.some(one => isPartOf(sides, one) && make(one, told));
  const right = told.filter(isRight);
  const isFound = (one: SeamSides): boolean => make(one, right) || right.some(sides => isPartOf(one, sides));
  return {
    seams: truth.length,
    right: truth.filter(isFound).length,
    sureAndWrong: told.filter((sides, i) => proposed[i]!.confidence > 0.9 && !isRight(sides)).map(keyOf),
    missed: truth.filter(one => !isFound(one)).map(keyOf),
  };
}

/** What is proposed for a draft beside its seams. */
export function ofDraft({ pattern, seams }: Draft): SeamTally {
  const side = (edges: readonly string[]): readonly string[] =>
    sideOf(
      pattern,
      edges.map(ref => ({ piece: ref.split('.')[0]!, edge: ref.split('.')[1]! })),
    );
  return tally(
    pattern,
    seams.map(([a, b]) => [side(a), side(b)]),
    proposeNames(pattern).seams,
  );
}

/** Several tallies as one. */
export const sumOf = (tallies: readonly SeamTally[]): SeamTally => ({
  seams: tallies.reduce((all, one) => all + one.seams, 0),
  right: tallies.reduce((all, one) => all + one.right, 0),
  sureAndWrong: tallies.flatMap(one => one.sureAndWrong),
  missed: tallies.flatMap(one => one.missed),
});
