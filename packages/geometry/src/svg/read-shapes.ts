import { type Box, boundsOf, boxAround } from '../curve/bounds.js';
import { pathLength } from '../path/length.js';
import { signedArea } from '../region/area.js';
import type { Finding } from '../telling.js';
import { faultFinding } from './fault-finding.js';
import type { Subpath } from './pen.js';
import { type Report, reportOn } from './report.js';
import { scaleSource } from './root.js';
import type { ShapeFault } from './shapes.js';
import { styleSheetOf } from './style-sheet.js';
import { parseViewBox } from './viewport.js';
import { type Drawn, type LeftOut, walk } from './walk.js';
import { attributeOf, type Element, elementFacts, parseXml } from './xml.js';

/** A shape of a drawing that is not one of our patterns, measured as drawn; the JSON of `measure --json`. */
export interface ForeignShape {
  readonly element: string;
  /** That of the shape itself, also where a `use` shows it; absent where it has none. */
  readonly id?: string;
  /** Every stroke is drawn shut. */
  readonly closed: boolean;
  readonly lengthMm: number;
  /** |sum of the signed areas of the closed strokes|; 0 if none is. */
  readonly areaMm2: number;
  /** x, y, width, height of the geometry without stroke. */
  readonly boxMm: readonly [number, number, number, number];
}

/** What a reader may be told beside the drawing. */
export interface ReadOptions {
  /** Named in findings and errors. */
  readonly file?: string;
}

/**
 * Every shown shape of any SVG file in document order, `use` resolved where it stands, measured in mm of the outer
 * viewport. Path data is drawn up to an error, with a finding that gives its place.
 *
 * Not followed: texts, pictures and what other files hold (findings); clipping, masks, markers and strokes, which
 * change paint but not geometry; style rules of more than one selector (a finding where they would hide or move
 * something); lengths by the window (vw, vh) and fonts (ex is half an em); animation and scripts.
 *
 * @throws PatternError where the file cannot be read at all: `not-xml`, `not-svg`, `encoding-broken`,
 *   `coordinate-out-of-range`, `too-many-instances` ...
 */
export function readShapes(
  source: Uint8Array | string,
  { file }: ReadOptions = {},
): { readonly shapes: readonly ForeignShape[]; readonly findings: readonly Finding[] } {
  const document = parseXml(source, file);
  const report = reportOn(document, file);
  const shapes: ForeignShape[] = [];
  tellScale(document.root, report);
  const onFault = (element: Element, fault: ShapeFault): void => faultFinding(report, element, fault);
  const leftOut = walk(document, report, { onFault, sheet: styleSheetOf(document, report) }, drawn => {
    const shape = measured(drawn);
    if (shape) shapes.push(shape);
    else if (drawn.element.name === 'path' && (attributeOf(drawn.element, 'd') ?? '').trim() !== '')
      report.add('note', 'shape-empty', drawn.element.offset, elementFacts(drawn.element));
  });
  sayLeftOut(leftOut, report);
  return { shapes, findings: report.findings() };
}

/** A pattern whose scale cannot be known is refused; a foreign drawing is measured, with a warning. */
function tellScale(root: Element, report: Report): void {
  const source = scaleSource(root);
  const attribute = source === 'viewbox' ? 'viewBox' : source;
  // An empty viewBox is told where the viewport is made.
  if (attribute === 'viewBox' && parseViewBox(attributeOf(root, 'viewBox')) === 'nothing') return;
  if (attribute === 'viewBox' || attribute === 'width' || attribute === 'height')
    report.add('warning', 'scale-unsure', root.attributes.get(attribute)?.offset ?? root.offset, {
      attribute,
    });
}

function measured({ element, strokes }: Drawn): ForeignShape | undefined {
  const drawn = strokes.filter(stroke => stroke.segments.length > 0);
  if (drawn.length === 0) return undefined;
  const closed = drawn.filter(stroke => stroke.closed);
  const box = boxOf(drawn);
  const id = attributeOf(element, 'id');
  return {
    element: element.name,
    ...(id === undefined ? {} : { id }),
    closed: closed.length === drawn.length,
    lengthMm: drawn.reduce((sum, stroke) => sum + pathLength(stroke), 0),
    areaMm2: Math.abs(closed.reduce((sum, stroke) => sum + signedArea(stroke), 0)),
    boxMm: [box.min.x, box.min.y, box.max.x - box.min.x, box.max.y - box.min.y],
  };
}

/** Segment by segment: a path of a million must not need a million boxes at once. */
function boxOf(strokes: readonly Subpath[]): Box {
  let box: Box | undefined;
  for (const { segments } of strokes)
    for (const segment of segments) box = box ? boxAround(box, boundsOf(segment)) : boundsOf(segment);
  return box!;
}

function sayLeftOut({ texts, hidden }: LeftOut, report: Report): void {
  if (hidden.length > 0) report.add('note', 'hidden-left-out', hidden[0]!.offset, { count: hidden.length });
  if (texts.length > 0) report.add('note', 'text-left-out', texts[0]!.offset, { count: texts.length });
}
