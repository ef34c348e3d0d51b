import { stitchingLine } from '../cutting-line/stitching-line.js';
import { locating, PatternError } from '../errors.js';
import { boundsOfPath } from '../path/bounds.js';
import type { Path } from '../path/path.js';
import { edgeNames, edgePath } from '../pattern/outline.js';
import { lineRoles, markRoles, pieceRoles } from '../pattern/roles/role-names.js';
import type { Mark, Notch, OutlinePart, Piece, PieceLine, PlaceOnEdge } from '../pattern/types.js';
import { validatePiece } from '../pattern/validate.js';
import { lineKinds, notchStyles, stretchWays } from '../pattern/words.js';
import type { Where } from '../telling.js';
import { type NamedPath, snapNotch } from '../trace/snap-notch.js';
import type { LengthUnit } from '../units.js';
import { lerp, type Point } from '../vector.js';
import { nameOf, roleGiven, wordOf, wordOr } from './attribute-values.js';
import { foldFinding } from './fold-finding.js';
import type { Item, PieceDrawing } from './gather.js';
import { readLeftToTrue } from './left-to-true.js';
import { mostNotchChecks } from './limits.js';
import type { PieceContext } from './piece-context.js';
import { readCuttings, textOf } from './read-cutting.js';
import { nothingDrawn, type OutlineReading, readOutline } from './read-outline.js';
import type { Report } from './report.js';
import type { SheetPiece } from './sheet-pieces.js';
import { attributeOf } from './xml.js';

/** A piece with where its parts stand in the file. */
export interface PieceReading {
  readonly piece: Piece;
  /** The corners on its edges that alterations left. */
  readonly leftToTrue: readonly PlaceOnEdge[];
  readonly where: (edge?: string) => Where;
}

/** @throws PatternError where the drawing is no piece; each names file, line, piece and edge */
export function readPiece(
  drawing: PieceDrawing,
  sheet: SheetPiece | undefined,
  unit: LengthUnit,
  report: Report,
): PieceReading {
  const owner = { piece: drawing.name };
  const offset = drawing.element?.offset ?? drawing.items[0]?.element.offset ?? 0;
  const context: PieceContext = { report, unit, sheet, owner, offset };
  const outline = readOutline(drawing, context);
  const parts = onStitchingLine(outline, context);
  const named = { name: drawing.name, outline: { parts } };
  const lines = drawing.items.filter(i => i.meaning === 'line').flatMap(item => readLine(item, context));
  const greatestStretch =
    drawing.element && wordOf(drawing.element, 'data-greatest-stretch', stretchWays, context);
  const piece: Piece = {
    ...named,
    title: sheet?.title ?? textOf(drawing.element, 'data-title') ?? drawing.name,
    ...(sheet?.role ? { role: sheet.role } : roleGiven(drawing.element, pieceRoles, context)),
    notches: [],
    lines: [...lines, ...outline.innerDarts.map((d): PieceLine => ({ kind: 'dart', ...d }))],
    marks: drawing.items.filter(i => i.meaning === 'mark').flatMap(item => readMark(item, context)),
    ...readCuttings(drawing.element, sheet, parts, context),
    ...(greatestStretch ? { greatestStretch } : {}),
  };
  const placeOf = (edge?: string): Where => {
    const at = edge === undefined ? undefined : outline.offsets.get(edge);
    return report.where(at ?? offset, { ...owner, edge });
  };
  placed(placeOf, () => validatePiece(piece));
  const notched = {
    ...piece,
    notches: readNotches(drawing, piece, context),
  };
  foldFinding(notched, placeOf, report);
  plainFinding(drawing, context);
  return { piece: notched, leftToTrue: readLeftToTrue(drawing, context), where: placeOf };
}

/** Runs a check whose errors know piece and edge, and adds where those stand in the file. */
export function placed<T>(placeOf: (edge?: string) => Where, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof PatternError)) throw error;
    return locating(placeOf(error.where.edge), () => {
      throw error;
    });
  }
}

/** Where the drawing shows the cutting line, the outline is moved inwards by the allowance drawn with each edge. */
function onStitchingLine(outline: OutlineReading, context: PieceContext): readonly OutlinePart[] {
  const { parts, included, offsets } = outline;
  if (![...included.values()].some(mm => mm > 0)) return parts;
  const where = (edge?: string): Where =>
    context.report.where(
      (edge === undefined ? undefined : offsets.get(edge)) ?? context.offset,
      context.owner,
    );
  const { parts: stitched, findings } = placed(where, () =>
    stitchingLine(parts, edge => included.get(edge.name) ?? 0),
  );
  for (const found of findings)
    context.report.take({ ...found, where: { ...where(found.where.edge), ...found.where } });
  return stitched;
}

function readLine(item: Item, context: PieceContext): readonly PieceLine[] {
  const { element } = item;
  const kind = wordOr(element, 'data-line', lineKinds, 'style', context);
  const name = textOf(element, 'data-name') ?? textOf(element, 'data-line') ?? kind;
  const paths = item.strokes.filter(s => s.segments.length > 0);
  if (paths.length === 0) nothingDrawn(item, context);
  const role = roleGiven(element, lineRoles, context);
  return paths.map(({ segments }): PieceLine => ({ kind, name, path: { segments }, ...role }));
}

function readMark(item: Item, context: PieceContext): readonly Mark[] {
  const kind = nameOf(item.element, 'mark', context.report, context.owner);
  const at = middleOf(item);
  if (!at) {
    nothingDrawn(item, context);
    return [];
  }
  const role = roleGiven(item.element, markRoles, context);
  return [{ kind, name: textOf(item.element, 'data-name') ?? kind, at, ...role }];
}

/** The middle of the upright box of all strokes: the centre of a circle, a cross or a square. */
function middleOf({ strokes }: Item): Point | undefined {
  const boxes = strokes.map(s => (s.segments.length > 0 ? boundsOfPath(s) : { min: s.start, max: s.start }));
  if (boxes.length === 0) return undefined;
  const min = { x: Math.min(...boxes.map(b => b.min.x)), y: Math.min(...boxes.map(b => b.min.y)) };
  const max = { x: Math.max(...boxes.map(b => b.max.x)), y: Math.max(...boxes.map(b => b.max.y)) };
  return lerp(min, max, 1 / 2);
}

function readNotches({ items }: PieceDrawing, piece: Piece, context: PieceContext): readonly Notch[] {
  const drawn = items.filter(item => item.meaning === 'notch');
  const edges = edgeNames(piece).map(name => ({ name, path: edgePath(piece, name) }));
  const strokes = drawn.reduce((n, item) => n + item.strokes.length, 0);
  if (strokes * edges.reduce((n, { path }) => n + path.segments.length, 0) > mostNotchChecks)
    throw context.report.refuse('too-many-notches', drawn[0]!.element.offset, {}, context.owner);
  return drawn.flatMap(item => readNotch(item, edges, context));
}

function readNotch(item: Item, edges: readonly NamedPath[], context: PieceContext): readonly Notch[] {
  const { element } = item;
  const style = wordOr(element, 'data-notch', notchStyles, 'single', context);
  const strokes = item.strokes.map(
    ({ start, segments }): Path => ({ segments: segments.length > 0 ? segments : [[start, start]] }),
  );
  if (strokes.length === 0) {
    nothingDrawn(item, context);
    return [];
  }
  const name = textOf(element, 'data-name');
  const place = snapNotch(edges, strokes, attributeOf(element, 'data-on'));
  return [{ ...place, style, ...(name === undefined ? {} : { name }) }];
}

/** One gentle word for all that is drawn in a piece and means nothing to us. */
function plainFinding({ plain }: PieceDrawing, context: PieceContext): void {
  const [first] = plain;
  if (first)
    context.report.add('note', 'drawing-not-read', first.offset, { count: plain.length }, context.owner);
}
