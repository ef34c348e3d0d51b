import { createEffect, createSignal, For, onCleanup, Show } from 'solid-js';
import type { Walk } from '../engine/view.js';
import type { Garment } from '../job/garment.js';
import { lengthText } from '../sheet/figures.js';
import { pageWords } from '../words.js';

/** ms that a whole seam takes to be walked. */
const wholeWalk = 6000;
/** px a mm in the picture of the mismatch, ten times its size on a sheet of paper; and the widest it is drawn. */
const tenfold = (96 / 25.4) * 10;
const widest = 220;

/** The foot of the table while a seam is walked: how far, what is passed, what is left over at the end. */
export function Walking(props: {
  readonly garment: Garment;
  readonly walk: Walk;
  readonly station: number;
  readonly onStation: (station: number) => void;
  readonly onDone: () => void;
}) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const last = () => props.walk.stations.length - 1;
  const at = () => props.walk.stations[props.station];
  const mm = (size: number) => lengthText(size, garment.unit());
  const [playing, setPlaying] = createSignal(false);
  const still = matchMedia('(prefers-reduced-motion: reduce)').matches;
  createEffect(() => {
    if (!playing()) return;
    const from = props.station >= last() ? 0 : props.station;
    const begun = performance.now() - (from / last()) * wholeWalk;
    let frame = requestAnimationFrame(function go() {
      const share = Math.min(1, (performance.now() - begun) / wholeWalk);
      props.onStation(Math.round(share * last()));
      if (share < 1) frame = requestAnimationFrame(go);
      else setPlaying(false);
    });
    onCleanup(() => cancelAnimationFrame(frame));
  });
  /** The notch that is being passed. */
  const passing = () =>
    props.walk.notches.find(
      n => Math.abs(n.share * last() - props.station) * (props.walk.reachMm / last()) < 6,
    );
  const off = () => Math.min(Math.abs(props.walk.offMm) * tenfold, widest);
  let scrubber: HTMLInputElement | undefined;
  createEffect(() => props.walk.seam && scrubber?.focus({ preventScroll: true }));
  return (
    <section
      class="walking"
      aria-label={`${say().walking} ${props.walk.title}`}
      onPointerDown={e => e.stopPropagation()}
      onClick={e => e.stopPropagation()}
      onKeyDown={event => {
        event.stopPropagation();
        if (event.key === 'Escape') props.onDone();
      }}
    >
      <h3>
        {say().walking} {props.walk.title}
      </h3>
      <div class="way">
        <input
          ref={scrubber}
          type="range"
          min="0"
          max={last()}
          value={props.station}
          aria-label={say().howFar}
          aria-valuetext={mm(at()?.alongA ?? 0)}
          onInput={event => {
            setPlaying(false);
            props.onStation(Number(event.currentTarget.value));
          }}
        />
        <For each={props.walk.notches}>
          {notch => (
            <span class={`tick ${notch.side}`} aria-hidden="true" style={{ left: `${notch.share * 100}%` }} />
          )}
        </For>
      </div>
      <p role="status">
        <span class="figure">
          {mm(at()?.alongA ?? 0)} · {mm(at()?.alongB ?? 0)}
        </span>{' '}
        <Show when={passing()} fallback={props.walk.ease && `${say().easeWanted} ${props.walk.ease}`}>
          {notch =>
            notch().side === 'both'
              ? notch().apart === ''
                ? say().notchesMeet
                : `${say().notchesApart} ${notch().apart}`
              : say().notchAlone
          }
        </Show>
      </p>
      <Show when={props.station === last()}>
        <p classList={{ fault: !props.walk.matches }}>
          {props.walk.matches ? '' : '▲ '}
          {mm(props.walk.aMm)} · {mm(props.walk.bMm)}; {say().leftOver} {props.walk.off}
          <svg class="tenfold" width={off() + 14} height="26" aria-hidden="true">
            <path d={`M6 2 V24 M${6 + off()} 2 V24`} />
            <path class="gap" d={`M6 13 H${6 + off()}`} />
          </svg>
          <small>{say().tenfold}</small>
        </p>
        <For each={props.walk.ends}>
          {end => (
            <p>
              {end.text}:{' '}
              {Math.abs(end.deg) < 0.5 ? say().runOn : `${say().corner} ${Math.abs(end.deg).toFixed(1)}°`}
            </p>
          )}
        </For>
      </Show>
      <p class="doings">
        <Show when={!still}>
          <button type="button" onClick={() => setPlaying(p => !p)}>
            {playing() ? say().pause : say().walkOn}
          </button>
        </Show>
        <button type="button" onClick={props.onDone}>
          {say().close}
        </button>
      </p>
    </section>
  );
}
