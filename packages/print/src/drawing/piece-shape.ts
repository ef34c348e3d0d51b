import {
  type CuttingLine,
  cuttingLine,
  edgePath,
  type LengthUnit,
  type Path,
  type Pattern,
  type Piece,
  type Point,
} from '@paperhinge/geometry';
import { joined } from '@paperhinge/geometry/paths';
import { dartsOf, edgeParts, foldEdgeOf, pathsOfPart } from '@paperhinge/geometry/pattern';
import { add, dot, scale } from '@paperhinge/geometry/plane';
import { chords, type Polygon } from '../plane/polygon.js';
import { type PageLanguage, readerOf } from '../words/reader.js';
import { type BlockGrid, blockGrid } from './block-place.js';
import type { DrawnFact } from './drawn-fact.js';
import { boxEdges } from './edge-names.js';
import { flattened } from './flatten.js';
import { foldBracket } from './fold-bracket.js';
import { type Frame, frameOf } from './frame.js';
import { garmentFacts } from './garment-facts.js';
import { type Ink, letteringBox, type TypeMeasure } from './ink.js';
import { withLinesWithin } from './lines-within.js';
import { type NotchDrawing, notchInks } from './notches.js';
import { lineInks, markInks } from './piece-lines.js';
import type { PieceSetting } from './piece-setting.js';
import type { Room } from './room.js';
import { circle, closedStroke, straight, stroke } from './shapes.js';
import { titleBlock, titleTag } from './title-block.js';

/** What a maker may choose of how a piece is drawn. */
export interface PieceStyle {
  /** Triangles into the allowance (default), triangles outwards from the cutting line, or snips: one short line. */
  readonly notches?: NotchDrawing;
  /** A pale tint over each piece, off by default: it costs ink. */
  readonly tint?: boolean;
  /** Of the words. Default English. */
  readonly language?: PageLanguage;
  /** Of the figures. Default the pattern's. */
  readonly unit?: LengthUnit;
}

/** A piece's lines and what it takes of the paper, before any words but those of its fold are placed. */
export interface PieceShape {
  readonly piece: string;
  readonly cloth: string;
  readonly setting: PieceSetting;
  /** How it stands on the page. */
  readonly frame: Frame;
  /** Words that stand along lines of facts of the garment. */
  readonly facts: readonly DrawnFact[];
  readonly cutting: Path;
  readonly lines: readonly Ink[];
  readonly bracket: readonly Ink[];
  /** The cutting line as a polygon, and the stitching line. */
  readonly cutPolygon: Polygon;
  readonly netPolygon: Polygon;
  /** Where a title may stand inside. */
  readonly grid: BlockGrid;
  /** The title of a piece that no place inside holds, beside it. */
  readonly tag?: readonly Ink[];
  /** Polygons that all of its ink stays within: the cutting line first. */
  readonly silhouette: readonly Polygon[];
}

/** mm kept between the title and any line. */
export const titleGap = 2;

/** @throws PatternError whatever the cutting line refuses */
export function pieceShape(
  drawn: Piece,
  pattern: Pattern,
  measure: TypeMeasure,
  options: PieceStyle = {},
): PieceShape {
  const cut = cuttingLine(drawn, pattern);
  const piece = withLinesWithin(drawn, cut.path);
  const frame = frameOf(piece);
  const setting = {
    piece,
    pattern,
    frame,
    measure,
    reader: readerOf(options.unit ?? pattern.unit, options.language),
  };
  const facts = garmentFacts(setting);
  const cutPolygon = flattened(cut.path);
  const netPolygon = flattened(netLine(piece));
  const notches = piece.notches.map(n => notchInks(piece, n, cutPolygon, options.notches ?? 'inwards'));
  const lines = [
    ...(options.tint ? [{ kind: 'fill', role: 'tint', path: cut.path } as const] : []),
    ...lineWork(piece, cut),
    ...facts.flatMap(f => f.inks),
    ...notches.flat(),
  ];
  const ink = lines.filter(l => l.role !== 'tint').flatMap(inkChords);
  const fold = foldEdgeOf(piece);
  const room: Room = { inside: cutPolygon, ink };
  const bracket = fold ? foldBracket(edgePath(piece, fold.name), setting, room) : [];
  ink.push(...bracket.flatMap(inkChords));
  const grid = blockGrid({ inside: netPolygon, ink }, scale(frame.down, -1), titleGap);
  const tag = titleBlock(setting, grid) ? undefined : tagBeside(setting, cutPolygon);
  const outside = (tag ?? []).flatMap(t => (t.kind === 'text' ? [letteringBox(t)] : []));
  const outwards = options.notches === 'outwards' ? notches.flat() : [];
  return {
    piece: piece.name,
    cloth: piece.cutting.fabric,
    setting,
    frame,
    facts,
    cutting: cut.path,
    lines,
    bracket,
    cutPolygon,
    netPolygon,
    grid,
    ...(tag ? { tag } : {}),
    silhouette: [
      cutPolygon,
      ...outside,
      ...outwards.flatMap(n => (n.kind === 'fill' ? [flattened(n.path)] : [])),
    ],
  };
}

export const netLine = (piece: Piece): Path => joined(...piece.outline.parts.flatMap(pathsOfPart));

/** What an ink blocks for labels: the chords of its path, or the sides of its box. */
export function inkChords(ink: Ink): readonly (readonly [Point, Point])[] {
  return ink.kind === 'text' ? boxEdges(ink) : chords(flattened(ink.path), ink.kind === 'fill');
}

/** The outline and all that is drawn on the piece, without notches and words. */
function* lineWork(piece: Piece, cut: CuttingLine): Generator<Ink> {
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

/** A title beside the piece, right of it and level with its middle, with a line to it. */
function tagBeside(setting: PieceSetting, polygon: Polygon): readonly Ink[] {
  const { right, down } = setting.frame;
  const rights = polygon.map(p => dot(p, right)),
    downs = polygon.map(p => dot(p, down));
  const [side, middle] = [Math.max(...rights), (Math.min(...downs) + Math.max(...downs)) / 2];
  const on = (x: number) => add(scale(right, x), scale(down, middle));
  return [
    straight('leader', on(side - leaderWithin), on(side + leaderBeyond)),
    ...titleTag(setting, on(side + 4)),
  ];
}

/** mm that the line to a title beside a piece reaches into it, and out of it. */
const leaderWithin = 1.5;
const leaderBeyond = 3.2;
