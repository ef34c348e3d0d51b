import type { Affine } from '../affine.js';
import type { Report } from './report.js';
import { propertyOf } from './style.js';
import { type LengthBasis, svgLength } from './transform.js';
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

/** How large a drawing is meant: so many times as drawn, or with so many mm to one of its own units. */
export type DrawingScale = { readonly factor: number } | { readonly unitMm: number };

/** How a drawing says how large it is: in units of length, in pixels, not at all, or so that it cannot be known. */
export type ScaleSource = 'length' | 'pixels' | 'nothing' | 'viewbox' | 'percent' | 'width' | 'height';

/**
 * The outer viewport: the map from the root's coordinates to mm. Width and height with a viewBox set the scale; with
 * one of them the other follows the viewBox; with neither (or percentages) one unit is one pixel of 1/96 in.
 * A file that is an SVG fragment (its root is another element) is read in pixels.
 */
export function outerViewport(
  root: Element,
  report: Report,
  scale?: DrawingScale,
): { readonly map: Affine; readonly basis: LengthBasis } {
  if (root.name !== 'svg') throw report.refuse('not-svg', root.offset, {});
  const own = ownViewport(root, report);
  if (!scale) return own;
  const { a, b, c, d, e, f } = own.map;
  const k = 'factor' in scale ? scale.factor : scale.unitMm / Math.sqrt(Math.abs(a * d - b * c));
  return { map: { a: a * k, b: b * k, c: c * k, d: d * k, e: e * k, f: f * k }, basis: own.basis };
}

function ownViewport(root: Element, report: Report): { readonly map: Affine; readonly basis: LengthBasis } {
  const box = parseViewBox(attributeOf(root, 'viewBox'));
  const width = sizeOf(root, 'width'),
    height = sizeOf(root, 'height');
  const pixels: Affine = { a: mmPerPixel, b: 0, c: 0, d: mmPerPixel, e: 0, f: 0 };
  const font = { fontSize: defaultFontSize, rootFontSize: defaultFontSize };
  if (!box || box === 'nothing') {
    if (box === 'nothing') report.add('warning', 'viewbox-empty', root.offset, {});
    const inPixels = (mm: number | undefined): number | undefined =>
      mm === undefined ? undefined : mm / mmPerPixel;
    const basis = {
      width: inPixels(width) ?? defaultSize.width,
      height: inPixels(height) ?? defaultSize.height,
      ...font,
    };
    return { map: pixels, basis };
  }
  const given = width ?? (height === undefined ? undefined : (height * box.width) / box.height);
  const wide = given ?? box.width * mmPerPixel;
  const high = height ?? (wide * box.height) / box.width;
  return {
    map: viewBoxMap(box, wide, high, attributeOf(root, 'preserveAspectRatio')),
    basis: { width: box.width, height: box.height, ...font },
  };
}

/**
 * The width and the height (mm) that a root would have by its other side and its viewBox, where these disagree by what
 * no rounding makes: half a per cent. None where the drawing is meant to be stretched or cut off.
 */
export function outOfProportion(
  root: Element,
): { readonly widthMm: number; readonly heightMm: number } | undefined {
  const box = parseViewBox(attributeOf(root, 'viewBox'));
  const width = sizeOf(root, 'width'),
    height = sizeOf(root, 'height');
  if (!box || box === 'nothing' || width === undefined || height === undefined) return undefined;
  if (/none|slice/.test(attributeOf(root, 'preserveAspectRatio') ?? '')) return undefined;
  const widthMm = (height * box.width) / box.height,
    heightMm = (width * box.height) / box.width;
  return Math.abs(widthMm / width - 1) > mostRounded ? { widthMm, heightMm } : undefined;
}
const mostRounded = 0.005;

/** Where the scale of a drawing comes from. `viewbox`, `percent`, `width`, `height`: what keeps it from being known. */
export function scaleSource(root: Element): ScaleSource {
  const written = attributeOf(root, 'viewBox');
  const box = parseViewBox(written);
  if (written !== undefined && written.trim() !== '' && (box === undefined || box === 'nothing'))
    return 'viewbox';
  if (written?.trim() === '') return 'viewbox';
  for (const name of ['width', 'height'] as const) if (isStrange(root, name)) return name;
  const units = (['width', 'height'] as const).map(name => unitOf(root, name));
  if (box && units.some(unit => unit === 'length')) return 'length';
  if (units.some(unit => unit === 'percent') && !units.some(unit => unit === 'pixels')) return 'percent';
  return units.some(unit => unit === 'pixels') ? 'pixels' : 'nothing';
}

/** A width or height of the root that says a size in no unit that SVG has. */
function isStrange(root: Element, name: 'width' | 'height'): boolean {
  const text = attributeOf(root, name)?.trim() ?? '';
  return text !== '' && text !== 'auto' && !relative.test(text) && sizeOf(root, name) === undefined;
}

const relative = /^[+-]?\d*\.?\d+(e[+-]?\d+)?\s*(%|ex|ch|vw|vh|vmin|vmax)$/i;

function unitOf(root: Element, name: 'width' | 'height'): 'length' | 'pixels' | 'percent' | undefined {
  const text = attributeOf(root, name)?.trim() ?? '';
  if (relative.test(text)) return 'percent';
  if (sizeOf(root, name) === undefined) return undefined;
  return /(mm|cm|q|in|pt|pc)$/i.test(text) ? 'length' : 'pixels';
}

/** Pixels of the root's own letters: what its `em` and `rem` count. */
function rootLetters(root: Element): number {
  const written = propertyOf(root, 'font-size', () => undefined);
  const usual = { fontSize: defaultFontSize, rootFontSize: defaultFontSize };
  const size =
    written && svgLength(written, { ...usual, width: defaultFontSize, height: defaultFontSize }, 'x');
  return size !== undefined && size !== '' && size > 0 ? size : defaultFontSize;
}

/** mm; `undefined` where nothing absolute is said. Font-relative sizes are of the root's letters. */
function sizeOf(root: Element, name: 'width' | 'height'): number | undefined {
  const match = /^\s*\+?(\d*\.?\d+(?:e[+-]?\d+)?)\s*([a-z]*)\s*$/i.exec(attributeOf(root, name) ?? '');
  if (!match) return undefined;
  const unit = match[2]!.toLowerCase();
  const per =
    unit === '' ? mmPerPixel : unit === 'em' || unit === 'rem' ? mmPerPixel * rootLetters(root) : mmPer[unit];
  const mm = per === undefined ? Number.NaN : Number(match[1]) * per;
  return mm > 0 && Number.isFinite(mm) ? mm : undefined;
}
