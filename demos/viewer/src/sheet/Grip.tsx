import { createSignal, Show } from 'solid-js';
import type { Garment } from '../job/garment.js';
import { withStepMoved } from '../job/written.js';

/** px that a step is dragged before it is taken to be moved. */
const tremble = 5;

/** The stitch beside a step: taken hold of, it drags the step to another place in the order. */
export function Grip(props: { readonly garment: Garment; readonly index: number }) {
  const [drag, setDrag] = createSignal<{ readonly from: number; readonly by: number }>();
  let grip: HTMLSpanElement | undefined;
  const rows = () => [...(grip?.closest('ol')?.querySelectorAll<HTMLElement>(':scope > .step') ?? [])];
  /** The place in the order that the pointer is at. */
  const target = (y: number): number => {
    const others = rows().filter((_, i) => i !== props.index);
    return others.filter(row => {
      const { top, height } = row.getBoundingClientRect();
      return top + height / 2 < y;
    }).length;
  };
  const down = (event: PointerEvent) => {
    event.preventDefault();
    grip!.setPointerCapture(event.pointerId);
    setDrag({ from: event.clientY, by: 0 });
  };
  const move = (event: PointerEvent) =>
    setDrag(d => (d === undefined ? undefined : { ...d, by: event.clientY - d.from }));
  const up = (event: PointerEvent) => {
    const moved = drag();
    setDrag(undefined);
    if (!moved || Math.abs(moved.by) < tremble) return;
    const to = target(event.clientY);
    if (to === props.index) return;
    props.garment.write(withStepMoved(props.garment.history.now(), props.index, to));
    props.garment.setOpen(to);
  };
  return (
    <span
      class="stitch"
      ref={grip}
      aria-hidden="true"
      onPointerDown={down}
      onPointerMove={move}
      onPointerUp={up}
      onPointerCancel={() => setDrag(undefined)}
    >
      <Show when={drag() && Math.abs(drag()!.by) >= tremble}>
        <span class="carried" style={{ transform: `translateY(${drag()!.by}px)` }} />
      </Show>
    </span>
  );
}
