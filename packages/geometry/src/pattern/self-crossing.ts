import { PatternError } from '../errors.js';
import { quoted } from '../naming.js';
import { pathLength, pointAlong } from '../path/length.js';
import type { Path } from '../path/path.js';
import { type PathSelfCrossing, selfCrossings } from '../region/self-crossings.js';
import { joiningGap } from '../tolerance.js';
import { angleBetween, type Point, subtract } from '../vector.js';
import { outlinePath } from './outline.js';
import type { OutlinePart, Piece } from './types.js';

/**
 * Refuses an outline that crosses itself. One that only touches itself is let pass: a slash that opens to nothing,
 * or a strap sewn back to its start, does.
 *
 * @throws PatternError `self-crossing`: names both edges and the place in mm
 */
export function refuseSelfCrossing(piece: Piece): void {
  const outline = outlinePath(piece.outline);
  const crossing = selfCrossings(outline).find(
    meeting => meeting.overlap !== true && crosses(outline, meeting),
  );
  if (!crossing) return;
  const a = partAt(piece, crossing.alongA),
    b = partAt(piece, crossing.alongB);
  const { x, y } = crossing.point;
  const which = a === b ? quoted(a) : `${quoted(a)} and ${quoted(b)}`;
  throw new PatternError('self-crossing', {
    message: `The outline crosses itself at ${x.toFixed(1)}, ${y.toFixed(1)} mm: ${which}.`,
    remedy: 'Redraw the edges so that they meet only at their ends.',
    where: { edge: a },
  });
}

/**
 * Whether the two strands change sides: seen from the meeting point, the rays of one strand lie in different
 * sectors between those of the other. The rays go to points a joining gap away, so that a mere touch shows as one.
 */
function crosses(outline: Path, { alongA, alongB, point }: PathSelfCrossing): boolean {
  const whole = pathLength(outline);
  const ray = (along: number): Point => subtract(pointAlong(outline, (along + whole) % whole), point);
  const base = ray(alongA - joiningGap);
  const turn = (v: Point): number => (angleBetween(base, v) + 2 * Math.PI) % (2 * Math.PI);
  const out = turn(ray(alongA + joiningGap));
  return turn(ray(alongB - joiningGap)) < out !== turn(ray(alongB + joiningGap)) < out;
}

function partAt(piece: Piece, along: number): string {
  let rest = along;
  const lengthOf = (part: OutlinePart): number =>
    part.type === 'edge' ? pathLength(part.path) : part.legs.reduce((sum, leg) => sum + pathLength(leg), 0);
  for (const part of piece.outline.parts) {
    rest -= lengthOf(part);
    if (rest < 0) return part.name;
  }
  return piece.outline.parts.at(-1)!.name;
}
