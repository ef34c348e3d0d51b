import { type Accessor, createEffect, createMemo, on, untrack } from 'solid-js';
import type { Box } from '../engine/view.js';
import type { Garment } from '../job/garment.js';
import { createMoving } from './moving.js';
import { areApart, placesOf } from './places.js';
import type { Room } from './room.js';

/** Where the pieces lie on the table: in rows until they are taken up and laid elsewhere. */
export function createLayout(
  garment: Garment,
  room: Accessor<Room>,
  scale: Accessor<number>,
  isHeld: Accessor<boolean>,
) {
  const pieces = () => garment.engine.view()?.pieces ?? [];
  // Places change with the pieces' number and order, and where pieces have grown over one another once the hand lets go:
  // nothing jumps while a figure is dragged.
  const layout = createMemo<{ key: string; places: ReturnType<typeof placesOf> }>(
    had => {
      const names = pieces().map(p => p.name);
      const key = [garment.source().id, ...names].join('|');
      if (had.key === key && (isHeld() || areApart(pieces(), had.places))) return had;
      return { key, places: placesOf(pieces(), untrack(room)) };
    },
    { key: '', places: new Map() },
  );
  const moving = createMoving(scale);
  createEffect(on(() => layout().key, moving.clear, { defer: true }));
  const placeOf = (name: string): readonly [number, number] => {
    const [x, y] = layout().places.get(name) ?? [0, 0];
    const [dx, dy] = moving.offsetOf(name);
    return [x + dx, y + dy];
  };
  return {
    pieces,
    /** Changes with what lies on the table. */
    key: () => layout().key,
    placeOf,
    moving,
    /** All of it, with what the pieces were before. */
    whole: (): Box => {
      const boxes = pieces().map(({ name, room: [x, y, w, h] }): Box => {
        const [dx, dy] = placeOf(name);
        return [x + dx, y + dy, w, h];
      });
      const x = Math.min(...boxes.map(b => b[0])),
        y = Math.min(...boxes.map(b => b[1]));
      const right = Math.max(...boxes.map(b => b[0] + b[2])),
        bottom = Math.max(...boxes.map(b => b[1] + b[3]));
      return [x, y, right - x, bottom - y];
    },
  };
}
export type Layout = ReturnType<typeof createLayout>;
