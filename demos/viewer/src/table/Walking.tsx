import { Show } from 'solid-js';
import type { Walk } from '../engine/pictures.js';
import type { Garment } from '../job/garment.js';
import { pageWords } from '../words.js';
import { createPlaying } from './playing.js';
import { Scrubber } from './Scrubber.jsx';
import { WalkedWhole } from './WalkedWhole.jsx';
import { WalkPassed } from './WalkPassed.jsx';

export interface WalkingProps {
  readonly garment: Garment;
  readonly walk: Walk;
  readonly station: number;
}

/** The foot of the table while a seam is walked: how far, what is passed, what is left over at the end. */
export function Walking(
  props: WalkingProps & {
    readonly onStation: (station: number) => void;
    readonly onDone: () => void;
  },
) {
  const say = () => pageWords[props.garment.language()];
  const last = () => props.walk.stations.length - 1;
  const still = matchMedia('(prefers-reduced-motion: reduce)').matches;
  const goTo = (station: number) => props.onStation(station);
  const { playing, setPlaying } = createPlaying({ station: () => props.station, last, goTo });
  const scrub = (station: number) => {
    setPlaying(false);
    goTo(station);
  };
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
      <Scrubber garment={props.garment} walk={props.walk} station={props.station} onScrub={scrub} />
      <WalkPassed garment={props.garment} walk={props.walk} station={props.station} />
      <Show when={props.station === last()}>
        <WalkedWhole garment={props.garment} walk={props.walk} />
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
