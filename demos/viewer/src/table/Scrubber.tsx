import { createEffect, For } from 'solid-js';
import { lengthText } from '../sheet/figures.js';
import { pageWords } from '../words.js';
import type { WalkingProps } from './Walking.jsx';

/** How far a seam has been walked, moved by hand; its notches as ticks. A seam that begins to be walked has it in focus. */
export function Scrubber(props: WalkingProps & { readonly onScrub: (station: number) => void }) {
  const { garment } = props;
  let scrubber: HTMLInputElement | undefined;
  createEffect(() => props.walk.seam && scrubber?.focus({ preventScroll: true }));
  return (
    <div class="way">
      <input
        ref={scrubber}
        type="range"
        min="0"
        max={props.walk.stations.length - 1}
        value={props.station}
        aria-label={pageWords[garment.language()].howFar}
        aria-valuetext={lengthText(props.walk.stations[props.station]?.alongA ?? 0, garment.unit())}
        onInput={event => props.onScrub(Number(event.currentTarget.value))}
      />
      <For each={props.walk.notches}>
        {notch => (
          <span class={`tick ${notch.side}`} aria-hidden="true" style={{ left: `${notch.share * 100}%` }} />
        )}
      </For>
    </div>
  );
}
