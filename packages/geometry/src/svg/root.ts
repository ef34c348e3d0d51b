import type { Affine } from '../affine.js';
import type { Report } from './report.js';
import type { LengthBasis } from './transform.js';
import { parseViewBox, viewBoxMap } from './viewport.js';
import { attributeOf, type Element } from './xml.js';

/** mm in one of each absolute unit of CSS (96 px = 1 in, 72 pt = 1 in, 6 pc = 1 in, 4 q = 1 mm). */
const mmPer: Readonly<Record<string, number>> = {
  mm: 1,
  cm: 10,
  q: 0.25,
  in: 25.4,
  px: 25.4 / 96,
  pt: 25.4 / 72,
  pc: 25.4 / 6,
};
const mmPerPixel = 25.4 / 96;
const defaultFontSize = 16;
/** Pixels: what a browser gives a drawing that says nothing of its size; only percentages ever see it. */
const defaultSize = { width: 300, height: 150 };

/**
 * The outer viewport: the map from the root's coordinates to mm. Width and height with a viewBox set the scale; with
 * one of them the other follows the viewBox; with neither (or percentages) one unit is one pixel of 1/96 in.
 * A file that is an SVG fragment (its root is another element) is read in pixels.
 */
export function outerViewport(
  root: Element,
  report: Report,
): { readonly map: Affine; readonly basis: LengthBasis } {
  if (root.name !== 'svg')
    throw report.error('not-svg', root.offset, {
      message: 'The file is XML, but not an SVG drawing.',
      remedy: 'Save the pattern as plain SVG.',
    });
  const box = parseViewBox(attributeOf(root, 'viewBox'));
  const width = sizeOf(root, 'width'),
    height = sizeOf(root, 'height');
  const pixels: Affine = { a: mmPerPixel, b: 0, c: 0, d: mmPerPixel, e: 0, f: 0 };
  if (!box || box === 'nothing') {
    if (box === 'nothing')
      report.add('warning', 'viewbox-empty', root.offset, {
        message: 'The viewBox has no size, so nothing would be shown.',
        remedy: 'Give the drawing a viewBox that holds it; it was read as if it had none.',
      });
    const inPixels = (mm: number | undefined): number | undefined =>
      mm === undefined ? undefined : mm / mmPerPixel;
    const basis = {
      width: inPixels(width) ?? defaultSize.width,
      height: inPixels(height) ?? defaultSize.height,
      fontSize: defaultFontSize,
    };
    return { map: pixels, basis };
  }
  const basis = { width: box.width, height: box.height, fontSize: defaultFontSize };
  const given = width ?? (height === undefined ? undefined : (height * box.width) / box.height);
  const wide = given ?? box.width * mmPerPixel;
  const high = height ?? (wide * box.height) / box.width;
  return { map: viewBoxMap(box, wide, high, attributeOf(root, 'preserveAspectRatio')), basis };
}

/** A width or height of the root that says a size in no unit that SVG has; read as if it said nothing. */
export const strangeSizes = (root: Element): readonly ('width' | 'height')[] =>
  (['width', 'height'] as const).filter(name => {
    const text = attributeOf(root, name)?.trim() ?? '';
    return (
      text !== '' &&
      text !== 'auto' &&
      !/^[+-]?\d*\.?\d+(e[+-]?\d+)?\s*(%|ex|ch|vw|vh|vmin|vmax)$/i.test(text) &&
      sizeOf(root, name) === undefined
    );
  });

/** mm; `undefined` where nothing absolute is said. Font-relative sizes are of 16 pixels. */
function sizeOf(root: Element, name: 'width' | 'height'): number | undefined {
  const match = /^\s*\+?(\d*\.?\d+(?:e[+-]?\d+)?)\s*([a-z]*)\s*$/i.exec(attributeOf(root, name) ?? '');
  if (!match) return undefined;
  const unit = match[2]!.toLowerCase();
  const per =
    unit === '' ? mmPerPixel : unit === 'em' || unit === 'rem' ? mmPerPixel * defaultFontSize : mmPer[unit];
  const mm = per === undefined ? Number.NaN : Number(match[1]) * per;
  return mm > 0 && Number.isFinite(mm) ? mm : undefined;
}
