import {
  at,
  type Cutting,
  type Edge,
  type EdgeRef,
  line,
  type Notch,
  type Piece,
  type PieceLine,
  type PieceRole,
  type Point,
  pathOf,
} from '@paperhinge/geometry';

/** A straight piece drafted for edges: its stitching line a rectangle, its cutting line one of the whole length. */
export interface LongPiece {
  readonly name: string;
  readonly madeFor: readonly EdgeRef[];
  /** Where the start of its sewn edge lies in the drawing. */
  readonly place: Point;
  readonly fabric: string;
  /** mm between the joins, and between the two long stitching lines. */
  readonly finishedLength: number;
  readonly finishedWidth: number;
  /** mm of allowance at the ends, and on both long edges. */
  readonly join: number;
  readonly allowance: number;
  readonly grain: 'along' | 'across' | 'bias';
  readonly notches: readonly Omit<Notch, 'edge'>[];
  readonly note?: string;
  readonly role: PieceRole;
  /** How many are cut, and whether as mirrored pairs. */
  readonly cut: Pick<Cutting, 'count' | 'mirrored'>;
}

/** The edge that is sewn to what the piece was made for; it begins at the first end. */
export const sewnEdge = 'sewn';
/** The long edge across from it: of a folded band the one that is caught inside. */
const freeEdge = 'free';
export const endEdges = ['join-start', 'join-end'] as const;

/** Lays a long piece out to the right of its place, its sewn edge on top. */
export function longPiece(long: LongPiece): Piece {
  const { finishedLength: length, finishedWidth: width, place } = long;
  const spot = (x: number, y: number): Point => at(place.x + x, place.y + y);
  const corner = { a: spot(0, 0), b: spot(length, 0), c: spot(length, width), d: spot(0, width) };
  const side = (name: string, from: Point, to: Point, allowance: number): Edge => ({
    type: 'edge',
    name,
    path: pathOf(line(from, to)),
    kind: 'seam',
    allowance,
    // Square ends, so that the cutting line is the rectangle the maker measures out.
    corners: { start: 'mitre', end: 'mitre' },
  });
  const cutting: Cutting = {
    ...long.cut,
    fabric: long.fabric,
    ...(long.note === undefined ? {} : { note: long.note }),
  };
  return {
    name: long.name,
    title: titled(long.name),
    role: long.role,
    outline: {
      parts: [
        side(sewnEdge, corner.a, corner.b, long.allowance),
        side(endEdges[1], corner.b, corner.c, long.join),
        side(freeEdge, corner.c, corner.d, long.allowance),
        side(endEdges[0], corner.d, corner.a, long.join),
      ],
    },
    notches: long.notches.map(notch => ({ ...notch, edge: sewnEdge })),
    lines: [grainOf(long, spot), foldOf(long, spot)],
    marks: [],
    cutting,
    madeFor: long.madeFor,
  };
}

export const titled = (name: string): string => `${name.charAt(0).toUpperCase()}${name.slice(1)}`;

type Spot = (x: number, y: number) => Point;

function grainOf({ finishedLength, finishedWidth, grain }: LongPiece, spot: Spot): PieceLine {
  const middle = at(finishedLength / 4, finishedWidth / 2);
  const reach =
    grain === 'along' ? finishedLength * 0.15 : Math.min(finishedWidth * 0.4, finishedLength * 0.15);
  const way = { along: at(reach, 0), across: at(0, reach), bias: at(reach, reach) }[grain];
  const from = spot(middle.x - way.x, middle.y + way.y),
    to = spot(middle.x + way.x, middle.y - way.y);
  return { kind: 'grain', name: 'grain', path: pathOf(line(from, to)) };
}

const foldOf = ({ finishedLength, finishedWidth }: LongPiece, spot: Spot): PieceLine => ({
  kind: 'fold',
  name: 'fold',
  path: pathOf(line(spot(0, finishedWidth / 2), spot(finishedLength, finishedWidth / 2))),
});
