import type { Affine } from '../affine.js';
import { drawPathData } from './path-data.js';
import { penThrough, type StrokePen, type Subpath } from './pen.js';
import { isAtEnd, readingOf, readNumber, readSeparator, readSpace } from './scan.js';
import type { FaultReason } from './tellings.js';
import { type LengthBasis, svgLength } from './transform.js';

/** The elements that draw geometry. */
export const shapeNames: ReadonlySet<string> = new Set([
  'path',
  'rect',
  'circle',
  'ellipse',
  'line',
  'polyline',
  'polygon',
]);

/** A fault in an element's geometry: which attribute, where in its value (if known), and why. */
export interface ShapeFault {
  readonly attribute: string;
  readonly index?: number;
  readonly reason: FaultReason;
}

export interface DrawnShape {
  readonly subpaths: readonly Subpath[];
  readonly fault?: ShapeFault;
}

/** Reads a geometry property; absent properties are `undefined`. */
export type Read = (name: string) => string | undefined;

/**
 * The strokes of a shape element, mapped to millimetres: each shape begins and runs as SVG 2 chapter 10 lays down.
 * A shape of no size (a side or radius of zero, no path data) has none.
 *
 * @param points how many the shape may have
 * @throws PatternError `too-many-segments` beyond that
 */
export function drawShape(
  name: string,
  read: Read,
  basis: LengthBasis,
  map: Affine,
  points: number,
): DrawnShape {
  const lengths = lengthsOf(read, basis);
  switch (name) {
    case 'path':
      return drawPath(read('d'), penThrough(map, points));
    case 'rect':
      return drawRect(lengths, map);
    case 'circle':
    case 'ellipse':
      return drawEllipse(name, lengths, map);
    case 'line': {
      const pen = penThrough(map);
      pen.moveTo(lengths.get('x1', 'x') ?? 0, lengths.get('y1', 'y') ?? 0);
      pen.lineTo(lengths.get('x2', 'x') ?? 0, lengths.get('y2', 'y') ?? 0);
      return lengths.with(pen.strokes());
    }
    default:
      return drawPoints(read('points'), name === 'polygon', penThrough(map, points));
  }
}

function drawPath(d: string | undefined, pen: StrokePen): DrawnShape {
  if (d === undefined || d.trim() === 'none') return { subpaths: [] };
  const fault = drawPathData(d, pen);
  const subpaths = pen.strokes();
  return fault ? { subpaths, fault: { attribute: 'd', ...fault } } : { subpaths };
}

/** Radii: each defaults to the other, negative ones count as absent, both are held to half a side. */
function drawRect(lengths: Lengths, map: Affine): DrawnShape {
  const x = lengths.get('x', 'x') ?? 0,
    y = lengths.get('y', 'y') ?? 0;
  const width = lengths.positive('width', 'x') ?? 0,
    height = lengths.positive('height', 'y') ?? 0;
  if (width === 0 || height === 0) return lengths.with([]);
  const askedX = lengths.positive('rx', 'x'),
    askedY = lengths.positive('ry', 'y');
  const rx = Math.min(askedX ?? askedY ?? 0, width / 2),
    ry = Math.min(askedY ?? askedX ?? 0, height / 2);
  const round = rx > 0 && ry > 0;
  const [left, top] = round ? [rx, ry] : [0, 0];
  const pen = penThrough(map);
  const corner = (toX: number, toY: number): void => {
    if (round) pen.arcTo({ ...quarter, rx, ry, x: toX, y: toY });
  };
  const side = (toX: number, toY: number, length: number): void => {
    if (length > 0) pen.lineTo(toX, toY);
  };
  pen.moveTo(x + left, y);
  side(x + width - left, y, width - 2 * left);
  corner(x + width, y + top);
  side(x + width, y + height - top, height - 2 * top);
  corner(x + width - left, y + height);
  side(x + left, y + height, width - 2 * left);
  corner(x, y + height - top);
  side(x, y + top, height - 2 * top);
  corner(x + left, y);
  pen.close();
  return lengths.with(pen.strokes());
}

/** Of an upright ellipse, clockwise. */
const quarter = { turn: 0, large: false, sweep: true } as const;

function drawEllipse(name: 'circle' | 'ellipse', lengths: Lengths, map: Affine): DrawnShape {
  const cx = lengths.get('cx', 'x') ?? 0,
    cy = lengths.get('cy', 'y') ?? 0;
  const r = name === 'circle' ? lengths.positive('r', 'other') : undefined;
  const askedX = name === 'ellipse' ? lengths.positive('rx', 'x') : r;
  const askedY = name === 'ellipse' ? lengths.positive('ry', 'y') : r;
  const rx = askedX ?? askedY ?? 0,
    ry = askedY ?? askedX ?? 0;
  if (rx === 0 || ry === 0) return lengths.with([]);
  const pen = penThrough(map);
  pen.moveTo(cx + rx, cy);
  pen.arcTo({ ...quarter, rx, ry, x: cx, y: cy + ry });
  pen.arcTo({ ...quarter, rx, ry, x: cx - rx, y: cy });
  pen.arcTo({ ...quarter, rx, ry, x: cx, y: cy - ry });
  pen.arcTo({ ...quarter, rx, ry, x: cx + rx, y: cy });
  pen.close();
  return lengths.with(pen.strokes());
}

/** An odd number at the end, or anything that is not a number, ends the line and is a fault. */
function drawPoints(points: string | undefined, closed: boolean, pen: StrokePen): DrawnShape {
  const text = points ?? '';
  const read = readingOf(text);
  let count = 0;
  let fault: ShapeFault | undefined;
  readSpace(read);
  while (!isAtEnd(read) && !fault) {
    if (count > 0) readSeparator(read);
    if (isAtEnd(read) && count > 0) break;
    const { index } = read;
    const x = readNumber(read) ? read.value : undefined;
    if (x !== undefined) readSeparator(read);
    const y = x !== undefined && readNumber(read) ? read.value : undefined;
    if (x === undefined || y === undefined) fault = { attribute: 'points', index, reason: read.reason };
    else if (count++ === 0) pen.moveTo(x, y);
    else pen.lineTo(x, y);
    readSpace(read);
  }
  if (closed && count > 0) pen.close();
  return fault ? { subpaths: pen.strokes(), fault } : { subpaths: pen.strokes() };
}

/** Reads lengths, keeping the first fault met. */
interface Lengths {
  get(name: string, axis: 'x' | 'y' | 'other'): number | undefined;
  /** A negative length is in error and counts as absent. */
  positive(name: string, axis: 'x' | 'y' | 'other'): number | undefined;
  with(subpaths: readonly Subpath[]): DrawnShape;
}

function lengthsOf(read: Read, basis: LengthBasis): Lengths {
  let fault: ShapeFault | undefined;
  const get: Lengths['get'] = (name, axis) => {
    const text = read(name);
    if (text === undefined || text.trim() === 'auto') return undefined;
    const value = svgLength(text, basis, axis);
    if (value === undefined) fault ??= { attribute: name, reason: 'no-length' };
    return value;
  };
  return {
    get,
    positive(name, axis) {
      const value = get(name, axis);
      if (value === undefined || value >= 0) return value;
      fault ??= { attribute: name, reason: 'negative' };
      return undefined;
    },
    with: subpaths => (fault ? { subpaths, fault } : { subpaths }),
  };
}
