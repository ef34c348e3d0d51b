import { type PieceLine, pathLength } from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { add, distance, leftOf, lerp, scale } from '@paperhinge/geometry/plane';
import type { PieceShape } from '../drawing/piece-shape.js';
import { isFree, type Room } from '../drawing/room.js';
import { directionOf } from '../drawing/shapes.js';
import { clearOfStrip, type Shaft } from '../place/shafts.js';
import { type Chord, chords } from '../plane/polygon.js';

/** mm kept between a grain line that was moved and the stitching line, or a line that it would run along. */
const beside = 4;
/** mm: half the width of the box that stands for a line. */
const halfBox = 0.1;

/** A straight grain line by its ends; one that is drawn bent is left to its maker. */
export function shaftOf({ path }: PieceLine): Chord | undefined {
  const [from, to] = [pathStart(path), pathEnd(path)];
  const length = distance(from, to);
  return length > 0 && pathLength(path) < length * 1.001 ? [from, to] : undefined;
}

/** A shaft moved so many mm to its left, and the part of it between two shares of its length. */
export function shifted([start, end]: Chord, by: number, from = 0, to = 1): Chord {
  const aside = scale(leftOf(directionOf(start, end)), by);
  return [add(lerp(start, end, from), aside), add(lerp(start, end, to), aside)];
}

/** Whether a shaft lies within, clear of what it would run along. */
export function hasRoom([from, to]: Chord, room: Room): boolean {
  const side = scale(leftOf(directionOf(from, to)), halfBox);
  const back = scale(side, -1);
  return isFree(room, [add(from, side), add(to, side), add(to, back), add(from, back)], beside - halfBox);
}

/**
 * The grain lines of a piece too narrow to move them off any join that they run along, with the play that they have:
 * such a piece is laid so that the join runs elsewhere.
 * @param overlap mm that neighbouring pages share
 */
export function heldGrains(shape: PieceShape, overlap: number): readonly Shaft[] {
  const outline = { inside: shape.netPolygon, ink: chords(shape.netPolygon, true) };
  const enough = overlap + 2 * clearOfStrip;
  return shape.setting.piece.lines.flatMap(line => {
    const chord = line.kind === 'grain' ? shaftOf(line) : undefined;
    if (!chord) return [];
    const play = playOf(chord, outline, enough);
    return play[1] - play[0] < enough ? [{ chord, play }] : [];
  });
}

/** mm to its left at which a shaft is within, from the least to the most, as far as `enough`; 0 where it is nowhere. */
function playOf(chord: Chord, outline: Room, enough: number): Shaft['play'] {
  let [least, most]: Shaft['play'] = [0, 0];
  let found = false;
  for (let step = 0; step <= enough && most - least < enough; step++)
    for (const by of step > 0 ? [step, -step] : [0]) {
      if (!hasRoom(shifted(chord, by), outline)) continue;
      [least, most] = found ? [Math.min(least, by), Math.max(most, by)] : [by, by];
      found = true;
    }
  return [least, most];
}
