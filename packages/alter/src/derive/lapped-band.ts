import {
  type Cutting,
  type Edge,
  type EdgeRef,
  line,
  type Notch,
  type Path,
  type Piece,
  type PieceLine,
  type PieceRole,
  type Point,
  pathOf,
} from '@paperhinge/geometry';
import { titled } from './long-piece.js';
import { laidOut } from './straight-or-arc.js';

/** A waistband or cuff: sewn along the middle of one long edge, with laps beyond it. Lengths in mm. */
export interface LappedBand {
  readonly name: string;
  readonly role: PieceRole;
  readonly madeFor: readonly EdgeRef[];
  readonly place: Point;
  readonly fabric: string;
  /** On the sewn edge: before its first end, between, and beyond its last. */
  readonly overlap: number;
  readonly sewn: number;
  readonly underlap: number;
  /** Finished. */
  readonly width: number;
  /** The far edge is so many times as long as the sewn one. */
  readonly ratio: number;
  /** Cut twice as wide and folded lengthwise, else cut in two layers. */
  readonly folded: boolean;
  readonly allowance: number;
  readonly notches: readonly Omit<Notch, 'edge'>[];
  /** How many the garment has. */
  readonly count: number;
  readonly interfaced: boolean;
}

export const lapEdges = { start: 'overlap', end: 'underlap' } as const;

/** Lays a lapped band out: on top the overlap, the sewn edge and the underlap, across from them the free edge. */
export function lappedBand(band: LappedBand): Piece {
  const { overlap, sewn, underlap, folded } = band;
  const whole = overlap + sewn + underlap;
  const across = folded ? 2 * band.width : band.width;
  const lay = laidOut(band.place, whole, across, band.ratio);
  const edge = (name: string, path: Path): Edge => ({
    type: 'edge',
    name,
    path,
    kind: 'seam',
    allowance: band.allowance,
    corners: { start: 'mitre', end: 'mitre' },
  });
  const end = (along: number, from: number, to: number): Path =>
    pathOf(line(lay.spot(along, from), lay.spot(along, to)));
  const { cutting, alsoCut } = cuttingOf(band);
  return {
    name: band.name,
    title: titled(band.name),
    role: band.role,
    outline: {
      parts: [
        ...(overlap > 0 ? [edge(lapEdges.start, lay.line(0, overlap, 0))] : []),
        edge('sewn', lay.line(overlap, overlap + sewn, 0)),
        ...(underlap > 0 ? [edge(lapEdges.end, lay.line(overlap + sewn, whole, 0))] : []),
        edge('join-end', end(whole, 0, across)),
        edge('free', lay.line(whole, 0, across)),
        edge('join-start', end(0, across, 0)),
      ],
    },
    notches: band.notches.map(notch => ({ ...notch, edge: 'sewn' })),
    lines: [
      grain(lay.spot(whole * 0.4, across / 2), lay.spot(whole * 0.6, across / 2)),
      ...(folded ? [foldLine(lay.line(0, whole, band.width))] : []),
    ],
    marks: [],
    cutting,
    ...(alsoCut ? { alsoCut } : {}),
    madeFor: band.madeFor,
  };
}

function cuttingOf({ count, folded, fabric, interfaced }: LappedBand) {
  const cutting: Cutting = folded
    ? { count, mirrored: count % 2 === 0, fabric }
    : { count: 2 * count, mirrored: true, layers: 2, fabric };
  const alsoCut: readonly Cutting[] = [{ count, mirrored: count % 2 === 0, fabric: 'interfacing' }];
  return interfaced ? { cutting, alsoCut } : { cutting };
}

const grain = (from: Point, to: Point): PieceLine => ({
  kind: 'grain',
  name: 'grain',
  path: pathOf(line(from, to)),
});
const foldLine = (path: Path): PieceLine => ({ kind: 'fold', name: 'fold', path });
