import { For } from 'solid-js';
import { lengthText } from '../sheet/figures.js';
import { pageWords } from '../words.js';
import { pxPerMm } from './camera.js';
import type { WalkingProps } from './Walking.jsx';

/** The mismatch is drawn at ten times its size on a sheet of paper; and, in px, no wider than this. */
const tenfold = pxPerMm * 10,
  widest = 220;
/** Degrees within which an end is said to run on. */
const runsOn = 0.5;

/** A seam at its end: how long both edges are, what is left over, and how its ends run on. */
export function WalkedWhole(props: Omit<WalkingProps, 'station'>) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const length = (mm: number) => lengthText(mm, garment.unit());
  const off = () => Math.min(Math.abs(props.walk.offMm) * tenfold, widest);
  return (
    <>
      <p classList={{ fault: !props.walk.matches }}>
        {props.walk.matches ? '' : '▲ '}
        {length(props.walk.aMm)} · {length(props.walk.bMm)}; {say().leftOver} {props.walk.off}
        <svg class="tenfold" width={off() + 14} height="26" aria-hidden="true">
          <path d={`M6 2 V24 M${6 + off()} 2 V24`} />
          <path class="gap" d={`M6 13 H${6 + off()}`} />
        </svg>
        <small>{say().tenfold}</small>
      </p>
      <For each={props.walk.ends}>
        {({ text, deg }) => (
          <p>
            {text}: {Math.abs(deg) < runsOn ? say().runOn : `${say().corner} ${Math.abs(deg).toFixed(1)}°`}
          </p>
        )}
      </For>
    </>
  );
}
