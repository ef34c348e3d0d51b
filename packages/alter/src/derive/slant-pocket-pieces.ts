import {
  type Edge,
  type Notch,
  type Path,
  type Pattern,
  type Piece,
  type PieceLine,
  type Point,
  pathLength,
} from '@paperhinge/geometry';
import {
  endTangent,
  fairCurve,
  joined,
  pathStart,
  reversedPath,
  startTangent,
  subpath,
} from '@paperhinge/geometry/paths';
import { pathsOfPart } from '@paperhinge/geometry/pattern';
import { add, rightOf, scale, subtract } from '@paperhinge/geometry/plane';
import { centroid } from '@paperhinge/geometry/regions';
import type { Derived } from '../alteration.js';
import { grainOrVertical } from '../moved-edges/grain.js';
import { grainLine, seamEdge } from './collar-shapes.js';
import { laidAside } from './free-place.js';
import { titled } from './long-piece.js';
import type { WholeSlantPocket } from './slant-pocket-wish.js';
import { type DraftedSeam, takePlace } from './take-place.js';

/** One of the two edges at the corner: what of it closes the corner that was cut off, and what the bag takes beyond. */
export interface PocketEdge {
  readonly edge: Edge;
  readonly closing: Path;
  readonly bag: Path;
}

/** A mouth, and the two edges that it cuts the corner off between, clockwise, as they lie on the piece. */
export interface PocketCorner {
  readonly mouth: Path;
  readonly first: PocketEdge;
  readonly second: PocketEdge;
}

/** The piece behind the mouth, with the corner and the bag, and the bag that faces the mouth. */
export interface PocketPieces {
  readonly side: Piece;
  readonly facing: Piece;
}

/** Both pieces of a slant pocket as they lie on the piece that it is for. */
export function pocketPieces(source: Piece, wish: WholeSlantPocket, corner: PocketCorner): PocketPieces {
  const { name, allowance } = wish;
  const { mouth, first, second } = corner;
  const firstPart = joined(first.bag, first.closing),
    secondPart = joined(second.closing, second.bag);
  const bag = bagFrom(secondPart, firstPart);
  const halfBag: Notch = { edge: 'bag', at: pathLength(bag) / 2, style: 'single', name: 'bag' };
  const fabric = wish.fabric ?? source.cutting.fabric;
  const side = pieceOf(
    source,
    { name: `${name} side`, fabric },
    [
      { ...first.edge, path: firstPart },
      { ...second.edge, path: secondPart },
      seamEdge('bag', bag, allowance),
    ],
    [halfBag],
  );
  const facing = pieceOf(
    source,
    { name: `${name} facing`, fabric },
    [
      { ...first.edge, name: `${first.edge.name} inner`, path: first.bag },
      seamEdge('mouth', mouth, allowance),
      { ...second.edge, name: `${second.edge.name} lower`, path: second.bag },
      seamEdge('bag', bag, allowance),
    ],
    [halfBag],
  );
  const shown: PieceLine = { kind: 'style', name: 'mouth', path: mouth };
  const madeFor = [{ piece: source.name, edge: 'mouth' }];
  return { side: { ...side, lines: [...side.lines, shown] }, facing: { ...facing, madeFor } };
}

/** How both pieces were made, and from where to where the side piece was laid aside: what `refresh` draws them by. */
export interface SlantPocketMade extends WholeSlantPocket {
  readonly laidBy: Point;
}

/**
 * A pattern with both pieces laid aside in it, in the place of those of their names.
 * @param mouthSeam that of pieces drawn again, which keeps its name
 */
export function withPocket(
  pattern: Pattern,
  { side, facing }: PocketPieces,
  wish: WholeSlantPocket,
  mouthSeam?: DraftedSeam,
): { readonly pattern: Pattern; readonly side: Piece } {
  const laid = laidAside(pattern, side);
  const laidBy = subtract(startOf(laid), startOf(side));
  const parameters: Readonly<Record<keyof SlantPocketMade, unknown>> = { fabric: undefined, ...wish, laidBy };
  const recipe = { verb: 'draft slant pocket', parameters };
  const placed = takePlace(pattern, { ...laid, recipe }, undefined).pattern;
  const faced = takePlace(placed, { ...laidAside(placed, facing), recipe }, mouthSeam).pattern;
  return { pattern: faced, side: laid };
}

const startOf = ({ outline }: Piece): Point => pathStart(pathsOfPart(outline.parts[0]!)[0]!);

/** What a record says of one of the two pieces. */
export const derivedPocket = ({ name, cutting, madeFor = [] }: Piece): Derived => ({
  name,
  kind: 'pocket',
  lengthMm: 0,
  widthMm: 0,
  fabric: cutting.fabric,
  along: madeFor,
  edgeMm: 0,
  figures: {},
});

/** The last so many mm of a path. */
export const tail = (path: Path, length: number): Path =>
  subpath(path, pathLength(path) - length, Number.POSITIVE_INFINITY);

/** The bag from the end of one line round to the beginning of another, leaving and arriving square to them. */
const bagFrom = (leaving: Path, arriving: Path): Path =>
  fairCurve(
    { point: pathStart(reversedPath(leaving)), direction: rightOf(endTangent(leaving)) },
    { point: pathStart(arriving), direction: scale(rightOf(startTangent(arriving)), -1) },
  );

/** mm. */
const halfGrain = 40;

function pieceOf(
  source: Piece,
  { name, fabric }: { readonly name: string; readonly fabric: string },
  parts: readonly Edge[],
  notches: readonly Notch[],
): Piece {
  const middle = centroid(joined(...parts.map(({ path }) => path)));
  const { grain } = grainOrVertical(source);
  const { count, mirrored, layers = 1 } = source.cutting;
  return {
    name,
    title: titled(name),
    role: 'pocket',
    outline: { parts },
    notches,
    lines: [grainLine(add(middle, scale(grain, -halfGrain)), add(middle, scale(grain, halfGrain)))],
    marks: [],
    cutting: { count: count / layers, mirrored, fabric },
  };
}
