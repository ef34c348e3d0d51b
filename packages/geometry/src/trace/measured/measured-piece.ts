import { stitchingLine } from '../../cutting-line/stitching-line.js';
import { locating } from '../../errors.js';
import { fairLine } from '../../path/fair-line.js';
import { nearestOnPath } from '../../path/nearest.js';
import { joined, type Path, polyline, reversedPath } from '../../path/path.js';
import { definePiece } from '../../pattern/build.js';
import { edgeNames, edgePath, pathsOfPart } from '../../pattern/outline.js';
import type { Dart, Edge, Notch, OutlinePart, Piece, PieceLine } from '../../pattern/types.js';
import { signedArea } from '../../region/area.js';
import type { Finding } from '../../telling.js';

import { readByHand } from '../../tolerance.js';
import type { Point } from '../../vector.js';
import { lengthFindings, linesOf, type RingPart, ringOf } from './edge-lines.js';
import { placedPoints } from './placed-points.js';
import { refusal } from './tellings.js';
import type { MeasuredEdge, MeasuredNotch, MeasuredPiece } from './types.js';

/** A piece as measured, and what did not agree in the measures. */
export interface MeasuredReading {
  readonly piece: Piece;
  readonly findings: readonly Finding[];
}

/**
 * A piece from points measured on paper and the lines through them, on its stitching line. Points keep their places
 * exactly; curves through them are fair, with one tangent at every point between.
 * Source of the curves: J. D. Hobby, Smooth, easy to compute interpolating splines, 1986.
 *
 * @throws PatternError for points that cannot be placed, edges that do not go round, and what `definePiece` and
 *   `stitchingLine` refuse
 */
export const measuredPiece = (measured: MeasuredPiece): MeasuredReading =>
  locating({ piece: measured.name }, () => built(measured));

function built(measured: MeasuredPiece): MeasuredReading {
  const { edges, darts = [] } = measured;
  if (edges.length < 2) throw refusal('too-few-measured-edges', { edges: edges.length });
  const { placeOf, findings: ofPoints } = placedPoints(measured.points);
  const wrong = darts.find(({ points }) => points.length !== 3 && points.length !== 4);
  if (wrong)
    throw refusal('dart-of-wrong-points', {
      dart: { piece: measured.name, dart: wrong.name },
      points: wrong.points.length,
    });
  const ring = ringOf(measured);
  const lines = linesOf(measured.name, ring, placeOf);
  const drawn = clockwise(ring.map(part => partOf(part, { placeOf, lines, measured })));
  const included = measured.includedAllowance ?? 0;
  const { parts, findings: ofLine } =
    included > 0 ? stitchingLine(drawn, () => included) : { parts: drawn, findings: [] };
  const piece = definePiece({
    ...specOf(measured),
    outline: parts,
    lines: linesWithin(measured, placeOf),
    marks: (measured.marks ?? []).map(({ name, at }) => ({ kind: 'point', name, at: placeOf(at) })),
  });
  const notches = (measured.notches ?? []).map(notch => notchOn(piece, notch, placeOf(notch.at), included));
  return {
    piece: { ...piece, notches },
    findings: [...ofPoints, ...lengthFindings(measured.name, lines), ...ofLine].map(found => ({
      ...found,
      where: { piece: measured.name, ...found.where },
    })),
  };
}

const specOf = ({ name, title, role, cutting }: MeasuredPiece) => ({
  name,
  ...(title === undefined ? {} : { title }),
  ...(role === undefined ? {} : { role }),
  ...(cutting === undefined ? {} : { cutting }),
});

interface Drawing {
  readonly placeOf: (name: string) => Point;
  readonly lines: ReturnType<typeof linesOf>;
  readonly measured: MeasuredPiece;
}

function partOf(part: RingPart, { placeOf, lines, measured }: Drawing): OutlinePart {
  if (!('dart' in part)) return edgeOf(part.edge, lines.get(part)!, measured);
  const [first, last] = part.mouth.map(placeOf) as [Point, Point];
  const apex = placeOf(part.dart.points[1]!);
  return { type: 'dart', name: part.dart.name, legs: [polyline(first, apex), polyline(apex, last)], apex };
}

function edgeOf({ name, kind = 'seam', role }: MeasuredEdge, path: Path, measured: MeasuredPiece): Edge {
  const bare = kind === 'fold' || kind === 'raw';
  const allowance = bare ? 0 : (measured.allowance ?? measured.includedAllowance ?? 0);
  return { type: 'edge', name, path, kind, allowance, corners: {}, ...(role ? { role } : {}) };
}

/** A maker may go round either way; a pattern goes round clockwise. */
function clockwise(parts: readonly OutlinePart[]): readonly OutlinePart[] {
  if (signedArea(joined(...parts.flatMap(pathsOfPart))) >= 0) return parts;
  return parts.map(turned).reverse();
}

const turned = (part: OutlinePart): OutlinePart =>
  part.type === 'edge' ? { ...part, path: reversedPath(part.path) } : turnedDart(part as Dart);
const turnedDart = (dart: Dart): Dart => ({
  ...dart,
  legs: [reversedPath(dart.legs[1]), reversedPath(dart.legs[0])],
});

function linesWithin(
  { name: piece, lines = [], darts = [] }: MeasuredPiece,
  placeOf: (name: string) => Point,
): readonly PieceLine[] {
  const closed = darts.filter(({ points }) => points.length === 4);
  return [
    ...lines.map(({ name, kind, through, role }): PieceLine => {
      if (through.length < 2) throw refusal('edge-of-one-point', { edge: { piece, line: name } });
      return { name, kind, path: fairLine(through.map(placeOf)), ...(role ? { role } : {}) };
    }),
    ...closed.map(
      ({ name, points }): PieceLine => ({
        name,
        kind: 'dart',
        path: polyline(...[...points, points[0]!].map(placeOf)),
      }),
    ),
  ];
}

/** A notch may be given where it was drawn: on the cutting line, too. */
function notchOn(
  piece: Piece,
  { at, style = 'single' }: MeasuredNotch,
  place: Point,
  included: number,
): Notch {
  const on = edgeNames(piece).map(edge => ({ edge, ...nearestOnPath(edgePath(piece, edge), place) }));
  const nearest = on.reduce((a, b) => (b.distance < a.distance ? b : a));
  if (nearest.distance > included + readByHand)
    throw refusal('notch-point-off-edge', { name: at, awayMm: nearest.distance });
  return { edge: nearest.edge, at: nearest.along, style };
}
