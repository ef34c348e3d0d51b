import { type Accessor, createEffect, createMemo, createSignal, on, onCleanup } from 'solid-js';
import type { Garment } from '../job/garment.js';
import { pageWords } from '../words.js';

/** The needle on the thread: how far the table has been taken; dragged, or moved by the arrow keys. */
export function Thread(props: { readonly garment: Garment; readonly list: () => HTMLElement | undefined }) {
  const { garment } = props;
  const stepsOnPage = () => [...(props.list()?.querySelectorAll<HTMLElement>('.step') ?? [])];
  const top = createNeedlePlace(garment, stepsOnPage);
  let dragging = false;
  const drag = (event: PointerEvent) => {
    if (!dragging) return;
    const y = event.clientY;
    const passed = stepsOnPage().filter(
      row => row.getBoundingClientRect().top + row.offsetHeight / 2 < y,
    ).length;
    garment.setNeedle(passed === garment.steps().length ? undefined : passed);
  };
  const keys = (event: KeyboardEvent) => {
    const by = { ArrowUp: -1, ArrowDown: 1, Home: -1000, End: 1000 }[event.key];
    if (by === undefined) return;
    event.preventDefault();
    const next = Math.max(0, garment.needle() + by);
    garment.setNeedle(next >= garment.steps().length ? undefined : next);
  };
  return (
    <div
      class="needle"
      role="slider"
      tabIndex={0}
      aria-label={pageWords[garment.language()].needle}
      aria-orientation="vertical"
      aria-valuemin={0}
      aria-valuemax={garment.steps().length}
      aria-valuenow={garment.needle()}
      style={{ top: `${top()}px` }}
      onKeyDown={keys}
      onPointerDown={event => {
        dragging = true;
        event.currentTarget.setPointerCapture(event.pointerId);
      }}
      onPointerMove={drag}
      onPointerUp={() => {
        dragging = false;
      }}
    />
  );
}

/** px down the thread at which the needle stands: at the foot of the last step that is done. */
function createNeedlePlace(garment: Garment, rowsNow: () => readonly HTMLElement[]): Accessor<number> {
  const [top, setTop] = createSignal(0);
  const read = () => {
    const rows = rowsNow();
    const done = rows[garment.needle() - 1];
    setTop(done ? done.offsetTop + done.offsetHeight : (rows[0]?.offsetTop ?? 0));
  };
  // Where rows stand is read once the page is laid out: read while it changes, it would be laid out for that alone.
  const watch = new ResizeObserver(read);
  const count = createMemo(() => garment.steps().length);
  createEffect(() => {
    count();
    watch.disconnect();
    for (const row of rowsNow()) watch.observe(row);
  });
  createEffect(on(garment.needle, () => requestAnimationFrame(read)));
  onCleanup(() => watch.disconnect());
  return top;
}
