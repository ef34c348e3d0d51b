import { createSignal } from 'solid-js';
import type { Box } from '../engine/view.js';

/** What the table shows: `scale` px a mm, and where the table's origin lies in px. */
export interface Camera {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

const least = 0.02,
  most = 20;

export function createCamera() {
  const [camera, setCamera] = createSignal<Camera>({ scale: 0.4, x: 0, y: 0 });
  return {
    camera,
    /** Shows a box of mm whole, with room round it. */
    show: ([x, y, width, height]: Box, room: { width: number; height: number }, margin = 0.1) => {
      const scale = Math.min(room.width / width, room.height / height) * (1 - 2 * margin);
      setCamera({
        scale,
        x: room.width / 2 - (x + width / 2) * scale,
        y: room.height / 2 - (y + height / 2) * scale,
      });
    },
    pan: (dx: number, dy: number) => setCamera(c => ({ ...c, x: c.x + dx, y: c.y + dy })),
    /** Grows by a factor about a place in px. */
    zoom: (factor: number, px: number, py: number) =>
      setCamera(c => {
        const scale = Math.min(Math.max(c.scale * factor, least), most);
        const by = scale / c.scale;
        return { scale, x: px - (px - c.x) * by, y: py - (py - c.y) * by };
      }),
  };
}
export type CameraControl = ReturnType<typeof createCamera>;
