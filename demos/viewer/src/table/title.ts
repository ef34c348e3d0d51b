import type { PieceView } from '../engine/view.js';

/** px that a piece must have across and down for its title to stand on it. */
const titleRoom = 90;
/** px that a letter takes across, of the title and of the smaller words under it; and a line down. */
const letter = 9,
  smallLetter = 6.4;
export const lineHeight = 18;
/** px under a piece that its title takes there, with what is cut of it. */
const under = 46;
/** px by which words under a piece may be wider than it. */
const beside = 40;

/** Whether a piece is too small for its title, which then stands underneath: across, down, or for the lines drawn on it. */
export function standsBelow({ box, title, middleRoom }: PieceView, scale: number): boolean {
  const [, , width, height] = box;
  const isNarrow = width * scale < title.length * letter;
  // The room at the middle was measured with what lies beside counted as nearer than it is.
  const isCramped = middleRoom * scale < Math.max(lineHeight, title.length * letter * 0.3);
  return isNarrow || isCramped || Math.min(width, height) * scale < titleRoom;
}

/** How a piece is cut, in one line or in several, where there is room for it at its title. */
export function cutLines(
  { box, cut, middleRoom }: PieceView,
  scale: number,
  isBelow: boolean,
): readonly string[] {
  const holds = (lines: readonly string[]) => {
    const across = Math.max(...lines.map(line => line.length)) * smallLetter;
    return isBelow
      ? across < box[2] * scale + beside
      : across < (middleRoom / 0.3) * scale && lines.length * lineHeight < (middleRoom / 1.4) * scale;
  };
  return [[cut], cut.split(/(?<=,) /)].find(holds) ?? [];
}

/** mm that a piece takes on the table at a scale, with its title where that stands underneath. */
export function roomTaken(piece: PieceView, scale: number): readonly [number, number, number, number] {
  const [x, y, width, height] = piece.room;
  if (!standsBelow(piece, scale)) return piece.room;
  const [left, top, across, down] = piece.box;
  const wanted = (piece.title.length * letter) / scale;
  const from = Math.min(x, left + (across - wanted) / 2),
    to = Math.max(x + width, left + (across + wanted) / 2);
  return [from, y, to - from, Math.max(y + height, top + down + under / scale) - y];
}
