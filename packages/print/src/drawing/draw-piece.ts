import {
  add,
  type CuttingLine,
  cuttingLine,
  dartsOf,
  dot,
  edgeParts,
  edgePath,
  edgeNames as edgesOf,
  foldEdgeOf,
  joined,
  type Path,
  type Pattern,
  type Piece,
  type Point,
  scale,
} from '@paperhinge/geometry';
import { blockGrid } from './block-place.js';
import { boxEdges, edgeNames } from './edge-names.js';
import { flattened } from './flatten.js';
import { foldBracket } from './fold-bracket.js';
import { type Frame, frameOf } from './frame.js';
import { type Drawing, type Ink, letteringBox, type TypeMeasure } from './ink.js';
import { lineName, markName } from './line-names.js';
import { notchInks } from './notches.js';
import { lineInks, markInks } from './piece-lines.js';
import { chords, type Polygon, type Room } from './room.js';
import { circle, closedStroke, stroke } from './shapes.js';
import { titleBlock, titleTag } from './title-block.js';

/** One piece as it is drawn, in its own coordinates, and what it takes of the paper. */
export interface PieceDrawing {
  readonly piece: string;
  readonly drawing: Drawing;
  /** How it stands on the page. */
  readonly frame: Frame;
  /** Polygons that its ink stays within: the cutting line and, for a tiny piece, the title beside it. */
  readonly silhouette: readonly Polygon[];
  readonly cutting: Path;
}

export interface DrawOptions {
  /** The piece as it was before an alteration, ghosted under it. */
  readonly before?: Piece;
}

/**
 * Decides what a piece looks like; every exporter shows this drawing. Lines by meaning, then labels in the order of
 * their weight, each in a place that is still free.
 * @throws PatternError whatever the cutting line refuses, naming the piece
 */
export function drawPiece(
  piece: Piece,
  pattern: Pattern,
  measure: TypeMeasure,
  options: DrawOptions = {},
): PieceDrawing {
  const frame = frameOf(piece);
  const cut = cuttingLine(piece, pattern);
  const cutPolygon = flattened(cut.path);
  const lines = [...lineWork(piece, cut, cutPolygon)];
  const ink = lines.flatMap(inkChords);
  const room: Room = { inside: cutPolygon, ink };
  const fold = foldEdgeOf(piece);
  const bracket = fold ? foldBracket(edgePath(piece, fold.name), frame, measure, room) : [];
  ink.push(...bracket.flatMap(inkChords));

  const netPolygon = flattened(
    joined(...piece.outline.parts.flatMap(p => (p.type === 'edge' ? [p.path] : p.legs))),
  );
  const grid = blockGrid({ inside: netPolygon, ink }, scale(frame.down, -1), titleGap);
  const title =
    titleBlock(piece, pattern, frame, grid, measure) ??
    titleTag(piece, besideOf(cutPolygon, frame), frame, measure);
  ink.push(...title.flatMap(inkChords));

  const names: Ink[] = [];
  const keep = (label: Ink | undefined) => {
    if (!label) return;
    names.push(label);
    ink.push(...inkChords(label));
  };
  for (const line of piece.lines) keep(lineName(line, frame, measure, room));
  for (const mark of piece.marks) keep(markName(mark, frame, measure, room));
  for (const edge of edgesOf(piece))
    for (const label of edgeNames(piece, edge, pattern, frame, measure, room)) keep(label);

  const outside = title.flatMap(t => (t.kind === 'text' ? [letteringBox(t)] : []));
  const tag = outside.some(box => box.some(p => outsideBox(p, cutPolygon)));
  const ghost = options.before ? ghostInks(options.before) : [];
  return {
    piece: piece.name,
    drawing: { inks: [...ghost, ...lines, ...bracket, ...title, ...names] },
    frame,
    silhouette: tag ? [cutPolygon, ...outside] : [cutPolygon],
    cutting: cut.path,
  };
}

/** mm kept between the title and any line. */
const titleGap = 2;

/** The outline and all that is drawn on the piece, without words. */
function* lineWork(piece: Piece, cut: CuttingLine, cutPolygon: Polygon): Generator<Ink> {
  yield* cutInks(piece, cut);
  for (const edge of edgeParts(piece))
    if (edge.allowance > 0 && edge.kind !== 'hem') yield stroke('stitch', edge.path);
  for (const dart of dartsOf(piece)) {
    yield stroke('stitch', joined(...dart.legs));
    yield closedStroke('mark', circle(dart.apex, 1));
  }
  // Turned-up hems and the folds of darts: where cloth is pressed, not sewn.
  for (const path of cut.foldLines) yield stroke('fold-line', path);
  for (const path of cut.snips) yield stroke('snip', path);
  for (const notch of piece.notches) yield* notchInks(piece, notch, cutPolygon);
  for (const line of piece.lines) yield* lineInks(line);
  for (const mark of piece.marks) yield* markInks(mark);
}

/** The cutting line in bold; the stretch along a fold, which is not cut, as a fold. */
function cutInks(piece: Piece, cut: CuttingLine): readonly Ink[] {
  const fold = foldEdgeOf(piece)?.name;
  const stretches = cut.stretches;
  const covered = stretches.reduce((n, s) => n + s.path.segments.length, 0) === cut.path.segments.length;
  const first = stretches.findIndex(s => s.of === fold);
  if (fold === undefined || first < 0 || !covered) return [closedStroke('cut', cut.path)];
  const turned = [...stretches.slice(first), ...stretches.slice(0, first)];
  const folded = turned.filter(s => s.of === fold).map(s => s.path);
  const rest = turned.filter(s => s.of !== fold).map(s => s.path);
  // The hairline under the dashes shows the edge without a gap, wherever it is measured.
  const edge = joined(...folded);
  return [stroke('cut', joined(...rest)), stroke('fold-hairline', edge), stroke('fold-edge', edge)];
}

const ghostInks = (before: Piece): readonly Ink[] => [
  closedStroke(
    'before',
    joined(...before.outline.parts.flatMap(p => (p.type === 'edge' ? [p.path] : p.legs))),
  ),
];

/** What an ink blocks for labels: the chords of its path, or the sides of its box. */
export function inkChords(ink: Ink): readonly (readonly [Point, Point])[] {
  return ink.kind === 'text' ? boxEdges(ink) : chords(flattened(ink.path), ink.kind === 'fill');
}

/** Where a title beside the piece starts: right of it, level with its middle. */
function besideOf(polygon: Polygon, frame: Frame): Point {
  const rights = polygon.map(p => dot(p, frame.right)),
    downs = polygon.map(p => dot(p, frame.down));
  const right = Math.max(...rights) + 4,
    down = (Math.min(...downs) + Math.max(...downs)) / 2;
  return add(scale(frame.right, right), scale(frame.down, down));
}

function outsideBox(p: Point, polygon: Polygon): boolean {
  return (
    p.x > Math.max(...polygon.map(q => q.x)) ||
    p.y > Math.max(...polygon.map(q => q.y)) ||
    p.x < Math.min(...polygon.map(q => q.x)) ||
    p.y < Math.min(...polygon.map(q => q.y))
  );
}
