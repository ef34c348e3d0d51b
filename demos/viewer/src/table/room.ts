import { type Accessor, createSignal, onCleanup, onMount } from 'solid-js';

/** The table's own size on the screen, in px. */
export interface Room {
  readonly width: number;
  readonly height: number;
}

/** Follows the size of an element once it stands. */
export function createRoom(element: () => HTMLElement): Accessor<Room> {
  const [room, setRoom] = createSignal<Room>({ width: 800, height: 600 });
  onMount(() => {
    const watch = new ResizeObserver(([entry]) => {
      const { width, height } = entry!.contentRect;
      setRoom({ width, height });
    });
    watch.observe(element());
    onCleanup(() => watch.disconnect());
  });
  return room;
}
