import { type Path, type Point, pathLength, polyline } from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { add, rightOf, scale } from '@paperhinge/geometry/plane';
import { readable } from './frame.js';
import type { Ink } from './ink.js';
import { letteringBox } from './ink.js';
import { setCentred } from './lettering.js';
import { enlargementOf, type PieceSetting } from './piece-setting.js';
import { isFree, type Room } from './room.js';
import { arrowhead, directionOf, stroke } from './shapes.js';

/**
 * The bracket beside a fold edge, its two arrows touching the fold, with its words along it. It stands as far inside
 * as the piece has room for.
 */
export function foldBracket(fold: Path, setting: PieceSetting, room: Room): readonly Ink[] {
  const { frame, measure, reader } = setting;
  const from = pathStart(fold),
    to = pathEnd(fold);
  const length = pathLength(fold);
  const along = directionOf(from, to);
  const inwards = rightOf(along);
  const on = (share: number, inset: number): Point =>
    add(add(from, scale(along, share * length)), scale(inwards, inset));
  const inset = Math.min(9, length / 4);
  const [a, b] =
    length > 120 ? [0.5 - Math.min(0.36, 110 / length), 0.5 + Math.min(0.36, 110 / length)] : [0.15, 0.85];
  const head = Math.min(4.5, inset * 0.5);
  const outwards = scale(inwards, -1);
  const bracket: Ink[] = [
    stroke('bracket', polyline(on(a, head * 0.7), on(a, inset), on(b, inset), on(b, head * 0.7))),
    arrowhead('bracket', on(a, 0.6), outwards, head),
    arrowhead('bracket', on(b, 0.6), outwards, head),
  ];
  const direction = readable(frame, along);
  for (const plain of [3.4, 2.8, 2.5])
    for (const place of [0.5, 0.42, 0.58]) {
      const size = plain * enlargementOf(setting);
      const words = setCentred(
        measure,
        reader.words.piece.placeOnFold,
        { role: 'detail', size },
        on(place, inset + size * 0.75 + 0.4),
        direction,
      );
      if (words.width < (b - a) * length && isFree(room, letteringBox(words), 0.6))
        return [...bracket, words];
    }
  return bracket;
}
