import type { Segment } from '../curve/segment.js';
import type { PatternError } from '../errors.js';
import { largestCoordinate } from '../tolerance.js';
import {
  mostDrawnSegments,
  mostInstancedSegments,
  mostInstances,
  mostShapePoints,
  smallShapePoints,
} from './limits.js';
import { pointsOf, type Subpath } from './pen.js';
import type { Report } from './report.js';
import type { Element } from './xml.js';

/** What a drawing may still ask of the reader; each method throws where it asks for more. */
export interface Budget {
  /** Points that the next shape may have. */
  points(): number;
  /** An element is shown through a `use`. @throws PatternError `too-many-instances` */
  instance(element: Element): void;
  /** A shape was drawn. @throws PatternError `too-many-instances`, `too-many-segments`, `coordinate-out-of-range` */
  shape(strokes: readonly Subpath[], element: Element, isInstance: boolean): void;
}

export function budget(report: Report): Budget {
  let instances = 0,
    instancedSegments = 0,
    drawnSegments = 0,
    room = mostShapePoints;
  return {
    points: () => Math.max(room, smallShapePoints),
    instance(element) {
      if (++instances > mostInstances) throw tooManyInstances(report, element);
    },
    shape(strokes, element, isInstance) {
      checkRange(strokes, element, report);
      const segments = strokes.reduce((n, s) => n + s.segments.length, 0);
      drawnSegments += segments;
      if (isInstance) instancedSegments += segments;
      const points = pointsOf(strokes);
      if (points > smallShapePoints) room -= points;
      if (instancedSegments > mostInstancedSegments) throw tooManyInstances(report, element);
      if (drawnSegments > mostDrawnSegments) throw tooManySegments(report, element);
    },
  };
}

function checkRange(strokes: readonly Subpath[], element: Element, report: Report): void {
  const fits = (segment: Segment): boolean =>
    segment.every(p => Math.abs(p.x) <= largestCoordinate && Math.abs(p.y) <= largestCoordinate);
  if (strokes.every(stroke => stroke.segments.every(fits))) return;
  throw report.refuse('coordinate-out-of-range', element.offset, {});
}

const tooManyInstances = (report: Report, element: Element): PatternError =>
  report.refuse('too-many-instances', element.offset, {});

const tooManySegments = (report: Report, element: Element): PatternError =>
  report.refuse('too-many-segments', element.offset, { of: 'drawing' });
