import type { PieceView } from '../engine/view.js';

/** mm between pieces on the table. */
const gap = 60;
/** mm: a row is about as long as a cutting table. */
const rowLength = 1500;

/** Where each piece lies: in rows, in the pattern's order. */
export function placesOf(pieces: readonly PieceView[]): ReadonlyMap<string, readonly [number, number]> {
  const places = new Map<string, readonly [number, number]>();
  let x = 0,
    y = 0,
    deepest = 0;
  for (const { name, room } of pieces) {
    const [left, top, width, height] = room;
    if (x > 0 && x + width > rowLength) {
      x = 0;
      y += deepest + gap;
      deepest = 0;
    }
    places.set(name, [x - left, y - top]);
    x += width + gap;
    deepest = Math.max(deepest, height);
  }
  return places;
}
