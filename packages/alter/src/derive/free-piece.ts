import {
  at,
  type Cutting,
  line,
  type Piece,
  type PieceRole,
  type Point,
  pathOf,
  polyline,
} from '@paperhinge/geometry';
import { grainLine, seamEdge } from './collar-shapes.js';
import { titled } from './long-piece.js';

/** A rectangle, or one whose far end runs to a point. Lengths in mm, finished. */
export interface FreePiece {
  readonly name: string;
  readonly role: PieceRole;
  readonly place: Point;
  readonly length: number;
  readonly width: number;
  readonly pointed: boolean;
  readonly allowance: number;
  readonly cutting: Cutting;
  /** Folded lengthwise along its middle. */
  readonly folded: boolean;
}

/** A straight piece that is made for no edge: a tie, a strap, a loop, a placket. */
export function freePiece({
  name,
  role,
  place,
  length,
  width,
  pointed,
  allowance,
  cutting,
  folded,
}: FreePiece): Piece {
  const spot = (x: number, y: number): Point => at(place.x + x, place.y + y);
  // At 45°, so that folded lengthwise the two slants are sewn on one another.
  const tip = pointed ? [spot(length + width / 2, width / 2)] : [];
  return {
    name,
    title: titled(name),
    role,
    outline: {
      parts: [
        seamEdge('long', pathOf(line(spot(0, 0), spot(length, 0))), allowance),
        seamEdge('tip', polyline(spot(length, 0), ...tip, spot(length, width)), allowance),
        seamEdge('other long', pathOf(line(spot(length, width), spot(0, width))), allowance),
        seamEdge('end', pathOf(line(spot(0, width), spot(0, 0))), allowance),
      ],
    },
    notches: [],
    lines: [
      grainLine(spot(length * 0.3, width / 2), spot(length * 0.6, width / 2)),
      ...(folded
        ? [
            {
              kind: 'fold' as const,
              name: 'fold',
              path: pathOf(line(spot(0, width / 2), spot(length, width / 2))),
            },
          ]
        : []),
    ],
    marks: [],
    cutting,
  };
}
