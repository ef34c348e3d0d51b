import type { Affine } from '../affine.js';
import { requireMap } from '../curve/sound.js';
import { forEachArcCubic, type SvgArc } from './arc.js';
import { asciiWriter, lastDecimal } from './ascii-writer.js';
import { type Ellipse, mappedEllipse } from './ellipse.js';
import { drawPathData, type PathDataFault } from './path-data.js';
import type { PathPen } from './pen.js';

/** Path data carried by a map. */
export interface TransformedPathData {
  /** Absolute `M L C Q A Z` with numbers of at most ten decimals. */
  readonly data: string;
  readonly fault?: PathDataFault;
}

/**
 * Path data carried by an affine map, written as path data again: quadratics stay quadratics and arcs stay arcs, so
 * that the drawing does not grow. The curve drawn lies within 1e-8 of the true image, in the units of the map (half
 * an ellipse: within 2e-7 of its radius, the rounding of its own ends). An arc that the map squeezes flat, or that
 * ten decimals do not fix so well, is written as cubics. Damaged data is no error: it is written up to the
 * fault, which is named. The grammar is that of SVG 2, section 9.3.9.
 *
 * Source of an ellipse's image: its matrix times the map, taken apart by singular values (`ellipse.ts`).
 *
 * @throws PatternError `coordinate-out-of-range` of a map that is none
 */
export function transformPathData(text: string, map: Affine): TransformedPathData {
  requireMap(map);
  const pen = penWriting(map);
  const fault = drawPathData(text, pen);
  return fault ? { data: pen.text(), fault } : { data: pen.text() };
}

/** Writes what it draws, carried by a map; each pen begins anew, so that only one is in use at a time. */
function penWriting(map: Affine): PathPen & { text(): string } {
  let x0 = 0,
    y0 = 0,
    startX = 0,
    startY = 0;
  writer.begin();
  /** The last place of a segment, where the next one begins. */
  const arrive = (x: number, y: number): void => {
    writePlace(map, x, y);
    x0 = x;
    y0 = y;
  };
  const lineTo = (x: number, y: number): void => {
    writer.character(letterL);
    arrive(x, y);
  };
  const cubicTo: PathPen['cubicTo'] = (x1, y1, x2, y2, x, y) => {
    writer.character(letterC);
    writePlace(map, x1, y1);
    writer.character(space);
    writePlace(map, x2, y2);
    writer.character(space);
    arrive(x, y);
  };

  return {
    lineTo,
    cubicTo,
    moveTo(x, y) {
      writer.character(letterM);
      arrive(x, y);
      startX = x;
      startY = y;
    },
    quadraticTo(x1, y1, x, y) {
      writer.character(letterQ);
      writePlace(map, x1, y1);
      writer.character(space);
      arrive(x, y);
    },
    arcTo(to) {
      const arc = { x0, y0, ...to };
      if (to.x === x0 && to.y === y0) return;
      if (to.rx === 0 || to.ry === 0) return lineTo(to.x, to.y);
      if (writeArc(arc, map)) arrive(to.x, to.y);
      else forEachArcCubic(arc, cubicTo);
    },
    close() {
      writer.character(letterZ);
      x0 = startX;
      y0 = startY;
    },
    text: () => writer.text(),
  };
}

function writePlace({ a, b, c, d, e, f }: Affine, x: number, y: number): void {
  writer.number(a * x + c * y + e);
  writer.character(space);
  writer.number(b * x + d * y + f);
}

/** Writes an arc's image but for the place where it ends; false, and nothing, where ten decimals do not fix it. */
function writeArc(arc: SvgArc, map: Affine): boolean {
  const image = writableImage(arc, map);
  if (!image) return false;
  const isMirrored = map.a * map.d - map.b * map.c < 0;
  writer.character(letterA);
  for (const shape of [image.rx, image.ry, image.turn]) {
    writer.number(shape);
    writer.character(space);
  }
  writer.character(arc.large ? one : zero);
  writer.character(space);
  writer.character(arc.sweep === isMirrored ? zero : one);
  writer.character(space);
  return true;
}

/** Radii in the map's units and turn in degrees of an arc's image; undefined where ten decimals do not fix it. */
function writableImage(arc: SvgArc, map: Affine): Ellipse | undefined {
  const image = mappedEllipse(map, { rx: Math.abs(arc.rx), ry: Math.abs(arc.ry), turn: arc.turn });
  const reach = reachOf(arc);
  const isHalf = reach > 1 - rounding;
  // How far the last decimal of a radius, or of an end, moves the centre.
  const leverage = image.rx / image.ry / (isHalf ? 1 : Math.sqrt(1 - reach * reach));
  if (!(leverage < largestLeverage && image.ry > smallestRadius)) return undefined;
  // Half an ellipse follows from its ends and its shape; radii a little short make sure it is read as one.
  const size = isHalf ? reach * (1 - (2 * lastDecimal) / image.ry) : 1;
  return { rx: image.rx * size, ry: image.ry * size, turn: image.turn };
}

/** Half the chord, in radii of the ellipse: at 1 the arc is half of it, beyond 1 the radii are too small and grow. */
function reachOf({ x0, y0, rx, ry, turn, x, y }: SvgArc): number {
  const dx = x0 - x,
    dy = y0 - y;
  const phi = (turn * Math.PI) / 180;
  const c = Math.cos(phi),
    s = Math.sin(phi);
  return Math.hypot((c * dx + s * dy) / rx, (c * dy - s * dx) / ry) / 2;
}

const writer = asciiWriter();
/** Of a share near 1 that was worked out from two points. */
const rounding = 64 * Number.EPSILON;
/** Half a last decimal times this is within the promise of 1e-8. */
const largestLeverage = 100;
/** Its last decimal must be a small share of it. */
const smallestRadius = 10_000 * lastDecimal;
const [space, zero, one] = [0x20, 0x30, 0x31];
const [letterM, letterL, letterC, letterQ, letterA, letterZ] = [0x4d, 0x4c, 0x43, 0x51, 0x41, 0x5a];
