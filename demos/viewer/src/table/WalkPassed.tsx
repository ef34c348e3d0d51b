import { Show } from 'solid-js';
import type { Walk } from '../engine/pictures.js';
import { lengthText } from '../sheet/figures.js';
import { pageWords } from '../words.js';
import type { WalkingProps } from './Walking.jsx';

/** mm along the seam at which a notch is still being passed. */
const passing = 6;

/** The notch that is being passed at a station. */
function notchAt({ notches, stations, reachMm }: Walk, station: number): Walk['notches'][number] | undefined {
  const last = stations.length - 1;
  return notches.find(n => Math.abs(n.share * last - station) * (reachMm / last) < passing);
}

/** How far both edges have been walked, and the notch that is being passed; between notches, the ease that is wanted. */
export function WalkPassed(props: WalkingProps) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const at = () => props.walk.stations[props.station];
  const length = (mm = 0) => lengthText(mm, garment.unit());
  return (
    <p role="status">
      <span class="figure">
        {length(at()?.alongA)} · {length(at()?.alongB)}
      </span>{' '}
      <Show
        when={notchAt(props.walk, props.station)}
        fallback={props.walk.ease && `${say().easeWanted} ${props.walk.ease}`}
      >
        {notch => {
          const { side, apart } = notch();
          if (side !== 'both') return say().notchAlone;
          return apart === '' ? say().notchesMeet : `${say().notchesApart} ${apart}`;
        }}
      </Show>
    </p>
  );
}
