import { type Affine, identity } from '../affine.js';
import { requireMap } from '../curve/sound.js';
import { type PathPen, penThrough, type Subpath } from './pen.js';
import {
  isAtEnd,
  type Reading,
  readFlag,
  readingOf,
  readNumber,
  readSeparator,
  readSeparatorBeforeNumber,
  readSpace,
} from './scan.js';
import type { FaultReason } from './tellings.js';

/** Where the grammar of path data was broken; all before it has been drawn, as the specification asks. */
export interface PathDataFault {
  /** Characters of the text before the fault. */
  readonly index: number;
  /** What was expected there; quotes nothing. */
  readonly reason: FaultReason;
}

/** The strokes that path data draws. */
export interface PathData {
  readonly subpaths: readonly Subpath[];
  readonly fault?: PathDataFault;
}

/**
 * Path data (the `d` of an SVG path) as strokes of lines and cubics: quadratics exactly, arcs as cubics of at most
 * 7.5 degrees that keep within 1e-10 of the radius. Damaged data is no error: it is drawn up to the fault, which is
 * named. The grammar is that of {@link drawPathData}.
 *
 * @param map carries the data's coordinates to millimetres; left out, one unit is one millimetre
 * @throws PatternError `coordinate-out-of-range` of a map that is none; `too-many-segments` beyond a million cubics or so, which take half a gigabyte
 */
export function parsePathData(text: string, map: Affine = identity): PathData {
  requireMap(map);
  const pen = penThrough(map);
  const fault = drawPathData(text, pen);
  return fault ? { subpaths: pen.strokes(), fault } : { subpaths: pen.strokes() };
}

/**
 * Draws path data with a pen of one's own, in absolute coordinates of the data: shorthands (H, V, S, T) come as what
 * they stand for, arcs as arcs. By the SVG 2 grammar (section 9.3.9), longest match, arc flags of one digit, in one
 * pass over the text; numbers beyond 2.6e120 are faults. After an error everything before the faulty segment stands
 * (section 9.5.4).
 *
 * @returns where the grammar was broken, if it was
 */
export function drawPathData(text: string, pen: PathPen): PathDataFault | undefined {
  const read = readingOf(text);
  const at: Place = { x: 0, y: 0, startX: 0, startY: 0, controlX: 0, controlY: 0, last: 0 };
  readSpace(read);
  while (!isAtEnd(read)) {
    const { index } = read;
    const command = text.charCodeAt(read.index++);
    const kind = command | 0x20;
    if (!(kind in argumentsOf)) return { index, reason: 'command-expected' };
    if (at.last === 0 && kind !== M) return { index, reason: 'begins-without-move' };
    if (kind === Z) {
      pen.close();
      at.x = at.startX;
      at.y = at.startY;
      at.last = Z;
      readSpace(read);
      continue;
    }
    for (let first = true; ; first = false) {
      if (first) readSpace(read);
      else if (!readSeparatorBeforeNumber(read)) break;
      if (!readNumbers(read, kind)) return faultAt(read);
      drawSegment(kind === M && !first ? L : kind, command === kind, at, pen);
      at.last = kind;
    }
    if (read.isCommaDangling) return faultAt(read);
  }
  return undefined;
}

const faultAt = ({ index, reason }: Reading): PathDataFault => ({ index, reason });

/** The current point, the start of the stroke and the last control point, in the data's own coordinates. */
interface Place {
  x: number;
  y: number;
  startX: number;
  startY: number;
  controlX: number;
  controlY: number;
  /** The last command, as a small letter; 0 before the first. */
  last: number;
}

/** Draws one segment of the numbers read last, from where the pen is. */
function drawSegment(kind: number, isRelative: boolean, at: Place, pen: PathPen): void {
  const { x: fromX, y: fromY, last } = at;
  const dx = isRelative ? fromX : 0,
    dy = isRelative ? fromY : 0;
  const isSmooth = last === kind || last === (kind === S ? C : Q);
  const x1 = isSmooth ? 2 * fromX - at.controlX : fromX,
    y1 = isSmooth ? 2 * fromY - at.controlY : fromY;
  // The last two numbers are where the segment ends, but for H and V.
  const wanted = argumentsOf[kind]!;
  const x = kind === V ? fromX : n[kind === H ? 0 : wanted - 2]! + dx,
    y = kind === H ? fromY : n[wanted - 1]! + dy;
  at.x = x;
  at.y = y;
  switch (kind) {
    case M:
      pen.moveTo(x, y);
      at.startX = x;
      at.startY = y;
      break;
    case C:
      at.controlX = n[2]! + dx;
      at.controlY = n[3]! + dy;
      pen.cubicTo(n[0]! + dx, n[1]! + dy, at.controlX, at.controlY, x, y);
      break;
    case S:
      at.controlX = n[0]! + dx;
      at.controlY = n[1]! + dy;
      pen.cubicTo(x1, y1, at.controlX, at.controlY, x, y);
      break;
    case Q:
      at.controlX = n[0]! + dx;
      at.controlY = n[1]! + dy;
      pen.quadraticTo(at.controlX, at.controlY, x, y);
      break;
    case T:
      at.controlX = x1;
      at.controlY = y1;
      pen.quadraticTo(x1, y1, x, y);
      break;
    case A:
      pen.arcTo({ rx: n[0]!, ry: n[1]!, turn: n[2]!, large: n[3] === 1, sweep: n[4] === 1, x, y });
      break;
    default:
      pen.lineTo(x, y);
  }
}

/** Reads the numbers of one segment into `n`; false where one is missing. */
function readNumbers(read: Reading, kind: number): boolean {
  const wanted = argumentsOf[kind]!;
  for (let i = 0; i < wanted; i++) {
    if (i > 0) readSeparator(read);
    const isFlag = kind === A && (i === 3 || i === 4);
    if (!(isFlag ? readFlag(read) : readNumber(read))) return false;
    n[i] = read.value;
  }
  return true;
}

/** Seven numbers at most; one array serves every segment. */
const n: number[] = [0, 0, 0, 0, 0, 0, 0];

const [M, Z, L, H, V, C, S, Q, T, A] = [...'mzlhvcsqta'].map(letter => letter.charCodeAt(0)) as [
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
];
/** How many numbers each command takes at a time. */
const argumentsOf: Readonly<Record<number, number>> = {
  [M]: 2,
  [Z]: 0,
  [L]: 2,
  [H]: 1,
  [V]: 1,
  [C]: 6,
  [S]: 4,
  [Q]: 4,
  [T]: 2,
  [A]: 7,
};
