import { createSignal } from 'solid-js';
import type { Touched } from '../engine/view.js';
import type { Garment } from '../job/garment.js';
import { type Camera, onPiece } from './camera.js';
import type { Layout } from './layout.js';
import { measureTo } from './measuring.js';

/** px: the room that a slip takes, and where it lies from what was touched. */
const slip = { width: 320, height: 330, right: 18, up: 40, edge: 12 };
/** What lies over the table has its own touches. */
const over = '.slip, .corner, .shelf, .walking';

/** What a touch on the table does: a slip for what lies there, or the other end of a measurement. */
export function createTouching(
  garment: Garment,
  { lieOf }: Layout,
  { table, camera, hasMoved }: { table: () => HTMLElement; camera: () => Camera; hasMoved: () => boolean },
) {
  const [slipAt, setSlipAt] = createSignal<readonly [number, number]>([40, 40]);
  const touch = (event: MouseEvent, thing: Touched) => {
    if (hasMoved()) return;
    event.stopPropagation();
    const { left, top, width, height } = table().getBoundingClientRect();
    // A key on the list touches from no place.
    const [x, y] = event.clientX > 0 ? [event.clientX - left, event.clientY - top] : [width / 2, height / 2];
    setSlipAt([
      Math.min(x + slip.right, Math.max(slip.edge, width - slip.width)),
      Math.min(Math.max(y - slip.up, slip.edge), Math.max(slip.edge, height - slip.height)),
    ]);
    garment.setTouched(thing);
  };
  /** What was drawn under the pointer says itself what it is. */
  const click = (event: MouseEvent) => {
    const target = event.target as Element;
    // What is gone with its own touch (a name that was chosen) was not the table.
    if (hasMoved() || !target.isConnected || target.closest(over)) return;
    const measuring = garment.measuring();
    if (measuring && !measuring.came) {
      const { left, top } = table().getBoundingClientRect();
      const px = [event.clientX - left, event.clientY - top] as const;
      void measureTo(garment, onPiece(camera(), lieOf(measuring.piece), px), camera().scale);
      return;
    }
    garment.setMeasuring(undefined);
    if (garment.walk() || garment.whole() || garment.answers()) return;
    const drawn = target.closest<SVGElement>('[data-kind]');
    const { kind, piece, name } = drawn?.dataset ?? {};
    if (kind && piece)
      touch(event, { kind: kind as Touched['kind'], piece, ...(name === undefined ? {} : { name }) });
    // The empty table offers what begins with nothing; with a slip on it, it is only the table.
    else if (garment.touched()) garment.setTouched(undefined);
    else touch(event, { kind: 'table' });
  };
  return {
    slipAt,
    touch,
    click,
    isTouched: (piece: string, name?: string) =>
      garment.touched()?.piece === piece && garment.touched()?.name === name,
  };
}
