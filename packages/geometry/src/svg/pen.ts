import type { Affine } from '../affine.js';
import type { Segment } from '../curve/segment.js';
import type { Point } from '../vector.js';
import { type ArcTo, forEachArcCubic } from './arc.js';
import { mostShapePoints } from './limits.js';
import { refusal } from './tellings.js';

/** One stroke of a shape: from where the pen was set down to where it was lifted or closed. */
export interface Subpath {
  readonly start: Point;
  readonly segments: readonly Segment[];
  /** Drawn shut with a closing command, or a shape that is closed by nature. */
  readonly closed: boolean;
}

/** What a path is drawn with, stroke by stroke, in the coordinates of the element or data that it comes from. */
export interface PathPen {
  /** Lifts the pen and sets it down there. */
  moveTo(x: number, y: number): void;
  lineTo(x: number, y: number): void;
  cubicTo(x1: number, y1: number, x2: number, y2: number, x: number, y: number): void;
  quadraticTo(x1: number, y1: number, x: number, y: number): void;
  arcTo(arc: ArcTo): void;
  close(): void;
}

/** Leaves its strokes mapped to millimetres. */
export interface StrokePen extends PathPen {
  /** All strokes so far. */
  strokes(): readonly Subpath[];
}

/**
 * A pen whose strokes come out mapped by `map`. Points are mapped as they are drawn, so that a path of a million
 * segments is held once. Quadratics become cubics exactly, arcs as `arc.ts` says; lines stay lines.
 *
 * @param points how many it may draw, as `mostShapePoints` counts them
 * @throws PatternError `too-many-segments` from its strokes, beyond that
 */
export function penThrough(map: Affine, points = mostShapePoints): StrokePen {
  const { a, b, c, d, e, f } = map;
  const strokes = strokesOf(points, { x: e, y: f });
  const mapped = (x: number, y: number): Point => ({ x: a * x + c * y + e, y: b * x + d * y + f });
  // The current point and the start of the stroke in the element's own coordinates.
  let x0 = 0,
    y0 = 0,
    startX = 0,
    startY = 0;
  const lineTo = (x: number, y: number): void => {
    const end = mapped(x, y);
    strokes.add([strokes.here(), end], end);
    x0 = x;
    y0 = y;
  };
  const cubicTo: PathPen['cubicTo'] = (x1, y1, x2, y2, x, y) => {
    const end = mapped(x, y);
    strokes.add([strokes.here(), mapped(x1, y1), mapped(x2, y2), end], end);
    x0 = x;
    y0 = y;
  };
  const arcPiece: PathPen['cubicTo'] = (x1, y1, x2, y2, x, y) => {
    const end = { x, y };
    strokes.add([strokes.here(), { x: x1, y: y1 }, { x: x2, y: y2 }, end], end);
  };

  return {
    lineTo,
    cubicTo,
    moveTo(x, y) {
      strokes.begin(mapped(x, y));
      x0 = startX = x;
      y0 = startY = y;
    },
    quadraticTo(x1, y1, x, y) {
      const k = 2 / 3;
      cubicTo(x0 + (x1 - x0) * k, y0 + (y1 - y0) * k, x + (x1 - x) * k, y + (y1 - y) * k, x, y);
    },
    arcTo(arc) {
      const { rx, ry, turn, large, sweep, x, y } = arc;
      const drawn = forEachArcCubic({ rx, ry, turn, large, sweep, x, y, x0, y0 }, arcPiece, map);
      if (drawn === 'line') return lineTo(x, y);
      x0 = x;
      y0 = y;
    },
    close() {
      strokes.close();
      x0 = startX;
      y0 = startY;
    },
    strokes: strokes.all,
  };
}

/** Strokes in millimetres, one begun where the last was lifted; none has more than its share of `points`. */
interface Strokes {
  /** Where the pen is. */
  here(): Point;
  /** Lifts the pen and sets it down there. */
  begin(at: Point): void;
  /** A segment that starts where the pen is, and where it ends. */
  add(segment: Segment, end: Point): void;
  /** Back to where the stroke began; `z` right after `z`, or after nothing: a stroke of no length, closed upon itself. */
  close(): void;
  all(): readonly Subpath[];
}

function strokesOf(points: number, origin: Point): Strokes {
  const done: Subpath[] = [];
  let segments: Segment[] = [];
  let start = origin,
    here = origin;
  let isDown = false;
  let room = points;
  const take = (count: number): void => {
    room -= count;
    if (room < 0) throw refusal('too-many-segments', { of: 'drawing' });
  };
  const lift = (closed: boolean): void => {
    if (isDown) done.push({ start, segments, closed });
    segments = [];
    isDown = false;
  };
  const setDown = (): void => {
    if (isDown) return;
    take(pointsOfStart);
    start = here;
    isDown = true;
  };
  return {
    here: () => here,
    begin(at) {
      lift(false);
      here = at;
      setDown();
    },
    add(segment, end) {
      if (!isDown) setDown();
      take(segment.length - 1);
      segments.push(segment);
      here = end;
    },
    close() {
      setDown();
      if (here.x !== start.x || here.y !== start.y || segments.length === 0) segments.push([here, start]);
      here = start;
      lift(true);
    },
    all() {
      lift(false);
      return done;
    },
  };
}

/** The start of a stroke counts as a cubic: strokes of one point take as much memory. */
const pointsOfStart = 3;

/** Points as `mostShapePoints` counts them. */
export const pointsOf = (strokes: readonly Subpath[]): number =>
  strokes.reduce((sum, { segments }) => segments.reduce((n, s) => n + s.length - 1, sum + pointsOfStart), 0);
