import { createEffect, createMemo, createSignal, on } from 'solid-js';
import type { Garment } from '../job/garment.js';
import { createCamera } from './camera.js';
import { createGestures } from './gestures.js';
import { createLayout } from './layout.js';
import { createRoom } from './room.js';
import { createTouching } from './touching.js';

/** How the table shows what lies on it: from where, laid how, with what beside it. */
export function createShowing(garment: Garment, element: () => HTMLElement) {
  const control = createCamera();
  const { camera } = control;
  // Panning moves the whole drawing as it is; only another scale draws anew.
  const scale = createMemo(() => camera().scale);
  const gestures = createGestures(control, element);
  const room = createRoom(element);
  const [ghosts, setGhosts] = createSignal(true);
  const [shelf, setShelf] = createSignal(false);
  // The same seam walked again, as its pieces change, goes on where it was.
  const [station, setStation] = createSignal(0);
  const seam = createMemo(() => garment.walk()?.seam);
  createEffect(on(seam, () => setStation(0), { defer: true }));
  const [held, setHeld] = createSignal<ReadonlyMap<string, string>>();
  const layout = createLayout(garment, room, scale, () => held() !== undefined);
  return {
    control,
    camera,
    scale,
    gestures,
    room,
    layout,
    touching: createTouching(garment, layout, { table: element, camera, ...gestures }),
    /** The stitching lines as they were when the hand took hold, while it holds. */
    held,
    hold: (isHeld: boolean) =>
      setHeld(isHeld ? new Map(layout.pieces().map(p => [p.name, p.stitching])) : undefined),
    /** Before is shown under after. */
    ghosts,
    turnGhosts: () => setGhosts(shown => !shown),
    /** How far a seam has been walked. */
    station,
    setStation,
    /** What else can be laid on the table is looked through. */
    shelf,
    setShelf,
  };
}
export type Showing = ReturnType<typeof createShowing>;
