import type { PieceView } from '../engine/view.js';

/** mm between pieces on the table. */
const gap = 60;
/** mm that must be left of it as pieces grow. */
const clear = 15;
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
