import type { PieceView } from '../engine/view.js';
import { roomTaken } from './title.js';

/** mm between pieces on the table. */
const gap = 60;
/** mm that must be left of it as pieces grow. */
const clear = 15;
/** mm: rows are about as long as a cutting table, or as much shorter as a narrow window shows more of. */
const rowLengths = [1500, 1250, 1000, 800, 600];

/** Share of the room that the pieces are shown in. */
const shown = 0.8;

type Places = ReadonlyMap<string, readonly [number, number]>;

/** Where each piece lies: in rows, in the pattern's order, as large as the room can show them. */
export function placesOf(
  pieces: readonly PieceView[],
  room: { readonly width: number; readonly height: number } = { width: 3, height: 2 },
): Places {
  const scale = ({ width, height }: Rows) => Math.min(room.width / width, room.height / height);
  const laid = (titlesAt: number) =>
    rowLengths
      .map(length => inRows(pieces, length, titlesAt))
      .reduce((best, next) => (scale(next) > scale(best) * 1.1 ? next : best));
  // Titles are as large on the screen at any scale: what they take of the table shows once the pieces lie there.
  return laid(scale(laid(1)) * shown).places;
}

type Rows = ReturnType<typeof inRows>;

function inRows(pieces: readonly PieceView[], rowLength: number, scale: number) {
  const places = new Map<string, readonly [number, number]>();
  let x = 0,
    y = 0,
    deepest = 0,
    widest = 1;
  for (const piece of pieces) {
    const [left, top, width, height] = roomTaken(piece, scale);
    if (x > 0 && x + width > rowLength) {
      x = 0;
      y += deepest + gap;
      deepest = 0;
    }
    places.set(piece.name, [x - left, y - top]);
    x += width + gap;
    widest = Math.max(widest, x);
    deepest = Math.max(deepest, height);
  }
  return { places, width: widest, height: y + deepest + gap };
}

/** Whether pieces lie clear of one another in their places, all but a little. */
export function areApart(
  pieces: readonly PieceView[],
  places: ReadonlyMap<string, readonly [number, number]>,
): boolean {
  const boxes = pieces.map(({ name, room: [x, y, width, height] }) => {
    const [dx, dy] = places.get(name) ?? [0, 0];
    return { left: x + dx, top: y + dy, right: x + dx + width, bottom: y + dy + height };
  });
  const meet = (p: (typeof boxes)[number], q: typeof p) =>
    Math.min(p.right, q.right) - Math.max(p.left, q.left) > -clear &&
    Math.min(p.bottom, q.bottom) - Math.max(p.top, q.top) > -clear;
  return boxes.every((p, i) => boxes.slice(i + 1).every(q => !meet(p, q)));
}
