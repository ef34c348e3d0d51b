import { edgeNames as edgesOf, type Path, type Pattern, type Piece } from '@paperhinge/geometry';
import { requireWhole, requireWholePiece } from '@paperhinge/geometry/internal';
import type { Chord, Polygon } from '../plane/polygon.js';
import { type BlockGrid, blockGrid } from './block-place.js';
import { edgeNames } from './edge-names.js';
import type { Frame } from './frame.js';
import type { Drawing, Ink, TypeMeasure } from './ink.js';
import { lineName, markName, notchName, wordsAlong } from './line-names.js';
import { type OnSheet, pageNames } from './on-sheet.js';
import type { PieceSetting } from './piece-setting.js';
import { inkChords, netLine, type PieceShape, type PieceStyle, pieceShape, titleGap } from './piece-shape.js';
import type { Room } from './room.js';
import { closedStroke } from './shapes.js';
import { stretchArrow } from './stretch-arrow.js';
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
export interface DrawOptions extends PieceStyle {
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
  requireWholePiece(piece);
  requireWhole(pattern);
  if (options.before !== undefined) requireWholePiece(options.before);
  return worded(pieceShape(piece, pattern, measure, options), options);
}

/**
 * A piece's lines with its words. Where it lies on the sheet is known, words keep clear of the joins if they can stand
 * elsewhere, read upright on the page, and each page that shows the piece has its name.
 */
export function worded(
  shape: PieceShape,
  { before }: { readonly before?: Piece } = {},
  sheet?: OnSheet,
): PieceDrawing {
  const { lines, bracket } = shape;
  const setting = sheet ? { ...shape.setting, frame: sheet.frame } : shape.setting;
  const solid = lines.filter(l => l.role !== 'tint');
  const words = wordsOn(shape, setting, [...solid, ...bracket].flatMap(inkChords), sheet);
  // The tint lies under the ghost, the ghost under everything else.
  const under = lines.filter(l => l.role === 'tint');
  if (before) under.push(closedStroke('before', netLine(before)));
  return {
    piece: shape.piece,
    cloth: shape.cloth,
    drawing: { inks: [...under, ...solid, ...bracket, ...words] },
    frame: shape.frame,
    silhouette: shape.silhouette,
    cutting: shape.cutting,
  };
}

/** The words of a piece in the order of their weight, each where there is still room for it. */
function wordsOn(
  shape: PieceShape,
  setting: PieceSetting,
  lines: readonly Chord[],
  sheet?: OnSheet,
): readonly Ink[] {
  const ink = [...lines];
  const joins = sheet?.joins ?? [];
  const open: Room = { inside: shape.cutPolygon, ink };
  const gridOf = (keepOff: readonly Chord[]): BlockGrid =>
    blockGrid({ inside: shape.netPolygon, ink: [...ink, ...keepOff] }, shape.grid.along, titleGap);
  const clear = joins.length > 0 ? gridOf(joins) : shape.grid;
  const words: Ink[] = [];
  const keep = (label: Ink | undefined) => {
    if (!label) return;
    words.push(label);
    ink.push(...inkChords(label));
  };
  const title = shape.tag ?? titleBlock(setting, clear) ?? titleBlock(setting, shape.grid) ?? [];
  for (const label of title) keep(label);
  if (sheet) for (const name of pageNames(setting, sheet, clear, title)) keep(name);
  // Words off the joins first; where there is no such place, anywhere.
  const place = <T extends Ink>(find: (room: Room) => T | undefined): T | undefined =>
    (joins.length > 0 ? find({ ...open, ink: [...ink, ...joins] }) : undefined) ?? find(open);
  const { piece } = setting;
  for (const fact of shape.facts)
    keep(place(room => wordsAlong(fact.words, { path: fact.along, off: fact.off }, setting, room)));
  for (const line of piece.lines) keep(place(room => lineName(line, setting, room)));
  for (const mark of piece.marks) keep(place(room => markName(mark, setting, room)));
  for (const notch of piece.notches) keep(place(room => notchName(notch, setting, room)));
  for (const edge of edgesOf(piece)) for (const label of edgeNames(edge, setting, open, joins)) keep(label);
  for (const part of stretchArrow(setting, gridOf(joins))) keep(part);
  return words;
}
