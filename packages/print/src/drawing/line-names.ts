import {
  add,
  leftOf,
  type Mark,
  type Path,
  type PieceLine,
  pathLength,
  pointAlong,
  scale,
  tangentAlong,
} from '@paperhinge/geometry';
import { type Frame, readable } from './frame.js';
import { type Lettering, letteringBox, type TypeMeasure } from './ink.js';
import { plainLine, setCentred, setLine } from './lettering.js';
import { isFree, type Room } from './room.js';

const shares = [0.2, 0.8, 0.12, 0.88, 0.35, 0.65, 0.5];
const sizes = [3, 2.5, 2.1];
const enlarged = (measure: TypeMeasure): readonly number[] => sizes.map(s => s * (measure.enlarged ?? 1));

/** The name of a line, just above it (or below), where nothing else is. Grain and dart lines need none. */
export function lineName(
  line: PieceLine,
  frame: Frame,
  measure: TypeMeasure,
  room: Room,
): Lettering | undefined {
  if (line.kind === 'grain' || line.kind === 'dart') return undefined;
  const text =
    line.kind === 'lengthen-shorten' ? 'lengthen or shorten here' : plainLine(line.name || line.kind);
  return alongLine(text, line.path, line.kind === 'lengthen-shorten' ? 1.2 : 0, frame, measure, room);
}

function alongLine(
  text: string,
  path: Path,
  off: number,
  frame: Frame,
  measure: TypeMeasure,
  room: Room,
): Lettering | undefined {
  const length = pathLength(path);
  for (const size of enlarged(measure))
    for (const side of [1, -1])
      for (const share of shares) {
        const direction = readable(frame, tangentAlong(path, share * length));
        const away = scale(leftOf(direction), side * (off + size * 0.44 + 0.9 * (measure.enlarged ?? 1)));
        const middle = add(pointAlong(path, share * length), away);
        const label = setCentred(measure, text, { role: 'detail', size }, middle, direction);
        if (label.width < length && isFree(room, letteringBox(label), 0.5)) return label;
      }
  return undefined;
}

/** The name of a mark, to one side of it. */
export function markName(mark: Mark, frame: Frame, measure: TypeMeasure, room: Room): Lettering | undefined {
  const text = plainLine(mark.name);
  if (text === '') return undefined;
  const { right, down } = frame;
  for (const size of enlarged(measure)) {
    const width = measure.width(text, size, 'regular');
    for (const [x, y] of [
      [4.4, size * 0.3],
      [-4.4 - width, size * 0.3],
      [3, -2],
      [-3 - width, -2],
      [3, size + 2],
      [-3 - width, size + 2],
    ] as const) {
      const at = add(add(mark.at, scale(right, x)), scale(down, y));
      const label = setLine(measure, text, { role: 'detail', size }, at, right);
      if (isFree(room, letteringBox(label), 0.5)) return label;
    }
  }
  return undefined;
}
