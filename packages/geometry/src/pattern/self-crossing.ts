import { parameterAtLength } from '../curve/arc-length.js';
import { pointAt } from '../curve/segment.js';
import { pathLength, startLengths } from '../path/length.js';
import type { Path } from '../path/path.js';
import { forEachSelfMeeting, type PathSelfCrossing } from '../region/self-crossings.js';
import { joiningGap } from '../tolerance.js';
import { angleBetween, type Point, subtract } from '../vector.js';
import { outlinePath, pathsOfPart } from './outline.js';
import { refusal } from './tellings.js';
import type { OutlinePart, Piece } from './types.js';

/** Of these the first along the outline is named; a scribble crosses itself by the million. */
const mostCrossings = 100;
/** An outline that touches itself more often is no garment's, and is refused unseen. */
const mostMeetings = 10_000;

/**
 * Refuses an outline that crosses itself. One that only touches itself is let pass: a slash that opens to nothing,
 * or a strap sewn back to its start, does; 10,000 such places are refused too.
 *
 * @throws PatternError `self-crossing`: names both edges and the place in mm
 */
export function refuseSelfCrossing(piece: Piece): void {
  const outline = outlinePath(piece.outline);
  const along = placesAlong(outline);
  let crossing: PathSelfCrossing | undefined;
  let meetings = 0,
    crossings = 0;
  forEachSelfMeeting(outline, meeting => {
    if (++meetings > mostMeetings) crossing ??= meeting;
    else if (meeting.overlap === true || !crosses(along, meeting)) return false;
    else if (crossing === undefined || meeting.alongA < crossing.alongA) crossing = meeting;
    return ++crossings >= mostCrossings || meetings > mostMeetings;
  });
  if (!crossing) return;
  const a = partAt(piece, crossing.alongA),
    b = partAt(piece, crossing.alongB);
  const { x, y } = crossing.point;
  throw refusal('self-crossing', { xMm: x, yMm: y, edges: a === b ? [a] : [a, b] }, { edge: a });
}

/**
 * Whether the two strands change sides: seen from the meeting point, the rays of one strand lie in different
 * sectors between those of the other. The rays go to points a joining gap away, so that a mere touch shows as one.
 */
function crosses(along: (length: number) => Point, { alongA, alongB, point }: PathSelfCrossing): boolean {
  const ray = (length: number): Point => subtract(along(length), point);
  const base = ray(alongA - joiningGap);
  const turn = (v: Point): number => (angleBetween(base, v) + 2 * Math.PI) % (2 * Math.PI);
  const out = turn(ray(alongA + joiningGap));
  return turn(ray(alongB - joiningGap)) < out !== turn(ray(alongB + joiningGap)) < out;
}

/** The point so many mm along a closed outline, round and round; its lengths are worked out once. */
function placesAlong(outline: Path): (length: number) => Point {
  const starts = startLengths(outline);
  const whole = starts.at(-1)!;
  return length => {
    const along = (length + whole) % whole;
    let low = 0,
      high = outline.segments.length;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (starts[middle]! <= along) low = middle;
      else high = middle;
    }
    const segment = outline.segments[low]!;
    return pointAt(segment, parameterAtLength(segment, along - starts[low]!));
  };
}

function partAt(piece: Piece, along: number): string {
  let rest = along;
  const lengthOf = (part: OutlinePart): number =>
    pathsOfPart(part).reduce((sum, path) => sum + pathLength(path), 0);
  for (const part of piece.outline.parts) {
    rest -= lengthOf(part);
    if (rest < 0) return part.name;
  }
  return piece.outline.parts.at(-1)!.name;
}
