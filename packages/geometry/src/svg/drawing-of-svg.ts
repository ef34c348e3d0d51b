import { type Affine, apply } from '../affine.js';
import type { Finding } from '../telling.js';
import type { DrawnLine, DrawnWord, ForeignDrawing } from '../trace/drawing/drawing.js';
import { faultFinding } from './fault-finding.js';
import { reportOn } from './report.js';
import type { DrawingScale } from './root.js';
import { propertyOf, type StyleSheet } from './style.js';
import { styleSheetOf } from './style-sheet.js';
import { type Shown, walk } from './walk.js';
import { attributeOf, type Element, parseXml } from './xml.js';

/** An SVG file of any origin as strokes and words. */
export interface SvgDrawing {
  readonly drawing: ForeignDrawing;
  readonly findings: readonly Finding[];
}

/**
 * The strokes and words of any SVG file, in mm. A stroke's layer is the named group next to the root that it lies in;
 * without one, its colour.
 * @throws PatternError where the file cannot be read at all, as `readShapes`
 */
export function drawingOfSvg(
  source: Uint8Array | string,
  { file, scale }: { readonly file?: string; readonly scale?: DrawingScale } = {},
): SvgDrawing {
  const document = parseXml(source, file);
  const report = reportOn(document, file);
  const sheet = styleSheetOf(document, report);
  const lines: DrawnLine[] = [],
    words: DrawnWord[] = [];
  walk(
    document,
    report,
    {
      sheet,
      scale,
      onFault: (element, fault) => faultFinding(report, element, fault),
      onText: text => words.push(...wordsIn(text)),
    },
    drawn => {
      const dash = inherited(drawn, 'stroke-dasharray', sheet);
      const dashed = dash !== undefined && dash !== 'none' && /[1-9]/.test(dash);
      const own = {
        layer: layerOf(drawn) ?? inherited(drawn, 'stroke', sheet) ?? 'black',
        dashed,
        ...(dashed ? { dash: dashIn(dash, drawn.map) } : {}),
      };
      for (const { segments, closed } of drawn.strokes)
        if (segments.length > 0) lines.push({ path: { segments }, closed, ...own });
    },
  );
  return { drawing: { lines, words }, findings: report.findings() };
}

/** Dashes as they lie on the sheet; what is told in a unit of its own, as it is told. */
function dashIn(dash: string, { a, b, c, d }: Affine): readonly number[] | string {
  const words = dash.split(/[\s,]+/).filter(word => word !== '');
  const scale = Math.sqrt(Math.abs(a * d - b * c));
  const lengths = words.map(Number);
  return lengths.every(Number.isFinite) ? lengths.map(length => length * scale) : words.join('-');
}

function inherited(shown: Shown, name: string, sheet: StyleSheet): string | undefined {
  for (let at: Shown | undefined = shown; at; at = at.outer) {
    const value = propertyOf(at.element, name, sheet);
    if (value !== undefined) return value;
  }
  return undefined;
}

/** The name of the outermost group that has one: vector editors keep their layers so. */
function layerOf(shown: Shown): string | undefined {
  let name: string | undefined;
  for (let at = shown.outer; at?.outer; at = at.outer)
    name = labelOf(at.element) ?? attributeOf(at.element, 'id') ?? name;
  return name;
}
const labelOf = (element: Element): string | undefined =>
  [...element.attributes].find(([key]) => key.endsWith(':label'))?.[1].value;

/** A text by where it begins; lines of it (`tspan`) that have places of their own each by theirs. */
function wordsIn({ element, map }: Shown): readonly DrawnWord[] {
  const at = (one: Element) => ({
    x: Number.parseFloat(attributeOf(one, 'x') ?? attributeOf(element, 'x') ?? '0') || 0,
    y: Number.parseFloat(attributeOf(one, 'y') ?? attributeOf(element, 'y') ?? '0') || 0,
  });
  const lines = element.children.filter(child => child.name === 'tspan');
  return [element, ...lines].flatMap(one => {
    const text = [one.text, ...(one === element ? [] : one.children.map(child => child.text))]
      .join(' ')
      .replace(/\s+/g, ' ')
      .trim();
    return text === '' ? [] : [{ text, at: apply(map, at(one)) }];
  });
}
