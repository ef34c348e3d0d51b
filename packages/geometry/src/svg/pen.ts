import { type Affine, apply } from '../affine.js';
import type { Segment } from '../curve/segment.js';
import type { Point } from '../vector.js';
import { forEachArcCubic } from './arc.js';

/** One stroke of a shape: from where the pen was set down to where it was lifted or closed. */
export interface Subpath {
  readonly start: Point;
  readonly segments: readonly Segment[];
  /** Drawn shut with a closing command, or a shape that is closed by nature. */
  readonly closed: boolean;
}

/** Draws in the coordinates of an element and leaves its strokes mapped to millimetres. */
export interface Pen {
  moveTo(x: number, y: number): void;
  lineTo(x: number, y: number): void;
  cubicTo(x1: number, y1: number, x2: number, y2: number, x: number, y: number): void;
  quadraticTo(x1: number, y1: number, x: number, y: number): void;
  /** SVG's elliptical arc; `turn` in degrees. */
  arcTo(rx: number, ry: number, turn: number, large: boolean, sweep: boolean, x: number, y: number): void;
  close(): void;
  /** All strokes so far. */
  strokes(): Subpath[];
}

/**
 * A pen whose strokes come out mapped by `map`. Points are mapped as they are drawn, so that a path of a million
 * segments is held once. Quadratics become cubics exactly, arcs as `arc.ts` says; lines stay lines.
 */
export function penThrough(map: Affine): Pen {
  const done: Subpath[] = [];
  let segments: Segment[] = [];
  let start: Point = { x: 0, y: 0 };
  let here = start;
  let down = false;
  let x0 = 0,
    y0 = 0,
    startX = 0,
    startY = 0;

  const lift = (closed: boolean): void => {
    if (down) done.push({ start, segments, closed });
    segments = [];
    down = false;
  };
  const setDown = (): void => {
    if (!down) start = here;
    down = true;
  };
  const go = (x: number, y: number, segment: (to: Point) => Segment): void => {
    setDown();
    const to = apply(map, { x, y });
    segments.push(segment(to));
    here = to;
    x0 = x;
    y0 = y;
  };
  const cubicTo: Pen['cubicTo'] = (x1, y1, x2, y2, x, y) =>
    go(x, y, to => [here, apply(map, { x: x1, y: y1 }), apply(map, { x: x2, y: y2 }), to]);

  const pen: Pen = {
    moveTo(x, y) {
      lift(false);
      here = apply(map, { x, y });
      [x0, y0, startX, startY] = [x, y, x, y];
      setDown();
    },
    lineTo: (x, y) => go(x, y, to => [here, to]),
    cubicTo,
    quadraticTo(x1, y1, x, y) {
      const k = 2 / 3;
      cubicTo(x0 + (x1 - x0) * k, y0 + (y1 - y0) * k, x + (x1 - x) * k, y + (y1 - y) * k, x, y);
    },
    arcTo(rx, ry, turn, large, sweep, x, y) {
      const drawn = forEachArcCubic({ x0, y0, rx, ry, turn, large, sweep, x, y }, cubicTo);
      if (drawn === 'line') pen.lineTo(x, y);
    },
    close() {
      // `z` right after `z`, or after nothing: a stroke of no length, closed upon itself.
      setDown();
      if (here.x !== start.x || here.y !== start.y || segments.length === 0) segments.push([here, start]);
      here = start;
      [x0, y0] = [startX, startY];
      lift(true);
    },
    strokes() {
      lift(false);
      return done;
    },
  };
  return pen;
}
