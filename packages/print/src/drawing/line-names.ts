import {
  type Mark,
  nearestEighth,
  type Path,
  type Piece,
  type PieceLine,
  pathLength,
} from '@paperhinge/geometry';
import { pointAlong, tangentAlong } from '@paperhinge/geometry/paths';
import { edgeParts } from '@paperhinge/geometry/pattern';
import { add, leftOf, scale, subtract } from '@paperhinge/geometry/plane';
import { chords } from '../plane/polygon.js';
import { flattened } from './flatten.js';
import { type Frame, frameOf, readable } from './frame.js';
import { type Lettering, letteringBox, type TypeMeasure } from './ink.js';
import { plainLine, setCentred, setLine } from './lettering.js';
import { isFree, type Room } from './room.js';
import { tidy } from './widths.js';

const shares = [0.2, 0.8, 0.12, 0.88, 0.35, 0.65, 0.5];
const sizes = [3, 2.5, 2.1];
const enlarged = (measure: TypeMeasure): readonly number[] => sizes.map(s => s * (measure.enlarged ?? 1));

/** The name of a line, just above it (or below), where nothing else is. Grain and dart lines need none. */
export function lineName(
  line: PieceLine,
  piece: Piece,
  frame: Frame,
  measure: TypeMeasure,
  room: Room,
): Lettering | undefined {
  if (line.kind === 'grain' || line.kind === 'dart') return undefined;
  if (line.kind !== 'lengthen-shorten')
    return alongLine(plainLine(line.name || line.kind), line.path, 0, frame, measure, room);
  for (const text of lengthenWords(line, piece)) {
    const label = alongLine(text, line.path, 1.2, frame, measure, room);
    if (label) return label;
  }
  return undefined;
}

/** What is said at a lengthen/shorten line, with how far it lies from the hem (or the piece's end) along the grain. */
function lengthenWords({ path }: PieceLine, piece: Piece): readonly string[] {
  const plain = 'lengthen or shorten here';
  const found = belowLine(path, piece);
  if (!found) return [plain, 'lengthen, shorten'];
  const figures = `${tidy(found.distance, 1)} mm (${nearestEighth(found.distance).text})`;
  return [`${plain} · ${figures} to the ${found.hem ? 'hem' : 'lower edge'}`, `${plain} · ${figures}`, plain];
}

/** From the line's middle down the grain to the stitching line. */
function belowLine(
  path: Path,
  piece: Piece,
): { readonly distance: number; readonly hem: boolean } | undefined {
  const { down } = frameOf(piece);
  const from = pointAlong(path, pathLength(path) / 2);
  const reached = edgeParts(piece).flatMap(edge =>
    chords(flattened(edge.path)).flatMap(([a, b]) => {
      const u = subtract(b, a),
        w = subtract(a, from);
      const det = u.x * down.y - u.y * down.x;
      if (det === 0) return [];
      const share = (down.x * w.y - down.y * w.x) / det,
        distance = (u.x * w.y - u.y * w.x) / det;
      return share >= 0 && share <= 1 && distance > 1 ? [{ distance, hem: edge.kind === 'hem' }] : [];
    }),
  );
  return reached.sort((a, b) => a.distance - b.distance)[0];
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
