import { createSignal } from 'solid-js';

/** px that a title may tremble under the hand before it is dragged. */
const tremble = 4;

type Offset = readonly [number, number];

/** Pieces taken up by their titles and laid elsewhere on the table, in mm from where they lay. */
export function createMoving(scale: () => number) {
  const [offsets, setOffsets] = createSignal<ReadonlyMap<string, Offset>>(new Map());
  const shift = (piece: string, dx: number, dy: number) =>
    setOffsets(had => {
      const [x, y] = had.get(piece) ?? [0, 0];
      return new Map([...had, [piece, [x + dx, y + dy] as const]]);
    });
  return {
    offsetOf: (piece: string): Offset => offsets().get(piece) ?? [0, 0],
    shift,
    /** All lie where they lay. */
    clear: () => setOffsets(new Map()),
    grab: (event: PointerEvent, piece: string) => {
      event.stopPropagation();
      const grip = event.currentTarget as Element;
      grip.setPointerCapture(event.pointerId);
      const from = { x: event.clientX, y: event.clientY };
      let last = from;
      const move = (next: Event) => {
        const { clientX, clientY } = next as PointerEvent;
        shift(piece, (clientX - last.x) / scale(), (clientY - last.y) / scale());
        last = { x: clientX, y: clientY };
      };
      const up = (end: Event) => {
        const { clientX, clientY } = end as PointerEvent;
        // Let go elsewhere, it was no touch on whatever lies there.
        if (Math.hypot(clientX - from.x, clientY - from.y) > tremble)
          document.addEventListener('click', e => e.stopPropagation(), { capture: true, once: true });
        grip.removeEventListener('pointermove', move);
        grip.removeEventListener('pointerup', up);
        grip.removeEventListener('pointercancel', up);
      };
      grip.addEventListener('pointermove', move);
      grip.addEventListener('pointerup', up);
      grip.addEventListener('pointercancel', up);
    },
  };
}
