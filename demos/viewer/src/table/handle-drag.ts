import { type Accessor, createSignal } from 'solid-js';
import type { Handle } from '../engine/view.js';
import type { Garment } from '../job/garment.js';
import { type Camera, onPiece, onScreen, type Place } from './camera.js';
import { writeFigure } from './handle-figures.js';
import type { Lie } from './lie.js';
import { figureAt, type Snapped, snapped, within } from './snapping.js';

/** The handle that the hand holds, and its figure there. */
interface Drag extends Snapped {
  readonly key: string;
}
const keyOf = ({ piece, way }: Handle): string => `${piece} ${way.join('.')}`;

/** Where things are on the screen: the camera, and how each piece lies on the table. */
export interface Seen {
  readonly camera: Accessor<Camera>;
  readonly lieOf: (piece: string) => Lie;
}

/** Handles dragged: the sheet's figure follows the hand, and is one change once it lets go. */
export function createHandleDrag(garment: Garment, seen: Seen, onDrag: (dragging: boolean) => void) {
  const [drag, setDrag] = createSignal<Drag>();
  /** Where the pointer took hold, from the handle's own place, in px. */
  let grip: Place | undefined;
  return {
    drag,
    isHeld: (handle: Handle): boolean => drag()?.key === keyOf(handle),
    down: (event: PointerEvent, { piece, at }: Handle): void => {
      event.stopPropagation();
      (event.currentTarget as Element).setPointerCapture(event.pointerId);
      const [x, y] = onScreen(seen.camera(), seen.lieOf(piece), at);
      grip = [event.clientX - x, event.clientY - y];
      onDrag(true);
    },
    move: (event: PointerEvent, handle: Handle): void => {
      if (!grip) return;
      event.stopPropagation();
      const px = [event.clientX - grip[0], event.clientY - grip[1]] as const;
      const to = onPiece(seen.camera(), seen.lieOf(handle.piece), px);
      const next = snapped(handle, within(handle, figureAt(handle, to)), {
        scale: seen.camera().scale,
        unit: garment.unit(),
        points: garment.engine.held().points,
      });
      if (next.figure === drag()?.figure) return;
      setDrag({ key: keyOf(handle), ...next });
      writeFigure(garment, handle, next.figure, false);
    },
    up: (handle: Handle): void => {
      grip = undefined;
      const last = drag();
      setDrag(undefined);
      onDrag(false);
      if (!last) return;
      writeFigure(garment, handle, last.figure, true);
      garment.setToDrag(undefined);
    },
  };
}
export type HandleDrag = ReturnType<typeof createHandleDrag>;
