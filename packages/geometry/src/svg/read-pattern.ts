import { PatternError } from '../errors.js';
import { withRoles } from '../pattern/roles/guess-roles.js';
import type { Pattern, Piece } from '../pattern/types.js';
import { validateTogether } from '../pattern/validate.js';
import { units } from '../pattern/words.js';
import type { Finding, Where } from '../telling.js';
import { lengthOf, wordOf } from './attribute-values.js';
import { refuseUnknownScale, tellSizes } from './check-scale.js';
import { checkShown } from './check-shown.js';
import { unlikeSizes } from './check-sizes.js';
import { checkVocabulary, type Misspelling } from './check-vocabulary.js';
import { faultError, faultFinding } from './fault-finding.js';
import { type Gathered, gatherer, meaningOf } from './gather.js';
import { readMetadata } from './read-metadata.js';
import { type PieceReading, placed, readPiece } from './read-piece.js';
import { type Report, reportOn } from './report.js';
import type { DrawingScale } from './root.js';
import { type ShapeFault, shapeNames } from './shapes.js';
import type { SheetPieces } from './sheet-pieces.js';
import { styleSheetOf } from './style-sheet.js';
import { tellCopies } from './tell-copies.js';
import { telling, version } from './vocabulary.js';
import { type Shown, walk } from './walk.js';
import { attributeOf, type Element, parseXml, type XmlDocument } from './xml.js';

/** What a reader may be told beside the drawing. */
export interface PatternReadOptions {
  /** Named in findings and errors; its last part is the pattern's name where the drawing gives none. */
  readonly file?: string;
  /** What a sheet says of pieces drawn as one closed path. */
  readonly pieces?: SheetPieces;
  /** Which of the drawing's sizes to read; absent: the first. */
  readonly size?: string;
  /** How large the drawing is meant; absent: as it says itself. */
  readonly scale?: DrawingScale;
}

/** A pattern as read, and what was found on reading. */
export interface PatternReading {
  readonly pattern: Pattern;
  readonly findings: readonly Finding[];
  /** Every size that the drawing holds, in its order; the pattern is one of them. */
  readonly sizes: readonly string[];
}

/**
 * A pattern from a drawing in our convention on plain SVG: `data-` attributes for pieces, edges, darts, notches,
 * lines and marks, one JSON block in `metadata` for seams, fabrics and fastenings, everything else by ordinary SVG
 * (`pattern-svg.md` has every attribute with an example).
 *
 * Edges may be drawn in any order and direction; outlines come out clockwise, joined within `joiningGap`. What was
 * read but not understood is a finding with its line. Roles that are not given are guessed.
 *
 * @throws PatternError for a drawing that is no pattern; `where` gives file, line, column, and piece and edge as far
 *   as they are known
 */
export function readPattern(source: Uint8Array | string, options: PatternReadOptions = {}): PatternReading {
  const document = parseXml(source, options.file);
  const report = reportOn(document, options.file);
  const misspelling = checkVocabulary(document, report);
  try {
    const reading = readDocument(document, report, options);
    const other = (size: string): Pattern =>
      readDocument(document, reportOn(document, options.file), { ...options, size }).pattern;
    const unlike = unlikeSizes(reading, other, report.where(document.root.offset));
    return unlike.length > 0 ? { ...reading, findings: [...reading.findings, ...unlike] } : reading;
  } catch (error) {
    throw misspelling && error instanceof PatternError ? causedBy(misspelling, report) : error;
  }
}

/** A misspelt attribute is the likeliest cause of whatever else cannot be read. */
const causedBy = ({ attribute, near, offset }: Misspelling, report: Report): PatternError =>
  report.refuse('attribute-misspelt', offset, { attribute, near });

function readDocument(
  document: XmlDocument,
  report: Report,
  { file, pieces: sheet = {}, size, scale }: PatternReadOptions,
): PatternReading {
  const { root } = document;
  const unit = wordOf(root, 'data-unit', units, { report, owner: {} }) ?? 'mm';
  tellVersion(root, report);
  refuseUnknownScale(root, scale, report);
  const gathering = gatherer(report, sheet, size);
  walk(
    document,
    report,
    {
      skip: element => element.attributes.has('data-derived'),
      onFault: (element, fault, outer) => faultIn(element, fault, outer, sheet, report),
      sheet: styleSheetOf(document, report),
      scale,
    },
    gathering.add,
  );
  const gathered = gathering.gathered();
  refuseMissing(gathered, size, report, root);
  checkShown(document, { pieces: gathered.pieceElements, things: gathered.things }, report);
  const readings = gathered.pieces.map(drawing => readPiece(drawing, sheet[drawing.name], unit, report));
  const { seams, fabrics, fastenings, madeFor } = readMetadata(document, readings, unit, report);
  const leftToTrue = readings.flatMap(reading => reading.leftToTrue);
  const tolerance = root.attributes.get('data-tolerance');
  const pattern: Pattern = {
    name: nameOf(root, file),
    unit,
    pieces: readings.map(({ piece }): Piece => {
      const made = madeFor.get(piece.name);
      return made ? { ...piece, madeFor: made } : piece;
    }),
    seams,
    fabrics,
    ...(fastenings.length > 0 ? { fastenings } : {}),
    ...(tolerance ? { tolerance: lengthOf(tolerance, 'data-tolerance', { report, unit, owner: {} }) } : {}),
    ...(leftToTrue.length > 0 ? { leftToTrue } : {}),
    ...(gathered.size === undefined ? {} : { size: gathered.size }),
  };
  placed(
    edge => placeOf(readings, edge, report, root),
    () => validateTogether(pattern),
  );
  tellSizes(pattern.pieces, root, scale, report);
  if (attributeOf(root, 'data-paperhinge') === undefined) tellCopies(pattern, root, report);
  return { pattern: withRoles(pattern), findings: report.findings(), sizes: gathered.sizes };
}

function tellVersion(root: Element, report: Report): void {
  const written = root.attributes.get('data-paperhinge');
  const number = Number(written?.value.trim() ?? version);
  if (written && number !== version)
    report.add('warning', 'version-not-known', written.offset, {
      version: Number.isFinite(number) ? number : 0,
    });
}

/** The sizes that a drawing holds, in its order; none where it is of one size. @throws PatternError where it is not XML */
export function sizesOf(
  source: Uint8Array | string,
  { file }: { readonly file?: string } = {},
): readonly string[] {
  const found = new Set<string>();
  const stack: Element[] = [parseXml(source, file).root];
  for (let element = stack.pop(); element; element = stack.pop()) {
    const size = attributeOf(element, 'data-size')?.trim();
    if (size) found.add(size);
    for (let i = element.children.length - 1; i >= 0; i--) stack.push(element.children[i]!);
  }
  return [...found];
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
  const edge = attributeOf(element, 'data-edge') ?? attributeOf(element, 'data-dart');
  throw faultError(report, element, fault, { piece: pieceAround(element, outer), edge });
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

/** Outlines and sizes that were asked for must be there; of sizes that were not, one was taken. */
function refuseMissing(
  { missing, ids, sizes, size, pieces }: Gathered,
  wanted: string | undefined,
  report: Report,
  root: Element,
): void {
  const [first] = missing;
  if (first) {
    const [id, piece] = first;
    throw report.refuse('unknown-outline', root.offset, { piece: { piece }, id, ids }, { piece });
  }
  if (wanted !== undefined && !sizes.includes(wanted))
    throw report.refuse('unknown-size', root.offset, { size: wanted, sizes });
  if (pieces.length === 0) throw report.refuse('no-pieces', root.offset, {});
  if (wanted === undefined && size !== undefined && sizes.length > 1)
    report.add('note', 'size-not-chosen', root.offset, { size, sizes });
}

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
