import { type Affine, compose, identity, rotation, rotationTo, translation } from '../affine.js';
import type { Point } from '../vector.js';
import { isAtEnd, readingOf, readNumber, readSeparatorBeforeNumber, readSpace } from './scan.js';

/** The parts of a viewport that a length may refer to, in the units of the coordinates around it. */
export interface LengthBasis {
  readonly width: number;
  readonly height: number;
  readonly fontSize: number;
  /** Of the root element: what `rem` counts. */
  readonly rootFontSize: number;
}

/**
 * The `transform` attribute (SVG 2 grammar, with CSS's units where `css` is set): a list of matrix, translate,
 * scale, rotate, skewX, skewY; the last is done first. `undefined` where it is not understood.
 */
export function parseTransform(text: string, css: boolean, basis: LengthBasis): Affine | undefined {
  if (text.trim() === 'none') return identity;
  let map = identity;
  let rest = text.trim();
  while (rest !== '') {
    const match = /^([A-Za-z]+)\s*\(([^()]*)\)[\s,]*/.exec(rest);
    if (!match) return undefined;
    const one = css ? cssStep(match[1]!, match[2]!, basis) : attributeStep(match[1]!, match[2]!);
    if (!one) return undefined;
    map = compose(one, map);
    rest = rest.slice(match[0].length);
  }
  return map;
}

const degrees = (d: number): number => (d * Math.PI) / 180;

/** Exact for quarter turns, which pieces laid sideways are drawn with. */
function turned(deg: number, about: Point): Affine {
  const quarters = deg / 90;
  if (!Number.isInteger(quarters)) return rotation(degrees(deg), about);
  const [c, s] = (
    [
      [1, 0],
      [0, 1],
      [-1, 0],
      [0, -1],
    ] as const
  )[((quarters % 4) + 4) % 4]!;
  return rotationTo(c, s, about);
}

function attributeStep(name: string, written: string): Affine | undefined {
  const n = numberList(written);
  return n && step(name, n);
}

function step(name: string, n: readonly number[]): Affine | undefined {
  const [p = 0, q, r] = n;
  const takes = (...counts: number[]): boolean => counts.includes(n.length);
  switch (name) {
    case 'matrix':
      return takes(6) ? { a: n[0]!, b: n[1]!, c: n[2]!, d: n[3]!, e: n[4]!, f: n[5]! } : undefined;
    case 'translate':
      return takes(1, 2) ? translation({ x: p, y: q ?? 0 }) : undefined;
    case 'scale':
      return takes(1, 2) ? { ...identity, a: p, d: q ?? p } : undefined;
    case 'rotate':
      return takes(1, 3) ? turned(p, { x: q ?? 0, y: r ?? 0 }) : undefined;
    case 'skewX':
      return takes(1) ? { ...identity, c: Math.tan(degrees(p)) } : undefined;
    case 'skewY':
      return takes(1) ? { ...identity, b: Math.tan(degrees(p)) } : undefined;
    default:
      return undefined;
  }
}

/** CSS has units, and names for one axis; percentages of a shape's own box are not followed. */
function cssStep(name: string, written: string, basis: LengthBasis): Affine | undefined {
  const words = written.trim().split(/\s*,\s*|\s+/);
  const isAngle = name.startsWith('rotate') || name.startsWith('skew');
  const isLength = name.startsWith('translate');
  const n = words.map(word =>
    isAngle ? cssAngle(word) : isLength ? cssLength(word, basis) : plainNumber(word),
  );
  if (!n.every(v => v !== undefined)) return undefined;
  const [p, q] = n;
  if (n.length === 1)
    switch (name) {
      case 'translateX':
        return translation({ x: p!, y: 0 });
      case 'translateY':
        return translation({ x: 0, y: p! });
      case 'scaleX':
        return { ...identity, a: p! };
      case 'scaleY':
        return { ...identity, d: p! };
    }
  if (name === 'skew') return { ...identity, c: Math.tan(degrees(p!)), b: Math.tan(degrees(q ?? 0)) };
  return name === 'rotate' && n.length !== 1 ? undefined : step(name, n);
}

function cssAngle(word: string): number | undefined {
  const match = /^(.*?)(deg|grad|rad|turn)?$/.exec(word)!;
  const n = plainNumber(match[1]!);
  if (n === undefined || (match[2] === undefined && n !== 0)) return undefined;
  const perUnit = { deg: 1, grad: 0.9, rad: 180 / Math.PI, turn: 360 }[match[2] ?? 'deg']!;
  return n * perUnit;
}

function cssLength(word: string, basis: LengthBasis): number | undefined {
  return word.endsWith('%') ? undefined : svgLength(word, basis, 'other');
}

/** Pixels in one of each unit CSS knows (CSS Values 3: 1 in = 96 px). */
const pixelsPer: Readonly<Record<string, number>> = {
  px: 1,
  in: 96,
  cm: 96 / 2.54,
  mm: 96 / 25.4,
  q: 96 / 101.6,
  pt: 96 / 72,
  pc: 16,
};
/** Half the font size: what CSS takes for `ex` where no font is at hand. */
const exPerEm = 0.5;

/**
 * A length of SVG in user units. A percentage is of the viewport's width (x), height (y), or of its diagonal over
 * √2 (anything else), as SVG 2 section 8.9 says. `undefined` where it is not understood.
 */
export function svgLength(text: string, basis: LengthBasis, axis: 'x' | 'y' | 'other'): number | undefined {
  const match = /^([^a-z%]*(?:e[+-]?\d+)?)\s*([a-z]+|%)?$/i.exec(text.trim());
  const n = match ? plainNumber(match[1]!) : undefined;
  if (n === undefined) return undefined;
  const unit = match![2]?.toLowerCase();
  if (unit === undefined) return n;
  if (unit === '%') return (n / 100) * spanOf(basis, axis);
  if (unit === 'em') return n * basis.fontSize;
  if (unit === 'rem') return n * basis.rootFontSize;
  if (unit === 'ex') return n * basis.fontSize * exPerEm;
  const per = pixelsPer[unit];
  return per === undefined ? undefined : n * per;
}

const spanOf = ({ width, height }: LengthBasis, axis: 'x' | 'y' | 'other'): number =>
  axis === 'x' ? width : axis === 'y' ? height : Math.hypot(width, height) / Math.SQRT2;

function plainNumber(text: string): number | undefined {
  const n = numberList(text);
  return n?.length === 1 ? n[0] : undefined;
}

/** Numbers apart by white space and single commas; `undefined` where the text is anything else. */
export function numberList(text: string): readonly number[] | undefined {
  const read = readingOf(text);
  const found: number[] = [];
  readSpace(read);
  while (!isAtEnd(read)) {
    if (found.length > 0 && !readSeparatorBeforeNumber(read)) return undefined;
    if (!readNumber(read)) return undefined;
    found.push(read.value);
    readSpace(read);
  }
  return found;
}

/** `transform-origin` of one or two lengths, percentages or side names; `undefined` where not understood. */
export function transformOrigin(text: string, basis: LengthBasis): Point | undefined {
  const words = text.trim().split(/\s+/);
  if (words.length < 1 || words.length > 3) return undefined;
  const [first, second = 'center'] = words;
  const swap = first === 'top' || first === 'bottom' || second === 'left' || second === 'right';
  const [h, v] = swap ? [second, first!] : [first!, second];
  const x = svgLength(sides[h] ?? h, basis, 'x'),
    y = svgLength(sides[v] ?? v, basis, 'y');
  return x === undefined || y === undefined ? undefined : { x, y };
}
const sides: Readonly<Record<string, string>> = {
  left: '0%',
  top: '0%',
  center: '50%',
  right: '100%',
  bottom: '100%',
};
