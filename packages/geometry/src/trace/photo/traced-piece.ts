import { translation } from '../../affine.js';
import { type Path, pathStart, transformedPath } from '../../path/path.js';
import { definePattern, definePiece } from '../../pattern/build.js';
import type { Pattern } from '../../pattern/types.js';
import type { Point } from '../../vector.js';
import type { TracedOutline } from './trace-floor.js';

/** A piece as traced: its edges from corner to corner, clockwise, in floor mm. */
export interface TracedPiece {
  readonly name: string;
  /** From corner to corner, from the upper left one on: they are called `edge-1`, `edge-2` ... */
  readonly edges: readonly Path[];
  /** The points on the picture's own edge that the edges were fitted to. */
  readonly points: readonly Point[];
  /** mm² of it that lie on sheets, where its edge is harder to see. */
  readonly onPaper: number;
  /** Whether its edge is clear against the ground all round; else it is less true. */
  readonly isClear: boolean;
}

/** mm: pieces whose tops differ by less stand in one row. */
const row = 100;

/** Outlines as pieces, named in reading order. */
export function namedPieces(outlines: readonly TracedOutline[]): readonly TracedPiece[] {
  const corner = (points: readonly Point[]) => ({
    x: Math.min(...points.map(p => p.x)),
    y: Math.min(...points.map(p => p.y)),
  });
  return outlines
    .map(outline => ({ outline, at: corner(outline.points) }))
    .sort((a, b) => Math.round(a.at.y / row) - Math.round(b.at.y / row) || a.at.x - b.at.x)
    .map(({ outline: { edges, points, onPaper, isClear } }, i) => ({
      name: `piece-${i + 1}`,
      edges: fromUpperLeft(edges),
      points,
      onPaper,
      isClear,
    }));
}

function fromUpperLeft(edges: readonly Path[]): readonly Path[] {
  const sums = edges.map(edge => pathStart(edge).x + pathStart(edge).y);
  const first = sums.indexOf(Math.min(...sums));
  return [...edges.slice(first), ...edges.slice(0, first)];
}

/** mm of empty sheet left of and above the pieces. */
const margin = 20;

/** The pieces as a pattern, as they lay, moved to the upper left of the sheet. Allowances are not known: none. */
export function patternOfTrace(name: string, pieces: readonly TracedPiece[]): Pattern {
  const points = pieces.flatMap(p => p.points);
  const home = translation({
    x: margin - Math.min(...points.map(p => p.x)),
    y: margin - Math.min(...points.map(p => p.y)),
  });
  return definePattern({
    name,
    pieces: pieces.map(piece =>
      definePiece({
        name: piece.name,
        outline: piece.edges.map((edge, i) => ({ name: `edge-${i + 1}`, path: transformedPath(edge, home) })),
      }),
    ),
  });
}
