import type { Garment } from '../job/garment.js';
import { pageWords } from '../words.js';

/** The needle on the thread: how far the table has been taken; dragged, or moved by the arrow keys. */
export function Thread(props: { readonly garment: Garment; readonly list: () => HTMLElement | undefined }) {
  const { garment } = props;
  const stepsOnPage = () => [...(props.list()?.querySelectorAll<HTMLElement>('.step') ?? [])];
  const top = () => {
    // Read anew whenever the steps or what came of them change.
    garment.engine.view();
    const rows = stepsOnPage();
    const done = rows[garment.needle() - 1];
    return done ? done.offsetTop + done.offsetHeight : (rows[0]?.offsetTop ?? 0);
  };
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
