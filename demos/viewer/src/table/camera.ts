import { inverse } from '@paperhinge/geometry/plane';
import { createSignal } from 'solid-js';
import type { Box } from '../engine/view.js';
import { carried, type Lie } from './lie.js';
import type { Room } from './room.js';

/** What the table shows: `scale` px a mm, and where the table's origin lies in px. */
export interface Camera {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

/** Across and down: px on the screen, or mm on the table or a piece. */
export type Place = readonly [x: number, y: number];

/** CSS px a mm, at true size: an inch is 96 of them. */
export const pxPerMm = 96 / 25.4;

/** Where on the screen a place of a piece is seen, given how the piece lies on the table. */
export function onScreen({ scale, x, y }: Camera, lie: Lie, at: Place): Place {
  const [u, v] = carried(lie, at);
  return [x + u * scale, y + v * scale];
}

/** ... and the place of the piece that is seen there. */
export const onPiece = ({ scale, x, y }: Camera, lie: Lie, px: Place): Place =>
  carried(inverse(lie), [(px[0] - x) / scale, (px[1] - y) / scale]);

const least = 0.02,
  most = 20;
/** Share of the room left free at each side: a tenth, or what a title underneath needs in a low one. */
const usualMargin = ({ height }: Room): number => Math.max(0.1, 52 / height);
/** ms of a flight from one place to another; none where the reader asks for less motion. */
const flight = 180;

export function createCamera() {
  const [camera, setCamera] = createSignal<Camera>({ scale: 0.4, x: 0, y: 0 });
  let flying = 0;
  /** What is shown whole, until a hand moves the table. */
  let whole: { readonly box: Box; readonly margin: number } | undefined;
  /** Goes to a place by a short flight, which eases out and which whatever moves the table next cuts off. */
  const flyTo = (to: Camera): void => {
    cancelAnimationFrame(flying);
    if (matchMedia('(prefers-reduced-motion: reduce)').matches) {
      setCamera(to);
      return;
    }
    const from = camera(),
      begun = performance.now();
    const go = () => {
      const share = Math.min(1, (performance.now() - begun) / flight);
      const eased = 1 - (1 - share) ** 3;
      const between = (p: number, q: number) => p + (q - p) * eased;
      setCamera({
        scale: between(from.scale, to.scale),
        x: between(from.x, to.x),
        y: between(from.y, to.y),
      });
      if (share < 1) flying = requestAnimationFrame(go);
    };
    flying = requestAnimationFrame(go);
  };
  const at = (next: (c: Camera) => Camera): void => {
    cancelAnimationFrame(flying);
    setCamera(next);
  };
  const byHand = (next: (c: Camera) => Camera): void => {
    whole = undefined;
    at(next);
  };
  const showing = ([x, y, width, height]: Box, room: Room, margin: number): Camera => {
    const scale = Math.min(room.width / width, room.height / height) * (1 - 2 * margin);
    return {
      scale,
      x: room.width / 2 - (x + width / 2) * scale,
      y: room.height / 2 - (y + height / 2) * scale,
    };
  };
  return {
    camera,
    /** Shows a box of mm whole, with room round it. */
    show: (box: Box, room: Room, margin = usualMargin(room)) => {
      whole = { box, margin };
      at(() => showing(box, room, margin));
    },
    /** ... by a short flight. */
    fly: (box: Box, room: Room, margin = usualMargin(room)) => {
      whole = { box, margin };
      flyTo(showing(box, room, margin));
    },
    /** The table has become larger or smaller: what was shown whole still is. */
    refit: (room: Room) => whole && at(() => showing(whole!.box, room, whole!.margin)),
    pan: (dx: number, dy: number) => byHand(c => ({ ...c, x: c.x + dx, y: c.y + dy })),
    /** Grows by a factor about a place in px. */
    zoom: (factor: number, px: number, py: number) =>
      byHand(c => {
        const scale = Math.min(Math.max(c.scale * factor, least), most);
        const by = scale / c.scale;
        return { scale, x: px - (px - c.x) * by, y: py - (py - c.y) * by };
      }),
  };
}
export type CameraControl = ReturnType<typeof createCamera>;
