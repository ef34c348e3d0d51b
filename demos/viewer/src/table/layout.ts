import { compose, inverse, translation } from '@paperhinge/geometry/plane';
import { type Accessor, createEffect, createMemo, on, untrack } from 'solid-js';
import type { Box } from '../engine/view.js';
import type { Garment } from '../job/garment.js';
import { boxLying, carried, type Lie } from './lie.js';
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
  const placed = (name: string): Lie => {
    const [x, y] = layout().places.get(name) ?? [0, 0];
    return translation({ x, y });
  };
  const lieOf = (name: string): Lie => compose(placed(name), moving.movedBy(name));
  return {
    pieces,
    /** Changes with what lies on the table. */
    key: () => layout().key,
    lieOf,
    moving,
    /** Lays a piece so, wherever it lay. */
    lay: (name: string, lie: Lie): void => moving.move(name, compose(inverse(lieOf(name)), lie)),
    /** The middle of a piece as it lies. */
    middleOf: (name: string): readonly [number, number] => {
      const [x, y, width, height] = pieces().find(p => p.name === name)?.box ?? [0, 0, 0, 0];
      return carried(lieOf(name), [x + width / 2, y + height / 2]);
    },
    /** All of it, with what the pieces were before. */
    whole: (): Box => {
      const boxes = pieces().map(({ name, room }) => boxLying(room, lieOf(name)));
      const x = Math.min(...boxes.map(b => b[0])),
        y = Math.min(...boxes.map(b => b[1]));
      const right = Math.max(...boxes.map(b => b[0] + b[2])),
        bottom = Math.max(...boxes.map(b => b[1] + b[3]));
      return [x, y, right - x, bottom - y];
    },
  };
}
export type Layout = ReturnType<typeof createLayout>;
