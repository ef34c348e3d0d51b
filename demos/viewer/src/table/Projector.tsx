import { createSignal, For, onCleanup, onMount, Show } from 'solid-js';
import type { Garment } from '../job/garment.js';
import { placesOf } from '../table/places.js';
import { pageWords } from '../words.js';

/** mm: the side of the square that the projector is set by. */
const square = 200;
/** CSS px a mm where nothing else is known. */
const assumed = 96 / 25.4;
/** By how much a key changes the scale. */
const fine = 1.001,
  coarse = 1.01;
const keptUnder = 'paperhinge-projector';

const remembered = (): number => {
  try {
    return Number(localStorage.getItem(keptUnder)) || assumed;
  } catch {
    return assumed;
  }
};
const remember = (scale: number): void => {
  try {
    localStorage.setItem(keptUnder, String(scale));
  } catch {
    // A private window keeps nothing: it is set again next time.
  }
};

/** The pieces at true scale on the whole screen, for a projector over the cutting table; first set by a square. */
export function Projector(props: { readonly garment: Garment; readonly onDone: () => void }) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const [scale, setScale] = createSignal(remembered());
  const [setting, setSetting] = createSignal(true);
  const [over, setOver] = createSignal(false);
  const [at, setAt] = createSignal<readonly [number, number]>([60, 60]);
  const pieces = () => garment.engine.view()?.pieces ?? [];
  const places = () => placesOf(pieces());
  let all: HTMLElement | undefined;
  const close = () => {
    if (document.fullscreenElement) void document.exitFullscreen();
    props.onDone();
  };
  let wasFull = false;
  /** The browser's own key leaves the full screen before the page hears of it. */
  const left = () => {
    if (wasFull && !document.fullscreenElement) props.onDone();
    wasFull = document.fullscreenElement !== null;
  };
  onMount(() => {
    all?.focus();
    document.addEventListener('fullscreenchange', left);
    // Where it is not allowed the view fills the window.
    void all?.requestFullscreen?.().catch(() => undefined);
  });
  const grow = (by: number) => {
    setScale(s => s * by);
    remember(scale());
  };
  const keys = (event: KeyboardEvent) => {
    const move = (dx: number, dy: number) => setAt(([x, y]) => [x + dx, y + dy]);
    const step = event.shiftKey ? 5 : 80;
    const doings: Readonly<Record<string, () => void>> = {
      Escape: close,
      '+': () => grow(fine),
      '-': () => grow(1 / fine),
      PageUp: () => grow(coarse),
      PageDown: () => grow(1 / coarse),
      ArrowLeft: () => move(step, 0),
      ArrowRight: () => move(-step, 0),
      ArrowUp: () => move(0, step),
      ArrowDown: () => move(0, -step),
    };
    const doing = doings[event.key];
    if (!doing) return;
    event.preventDefault();
    event.stopPropagation();
    doing();
  };
  let from: { x: number; y: number } | undefined;
  const move = (event: PointerEvent) => {
    if (!from) return;
    const [dx, dy] = [event.clientX - from.x, event.clientY - from.y];
    from = { x: event.clientX, y: event.clientY };
    setAt(([x, y]) => [x + dx, y + dy]);
  };
  onCleanup(() => {
    document.removeEventListener('fullscreenchange', left);
    if (document.fullscreenElement) void document.exitFullscreen();
  });
  return (
    <section class="projector" ref={all} tabindex="0" aria-label={say().project} onKeyDown={keys}>
      <svg
        width="100%"
        height="100%"
        aria-hidden="true"
        onPointerDown={event => {
          from = { x: event.clientX, y: event.clientY };
        }}
        onPointerMove={move}
        onPointerUp={() => {
          from = undefined;
        }}
      >
        <Show
          when={!setting()}
          fallback={<rect x="40" y="90" width={square * scale()} height={square * scale()} />}
        >
          <g transform={`translate(${at().join(' ')}) scale(${over() ? -scale() : scale()} ${scale()})`}>
            <For each={pieces()}>
              {piece => (
                <g transform={`translate(${(places().get(piece.name) ?? [0, 0]).join(' ')})`}>
                  <path class="cut" d={piece.cutting} />
                  <For each={piece.parts.filter(p => p.kind !== 'mark')}>
                    {part => <path class={part.kind} d={part.path} />}
                  </For>
                </g>
              )}
            </For>
          </g>
        </Show>
      </svg>
      <p>
        <Show
          when={setting()}
          fallback={
            <>
              <button type="button" onClick={() => setSetting(true)}>
                {say().setAgain}
              </button>
              <button type="button" aria-pressed={over()} onClick={() => setOver(o => !o)}>
                {say().turnedOver}
              </button>
            </>
          }
        >
          <span>{say().setSquare}</span>
          <input
            type="range"
            aria-label={say().setSquare}
            min={assumed * 0.2}
            max={assumed * 3}
            step={assumed / 1000}
            value={scale()}
            onInput={event => {
              setScale(Number(event.currentTarget.value));
              remember(scale());
            }}
          />
          <button
            type="button"
            onClick={() => {
              setSetting(false);
              all?.focus();
            }}
          >
            {say().measures}
          </button>
        </Show>
        <button type="button" onClick={close}>
          {say().close}
        </button>
      </p>
    </section>
  );
}
