import { type Affine, translation } from '../../affine.js';
import { type Path, pathStart, transformedPath } from '../../path/path.js';
import { definePattern, definePiece } from '../../pattern/build.js';
import type { Pattern } from '../../pattern/types.js';
import type { Point } from '../../vector.js';
import type { PhotoTrace, TracedPiece } from './photo-trace.js';
import type { TracedOutline } from './trace-floor.js';

/** mm: pieces whose tops differ by less stand in one row. */
const row = 100;

/** Outlines as pieces, named in reading order. */
export const namedPieces = (outlines: readonly TracedOutline[]): readonly TracedPiece[] =>
  namedSizes([outlines])[0]!;

/** The same of every size of a nest, outline for outline: pieces and edges are named as those of the first. */
export function namedSizes(
  sizes: readonly (readonly TracedOutline[])[],
): readonly (readonly TracedPiece[])[] {
  const corner = (points: readonly Point[]) => ({
    x: Math.min(...points.map(p => p.x)),
    y: Math.min(...points.map(p => p.y)),
  });
  const order = sizes[0]!
    .map((outline, index) => ({ index, at: corner(outline.points), first: upperLeft(outline.edges) }))
    .sort((a, b) => Math.round(a.at.y / row) - Math.round(b.at.y / row) || a.at.x - b.at.x);
  return sizes.map(outlines =>
    order.map(({ index, first }, i) => {
      const { edges, points, onPaper, isClear } = outlines[index]!;
      return {
        name: `piece-${i + 1}`,
        edges: [...edges.slice(first), ...edges.slice(0, first)],
        points,
        onPaper,
        isClear,
      };
    }),
  );
}

/** Which edge begins farthest to the upper left. */
function upperLeft(edges: readonly Path[]): number {
  const sums = edges.map(edge => pathStart(edge).x + pathStart(edge).y);
  return sums.indexOf(Math.min(...sums));
}

/** mm of empty sheet left of and above the pieces. */
const margin = 20;

/** The pieces as a pattern, as they lay, moved to the upper left of the sheet. Allowances are not known: none. */
export const patternOfTrace = (name: string, pieces: readonly TracedPiece[]): Pattern =>
  patternOf(name, pieces, homeOf(pieces));

/** A tracing as patterns, one for each size that was told apart, lying on one another as they lay; else one. */
export function patternsOfTrace(
  name: string,
  { pieces, sizes }: Pick<PhotoTrace, 'pieces' | 'sizes'>,
): readonly Pattern[] {
  if (!sizes) return [patternOfTrace(name, pieces)];
  const home = homeOf(sizes.flatMap(one => one.pieces));
  return sizes.map(one => ({ ...patternOf(name, one.pieces, home), size: one.size }));
}

const homeOf = (pieces: readonly TracedPiece[]): Affine => {
  const points = pieces.flatMap(p => p.points);
  return translation({
    x: margin - Math.min(...points.map(p => p.x)),
    y: margin - Math.min(...points.map(p => p.y)),
  });
};

const patternOf = (name: string, pieces: readonly TracedPiece[], home: Affine): Pattern =>
  definePattern({
    name,
    pieces: pieces.map(piece =>
      definePiece({
        name: piece.name,
        outline: piece.edges.map((edge, i) => ({ name: `edge-${i + 1}`, path: transformedPath(edge, home) })),
      }),
    ),
  });
