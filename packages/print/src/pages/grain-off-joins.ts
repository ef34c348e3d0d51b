import { type Point, pathOf, line as straightLine } from '@paperhinge/geometry';
import { type Affine, apply, distance, leftOf } from '@paperhinge/geometry/plane';
import { movedDrawing } from '../drawing/ink.js';
import { inkChords, type PieceShape, type PieceStyle, pieceShape } from '../drawing/piece-shape.js';
import { directionOf } from '../drawing/shapes.js';
import { clearOfStrip, leans } from '../place/shafts.js';
import { type Chord, chords, type Polygon } from '../plane/polygon.js';
import { meetsRectangle, type Rectangle } from '../plane/rectangle.js';
import type { PageFormat } from './format.js';
import { hasRoom, shaftOf, shifted } from './grain-shaft.js';
import type { SheetPiece } from './layout.js';
import type { Page } from './plan.js';

/** A strip in which two pages are glued, and whether it runs up and down. */
interface Strip {
  readonly box: Rectangle;
  readonly upright: boolean;
}

/** mm: a grain line that is cut back keeps at least this. */
const shortest = 25;
/** How much of its length a grain line keeps, tried in turn, and where in it: its middle, its start, its end. */
const kept = [1, 0.75, 0.5, 0.3] as const;
const slid = [0.5, 0, 1] as const;
/** Places that are tried for one whose title still has its room. */
const mostPlaces = 6;

/**
 * The pieces with every grain line off the strips in which pages are joined: one that would run along a strip is moved
 * parallel to itself, as little as may be, within its piece; where there is no room for it whole it is cut shorter.
 * The grain says a direction, so that it says the same wherever it lies.
 */
export function grainOffJoins(
  shapes: readonly PieceShape[],
  pieces: readonly SheetPiece[],
  pages: readonly Page[],
  format: PageFormat,
  style: PieceStyle,
): readonly PieceShape[] {
  const strips = stripsOf(pages, format);
  return shapes.map((shape, i) =>
    shape.setting.piece.lines.reduce(
      (done, line, at) => (line.kind === 'grain' ? moved(done, at, pieces[i]!.matrix, strips, style) : done),
      shape,
    ),
  );
}

function stripsOf(pages: readonly Page[], { field: { overlap } }: PageFormat): readonly Strip[] {
  return pages.flatMap(({ window: [x, y, w, h], neighbours: { right, below } }): readonly Strip[] => [
    ...(right ? [{ box: [x + w - overlap, y, x + w, y + h] as const, upright: true }] : []),
    ...(below ? [{ box: [x, y + h - overlap, x + w, y + h] as const, upright: false }] : []),
  ]);
}

/** A shape with one of its grain lines off the strips; as it was where the line keeps clear already, or nowhere does. */
function moved(
  shape: PieceShape,
  index: number,
  matrix: Affine,
  strips: readonly Strip[],
  style: PieceStyle,
): PieceShape {
  const { piece, pattern, measure } = shape.setting;
  const line = piece.lines[index]!;
  const grain = shaftOf(line);
  if (!grain) return shape;
  const onSheet = grain.map(p => apply(matrix, p)) as unknown as Chord;
  if (!runsAlong(onSheet, strips)) return shape;
  let left = mostPlaces;
  for (const { by, from, to } of places(onSheet, roomFor(shape, index, matrix), strips)) {
    const path = pathOf(straightLine(...shifted(grain, by, from, to)));
    const again = pieceShape(
      { ...piece, lines: piece.lines.with(index, { ...line, path }) },
      pattern,
      measure,
      style,
    );
    // What lies on the sheet already keeps its size: a title within stays within.
    if (!again.tag === !shape.tag) return again;
    if (--left === 0) break;
  }
  return shape;
}

function runsAlong([from, to]: Chord, strips: readonly Strip[]): boolean {
  const { x, y } = directionOf(from, to);
  return strips.some(({ upright, box: [x0, y0, x1, y1] }) =>
    upright
      ? Math.abs(x) < leans && meetsRectangle(from, to, [x0 - clearOfStrip, y0, x1 + clearOfStrip, y1])
      : Math.abs(y) < leans && meetsRectangle(from, to, [x0, y0 - clearOfStrip, x1, y1 + clearOfStrip]),
  );
}

/** What a grain line may not leave, and what it had better not run along. */
interface GrainRoom {
  readonly inside: Polygon;
  readonly outline: readonly Chord[];
  readonly alongside: readonly Chord[];
}

function roomFor(shape: PieceShape, index: number, matrix: Affine): GrainRoom {
  const onSheet = (p: Point) => apply(matrix, p);
  const own = shape.setting.piece.lines[index]!.path;
  const others = shape.lines.filter(
    ink => ink.role !== 'tint' && ink.role !== 'grain' && ink.kind !== 'text' && ink.path !== own,
  );
  const inside = shape.netPolygon.map(onSheet);
  return {
    inside,
    outline: chords(inside, true),
    alongside: movedDrawing({ inks: others }, matrix).inks.flatMap(inkChords),
  };
}

/** Where a grain line may go: mm to its left, and the part of it that is kept, by shares. */
interface GrainPlace {
  readonly by: number;
  readonly from: number;
  readonly to: number;
}

/** Places off the strips within the piece: whole before cut shorter, clear of other lines before beside them, nearest first. */
function* places(grain: Chord, room: GrainRoom, strips: readonly Strip[]): Generator<GrainPlace> {
  const [start, end] = grain;
  const length = distance(start, end);
  const across = leftOf(directionOf(start, end));
  const alongIt = room.alongside.filter(([a, b]) => {
    const [p, q] = [across.x * a.x + across.y * a.y, across.x * b.x + across.y * b.y];
    return Math.abs(p - q) <= leans * distance(a, b);
  });
  const reach = Math.ceil(Math.max(...room.inside.map(p => distance(p, start))));
  for (const share of kept) {
    if (share < 1 && share * length < shortest) return;
    for (const ink of [[...room.outline, ...alongIt], room.outline])
      for (let step = 1; step <= reach; step++)
        for (const by of [step, -step])
          for (const slide of share === 1 ? [0] : slid) {
            const from = slide * (1 - share);
            const place = { by, from, to: from + share };
            const shaft = shifted(grain, by, place.from, place.to);
            if (runsAlong(shaft, strips)) continue;
            if (hasRoom(shaft, { inside: room.inside, ink })) yield place;
          }
  }
}
