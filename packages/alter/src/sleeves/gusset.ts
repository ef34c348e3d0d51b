import {
  at,
  type Cutting,
  edgePath,
  type Path,
  type Piece,
  type Point,
  pathLength,
  pathOf,
} from '@paperhinge/geometry';
import { nearestOnPath, pathEnd, pointAlong, subpath } from '@paperhinge/geometry/paths';
import { add, dot, scale, subtract, unit } from '@paperhinge/geometry/plane';
import { grainLine, seamEdge } from '../derive/collar-shapes.js';
import type { Kimono, SleeveLines } from './kimono.js';
import { refusal } from './tellings.js';

/** mm on either side of the underarm at which the slash's stitching lines begin, running out to nothing at its end. */
const mouth = 6;

/** The slash for a gusset into a body, and the underarm line that is left. */
export interface GussetLines {
  readonly underarm: Path;
  readonly towardsSleeve: Path;
  readonly towardsSide: Path;
  /** mm of the side that its mouth takes. */
  readonly takenMm: number;
}

/**
 * A slash from the underarm in, half way between side and sleeve; its stitching lines begin 6 mm from the underarm on
 * either side, for the allowance that runs out to nothing at its end.
 *
 * @throws PatternError `gusset-too-deep` where it would leave the piece
 */
export function gussetLines(laid: Kimono, { underarm }: SleeveLines, depth: number): GussetLines {
  const { piece } = laid.body;
  const length = pathLength(underarm);
  const corner = pathEnd(underarm);
  const side = edgePath(piece, laid.sideEdge);
  const { along } = nearestOnPath(side, corner);
  // The side's end at the underarm is that which the new seam cuts off.
  const atStart = along <= laid.dropMm + 0.01;
  const below = pointAlong(side, atStart ? along + mouth : along - mouth);
  const beside = pointAlong(underarm, length - mouth);
  const inwards = unit(add(unit(subtract(below, corner)), unit(subtract(beside, corner))));
  const inner = dot(inwards, subtract(laid.tip, corner)) >= 0 ? inwards : scale(inwards, -1);
  const end = add(corner, scale(inner, depth));
  if (depth <= mouth) throw refusal('gusset-too-shallow', { leastMm: mouth }, { piece: piece.name });
  return {
    underarm: subpath(underarm, 0, length - mouth),
    towardsSleeve: pathOf([beside, end]),
    towardsSide: pathOf([end, below]),
    takenMm: mouth,
  };
}

/** mm of a gusset's four sides: to the first body's sleeve and side, and to the second's. */
export interface GussetSides {
  readonly sleeve: readonly [number, number];
  readonly side: readonly [number, number];
}

/**
 * The gusset: two triangles on one line from the underarm seam to the side seam, square at the front slash's end.
 * Its edges are named `sleeve` and `side` with the bodies' names behind them.
 */
export function gussetPiece(
  name: string,
  { sleeve, side }: GussetSides,
  bodies: readonly [string, string],
  made: { readonly place: Point; readonly allowance: number; readonly cutting: Cutting },
): Piece {
  const wide = Math.hypot(sleeve[0], side[0]);
  // How far along the line the slash's end lies, and how far off it.
  const apex = (upper: number, lower: number) => {
    const along = (upper ** 2 - lower ** 2 + wide ** 2) / (2 * wide);
    return { along, off: Math.sqrt(Math.max(0, upper ** 2 - along ** 2)) };
  };
  const [first, second] = [apex(sleeve[0], side[0]), apex(sleeve[1], side[1])];
  const spot = (x: number, y: number): Point => at(made.place.x + first.off + x, made.place.y + y);
  const [top, right, bottom, left] = [
    spot(0, 0),
    spot(second.off, second.along),
    spot(0, wide),
    spot(-first.off, first.along),
  ];
  const edge = (called: string, from: Point, to: Point) =>
    seamEdge(called, pathOf([from, to]), made.allowance);
  return {
    name,
    title: `${name[0]!.toUpperCase()}${name.slice(1)}`,
    role: 'gusset',
    outline: {
      parts: [
        edge(`sleeve ${bodies[1]}`, top, right),
        edge(`side ${bodies[1]}`, right, bottom),
        edge(`side ${bodies[0]}`, bottom, left),
        edge(`sleeve ${bodies[0]}`, left, top),
      ],
    },
    notches: [],
    lines: [grainLine(spot(0, wide * 0.2), spot(0, wide * 0.8))],
    marks: [],
    cutting: made.cutting,
  };
}
