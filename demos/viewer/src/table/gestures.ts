import type { CameraControl } from './camera.js';

interface Place {
  readonly x: number;
  readonly y: number;
}
/** px that a pointer may tremble before it drags. */
const tremble = 4;

/** Panning by one pointer, pinching by two, the wheel; a touch that moved is no touch on what lies under it. */
export function createGestures({ pan, zoom }: CameraControl, table: () => HTMLElement) {
  const held = new Map<number, Place>();
  let moved = false;
  return {
    hasMoved: () => moved,
    down: (event: PointerEvent) => {
      held.set(event.pointerId, { x: event.clientX, y: event.clientY });
      if (held.size === 1) moved = false;
    },
    move: (event: PointerEvent) => {
      const last = held.get(event.pointerId);
      if (!last) return;
      const now = { x: event.clientX, y: event.clientY };
      const other = [...held].find(([id]) => id !== event.pointerId)?.[1];
      if (!moved && Math.hypot(now.x - last.x, now.y - last.y) < tremble && !other) return;
      if (!moved) table().setPointerCapture(event.pointerId);
      moved = true;
      if (other) {
        const { left, top } = table().getBoundingClientRect();
        const apart = (p: Place) => Math.hypot(p.x - other.x, p.y - other.y);
        zoom(
          apart(now) / Math.max(1, apart(last)),
          (now.x + other.x) / 2 - left,
          (now.y + other.y) / 2 - top,
        );
      } else pan(now.x - last.x, now.y - last.y);
      held.set(event.pointerId, now);
    },
    up: (event: PointerEvent) => {
      held.delete(event.pointerId);
    },
    wheel: (event: WheelEvent) => {
      event.preventDefault();
      const { left, top } = table().getBoundingClientRect();
      if (event.ctrlKey || !event.shiftKey)
        zoom(1.0015 ** -event.deltaY, event.clientX - left, event.clientY - top);
      else pan(-event.deltaX, -event.deltaY);
    },
  };
}
