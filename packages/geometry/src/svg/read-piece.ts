import { stitchingLine } from '../cutting-line/stitching-line.js';
import { locating, PatternError, type Where } from '../errors.js';
import { listed, nearestName, quoted } from '../naming.js';
import { boundsOfPath } from '../path/bounds.js';
import type { Path } from '../path/path.js';
import { mirroredByDefault } from '../pattern/build.js';
import { edgeNames, edgePath, foldEdgeOf } from '../pattern/outline.js';
import { lineRoles, markRoles, pieceRoles } from '../pattern/roles/role-names.js';
import type { Mark, Notch, OutlinePart, Piece, PieceLine } from '../pattern/types.js';
import { validatePiece } from '../pattern/validate.js';
import { type NamedPath, snapNotch } from '../trace/snap-notch.js';
import type { LengthUnit } from '../units.js';
import { lerp, type Point } from '../vector.js';
import { nameOf, roleGiven, wordOf } from './attribute-values.js';
import { foldFinding } from './fold-finding.js';
import type { Item, PieceDrawing } from './gather.js';
import { mostNotchChecks } from './limits.js';
import { type OutlineReading, readOutline } from './read-outline.js';
import type { Report, Said } from './report.js';
import type { SheetPiece } from './sheet-pieces.js';
import { lineKinds, notchStyles, yesNo } from './vocabulary.js';
import { attributeOf, type Element } from './xml.js';

/** What the readers of a piece's parts share. */
export interface PieceContext {
  readonly report: Report;
  readonly unit: LengthUnit;
  readonly sheet: SheetPiece | undefined;
  readonly owner: { readonly piece: string };
  /** Where the piece itself stands in the file. */
  readonly offset: number;
  where(offset: number): Where;
  error(code: string, offset: number, said: Said): PatternError;
}

/** A piece with where its parts stand in the file. */
export interface PieceReading {
  readonly piece: Piece;
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
  const where = (at: number): Where => ({ ...report.where(at), ...owner });
  const context: PieceContext = {
    report,
    unit,
    sheet,
    owner,
    offset,
    where,
    error: (code, at, said) => report.error(code, at, { ...owner, ...said }),
  };
  const outline = readOutline(drawing, context);
  const parts = onStitchingLine(outline, context);
  const named = { name: drawing.name, outline: { parts } };
  const lines = drawing.items.filter(i => i.meaning === 'line').flatMap(item => readLine(item, context));
  const piece: Piece = {
    ...named,
    title: sheet?.title ?? textOf(drawing.element, 'data-title') ?? drawing.name,
    notches: [],
    lines: [...lines, ...outline.innerDarts.map((d): PieceLine => ({ kind: 'dart', ...d }))],
    marks: drawing.items.filter(i => i.meaning === 'mark').flatMap(item => readMark(item, context)),
    cutting: readCutting(drawing.element, parts, context),
    ...roleGiven(drawing.element, pieceRoles, report, owner),
  };
  const placeOf = (edge?: string): Where => {
    const at = edge === undefined ? undefined : outline.offsets.get(edge);
    return { ...where(at ?? offset), ...(edge === undefined ? {} : { edge }) };
  };
  placed(placeOf, () => validatePiece(piece));
  const notched = {
    ...piece,
    notches: readNotches(drawing, piece, context),
  };
  foldFinding(notched, placeOf, report);
  plainFinding(drawing, context);
  return { piece: notched, where: placeOf };
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
    context.where((edge === undefined ? undefined : offsets.get(edge)) ?? context.offset);
  const { parts: stitched, findings } = placed(where, () =>
    stitchingLine(parts, edge => included.get(edge.name) ?? 0),
  );
  for (const found of findings)
    context.report.take({ ...found, where: { ...where(found.where.edge), ...found.where } });
  return stitched;
}

function readLine(item: Item, context: PieceContext): readonly PieceLine[] {
  const { element } = item;
  const kind = wordOrFinding(element, 'data-line', lineKinds, 'style', context);
  const name = textOf(element, 'data-name') ?? textOf(element, 'data-line') ?? kind;
  const paths = item.strokes.filter(s => s.segments.length > 0);
  if (paths.length === 0) nothingDrawn(item, context);
  const role = roleGiven(element, lineRoles, context.report, context.owner);
  return paths.map(({ segments }): PieceLine => ({ kind, name, path: { segments }, ...role }));
}

function readMark(item: Item, context: PieceContext): readonly Mark[] {
  const kind = nameOf(item.element, 'data-mark', context.report, context.owner);
  const at = middleOf(item);
  if (!at) {
    nothingDrawn(item, context);
    return [];
  }
  const role = roleGiven(item.element, markRoles, context.report, context.owner);
  return [{ kind, name: textOf(item.element, 'data-name') ?? kind, at, ...role }];
}

/** A line or notch of an unknown kind still has its place: it is kept as the plainest kind, with a finding. */
function wordOrFinding<W extends string>(
  element: Element,
  name: string,
  words: readonly W[],
  otherwise: W,
  context: PieceContext,
): W {
  const { value, offset } = element.attributes.get(name)!;
  const word = words.find(w => w === value.trim());
  if (word !== undefined) return word;
  const near = nearestName(value.trim(), words);
  context.report.add('warning', 'word-not-understood', offset, {
    message: `${name} says a word that is not one of its own; it is read as ${quoted(otherwise)}.`,
    remedy: near === undefined ? `Write one of: ${listed(words)}.` : `Did you mean ${quoted(near)}?`,
    ...context.owner,
  });
  return otherwise;
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
    throw context.error('too-many-notches', drawn[0]!.element.offset, {
      message: 'The piece has too many notches for the number of segments in its outline.',
      remedy: 'Simplify its paths in the drawing program.',
    });
  return drawn.flatMap(item => readNotch(item, edges, context));
}

function readNotch(item: Item, edges: readonly NamedPath[], context: PieceContext): readonly Notch[] {
  const { element } = item;
  const style = wordOrFinding(element, 'data-notch', notchStyles, 'single', context);
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

function readCutting(
  element: Element | undefined,
  parts: readonly OutlinePart[],
  context: PieceContext,
): Piece['cutting'] {
  const { sheet } = context;
  const hasFold = foldEdgeOf({ outline: { parts } } as Piece) !== undefined;
  const count = sheet?.cut ?? (element ? countOf(element, context) : 1);
  const word = element && wordOf(element, 'data-mirrored', yesNo, context.report, context.owner);
  const mirrored =
    sheet?.mirrored ?? (word === undefined ? mirroredByDefault(count, hasFold) : word === 'yes');
  const note = textOf(element, 'data-note');
  const fabric = sheet?.fabric ?? textOf(element, 'data-fabric') ?? 'main';
  return { count, mirrored, fabric, ...(note === undefined ? {} : { note }) };
}

function countOf(element: Element, context: PieceContext): number {
  const written = element.attributes.get('data-cut');
  if (!written) return 1;
  const count = /^\s*\d{1,4}\s*$/.test(written.value) ? Number(written.value) : Number.NaN;
  if (count >= 1) return count;
  throw context.error('cut-count', written.offset, {
    message: 'data-cut must be a whole number from 1.',
    remedy: 'Write how many of the piece are cut: 1, or 2 for a pair.',
  });
}

const textOf = (element: Element | undefined, name: string): string | undefined => {
  const text = element && attributeOf(element, name)?.trim();
  return text === '' ? undefined : text;
};

const nothingDrawn = (item: Item, context: PieceContext): void =>
  context.report.add('warning', 'nothing-drawn', item.element.offset, {
    message: `A ${item.meaning} of the piece draws nothing and was left out.`,
    remedy: 'Draw it, or remove it.',
    ...context.owner,
  });

/** One gentle word for all that is drawn in a piece and means nothing to us. */
function plainFinding({ plain }: PieceDrawing, context: PieceContext): void {
  if (plain.length === 0) return;
  context.report.add('note', 'drawing-not-read', plain[0]!.offset, {
    message: `${plain.length === 1 ? 'A shape' : `${plain.length} shapes`} of the piece carry no meaning and were left out.`,
    figures: { count: plain.length },
    remedy: 'Say what they are (data-line, data-mark, data-notch), or leave them as decoration.',
    ...context.owner,
  });
}
