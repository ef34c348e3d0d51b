import {
  edgePath,
  type Mark,
  type Notch,
  type Path,
  type Piece,
  type PieceLine,
  pathLength,
} from '@paperhinge/geometry';
import { pointAlong, tangentAlong } from '@paperhinge/geometry/paths';
import { edgeParts } from '@paperhinge/geometry/pattern';
import { add, leftOf, scale, subtract } from '@paperhinge/geometry/plane';
import { chords } from '../plane/polygon.js';
import { placeOnEdge } from './beside-edge.js';
import { flattened } from './flatten.js';
import { frameOf, readable } from './frame.js';
import { type Lettering, letteringBox } from './ink.js';
import { plainLine, setCentred, setLine } from './lettering.js';
import { enlargementOf, type PieceSetting } from './piece-setting.js';
import { isFree, type Room } from './room.js';

const shares = [0.2, 0.8, 0.12, 0.88, 0.35, 0.65, 0.5];
const sizes = [3, 2.5];

/** The name of a line, just above it (or below), where nothing else is. Grain and dart lines need none. */
export function lineName(line: PieceLine, setting: PieceSetting, room: Room): Lettering | undefined {
  if (line.kind === 'grain' || line.kind === 'dart') return undefined;
  if (line.kind === 'lengthen-shorten')
    return wordsAlong(lengthenWords(line, setting), { path: line.path, off: 1.2 }, setting, room);
  const name = plainLine(line.name || setting.reader.words.piece.line[line.kind]);
  return wordsAlong([name], { path: line.path, off: 0 }, setting, room);
}

/** What is said at a lengthen/shorten line, with how far it lies from the hem (or the piece's end) along the grain. */
function lengthenWords({ path }: PieceLine, { piece, reader }: PieceSetting): readonly string[] {
  const { lengthenHere, lengthenShort, lengthenTo, lengthenBy } = reader.words.piece;
  const found = belowLine(path, piece);
  if (!found) return [lengthenHere, lengthenShort];
  const figures = reader.length(found.distance);
  return [lengthenTo(figures, found.hem ? 'hem' : undefined), lengthenBy(figures), lengthenHere];
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

/** A line that words stand at, and how far off it, mm. */
export interface WordLine {
  readonly path: Path;
  readonly off: number;
}

/** The first of some texts that finds a free place along a line, at the largest size; none on another line. */
export function wordsAlong(
  texts: readonly string[],
  { path, off }: WordLine,
  setting: PieceSetting,
  room: Room,
): Lettering | undefined {
  const length = pathLength(path);
  const enlarged = enlargementOf(setting);
  for (const text of texts)
    for (const plain of sizes)
      for (const side of [1, -1])
        for (const share of shares) {
          const size = plain * enlarged;
          const direction = readable(setting.frame, tangentAlong(path, share * length));
          const away = scale(leftOf(direction), side * (off + size * 0.44 + 0.9 * enlarged));
          const middle = add(pointAlong(path, share * length), away);
          const label = setCentred(setting.measure, text, { role: 'detail', size }, middle, direction);
          if (label.width < length && isFree(room, letteringBox(label), 0.5)) return label;
        }
  return undefined;
}

/** The name of a mark, to one side of it. */
export function markName(mark: Mark, setting: PieceSetting, room: Room): Lettering | undefined {
  const { measure } = setting;
  const text = plainLine(mark.name);
  if (text === '') return undefined;
  const { right, down } = setting.frame;
  for (const plain of sizes) {
    const size = plain * enlargementOf(setting);
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

/** mm into the piece from a notch at which its name stands. */
const besideNotch = 3.2;

/** The name of a notch, inside the edge or to one side of its tick. */
export function notchName(
  { name, edge, at }: Notch,
  setting: PieceSetting,
  room: Room,
): Lettering | undefined {
  const text = plainLine(name ?? '');
  if (text === '') return undefined;
  const path = edgePath(setting.piece, edge);
  for (const plain of sizes) {
    const size = plain * enlargementOf(setting);
    const half = setting.measure.width(text, size, 'regular') / 2;
    for (const beside of [0, half + 1.5, -half - 1.5]) {
      const place = placeOnEdge(path, Math.min(Math.max(at + beside, 0), pathLength(path)));
      const middle = add(place.at, scale(place.inwards, besideNotch));
      const direction = readable(setting.frame, place.along);
      const label = setCentred(setting.measure, text, { role: 'detail', size }, middle, direction);
      if (isFree(room, letteringBox(label), 0.5)) return label;
    }
  }
  return undefined;
}
