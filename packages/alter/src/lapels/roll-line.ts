import {
  edgePath,
  type Notch,
  type Path,
  type Pattern,
  type Piece,
  type Point,
  pathLength,
  pieceNamed,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { pathEnd, pathStart, pointAlong, reversedPath, tangentAlong } from '@paperhinge/geometry/paths';
import { type EdgePosition, resolvePosition } from '@paperhinge/geometry/pattern';
import { add, dot, leftOf, scale, subtract, unit } from '@paperhinge/geometry/plane';
import { type Item, partOfRun, type Run } from '../moved-edges/composed.js';
import { type EdgeInRing, edgeInRing } from '../redrawn-edges/corner-moved.js';
import { refusal } from './tellings.js';

/** What a roll line is drawn from. Lengths in mm. */
export interface RollWish {
  readonly piece: string;
  /** The neck's edge on it, and the front edge that meets the neck. */
  readonly neck: string;
  readonly edge: string;
  /** Where on the front edge the lapel begins to roll. */
  readonly break: EdgePosition;
  /** How high the collar stands at the centre back. */
  readonly stand: number;
}

/** A front as a lapel is drawn on to it, in the sense from its front edge up to its shoulder. */
export interface RollLine {
  readonly piece: Piece;
  readonly ring: EdgeInRing;
  readonly neck: Run;
  /** The front edge as far as the break point, and its place in the ring. */
  readonly front: Run;
  readonly frontIndex: number;
  /** The outline runs from the front edge over the neck to the shoulder; else all that is drawn is turned round. */
  readonly forwards: boolean;
  /** Where the neck meets the shoulder. */
  readonly neckPoint: Point;
  readonly breakPoint: Point;
  /** The front edge's way up at the break point. */
  readonly upFront: Point;
  /** Where the roll line meets the shoulder, run on beyond the neck by the stand less 5 mm. */
  readonly top: Point;
  /** Along the roll line upwards, and square to it, away from the neck. */
  readonly up: Point;
  readonly out: Point;
}

/** What the line is called that lapel and collar roll on, and the mark where it begins. */
export const rollLineName = 'roll line';
export const breakName = 'break point';

/** mm by which the roll line lies nearer to the neck than the stand is high, so that the fall covers the seam. Common practice, no source. */
const covered = 5;

/**
 * The roll line of a front: the shoulder is run on beyond the neck by the stand less 5 mm, and a straight line drawn
 * from there to the break point.
 *
 * @throws PatternError `edge-in-two-parts`, `front-edge-not-at-neck`, `lapel-on-fold`, `break-at-neck`, `break-at-hem`,
 *   `break-at-shoulder-level`; `unknown-piece`, `unknown-edge`; those of `resolvePosition`
 */
export function rollLine(pattern: Pattern, wish: RollWish): RollLine {
  const piece = pieceNamed(pattern, wish.piece);
  const ring = edgeInRing(piece, wish.neck);
  const { items, index, run: neck } = ring;
  const place = (step: 1 | -1) => (index + step + items.length) % items.length;
  const isFront = (item: Item): item is Run => item.type === 'run' && item.edge.name === wish.edge;
  const edge = { piece: piece.name, edge: wish.edge };
  const at = ([place(-1), place(1)] as const).find(i => isFront(items[i]!));
  const along = resolvePosition(piece, wish.edge, wish.break);
  if (at === undefined)
    throw refusal(
      'front-edge-not-at-neck',
      {
        edge,
        neck: { piece: piece.name, edge: wish.neck },
        beside: [place(-1), place(1)].map(i => thingOf(piece, items[i]!)),
      },
      edge,
    );
  const whole = items[at] as Run;
  if (whole.edge.kind === 'fold') throw refusal('lapel-on-fold', { edge }, edge);
  const forwards = at === place(-1);
  const length = pathLength(whole.path);
  const [below, above] = forwards ? [along, length - along] : [length - along, along];
  if (above <= tolerances.joiningGap) throw refusal('break-at-neck', { edge }, edge);
  if (below <= tolerances.joiningGap) throw refusal('break-at-hem', { edge }, edge);
  const front = forwards ? partOfRun(whole, 0, along) : partOfRun(whole, along, length);
  const upFront = tangentAlong(whole.path, along);
  const shoulder = items[forwards ? place(1) : place(-1)]!;
  const neckPoint = (forwards ? pathEnd : pathStart)(neck.path);
  const breakPoint = pointAlong(whole.path, along);
  const top = add(neckPoint, scale(shoulderWay(shoulder, forwards), Math.max(0, wish.stand - covered)));
  return {
    piece,
    ring,
    neck,
    front,
    frontIndex: at,
    forwards,
    neckPoint,
    breakPoint,
    upFront: forwards ? upFront : scale(upFront, -1),
    top,
    ...directions(breakPoint, top, neckPoint, edge),
  };
}

const thingOf = (piece: Piece, item: Item) =>
  item.type === 'run'
    ? { piece: piece.name, edge: item.edge.name }
    : { piece: piece.name, [item.type]: item.name };

/** From the neck away from the shoulder. */
function shoulderWay(shoulder: Item, forwards: boolean): Point {
  const path: Path =
    shoulder.type === 'run' ? shoulder.path : shoulder.type === 'dart' ? shoulder.legs[0] : shoulder.mouth;
  const outwards = forwards ? path : reversedPath(path);
  return scale(unit(subtract(pathEnd(outwards), pathStart(outwards))), -1);
}

/** @throws PatternError `break-at-shoulder-level` where the roll line would pass through the neck's end */
function directions(breakPoint: Point, top: Point, neckPoint: Point, edge: object) {
  const up = unit(subtract(top, breakPoint));
  const side = dot(leftOf(up), subtract(neckPoint, breakPoint));
  if (Math.abs(side) <= tolerances.joiningGap) throw refusal('break-at-shoulder-level', { edge }, edge);
  return { up, out: scale(leftOf(up), side > 0 ? -1 : 1) };
}

/** The front with its break point marked, and notched at the end of the front edge, as where a fair edge begins to roll. */
export function withBreakMarked(piece: Piece, { front, forwards, breakPoint }: RollLine): Piece {
  const edge = front.edge.name;
  const notch: Notch = {
    edge,
    at: forwards ? pathLength(edgePath(piece, edge)) : 0,
    style: 'single',
    name: breakName,
  };
  return {
    ...piece,
    notches: [...piece.notches.filter(n => n.name !== breakName), notch],
    marks: [
      ...piece.marks.filter(m => m.name !== breakName),
      { kind: 'point', name: breakName, at: breakPoint },
    ],
  };
}

/**
 * The ring with the front edge cut off at the break point and these runs, in the sense from there to the shoulder,
 * instead of the neck.
 */
export function withLapel(roll: RollLine, fresh: readonly Run[]): readonly Item[] {
  const { ring, front, frontIndex, forwards } = roll;
  const drawn = forwards ? fresh : fresh.toReversed().map(run => ({ ...run, path: reversedPath(run.path) }));
  return ring.items.flatMap((item, i): readonly Item[] => {
    if (i === ring.index) return drawn;
    return i === frontIndex ? [front] : [item];
  });
}
