import { compose, identity, translation } from '@paperhinge/geometry/plane';
import { createSignal } from 'solid-js';
import type { Lie } from './lie.js';

/** px that a title may tremble under the hand before it is dragged. */
const tremble = 4;

/** Pieces taken up by their titles and laid elsewhere on the table, turned or not: the table's mm as they were, to those now. */
export function createMoving(scale: () => number) {
  const [moves, setMoves] = createSignal<ReadonlyMap<string, Lie>>(new Map());
  const movedBy = (piece: string): Lie => moves().get(piece) ?? identity;
  const move = (piece: string, by: Lie): void => {
    setMoves(had => new Map([...had, [piece, compose(movedBy(piece), by)]]));
  };
  const shift = (piece: string, dx: number, dy: number) => move(piece, translation({ x: dx, y: dy }));
  return {
    movedBy,
    move,
    shift,
    /** Some piece lies elsewhere than where it was laid. */
    hasMoved: (): boolean => moves().size > 0,
    /** All lie where they lay. */
    clear: () => setMoves(new Map()),
    grab: (event: PointerEvent, piece: string) => {
      event.stopPropagation();
      const grip = event.currentTarget as Element;
      grip.setPointerCapture(event.pointerId);
      const from = { x: event.clientX, y: event.clientY };
      let last = from;
      const drag = (next: Event) => {
        const { clientX, clientY } = next as PointerEvent;
        shift(piece, (clientX - last.x) / scale(), (clientY - last.y) / scale());
        last = { x: clientX, y: clientY };
      };
      const up = (end: Event) => {
        const { clientX, clientY } = end as PointerEvent;
        // Let go elsewhere, it was no touch on whatever lies there.
        if (Math.hypot(clientX - from.x, clientY - from.y) > tremble)
          document.addEventListener('click', e => e.stopPropagation(), { capture: true, once: true });
        grip.removeEventListener('pointermove', drag);
        grip.removeEventListener('pointerup', up);
        grip.removeEventListener('pointercancel', up);
      };
      grip.addEventListener('pointermove', drag);
      grip.addEventListener('pointerup', up);
      grip.addEventListener('pointercancel', up);
    },
  };
}
