import { edgeNames as edgesOf, type Path, type Pattern, type Piece, type Point } from '@paperhinge/geometry';
import type { Polygon } from '../plane/polygon.js';
import { type BlockGrid, blockGrid } from './block-place.js';
import { edgeNames } from './edge-names.js';
import type { Frame } from './frame.js';
import type { Drawing, Ink, TypeMeasure } from './ink.js';
import { lineName, markName } from './line-names.js';
import { type OnSheet, pageNames } from './on-sheet.js';
import {
  inkChords,
  type LookOptions,
  netLine,
  type PieceShape,
  pieceShape,
  titleGap,
} from './piece-shape.js';
import type { Room } from './room.js';
import { closedStroke } from './shapes.js';
import { titleBlock } from './title-block.js';

/** What a piece takes of the paper, in its own coordinates. */
export interface PiecePlace {
  readonly piece: string;
  /** The cloth it is cut of. */
  readonly cloth: string;
  /** How it stands on the page. */
  readonly frame: Frame;
  /** Polygons that its ink stays within: the cutting line and, for a tiny piece, the title beside it. */
  readonly silhouette: readonly Polygon[];
  readonly cutting: Path;
}

/** One piece as it is drawn, and what it takes of the paper. */
export interface PieceDrawing extends PiecePlace {
  readonly drawing: Drawing;
}

/** What a maker may choose of how a piece is drawn. */
export interface DrawOptions extends LookOptions {
  /** The piece as it was before an alteration, ghosted under it. */
  readonly before?: Piece;
}

/**
 * Decides what a piece looks like; every exporter shows this drawing. Lines by meaning, then labels in the order of
 * their weight, each in a place that is still free.
 * @throws PatternError whatever the cutting line refuses, naming the piece
 */
export const drawPiece = (
  piece: Piece,
  pattern: Pattern,
  measure: TypeMeasure,
  options: DrawOptions = {},
): PieceDrawing => worded(pieceShape(piece, pattern, measure, options), measure, options);

/**
 * A piece's lines with its words. Where it lies on the sheet is known, words keep clear of the joins if they can stand
 * elsewhere, read upright on the page, and each page that shows the piece has its name.
 */
export function worded(
  shape: PieceShape,
  measure: TypeMeasure,
  { before }: { readonly before?: Piece } = {},
  sheet?: OnSheet,
): PieceDrawing {
  const { source: piece, pattern, lines, bracket, cutPolygon, netPolygon } = shape;
  const frame = sheet?.frame ?? shape.frame;
  const ink: (readonly [Point, Point])[] = [...lines.filter(l => l.role !== 'tint'), ...bracket].flatMap(
    inkChords,
  );
  const open: Room = { inside: cutPolygon, ink };
  const reading = shape.grid.along;
  const gridOf = (keepOff: Room['ink']): BlockGrid =>
    blockGrid({ inside: netPolygon, ink: [...ink, ...keepOff] }, reading, titleGap);
  const clear = sheet && sheet.joins.length > 0 ? gridOf(sheet.joins) : shape.grid;
  const title =
    shape.tag ??
    titleBlock(piece, pattern, frame, clear, measure) ??
    titleBlock(piece, pattern, frame, shape.grid, measure) ??
    [];
  ink.push(...title.flatMap(inkChords));

  const names: Ink[] = [];
  const keep = (label: Ink | undefined) => {
    if (!label) return;
    names.push(label);
    ink.push(...inkChords(label));
  };
  if (sheet) for (const name of pageNames(piece, sheet, clear, title, measure)) keep(name);
  // Words off the joins first; where there is no such place, anywhere.
  const place = <T extends Ink>(find: (room: Room) => T | undefined): T | undefined =>
    (sheet && sheet.joins.length > 0 ? find({ ...open, ink: [...ink, ...sheet.joins] }) : undefined) ??
    find(open);
  for (const line of piece.lines) keep(place(room => lineName(line, piece, frame, measure, room)));
  for (const mark of piece.marks) keep(place(room => markName(mark, frame, measure, room)));
  for (const edge of edgesOf(piece))
    for (const label of edgeNames(piece, edge, pattern, frame, measure, open, sheet?.joins)) keep(label);

  // The tint lies under the ghost, the ghost under everything else.
  const under = lines.filter(l => l.role === 'tint');
  if (before) under.push(closedStroke('before', netLine(before)));
  return {
    piece: piece.name,
    cloth: shape.cloth,
    drawing: { inks: [...under, ...lines.filter(l => l.role !== 'tint'), ...bracket, ...title, ...names] },
    frame: shape.frame,
    silhouette: shape.silhouette,
    cutting: shape.cutting,
  };
}
