import type { Finding, Where } from '../errors.js';
import { quoted, suggestion } from '../naming.js';
import { boundsOfPath } from '../path/bounds.js';
import { outlinePath } from '../pattern/outline.js';
import { withRoles } from '../pattern/roles/guess-roles.js';
import type { Pattern, Piece } from '../pattern/types.js';
import { validateTogether } from '../pattern/validate.js';
import { largestLikelyPiece } from '../tolerance.js';
import { wordOf } from './attribute-values.js';
import { checkVocabulary } from './check-vocabulary.js';
import { describeFault, faultFinding } from './fault-finding.js';
import { gatherer, meaningOf } from './gather.js';
import { readMetadata } from './read-metadata.js';
import { type PieceReading, placed, readPiece } from './read-piece.js';
import { type Report, reportOn } from './report.js';
import { strangeSizes } from './root.js';
import { type ShapeFault, shapeNames } from './shapes.js';
import type { SheetPieces } from './sheet-pieces.js';
import { styleSheetOf } from './style-sheet.js';
import { telling, units } from './vocabulary.js';
import { type Shown, walk } from './walk.js';
import { attributeOf, type Element, parseXml, type XmlDocument } from './xml.js';

/** What a reader may be told beside the drawing. */
export interface PatternReadOptions {
  /** Named in findings and errors; its last part is the pattern's name where the drawing gives none. */
  readonly file?: string;
  /** What a sheet says of pieces drawn as one closed path. */
  readonly pieces?: SheetPieces;
}

/** A pattern as read, and what was found on reading. */
export interface PatternReading {
  readonly pattern: Pattern;
  readonly findings: readonly Finding[];
}

/**
 * A pattern from a drawing in our convention on plain SVG: `data-` attributes for pieces, edges, darts, notches,
 * lines and marks, one JSON block in `metadata` for seams and fabrics, everything else by ordinary SVG.
 *
 * Edges may be drawn in any order and direction; outlines come out clockwise, joined within `joiningGap`. What was
 * read but not understood is a finding with its line.
 *
 * @throws PatternError for a drawing that is no pattern; `where` gives file, line, column, and piece and edge as far
 *   as they are known
 */
export function readPattern(source: Uint8Array | string, options: PatternReadOptions = {}): PatternReading {
  const { file, pieces: sheet = {} } = options;
  const document = parseXml(source, file);
  const report = reportOn(document, file);
  const unit = wordOf(document.root, 'data-unit', units, report, {}) ?? 'mm';
  refuseStrangeSize(document.root, report);
  const gathered = gatherer(report, sheet);
  walk(
    document,
    report,
    {
      skip: element => element.attributes.has('data-derived'),
      onFault: (element, fault, outer) => faultIn(element, fault, outer, sheet, report),
      sheet: styleSheetOf(document, report),
    },
    drawn => gathered.add(drawn),
  );
  refuseMissing(gathered.missing(), report, document.root);
  const drawings = gathered.pieces();
  if (drawings.length === 0) throw noPieces(document, report);
  checkVocabulary(document, new Set(drawings.flatMap(d => d.element ?? [])), report);
  const readings = drawings.map(drawing => readPiece(drawing, sheet[drawing.name], unit, report));
  const { seams, fabrics, madeFor } = readMetadata(
    document,
    readings.map(r => r.piece),
    unit,
    report,
  );
  const pieces = readings.map(({ piece }): Piece => {
    const made = madeFor.get(piece.name);
    return made ? { ...piece, madeFor: made } : piece;
  });
  const pattern: Pattern = { name: nameOf(document.root, file), unit, pieces, seams, fabrics };
  placed(
    edge => placeOf(readings, edge, report, document.root),
    () => validateTogether(pattern),
  );
  tellLargePieces(readings, report, document.root);
  return { pattern: withRoles(pattern), findings: report.findings() };
}

/** A foreign drawing may be of any size; a pattern read in the wrong unit would be cut in the wrong size. */
function refuseStrangeSize(root: Element, report: Report): void {
  const [name] = strangeSizes(root);
  if (name)
    throw report.error('unit-not-known', root.offset, {
      message: `The drawing's ${name} is not a size in a unit that SVG has.`,
      remedy: 'Give width and height in mm, cm, in, pt, pc, q or px.',
    });
}

function tellLargePieces(readings: readonly PieceReading[], report: Report, root: Element): void {
  for (const { piece } of readings) {
    const { min, max } = boundsOfPath(outlinePath(piece.outline));
    const reach = Math.max(max.x - min.x, max.y - min.y);
    if (reach > largestLikelyPiece)
      report.add('warning', 'piece-very-large', root.offset, {
        piece: piece.name,
        message: `The piece "${piece.name}" is ${(reach / 1000).toFixed(1)} m long.`,
        figures: { reachMm: reach },
        remedy: 'Check the unit the drawing was saved in.',
      });
  }
}

/** Whether a drawing carries any attribute that only our patterns have. @throws PatternError where it is not XML */
export function isPatternDrawing(
  source: Uint8Array | string,
  { file }: { readonly file?: string } = {},
): boolean {
  const stack: Element[] = [parseXml(source, file).root];
  for (let element = stack.pop(); element; element = stack.pop()) {
    if (telling.some(name => element!.attributes.has(name))) return true;
    for (const child of element.children) stack.push(child);
  }
  return false;
}

function nameOf(root: Element, file: string | undefined): string {
  const given = attributeOf(root, 'data-pattern')?.trim();
  if (given) return given;
  return file?.split(/[/\\]/).at(-1) || 'pattern';
}

/**
 * In a pattern every line counts: damage to one is refused where a foreign drawing would be shown in part. Damage to
 * what carries no meaning is a finding.
 */
function faultIn(
  element: Element,
  fault: ShapeFault,
  outer: Shown | undefined,
  sheet: SheetPieces,
  report: Report,
): void {
  const id = attributeOf(element, 'id');
  const isNamed = id !== undefined && Object.values(sheet).some(piece => piece.outline === id);
  // A group's transform moves all within it, meaningful or not.
  const isShape = shapeNames.has(element.name);
  if (isShape && !isNamed && !hasMeaning(element, outer)) {
    faultFinding(report, element, fault);
    return;
  }
  const { at, message, remedy } = describeFault(report, element, fault);
  throw report.error(
    fault.attribute === 'd' || fault.attribute === 'points' ? 'path-data-broken' : 'attribute-not-understood',
    at,
    {
      message,
      remedy,
      piece: pieceAround(element, outer),
      edge: attributeOf(element, 'data-edge') ?? attributeOf(element, 'data-dart'),
    },
  );
}

function hasMeaning(element: Element, outer: Shown | undefined): boolean {
  let within: Element | undefined = element;
  for (let shown = outer; within; within = shown?.element, shown = shown?.outer) {
    if (meaningOf(within)) return true;
    if (within.attributes.has('data-piece')) return false;
  }
  return false;
}

function pieceAround(element: Element, outer: Shown | undefined): string | undefined {
  let name = attributeOf(element, 'data-piece');
  for (let shown = outer; shown && name === undefined; shown = shown.outer)
    name = attributeOf(shown.element, 'data-piece');
  return name;
}

function refuseMissing(
  {
    outlines,
    ids,
  }: { readonly outlines: readonly (readonly [string, string])[]; readonly ids: readonly string[] },
  report: Report,
  root: Element,
): void {
  const [missing] = outlines;
  if (!missing) return;
  const [id, piece] = missing;
  throw report.error('unknown-outline', root.offset, {
    message: `The drawing shows no shape with the id ${quoted(id)}, which the sheet names for the piece ${quoted(piece)}.`,
    remedy: suggestion(id, ids, 'ids'),
    piece,
  });
}

const noPieces = (document: XmlDocument, report: Report) =>
  report.error('no-pieces', document.root.offset, {
    message: 'The drawing has no pattern pieces.',
    remedy: 'Give the group of each piece data-piece="name", or name its outline in the sheet (pieces).',
  });

function placeOf(
  readings: readonly PieceReading[],
  edge: string | undefined,
  report: Report,
  root: Element,
): Where {
  const holder =
    edge === undefined
      ? undefined
      : readings.find(
          r => r.where(edge).edge !== undefined && r.piece.outline.parts.some(p => p.name === edge),
        );
  return holder ? holder.where(edge) : report.where(root.offset);
}
