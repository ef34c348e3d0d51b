import type { Affine } from '../affine.js';
import type { Segment } from '../curve/segment.js';
import type { PatternError } from '../errors.js';
import type { Point } from '../vector.js';
import { forEachArcCubic } from './arc.js';
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
  /** SVG's elliptical arc; `turn` in degrees. */
  arcTo(rx: number, ry: number, turn: number, large: boolean, sweep: boolean, x: number, y: number): void;
  close(): void;
}

/** Leaves its strokes mapped to millimetres. */
export interface StrokePen extends PathPen {
  /** All strokes so far. */
  strokes(): Subpath[];
}

/**
 * A pen whose strokes come out mapped by `map`. Points are mapped as they are drawn, so that a path of a million
 * segments is held once. Quadratics become cubics exactly, arcs as `arc.ts` says; lines stay lines.
 *
 * @param points how many it may draw, as `mostShapePoints` counts them
 * @throws PatternError `too-many-segments` from its strokes, beyond that
 */
export function penThrough({ a, b, c, d, e, f }: Affine, points = mostShapePoints): StrokePen {
  const done: Subpath[] = [];
  let segments: Segment[] = [];
  let start: Point = { x: e, y: f };
  let here = start;
  let isDown = false;
  // The current point and the start of the stroke in the element's own coordinates.
  let x0 = 0,
    y0 = 0,
    startX = 0,
    startY = 0;

  let room = points;
  const take = (count: number): void => {
    room -= count;
    if (room < 0) throw tooManySegments();
  };

  const lift = (closed: boolean): void => {
    if (isDown) done.push({ start, segments, closed });
    segments = [];
    isDown = false;
  };
  const setDown = (): void => {
    if (isDown) return;
    take(3);
    start = here;
    isDown = true;
  };
  const lineTo = (x: number, y: number): void => {
    if (!isDown) setDown();
    take(1);
    const to = { x: a * x + c * y + e, y: b * x + d * y + f };
    segments.push([here, to]);
    here = to;
    x0 = x;
    y0 = y;
  };
  const cubicTo: PathPen['cubicTo'] = (x1, y1, x2, y2, x, y) => {
    if (!isDown) setDown();
    take(3);
    const to = { x: a * x + c * y + e, y: b * x + d * y + f };
    segments.push([
      here,
      { x: a * x1 + c * y1 + e, y: b * x1 + d * y1 + f },
      { x: a * x2 + c * y2 + e, y: b * x2 + d * y2 + f },
      to,
    ]);
    here = to;
    x0 = x;
    y0 = y;
  };

  return {
    lineTo,
    cubicTo,
    moveTo(x, y) {
      lift(false);
      here = { x: a * x + c * y + e, y: b * x + d * y + f };
      x0 = startX = x;
      y0 = startY = y;
      setDown();
    },
    quadraticTo(x1, y1, x, y) {
      const k = 2 / 3;
      cubicTo(x0 + (x1 - x0) * k, y0 + (y1 - y0) * k, x + (x1 - x) * k, y + (y1 - y) * k, x, y);
    },
    arcTo(rx, ry, turn, large, sweep, x, y) {
      if (forEachArcCubic({ x0, y0, rx, ry, turn, large, sweep, x, y }, cubicTo) === 'line') lineTo(x, y);
    },
    close() {
      // `z` right after `z`, or after nothing: a stroke of no length, closed upon itself.
      setDown();
      if (here.x !== start.x || here.y !== start.y || segments.length === 0) segments.push([here, start]);
      here = start;
      x0 = startX;
      y0 = startY;
      lift(true);
    },
    strokes() {
      lift(false);
      return done;
    },
  };
}

/** Points as `mostShapePoints` counts them. */
export const pointsOf = (strokes: readonly Subpath[]): number =>
  strokes.reduce((sum, { segments }) => segments.reduce((n, s) => n + s.length - 1, sum + 3), 0);

const tooManySegments = (): PatternError => refusal('too-many-segments', { of: 'drawing' });
